package fettle.machine.topics;

import fettle.machine.lathe.Member;
import fettle.machine.lathe.Solid;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Boxes around the simple solids of members. */
final class Boxes {

  private Boxes() {}

  /**
   * Returns the box around a member's envelope, in its own directions.
   *
   * @return low and high corner [mm]
   */
  static Optional<double[][]> around(Member member) {
    return around(member.envelope().values());
  }

  private static Optional<double[][]> around(Collection<Solid> solids) {
    return solids.stream()
        .map(Boxes::of)
        .reduce(
            (a, b) -> {
              double[][] both = {a[0].clone(), a[1].clone()};
              for (int i = 0; i < 3; i++) {
                both[0][i] = Math.min(a[0][i], b[0][i]);
                both[1][i] = Math.max(a[1][i], b[1][i]);
              }
              return both;
            });
  }

  /**
   * Returns the solid of a member that stands highest, as a box: its post, if it has one.
   *
   * @return low and high corner [mm]
   */
  static Optional<double[][]> highest(Member member) {
    return member.envelope().values().stream()
        .map(Boxes::of)
        .max(Comparator.comparingDouble(b -> b[1][1]));
  }

  /**
   * Returns the solid of a member that stands lowest above its seat, as a box: its foot.
   *
   * @return low and high corner [mm]
   */
  static Optional<double[][]> foot(Member member) {
    return member.envelope().values().stream()
        .map(Boxes::of)
        .min(Comparator.comparingDouble(b -> Math.abs(b[0][1])));
  }

  private static double[][] of(Solid solid) {
    if (solid instanceof Solid.Box b) {
      return new double[][] {
        {b.corner().x(), b.corner().y(), b.corner().z()},
        {
          b.corner().x() + b.size().x(),
          b.corner().y() + b.size().y(),
          b.corner().z() + b.size().z()
        }
      };
    }
    Solid.Cylinder c = (Solid.Cylinder) solid;
    double[] low = {c.end().x(), c.end().y(), c.end().z()};
    double[] high = low.clone();
    for (int i = 0; i < 3; i++) {
      boolean own = i == c.axis().number();
      low[i] -= own ? 0 : c.diameter() / 2;
      high[i] += own ? c.length() : c.diameter() / 2;
    }
    return new double[][] {low, high};
  }
}
