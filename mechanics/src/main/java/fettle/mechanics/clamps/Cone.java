package fettle.mechanics.clamps;

import fettle.mechanics.base.Bound;

/**
 * A cone pressed into its socket, such as a taper dial clamp.
 *
 * @param halfAngle half the included angle [rad]
 * @param friction friction of the faces [-]
 */
public record Cone(double halfAngle, double friction) {

  /** Refuses angles that make no cone. */
  public Cone {
    Bound.angle("half_angle", halfAngle, 0.01, 89.9);
    Bound.friction("mu", friction);
  }

  /**
   * Normal force while it is being closed: Fa/(sin a + mu cos a).
   *
   * @param axial axial force Fa [N]
   * @return normal force [N]
   */
  public double closingNormal(double axial) {
    return axial / (Math.sin(halfAngle) + friction * Math.cos(halfAngle));
  }

  /**
   * Normal force after vibration has let it settle: Fa/sin a.
   *
   * @param axial axial force Fa [N]
   * @return normal force [N]
   */
  public double settledNormal(double axial) {
    return axial / Math.sin(halfAngle);
  }

  /**
   * Torque it carries: mu N Dm/2.
   *
   * @param normal normal force [N]
   * @param meanDiameter mean diameter of the cone [mm]
   * @return slip torque [N mm]
   */
  public double torque(double normal, double meanDiameter) {
    return friction * normal * meanDiameter / 2;
  }

  /**
   * Axial force to pull it off after the axial force is gone: N (mu cos a - sin a); negative means
   * it comes off by itself.
   *
   * @param normal normal force left behind [N]
   * @return pull-off force [N]
   */
  public double pullOff(double normal) {
    return normal * (friction * Math.cos(halfAngle) - Math.sin(halfAngle));
  }

  /** Tells whether it stays in by itself: tan a &lt; mu. */
  public boolean sticks() {
    return Math.tan(halfAngle) < friction;
  }
}
