package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.text.Quantity;
import fettle.mechanics.solids.Body;
import fettle.mechanics.solids.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The metal of a member in its own directions, from the features the book tells of. */
final class MemberBody {

  private MemberBody() {}

  /** Returns the metal of a member; empty if the book does not tell its features. */
  static Optional<Body> of(Member member) {
    List<Body.Step> steps = new ArrayList<>();
    member.values().map("body").values().forEach(f -> steps.addAll(feature(f)));
    return steps.isEmpty() ? Optional.empty() : Optional.of(new Body(steps));
  }

  /**
   * Returns a bed of two walls with cross ribs; empty if the book does not tell enough of it. A bed
   * whose features are told is what they say.
   */
  static Optional<Body> bed(Member member) {
    Values v = member.values();
    if (!v.map("body").isEmpty()) {
      return of(member);
    }
    Optional<double[][]> box = Boxes.around(member);
    if (box.isEmpty() || !v.has("wall")) {
      return Optional.empty();
    }
    double[] low = box.get()[0];
    double[] high = box.get()[1];
    double wall = v.need("wall").value();
    if (!(2 * wall < high[0] - low[0])) {
      return Optional.empty();
    }
    Body walls =
        Body.of(new Shape.Box(low[0], low[0] + wall, low[1], high[1], low[2], high[2]))
            .add(new Shape.Box(high[0] - wall, high[0], low[1], high[1], low[2], high[2]));
    double pitch = v.quantity("rib pitch").map(Quantity::value).orElse(high[2] - low[2]);
    double rib = 0.7 * wall;
    int gaps = (int) Math.min(200, Math.max(1, Math.round((high[2] - low[2]) / pitch)));
    for (int i = 0; i <= gaps; i++) {
      double z = low[2] + (high[2] - low[2] - rib) * i / gaps;
      walls = walls.add(new Shape.Box(low[0] + wall, high[0] - wall, low[1], high[1], z, z + rib));
    }
    return Optional.of(walls);
  }

  private static List<Body.Step> feature(Values f) {
    Point at = f.block("at").map(Point::of).orElse(Point.ZERO);
    return switch (f.shape()) {
      case "feature/block" -> List.of(add(box(at, f)));
      case "feature/pocket" -> List.of(cut(box(at, f)));
      case "feature/boss" -> List.of(add(round(at, f)));
      case "feature/hole" -> List.of(cut(round(at, f)));
      case "feature/dovetail" -> List.of(cut(dovetail(at, f)));
      default -> slot(at, f);
    };
  }

  private static Body.Step add(Shape shape) {
    return new Body.Step(Body.Kind.ADD, shape);
  }

  private static Body.Step cut(Shape shape) {
    return new Body.Step(Body.Kind.CUT, shape);
  }

  private static Shape box(Point at, Values f) {
    Point size = Point.of(f);
    return new Shape.Box(
        at.x(), at.x() + size.x(), at.y(), at.y() + size.y(), at.z(), at.z() + size.z());
  }

  private static Shape round(Point at, Values f) {
    int axis = Axis.valueOf(f.needText("axis")).number();
    double[] p = {at.x(), at.y(), at.z()};
    return new Shape.Cylinder(
        axis,
        p[(axis + 1) % 3],
        p[(axis + 2) % 3],
        f.need("diameter").value() / 2,
        p[axis],
        p[axis] + f.need("length").value());
  }

  /** A channel along x or z, from one height to another, so wide to either side. */
  private static Shape channel(Point at, Values f, double from, double to, double wide) {
    double length = f.need("length").value();
    double half = wide / 2;
    return f.needText("along").equals("X")
        ? new Shape.Box(at.x(), at.x() + length, from, to, at.z() - half, at.z() + half)
        : new Shape.Box(at.x() - half, at.x() + half, from, to, at.z(), at.z() + length);
  }

  private static List<Body.Step> slot(Point at, Values f) {
    double throat = at.y() - f.need("throat depth").value();
    double bottom = throat - f.need("head height").value();
    return List.of(
        cut(channel(at, f, throat, at.y(), f.need("throat").value())),
        cut(channel(at, f, bottom, throat, f.need("head").value())));
  }

  private static Shape dovetail(Point at, Values f) {
    double depth = f.need("depth").value();
    double wide = f.need("wide").value();
    boolean down = f.needText("opens").equals("down");
    double bottom = at.y() + (down ? depth : -depth);
    Shape box = channel(at, f, Math.min(at.y(), bottom), Math.max(at.y(), bottom), wide);
    double slope = 1 / Math.tan(f.need("flank").value());
    boolean alongX = f.needText("along").equals("X");
    double middle = alongX ? at.z() : at.x();
    double upright = down ? -slope : slope;
    List<Shape> sides = new ArrayList<>(List.of(box));
    for (int side = -1; side <= 1; side += 2) {
      double offset = wide / 2 + side * middle + upright * bottom;
      sides.add(
          alongX
              ? new Shape.HalfSpace(0, upright, side, offset)
              : new Shape.HalfSpace(side, upright, 0, offset));
    }
    return new Shape.Common(sides);
  }
}
