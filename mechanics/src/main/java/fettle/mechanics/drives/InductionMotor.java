package fettle.mechanics.drives;

/**
 * Torque of an induction motor over its slip: {@code T/Tb = 2/(s/sb + sb/s)}.
 *
 * @param breakdown breakdown torque Tb [N mm]
 * @param breakdownSlip slip sb there [-]
 * @see Sources#KLOSS
 */
public record InductionMotor(double breakdown, double breakdownSlip) {

  /** Refuses impossible motors. */
  public InductionMotor {
    Need.positive("Tb", breakdown);
    Need.within("s_b", breakdownSlip, 1e-4, 10);
  }

  /**
   * Returns the torque at a slip.
   *
   * @param slip s; 1 at rest, 0 at synchronous speed [-]
   * @return T [N mm]
   */
  public double torque(double slip) {
    if (slip == 0) {
      return 0;
    }
    double r = slip / breakdownSlip;
    return 2 * breakdown / (r + 1 / r);
  }

  /**
   * Returns the running slip that gives a share of the breakdown torque: {@code sb (1 -
   * sqrt(1-t^2)) / t}, the smaller root.
   *
   * @param share T/Tb, above 0 to 1 [-]
   * @param breakdownSlip sb [-]
   * @return slip [-]
   */
  public static double runningSlip(double share, double breakdownSlip) {
    Need.within("T/Tb", share, 0, 1);
    return breakdownSlip * share / (1 + Math.sqrt(1 - share * share));
  }
}
