package fettle.sheets.dimension;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Dimension lines stacked beside a view, the shorter nearer to it. No text lies over a line; an
 * extension line crosses a dimension line only where there is no other way.
 */
public final class Rack {

  static final Source SPACING =
      Source.page("ISO 129-1:2018 and office rules", "first line 10 from the outline, next 8");

  static final double FIRST = 10;
  static final double NEXT = 8;
  static final double TEXT = 3.5;
  static final double OVER = 1.2;
  static final double BEYOND = 2;
  private static final double ARROW = 3.5;

  /** A place found for a dimension. */
  private record Spot(
      Linear dim,
      int tier,
      double textLow,
      double textHigh,
      double lineLow,
      double lineHigh,
      Arrows arrows,
      double cost) {}

  private enum Arrows {
    INSIDE,
    OUTSIDE
  }

  private final Side side;
  private final Predicate<Linear> yields;
  private final List<Spot> spots = new ArrayList<>();

  /** A rack on a side of a view; some dimensions would rather become a note than stand aside. */
  public Rack(Side side, Predicate<Linear> yields) {
    this.side = side;
    this.yields = yields;
  }

  /** Places dimensions, shortest first; returns those for which there is no room. */
  public List<Linear> place(List<Linear> dims, int tiers) {
    List<Linear> left = new ArrayList<>();
    List<Linear> order = new ArrayList<>(dims);
    order.sort(
        Comparator.comparingDouble((Linear d) -> d.high() - d.low())
            .thenComparingDouble(Linear::low)
            .thenComparing(Linear::text));
    for (int i = 0; i < order.size(); i++) {
      Linear d = order.get(i);
      List<Linear> later = order.subList(i + 1, order.size());
      if (!place(d, later, tiers, 0)
          && !place(d, later, tiers, 1)
          && !place(d, List.of(), tiers, 1)) {
        left.add(d);
      }
    }
    return left;
  }

  private boolean place(Linear d, List<Linear> later, int tiers, int patience) {
    List<Spot> all = new ArrayList<>();
    for (int tier = 0; tier < tiers; tier++) {
      all.addAll(options(d, tier));
    }
    all.sort(Comparator.comparingDouble(Spot::cost));
    for (Spot s : all) {
      if (free(s, patience) && spares(s, later)) {
        spots.add(s);
        return true;
      }
    }
    return false;
  }

  /** Whether the text leaves a way for the extension lines still to come. */
  private static boolean spares(Spot s, List<Linear> later) {
    for (Linear d : later) {
      for (double u : new double[] {d.low(), d.high()}) {
        if (u > s.textLow - 0.8 && u < s.textHigh + 0.8) {
          return false;
        }
      }
    }
    return true;
  }

  private List<Spot> options(Linear d, int tier) {
    double w = Lettering.width(d.text(), TEXT);
    double span = d.high() - d.low();
    List<Spot> out = new ArrayList<>();
    Arrows arrows = span >= 2.5 * ARROW ? Arrows.INSIDE : Arrows.OUTSIDE;
    double out1 = arrows == Arrows.OUTSIDE ? 2 * ARROW : 0;
    double low = d.low() - out1;
    double high = d.high() + out1;
    if (span >= w + 2) {
      double middle = (d.low() + d.high()) / 2;
      double slack = (span - w - 2) / 2;
      for (double shift : new double[] {0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1, -1}) {
        double m = middle + shift * slack;
        out.add(
            new Spot(d, tier, m - w / 2, m + w / 2, low, high, arrows, 9 * tier + Math.abs(shift)));
      }
    }
    if (!yields.test(d)) {
      for (double more = 0; more <= 60; more += 4) {
        double start = (arrows == Arrows.OUTSIDE ? ARROW + 0.5 : 1.5) + more;
        double high1 = d.high() + start;
        double low1 = d.low() - start;
        out.add(new Spot(d, tier, high1, high1 + w, low, high1 + w, arrows, 9 * tier + 3 + more));
        out.add(new Spot(d, tier, low1 - w, low1, low1 - w, high, arrows, 9 * tier + 4 + more));
      }
    }
    return out;
  }

