package fettle.desk.page;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;

/**
 * A number ready to be shown.
 *
 * @param number digits, rounded to what the doubt allows
 * @param doubt half-width of the doubt in the same unit; empty if there is none
 * @param unit symbol of the unit; empty for plain numbers
 */
public record Amount(String number, String doubt, String unit) {

  private static final int DIGITS = 5;
  private static final double LARGE = 1000;

  /** A doubt so much smaller than its value is left over from rounding. */
  private static final double ROUNDING = 1e-9;

  /**
   * Rounds a quantity: two digits of the doubt (of one below 1000 the whole number), or five digits
   * if there is none.
   *
   * @param value the quantity [coherent]
   * @param doubt half-width of its doubt [coherent]
   * @param stated unit it is stated in
   * @param measure units preferred
   */
  public static Amount of(double value, double doubt, Unit stated, Measure measure) {
    Unit unit = measure.shown(stated);
    double shown = unit.fromCoherent(value);
    double width =
        unit.reciprocal() ? Math.abs(shown * doubt / value) : doubt / unit.factor().toDouble();
    if (!(width > ROUNDING * Math.abs(shown)) || !Double.isFinite(width)) {
      return new Amount(minus(Numbers.significant(shown, DIGITS)), "", symbol(unit));
    }
    if (width >= LARGE) {
      double step = Math.pow(10, Math.floor(Math.log10(width)) - 1);
      String rounded = Numbers.fixed(Math.rint(shown / step) * step, 0);
      return new Amount(
          minus(rounded), Numbers.fixed(Math.rint(width / step) * step, 0), symbol(unit));
    }
    int places = Math.max(0, Math.min(9, 1 - (int) Math.floor(Math.log10(width))));
    return new Amount(
        minus(Numbers.fixed(shown, places)), Numbers.fixed(width, places), symbol(unit));
  }

  /** Returns this amount with a plus sign if it is positive. */
  public Amount signed() {
    boolean positive = !number.startsWith("−") && !number.matches("0(\\.0*)?");
    return positive ? new Amount("+" + number, doubt, unit) : this;
  }

  /** Returns number, doubt and unit in one text. */
  public String text() {
    String plusMinus = doubt.isEmpty() ? "" : " ± " + doubt;
    return number + plusMinus + (unit.isEmpty() ? "" : " " + unit);
  }

  private static String minus(String digits) {
    return digits.startsWith("-") ? "−" + digits.substring(1) : digits;
  }

  private static String symbol(Unit unit) {
    return unit.symbol().equals("deg") ? "°" : unit.symbol();
  }
}
