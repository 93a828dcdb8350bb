package fettle.mechanics.screws;

/**
 * The thread of a nut under load.
 *
 * @param d2 pitch diameter [mm]
 * @param p pitch, not the lead [mm]
 * @param engagement depth on which the flanks face each other, H1 [mm]
 * @param length length of the nut, Ln [mm]
 */
public record Nut(double d2, double p, double engagement, double length) {

  /** Refuses impossible sizes. */
  public Nut {
    if (!(d2 > 0) || !(p > 0) || !(engagement > 0) || !(length > 0)) {
      throw new IllegalArgumentException(
          "d2, P, H1 and Ln: expected more than 0 mm, found "
              + d2
              + ", "
              + p
              + ", "
              + engagement
              + ", "
              + length);
    }
    if (!(engagement <= p)) {
      throw new IllegalArgumentException(
          "H1 = " + engagement + " mm: expected at most the pitch, " + p + " mm");
    }
  }

  /**
   * Pressure on the flanks, {@code p = F P/(pi d2 H1 Ln)}.
   *
   * @param force load along the axis [N]
   * @return mean pressure [MPa]
   */
  public double pressure(double force) {
    return force * p / (Math.PI * d2 * engagement * length);
  }

  /**
   * Length of nut that keeps a pressure.
   *
   * @param force load along the axis [N]
   * @param pressure pressure allowed [MPa]
   * @return Ln [mm]
   */
  public double lengthFor(double force, double pressure) {
    return force * p / (Math.PI * d2 * engagement * pressure);
  }

  /**
   * Travel of the slide until the flanks have worn by h, {@code L = h/(k p)/ratio}.
   *
   * @param wear axial wear allowed, h [mm]
   * @param coefficient wear coefficient k [mm2/N]
   * @param pressure pressure on the flanks, p [MPa]
   * @param slidingRatio flank way for each mm of travel [-]
   * @return travel [mm]
   */
  public static double life(double wear, double coefficient, double pressure, double slidingRatio) {
    check(wear, coefficient, pressure, slidingRatio);
    return wear / (coefficient * pressure) / slidingRatio;
  }

  /**
   * Wear coefficient from a nut that has worn, {@code k = h/(p L ratio)}.
   *
   * @param wear axial wear found, h [mm]
   * @param travel travel of the slide since new [mm]
   * @param pressure pressure on the flanks, p [MPa]
   * @param slidingRatio flank way for each mm of travel [-]
   * @return k [mm2/N]
   */
  public static double wearCoefficient(
      double wear, double travel, double pressure, double slidingRatio) {
    check(wear, travel, pressure, slidingRatio);
    return wear / (pressure * travel * slidingRatio);
  }

  private static void check(double a, double b, double c, double d) {
    if (!(a > 0) || !(b > 0) || !(c > 0) || !(d > 0)) {
      throw new IllegalArgumentException(
          "wear, coefficient or travel, pressure and sliding ratio: expected more than 0");
    }
  }
}
