package fettle.mechanics.threads;

import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Rows;
import java.util.Locale;
import java.util.Map;

/** Limits of size of a thread by its tolerance class. */
public final class ThreadLimits {

  private static final PitchTable TRAPEZOIDAL =
      new PitchTable(Rows.read(ThreadLimits.class, "trapezoidal.csv"));
  private static final double[] STARTS_FACTOR = {1, 1.12, 1.25, 1.4, 1.6};
  private static final double ROOT_BELOW_PITCH_LINE = 0.616025;
  private static final double INCH = 25.4;

  private ThreadLimits() {}

  /** Whether the pitch-diameter tolerance of a trapezoidal thread grows with the starts. */
  public enum Widening {
    /** As suppliers make them: no growth. */
    NONE,
    /** By the factors of ISO 2903: 1.12, 1.25, 1.4, 1.6. */
    BY_STARTS
  }

  /**
   * Returns the classes taken when none is given: screw, then nut.
   *
   * @param form thread form
   */
  public static String usualClass(ThreadForm form) {
    return switch (form) {
      case METRIC -> "6H/6g";
      case TRAPEZOIDAL -> "7H/7e";
      case ACME -> "2G";
      case UNIFIED -> "2B/2A";
      case WHITWORTH -> "medium";
    };
  }

  /**
   * Returns the class of the screw out of a class or pair of classes; empty if only a nut's class
   * is given.
   */
  public static String screwClass(ThreadForm form, String fit) {
    return part(form, fit, 1);
  }

  /** Returns the class of the nut out of a class or pair; empty if only a screw's is given. */
  public static String nutClass(ThreadForm form, String fit) {
    return part(form, fit, 0);
  }

  private static String part(ThreadForm form, String fit, int which) {
    String given = fit.isBlank() ? usualClass(form) : fit.trim();
    if (form == ThreadForm.ACME || form == ThreadForm.WHITWORTH) {
      return given;
    }
    String[] parts = given.split("/", -1);
    if (parts.length > 2) {
      throw new IllegalArgumentException(
          "class: found '" + given + "', expected one class or a pair nut/screw such as 6H/6g");
    }
    String found = "";
    for (String one : parts) {
      boolean nut =
          form == ThreadForm.UNIFIED
              ? one.toUpperCase(Locale.ROOT).endsWith("B")
              : one.length() > 1 && Character.isUpperCase(one.charAt(1));
      if (nut == (which == 0)) {
        found = one;
      }
    }
    return found;
  }

  /**
   * Limits of the screw.
   *
   * @param thread the thread
   * @param tolerance class of the screw, such as 6g, 7e, 2A, 2G or medium
   * @param widening whether starts widen the pitch diameter
   * @throws IllegalArgumentException if the class does not exist for the form
   */
  public static Limits.Screw screw(ThreadDesignation thread, String tolerance, Widening widening) {
    ThreadProfile basic = thread.profile();
    return switch (thread.form()) {
      case METRIC -> metricScrew(basic, screwOnly(tolerance));
      case TRAPEZOIDAL ->
          trapezoidalScrew(basic, screwOnly(tolerance), factor(thread.starts(), widening));
      case ACME -> AcmeTolerances.screw(basic, tolerance);
      case UNIFIED -> UnifiedTolerances.screw(thread, tolerance, engagement(thread));
      case WHITWORTH -> WhitworthTolerances.screw(basic, tolerance);
    };
  }

  /**
   * Limits of the nut.
   *
   * @param thread the thread
   * @param tolerance class of the nut, such as 6H, 7H, 2B, 2G or medium
   * @param widening whether starts widen the pitch diameter
   * @throws IllegalArgumentException if the class does not exist for the form
   */
  public static Limits.Nut nut(ThreadDesignation thread, String tolerance, Widening widening) {
    ThreadProfile basic = thread.profile();
    return switch (thread.form()) {
      case METRIC -> metricNut(basic, nutOnly(tolerance));
      case TRAPEZOIDAL ->
          trapezoidalNut(basic, nutOnly(tolerance), factor(thread.starts(), widening));
      case ACME -> AcmeTolerances.nut(basic, tolerance);
      case UNIFIED -> UnifiedTolerances.nut(thread, tolerance, engagement(thread));
      case WHITWORTH -> WhitworthTolerances.nut(basic, tolerance);
    };
  }

