package fettle.mechanics.clamps;

import fettle.mechanics.base.Bound;

/**
 * An eccentric shaft that draws a bolt through an eye, as on a tailstock lever. psi is 0 where the
 * eccentric moves the bolt fastest and 90 degrees at dead centre.
 *
 * @param eccentricity e [mm]
 * @param eyeRadius radius rc of the eccentric journal in the eye [mm]
 * @param boreRadius radius rb of the shaft in its bores [mm]
 * @param friction friction in both [-]
 */
public record DrawEccentric(
    double eccentricity, double eyeRadius, double boreRadius, double friction) {

  /** Refuses what cannot be made. */
  public DrawEccentric {
    Bound.positive("e", eccentricity, "mm");
    Bound.positive("rc", eyeRadius, "mm");
    Bound.positive("rb", boreRadius, "mm");
    Bound.friction("mu", friction);
  }

  /**
   * Moment on the shaft: N (e cos psi + mu (rc + rb)).
   *
   * @param pull pull of the bolt N [N]
   * @param psi angle [rad]
   * @return moment [N mm]
   */
  public double moment(double pull, double psi) {
    return pull * (eccentricity * Math.cos(psi) + frictionArm());
  }

  /**
   * Friction moment over pull, mu (rc + rb).
   *
   * @return arm [mm]
   */
  public double frictionArm() {
    return friction * (eyeRadius + boreRadius);
  }

  /**
   * Tells whether it stays shut: e cos psi &lt;= mu (rc + rb).
   *
   * @param psi angle [rad]
   */
  public boolean staysShut(double psi) {
    return eccentricity * Math.cos(psi) <= frictionArm() * (1 + 1e-12);
  }

  /**
   * Least angle from which it stays shut up to dead centre, acos(mu (rc + rb)/e).
   *
   * @return angle, 0 if it always stays shut [rad]
   */
  public double leastShutAngle() {
    return Math.acos(Math.min(1, frictionArm() / eccentricity));
  }
}
