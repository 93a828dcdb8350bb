package fettle.mechanics.motion;

/**
 * A place or a direction.
 *
 * @param x across [mm]
 * @param y up [mm]
 * @param z along [mm]
 */
public record Vector(double x, double y, double z) {

  /** The origin. */
  public static final Vector ZERO = new Vector(0, 0, 0);

  /** Returns the sum. */
  public Vector plus(Vector o) {
    return new Vector(x + o.x, y + o.y, z + o.z);
  }

  /** Returns the difference. */
  public Vector minus(Vector o) {
    return new Vector(x - o.x, y - o.y, z - o.z);
  }

  /**
   * Returns a multiple.
   *
   * @param factor how many times [-]
   */
  public Vector times(double factor) {
    return new Vector(x * factor, y * factor, z * factor);
  }

  /**
   * Returns the sum with a multiple of another.
   *
   * @param factor how many times [-]
   * @param o the other
   */
  public Vector plus(double factor, Vector o) {
    return new Vector(x + factor * o.x, y + factor * o.y, z + factor * o.z);
  }

  /**
   * Returns the scalar product.
   *
   * @return sum of the products of the coordinates [mm2]
   */
  public double dot(Vector o) {
    return x * o.x + y * o.y + z * o.z;
  }

  /** Returns the vector product. */
  public Vector cross(Vector o) {
    return new Vector(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  /**
   * Returns the length.
   *
   * @return length [mm]
   */
  public double norm() {
    return Math.sqrt(dot(this));
  }

  /** Returns the direction, of length 1; zero if it has none. */
  public Vector unit() {
    double length = norm();
    return length > 0 ? times(1 / length) : this;
  }

  /**
   * Turns this about an axis through the origin, right-handed.
   *
   * @param axis direction of the axis, of length 1
   * @param cosine cosine of the angle [-]
   * @param sine sine of the angle [-]
   */
  Vector turned(Vector axis, double cosine, double sine) {
    double along = dot(axis) * (1 - cosine);
    return new Vector(
        cosine * x + along * axis.x + sine * (axis.y * z - axis.z * y),
        cosine * y + along * axis.y + sine * (axis.z * x - axis.x * z),
        cosine * z + along * axis.z + sine * (axis.x * y - axis.y * x));
  }

  /** Tells whether every coordinate is nothing, exactly. */
  boolean isZero() {
    return x == 0 && y == 0 && z == 0;
  }

  /** Tells whether every coordinate is a number of workshop size. */
  boolean sound() {
    return Math.abs(x) <= 1e6 && Math.abs(y) <= 1e6 && Math.abs(z) <= 1e6;
  }
}
