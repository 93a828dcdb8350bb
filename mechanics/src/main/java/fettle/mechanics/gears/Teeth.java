package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;

/** Bounds of what may be called a number of teeth, of starts, of millimetres. */
final class Teeth {

  static final int FEWEST = 5;
  static final int MOST = 100_000;

  private Teeth() {}

  static void check(String name, int teeth) {
    if (teeth < FEWEST || teeth > MOST) {
      throw new IllegalArgumentException(
          name + " [teeth] needs " + FEWEST + " to " + MOST + " teeth, found " + teeth);
    }
  }

  static void starts(int starts) {
    if (starts < 1 || starts > 100) {
      throw new IllegalArgumentException("starts [-] must be 1 to 100, found " + starts);
    }
  }

  static void positive(String name, Ratio length) {
    if (length.signum() <= 0) {
      throw new IllegalArgumentException(name + " [mm] must be above 0, found " + length.text());
    }
  }

  static double positive(String name, String unit, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          name + " [" + unit + "] must be a number above 0, found " + value);
    }
    return value;
  }

  static double notNegative(String name, String unit, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          name + " [" + unit + "] must be 0 or more, found " + value);
    }
    return value;
  }
}
