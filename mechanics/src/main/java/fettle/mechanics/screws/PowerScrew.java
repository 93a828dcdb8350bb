package fettle.mechanics.screws;

/**
 * A screw that moves a load, by its pitch diameter, lead and flank angle.
 *
 * @param d2 pitch diameter [mm]
 * @param lead axial advance in one turn, Ph [mm]
 * @param halfAngle half the flank angle in the axial plane, alpha; 0 for a square thread [rad]
 */
public record PowerScrew(double d2, double lead, double halfAngle) {

  /** Refuses impossible sizes. */
  public PowerScrew {
    if (!(d2 > 0) || !(d2 < 2000)) {
      throw new IllegalArgumentException("d2 = " + d2 + " mm: expected more than 0");
    }
    if (!(lead > 0) || !(lead <= 4 * d2)) {
      throw new IllegalArgumentException(
          "Ph = " + lead + " mm: expected more than 0 and at most four times d2 = " + d2 + " mm");
    }
    if (!(halfAngle >= 0) || !(halfAngle <= Math.toRadians(45))) {
      throw new IllegalArgumentException(
          "alpha = "
              + Math.toDegrees(halfAngle)
              + " deg: expected half the flank angle, 0 to 45 deg (30 for M, 15 for Tr)");
    }
  }

  /**
   * Lead angle, {@code tan lambda = Ph/(pi d2)}.
   *
   * @return lambda [rad]
   */
  public double leadAngle() {
    return Math.atan(lead / (Math.PI * d2));
  }

  /**
   * Half the flank angle square to the helix, {@code tan alpha_n = tan alpha cos lambda}.
   *
   * @return alpha_n [rad]
   */
  public double normalHalfAngle() {
    return Math.atan(Math.tan(halfAngle) * Math.cos(leadAngle()));
  }

  /**
   * Moment that moves the load against its force, {@code T = F d2/2 (c tan lambda + mu)/(c - mu tan
   * lambda)}, c = cos alpha_n.
   *
   * @param force load along the axis [N]
   * @param friction coefficient of friction in the thread, mu [-]
   * @return moment, thread alone [N mm]
   * @throws IllegalArgumentException if the friction jams the thread at any moment
   */
  public double raisingMoment(double force, double friction) {
    checkFriction(friction);
    double c = Math.cos(normalHalfAngle());
    double tangent = Math.tan(leadAngle());
    double below = c - friction * tangent;
    if (!(below > 0)) {
      throw new IllegalArgumentException(
          "mu = "
              + friction
              + ": with this lead angle no moment moves the load; expected mu below "
              + c / tangent);
    }
    return force * d2 / 2 * (c * tangent + friction) / below;
  }

  /**
   * Moment that moves the load with its force, {@code T = F d2/2 (mu - c tan lambda)/(c + mu tan
   * lambda)}; negative if the load drives the screw.
   *
   * @param force load along the axis [N]
   * @param friction coefficient of friction in the thread, mu [-]
   * @return moment, thread alone [N mm]
   */
  public double loweringMoment(double force, double friction) {
    checkFriction(friction);
    double c = Math.cos(normalHalfAngle());
    double tangent = Math.tan(leadAngle());
    return force * d2 / 2 * (friction - c * tangent) / (c + friction * tangent);
  }

  /**
   * Least friction with which the thread holds by itself, {@code c tan lambda}.
   *
   * @return mu at the limit [-]
   */
  public double lockingFriction() {
    return Math.cos(normalHalfAngle()) * Math.tan(leadAngle());
  }

  /**
   * Way that the flanks slide for each mm of travel, {@code pi d2/(Ph cos lambda)}.
   *
   * @return ratio [-]
   */
  public double slidingRatio() {
    return Math.PI * d2 / (lead * Math.cos(leadAngle()));
  }

  /**
   * Moment of a thrust face, {@code T = mu_c F Dc/2}.
   *
   * @param force load along the axis [N]
   * @param friction coefficient of friction of the face, mu_c [-]
   * @param diameter mean diameter of the face, Dc [mm]
   * @return moment [N mm]
   */
  public static double collarMoment(double force, double friction, double diameter) {
    checkFriction(friction);
    if (!(diameter >= 0)) {
      throw new IllegalArgumentException("Dc = " + diameter + " mm: expected 0 or more");
    }
    return friction * force * diameter / 2;
  }

  /**
   * Mean diameter of a worn thrust face, {@code (Do + Di)/2}.
   *
   * @param outer outer diameter [mm]
   * @param inner inner diameter [mm]
   * @return Dc [mm]
   */
  public static double wornCollar(double outer, double inner) {
    checkRing(outer, inner);
    return (outer + inner) / 2;
  }

  /**
   * Mean diameter of a new, evenly pressed thrust face, {@code 2/3 (Do^3 - Di^3)/(Do^2 - Di^2)}.
   *
   * @param outer outer diameter [mm]
   * @param inner inner diameter [mm]
   * @return Dc [mm]
   */
  public static double newCollar(double outer, double inner) {
    checkRing(outer, inner);
    double sum = outer + inner;
    return 2.0 / 3 * (sum - outer * inner / sum);
  }

  /**
   * Efficiency, {@code F Ph/(2 pi T)}.
   *
   * @param force load along the axis [N]
   * @param moment moment put in, all losses counted [N mm]
   * @return efficiency [-]
   */
  public double efficiency(double force, double moment) {
    return force * lead / (2 * Math.PI * moment);
  }

  /**
   * Drag of a nut in two halves pressed apart, {@code F0 d2/2 (tan(rho + lambda) + tan(rho -
   * lambda))}, {@code tan rho = mu/c}.
   *
   * @param preload force between the halves, F0 [N]
   * @param friction coefficient of friction in the thread, mu [-]
   * @return moment that turns the unloaded screw [N mm]
   */
  public double preloadMoment(double preload, double friction) {
    return raisingMoment(preload, friction) + loweringMoment(preload, friction);
  }

  private static void checkRing(double outer, double inner) {
    if (!(inner >= 0) || !(outer > inner)) {
      throw new IllegalArgumentException(
          "Do = " + outer + " mm, Di = " + inner + " mm: expected Do greater than Di");
    }
  }

  private static void checkFriction(double friction) {
    if (!(friction >= 0) || !(friction <= 1.5)) {
      throw new IllegalArgumentException(
          "mu = " + friction + ": expected a coefficient of friction from 0 to 1.5");
    }
  }
}
