package fettle.mechanics.threads;

import java.util.Locale;

/**
 * General purpose Acme threads, classes 2G, 3G and 4G (ASME B1.5), in inches inside: allowance
 * {@code a sqrt(D)}, pitch diameter tolerance {@code b sqrt(D) + c sqrt(1/n)}, crest tolerance 0.05
 * P.
 */
final class AcmeTolerances {

  private record Grade(double allowance, double byDiameter, double byPitch) {}

  private static final double INCH = 25.4;
  private static final double LEAST_CREST = 0.005;

  private AcmeTolerances() {}

  private static Grade grade(String tolerance) {
    return switch (tolerance.trim().toUpperCase(Locale.ROOT)) {
      case "2G" -> new Grade(0.008, 0.006, 0.030);
      case "3G" -> new Grade(0.006, 0.0028, 0.014);
      case "4G" -> new Grade(0.004, 0.002, 0.010);
      default ->
          throw new IllegalArgumentException(
              "class: found '"
                  + tolerance
                  + "', expected 2G, 3G or 4G for a general purpose Acme"
                  + " thread");
    };
  }

  /**
   * Tolerance of the pitch diameter, not rounded.
   *
   * @param t the thread
   * @param tolerance class
   * @return tolerance on d2 and D2 [mm]
   */
  static double pitchDiameter(ThreadProfile t, String tolerance) {
    Grade g = grade(tolerance);
    return INCH * (g.byDiameter * Math.sqrt(t.d() / INCH) + g.byPitch * Math.sqrt(t.p() / INCH));
  }

  /**
   * Allowance on the screw's pitch diameter, not rounded.
   *
   * @param t the thread
   * @param tolerance class
   * @return allowance [mm]
   */
  static double allowance(ThreadProfile t, String tolerance) {
    return INCH * grade(tolerance).allowance * Math.sqrt(t.d() / INCH);
  }

  static Limits.Screw screw(ThreadProfile t, String tolerance) {
    double d = t.d() / INCH;
    double p = t.p() / INCH;
    double d2 = tenths(t.d2() / INCH - tenths(allowance(t, tolerance) / INCH));
    double td2 = tenths(pitchDiameter(t, tolerance) / INCH);
    double d3 = t.d3() / INCH;
    return new Limits.Screw(
        ThreadLimits.inches(d - crest(p), d),
        ThreadLimits.inches(d2 - td2, d2),
        ThreadLimits.inches(d3 - tenths(1.5 * td2), d3));
  }

  static Limits.Nut nut(ThreadProfile t, String tolerance) {
    double p = t.p() / INCH;
    double d2 = t.d2() / INCH;
    double d1 = t.nutMinor() / INCH;
    double td2 = tenths(pitchDiameter(t, tolerance) / INCH);
    return new Limits.Nut(
        t.nutMajor(), ThreadLimits.inches(d2, d2 + td2), ThreadLimits.inches(d1, d1 + crest(p)));
  }

  /**
   * Tolerance of the crest, 0.05 P and at least 0.005 in.
   *
   * @param p pitch [in]
   * @return tolerance [in]
   */
  static double crest(double p) {
    return Math.max(LEAST_CREST, tenths(0.05 * p));
  }

  private static double tenths(double inches) {
    return ThreadLimits.tenths(inches);
  }
}
