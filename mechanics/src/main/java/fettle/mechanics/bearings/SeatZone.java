package fettle.mechanics.bearings;

import fettle.mechanics.base.Interval;
import java.util.List;

/**
 * Limit deviations of bearing seats and of the bearings themselves, as far as a small lathe needs
 * them.
 *
 * @see Sources#SEATS
 */
public final class SeatZone {

  private record Row(String zone, double over, double to, double low, double high) {}

  private static final List<Row> ROWS =
      List.of(
          new Row("h5", 10, 18, -8, 0),
          new Row("h5", 18, 30, -9, 0),
          new Row("h5", 30, 50, -11, 0),
          new Row("j5", 10, 18, -3, 5),
          new Row("j5", 18, 30, -4, 5),
          new Row("j5", 30, 50, -5, 6),
          new Row("js5", 10, 18, -4, 4),
          new Row("js5", 18, 30, -4.5, 4.5),
          new Row("js5", 30, 50, -5.5, 5.5),
          new Row("k5", 10, 18, 1, 9),
          new Row("k5", 18, 30, 2, 11),
          new Row("k5", 30, 50, 2, 13),
          new Row("H6", 18, 30, 0, 13),
          new Row("H6", 30, 50, 0, 16),
          new Row("H6", 50, 80, 0, 19),
          new Row("J6", 18, 30, -5, 8),
          new Row("J6", 30, 50, -6, 10),
          new Row("J6", 50, 80, -6, 13),
          new Row("JS6", 18, 30, -6.5, 6.5),
          new Row("JS6", 30, 50, -8, 8),
          new Row("JS6", 50, 80, -9.5, 9.5),
          new Row("K6", 18, 30, -11, 2),
          new Row("K6", 30, 50, -13, 3),
          new Row("K6", 50, 80, -15, 4),
          new Row("bore normal", 10, 18, -8, 0),
          new Row("bore normal", 18, 30, -10, 0),
          new Row("bore normal", 30, 50, -12, 0),
          new Row("bore P5", 10, 18, -5, 0),
          new Row("bore P5", 18, 30, -6, 0),
          new Row("bore P5", 30, 50, -8, 0));

  private static final double[][] RUN_OUT = {{10, 7, 4, 2.5}, {13, 8, 4, 3}, {15, 10, 5, 4}};

  private SeatZone() {}

  /** Returns the zones that are tabulated. */
  public static List<String> zones() {
    return ROWS.stream().map(Row::zone).distinct().toList();
  }

  /**
   * Returns the limit deviations of a zone.
   *
   * @param zone such as k5, J6, or {@code bore normal} for the bearing's own bore
   * @param size nominal size [mm]
   */
  public static Interval of(String zone, double size) {
    for (Row row : ROWS) {
      boolean first = row.over == 10 && size == 10;
      if (row.zone.equals(zone) && (first || (size > row.over && size <= row.to))) {
        return new Interval(row.low / 1000, row.high / 1000);
      }
    }
    throw new IllegalArgumentException(
        "seat: found zone '"
            + zone
            + "' at "
            + size
            + " mm, expected one of "
            + String.join(", ", zones())
            + " for shafts 10 to 50 mm and housings above 18 to 80 mm");
  }

  /**
   * Returns the run-out of an assembled inner ring.
   *
   * @param bore d, 10 to 50 [mm]
   * @param accuracy normal, P6, P5 or P4
   * @return Kia [mm]
   * @see Sources#RING_ACCURACY
   */
  public static double ringRunOut(double bore, String accuracy) {
    Need.within("bore", bore, 10, 50);
    int row = bore <= 18 ? 0 : bore <= 30 ? 1 : 2;
    int column = List.of("normal", "P6", "P5", "P4").indexOf(accuracy);
    if (column < 0) {
      throw new IllegalArgumentException(
          "class: found '" + accuracy + "', expected normal, P6, P5 or P4");
    }
    return RUN_OUT[row][column] / 1000;
  }
}
