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

  /** From micrometres, as the tables print them. */
  static Deviations microns(double lower, double upper) {
    return new Deviations(lower / 1000, upper / 1000);
  }

  /**
   * Returns upper minus lower.
   *
   * @return width of the tolerance [mm]
   */
  public double width() {
    return upper - lower;
  }

  /**
   * Returns the middle of the zone.
   *
   * @return deviation to aim at [mm]
   */
  public double middle() {
    return (lower + upper) / 2;
  }
}
