package fettle.mechanics.fits;

/**
 * Limit deviations from a nominal size.
 *
 * @param lower EI of a hole, ei of a shaft [mm]
 * @param upper ES of a hole, es of a shaft [mm]
 */
public record Deviations(double lower, double upper) {

  /** Refuses NaN and limits in the wrong order. */
  public Deviations {
    if (!(lower <= upper)) {
      throw new IllegalArgumentException(
          "limit deviations: lower " + lower + " mm must not be above upper " + upper + " mm");
    }
  }

  /**
   * From micrometres, as the tables print them.
   *
   * @param lower lower deviation [µm]
   * @param upper upper deviation [µm]
   */
  static Deviations microns(double lower, double upper) {
    return new Deviations(lower / 1000, upper / 1000);
  }

  /**
   * Returns upper minus lower.
   *
   * @return width of the tolerance [mm]
   */
  public double width() {
    return exact(upper - lower);
  }

  /**
   * Returns the middle of the zone.
   *
   * @return deviation to aim at [mm]
   */
  public double middle() {
    return exact((lower + upper) / 2);
  }

  /**
   * Drops the noise of binary fractions from a sum of printed figures: to the nearest 1e-9 mm.
   *
   * @param length a length made of decimal figures [mm]
   * @return the same to the nearest 1e-9 mm [mm]
   */
  static double exact(double length) {
    return Math.rint(length * 1e9) / 1e9;
  }
}
