package fettle.parts.solid;

/** A surface that a cutter leaves: plane, cylinder, cone, torus (with the sphere as its limit). */
public sealed interface Surface {

  /** Two points nearer than this are one [mm]. */
  double NEAR = 1e-7;

  /** Returns the frame: a plane's normal and a round surface's axis is its third direction. */
  Frame frame();

  /**
   * Returns a value that is 0 on the surface, positive on the side its normal points to, and near
   * the surface close to the distance.
   *
   * @return about the distance [mm]
   */
  double value(Vec p);

  /** Returns the direction in which the value grows. */
  Vec normal(Vec p);

  /**
   * Returns the point at two parameters.
   *
   * @param u angle round the axis; on a plane a length [rad or mm]
   * @param v place along the axis or on the generating circle; on a plane a length [mm or rad]
   */
  Vec at(double u, double v);

  /**
   * Returns the first parameter of a point: the angle round the axis, between -pi and pi.
   *
   * @return parameter [rad or mm]
   */
  double u(Vec p);

  /**
   * Returns the second parameter of a point.
   *
   * @return parameter [mm or rad]
   */
  double v(Vec p);

  /**
   * Returns the derivative of the point by the first parameter.
   *
   * @param u first parameter [rad or mm]
   * @param v second parameter [mm or rad]
   */
  Vec du(double u, double v);

  /**
   * Returns the derivative of the point by the second parameter.
   *
   * @param u first parameter [rad or mm]
   * @param v second parameter [mm or rad]
   */
  Vec dv(double u, double v);

  /** Tells whether both are the same surface. */
  boolean same(Surface other);

  /** Returns true if its first parameter is an angle. */
  default boolean round() {
    return !(this instanceof Plane);
  }

  /**
   * A plane.
   *
   * @param frame a point of it, two directions in it, its normal
   */
  record Plane(Frame frame) implements Surface {
    @Override
    public double value(Vec p) {
      return p.minus(frame.origin()).dot(frame.z());
    }

    @Override
    public Vec normal(Vec p) {
      return frame.z();
    }

    @Override
    public Vec at(double u, double v) {
      return frame.at(u, v, 0);
    }

    @Override
    public double u(Vec p) {
      return p.minus(frame.origin()).dot(frame.x());
    }

    @Override
    public double v(Vec p) {
      return p.minus(frame.origin()).dot(frame.y());
    }

    @Override
    public Vec du(double u, double v) {
      return frame.x();
    }

    @Override
    public Vec dv(double u, double v) {
      return frame.y();
    }

    @Override
    public boolean same(Surface other) {
      return other instanceof Plane q
          && frame.z().cross(q.frame.z()).length() < 1e-9
          && Math.abs(value(q.frame.origin())) < NEAR;
    }
  }

  /**
   * A cylinder.
   *
   * @param frame its axis
   * @param radius its radius [mm]
   */
  record Cylinder(Frame frame, double radius) implements Surface {
    @Override
    public double value(Vec p) {
      Vec q = frame.local(p);
      return Math.hypot(q.x(), q.y()) - radius;
    }

    @Override
    public Vec normal(Vec p) {
      Vec q = frame.local(p);
      double n = Math.max(1e-300, Math.hypot(q.x(), q.y()));
      return frame.direction(new Vec(q.x() / n, q.y() / n, 0));
    }

    @Override
    public Vec at(double u, double v) {
      return frame.at(radius * Math.cos(u), radius * Math.sin(u), v);
    }

    @Override
    public double u(Vec p) {
      Vec q = frame.local(p);
      return Math.atan2(q.y(), q.x());
    }

    @Override
    public double v(Vec p) {
      return p.minus(frame.origin()).dot(frame.z());
    }

    @Override
    public Vec du(double u, double v) {
      return frame.direction(new Vec(-radius * Math.sin(u), radius * Math.cos(u), 0));
    }

    @Override
    public Vec dv(double u, double v) {
      return frame.z();
    }

    @Override
    public boolean same(Surface other) {
      return other instanceof Cylinder c
          && Math.abs(radius - c.radius) < NEAR
          && coaxial(frame, c.frame);
    }
  }

  /**
   * One nappe of a cone; its radius at height v over the frame's origin is radius + slope v.
   *
   * @param frame its axis
   * @param radius radius at the origin of the frame [mm]
   * @param slope tangent of the half angle, never 0 [-]
   */
  record Cone(Frame frame, double radius, double slope) implements Surface {
    @Override
    public double value(Vec p) {
      Vec q = frame.local(p);
      return (Math.hypot(q.x(), q.y()) - radius - slope * q.z()) / Math.sqrt(1 + slope * slope);
    }

