package fettle.mechanics.bearings;

/**
 * Basic dynamic load rating from the geometry inside a bearing.
 *
 * @see Sources#DYNAMIC
 */
public final class DynamicRating {

  /** Which column of factors applies. */
  public enum Column {
    /** Single row radial contact, single and double row angular contact ball bearings. */
    BALL_SINGLE(0.40),
    /** Double row radial contact groove ball bearings. */
    BALL_DOUBLE(0.40),
    /** Thrust ball bearings, 90 degrees. */
    THRUST_BALL_90(0.34),
    /** Radial roller bearings. */
    ROLLER(0.30);

    private final double end;

    Column(double end) {
      this.end = end;
    }
  }

  private static final double[] GAMMA = {
    .01, .02, .03, .04, .05, .06, .07, .08, .09, .10, .12, .14, .16, .18, .20, .22, .24, .26, .28,
    .30, .32, .34, .36, .38, .40
  };
  private static final Curve BALL_SINGLE =
      Curve.of(
          GAMMA,
          new double[] {
            29.1, 35.8, 40.3, 43.8, 46.7, 49.1, 51.1, 52.8, 54.3, 55.5, 57.5, 58.8, 59.6, 59.9,
            59.9, 59.6, 59.0, 58.2, 57.1, 56.0, 54.6, 53.2, 51.7, 50.0, 48.4
          });
  private static final Curve BALL_DOUBLE =
      Curve.of(
          GAMMA,
          new double[] {
            27.5, 33.9, 38.2, 41.5, 44.2, 46.5, 48.4, 50.0, 51.4, 52.6, 54.5, 55.7, 56.5, 56.8,
            56.8, 56.5, 55.9, 55.1, 54.1, 53.0, 51.8, 50.4, 48.9, 47.4, 45.8
          });
  private static final Curve THRUST =
      Curve.of(
          first(22),
          new double[] {
            36.7, 45.2, 51.1, 55.7, 59.5, 62.9, 65.8, 68.5, 71.0, 73.3, 77.4, 81.1, 84.4, 87.4,
            90.2, 92.8, 95.3, 97.6, 99.8, 101.9, 103.9, 105.8
          });
  private static final Curve ROLLER =
      Curve.of(
          first(20),
          new double[] {
            52.1, 60.8, 66.5, 70.7, 74.1, 76.9, 79.2, 81.2, 82.8, 84.2, 86.4, 87.7, 88.5, 88.8,
            88.7, 88.2, 87.5, 86.4, 85.2, 83.8
          });
  private static final double LARGE_BALL = 25.4;

  private DynamicRating() {}

  private static double[] first(int count) {
    return java.util.Arrays.copyOf(GAMMA, count);
  }

  /**
   * Returns the tabulated factor f_c, read by straight lines; below gamma 0.01 the expression
   * behind the table.
   *
   * @param column which factors
   * @param gamma {@code Dw cos(alpha)/Dpw}, for 90 degrees {@code Dw/Dpw} [-]
   * @return f_c [-]
   */
  public static double factor(Column column, double gamma) {
    inRange(column, gamma);
    if (gamma < GAMMA[0]) {
      return factorExpression(column, gamma);
    }
    return switch (column) {
      case BALL_SINGLE -> BALL_SINGLE.at(gamma);
      case BALL_DOUBLE -> BALL_DOUBLE.at(gamma);
      case THRUST_BALL_90 -> THRUST.at(gamma);
      case ROLLER -> ROLLER.at(gamma);
    };
  }

  private static void inRange(Column column, double gamma) {
    if (!(gamma > 0 && gamma <= column.end)) {
      throw new IllegalArgumentException(
          "Dw cos(alpha)/Dpw: found " + gamma + ", expected above 0 to " + column.end);
    }
  }

  /**
   * Returns f_c by the expression behind the table.
   *
   * @param column which factors
   * @param gamma {@code Dw cos(alpha)/Dpw}, for 90 degrees {@code Dw/Dpw} [-]
   * @return f_c [-]
   * @see Sources#DYNAMIC_DERIVED
   */
  public static double factorExpression(Column column, double gamma) {
    inRange(column, gamma);
    return switch (column) {
      case BALL_SINGLE -> radialBall(gamma, 0.95);
      case BALL_DOUBLE -> radialBall(gamma, 0.90);
      case THRUST_BALL_90 -> thrust90(gamma);
      case ROLLER -> roller(gamma);
    };
  }

