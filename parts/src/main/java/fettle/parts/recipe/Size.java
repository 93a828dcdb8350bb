package fettle.parts.recipe;

/**
 * A size: a diameter, a width, a length, with its tolerance.
 *
 * @param nominal nominal size [mm]
 * @param tolerance how far it may stray
 */
public record Size(double nominal, Tolerance tolerance) {

  /** Refuses what is not a size. */
  public Size {
    if (!(nominal >= 0) || nominal > 100_000) {
      throw new IllegalArgumentException(
          "a size must lie between 0 and 100000 mm, found " + nominal);
    }
  }

  /**
   * Returns a size to the general tolerance.
   *
   * @param nominal nominal size [mm]
   */
  public static Size of(double nominal) {
    return new Size(nominal, Tolerance.GENERAL);
  }

  /**
   * Returns a size with a tolerance zone.
   *
   * @param nominal nominal size [mm]
   * @param zone zone of ISO 286-1, e.g. {@code H7}
   */
  public static Size of(double nominal, String zone) {
    return new Size(nominal, Tolerance.zone(zone));
  }

  /**
   * Returns half the nominal size.
   *
   * @return radius of a diameter [mm]
   */
  public double half() {
    return nominal / 2;
  }
}
