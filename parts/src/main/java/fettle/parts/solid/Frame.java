package fettle.parts.solid;

/**
 * A right-handed frame.
 *
 * @param origin its origin
 * @param x first direction
 * @param y second direction
 * @param z third direction
 */
public record Frame(Vec origin, Vec x, Vec y, Vec z) {

  public static final Frame WORLD = new Frame(Vec.ZERO, Vec.X, Vec.Y, Vec.Z);

  /** Returns a frame with that third and first direction. */
  public static Frame of(Vec origin, Vec z, Vec x) {
    Vec along = z.unit();
    Vec first = x.minus(along.times(x.dot(along))).unit();
    return new Frame(origin, first, along.cross(first), along);
  }

  /** Returns a frame with that third direction. */
  public static Frame along(Vec origin, Vec z) {
    return of(origin, z, z.across());
  }

  /** Returns local coordinates of a point. */
  public Vec local(Vec p) {
    Vec d = p.minus(origin);
    return new Vec(d.dot(x), d.dot(y), d.dot(z));
  }

  /**
   * Returns a point by its local coordinates.
   *
   * @param a along x [mm]
   * @param b along y [mm]
   * @param c along z [mm]
   */
  public Vec at(double a, double b, double c) {
    return new Vec(
        origin.x() + a * x.x() + b * y.x() + c * z.x(),
        origin.y() + a * x.y() + b * y.y() + c * z.y(),
        origin.z() + a * x.z() + b * y.z() + c * z.z());
  }

  /** Returns a direction by its local components. */
  public Vec direction(Vec d) {
    return at(d.x(), d.y(), d.z()).minus(origin);
  }

  /** Returns the frame moved along its third direction. */
  Frame shifted(double c) {
    return new Frame(at(0, 0, c), x, y, z);
  }
}
