package fettle.mechanics.bearings;

/**
 * Factors that turn a radial and an axial load into one: {@code P = X Fr + Y Fa}.
 *
 * @param limit e; the second pair of factors applies where Fa/Fr is above it [-]
 * @param belowX X at or below e [-]
 * @param belowY Y at or below e [-]
 * @param aboveX X above e [-]
 * @param aboveY Y above e [-]
 * @see Sources#EQUIVALENT
 */
public record EquivalentLoad(
    double limit, double belowX, double belowY, double aboveX, double aboveY) {

  private static final double[] X5 = {.172, .345, .689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89};
  private static final Curve E5 =
      Curve.of(X5, new double[] {.19, .22, .26, .28, .30, .34, .38, .42, .44});
  private static final Curve Y5 =
      Curve.of(X5, new double[] {2.30, 1.99, 1.71, 1.55, 1.45, 1.31, 1.15, 1.04, 1.00});
  private static final double[] X10 = {.175, .35, .7, 1.05, 1.4, 2.1, 3.5, 5.25, 7};
  private static final Curve E10 =
      Curve.of(X10, new double[] {.29, .32, .36, .38, .40, .44, .49, .54, .54});
  private static final Curve Y10 =
      Curve.of(X10, new double[] {1.88, 1.71, 1.52, 1.41, 1.34, 1.23, 1.10, 1.01, 1.00});
  private static final Curve Y10_PAIR_BELOW =
      Curve.of(X10, new double[] {2.18, 1.98, 1.76, 1.63, 1.55, 1.42, 1.27, 1.17, 1.16});
  private static final Curve Y10_PAIR_ABOVE =
      Curve.of(X10, new double[] {3.06, 2.78, 2.47, 2.29, 2.18, 2.00, 1.79, 1.64, 1.63});
  private static final double[] X15 = {.178, .357, .714, 1.07, 1.43, 2.14, 3.57, 5.35, 7.14};
  private static final Curve E15 =
      Curve.of(X15, new double[] {.38, .40, .43, .46, .47, .50, .55, .56, .56});
  private static final Curve Y15 =
      Curve.of(X15, new double[] {1.47, 1.40, 1.30, 1.23, 1.19, 1.12, 1.02, 1.00, 1.00});
  private static final Curve Y15_PAIR_BELOW =
      Curve.of(X15, new double[] {1.65, 1.57, 1.46, 1.38, 1.34, 1.26, 1.14, 1.12, 1.12});
  private static final Curve Y15_PAIR_ABOVE =
      Curve.of(X15, new double[] {2.39, 2.28, 2.11, 2.00, 1.93, 1.82, 1.66, 1.63, 1.63});
  private static final double[] STEEP = {20, 25, 30, 35, 40, 45};
  private static final Curve E_STEEP =
      Curve.of(STEEP, new double[] {.57, .68, .80, .95, 1.14, 1.34});
  private static final Curve X_STEEP = Curve.of(STEEP, new double[] {.43, .41, .39, .37, .35, .33});
  private static final Curve Y_STEEP =
      Curve.of(STEEP, new double[] {1.00, .87, .76, .66, .57, .50});
  private static final Curve Y1_STEEP =
      Curve.of(STEEP, new double[] {1.09, .92, .78, .66, .55, .47});
  private static final Curve X2_STEEP =
      Curve.of(STEEP, new double[] {.70, .67, .63, .60, .57, .54});
  private static final Curve Y2_STEEP =
      Curve.of(STEEP, new double[] {1.63, 1.41, 1.24, 1.07, .93, .81});

  /**
   * Returns the factors of a deep groove ball bearing, single or double row.
   *
   * @param relative {@code f0 Fa/C0r} [-]
   */
  public static EquivalentLoad deepGroove(double relative) {
    Need.notNegative("f0 Fa/C0r", relative);
    return new EquivalentLoad(E5.at(relative), 1, 0, 0.56, Y5.at(relative));
  }

  /**
   * Returns the factors of one angular contact ball bearing.
   *
   * @param angle contact angle, 5 to 45 degrees [rad]
   * @param relative {@code f0 Fa/C0r}; matters below 20 degrees only [-]
   */
  public static EquivalentLoad angularSingle(double angle, double relative) {
    return angular(angle, relative, 5, EquivalentLoad::singleColumn);
  }

  /**
   * Returns the factors of a pair back to back or face to face, or of a double row bearing.
   *
   * @param angle contact angle, 10 to 45 degrees [rad]
   * @param relative {@code f0 Fa/C0r}; matters below 20 degrees only [-]
   */
  public static EquivalentLoad angularPair(double angle, double relative) {
    return angular(angle, relative, 10, EquivalentLoad::pairColumn);
  }

  private interface Columns {
    EquivalentLoad of(double degrees, double relative);
  }

  private static EquivalentLoad angular(
      double angle, double relative, double least, Columns columns) {
    Need.notNegative("f0 Fa/C0r", relative);
    double degrees = Math.toDegrees(angle);
    if (!(degrees >= least - 1e-9 && degrees <= 45 + 1e-9)) {
      throw new IllegalArgumentException(
          "alpha: found " + degrees + " deg, expected " + least + " to 45 deg");
    }
    double low = Math.max(least, Math.min(40, 5 * Math.floor((degrees + 1e-9) / 5)));
    EquivalentLoad left = columns.of(low, relative);
    EquivalentLoad right = columns.of(low + 5, relative);
    double t = Math.max(0, Math.min(1, (degrees - low) / 5));
    return t < 1e-9 ? left : t > 1 - 1e-9 ? right : left.towards(right, t);
  }

  private EquivalentLoad towards(EquivalentLoad other, double t) {
    return new EquivalentLoad(
        limit + t * (other.limit - limit),
        belowX + t * (other.belowX - belowX),
        belowY + t * (other.belowY - belowY),
        aboveX + t * (other.aboveX - aboveX),
        aboveY + t * (other.aboveY - aboveY));
  }

  private static EquivalentLoad singleColumn(double degrees, double x) {
    if (degrees < 7.5) {
      return deepGroove(x);
    }
    if (degrees < 12.5) {
      return new EquivalentLoad(E10.at(x), 1, 0, 0.46, Y10.at(x));
    }
    if (degrees < 17.5) {
      return new EquivalentLoad(E15.at(x), 1, 0, 0.44, Y15.at(x));
    }
    return new EquivalentLoad(E_STEEP.at(degrees), 1, 0, X_STEEP.at(degrees), Y_STEEP.at(degrees));
  }

  private static EquivalentLoad pairColumn(double degrees, double x) {
    if (degrees < 12.5) {
      return new EquivalentLoad(E10.at(x), 1, Y10_PAIR_BELOW.at(x), 0.75, Y10_PAIR_ABOVE.at(x));
    }
    if (degrees < 17.5) {
      return new EquivalentLoad(E15.at(x), 1, Y15_PAIR_BELOW.at(x), 0.72, Y15_PAIR_ABOVE.at(x));
    }
    return new EquivalentLoad(
        E_STEEP.at(degrees), 1, Y1_STEEP.at(degrees), X2_STEEP.at(degrees), Y2_STEEP.at(degrees));
  }

  private static double tangent(double angle) {
    if (!(angle > 0 && angle < Math.PI / 2)) {
      throw new IllegalArgumentException(
          "alpha: found " + Math.toDegrees(angle) + " deg, expected above 0 and below 90 deg");
    }
    return Math.tan(angle);
  }

  /**
   * Returns the factors of one tapered or other radial roller bearing: {@code e = 1.5 tan(alpha), X
   * = 0.4, Y = 0.4 cot(alpha)}.
   *
   * @param angle contact angle [rad]
   */
  public static EquivalentLoad rollerSingle(double angle) {
    double t = tangent(angle);
    return new EquivalentLoad(1.5 * t, 1, 0, 0.4, 0.4 / t);
  }

  /**
   * Returns the factors of a pair of tapered bearings, a double row roller or a self-aligning
   * bearing.
   *
   * @param angle contact angle [rad]
   */
  public static EquivalentLoad rollerPair(double angle) {
    double t = tangent(angle);
    return new EquivalentLoad(1.5 * t, 1, 0.45 / t, 0.67, 0.67 / t);
  }

  /**
   * Returns the factors of a thrust ball bearing below 90 degrees, one direction.
   *
   * @param angle contact angle [rad]
   */
  public static EquivalentLoad thrustSingle(double angle) {
    double t = tangent(angle);
    double x = 1.25 * t * (1 - 2 * Math.sin(angle) / 3);
    return new EquivalentLoad(1.25 * t, x, 1, x, 1);
  }

  /**
   * Returns the factors of a thrust ball bearing below 90 degrees, both directions.
   *
   * @param angle contact angle [rad]
   */
  public static EquivalentLoad thrustDouble(double angle) {
    double t = tangent(angle);
    double s = Math.sin(angle);
    return new EquivalentLoad(
        1.25 * t,
        20.0 / 13 * t * (1 - s / 3),
        10.0 / 13 * (1 - s / 3),
        1.25 * t * (1 - 2 * s / 3),
        1);
  }

  /**
   * Tells whether the axial load is large enough to count with the second pair of factors.
   *
   * @param radial Fr [N]
   * @param axial Fa [N]
   */
  public boolean isAbove(double radial, double axial) {
    return axial > limit * radial;
  }

  /**
   * Returns the equivalent load {@code P = X Fr + Y Fa}.
   *
   * @param radial Fr, not negative [N]
   * @param axial Fa, not negative [N]
   * @return P [N]
   */
  public double load(double radial, double axial) {
    Need.notNegative("Fr", radial);
    Need.notNegative("Fa", axial);
    return isAbove(radial, axial)
        ? aboveX * radial + aboveY * axial
        : belowX * radial + belowY * axial;
  }
}
