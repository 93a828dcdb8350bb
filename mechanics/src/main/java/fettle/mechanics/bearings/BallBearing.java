package fettle.mechanics.bearings;

/**
 * The inside of a ball bearing as far as it carries load: balls, pitch circle, free contact angle,
 * grooves. Rings are rigid, balls stay equally spaced, their own inertia is left out (true below
 * about half the limiting speed).
 *
 * @param balls number of balls Z
 * @param ball ball diameter Dw [mm]
 * @param pitch pitch diameter dm [mm]
 * @param angle free contact angle, 0 to pi/2 [rad]
 * @param inner groove radius of the inner race over Dw, above 0.5 to 0.6 [-]
 * @param outer groove radius of the outer race over Dw, above 0.5 to 0.6 [-]
 * @param modulus E of balls and rings [MPa]
 * @param poisson nu of balls and rings [-]
 * @see Sources#MODEL
 */
public record BallBearing(
    int balls,
    double ball,
    double pitch,
    double angle,
    double inner,
    double outer,
    double modulus,
    double poisson) {

  /** Modulus of bearing steel in ISO 76 [MPa]. */
  public static final double STEEL_MODULUS = 207_000;

  /** Poisson's ratio of bearing steel [-]. */
  public static final double STEEL_POISSON = 0.3;

  /** Refuses a bearing that cannot be built. */
  public BallBearing {
    Need.positive("Dw", ball);
    Need.positive("dm", pitch);
    if (!(ball < 0.7 * pitch)) {
      throw new IllegalArgumentException(
          "Dw: found "
              + ball
              + " mm on a pitch circle of "
              + pitch
              + " mm, expected less than 0.7 dm");
    }
    Need.within("contact angle in rad", angle, 0, Math.PI / 2 + 1e-12);
    if (!(inner > 0.5 && inner <= 0.6 && outer > 0.5 && outer <= 0.6)) {
      throw new IllegalArgumentException(
          "groove radius over ball diameter: found "
              + inner
              + " and "
              + outer
              + ", expected above 0.5 (a groove must be wider than its ball) to 0.6");
    }
    Need.positive("E", modulus);
    Need.within("nu", poisson, 0, 0.5);
    int most = mostBalls(ball, pitch);
    if (balls < 3 || balls > most) {
      throw new IllegalArgumentException(
          "Z: found " + balls + " balls, expected 3 to " + most + ", which fill the pitch circle");
    }
  }

  /**
   * Returns a steel bearing with the usual grooves 0.52 and 0.53.
   *
   * @param balls number of balls Z
   * @param ball ball diameter Dw [mm]
   * @param pitch pitch diameter dm [mm]
   * @param angle free contact angle [rad]
   */
  public static BallBearing steel(int balls, double ball, double pitch, double angle) {
    return new BallBearing(balls, ball, pitch, angle, 0.52, 0.53, STEEL_MODULUS, STEEL_POISSON);
  }

  /**
   * Returns how many balls fill the pitch circle: {@code pi/asin(Dw/dm)}.
   *
   * @param ball ball diameter [mm]
   * @param pitch pitch diameter [mm]
   */
  public static int mostBalls(double ball, double pitch) {
    return (int) Math.floor(Math.PI / Math.asin(ball / pitch) + 1e-9);
  }

  /**
   * Returns {@code Dw cos(alpha)/dm}.
   *
   * @return gamma [-]
   */
  public double gamma() {
    return ball * Math.cos(angle) / pitch;
  }

  /**
   * Returns the distance of the groove centres, {@code A = (fi+fo-1) Dw}.
   *
   * @return A [mm]
   */
  public double grooveDistance() {
    return (inner + outer - 1) * ball;
  }

  /**
   * Returns the radius of the circle of inner groove centres, {@code dm/2 + (fi-0.5) Dw
   * cos(alpha)}.
   *
   * @return Ri [mm]
   */
  public double grooveRadius() {
    return pitch / 2 + (inner - 0.5) * ball * Math.cos(angle);
  }

  /** Returns the contact of ball and inner race. */
  public HertzContact innerContact() {
    double g = gamma();
    double sum = 4 - 1 / inner + 2 * g / (1 - g);
    return HertzContact.of(sum / ball, (1 / inner + 2 * g / (1 - g)) / sum);
  }

  /** Returns the contact of ball and outer race. */
  public HertzContact outerContact() {
    double g = gamma();
    double sum = 4 - 1 / outer - 2 * g / (1 + g);
    return HertzContact.of(sum / ball, (1 / outer - 2 * g / (1 + g)) / sum);
  }

  /**
   * Returns the give of ball on race.
   *
   * @return c [1/MPa]
   */
  public double give() {
    return HertzContact.give(modulus, poisson, modulus, poisson);
  }

  /**
   * Returns the stiffness factor of ball and both races in series, {@code
   * (Ki^(-2/3)+Ko^(-2/3))^(-3/2)}.
   *
   * @return Kn of {@code Q = Kn delta^1.5} [N/mm^1.5]
   */
  public double contactStiffness() {
    double c = give();
    double i = innerContact().stiffness(c);
    double o = outerContact().stiffness(c);
    return Math.pow(Math.pow(i, -2.0 / 3) + Math.pow(o, -2.0 / 3), -1.5);
  }

  /**
   * Returns the greatest pressure of a ball load, on whichever race has more.
   *
   * @param load ball load Q [N]
   * @return p_max [MPa]
   */
  public double pressure(double load) {
    double c = give();
    return Math.max(innerContact().pressure(load, c), outerContact().pressure(load, c));
  }

  /**
   * Returns the free contact angle of a bearing with radial play: {@code cos(a0) = 1 - Pd/(2A)}.
   *
   * @param play diametral clearance Pd [mm]
   * @param grooveDistance A [mm]
   * @return free contact angle [rad]
   */
  public static double freeAngle(double play, double grooveDistance) {
    Need.notNegative("Pd", play);
    Need.positive("A", grooveDistance);
    if (!(play <= 2 * grooveDistance)) {
      throw new IllegalArgumentException(
          "Pd: found " + play + " mm, expected at most 2A = " + 2 * grooveDistance + " mm");
    }
    return Math.acos(1 - play / (2 * grooveDistance));
  }

  /**
   * Returns the end play that goes with radial play: {@code Pe = 2 A sin(a0)}.
   *
   * @param play diametral clearance Pd [mm]
   * @param grooveDistance A [mm]
   * @return end play Pe [mm]
   */
  public static double endPlay(double play, double grooveDistance) {
    return 2 * grooveDistance * Math.sin(freeAngle(play, grooveDistance));
  }
}
