package fettle.mechanics.loop;

import fettle.mechanics.base.Unit;
import fettle.mechanics.solids.Limits;
import fettle.mechanics.solids.Patch;
import fettle.mechanics.solids.Support;
import java.util.List;

/**
 * Two strips on which a body bears, level, along z or x, with springs per area: the ways under a
 * slide, the edges of a bolted foot.
 *
 * @param along direction of the strips: 0 for x, 2 for z
 * @param middle middle between them, in their plane: x, y, z [mm]
 * @param length length of a strip [mm]
 * @param width width of a strip [mm]
 * @param centres distance of their middles [mm]
 * @param normal stiffness per area, upright [N/mm3]
 * @param tangential stiffness per area, level, over both strips [N/mm3]
 */
public record TwoWays(
    int along,
    List<Double> middle,
    double length,
    double width,
    double centres,
    double normal,
    double tangential) {

  /** Refuses strips without area or springs. */
  public TwoWays {
    middle = List.copyOf(middle);
    if ((along != 0 && along != 2) || middle.size() != 3) {
      throw new IllegalArgumentException("ways: they run along x or z, about a point of three");
    }
    Limits.positive("L", length, Unit.MM);
    Limits.positive("w", width, Unit.MM);
    Limits.positive("c", centres, Unit.MM);
    Limits.positive("k", normal, Unit.N_PER_MM3);
    Limits.positive("k_t", tangential, Unit.N_PER_MM3);
  }

  /**
   * Stiffness of a body on the strips about their middle: upright {@code 2 k L w}; roll about the
   * strips {@code 2 k L w (c^2/4 + w^2/12)}; pitch {@code 2 k w L^3/12}; level {@code 2 k_t L w};
   * yaw {@code 2 k_t L w (c^2/4 + w^2/12 + L^2/12)}.
   *
   * @return along x, y, z and about x, y, z [N/mm and N mm/rad]
   * @see Sources#WAYS
   */
  public double[] springs() {
    double area = 2 * length * width;
    double across = centres * centres / 4 + width * width / 12;
    double roll = normal * area * across;
    double pitch = normal * area * length * length / 12;
    double yaw = tangential * area * (across + length * length / 12);
    return new double[] {
      tangential * area,
      normal * area,
      tangential * area,
      along == 0 ? roll : pitch,
      yaw,
      along == 0 ? pitch : roll
    };
  }

  /**
   * Stiffness of a slide on the strips with its drive in the direction of travel.
   *
   * @param drive stiffness of what holds it along the travel [N/mm]
   * @return along x, y, z and about x, y, z [N/mm and N mm/rad]
   */
  public double[] driven(double drive) {
    double[] k = springs();
    k[along] = drive;
    return k;
  }

  /** Returns the strips as faces. */
  public List<Patch.Flat> faces() {
    return List.of(face(-1), face(1));
  }

  private Patch.Flat face(int side) {
    double[] r = new double[6];
    int across = 2 - along;
    for (int axis = 0; axis < 3; axis++) {
      double half = axis == along ? length / 2 : axis == across ? width / 2 : 0;
      double at = middle.get(axis) + (axis == across ? side * centres / 2 : 0);
      r[2 * axis] = at - half;
      r[2 * axis + 1] = at + half;
    }
    return Patch.Rectangle.of(r);
  }

  /** Returns the strips as supports of an elastic body. */
  public List<Support.Springs> supports() {
    return faces().stream().map(f -> new Support.Springs(f, normal, tangential)).toList();
  }

  /** Returns the compliance of a rigid body on the strips, at their middle. */
  public Compliance rigid() {
    double[] k = springs();
    double[] c = new double[6];
    java.util.Arrays.setAll(c, i -> 1 / k[i]);
    return Compliance.diagonal(c);
  }
}
