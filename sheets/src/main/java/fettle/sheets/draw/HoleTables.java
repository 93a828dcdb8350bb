package fettle.sheets.draw;

import fettle.mechanics.base.Source;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.solid.Vec;
import fettle.sheets.dimension.Scheme;
import fettle.sheets.dimension.Values;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Coordinates of many holes in a table instead of dimensions: a letter for each kind of hole on a
 * face, a number for each hole of that kind.
 */
final class HoleTables {

  static final Source RULE =
      Source.practice("more than six holes on a face are read better from a table of coordinates");

  private static final int MOST = 6;
  private static final String[] BOOKS = {"x", "y", "z"};
  private static final String[] FROM = {"from left", "from front", "from bottom"};

  private final Prismatic part;
  private final Scheme scheme;
  private final Set<String> taken = new TreeSet<>();
  private final Map<Face, List<List<String>>> rows = new EnumMap<>(Face.class);
  private final Map<Face, Integer> kinds = new EnumMap<>(Face.class);

  HoleTables(Prismatic part, Scheme scheme) {
    this.part = part;
    this.scheme = scheme;
    for (Face f : Face.values()) {
      List<Prismatic.Holes> here =
          part.operations().stream()
              .filter(o -> o instanceof Prismatic.Holes && o.face() == f)
              .map(o -> (Prismatic.Holes) o)
              .filter(this::isPlain)
              .toList();
      if (here.stream().mapToInt(h -> h.pattern().places().size()).sum() > MOST) {
        here.forEach(h -> taken.add(h.name()));
      }
    }
  }

  /** Holes on a circle keep their circle, toleranced ones their frames. */
  private boolean isPlain(Prismatic.Holes h) {
    return !(h.pattern() instanceof Pattern.Circle)
        && part.geometry().on(h.name()).isEmpty()
        && part.geometry().letterOf(h.name()).isEmpty();
  }

  /** Tells whether holes stand in a table. */
  boolean takes(Prismatic.Holes h) {
    return taken.contains(h.name());
  }

  /** Writes holes into the table of their face and their labels beside them. */
  void add(Prismatic.Holes h, Plan plan) {
    Face f = h.face();
    List<List<String>> table = rows.computeIfAbsent(f, HoleTables::heading);
    String letter = String.valueOf((char) ('A' + kinds.merge(f, 1, Integer::sum) - 1));
    String what = String.join(" ", Holes.callout(h, h.hole(), 1, scheme));
    double r = Math.max(h.hole().cutDiameter(), h.hole().mouthDiameter()) / 2;
    int n = 0;
    for (Pattern.At at : h.pattern().places()) {
      String label = letter + ++n;
      book(f, f.u(), at.u());
      book(f, f.v(), at.v());
      table.add(List.of(label, Values.number(at.u()), Values.number(at.v()), what));
      plan.label(PrismaticViews.seen(place(f, at), PrismaticViews.looking(f)), r, label);
    }
  }

  private static List<List<String>> heading(Face f) {
    List<List<String>> table = new ArrayList<>();
    String face = f.name().toLowerCase(Locale.ROOT);
    table.add(List.of("Hole", FROM[f.u()], FROM[f.v()], "Size, " + face + " side"));
    return table;
  }

  private void book(Face f, int axis, double at) {
    String books = BOOKS[axis] + " on " + f;
    scheme.place(books, 0);
    scheme.place(books, at);
    if (Math.abs(at) > 1e-6) {
      scheme.join(books, 0, at);
    }
  }

  private static Vec place(Face f, Pattern.At at) {
    double[] c = new double[3];
    c[f.u()] = at.u();
    c[f.v()] = at.v();
    return new Vec(c[0], c[1], c[2]);
  }

  /** Returns the tables of all faces. */
  List<Table> tables() {
    List<Table> out = new ArrayList<>();
    rows.forEach((f, r) -> out.add(new Table("holes " + f.name().toLowerCase(Locale.ROOT), r)));
    return out;
  }
}
