package fettle.mechanics.base;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How numbers are written in workings, the same in every locale. */
public final class Numbers {

  private Numbers() {}

  /**
   * Writes a number with at most so many significant digits, trailing zeros dropped.
   *
   * @param value the number [any]
   * @param digits most significant digits, 1 to 17
   */
  public static String significant(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "NaN" : value > 0 ? "Infinity" : "-Infinity";
    }
    if (value == 0) {
      return "0";
    }
    BigDecimal rounded =
        new BigDecimal(value)
            .round(new MathContext(digits, RoundingMode.HALF_EVEN))
            .stripTrailingZeros();
    int exponent = rounded.precision() - rounded.scale() - 1;
    if (exponent >= -6 && exponent <= 11) {
      return rounded.toPlainString();
    }
    return rounded.movePointLeft(exponent).toPlainString() + "e" + exponent;
  }

  /**
   * Writes a number with so many decimal places.
   *
   * @param value a finite number [any]
   * @param places decimal places, 0 or more
   */
  public static String fixed(double value, int places) {
    if (!Double.isFinite(value)) {
      return significant(value, 3);
    }
    String text = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
    return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
  }
}
