package fettle.mechanics.solids;

import fettle.mechanics.base.Given;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;

/** Bounds of inputs; written so that NaN is refused. */
public final class Limits {

  private Limits() {}

  /**
   * Returns inputs that must lie above 0.
   *
   * @param given the inputs
   * @param names which of them
   * @return the same inputs
   */
  public static Given positive(Given given, String... names) {
    for (String name : names) {
      if (given.has(name)) {
        positive(name, given.number(name), given.term(name).unit());
      }
    }
    return given;
  }

  /**
   * Returns inputs that must not lie below 0.
   *
   * @param given the inputs
   * @param names which of them
   * @return the same inputs
   */
  public static Given notNegative(Given given, String... names) {
    for (String name : names) {
      if (given.has(name) && !(given.number(name) >= 0)) {
        throw outside(name, given.number(name), given.term(name).unit(), "0 or more");
      }
    }
    return given;
  }

  /**
   * Returns a value that must lie above 0.
   *
   * @param name what it is
   * @param value the value [coherent]
   * @param unit unit to write it in
   * @return the same value [coherent]
   */
  public static double positive(String name, double value, Unit unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw outside(name, value, unit, "greater than 0");
    }
    return value;
  }

  /**
   * Returns Poisson's ratio if an isotropic body can have it and the formulas here hold.
   *
   * @param nu the ratio [-]
   * @return the same ratio [-]
   */
  public static double poisson(double nu) {
    if (!(nu > -1 && nu < 0.5)) {
      throw outside("nu", nu, Unit.ONE, "above -1 and below 0.5");
    }
    return nu;
  }

  /**
   * Returns a value within closed bounds.
   *
   * @param name what it is
   * @param value the value [coherent]
   * @param low least value [coherent]
   * @param high greatest value [coherent]
   * @param unit unit to write it in
   * @return the same value [coherent]
   */
  public static double within(String name, double value, double low, double high, Unit unit) {
    if (!(value >= low && value <= high)) {
      throw outside(name, value, unit, "from " + shown(low, unit) + " to " + shown(high, unit));
    }
    return value;
  }

  /**
   * Returns the error for a value outside its bounds.
   *
   * @param name what it is
   * @param value the value [coherent]
   * @param unit unit to write it in
   * @param bound what is allowed, in words
   */
  public static IllegalArgumentException outside(
      String name, double value, Unit unit, String bound) {
    return new IllegalArgumentException(
        name + ": found " + shown(value, unit) + ", must be " + bound);
  }

  private static String shown(double value, Unit unit) {
    String number = Numbers.significant(unit.fromCoherent(value), 6);
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }
}