  private boolean free(Spot s, int patience) {
    for (Spot p : spots) {
      if (p.tier == s.tier && s.lineLow < p.lineHigh - 1e-6 && p.lineLow < s.lineHigh - 1e-6) {
        return false;
      }
      Spot outer = p.tier >= s.tier ? p : s;
      Spot inner = p.tier >= s.tier ? s : p;
      if (clash(outer, inner, patience) || (p.tier == s.tier && clash(inner, outer, patience))) {
        return false;
      }
    }
    double m = 0.8;
    for (double u : new double[] {s.dim.low(), s.dim.high()}) {
      if (u > s.textLow - m && u < s.textHigh + m) {
        return false;
      }
    }
    return true;
  }

  /** Whether an extension line of the outer dimension runs through text or line of the inner. */
  private static boolean clash(Spot outer, Spot inner, int patience) {
    double m = 0.8;
    for (double u : new double[] {outer.dim.low(), outer.dim.high()}) {
      if (u > inner.textLow - m && u < inner.textHigh + m) {
        return true;
      }
      boolean shared =
          Math.abs(u - inner.dim.low()) < 1e-6 || Math.abs(u - inner.dim.high()) < 1e-6;
      if (patience == 0 && !shared && u > inner.lineLow + 1e-6 && u < inner.lineHigh - 1e-6) {
        return true;
      }
    }
    return false;
  }

  /** Returns how many tiers are used. */
  public int tiers() {
    return spots.stream().mapToInt(s -> s.tier + 1).max().orElse(0);
  }

  /** Returns the dimensions placed. */
  public List<Linear> placed() {
    return spots.stream().map(Spot::dim).toList();
  }

  /**
   * Returns the marks.
   *
   * @param group name of the group
   * @param base edge of the view on this side [mm]
   */
  public List<Mark> marks(String group, double base) {
    List<Mark> out = new ArrayList<>();
    int way = side == Side.RIGHT ? 1 : -1;
    int n = 0;
    for (Spot s : spots) {
      String g = group + ":" + side.name().toLowerCase(java.util.Locale.ROOT) + n++;
      double at = base + way * (FIRST + NEXT * s.tier);
      double end = at + way * BEYOND;
      out.add(line(g, s.dim.low(), s.dim.lowFrom(), s.dim.low(), end));
      out.add(line(g, s.dim.high(), s.dim.highFrom(), s.dim.high(), end));
      out.add(line(g + ":line", s.lineLow, at, s.lineHigh, at));
      boolean inside = s.arrows == Arrows.INSIDE;
      out.add(arrow(g, s.dim.low(), at, inside ? -1 : 1));
      out.add(arrow(g, s.dim.high(), at, inside ? 1 : -1));
      out.add(
          side == Side.BELOW
              ? new Mark.Text(g, s.dim.text(), s.textLow, at + OVER, TEXT, Mark.Reading.FROM_BELOW)
              : new Mark.Text(
                  g, s.dim.text(), at - OVER, s.textLow, TEXT, Mark.Reading.FROM_RIGHT));
    }
    return out;
  }

  private Mark line(String g, double u0, double v0, double u1, double v1) {
    return side == Side.BELOW
        ? Mark.Stroke.line(g, Pen.NARROW, u0, v0, u1, v1)
        : Mark.Stroke.line(g, Pen.NARROW, v0, u0, v1, u1);
  }

  private Mark arrow(String g, double u, double v, int way) {
    double angle = way > 0 ? 0 : Math.PI;
    return side == Side.BELOW
        ? Mark.Fill.arrow(g, u, v, angle)
        : Mark.Fill.arrow(g, v, u, angle + Math.PI / 2);
  }
}
