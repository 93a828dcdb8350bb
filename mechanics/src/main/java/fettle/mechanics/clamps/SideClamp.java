package fettle.mechanics.clamps;

import fettle.mechanics.base.Bound;

/**
 * A side clamp in a T-slot: a screw drives a wedge that pushes the work against a stop.
 *
 * @param wedge angle of the wedge [rad]
 * @param friction friction on all faces [-]
 */
public record SideClamp(double wedge, double friction) {

  /** Refuses wedges that are none or that friction jams. */
  public SideClamp {
    Bound.angle("wedge", wedge, 0.5, 80);
    Bound.friction("mu", friction);
    if (!(wedge + Math.atan(friction) < Math.PI / 2 - 1e-6)) {
      throw new IllegalArgumentException(
          "wedge and friction angle together reach 90 deg: the wedge cannot be driven");
    }
  }

  /**
   * Side force of a screw force: F/(tan(w + rho) + tan rho).
   *
   * @param screwForce force of the screw [N]
   * @return side force S [N]
   */
  public double sideForce(double screwForce) {
    return screwForce / (Math.tan(wedge + Math.atan(friction)) + friction);
  }

  /**
   * Force that seats the work when the push is tilted down: S (tan delta - mu), since the stop
   * rubs; negative means the work may lift.
   *
   * @param sideForce side force S [N]
   * @param tilt tilt delta of the push below the horizontal [rad]
   * @return seating force [N]
   */
  public double seating(double sideForce, double tilt) {
    return sideForce * (Math.tan(tilt) - friction);
  }
}
