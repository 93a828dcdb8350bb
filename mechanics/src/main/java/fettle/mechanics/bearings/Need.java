package fettle.mechanics.bearings;

import fettle.mechanics.base.Numbers;

/** Refusals in the machinist's words. */
final class Need {

  private static final double LEAST = 1e-25;
  private static final double GREATEST = 1e25;

  private Need() {}

  /**
   * Refuses a value that is not above 0.
   *
   * @param name what it is
   * @param value the value [any]
   * @return the value [same]
   */
  static double positive(String name, double value) {
    if (!(value > LEAST && value < GREATEST)) {
      throw new IllegalArgumentException(
          name
              + ": found "
              + Numbers.significant(value, 6)
              + ", expected a number above 0 of workable size");
    }
    return value;
  }

  /**
   * Refuses a value below 0.
   *
   * @param name what it is
   * @param value the value [any]
   * @return the value [same]
   */
  static double notNegative(String name, double value) {
    if (!(value >= 0 && value < GREATEST)) {
      throw new IllegalArgumentException(
          name
              + ": found "
              + Numbers.significant(value, 6)
              + ", expected 0 or more; give the magnitude");
    }
    return value;
  }

  /**
   * Refuses a value outside a closed range.
   *
   * @param name what it is
   * @param value the value [any]
   * @param low least allowed [same]
   * @param high greatest allowed [same]
   * @return the value [same]
   */
  static double within(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name
              + ": found "
              + Numbers.significant(value, 6)
              + ", expected "
              + Numbers.significant(low, 6)
              + " to "
              + Numbers.significant(high, 6));
    }
    return value;
  }
}
