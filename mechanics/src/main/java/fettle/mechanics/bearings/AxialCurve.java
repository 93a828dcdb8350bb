package fettle.mechanics.bearings;

/**
 * Axial load of one ball bearing over the axial approach of its rings, all balls alike; the contact
 * angle opens with the load.
 *
 * @see Sources#MODEL
 */
public final class AxialCurve {

  private final int balls;
  private final double distance;
  private final double sine;
  private final double cosine;
  private final double stiffness;

  private AxialCurve(BallBearing bearing) {
    balls = bearing.balls();
    distance = bearing.grooveDistance();
    sine = Math.sin(bearing.angle());
    cosine = Math.cos(bearing.angle());
    stiffness = bearing.contactStiffness();
  }

  /**
   * Returns the curve of a bearing.
   *
   * @param bearing its inside
   */
  public static AxialCurve of(BallBearing bearing) {
    return new AxialCurve(bearing);
  }

  private double stretch(double approach) {
    double length = Math.hypot(distance * sine + approach, distance * cosine);
    return Math.max(0, (2 * distance * sine + approach) * approach / (length + distance));
  }

  /**
   * Returns the axial load at an approach; 0 if the rings have moved apart.
   *
   * @param approach axial approach [mm]
   * @return Fa [N]
   */
  public double force(double approach) {
    if (!(approach > 0)) {
      return 0;
    }
    double d = stretch(approach);
    return balls * stiffness * d * Math.sqrt(d) * Math.sin(angle(approach));
  }

  /**
   * Returns the working contact angle at an approach.
   *
   * @param approach axial approach [mm]
   * @return working contact angle [rad]
   */
  public double angle(double approach) {
    return Math.atan2(distance * sine + approach, distance * cosine);
  }

  /**
   * Returns the load of each ball at an approach.
   *
   * @param approach axial approach [mm]
   * @return Q [N]
   */
  public double ballLoad(double approach) {
    double d = stretch(approach);
    return stiffness * d * Math.sqrt(d);
  }

  /**
   * Returns the axial tangent stiffness at an approach.
   *
   * @param approach axial approach [mm]
   * @return dF/dd [N/mm]
   */
  public double tangent(double approach) {
    if (!(approach > 0)) {
      return 0;
    }
    double d = stretch(approach);
    double length = distance + d;
    double s = Math.sin(angle(approach));
    double q = stiffness * d * Math.sqrt(d);
    return balls * (1.5 * stiffness * Math.sqrt(d) * s * s + q / length * (1 - s * s));
  }

  /**
   * Returns the approach under an axial load.
   *
   * @param force Fa, not negative [N]
   * @return approach [mm]
   */
  public double approach(double force) {
    Need.notNegative("axial force", force);
    if (force == 0) {
      return 0;
    }
    double high = distance;
    for (int i = 0; i < 200 && force(high) < force; i++) {
      high *= 2;
    }
    double low = 0;
    for (int i = 0; i < 200 && high - low > 1e-16 * high; i++) {
      double middle = 0.5 * (low + high);
      if (force(middle) < force) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