    @Override
    public Vec normal(Vec p) {
      Vec q = frame.local(p);
      double n = Math.max(1e-300, Math.hypot(q.x(), q.y()));
      double s = Math.sqrt(1 + slope * slope);
      return frame.direction(new Vec(q.x() / n / s, q.y() / n / s, -slope / s));
    }

    @Override
    public Vec at(double u, double v) {
      double r = radius + slope * v;
      return frame.at(r * Math.cos(u), r * Math.sin(u), v);
    }

    @Override
    public double u(Vec p) {
      Vec q = frame.local(p);
      return Math.atan2(q.y(), q.x());
    }

    @Override
    public double v(Vec p) {
      return p.minus(frame.origin()).dot(frame.z());
    }

    @Override
    public Vec du(double u, double v) {
      double r = radius + slope * v;
      return frame.direction(new Vec(-r * Math.sin(u), r * Math.cos(u), 0));
    }

    @Override
    public Vec dv(double u, double v) {
      return frame.direction(new Vec(slope * Math.cos(u), slope * Math.sin(u), 1));
    }

    /** Returns where on its axis the tip lies. */
    double tip() {
      return -radius / slope;
    }

    @Override
    public boolean same(Surface other) {
      if (!(other instanceof Cone c) || !coaxial(frame, c.frame)) {
        return false;
      }
      double turn = Math.signum(frame.z().dot(c.frame.z()));
      return Math.abs(slope - turn * c.slope) < 1e-9
          && frame.at(0, 0, tip()).to(c.frame.at(0, 0, c.tip())) < NEAR;
    }
  }

  /**
   * A torus; with major radius 0 a sphere, with one below the minor radius the part of it that
   * bulges like a barrel with its ends on the axis.
   *
   * @param frame its axis, the origin in the plane of the generating circle's centre
   * @param major distance of the generating circle's centre from the axis, may be negative [mm]
   * @param minor radius of the generating circle [mm]
   * @param middle second parameter in the middle of the part that is used [rad]
   */
  record Torus(Frame frame, double major, double minor, double middle) implements Surface {
    @Override
    public double value(Vec p) {
      Vec q = frame.local(p);
      return Math.hypot(Math.hypot(q.x(), q.y()) - major, q.z()) - minor;
    }

    @Override
    public Vec normal(Vec p) {
      Vec q = frame.local(p);
      double rho = Math.max(1e-300, Math.hypot(q.x(), q.y()));
      double n = Math.max(1e-300, Math.hypot(rho - major, q.z()));
      double k = (rho - major) / n / rho;
      return frame.direction(new Vec(q.x() * k, q.y() * k, q.z() / n));
    }

    @Override
    public Vec at(double u, double v) {
      double r = major + minor * Math.cos(v);
      return frame.at(r * Math.cos(u), r * Math.sin(u), minor * Math.sin(v));
    }

    @Override
    public double u(Vec p) {
      Vec q = frame.local(p);
      return Math.atan2(q.y(), q.x());
    }

    @Override
    public double v(Vec p) {
      Vec q = frame.local(p);
      double angle = Math.atan2(q.z(), Math.hypot(q.x(), q.y()) - major);
      return middle + Math.IEEEremainder(angle - middle, 2 * Math.PI);
    }

    @Override
    public Vec du(double u, double v) {
      double r = major + minor * Math.cos(v);
      return frame.direction(new Vec(-r * Math.sin(u), r * Math.cos(u), 0));
    }

    @Override
    public Vec dv(double u, double v) {
      double s = -minor * Math.sin(v);
      return frame.direction(new Vec(s * Math.cos(u), s * Math.sin(u), minor * Math.cos(v)));
    }

    @Override
    public boolean same(Surface other) {
      return other instanceof Torus t
          && coaxial(frame, t.frame)
          && Math.abs(major - t.major) < NEAR
          && Math.abs(minor - t.minor) < NEAR
          && frame.origin().to(t.frame.origin()) < NEAR;
    }
  }

  private static boolean coaxial(Frame a, Frame b) {
    return a.z().cross(b.z()).length() < 1e-9
        && b.origin().minus(a.origin()).cross(a.z()).length() < NEAR;
  }

  /** Tells whether two round surfaces have one axis. */
  static boolean oneAxis(Surface a, Surface b) {
    return coaxial(a.frame(), b.frame());
  }
}
