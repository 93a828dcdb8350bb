package fettle.parts.solid;

/**
 * A point or a direction in space.
 *
 * @param x first coordinate [mm]
 * @param y second coordinate [mm]
 * @param z third coordinate [mm]
 */
public record Vec(double x, double y, double z) {

  public static final Vec ZERO = new Vec(0, 0, 0);
  public static final Vec X = new Vec(1, 0, 0);
  public static final Vec Y = new Vec(0, 1, 0);
  public static final Vec Z = new Vec(0, 0, 1);

  /** Returns the sum. */
  public Vec plus(Vec b) {
    return new Vec(x + b.x, y + b.y, z + b.z);
  }

  /** Returns the difference. */
  public Vec minus(Vec b) {
    return new Vec(x - b.x, y - b.y, z - b.z);
  }

  /**
   * Returns the multiple.
   *
   * @param k factor [-]
   */
  public Vec times(double k) {
    return new Vec(x * k, y * k, z * k);
  }

  /**
   * Returns the scalar product.
   *
   * @return product [mm2]
   */
  public double dot(Vec b) {
    return x * b.x + y * b.y + z * b.z;
  }

  /** Returns the vector product. */
  public Vec cross(Vec b) {
    return new Vec(y * b.z - z * b.y, z * b.x - x * b.z, x * b.y - y * b.x);
  }

  /**
   * Returns the length.
   *
   * @return length [mm]
   */
  public double length() {
    return Math.sqrt(dot(this));
  }

  /** Returns the direction. */
  public Vec unit() {
    double n = length();
    return new Vec(x / n, y / n, z / n);
  }

  /**
   * Returns the distance to a point.
   *
   * @return distance [mm]
   */
  public double to(Vec b) {
    return minus(b).length();
  }

  /** Returns some direction at right angles to this one. */
  public Vec across() {
    double ax = Math.abs(x);
    double ay = Math.abs(y);
    double az = Math.abs(z);
    Vec other = ax <= ay && ax <= az ? X : ay <= az ? Y : Z;
    return cross(other).unit();
  }

  /**
   * Returns one coordinate.
   *
   * @param axis 0, 1, 2 for x, y, z
   * @return coordinate [mm]
   */
  public double get(int axis) {
    return axis == 0 ? x : axis == 1 ? y : z;
  }

  /** Returns the direction of an axis: 0, 1, 2 for x, y, z. */
  public static Vec axis(int axis) {
    return axis == 0 ? X : axis == 1 ? Y : Z;
  }
}
