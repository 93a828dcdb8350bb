package fettle.mechanics.threads;

import fettle.mechanics.base.Rows;
import java.util.Map;

/**
 * Tolerances of ISO metric threads after ISO 965-1: the table where it lists the pitch, the formula
 * rounded to R40 elsewhere. Grades 3 to 9; each grade is a multiple of the rounded grade 6.
 */
final class MetricTolerances {

  private static final double[] STEPS = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355};
  private static final Map<Integer, Double> SCREW_GRADES =
      Map.of(3, 0.5, 4, 0.63, 5, 0.8, 6, 1.0, 7, 1.25, 8, 1.6, 9, 2.0);
  private static final Map<Integer, Double> NUT_GRADES =
      Map.of(4, 0.85, 5, 1.06, 6, 1.32, 7, 1.7, 8, 2.12, 9, 2.65);
  private static final Map<Integer, Double> MINOR_GRADES =
      Map.of(4, 0.63, 5, 0.8, 6, 1.0, 7, 1.25, 8, 1.6);
  private static final Map<Integer, Double> MAJOR_GRADES = Map.of(4, 0.63, 6, 1.0, 8, 1.6);
  private static final PitchTable TABLE =
      new PitchTable(Rows.read(MetricTolerances.class, "metric.csv"));

  private MetricTolerances() {}

  /**
   * Tolerance of the screw's pitch diameter, {@code Td2(6) = 90 P^0.4 d^0.1}, d the geometric mean
   * of its range.
   *
   * @param d nominal diameter, 0.99 to 355 [mm]
   * @param p pitch [mm]
   * @param grade 3 to 9
   * @return Td2 [µm]
   */
  static int pitchDiameterOfScrew(double d, double p, int grade) {
    return times(gradeSix(d, p), SCREW_GRADES, grade, "Td2");
  }

  /**
   * Tolerance of the nut's pitch diameter, {@code TD2(6) = 1.32 Td2(6)}.
   *
   * @param d nominal diameter, 0.99 to 355 [mm]
   * @param p pitch [mm]
   * @param grade 4 to 9
   * @return TD2 [µm]
   */
  static int pitchDiameterOfNut(double d, double p, int grade) {
    return times(gradeSix(d, p), NUT_GRADES, grade, "TD2");
  }

  /**
   * Tolerance of the screw's major diameter, {@code Td(6) = 180 P^(2/3) - 3.15/sqrt(P)}.
   *
   * @param p pitch [mm]
   * @param grade 4, 6 or 8
   * @return Td [µm]
   */
  static int majorOfScrew(double p, int grade) {
    return TABLE
        .value(p, "Td" + grade)
        .orElseGet(() -> times(majorByFormula(p), MAJOR_GRADES, grade, "Td"));
  }

  /**
   * Tolerance of the nut's minor diameter, {@code TD1(6) = 230 P^0.7}, below P 1 {@code 433 P - 190
   * P^1.22}.
   *
   * @param p pitch [mm]
   * @param grade 4 to 8
   * @return TD1 [µm]
   */
  static int minorOfNut(double p, int grade) {
    return TABLE
        .value(p, "TD1" + grade)
        .orElseGet(() -> times(minorByFormula(p), MINOR_GRADES, grade, "TD1"));
  }

  /**
   * Distance of the tolerance zone from the basic size.
   *
   * @param p pitch [mm]
   * @param position e, f, g, h for a screw, G, H for a nut
   * @return |es| or EI [µm]
   */
  static int deviation(double p, char position) {
    char letter = Character.toLowerCase(position);
    if (letter == 'h') {
      return 0;
    }
    return TABLE
        .value(p, String.valueOf(letter))
        .orElseGet(() -> PreferredNumbers.r40(deviationByFormula(p, letter)));
  }

  static boolean listsPitch(double p) {
    return TABLE.lists(p);
  }

  /**
   * Geometric mean of the diameter range.
   *
   * @param d nominal diameter [mm]
   * @return mean of its range [mm]
   */
  static double mean(double d) {
    for (int i = 1; i < STEPS.length; i++) {
      if (d <= STEPS[i] && d >= STEPS[0]) {
        return Math.sqrt(STEPS[i - 1] * STEPS[i]);
      }
    }
    throw new IllegalArgumentException(
        "d = " + d + " mm: tolerances are laid down from 0.99 to 355 mm");
  }

  private static int gradeSix(double d, double p) {
    if (!(p >= 0.2) || !(p <= 44)) {
      throw new IllegalArgumentException(
          "P = " + p + " mm: tolerances are laid down from 0.2 to 8 mm (trapezoidal to 44 mm)");
    }
    int formula = PreferredNumbers.r40(90 * Math.pow(p, 0.4) * Math.pow(mean(d), 0.1));
    boolean small = d > 2.8 && d <= 5.6;
    if (small && same(p, 0.5)) {
      return 75;
    }
    if (small && same(p, 0.75)) {
      return 90;
    }
    boolean large = d > 180 && (same(p, 3) || same(p, 4));
    return large ? PreferredNumbers.next(formula) : formula;
  }

  /**
   * Grade 6 of the major diameter by formula, rounded.
   *
   * @param p pitch [mm]
   * @return Td(6) [µm]
   */
  static int majorByFormula(double p) {
    return PreferredNumbers.r40(180 * Math.cbrt(p * p) - 3.15 / Math.sqrt(p));
  }

  /**
   * Grade 6 of the minor diameter by formula, rounded.
   *
   * @param p pitch [mm]
   * @return TD1(6) [µm]
   */
  static int minorByFormula(double p) {
    return PreferredNumbers.r40(p < 1 ? 433 * p - 190 * Math.pow(p, 1.22) : 230 * Math.pow(p, 0.7));
  }

  /**
   * Deviation by formula: {@code 15 + 11 P} for g, {@code 30 + 11 P} for f, {@code 50 + 11 P} for
   * e.
   *
   * @param p pitch [mm]
   * @param letter e, f or g
   * @return |es|, not rounded [µm]
   */
  static double deviationByFormula(double p, char letter) {
    double start =
        switch (letter) {
          case 'e' -> 50;
          case 'f' -> 30;
          case 'g' -> 15;
          default ->
              throw new IllegalArgumentException(
                  "position " + letter + ": expected e, f, g or h for a screw, G or H for a nut");
        };
    return start + 11 * p;
  }

  static int times(int gradeSix, Map<Integer, Double> grades, int grade, String what) {
    Double factor = grades.get(grade);
    if (factor == null) {
      throw new IllegalArgumentException(
          "grade "
              + grade
              + ": there is no "
              + what
              + " of that grade; expected "
              + grades.keySet().stream().sorted().toList());
    }
    return factor == 1 ? gradeSix : PreferredNumbers.r40(factor * gradeSix);
  }

  private static boolean same(double a, double b) {
    return Math.abs(a - b) < 1e-6;
  }
}
