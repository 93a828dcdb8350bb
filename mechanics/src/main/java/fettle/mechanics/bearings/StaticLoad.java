package fettle.mechanics.bearings;

/**
 * Factors of the equivalent static load {@code P0 = max(Fr, X0 Fr + Y0 Fa)}.
 *
 * @param x X0 [-]
 * @param y Y0 [-]
 * @see Sources#STATIC_LOAD
 */
public record StaticLoad(double x, double y) {

  private static final Curve Y0 =
      Curve.of(
          new double[] {5, 10, 15, 20, 25, 30, 35, 40, 45},
          new double[] {.52, .50, .46, .42, .38, .33, .29, .26, .22});

  /** Returns the factors of deep groove ball bearings. */
  public static StaticLoad deepGroove() {
    return new StaticLoad(0.6, 0.5);
  }

  /**
   * Returns the factors of one angular contact ball bearing.
   *
   * @param angle contact angle, 5 to 45 degrees [rad]
   */
  public static StaticLoad angularSingle(double angle) {
    return new StaticLoad(
        0.5, Y0.at(Need.within("alpha in degrees", Math.toDegrees(angle), 5 - 1e-9, 45 + 1e-9)));
  }

  /**
   * Returns the factors of a pair or a double row angular contact bearing.
   *
   * @param angle contact angle, 5 to 45 degrees [rad]
   */
  public static StaticLoad angularPair(double angle) {
    return new StaticLoad(1, 2 * angularSingle(angle).y);
  }

  /**
   * Returns the factors of one tapered or other radial roller bearing with an angle.
   *
   * @param angle contact angle [rad]
   */
  public static StaticLoad rollerSingle(double angle) {
    return new StaticLoad(0.5, 0.22 / tangent(angle));
  }

  /**
   * Returns the factors of a pair of tapered bearings, a double row roller or a self-aligning
   * bearing.
   *
   * @param angle contact angle [rad]
   */
  public static StaticLoad rollerPair(double angle) {
    return new StaticLoad(1, 0.44 / tangent(angle));
  }

  private static double tangent(double angle) {
    if (!(angle > 0 && angle < Math.PI / 2)) {
      throw new IllegalArgumentException(
          "alpha: found " + Math.toDegrees(angle) + " deg, expected above 0 and below 90 deg");
    }
    return Math.tan(angle);
  }

  /**
   * Returns the equivalent static load, never below the radial load.
   *
   * @param radial Fr [N]
   * @param axial Fa [N]
   * @return P0 [N]
   */
  public double load(double radial, double axial) {
    Need.notNegative("Fr", radial);
    Need.notNegative("Fa", axial);
    return Math.max(radial, x * radial + y * axial);
  }

  /**
   * Returns the equivalent static load of a thrust bearing: {@code 2.3 Fr tan(alpha) + Fa}.
   *
   * @param radial Fr [N]
   * @param axial Fa [N]
   * @param angle contact angle [rad]
   * @return P0a [N]
   */
  public static double thrust(double radial, double axial, double angle) {
    Need.notNegative("Fr", radial);
    Need.notNegative("Fa", axial);
    if (angle > Math.PI / 2 - 1e-6) {
      if (radial > 0) {
        throw new IllegalArgumentException(
            "Fr: found "
                + radial
                + " N on a 90 deg thrust bearing, expected 0; it carries no radial"
                + " load, give it a bearing of its own");
      }
      return axial;
    }
    return 2.3 * radial * tangent(angle) + axial;
  }
}
