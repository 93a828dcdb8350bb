package fettle.mechanics.threads;

import fettle.mechanics.base.Interval;
import java.util.Locale;

/**
 * Unified threads, classes 1A to 3B (ASME B1.1), in inches inside: {@code Td2(2A) = 0.0015 D^(1/3)
 * + 0.0015 LE^(1/2) + 0.015 P^(2/3)}, the other classes as multiples; sizes rounded to 0.0001 in.
 */
final class UnifiedTolerances {

  private static final double INCH = 25.4;

  private UnifiedTolerances() {}

  /**
   * Tolerance of the pitch diameter, not rounded.
   *
   * @param d major diameter [mm]
   * @param p pitch [mm]
   * @param engagement length of engagement [mm]
   * @param tolerance 1A, 2A, 3A, 1B, 2B or 3B
   * @return Td2 or TD2 [mm]
   */
  static double pitchDiameter(double d, double p, double engagement, String tolerance) {
    double classTwo =
        0.0015 * Math.cbrt(d / INCH)
            + 0.0015 * Math.sqrt(engagement / INCH)
            + 0.015 * Math.pow(p / INCH, 2.0 / 3);
    double factor =
        switch (named(tolerance)) {
          case "1A" -> 1.5;
          case "2A" -> 1;
          case "3A" -> 0.75;
          case "1B" -> 1.95;
          case "2B" -> 1.3;
          case "3B" -> 0.975;
          default -> throw unknown(tolerance);
        };
    return factor * classTwo * INCH;
  }

  /**
   * Allowance of the screw: 0.3 of the 2A tolerance for 1A and 2A, none for 3A.
   *
   * @param d major diameter [mm]
   * @param p pitch [mm]
   * @param engagement length of engagement [mm]
   * @param tolerance 1A, 2A or 3A
   * @return allowance, not rounded [mm]
   */
  static double allowance(double d, double p, double engagement, String tolerance) {
    return named(tolerance).equals("3A") ? 0 : 0.3 * pitchDiameter(d, p, engagement, "2A");
  }

  /**
   * Tolerance of the screw's major diameter, {@code 0.060 P^(2/3)}, 0.090 for 1A.
   *
   * @param p pitch [mm]
   * @param tolerance 1A, 2A or 3A
   * @return Td, not rounded [mm]
   */
  static double major(double p, String tolerance) {
    return (named(tolerance).equals("1A") ? 0.09 : 0.06) * Math.pow(p / INCH, 2.0 / 3) * INCH;
  }

  /**
   * Tolerance of the nut's minor diameter.
   *
   * @param d major diameter [mm]
   * @param p pitch [mm]
   * @param tolerance 1B, 2B or 3B
   * @return TD1, not rounded [mm]
   */
  static double minor(double d, double p, String tolerance) {
    double q = p / INCH;
    double size = d / INCH;
    double small = 0.05 * Math.pow(q, 2.0 / 3) + 0.03 * q / size - 0.002;
    double common = q <= 0.25 + 1e-9 ? 0.25 * q - 0.4 * q * q : 0.15 * q;
    double most = 0.394 * q;
    double result;
    if (named(tolerance).equals("3B")) {
      double least = q < 1 / 12.5 ? 0.23 * q - 1.5 * q * q : 0.12 * q;
      result = Math.min(most, Math.max(least, small));
    } else {
      result = size < 0.25 ? Math.min(most, Math.max(common, small)) : common;
    }
    return result * INCH;
  }

  static Limits.Screw screw(ThreadDesignation thread, String tolerance, double engagement) {
    if (!named(tolerance).endsWith("A")) {
      throw unknown(tolerance);
    }
    ThreadProfile t = thread.profile();
    double allowance = tenths(allowance(t.d(), t.p(), engagement, tolerance) / INCH);
    double d = tenths(t.d() / INCH) - allowance;
    double d2 = tenths(t.d2() / INCH) - allowance;
    double td2 = tenths(pitchDiameter(t.d(), t.p(), engagement, tolerance) / INCH);
    double td = tenths(major(t.p(), tolerance) / INCH);
    double low = d2 * INCH - td2 * INCH - 0.616025 * t.p();
    return new Limits.Screw(
        ThreadLimits.inches(d - td, d),
        ThreadLimits.inches(d2 - td2, d2),
        new Interval(low, t.nutMinor() - allowance * INCH));
  }

  static Limits.Nut nut(ThreadDesignation thread, String tolerance, double engagement) {
    if (!named(tolerance).endsWith("B")) {
      throw unknown(tolerance);
    }
    ThreadProfile t = thread.profile();
    double d2 = tenths(t.d2() / INCH);
    double td2 = tenths(pitchDiameter(t.d(), t.p(), engagement, tolerance) / INCH);
    double d1 = t.nutMinor() / INCH;
    double td1 = minor(t.d(), t.p(), tolerance) / INCH;
    return new Limits.Nut(
        t.d(),
        ThreadLimits.inches(d2, d2 + td2),
        ThreadLimits.inches(tenths(d1), Math.max(tenths(d1), tenths(d1 + td1))));
  }

  private static String named(String tolerance) {
    return tolerance.trim().toUpperCase(Locale.ROOT);
  }

  private static double tenths(double inches) {
    return ThreadLimits.tenths(inches);
  }

  private static IllegalArgumentException unknown(String tolerance) {
    return new IllegalArgumentException(
        "class: found '"
            + tolerance
            + "', expected 1A, 2A or 3A for a screw, 1B, 2B or 3B for a"
            + " nut");
  }
}
