package fettle.mechanics.bearings;

import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;

/**
 * Contact of two curved bodies after Hertz, with complete elliptic integrals: an ellipse of
 * semi-axes {@code a >= b}. Assumes smooth elastic bodies and an ellipse small against the radii.
 *
 * @see Sources#HERTZ
 */
public final class HertzContact {

  private static final double GREATEST_LOG_RATIO = Math.log(1e5);
  private static final int HALVINGS = 200;

  private final double curvatureSum;
  private final double curvatureDifference;
  private final double ratio;
  private final double aStar;
  private final double bStar;
  private final double deltaStar;

  private HertzContact(double curvatureSum, double curvatureDifference) {
    this.curvatureSum = curvatureSum;
    this.curvatureDifference = curvatureDifference;
    this.ratio = axisRatio(curvatureDifference);
    double k2 = ratio * ratio;
    double m = 1 - 1 / k2;
    double first = LegendreEllipticIntegral.bigK(m);
    double second = LegendreEllipticIntegral.bigE(m);
    this.aStar = Math.cbrt(2 * k2 * second / Math.PI);
    this.bStar = Math.cbrt(2 * second / (Math.PI * ratio));
    this.deltaStar = 2 * first / Math.PI * Math.cbrt(Math.PI / (2 * k2 * second));
  }

  /**
   * Returns the contact of given curvatures.
   *
   * @param curvatureSum sum of the four principal curvatures, hollow ones negative [1/mm]
   * @param curvatureDifference F(rho), difference over sum [-]
   * @throws IllegalArgumentException if the sum is not above 0 or F is outside 0 to 0.99999999
   */
  public static HertzContact of(double curvatureSum, double curvatureDifference) {
    if (!(curvatureSum > 0) || Double.isInfinite(curvatureSum)) {
      throw new IllegalArgumentException(
          "curvature sum: found "
              + curvatureSum
              + " 1/mm, expected above 0; a hollow must be wider than what lies in it");
    }
    if (!(curvatureDifference >= 0 && curvatureDifference <= 0.99999999)) {
      throw new IllegalArgumentException(
          "F(rho): found " + curvatureDifference + ", expected 0 to 0.99999999 (1 is a line)");
    }
    return new HertzContact(curvatureSum, curvatureDifference);
  }

  /**
   * Returns the contact of two bodies by their principal radii; a flat has radius infinity or 0.
   *
   * @param r1 radius of body 1 in its first plane, hollow negative [mm]
   * @param r1Across radius of body 1 across it [mm]
   * @param r2 radius of body 2 in its first plane [mm]
   * @param r2Across radius of body 2 across it [mm]
   * @param angle angle between the two first planes [rad]
   */
  public static HertzContact ofRadii(
      double r1, double r1Across, double r2, double r2Across, double angle) {
    double c1 = curvature(r1);
    double c1a = curvature(r1Across);
    double c2 = curvature(r2);
    double c2a = curvature(r2Across);
    double sum = c1 + c1a + c2 + c2a;
    double d1 = c1 - c1a;
    double d2 = c2 - c2a;
    double difference =
        Math.sqrt(Math.max(0, d1 * d1 + d2 * d2 + 2 * d1 * d2 * Math.cos(2 * angle)));
    return of(sum, sum > 0 ? difference / sum : 0);
  }

  private static double curvature(double radius) {
    if (Double.isNaN(radius)) {
      throw new IllegalArgumentException("radius: not a number; give it in mm, a flat as 0");
    }
    return radius == 0 || Double.isInfinite(radius) ? 0 : 1 / radius;
  }

  private static double axisRatio(double difference) {
    if (difference < 1e-9) {
      return 1;
    }
    double low = 0;
    double high = GREATEST_LOG_RATIO;
    for (int i = 0; i < HALVINGS && high - low > 1e-15 * high; i++) {
      double middle = 0.5 * (low + high);
      if (difference(Math.exp(middle)) < difference) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.exp(0.5 * (low + high));
  }

  private static double difference(double k) {
    double k2 = k * k;
    double m = 1 - 1 / k2;
    double second = LegendreEllipticIntegral.bigE(m);
    double first = LegendreEllipticIntegral.bigK(m);
    return ((k2 + 1) * second - 2 * first) / ((k2 - 1) * second);
  }

  /**
   * Returns the sum of the four principal curvatures.
   *
   * @return curvature sum [1/mm]
   */
  public double curvatureSum() {
    return curvatureSum;
  }

  /**
   * Returns the curvature difference F(rho).
   *
   * @return difference over sum [-]
   */
  public double curvatureDifference() {
    return curvatureDifference;
  }

  /**
   * Returns the axis ratio a/b of the ellipse.
   *
   * @return k [-]
   */
  public double ratio() {
    return ratio;
  }

  /**
   * Returns the dimensionless major semi-axis.
   *
   * @return a* [-]
   */
  public double aStar() {
    return aStar;
  }

  /**
   * Returns the dimensionless minor semi-axis.
   *
   * @return b* [-]
   */
  public double bStar() {
    return bStar;
  }

  /**
   * Returns the dimensionless approach.
   *
   * @return delta* [-]
   */
  public double deltaStar() {
    return deltaStar;
  }

  /**
   * Returns the give of two elastic bodies in contact: {@code (1-nu1^2)/E1 + (1-nu2^2)/E2}.
   *
   * @param modulus1 E of body 1 [MPa]
   * @param poisson1 nu of body 1 [-]
   * @param modulus2 E of body 2 [MPa]
   * @param poisson2 nu of body 2 [-]
   * @return c [1/MPa]
   */
  public static double give(double modulus1, double poisson1, double modulus2, double poisson2) {
    Need.positive("E", modulus1);
    Need.positive("E", modulus2);
    Need.within("nu", poisson1, 0, 0.5);
    Need.within("nu", poisson2, 0, 0.5);
    return (1 - poisson1 * poisson1) / modulus1 + (1 - poisson2 * poisson2) / modulus2;
  }

  private double size(double load, double give) {
    return Math.cbrt(3 * load * give / (2 * curvatureSum));
  }

  /**
   * Returns the major semi-axis.
   *
   * @param load contact force Q [N]
   * @param give c of {@link #give} [1/MPa]
   * @return a [mm]
   */
  public double major(double load, double give) {
    return aStar * size(load, give);
  }

  /**
   * Returns the minor semi-axis.
   *
   * @param load contact force Q [N]
   * @param give c of {@link #give} [1/MPa]
   * @return b [mm]
   */
  public double minor(double load, double give) {
    return bStar * size(load, give);
  }

  /**
   * Returns the approach of the bodies.
   *
   * @param load contact force Q [N]
   * @param give c of {@link #give} [1/MPa]
   * @return delta [mm]
   */
  public double approach(double load, double give) {
    double x = size(load, give);
    return deltaStar * x * x * curvatureSum / 2;
  }

  /**
   * Returns the greatest pressure, in the middle of the ellipse: {@code 3Q/(2 pi a b)}.
   *
   * @param load contact force Q [N]
   * @param give c of {@link #give} [1/MPa]
   * @return p_max [MPa]
   */
  public double pressure(double load, double give) {
    return load == 0 ? 0 : 1.5 * load / (Math.PI * major(load, give) * minor(load, give));
  }

  /**
   * Returns the stiffness factor of {@code Q = K delta^1.5}.
   *
   * @param give c of {@link #give} [1/MPa]
   * @return K [N/mm^1.5]
   */
  public double stiffness(double give) {
    return Math.pow(2 / (deltaStar * curvatureSum), 1.5) * 2 * curvatureSum / (3 * give);
  }
}
