package fettle.machine.topics;

import fettle.machine.lathe.Member;
import fettle.mechanics.loop.BarMember;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.materials.Property;
import java.util.Optional;

/** A head or tailstock as an upright hollow bar from its foot to the axis of the spindle. */
final class Uprights {

  /** Turns a bar along its own x upright: rows are x, y, z of the lathe in the bar's directions. */
  static final double[][] AXES = {{0, 0, 1}, {1, 0, 0}, {0, 1, 0}};

  private Uprights() {}

  /**
   * Returns the upright; empty if the book tells no wall.
   *
   * @param member the casting
   * @param box low and high corner of what stands up [mm]
   * @param height from its foot to the axis [mm]
   */
  static Optional<BarMember> of(Member member, double[][] box, double height) {
    double x = box[1][0] - box[0][0];
    double z = box[1][2] - box[0][2];
    if (!member.values().has("wall") || !member.values().has("material") || !(height > 0)) {
      return Optional.empty();
    }
    double t = member.values().need("wall").value();
    Material m = Materials.of(member.values().needText("material"));
    if (!(2 * t < Math.min(x, z)) || !m.knows(Property.E)) {
      return Optional.empty();
    }
    double xi = x - 2 * t;
    double zi = z - 2 * t;
    double middle = (x - t) * (z - t);
    return Optional.of(
        new BarMember(
            height,
            x * z - xi * zi,
            (z * x * x * x - zi * xi * xi * xi) / 12,
            (x * z * z * z - xi * zi * zi * zi) / 12,
            4 * middle * middle * t / (2 * (x - t + z - t)),
            m.elasticity(),
            0.26,
            0.45));
  }
}
