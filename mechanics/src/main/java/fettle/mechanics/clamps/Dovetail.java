package fettle.mechanics.clamps;

import fettle.mechanics.base.Bound;

/**
 * A dovetail slide pushed sideways by its gib.
 *
 * @param flankAngle angle of the flanks to the base [rad]
 */
public record Dovetail(double flankAngle) {

  /** Refuses flanks that are none. */
  public Dovetail {
    Bound.angle("flank_angle", flankAngle, 30, 90);
  }

  /**
   * Drag of the gib alone: 2 mu F (1 + cos t)/sin t.
   *
   * @param gibForce side force of all gib screws F [N]
   * @param friction friction mu [-]
   * @return drag along the slide [N]
   */
  public double drag(double gibForce, double friction) {
    return 2 * friction * gibForce * (1 + Math.cos(flankAngle)) / Math.sin(flankAngle);
  }

  /**
   * Gib force for a drag, the inverse.
   *
   * @param drag drag along the slide [N]
   * @param friction friction mu [-]
   * @return side force of all gib screws [N]
   */
  public double gibForce(double drag, double friction) {
    return drag / drag(1, friction);
  }

  /**
   * Force with which the gib pulls the slide down on its base: 2 F cot t.
   *
   * @param gibForce side force of all gib screws F [N]
   * @return seating force [N]
   */
  public double seating(double gibForce) {
    return 2 * gibForce / Math.tan(flankAngle);
  }
}
