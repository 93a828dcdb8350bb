package fettle.parts.recipe;

/**
 * How far a size may stray.
 *
 * @param kind how the tolerance is stated
 * @param zone tolerance zone of ISO 286-1 such as {@code H7}; empty unless the kind is ZONE
 * @param lower lower limit deviation [mm]
 * @param upper upper limit deviation [mm]
 */
public record Tolerance(Kind kind, String zone, double lower, double upper) {

  /** How a tolerance is stated. */
  public enum Kind {
    /** The general tolerance of the sheet applies. */
    GENERAL,
    /** A zone such as {@code H7}. */
    ZONE,
    /** Two limit deviations. */
    LIMITS,
    /** An auxiliary dimension in brackets, without tolerance. */
    AUXILIARY,
    /** Theoretically exact; a geometrical tolerance says how exact. */
    EXACT
  }

  public static final Tolerance GENERAL = new Tolerance(Kind.GENERAL, "", 0, 0);
  public static final Tolerance AUXILIARY = new Tolerance(Kind.AUXILIARY, "", 0, 0);
  public static final Tolerance EXACT = new Tolerance(Kind.EXACT, "", 0, 0);

  /** Refuses limits in the wrong order. */
  public Tolerance {
    if (!(lower <= upper)) {
      throw new IllegalArgumentException(
          "lower limit deviation " + lower + " mm lies above the upper one, " + upper + " mm");
    }
  }

  /** Returns the zone of that name, e.g. {@code k6}. */
  public static Tolerance zone(String zone) {
    if (!zone.matches("[A-Za-z]{1,2}[0-9]{1,2}")) {
      throw new IllegalArgumentException(
          "'" + zone + "' is no tolerance zone; write letters and grade, such as H7 or k6");
    }
    return new Tolerance(Kind.ZONE, zone, 0, 0);
  }

  /**
   * Returns limit deviations.
   *
   * @param lower lower limit deviation [mm]
   * @param upper upper limit deviation [mm]
   */
  public static Tolerance limits(double lower, double upper) {
    return new Tolerance(Kind.LIMITS, "", lower, upper);
  }

  /** Tells whether somebody asked for more than the general tolerance. */
  public boolean isFit() {
    return kind == Kind.ZONE || kind == Kind.LIMITS;
  }
}
