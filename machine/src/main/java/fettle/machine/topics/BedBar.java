package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Member;
import fettle.mechanics.loop.BarMember;
import fettle.mechanics.loop.Compliance;
import fettle.mechanics.loop.TwinWallBed;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.materials.Property;
import java.util.Optional;

/**
 * The stretch of a bed between head and saddle as a bar of two walls held by ribs: for a first
 * answer, before the bed is reckoned by finite elements.
 */
final class BedBar {

  /** One sigma as a factor: the walls at the ribs are neither free nor held. */
  static final double DOUBT = 1.5;

  private static final double POISSON = 0.26;

  /** Between wall ends free to slope, 3, and held by ribs, 12. */
  private static final double RESTRAINT = 7.5;

  private static final double[][] ALONG = {{0, 1, 0}, {0, 0, 1}, {1, 0, 0}};

  private BedBar() {}

  /**
   * Returns what the stretch gives at its far end, at half the height of the walls; empty if the
   * book does not tell the walls.
   *
   * @param bed the bed
   * @param length from the middle of the head's foot to the middle of the saddle [mm]
   */
  static Optional<Compliance> of(Member bed, double length) {
    Values v = bed.values();
    Optional<Material> iron =
        v.text("material").map(Materials::of).filter(m -> m.knows(Property.E));
    if (!(length > 1) || !v.has("wall") || !v.has("width") || !v.has("height") || iron.isEmpty()) {
      return Optional.empty();
    }
    double t = v.need("wall").value();
    double h = v.need("height").value();
    double c = v.need("width").value() - t;
    if (!(c > t)) {
      return Optional.empty();
    }
    double pitch = v.has("rib pitch") ? Math.min(length, v.need("rib pitch").value()) : length;
    return Optional.of(
        of(new TwinWallBed(length, t, h, c, iron.get().elasticity(), POISSON), pitch));
  }

  /** The walls shear against each other between ribs like the posts of a frame. */
  private static Compliance of(TwinWallBed bed, double pitch) {
    double l = bed.length();
    double e = bed.modulus();
    double g = e / (2 * (1 + bed.poisson()));
    double wall = bed.height() * Math.pow(bed.wall(), 3) / 12;
    double area = 2 * bed.wall() * bed.height();
    BarMember bar =
        new BarMember(
                l,
                area,
                2 * bed.wall() * Math.pow(bed.height(), 3) / 12,
                2 * wall + area * bed.centres() * bed.centres() / 4,
                bed.twistStiffness(RESTRAINT) * l / g,
                e,
                bed.poisson(),
                1)
            .withoutShear();
    double upright = l * 6 / (5 * g * area);
    double level = l * pitch * pitch / (24 * e * wall) + upright;
    return Compliance.of(bar).turned(ALONG).plus(Compliance.diagonal(level, upright, 0, 0, 0, 0));
  }
}
