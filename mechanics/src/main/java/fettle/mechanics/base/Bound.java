package fettle.mechanics.base;

/** Refuses impossible arguments in one form: name, value, unit, bound. NaN is always refused. */
public final class Bound {

  private Bound() {}

  /**
   * Passes a number above 0.
   *
   * @param name what it is
   * @param value the number [any]
   * @param unit its coherent unit, for the message
   * @return the number [any]
   */
  public static double positive(String name, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw refused(name, value, unit, "must be above 0");
    }
    return value;
  }

  /**
   * Passes a number from 0 up.
   *
   * @param name what it is
   * @param value the number [any]
   * @param unit its coherent unit, for the message
   * @return the number [any]
   */
  public static double notNegative(String name, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw refused(name, value, unit, "must be 0 or more");
    }
    return value;
  }

  /**
   * Passes a number of an interval, ends included.
   *
   * @param name what it is
   * @param value the number [any]
   * @param low lower end [any]
   * @param high upper end [any]
   * @param unit its coherent unit, for the message
   * @return the number [any]
   */
  public static double within(String name, double value, double low, double high, String unit) {
    if (!(value >= low) || !(value <= high)) {
      throw refused(
          name,
          value,
          unit,
          "must lie from "
              + Numbers.significant(low, 6)
              + " to "
              + Numbers.significant(high, 6)
              + (unit.isEmpty() ? "" : " " + unit));
    }
    return value;
  }

  /**
   * Passes an angle of an interval, ends included.
   *
   * @param name what it is
   * @param value the angle [rad]
   * @param low lower end [deg]
   * @param high upper end [deg]
   * @return the angle [rad]
   */
  public static double angle(String name, double value, double low, double high) {
    within(name, Math.toDegrees(value), low - 1e-9, high + 1e-9, "deg");
    return value;
  }

  /**
   * Passes a coefficient of friction; 0 is allowed, as the frictionless limit.
   *
   * @param name what it is
   * @param value the coefficient [-]
   * @return the coefficient [-]
   */
  public static double friction(String name, double value) {
    return within(name, value, 0, 1, "");
  }

  private static IllegalArgumentException refused(
      String name, double value, String unit, String bound) {
    String shown = Numbers.significant(value, 8) + (unit.isEmpty() ? "" : " " + unit);
    return new IllegalArgumentException(name + " = " + shown + ": " + bound);
  }
}
