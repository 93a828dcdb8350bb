package fettle.desk.page;

import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Unit;

/** The units somebody prefers to read. */
public enum Measure {
  METRIC,
  INCH;

  /** Returns the measure the owner of a book prefers. */
  public static Measure of(String word) {
    return word.equals("inch") ? INCH : METRIC;
  }

  /**
   * Returns the unit in which a quantity is shown.
   *
   * @param unit unit the figure is stated in
   */
  public Unit shown(Unit unit) {
    if (this == METRIC || unit.reciprocal()) {
      return unit;
    }
    return switch (unit.dimension()) {
      case LENGTH -> Unit.INCH;
      case FORCE -> Unit.LBF;
      case MASS -> Unit.LB;
      case MOMENT -> Unit.LBF_IN;
      default -> unit;
    };
  }

  /** Tells whether a dimension is shown differently in inches. */
  public static boolean differs(Dimension dimension) {
    return dimension == Dimension.LENGTH
        || dimension == Dimension.FORCE
        || dimension == Dimension.MASS
        || dimension == Dimension.MOMENT;
  }
}