  private static double radialBall(double g, double lambda) {
    double r = 0.52;
    double brace = 1.04 * Math.pow((1 - g) / (1 + g), 1.72);
    return 0.41
        * 98.0665
        * lambda
        * Math.pow(2 * r / (2 * r - 1), 0.41)
        * Math.pow(g, 0.3)
        * Math.pow(1 - g, 1.39)
        / Math.cbrt(1 + g)
        * Math.pow(1 + Math.pow(brace, 10.0 / 3), -0.3);
  }

  private static double thrust90(double g) {
    double r = 0.535;
    return 98.0665
        * 0.9
        * 2
        / 3
        * Math.pow(2 * r / (2 * r - 1), 0.41)
        * Math.pow(g, 0.3)
        * Math.pow(2, -0.3);
  }

  private static double roller(double g) {
    double brace = 1.04 * Math.pow((1 - g) / (1 + g), 143.0 / 108);
    return 0.377
        * 551.134
        * 0.83
        * Math.pow(g, 2.0 / 9)
        * Math.pow(1 - g, 29.0 / 27)
        / Math.pow(1 + g, 0.25)
        * Math.pow(1 + Math.pow(brace, 4.5), -2.0 / 9);
  }

  /**
   * Returns f_c of a thrust ball bearing with a contact angle below 90 degrees.
   *
   * @param gamma {@code Dw cos(alpha)/Dpw} [-]
   * @param angle contact angle, 45 degrees to below 90 degrees [rad]
   * @return f_c [-]
   * @see Sources#DYNAMIC_DERIVED
   */
  public static double thrustFactor(double gamma, double angle) {
    inRange(Column.THRUST_BALL_90, gamma);
    double r = 0.535;
    double brace = Math.pow((1 - gamma) / (1 + gamma), 1.72);
    return 98.0665
        * 0.9
        * (1 - Math.sin(angle) / 3)
        * Math.pow(2 * r / (2 * r - 1), 0.41)
        * Math.pow(gamma, 0.3)
        * Math.pow(1 - gamma, 1.39)
        / Math.cbrt(1 + gamma)
        * Math.pow(1 + Math.pow(brace, 10.0 / 3), -0.3);
  }

  /**
   * Returns f_c of a thrust roller bearing at 90 degrees, {@code 551.134*0.73*0.85*2^(-2/9)
   * g^(2/9)}.
   *
   * @param gamma {@code Dwe/Dpw} [-]
   * @return f_c [-]
   * @see Sources#DYNAMIC_DERIVED
   */
  public static double thrustRollerFactor(double gamma) {
    Need.within("Dwe/Dpw", gamma, 1e-6, 0.3);
    return 551.134 * 0.73 * 0.85 * Math.pow(gamma / 2, 2.0 / 9);
  }

  /** Returns the ball-size term Dw^1.8, above 25.4 mm 3.647 Dw^1.4. */
  private static double ballTerm(double ball) {
    return ball <= LARGE_BALL ? Math.pow(ball, 1.8) : 3.647 * Math.pow(ball, 1.4);
  }

  /**
   * What is inside a bearing, for its rating.
   *
   * @param rows rows of rolling elements i
   * @param elements rolling elements in a row Z
   * @param diameter ball or roller diameter [mm]
   * @param length effective roller length; 0 for balls [mm]
   * @param pitch pitch diameter Dpw [mm]
   * @param angle contact angle [rad]
   * @param material factor bm for steel and make of today [-]
   */
  public record Inside(
      int rows,
      int elements,
      double diameter,
      double length,
      double pitch,
      double angle,
      double material) {

    /** Refuses what cannot be built. */
    public Inside {
      if (rows < 1 || rows > 4) {
        throw new IllegalArgumentException("rows: found " + rows + ", expected 1 to 4");
      }
      Need.positive("Dw", diameter);
      Need.notNegative("Lwe", length);
      Need.positive("Dpw", pitch);
      Need.within("alpha in rad", angle, 0, Math.PI / 2 + 1e-12);
      Need.within("bm", material, 0.5, 2);
      if (!(diameter < 0.7 * pitch)) {
        throw new IllegalArgumentException(
            "Dw: found " + diameter + " mm, expected less than 0.7 of Dpw = " + pitch + " mm");
      }
      int most = BallBearing.mostBalls(diameter, pitch);
      if (elements < 3 || elements > most) {
        throw new IllegalArgumentException(
            "Z: found " + elements + ", expected 3 to " + most + ", which fill the pitch circle");
      }
    }

    double gamma() {
      return diameter * Math.cos(angle) / pitch;
    }
  }

