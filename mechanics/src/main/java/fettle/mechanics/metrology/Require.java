package fettle.mechanics.metrology;

import fettle.mechanics.base.Numbers;

/** Refusals of impossible arguments, worded for the machinist. */
final class Require {

  private Require() {}

  /**
   * Returns the value if it is above 0.
   *
   * @param value the value [unit]
   * @return the value [unit]
   */
  static double positive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw wrong(name, value, "above 0");
    }
    return value;
  }

  /**
   * Returns the value if it is not below 0.
   *
   * @param value the value [unit]
   * @return the value [unit]
   */
  static double notNegative(String name, double value) {
    if (!(value >= 0) || !Double.isFinite(value)) {
      throw wrong(name, value, "0 or more");
    }
    return value;
  }

  /**
   * Returns the value if it lies between two bounds, both excluded.
   *
   * @param value the value [unit]
   * @param low lower bound [unit]
   * @param high upper bound [unit]
   * @return the value [unit]
   */
  static double between(String name, double value, double low, double high) {
    if (!(value > low && value < high)) {
      throw wrong(name, value, "between " + text(low) + " and " + text(high));
    }
    return value;
  }

  /**
   * Returns the value if it is above 0, however large.
   *
   * @param value the value [unit]
   * @return the value [unit]
   */
  static double positiveOrInfinite(String name, double value) {
    if (!(value > 0)) {
      throw wrong(name, value, "above 0");
    }
    return value;
  }

  /**
   * Returns the value if it is above 0 and not beyond a bound.
   *
   * @param value the value [unit]
   * @param most largest value [unit]
   * @return the value [unit]
   */
  static double upTo(String name, double value, double most) {
    if (!(value > 0 && value <= most)) {
      throw wrong(name, value, "above 0 and at most " + text(most));
    }
    return value;
  }

  static int atLeast(String name, int value, int least) {
    if (value < least) {
      throw new IllegalArgumentException(
          name + ": found " + value + ", expected " + least + " or more");
    }
    return value;
  }

  static int atMost(String name, int value, int most) {
    if (value > most) {
      throw new IllegalArgumentException(name + ": found " + value + ", expected at most " + most);
    }
    return value;
  }

  static void sameLength(String name, int found, int expected) {
    if (found != expected) {
      throw new IllegalArgumentException(
          name + ": found " + found + " values, expected " + expected);
    }
  }

  static void columns(String name, double[][] rows, int expected, String order) {
    if (rows.length == 0) {
      throw new IllegalArgumentException(name + ": no rows given, expected " + order);
    }
    for (int i = 0; i < rows.length; i++) {
      if (rows[i].length != expected) {
        throw new IllegalArgumentException(
            name
                + ": row "
                + (i + 1)
                + " has "
                + rows[i].length
                + " numbers, expected "
                + expected
                + " ("
                + order
                + ")");
      }
    }
  }

  /**
   * Returns a number that stands for a count or a direction.
   *
   * @param value the value [-]
   */
  static int whole(String name, double value) {
    if (value != Math.rint(value) || Math.abs(value) > 1e6) {
      throw wrong(name, value, "a whole number");
    }
    return (int) value;
  }

  /** Returns one column. */
  static double[] column(double[][] rows, int index) {
    double[] column = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      column[i] = rows[i][index];
    }
    return column;
  }

  private static IllegalArgumentException wrong(String name, double value, String bound) {
    return new IllegalArgumentException(name + ": found " + text(value) + ", expected " + bound);
  }

  private static String text(double value) {
    return Numbers.significant(value, 6);
  }
}
