package fettle.mechanics.fits;

/**
 * A hole and a shaft of the same nominal size.
 *
 * @param hole limit deviations of the hole
 * @param shaft limit deviations of the shaft
 */
public record Fit(Deviations hole, Deviations shaft) {

  /** Kinds of fit by ISO 286-1. */
  public enum Kind {
    /** The shaft always goes in loosely, at worst size for size. */
    CLEARANCE,
    /** Either may happen. */
    TRANSITION,
    /** The shaft is always the larger, at worst size for size. */
    INTERFERENCE
  }

  /**
   * ES - ei; negative means interference.
   *
   * @return greatest clearance [mm]
   */
  public double maxClearance() {
    return Deviations.exact(hole.upper() - shaft.lower());
  }

  /**
   * EI - es; negative means interference.
   *
   * @return least clearance [mm]
   */
  public double minClearance() {
    return Deviations.exact(hole.lower() - shaft.upper());
  }

  /** Returns the kind of fit by the signs of its two limits. */
  public Kind kind() {
    if (minClearance() >= -1e-12) {
      return Kind.CLEARANCE;
    }
    return maxClearance() <= 1e-12 ? Kind.INTERFERENCE : Kind.TRANSITION;
  }

  /**
   * Change of clearance when both parts warm: d (alpha_hole - alpha_shaft) dT.
   *
   * @param size nominal size [mm]
   * @param holeExpansion expansion coefficient of the outer part [1/K]
   * @param shaftExpansion expansion coefficient of the inner part [1/K]
   * @param rise temperature rise of both [K]
   * @return growth of the clearance [mm]
   */
  public static double clearanceGrowth(
      double size, double holeExpansion, double shaftExpansion, double rise) {
    return size * (holeExpansion - shaftExpansion) * rise;
  }
}
