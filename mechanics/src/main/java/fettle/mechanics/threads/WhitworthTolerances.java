package fettle.mechanics.threads;

import java.util.Locale;

/**
 * Whitworth form threads (BS 84), in inches inside: {@code T = 0.002 D^(1/3) + 0.003 L^(1/2) +
 * 0.005 p^(1/2)} with the engagement L taken as the diameter; close 2/3 T, medium T, free and
 * normal 3/2 T. Medium and free screws up to 3/4 in stand off by 0.3 T.
 */
final class WhitworthTolerances {

  private static final double INCH = 25.4;

  private WhitworthTolerances() {}

  /**
   * Tolerance of the effective (pitch) diameter, not rounded.
   *
   * @param t the thread
   * @param tolerance close, medium, free or normal
   * @return tolerance [mm]
   */
  static double pitchDiameter(ThreadProfile t, String tolerance) {
    double d = t.d() / INCH;
    double p = t.p() / INCH;
    double medium = 0.002 * Math.cbrt(d) + 0.003 * Math.sqrt(d) + 0.005 * Math.sqrt(p);
    double factor =
        switch (named(tolerance)) {
          case "close" -> 2.0 / 3;
          case "medium" -> 1;
          case "free", "normal" -> 1.5;
          default ->
              throw new IllegalArgumentException(
                  "class: found '" + tolerance + "', expected close, medium, free or normal");
        };
    return factor * medium * INCH;
  }

  /**
   * Allowance of the screw, not rounded.
   *
   * @param t the thread
   * @param tolerance close, medium or free
   * @return allowance [mm]
   */
  static double allowance(ThreadProfile t, String tolerance) {
    boolean none = named(tolerance).equals("close") || t.d() > 0.75 * INCH + 1e-9;
    return none ? 0 : 0.3 * pitchDiameter(t, "medium");
  }

  static Limits.Screw screw(ThreadProfile t, String tolerance) {
    double root = Math.sqrt(t.p() / INCH);
    double off = tenths(allowance(t, tolerance) / INCH);
    double tolerated = pitchDiameter(t, tolerance) / INCH;
    double core = named(tolerance).equals("close") ? 0.013 : 0.02;
    return new Limits.Screw(
        below(t.d() / INCH - off, tolerated + 0.01 * root),
        below(t.d2() / INCH - off, tolerated),
        below(t.d3() / INCH - off, tolerated + core * root));
  }

  static Limits.Nut nut(ThreadProfile t, String tolerance) {
    double p = t.p() / INCH;
    double d2 = tenths(t.d2() / INCH);
    double d1 = tenths(t.nutMinor() / INCH);
    double td2 = tenths(pitchDiameter(t, tolerance) / INCH);
    double extra = p < 1 / 25.5 ? 0.004 : p < 1 / 21.5 ? 0.005 : 0.007;
    return new Limits.Nut(
        t.d(),
        ThreadLimits.inches(d2, d2 + td2),
        ThreadLimits.inches(d1, d1 + tenths(0.2 * p + extra)));
  }

  private static fettle.mechanics.base.Interval below(double high, double tolerance) {
    double top = tenths(high);
    return ThreadLimits.inches(top - tenths(tolerance), top);
  }

  private static String named(String tolerance) {
    return tolerance.trim().toLowerCase(Locale.ROOT);
  }

  private static double tenths(double inches) {
    return ThreadLimits.tenths(inches);
  }
}
