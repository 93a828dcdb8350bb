package fettle.mechanics.gears;

/** The involute function and its inverse. */
public final class Involute {

  private Involute() {}

  /**
   * Returns inv α = tan α - α.
   *
   * @param angle pressure angle, 0 to below 90 degrees [rad]
   * @return involute angle [rad]
   */
  public static double inv(double angle) {
    if (!(angle >= 0 && angle < Math.PI / 2)) {
      throw new IllegalArgumentException(
          "pressure angle [rad] must be 0 to below pi/2, found " + angle);
    }
    if (angle < 1e-3) {
      double square = angle * angle;
      return angle * square * (1.0 / 3 + square * 2 / 15);
    }
    return Math.tan(angle) - angle;
  }

  /**
   * Returns the pressure angle whose involute angle is given, by Newton's method from (3y)^(1/3).
   *
   * @param involute involute angle, 0 to 3 [rad]
   * @return pressure angle [rad]
   */
  public static double angle(double involute) {
    if (!(involute >= 0 && involute <= 3)) {
      throw new IllegalArgumentException("involute angle [rad] must be 0 to 3, found " + involute);
    }
    double root = Math.cbrt(3 * involute);
    if (involute < 1e-12) {
      return root;
    }
    double angle = Math.min(root, 1.2);
    for (int round = 0; round < 60; round++) {
      double tangent = Math.tan(angle);
      double step = (inv(angle) - involute) / (tangent * tangent);
      angle = Math.max(angle - step, angle / 4);
      angle = Math.min(angle, Math.PI / 2 - 1e-9);
      if (Math.abs(step) < 1e-15 * Math.max(1, angle)) {
        break;
      }
    }
    return angle;
  }
}
