package fettle.mechanics.motion;

import fettle.mechanics.base.Source;

/** How far behind an opening a danger must lie, for persons of 14 years and over. */
public final class SafetyDistance {

  /** Where the distances come from. */
  public static final Source SOURCE = Source.page("ISO 13857:2019", "Table 4");

  private static final double[] UP_TO = {4, 6, 8, 10, 12, 20, 30, 40, 120};
  private static final double[] SLOT = {2, 10, 20, 80, 100, 120, 850, 850, 850};
  private static final double[] SQUARE = {2, 5, 15, 25, 80, 120, 120, 200, 850};
  private static final double[] ROUND = {2, 5, 5, 20, 80, 120, 120, 120, 850};

  /** A slot no longer than this stops the thumb, so that less is enough for 20 to 30 mm. */
  private static final double SHORT_SLOT = 65;

  private SafetyDistance() {}

  /**
   * Returns the distance behind a slot.
   *
   * @param opening least width of the slot [mm]
   * @param length its length [mm]
   * @return least distance to the danger [mm]
   */
  public static double slot(double opening, double length) {
    int row = row(opening);
    if (!(length >= opening)) {
      throw new IllegalArgumentException(
          "the length of a slot must be at least its width "
              + opening
              + " mm, found "
              + length
              + " mm");
    }
    return UP_TO[row] == 30 && length <= SHORT_SLOT ? 200 : SLOT[row];
  }

  /**
   * Returns the distance behind a square opening.
   *
   * @param opening side of the square [mm]
   * @return least distance to the danger [mm]
   */
  public static double square(double opening) {
    return SQUARE[row(opening)];
  }

  /**
   * Returns the distance behind a round opening.
   *
   * @param opening diameter [mm]
   * @return least distance to the danger [mm]
   */
  public static double round(double opening) {
    return ROUND[row(opening)];
  }

  private static int row(double opening) {
    if (!(opening > 0 && opening <= 120)) {
      throw new IllegalArgumentException(
          "the opening must be over 0 to 120 mm (beyond, the whole body can pass and this table"
              + " does not hold), found "
              + opening
              + " mm");
    }
    int row = 0;
    while (opening > UP_TO[row]) {
      row++;
    }
    return row;
  }
}
