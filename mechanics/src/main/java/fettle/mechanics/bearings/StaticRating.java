package fettle.mechanics.bearings;

import fettle.mechanics.bearings.DynamicRating.Inside;

/**
 * Basic static load rating from the geometry inside a bearing.
 *
 * @see Sources#STATIC
 */
public final class StaticRating {

  private static final double[] GAMMA = hundredths();
  private static final Curve RADIAL =
      Curve.of(
          GAMMA,
          new double[] {
            14.7, 14.9, 15.1, 15.3, 15.5, 15.7, 15.9, 16.1, 16.3, 16.5, 16.4, 16.1, 15.9, 15.6,
            15.4, 15.2, 14.9, 14.7, 14.4, 14.2, 14.0, 13.7, 13.5, 13.2, 13.0, 12.8, 12.5, 12.3,
            12.1, 11.8, 11.6, 11.4, 11.2, 10.9, 10.7, 10.5, 10.3, 10.0, 9.8, 9.6, 9.4
          });
  private static final Curve THRUST =
      Curve.of(
          java.util.Arrays.copyOf(GAMMA, 21),
          new double[] {
            61.6, 60.8, 59.9, 59.1, 58.3, 57.5, 56.7, 55.9, 55.1, 54.3, 53.5, 52.7, 51.9, 51.2,
            50.4, 49.6, 48.8, 48.0, 47.3, 46.5, 45.7
          });

  private StaticRating() {}

  private static double[] hundredths() {
    double[] g = new double[41];
    for (int i = 0; i < g.length; i++) {
      g[i] = i / 100.0;
    }
    return g;
  }

  /**
   * Returns f_0 of a radial or angular contact ball bearing.
   *
   * @param gamma {@code Dw cos(alpha)/Dpw}, 0 to 0.4 [-]
   * @return f_0 [-]
   * @see Sources#STATIC_FACTORS
   */
  public static double radialFactor(double gamma) {
    return RADIAL.at(Need.within("Dw cos(alpha)/Dpw", gamma, 0, 0.4));
  }

  /**
   * Returns f_0 of a thrust ball bearing.
   *
   * @param gamma {@code Dw cos(alpha)/Dpw}, for 90 degrees {@code Dw/Dpw}, 0 to 0.2 [-]
   * @return f_0 [-]
   * @see Sources#STATIC_FACTORS
   */
  public static double thrustFactor(double gamma) {
    return THRUST.at(Need.within("Dw/Dpw", gamma, 0, 0.2));
  }

  /**
   * Returns {@code C0r = f0 i Z Dw^2 cos(alpha)}.
   *
   * @param in the inside
   * @return C0r [N]
   */
  public static double radialBall(Inside in) {
    return radialFactor(in.gamma())
        * in.rows()
        * in.elements()
        * in.diameter()
        * in.diameter()
        * Math.cos(in.angle());
  }

  /**
   * Returns {@code C0a = f0 Z Dw^2 sin(alpha)}.
   *
   * @param in the inside
   * @return C0a [N]
   */
  public static double thrustBall(Inside in) {
    boolean square = in.angle() > Math.PI / 2 - 1e-6;
    return thrustFactor(square ? in.diameter() / in.pitch() : in.gamma())
        * in.rows()
        * in.elements()
        * in.diameter()
        * in.diameter()
        * Math.sin(in.angle());
  }

  /**
   * Returns {@code C0r = 44 (1 - Dwe cos(alpha)/Dpw) i Z Lwe Dwe cos(alpha)}.
   *
   * @param in the inside
   * @return C0r [N]
   */
  public static double radialRoller(Inside in) {
    Need.positive("Lwe", in.length());
    return 44
        * (1 - in.gamma())
        * in.rows()
        * in.elements()
        * in.length()
        * in.diameter()
        * Math.cos(in.angle());
  }

  /**
   * Returns {@code C0a = 220 (1 - Dwe cos(alpha)/Dpw) Z Lwe Dwe sin(alpha)}.
   *
   * @param in the inside
   * @return C0a [N]
   */
  public static double thrustRoller(Inside in) {
    Need.positive("Lwe", in.length());
    return 220
        * (1 - in.gamma())
        * in.rows()
        * in.elements()
        * in.length()
        * in.diameter()
        * Math.sin(in.angle());
  }
}
