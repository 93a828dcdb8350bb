package fettle.mechanics.metrology;

/**
 * Eccentricity of a turning surface as a vector: the reading of a fixed indicator at spindle angle
 * t is {@code e cos(t + angle)}. The total indicator reading of a clean eccentric is 2e.
 *
 * @param x part in phase with the spindle mark [mm]
 * @param y part a quarter turn ahead [mm]
 */
public record RunOutVector(double x, double y) {

  /**
   * Returns the eccentricity (radius, not total reading).
   *
   * @return eccentricity [mm]
   */
  public double size() {
    return Math.hypot(x, y);
  }

  /**
   * Returns the angle.
   *
   * @return {@code atan2(y, x)} [rad]
   */
  public double angle() {
    return Math.atan2(y, x);
  }

  /** Returns the sum of two vectors. */
  public RunOutVector plus(RunOutVector other) {
    return new RunOutVector(x + other.x, y + other.y);
  }

  /** Returns the difference of two vectors. */
  public RunOutVector minus(RunOutVector other) {
    return new RunOutVector(x - other.x, y - other.y);
  }

  /**
   * Returns the vector scaled.
   *
   * @param factor factor [any]
   */
  public RunOutVector times(double factor) {
    return new RunOutVector(x * factor, y * factor);
  }

  /**
   * Returns the vector turned.
   *
   * @param angle angle [rad]
   */
  public RunOutVector turned(double angle) {
    double c = HarmonicDesign.cosine(angle / (2 * Math.PI));
    double s = HarmonicDesign.sine(angle / (2 * Math.PI));
    return new RunOutVector(x * c - y * s, x * s + y * c);
  }

  /**
   * Returns the vector of given size and angle.
   *
   * @param size eccentricity [mm]
   * @param angle angle [rad]
   */
  public static RunOutVector polar(double size, double angle) {
    return new RunOutVector(size, 0).turned(angle);
  }
}