  /**
   * Returns the rating of a radial or angular contact ball bearing: {@code Cr = bm fc (i
   * cos(alpha))^0.7 Z^(2/3) Dw^1.8}.
   *
   * @param in the inside, alpha up to 45 degrees
   * @param column BALL_SINGLE or BALL_DOUBLE
   * @return Cr [N]
   */
  public static double radialBall(Inside in, Column column) {
    notSteeper(in.angle);
    return in.material
        * factor(column, in.gamma())
        * Math.pow(in.rows * Math.cos(in.angle), 0.7)
        * Math.pow(in.elements, 2.0 / 3)
        * ballTerm(in.diameter);
  }

  private static void notSteeper(double angle) {
    if (!(angle <= Math.PI / 4 + 1e-9)) {
      throw new IllegalArgumentException(
          "alpha: found "
              + Math.toDegrees(angle)
              + " deg, expected 0 to 45 deg for a radial bearing; above that it is a thrust bearing");
    }
  }

  private static boolean isSquare(double angle) {
    return angle > Math.PI / 2 - 1e-6;
  }

  private static void notFlatter(double angle) {
    if (!(angle >= Math.PI / 4 - 1e-9)) {
      throw new IllegalArgumentException(
          "alpha: found "
              + Math.toDegrees(angle)
              + " deg, expected 45 to 90 deg for a thrust bearing; below that it is a radial bearing");
    }
  }

  /**
   * Returns the rating of a thrust ball bearing.
   *
   * @param in the inside, alpha 45 to 90 degrees
   * @return Ca [N]
   */
  public static double thrustBall(Inside in) {
    notFlatter(in.angle);
    double common = in.material * Math.pow(in.elements, 2.0 / 3) * ballTerm(in.diameter);
    if (isSquare(in.angle)) {
      return common * factor(Column.THRUST_BALL_90, in.diameter / in.pitch);
    }
    return common
        * thrustFactor(in.gamma(), in.angle)
        * Math.pow(Math.cos(in.angle), 0.7)
        * Math.tan(in.angle);
  }

  /**
   * Returns the rating of a radial roller bearing: {@code Cr = bm fc (i Lwe cos(alpha))^(7/9)
   * Z^(3/4) Dwe^(29/27)}.
   *
   * @param in the inside
   * @return Cr [N]
   */
  public static double radialRoller(Inside in) {
    notSteeper(in.angle);
    Need.positive("Lwe", in.length);
    return in.material
        * factor(Column.ROLLER, in.gamma())
        * Math.pow(in.rows * in.length * Math.cos(in.angle), 7.0 / 9)
        * Math.pow(in.elements, 0.75)
        * Math.pow(in.diameter, 29.0 / 27);
  }

  /**
   * Returns the rating of a thrust roller bearing at 90 degrees.
   *
   * @param in the inside
   * @return Ca [N]
   */
  public static double thrustRoller(Inside in) {
    Need.positive("Lwe", in.length);
    if (!isSquare(in.angle)) {
      throw new IllegalArgumentException("alpha: a thrust roller bearing is rated at 90 deg here");
    }
    return in.material
        * thrustRollerFactor(in.diameter / in.pitch)
        * Math.pow(in.length, 7.0 / 9)
        * Math.pow(in.elements, 0.75)
        * Math.pow(in.diameter, 29.0 / 27);
  }

  /**
   * Returns the rating of equal bearings side by side that share the load, as one bearing: {@code
   * i^0.7 C}, rollers {@code i^(7/9) C}.
   *
   * @param rating C of one [N]
   * @param count how many
   * @param exponent 0.7 for balls, 7/9 for rollers [-]
   * @return C of the set [N]
   */
  public static double set(double rating, int count, double exponent) {
    Need.positive("C", rating);
    if (count < 1) {
      throw new IllegalArgumentException("i: found " + count + ", expected 1 or more bearings");
    }
    return Math.pow(count, exponent) * rating;
  }
}