  /**
   * Length of engagement that the Unified tolerance counts on: the diameter for UNC and UNF, nine
   * pitches otherwise.
   *
   * @param thread a Unified thread
   * @return LE [mm]
   */
  static double engagement(ThreadDesignation thread) {
    boolean byDiameter = thread.series().equals("UNC") || thread.series().equals("UNF");
    return byDiameter ? thread.profile().d() : 9 * thread.profile().p();
  }

  /**
   * Widening by the starts.
   *
   * @param starts number of starts
   * @param widening whether it applies
   * @return factor on Td2 and TD2 [-]
   */
  static double factor(int starts, Widening widening) {
    return widening == Widening.BY_STARTS
        ? STARTS_FACTOR[Math.min(starts, STARTS_FACTOR.length) - 1]
        : 1;
  }

  /**
   * Deviation of the screw's pitch diameter of a trapezoidal thread; {@code 47.5 sqrt(P)} for e and
   * {@code 95 sqrt(P)} for c where the table has no such pitch.
   *
   * @param p pitch [mm]
   * @param position e, c or h
   * @return |es| [µm]
   */
  static int trapezoidalDeviation(double p, char position) {
    if (position == 'h') {
      return 0;
    }
    double formula =
        switch (position) {
          case 'e' -> 47.5 * Math.sqrt(p);
          case 'c' -> 95 * Math.sqrt(p);
          default ->
              throw new IllegalArgumentException(
                  "position "
                      + position
                      + ": a trapezoidal screw has position e or c (h on its"
                      + " crest and core), its nut H");
        };
    return TRAPEZOIDAL
        .value(p, String.valueOf(position))
        .orElseGet(() -> PreferredNumbers.r40(formula));
  }

  /**
   * Tolerance of the pitch diameter of a trapezoidal screw.
   *
   * @param d nominal diameter [mm]
   * @param p pitch [mm]
   * @param grade 6 to 9
   * @param factor widening by the starts [-]
   * @return Td2 [µm]
   */
  static int trapezoidalScrewTolerance(double d, double p, int grade, double factor) {
    return widened(
        MetricTolerances.times(
            trapezoidalSix(d, p), Map.of(6, 1.0, 7, 1.25, 8, 1.6, 9, 2.0), grade, "Td2"),
        factor);
  }

  /**
   * Tolerance of the pitch diameter of a trapezoidal nut.
   *
   * @param d nominal diameter [mm]
   * @param p pitch [mm]
   * @param grade 6 to 9
   * @param factor widening by the starts [-]
   * @return TD2 [µm]
   */
  static int trapezoidalNutTolerance(double d, double p, int grade, double factor) {
    return widened(
        MetricTolerances.times(
            trapezoidalSix(d, p), Map.of(6, 1.32, 7, 1.7, 8, 2.12, 9, 2.65), grade, "TD2"),
        factor);
  }

  /**
   * Tolerance 4h of the major diameter of a trapezoidal screw.
   *
   * @param p pitch [mm]
   * @return Td [µm]
   */
  static int trapezoidalMajor(double p) {
    return TRAPEZOIDAL
        .value(p, "Td4")
        .orElseGet(() -> PreferredNumbers.r40(0.63 * MetricTolerances.majorByFormula(p)));
  }

  /**
   * Tolerance 4H of the minor diameter of a trapezoidal nut.
   *
   * @param p pitch [mm]
   * @return TD1 [µm]
   */
  static int trapezoidalMinor(double p) {
    return TRAPEZOIDAL
        .value(p, "TD14")
        .orElseGet(() -> PreferredNumbers.r40(0.63 * MetricTolerances.minorByFormula(p)));
  }

