package fettle.desk.page;

import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;

/**
 * Before and after as two ticks on one scale; the thickness of a tick is its doubt. All places run
 * from 0 to 100.
 *
 * @param zero place of zero; negative if it is off the scale
 * @param before middle of the first tick; negative if there is none
 * @param beforeWidth its thickness
 * @param after middle of the second tick; negative if there is none
 * @param afterWidth its thickness
 * @param low what the left end is, in words
 * @param high what the right end is, in words
 */
public record Bar(
    double zero,
    double before,
    double beforeWidth,
    double after,
    double afterWidth,
    String low,
    String high) {

  private static final double LEAST = 0.8;
  private static final double NEAR_ZERO = 0.6;

  /** A bar that is not drawn. */
  public static final Bar NONE = new Bar(-1, -1, 0, -1, 0, "", "");

  /**
   * Lays two values on one scale. Zero is on it if it is not much farther off than the values
   * differ.
   *
   * @param a first value [shown unit]
   * @param da its doubt [shown unit]
   * @param b second value [shown unit]
   * @param db its doubt [shown unit]
   */
  public static Bar of(double a, double da, double b, double db) {
    double low = Math.min(a - da, b - db);
    double high = Math.max(a + da, b + db);
    if (!Double.isFinite(low) || !Double.isFinite(high)) {
      return NONE;
    }
    double span = high - low;
    if (low > 0 && span > NEAR_ZERO * high * (1 - NEAR_ZERO)) {
      low = 0;
    } else if (high < 0 && span > -NEAR_ZERO * low * (1 - NEAR_ZERO)) {
      high = 0;
    }
    double pad = Math.max((high - low) * 0.12, Math.max(Math.abs(high), Math.abs(low)) * 1e-6);
    if (!(pad > 0)) {
      return NONE;
    }
    double from = low == 0 ? 0 : low - pad;
    double to = high == 0 ? 0 : high + pad;
    double scale = 100 / (to - from);
    double zero = from <= 0 && to >= 0 ? -from * scale : -1;
    return new Bar(
        zero,
        (a - from) * scale,
        Math.max(LEAST, 2 * da * scale),
        (b - from) * scale,
        Math.max(LEAST, 2 * db * scale),
        fettle.mechanics.base.Numbers.significant(from, 3),
        fettle.mechanics.base.Numbers.significant(to, 3));
  }

  /**
   * Lays the values of a figure before and after on one scale; a pitch in turns per inch is not.
   */
  public static Bar of(Working old, Working now, Measure measure) {
    Unit unit = measure.shown(now.unit());
    if (unit.reciprocal()) {
      return NONE;
    }
    double factor = unit.factor().toDouble();
    return of(
        old.value() / factor, old.doubt() / factor, now.value() / factor, now.doubt() / factor);
  }

  /** Tells whether there is something to draw. */
  public boolean drawn() {
    return before >= 0 && after >= 0;
  }

  /** Returns the left edge of the first tick. */
  public double beforeLeft() {
    return before - beforeWidth / 2;
  }

  /** Returns the left edge of the second tick. */
  public double afterLeft() {
    return after - afterWidth / 2;
  }
}
