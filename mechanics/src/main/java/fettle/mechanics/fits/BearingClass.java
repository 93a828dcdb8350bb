package fettle.mechanics.fits;

/**
 * Tolerance classes of rolling bearings and their own limits of bore and outside diameter. Both lie
 * below the nominal size, so a seat must be reckoned against these and not against H or h.
 */
public enum BearingClass {
  /** Normal class, also called class 0 or P0. */
  NORMAL("P0"),
  /** Class 6. */
  P6("P6"),
  /** Class 5. */
  P5("P5"),
  /** Class 4. */
  P4("P4"),
  /** Tapered roller bearings, normal class. */
  TAPERED("tapered");

  private static final Table BORES = Table.read("bearing-bores.csv");
  private static final Table OUTSIDES = Table.read("bearing-outsides.csv");

  private final String column;

  BearingClass(String column) {
    this.column = column;
  }

  /** Returns the class written so. */
  public static BearingClass parse(String text) {
    return switch (text.trim()) {
      case "normal", "PN", "P0" -> NORMAL;
      case "P6" -> P6;
      case "P5" -> P5;
      case "P4" -> P4;
      case "tapered" -> TAPERED;
      default ->
          throw new IllegalArgumentException(
              "bearing class '" + text + "': expected normal, P6, P5, P4 or tapered");
    };
  }

  /**
   * Limits of the mean bore diameter.
   *
   * @param bore nominal bore, over 0 to 500 [mm]
   */
  public Deviations bore(double bore) {
    return below(BORES, bore);
  }

  /**
   * Limits of the mean outside diameter.
   *
   * @param outside nominal outside diameter, over 0 to 500 [mm]
   */
  public Deviations outside(double outside) {
    return below(OUTSIDES, outside);
  }

  private Deviations below(Table table, double size) {
    double width =
        table
            .at(size, column)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "no limits are tabled for class " + column + " at " + size + " mm"));
    return Deviations.microns(-width, 0);
  }
}
