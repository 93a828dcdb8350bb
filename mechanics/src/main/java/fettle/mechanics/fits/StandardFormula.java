package fettle.mechanics.fits;

/**
 * The formulas behind the tables of ISO 286-1 with their rounding. They are kept as a check on the
 * tables and to show a user where a figure comes from; the tables, which deviate from them at
 * listed places, give the limits.
 */
public final class StandardFormula {

  private static final double[] MULTIPLES = {7, 10, 16, 25, 40, 64, 100};

  private StandardFormula() {}

  /**
   * Tolerance factor i = 0.45 D^(1/3) + 0.001 D.
   *
   * @param mean geometric mean of the ends of the step [mm]
   * @return i [µm]
   */
  public static double toleranceFactor(double mean) {
    return 0.45 * Math.cbrt(mean) + 0.001 * mean;
  }

  /**
   * Standard tolerance before rounding: IT01 0.3 + 0.008 D, IT0 0.5 + 0.012 D, IT1 0.8 + 0.020 D,
   * IT2 to IT4 in geometric progression between IT1 and IT5, IT5 to IT11 multiples of i, and ten
   * times the value five grades finer from there on.
   *
   * @param size nominal size [mm]
   * @param grade the grade
   * @return the tolerance [mm]
   */
  public static double width(double size, Grade grade) {
    return microns(mean(Grade.mainStep(size)), grade.place()) / 1000;
  }

  private static double microns(double mean, int number) {
    if (number <= 1) {
      return new double[] {0.3, 0.5, 0.8}[number + 1]
          + new double[] {0.008, 0.012, 0.020}[number + 1] * mean;
    }
    if (number < 5) {
      double first = microns(mean, 1);
      return first * Math.pow(microns(mean, 5) / first, (number - 1) / 4.0);
    }
    return number <= 11
        ? MULTIPLES[number - 5] * toleranceFactor(mean)
        : 10 * microns(mean, number - 5);
  }

  /**
   * The same rounded as the standard rounds IT5 to IT11: to 1 up to 100, to 5 up to 200, to 10
   * above; coarser grades are ten times the rounded value five grades finer.
   *
   * @param size nominal size [mm]
   * @param grade IT5 or coarser
   * @return the tolerance [mm]
   * @throws IllegalArgumentException for grades finer than IT5, which follow no rounding rule
   */
  public static double rounded(double size, Grade grade) {
    if (grade.compareTo(Grade.IT5) < 0) {
      throw new IllegalArgumentException("grades finer than IT5 follow no rounding rule");
    }
    if (grade.compareTo(Grade.IT11) > 0) {
      return 10 * rounded(size, Grade.at(grade.place() - 5));
    }
    double value = 1000 * width(size, grade);
    return to(value, value <= 100 ? 1 : value <= 200 ? 5 : 10) / 1000;
  }

  /**
   * Magnitude of the fundamental deviation of a shaft before rounding; letters that start from a
   * tolerance or from neighbouring letters take the table's values of those.
   *
   * @param size nominal size [mm]
   * @param letter letter in lower case, not js or j
   * @return magnitude of the deviation [mm]
   */
  public static double deviation(double size, String letter) {
    Table.Step fine = FundamentalDeviation.table().step(size);
    double d = mean(fine);
    double wide = mean(Grade.mainStep(size));
    double value =
        switch (letter) {
          case "a" -> fine.to() <= 120 ? 265 + 1.3 * d : 3.5 * d;
          case "b" -> fine.to() <= 160 ? 140 + 0.85 * d : 1.8 * d;
          case "c" -> fine.to() <= 40 ? 52 * Math.pow(d, 0.2) : 95 + 0.8 * d;
          case "cd" -> between(size, "c", "d");
          case "d" -> 16 * Math.pow(wide, 0.44);
          case "e" -> 11 * Math.pow(wide, 0.41);
          case "ef" -> between(size, "e", "f");
          case "f" -> 5.5 * Math.pow(wide, 0.41);
          case "fg" -> between(size, "f", "g");
          case "g" -> 2.5 * Math.pow(wide, 0.34);
          case "h" -> 0;
          case "k" -> 0.6 * Math.cbrt(wide);
          case "m" -> Grade.IT7.microns(size) - Grade.IT6.microns(size);
          case "n" -> 5 * Math.pow(wide, 0.34);
          case "p" -> Grade.IT7.microns(size);
          case "r" -> between(size, "p", "s");
          case "s" -> fine.to() <= 50 ? Grade.IT8.microns(size) + 1 : sevenPlus(size, 0.4, d);
          case "t" -> sevenPlus(size, 0.63, d);
          case "u" -> sevenPlus(size, 1, d);
          case "v" -> sevenPlus(size, 1.25, d);
          case "x" -> sevenPlus(size, 1.6, d);
          case "y" -> sevenPlus(size, 2, d);
          case "z" -> sevenPlus(size, 2.5, d);
          case "za" -> Grade.IT8.microns(size) + 3.15 * d;
          case "zb" -> Grade.IT9.microns(size) + 4 * d;
          case "zc" -> Grade.IT10.microns(size) + 5 * d;
          default ->
              throw new IllegalArgumentException("ISO 286-1 has no formula for letter " + letter);
        };
    return value / 1000;
  }

  /**
   * The same rounded as the standard rounds: a to g to 1 up to 45, 2 up to 60, 5 up to 200, 10 up
   * to 560, 20 up to 1000, 50 above; k to zc to 1 up to 100, 2 up to 300, 5 up to 600, 10 up to
   * 800, 20 up to 1000, 50 above.
   *
   * @param size nominal size [mm]
   * @param letter letter in lower case, not js or j
   * @return magnitude of the deviation [mm]
   */
  public static double roundedDeviation(double size, String letter) {
    double value = 1000 * deviation(size, letter);
    boolean loose = FundamentalDeviation.LETTERS.indexOf(letter) <= 10;
    double[] ends =
        loose ? new double[] {45, 60, 200, 560, 1000} : new double[] {100, 300, 600, 800, 1000};
    double[] steps = {1, 2, 5, 10, 20, 50};
    int i = 0;
    while (i < ends.length && value > ends[i]) {
      i++;
    }
    return to(value, steps[i]) / 1000;
  }

  private static double between(double size, String before, String after) {
    Table table = FundamentalDeviation.table();
    return Math.sqrt(table.at(size, before).orElseThrow() * table.at(size, after).orElseThrow());
  }

  private static double sevenPlus(double size, double factor, double mean) {
    return Grade.IT7.microns(size) + factor * mean;
  }

  /** Geometric mean of the ends of a step; the first step counts from 1. */
  private static double mean(Table.Step step) {
    return Math.sqrt(Math.max(1, step.over()) * step.to());
  }

  private static double to(double value, double step) {
    return step * Math.floor(value / step + 0.5);
  }
}
