package fettle.mechanics.bearings;

/**
 * Balls and pitch circle of a bearing whose catalogue gives none: guessed from its outside, or
 * found from its two ratings. Either is an estimate; stiffness from it is good to a quarter.
 *
 * @param balls Z
 * @param ball Dw [mm]
 * @param pitch dm [mm]
 * @see Sources#ESTIMATE
 */
public record InternalGeometry(int balls, double ball, double pitch) {

  private static final double FILLING = Math.toRadians(195);
  private static final double BALL_SHARE = 0.293;
  private static final double COUNTERBORED = 0.84;

  /**
   * Guesses a deep groove bearing: {@code dm = (d+D)/2, Dw = 0.293 (D-d), Z = floor(1 + phi/(2
   * asin(Dw/dm)))} with a filling angle of 195 degrees.
   *
   * @param bore d [mm]
   * @param outside D [mm]
   */
  public static InternalGeometry deepGroove(double bore, double outside) {
    ring(bore, outside);
    double pitch = (bore + outside) / 2;
    double ball = BALL_SHARE * (outside - bore);
    return new InternalGeometry(filled(ball, pitch), ball, pitch);
  }

  /**
   * Guesses an angular contact bearing: as a deep groove bearing, with 0.84 of the pitch circle
   * filled.
   *
   * @param bore d [mm]
   * @param outside D [mm]
   */
  public static InternalGeometry angularContact(double bore, double outside) {
    ring(bore, outside);
    double pitch = (bore + outside) / 2;
    double ball = BALL_SHARE * (outside - bore);
    int balls = (int) Math.round(COUNTERBORED * Math.PI * pitch / ball);
    return new InternalGeometry(Math.min(balls, BallBearing.mostBalls(ball, pitch)), ball, pitch);
  }

  /**
   * Returns how many balls an eccentric filling takes.
   *
   * @param ball Dw [mm]
   * @param pitch dm [mm]
   */
  public static int filled(double ball, double pitch) {
    Need.positive("Dw", ball);
    Need.positive("dm", pitch);
    if (!(ball < 0.7 * pitch)) {
      throw new IllegalArgumentException(
          "Dw: found " + ball + " mm, expected less than 0.7 of dm = " + pitch + " mm");
    }
    return (int) Math.floor(1 + FILLING / (2 * Math.asin(ball / pitch)));
  }

  private static void ring(double bore, double outside) {
    Need.positive("d", bore);
    if (!(outside > bore) || Double.isInfinite(outside)) {
      throw new IllegalArgumentException(
          "D: found " + outside + " mm, expected more than the bore of " + bore + " mm");
    }
  }

  /**
   * Finds balls from the ratings: for every whole Z the ball that gives C0, and of those the one
   * whose C agrees best.
   *
   * @param dynamic Cr [N]
   * @param fixed C0r [N]
   * @param pitch dm [mm]
   * @param angle contact angle, 0 to 45 degrees [rad]
   * @throws IllegalArgumentException if no bearing of that pitch circle has these ratings within 15
   *     percent
   */
  public static InternalGeometry ofRatings(
      double dynamic, double fixed, double pitch, double angle) {
    Need.positive("C", dynamic);
    Need.positive("C0", fixed);
    Need.positive("dm", pitch);
    InternalGeometry best = null;
    double least = 0.15;
    for (int z = 4; z <= 60; z++) {
      double ball = ballOf(z, fixed, pitch, angle);
      if (ball > 0 && z <= BallBearing.mostBalls(ball, pitch)) {
        DynamicRating.Inside in = new DynamicRating.Inside(1, z, ball, 0, pitch, angle, 1.3);
        double error =
            Math.abs(DynamicRating.radialBall(in, DynamicRating.Column.BALL_SINGLE) / dynamic - 1);
        if (error < least) {
          least = error;
          best = new InternalGeometry(z, ball, pitch);
        }
      }
    }
    if (best == null) {
      throw new IllegalArgumentException(
          "no ball bearing with a pitch circle of "
              + pitch
              + " mm has C = "
              + dynamic
              + " N and C0 = "
              + fixed
              + " N; check the ratings and the sizes");
    }
    return best;
  }

  private static double ballOf(int z, double fixed, double pitch, double angle) {
    double low = 0.01 * pitch;
    double high = Math.min(0.4 * pitch / Math.cos(angle), 0.65 * pitch);
    if (rating(z, high, pitch, angle) < fixed || rating(z, low, pitch, angle) > fixed) {
      return 0;
    }
    for (int i = 0; i < 80; i++) {
      double middle = 0.5 * (low + high);
      if (rating(z, middle, pitch, angle) < fixed) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  private static double rating(int z, double ball, double pitch, double angle) {
    double g = Math.min(0.4, ball * Math.cos(angle) / pitch);
    return StaticRating.radialFactor(g) * z * ball * ball * Math.cos(angle);
  }
}
