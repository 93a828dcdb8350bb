package fettle.mechanics.base;

/**
 * A closed interval of one quantity.
 *
 * @param low lower end, not above {@code high}
 * @param high upper end
 */
public record Interval(double low, double high) {

  /** Refuses NaN and ends in the wrong order. */
  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException(
          "interval needs low <= high, found " + low + " to " + high);
    }
  }

  /**
   * Returns the interval {@code middle} ± {@code halfWidth}.
   *
   * @param middle middle value [any]
   * @param halfWidth half the width, not negative [same]
   */
  public static Interval about(double middle, double halfWidth) {
    return new Interval(middle - halfWidth, middle + halfWidth);
  }

  /**
   * Tells whether a value lies in the interval, ends included.
   *
   * @param value the value [same]
   */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }

  /**
   * Returns the middle.
   *
   * @return middle of the interval [same]
   */
  public double middle() {
    return low + (high - low) / 2;
  }

  /**
   * Returns high minus low.
   *
   * @return width of the interval [same]
   */
  public double width() {
    return high - low;
  }
}
