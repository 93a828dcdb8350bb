package fettle.mechanics.belts;

/**
 * Tensions of a friction belt.
 *
 * @param tight T1 [N]
 * @param slack T2 [N]
 * @param centrifugal Tc [N]
 * @see Sources#EULER
 */
public record BeltPull(double tight, double slack, double centrifugal) {

  /**
   * Returns the greatest ratio of the tensions: {@code exp(mu beta / sin(phi/2))}.
   *
   * @param friction mu [-]
   * @param wrap beta [rad]
   * @param groove groove angle phi; pi for a flat belt [rad]
   * @return (T1-Tc)/(T2-Tc) [-]
   */
  public static double ratio(double friction, double wrap, double groove) {
    Need.within("mu", friction, 0, 2);
    Need.within("wrap in rad", wrap, 0, 4 * Math.PI);
    Need.within("groove angle in rad", groove, 0.1, Math.PI + 1e-9);
    return Math.exp(friction * wrap / Math.sin(groove / 2));
  }

  /**
   * Returns the tensions that just carry a power.
   *
   * @param power P [N mm/s]
   * @param speed belt speed v [mm/s]
   * @param ratio ratio of the tensions [-]
   * @param lineMass mass per length m [t/mm]
   */
  public static BeltPull carrying(double power, double speed, double ratio, double lineMass) {
    double v = Need.positive("v", speed);
    double pull = Need.positive("P", power) / v;
    double tc = lineMass * v * v;
    if (!(ratio > 1)) {
      throw new IllegalArgumentException(
          "ratio of tensions: found "
              + ratio
              + ", expected above 1; the belt needs friction and wrap");
    }
    double t2 = pull / (ratio - 1);
    return new BeltPull(t2 + pull + tc, t2 + tc, tc);
  }

  /**
   * Returns the tension to set at rest: {@code (T1+T2)/2}.
   *
   * @return T0 [N]
   */
  public double rest() {
    return (tight + slack) / 2;
  }

  /**
   * Returns the load on the shaft: {@code sqrt(T1^2+T2^2-2 T1 T2 cos(wrap))}.
   *
   * @param first T1 [N]
   * @param second T2 [N]
   * @param wrap wrap [rad]
   * @return load [N]
   */
  public static double shaftLoad(double first, double second, double wrap) {
    return Math.sqrt(
        Math.max(0, first * first + second * second - 2 * first * second * Math.cos(wrap)));
  }
}
