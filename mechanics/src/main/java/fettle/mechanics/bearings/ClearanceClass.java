package fettle.mechanics.bearings;

import fettle.mechanics.base.Interval;

/**
 * Radial internal clearance of new deep groove ball bearings by class.
 *
 * @see Sources#CLEARANCE
 */
public final class ClearanceClass {

  private static final double[] OVER = {2.5, 10, 18, 24, 30, 40};
  private static final double[] TO = {10, 18, 24, 30, 40, 50};
  private static final int[][] C2 = {{0, 7}, {0, 9}, {0, 10}, {1, 11}, {1, 11}, {1, 11}};
  private static final int[][] CN = {{2, 13}, {3, 18}, {5, 20}, {5, 20}, {6, 20}, {6, 23}};
  private static final int[][] C3 = {{8, 23}, {11, 25}, {13, 28}, {13, 28}, {15, 33}, {18, 36}};

  private ClearanceClass() {}

  /**
   * Returns the least and greatest radial clearance, as measured on diameter.
   *
   * @param bore d, above 2.5 to 50 [mm]
   * @param name C2, CN or C3
   */
  public static Interval of(double bore, String name) {
    int[][] rows =
        switch (name) {
          case "C2" -> C2;
          case "CN" -> CN;
          case "C3" -> C3;
          default ->
              throw new IllegalArgumentException(
                  "class: found '" + name + "', expected C2, CN or C3");
        };
    for (int i = 0; i < OVER.length; i++) {
      if (bore > OVER[i] && bore <= TO[i]) {
        return new Interval(rows[i][0] / 1000.0, rows[i][1] / 1000.0);
      }
    }
    throw new IllegalArgumentException("bore: found " + bore + " mm, expected above 2.5 to 50 mm");
  }
}