  static boolean listsPitch(ThreadForm form, double p) {
    return switch (form) {
      case METRIC -> MetricTolerances.listsPitch(p);
      case TRAPEZOIDAL -> TRAPEZOIDAL.lists(p);
      default -> true;
    };
  }

  private static int widened(int tolerance, double factor) {
    return factor == 1 ? tolerance : PreferredNumbers.r40(factor * tolerance);
  }

  private static int trapezoidalSix(double d, double p) {
    boolean listedApart = d > 11.2 && d <= 22.4 && Math.abs(p - 3) < 1e-6;
    return listedApart ? 180 : MetricTolerances.pitchDiameterOfScrew(d, p, 6);
  }

  private static Limits.Screw metricScrew(ThreadProfile t, ThreadClass c) {
    double es = MetricTolerances.deviation(t.p(), c.position()) / 1000.0;
    double td2 = MetricTolerances.pitchDiameterOfScrew(t.d(), t.p(), c.pitchGrade()) / 1000.0;
    double td = MetricTolerances.majorOfScrew(t.p(), c.crestGrade()) / 1000.0;
    double d2 = t.d2() - es;
    double root = ROOT_BELOW_PITCH_LINE * t.p();
    return new Limits.Screw(
        below(t.d() - es, td), below(d2, td2), new Interval(d2 - td2 - root, t.nutMinor() - es));
  }

  private static Limits.Nut metricNut(ThreadProfile t, ThreadClass c) {
    double ei = MetricTolerances.deviation(t.p(), c.position()) / 1000.0;
    double td2 = MetricTolerances.pitchDiameterOfNut(t.d(), t.p(), c.pitchGrade()) / 1000.0;
    double td1 = MetricTolerances.minorOfNut(t.p(), c.crestGrade()) / 1000.0;
    return new Limits.Nut(t.d() + ei, above(t.d2() + ei, td2), above(t.nutMinor() + ei, td1));
  }

  private static Limits.Screw trapezoidalScrew(ThreadProfile t, ThreadClass c, double factor) {
    double es = trapezoidalDeviation(t.p(), c.position()) / 1000.0;
    double td2 = trapezoidalScrewTolerance(t.d(), t.p(), c.pitchGrade(), factor) / 1000.0;
    double td = trapezoidalMajor(t.p()) / 1000.0;
    return new Limits.Screw(
        below(t.d(), td), below(t.d2() - es, td2), below(t.d3(), 1.25 * td2 + es));
  }

  private static Limits.Nut trapezoidalNut(ThreadProfile t, ThreadClass c, double factor) {
    if (c.position() != 'H') {
      throw new IllegalArgumentException(
          "position " + c.position() + ": a trapezoidal nut has position H only");
    }
    double td2 = trapezoidalNutTolerance(t.d(), t.p(), c.pitchGrade(), factor) / 1000.0;
    double td1 = trapezoidalMinor(t.p()) / 1000.0;
    return new Limits.Nut(t.nutMajor(), above(t.d2(), td2), above(t.nutMinor(), td1));
  }

  private static ThreadClass screwOnly(String text) {
    ThreadClass c = ThreadClass.parse(text);
    if (c.isNut()) {
      throw new IllegalArgumentException(
          "class " + text + " is a nut's class; a screw's has a small letter, such as 6g");
    }
    return c;
  }

  private static ThreadClass nutOnly(String text) {
    ThreadClass c = ThreadClass.parse(text);
    if (!c.isNut()) {
      throw new IllegalArgumentException(
          "class " + text + " is a screw's class; a nut's has a capital letter, such as 6H");
    }
    return c;
  }

  static Interval below(double high, double tolerance) {
    return new Interval(high - tolerance, high);
  }

  static Interval above(double low, double tolerance) {
    return new Interval(low, low + tolerance);
  }

  /** Rounds to 0.0001 inch. */
  static double tenths(double inches) {
    return Math.rint(inches * 1e4) / 1e4;
  }

  static Interval inches(double low, double high) {
    return new Interval(low * INCH, high * INCH);
  }
}
