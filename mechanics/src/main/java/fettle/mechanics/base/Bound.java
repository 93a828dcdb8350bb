package fettle.mechanics.base;

/** Refuses impossible arguments in one form: name, value, unit, bound. NaN is always refused. */
public final class Bound {

  private static final double SMALLEST = 1e-15;
  private static final double GREATEST = 1e15;

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
    if (!(value > 0)) {
      throw refused(name, value, unit, "must be above 0");
    }
    return within(name, value, SMALLEST, GREATEST, unit);
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
    if (!(value >= 0)) {
      throw refused(name, value, unit, "must be 0 or more");
    }
    return value == 0 ? 0 : within(name, value, SMALLEST, GREATEST, unit);
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
   * Passes a coefficient of friction between sliding parts: 0.02 to 0.6, or 0 as the frictionless
   * limit.
   *
   * @param name what it is
   * @param value the coefficient [-]
   * @return the coefficient [-]
   */
  public static double friction(String name, double value) {
    if (value != 0 && !(value >= 0.02 && value <= 0.6)) {
      throw refused(
          name,
          value,
          "",
          "sliding parts of a machine lie from 0.02 to 0.6 (0 is the frictionless limit)");
    }
    return value;
  }

  /**
   * Passes a coefficient of friction that must grip: 0.02 to 0.6.
   *
   * @param name what it is
   * @param value the coefficient [-]
   * @return the coefficient [-]
   */
  public static double gripping(String name, double value) {
    if (value == 0) {
      throw refused(name, value, "", "without friction nothing holds; give 0.02 to 0.6");
    }
    return friction(name, value);
  }

  private static IllegalArgumentException refused(
      String name, double value, String unit, String bound) {
    String shown = Numbers.significant(value, 8) + (unit.isEmpty() ? "" : " " + unit);
    return new IllegalArgumentException(name + " = " + shown + ": " + bound);
  }
}
