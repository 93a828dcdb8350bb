package fettle.mechanics.clamps;

import fettle.mechanics.base.Bound;

/**
 * An eccentric lever that presses on a flat face: a round cam turning about a pin that stands off
 * its centre. The angle psi is that of the line from pin to centre, 0 parallel to the face, 90
 * degrees at dead centre, where the lift is greatest.
 *
 * @param radius radius R of the cam [mm]
 * @param eccentricity e, pin to centre [mm]
 * @param pinRadius radius r of the pin [mm]
 * @param faceFriction friction between cam and face [-]
 * @param pinFriction friction on the pin [-]
 */
public record CamLever(
    double radius, double eccentricity, double pinRadius, double faceFriction, double pinFriction) {

  /** Refuses what cannot be made. */
  public CamLever {
    Bound.positive("R", radius, "mm");
    Bound.positive("e", eccentricity, "mm");
    Bound.notNegative("pin_r", pinRadius, "mm");
    Bound.friction("mu_face", faceFriction);
    Bound.friction("mu_pin", pinFriction);
    if (!(eccentricity < radius)) {
      throw new IllegalArgumentException(
          "e = " + eccentricity + " mm: must be below R = " + radius + " mm");
    }
  }

  /**
   * Lift e sin(psi).
   *
   * @param psi angle [rad]
   * @return lift from psi = 0 [mm]
   */
  public double lift(double psi) {
    return eccentricity * Math.sin(psi);
  }

  /**
   * Lever arm of the friction: mu1 (R + e sin psi) + mu2 r sqrt(1 + mu1²).
   *
   * @param psi angle [rad]
   * @return friction moment over face force [mm]
   */
  public double frictionArm(double psi) {
    return faceFriction * (radius + lift(psi)) + pinArm();
  }

  private double pinArm() {
    return pinFriction * pinRadius * Math.sqrt(1 + faceFriction * faceFriction);
  }

  /**
   * Lever arm of the face force that turns the cam back: e cos psi, negative past dead centre.
   *
   * @param psi angle [rad]
   * @return moment of the face force over the force [mm]
   */
  public double backArm(double psi) {
    return eccentricity * Math.cos(psi);
  }

  /**
   * Force on the face from a closing moment: M/(e cos psi + mu1 h + mu2 r sqrt(1 + mu1²)).
   *
   * @param moment hand force times handle length [N mm]
   * @param psi angle [rad]
   * @return force on the face [N]
   * @throws IllegalArgumentException where the cam pulls itself through
   */
  public double force(double moment, double psi) {
    double arm = backArm(psi) + frictionArm(psi);
    if (!(arm > 1e-12 * radius)) {
      throw new IllegalArgumentException(
          "psi = "
              + Math.toDegrees(psi)
              + " deg: so far past dead centre the cam pulls itself through against any hand force");
    }
    return moment / arm;
  }

  /**
   * Moment that closes the cam on a given face force.
   *
   * @param force force on the face [N]
   * @param psi angle [rad]
   * @return closing moment [N mm]
   */
  public double closingMoment(double force, double psi) {
    return force * (backArm(psi) + frictionArm(psi));
  }

  /**
   * Moment that opens the cam; negative means it flies open by itself.
   *
   * @param force force on the face [N]
   * @param psi angle [rad]
   * @return opening moment [N mm]
   */
  public double openingMoment(double force, double psi) {
    return force * (frictionArm(psi) - backArm(psi));
  }

  /**
   * Tells whether it stays shut by friction alone: e cos psi &lt;= mu1 h + mu2 r sqrt(1 + mu1²).
   *
   * @param psi angle [rad]
   */
  public boolean staysShut(double psi) {
    return backArm(psi) <= frictionArm(psi) * (1 + 1e-12);
  }

  /**
   * Greatest eccentricity that stays shut at every angle, mu1 R + mu2 r sqrt(1 + mu1²); psi = 0 is
   * the worst angle.
   *
   * @param radius radius R of the cam [mm]
   * @param pinRadius radius r of the pin [mm]
   * @param faceFriction friction between cam and face [-]
   * @param pinFriction friction on the pin [-]
   * @return greatest eccentricity [mm]
   */
  public static double greatestEccentricity(
      double radius, double pinRadius, double faceFriction, double pinFriction) {
    return faceFriction * radius
        + pinFriction * pinRadius * Math.sqrt(1 + faceFriction * faceFriction);
  }

  /**
   * Least angle from which it stays shut up to dead centre.
   *
   * @return angle, 0 if it always stays shut [rad]
   */
  public double leastShutAngle() {
    double constant = faceFriction * radius + pinArm();
    if (eccentricity <= constant) {
      return 0;
    }
    double phase = Math.atan(faceFriction);
    double swing = eccentricity * Math.sqrt(1 + faceFriction * faceFriction);
    return Math.acos(Math.min(1, constant / swing)) - phase;
  }
}
