package fettle.mechanics.threads;

import fettle.mechanics.base.Rows;
import java.util.function.Supplier;

/**
 * Ends of a metric thread by its pitch: run-out, distance from a shoulder, undercut.
 *
 * @param runout longest incomplete thread x [mm]
 * @param shoulder longest distance from the shoulder to the first full thread a; 0 for a nut [mm]
 * @param grooveWidth greatest width of the undercut g2 [mm]
 * @param grooveStraight least straight width g1; 0 where none is listed [mm]
 * @param diameterChange how much the groove is smaller (screw) or greater (nut) than d [mm]
 * @param radius corner radius r, about [mm]
 */
public record ThreadEnd(
    double runout,
    double shoulder,
    double grooveWidth,
    double grooveStraight,
    double diameterChange,
    double radius) {

  private static final PitchTable TABLE = new PitchTable(Rows.read(ThreadEnd.class, "ends.csv"));

  /** Room that the end may take. */
  public enum Series {
    GENERAL,
    SHORT,
    LONG
  }

  /**
   * End of a screw; {@code x = 2.5 P, a = 3 P, g2 = 3 P}, short {@code 1.25 P, 2 P}, long {@code a
   * = 4 P}.
   *
   * @param p pitch, 0.2 to 8 [mm]
   * @param series room it may take
   */
  public static ThreadEnd external(double p, Series series) {
    check(p);
    double runout =
        series == Series.SHORT
            ? listed(p, "xShort", () -> 1.25 * p)
            : listed(p, "x", () -> 2.5 * p);
    double shoulder =
        switch (series) {
          case GENERAL -> 3 * p;
          case SHORT -> 2 * p;
          case LONG -> 4 * p;
        };
    return new ThreadEnd(
        runout,
        shoulder,
        3 * p,
        listed(p, "g1", () -> 1.7 * p),
        listed(p, "dg", () -> 1.45 * p),
        listed(p, "r", () -> 0.5 * p));
  }

  /**
   * End of a nut; {@code x = 4 P} and groove 4 P wide, short 2 P; groove diameter D + 0.5, below P
   * 1 D + 0.3.
   *
   * @param p pitch, 0.2 to 8 [mm]
   * @param series room it may take
   */
  public static ThreadEnd internal(double p, Series series) {
    check(p);
    double width = series == Series.SHORT ? 2 * p : 4 * p;
    return new ThreadEnd(width, 0, width, 0, p < 1 ? 0.3 : 0.5, 0.5 * p);
  }

  /**
   * Undercut of a trapezoidal screw, for which no standard stands.
   *
   * @param p pitch [mm]
   * @param coreMin least core diameter [mm]
   * @return groove diameter, the greatest useful one [mm]
   */
  public static double trapezoidalGroove(double p, double coreMin) {
    if (!(coreMin > 0.3) || !(p > 0)) {
      throw new IllegalArgumentException(
          "d3 min = " + coreMin + " mm: expected a core that bears a groove");
    }
    return coreMin - (p < 3 ? 0.1 : p < 6 ? 0.2 : 0.3);
  }

  /** Tells whether the standard's table has this pitch. */
  static boolean isListed(double p) {
    return TABLE.lists(p);
  }

  private static double listed(double p, String column, Supplier<Double> rule) {
    return TABLE.decimal(p, column).orElseGet(rule);
  }

  private static void check(double p) {
    if (!(p >= 0.2) || !(p <= 8)) {
      throw new IllegalArgumentException(
          "P = " + p + " mm: thread ends are given from 0.2 to 8 mm");
    }
  }
}
