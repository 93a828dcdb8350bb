package fettle.sheets.draw;

import fettle.parts.recipe.Cut;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.solid.Bodies;
import fettle.parts.solid.Body;
import fettle.parts.solid.Brep;
import fettle.parts.solid.Looking;
import fettle.parts.solid.Marks;
import fettle.parts.solid.Vec;
import fettle.parts.solid.View;
import fettle.sheets.marks.Point;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The views of a block or plate: front and top, every other side from which work is done, and a
 * section in place of one of them where the recipe asks for it.
 */
final class PrismaticViews {

  private final Prismatic part;
  private final Marks marks;
  private final @Nullable Cut cut;
  private final Map<Looking, View> views = new EnumMap<>(Looking.class);

  PrismaticViews(Prismatic part) {
    this.part = part;
    Body body = Bodies.of(part);
    Brep solid = Brep.of(body);
    this.marks = Marks.of(part);
    this.cut = Cut.of(part).orElse(null);
    if (cut != null) {
      Vec through = new Vec(cut.normal() == 0 ? cut.at() : 0, cut.normal() == 1 ? cut.at() : 0, 0);
      views.put(looking(cut.seen()), View.section(body, looking(cut.seen()), through));
    }
    views.computeIfAbsent(Looking.FRONT, l -> View.of(body, solid, l));
    for (Prismatic.Operation o : part.operations()) {
      if (!(o instanceof Prismatic.EdgeBreak)) {
        views.computeIfAbsent(looking(o.face()), l -> View.of(body, solid, l));
      }
      if (o instanceof Prismatic.TSlot || o instanceof Prismatic.Dovetail) {
        views.computeIfAbsent(profile(o), l -> View.of(body, solid, l));
      }
    }
    if (cut == null || !part.isBlock() || !showsWidth()) {
      views.computeIfAbsent(Looking.TOP, l -> View.of(body, solid, l));
    }
  }

  private boolean showsWidth() {
    return views.keySet().stream().anyMatch(l -> Math.abs(l.along().y()) < 0.5);
  }

  /** Returns the view in which the width of the part is dimensioned. */
  Looking width() {
    return Stream.of(Looking.TOP, Looking.BOTTOM, Looking.LEFT, Looking.RIGHT)
        .filter(views::containsKey)
        .findFirst()
        .orElse(Looking.TOP);
  }

  /** Returns the view in which the profile of a T-slot or dovetail is seen. */
  private static Looking profile(Prismatic.Operation o) {
    Prismatic.Along along =
        o instanceof Prismatic.TSlot t ? t.along() : ((Prismatic.Dovetail) o).along();
    int axis = along == Prismatic.Along.U ? o.face().u() : o.face().v();
    return axis == 0 ? Looking.LEFT : axis == 1 ? Looking.FRONT : Looking.TOP;
  }

  /** Returns from where a face is seen. */
  static Looking looking(Face f) {
    return switch (f) {
      case FRONT -> Looking.FRONT;
      case BACK -> Looking.BACK;
      case TOP -> Looking.TOP;
      case BOTTOM -> Looking.BOTTOM;
      case LEFT -> Looking.LEFT;
      case RIGHT -> Looking.RIGHT;
    };
  }

  /** Returns where a view stands. */
  static Draft.Where where(Looking l) {
    return switch (l) {
      case FRONT -> Draft.Where.MAIN;
      case TOP -> Draft.Where.BELOW;
      case BOTTOM -> Draft.Where.ABOVE;
      case LEFT -> Draft.Where.RIGHT;
      case RIGHT -> Draft.Where.LEFT;
      case BACK -> Draft.Where.FAR_RIGHT;
    };
  }

  /** Returns the plane of the section; null if there is none. */
  @Nullable Cut cut() {
    return cut;
  }

  /** Returns the views drawn at a scale, without dimensions. */
  Map<Looking, Plan> plans(double k) {
    Map<Looking, Plan> plans = new EnumMap<>(Looking.class);
    views.forEach((l, v) -> plans.put(l, plan(l, v, k)));
    return plans;
  }

  private Plan plan(Looking l, View v, double k) {
    Plan.Hidden hidden = cut == null ? Plan.Hidden.DRAWN : Plan.Hidden.LEFT_OUT;
    Plan p = new Plan(l.name().toLowerCase(Locale.ROOT), k);
    p.view(v, hidden);
    p.through(Holes.threadedThrough(part));
    p.marks(shown(l), w -> seen(w, l), l.along(), hidden);
    if (cut != null && l == looking(cut.seen())) {
      p.titled("A-A");
    }
    return p;
  }

  static Point seen(Vec p, Looking l) {
    return new Point(p.dot(l.right()), p.dot(l.up()));
  }

  /** Where a section says what is inside, a view shows only what is seen from its side. */
  private Marks shown(Looking l) {
    if (cut == null) {
      return marks;
    }
    boolean section = l == looking(cut.seen());
    return new Marks(
        marks.axes().stream()
            .filter(
                a ->
                    section && inPlane(a.from()) && inPlane(a.to())
                        || (endOn(a.from(), a.to(), l) && isSeen(a, l)))
            .toList(),
        marks.threads().stream()
            .filter(
                t -> section ? inPlane(t.from()) && inPlane(t.to()) : endOn(t.from(), t.to(), l))
            .toList());
  }

  private boolean inPlane(Vec v) {
    return cut != null && Math.abs((cut.normal() == 0 ? v.x() : v.y()) - cut.at()) < 1e-6;
  }

  private static boolean endOn(Vec from, Vec to, Looking l) {
    return to.minus(from).cross(l.along()).length() < 1e-6;
  }

  /** Tells whether a hole on this axis opens to the viewer; what is no hole is always seen. */
  private boolean isSeen(Marks.Axis axis, Looking l) {
    List<Prismatic.Holes> holes =
        part.operations().stream()
            .filter(o -> o instanceof Prismatic.Holes)
            .map(o -> (Prismatic.Holes) o)
            .filter(h -> h.pattern().places().stream().anyMatch(p -> isOn(axis, h.face(), p)))
            .toList();
    return holes.isEmpty()
        || holes.stream().anyMatch(h -> looking(h.face()) == l || h.hole().isThrough());
  }

  private static boolean isOn(Marks.Axis axis, Face f, Pattern.At p) {
    double[] c = {axis.from().x(), axis.from().y(), axis.from().z()};
    return Math.abs(c[f.u()] - p.u()) < 1e-6
        && Math.abs(c[f.v()] - p.v()) < 1e-6
        && axis.to().minus(axis.from()).unit().cross(looking(f).along()).length() < 1e-6;
  }
}
