package fettle.sheets.draw;

import fettle.mechanics.base.Numbers;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Turned;
import fettle.parts.solid.Bodies;
import fettle.parts.solid.Brep;
import fettle.parts.solid.Moments;
import fettle.sheets.dimension.Values;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Scale;
import fettle.sheets.page.Sheet;
import fettle.sheets.page.TitleBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Draws a part sheet. */
public final class Draughtsman {

  private Draughtsman() {}

  /**
   * A part sheet.
   *
   * @param sheet the sheet
   * @param faults what its dimensions lack or have too much
   */
  public record Drawn(Sheet sheet, List<String> faults) {
    /** Keeps its own copy. */
    public Drawn {
      faults = List.copyOf(faults);
    }
  }

  /** Returns the sheet of a part. */
  public static Drawn part(Recipe recipe, Heads heads) {
    Function<Double, Draft> draw = draught(recipe);
    double mass = mass(recipe);
    Layout.Laid laid =
        new Layout(heads, notes(recipe.heading(), heads))
            .best(
                extent(recipe),
                scale -> draw.apply(scale.factor()),
                scale -> fields(recipe.heading(), mass, scale));
    return new Drawn(laid.sheet(), laid.faults());
  }

  /**
   * Returns the mass of a part.
   *
   * @return mass [t]
   */
  public static double mass(Recipe recipe) {
    return Moments.of(Brep.of(Bodies.of(recipe))).volume() * recipe.heading().density();
  }

  private static Function<Double, Draft> draught(Recipe recipe) {
    if (recipe instanceof Turned t) {
      TurnedDraught d = new TurnedDraught(t);
      return d::at;
    } else if (recipe instanceof Prismatic p) {
      PrismaticDraught d = new PrismaticDraught(p);
      return d::at;
    }
    FoldedDraught d = new FoldedDraught((Folded) recipe);
    return d::at;
  }

  private static double extent(Recipe recipe) {
    if (recipe instanceof Turned t) {
      return Math.max(t.length(), t.largest());
    } else if (recipe instanceof Prismatic p) {
      return Math.max(p.extent(0), Math.max(p.extent(1), p.extent(2)));
    }
    Folded f = (Folded) recipe;
    double sum = 0;
    for (Folded.Leg leg : f.legs()) {
      sum += leg.outside().nominal();
    }
    return Math.max(sum, f.width().nominal());
  }

  static List<String> notes(Heading h, Heads heads) {
    List<String> out = new ArrayList<>();
    if (!h.stock().isEmpty()) {
      out.add("Stock: " + h.stock());
    }
    out.addAll(h.notes());
    if (!heads.licence().isEmpty()) {
      out.add(heads.licence());
    }
    return out;
  }

  private static TitleBlock.Fields fields(Heading h, double mass, Scale scale) {
    double grams = mass * 1e6;
    String m =
        grams < 1000
            ? Values.number(Math.round(grams * 10) / 10.0) + " g"
            : Numbers.fixed(grams / 1000, 2).replace('.', ',') + " kg";
    return new TitleBlock.Fields(
        h.title(),
        "",
        h.number(),
        "Part drawing",
        h.material(),
        m,
        h.generalTolerance(),
        h.finish().roughness() > 0 ? Values.roughness(h.finish().roughness()) : "",
        scale.toString(),
        "1/1");
  }
}
