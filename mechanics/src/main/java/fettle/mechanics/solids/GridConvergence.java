package fettle.mechanics.solids;

import fettle.mechanics.base.Unit;

/**
 * What a row of ever coarser grids says about the value on an infinitely fine one.
 *
 * @param order observed order of convergence [-]
 * @param limit extrapolated value [same as the values]
 * @param fineIndex grid convergence index of the two finest grids, a share [-]
 * @param coarseIndex grid convergence index of the two coarser grids, a share [-]
 * @param asymptotic coarse index over fine index and ratio^order; near 1 in the asymptotic range
 * @param monotone true if the values approach the limit from one side
 */
public record GridConvergence(
    double order,
    double limit,
    double fineIndex,
    double coarseIndex,
    double asymptotic,
    boolean monotone) {

  private static final double SAFETY = 1.25;

  /**
   * Examines three grids.
   *
   * @param fine value on the finest grid [any]
   * @param middle value on the middle grid [same]
   * @param coarse value on the coarsest grid [same]
   * @param ratioFine middle step over finest step, above 1 [-]
   * @param ratioCoarse coarsest step over middle step, above 1 [-]
   */
  public static GridConvergence of(
      double fine, double middle, double coarse, double ratioFine, double ratioCoarse) {
    if (!(ratioFine > 1) || !(ratioCoarse > 1)) {
      throw Limits.outside(
          "r", Math.min(ratioFine, ratioCoarse), Unit.ONE, "greater than 1 (coarse over fine)");
    }
    double e21 = middle - fine;
    double e32 = coarse - middle;
    if (e21 == 0 || e32 == 0) {
      throw new IllegalArgumentException(
          "f: neighbouring values are equal, so no order can be observed");
    }
    double quotient = e32 / e21;
    double sign = Math.signum(quotient);
    double order = Math.abs(Math.log(Math.abs(quotient))) / Math.log(ratioFine);
    if (ratioFine != ratioCoarse) {
      for (int i = 0; i < 200; i++) {
        double q =
            Math.log((Math.pow(ratioFine, order) - sign) / (Math.pow(ratioCoarse, order) - sign));
        double next = Math.abs(Math.log(Math.abs(quotient)) + q) / Math.log(ratioFine);
        order = Double.isFinite(next) ? 0.5 * order + 0.5 * Math.max(next, 1e-3) : 1;
      }
    }
    double factor = Math.pow(ratioFine, order);
    if (!(factor > 1 + 1e-12)) {
      throw new IllegalArgumentException("f: these values do not converge; no order can be given");
    }
    double fineIndex = SAFETY * Math.abs(e21 / fine) / (factor - 1);
    double coarseIndex = SAFETY * Math.abs(e32 / middle) / (Math.pow(ratioCoarse, order) - 1);
    return new GridConvergence(
        order,
        fine - e21 / (factor - 1),
        fineIndex,
        coarseIndex,
        coarseIndex / (factor * fineIndex),
        quotient > 1);
  }

  /**
   * Half-width of the error bar about {@link #centre}: 1.25 of the extrapolation if the order is
   * believable, else three times the last change.
   *
   * @param fine value on the finest grid [any]
   * @param middle value on the middle grid [same]
   * @return half-width [same]
   */
  public double bar(double fine, double middle) {
    return believable() ? SAFETY * Math.abs(limit - fine) : 3 * Math.abs(fine - middle);
  }

  /**
   * Value to quote.
   *
   * @param fine value on the finest grid [any]
   * @return the extrapolated value if the order is believable, else the finest [same]
   */
  public double centre(double fine) {
    return believable() ? limit : fine;
  }

  /** Tells whether values are monotone with an order from 0.7 to 2.2. */
  public boolean believable() {
    return monotone && order >= 0.7 && order <= 2.2;
  }
}
