package fettle.sheets.dimension;

/**
 * A linear dimension beside a view, in sheet millimetres of the view.
 *
 * @param side side on which it stands
 * @param low lower of its two places along the side [mm]
 * @param high upper place [mm]
 * @param lowFrom where the extension line of the lower place starts, across the side [mm]
 * @param highFrom where that of the upper place starts [mm]
 * @param text what it says
 * @param real what it measures on the part; of a face +1 or -1, the side it looks to [mm]
 * @param attached tolerance frames and datum on its line; on a face, where low and high are one
 */
public record Linear(
    Side side,
    double low,
    double high,
    double lowFrom,
    double highFrom,
    String text,
    double real,
    Attached attached) {

  /**
   * A dimension without tolerances of geometry.
   *
   * @param side side on which it stands
   * @param low lower of its two places along the side [mm]
   * @param high upper place [mm]
   * @param lowFrom where the extension line of the lower place starts, across the side [mm]
   * @param highFrom where that of the upper place starts [mm]
   * @param text what it says
   * @param real what it measures on the part [mm]
   */
  public Linear(
      Side side,
      double low,
      double high,
      double lowFrom,
      double highFrom,
      String text,
      double real) {
    this(side, low, high, lowFrom, highFrom, text, real, Attached.NOTHING);
  }

  /** Tells whether it is no dimension but what is asked of one face. */
  boolean isFace() {
    return high - low < 1e-9;
  }
}
