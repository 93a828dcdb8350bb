package fettle.mechanics.motion;

import java.util.List;

/**
 * A convex solid, known by its farthest point in every direction. A capsule is a rounded hull of
 * two points, a ball of one; a cone or an extruded outline is a hull of its corners.
 */
public sealed interface Convex {

  /** Returns the point that lies farthest in a direction, which need not have length 1. */
  Vector support(Vector direction);

  /** Returns a ball around it. */
  Ball ball();

  /**
   * Tells whether it is round about an axis, so that turning about it changes nothing.
   *
   * @param zero where its own zero lies, seen from a point of the axis
   * @param axis direction of the axis, of length 1
   */
  default boolean roundAbout(Vector zero, Vector axis) {
    return false;
  }

  /**
   * A ball around a solid.
   *
   * @param centre its middle
   * @param radius radius [mm]
   */
  record Ball(Vector centre, double radius) {}

  /**
   * The hull of points.
   *
   * @param points its corners, at least one
   */
  record Hull(List<Vector> points) implements Convex {

    /** Keeps its own copy. */
    public Hull {
      points = List.copyOf(points);
      if (points.isEmpty() || points.stream().anyMatch(p -> !p.sound())) {
        throw new IllegalArgumentException(
            "a hull needs at least one point, each within 1 000 000 mm of the origin");
      }
    }

    @Override
    public Vector support(Vector n) {
      Vector best = points.get(0);
      double most = best.dot(n);
      for (int i = 1; i < points.size(); i++) {
        Vector p = points.get(i);
        double d = p.dot(n);
        if (d > most) {
          most = d;
          best = p;
        }
      }
      return best;
    }

    @Override
    public Ball ball() {
      Vector low = new Vector(-support(-1, 0, 0), -support(0, -1, 0), -support(0, 0, -1));
      Vector high = new Vector(support(1, 0, 0), support(0, 1, 0), support(0, 0, 1));
      Vector centre = low.plus(high).times(0.5);
      return new Ball(
          centre, points.stream().mapToDouble(p -> p.minus(centre).norm()).max().orElse(0));
    }

    private double support(double x, double y, double z) {
      Vector n = new Vector(x, y, z);
      return support(n).dot(n);
    }
  }

  /**
   * A box with its sides along the axes.
   *
   * @param low corner with the least coordinates
   * @param high corner with the greatest coordinates
   */
  record Box(Vector low, Vector high) implements Convex {

    /** Refuses a box turned inside out. */
    public Box {
      if (!(low.x() <= high.x() && low.y() <= high.y() && low.z() <= high.z())
          || !low.sound()
          || !high.sound()) {
        throw new IllegalArgumentException(
            "a box needs its low corner below its high one, found " + low + " and " + high);
      }
    }

    @Override
    public Vector support(Vector n) {
      return new Vector(
          n.x() > 0 ? high.x() : low.x(),
          n.y() > 0 ? high.y() : low.y(),
          n.z() > 0 ? high.z() : low.z());
    }

    @Override
    public Ball ball() {
      return new Ball(low.plus(high).times(0.5), high.minus(low).norm() / 2);
    }
  }

  /**
   * A right circular cylinder; a disc if its length is nothing.
   *
   * @param centre its middle
   * @param axis direction of its axis, of length 1
   * @param radius radius [mm]
   * @param half half its length [mm]
   */
  record Cylinder(Vector centre, Vector axis, double radius, double half) implements Convex {

    /** Refuses sizes that make no cylinder. */
    public Cylinder {
      if (!(radius >= 0 && radius <= 1e6 && half >= 0 && half <= 1e6) || !centre.sound()) {
        throw new IllegalArgumentException(
            "a cylinder needs radius and length of 0 to 1 000 000 mm, found radius "
                + radius
                + " mm and half length "
                + half
                + " mm");
      }
      if (!(Math.abs(axis.norm() - 1) < 1e-9)) {
        throw new IllegalArgumentException("the axis of a cylinder must have length 1");
      }
    }

    @Override
    public Vector support(Vector n) {
      double along = n.dot(axis);
      Vector end = centre.plus(along > 0 ? half : -half, axis);
      Vector across = n.plus(-along, axis).unit();
      // Nearly along the axis little is left but rounding: taken across once more, the point stays
      // in the plane of the end.
      Vector out = across.plus(-across.dot(axis), axis).unit();
      return end.plus(radius, out);
    }

    @Override
    public boolean roundAbout(Vector zero, Vector about) {
      return about.cross(axis).isZero() && about.cross(zero.plus(centre)).isZero();
    }

    @Override
    public Ball ball() {
      return new Ball(centre, Math.hypot(radius, half));
    }
  }

  /**
   * A solid with a skin of even thickness around it.
   *
   * @param core what the skin is around
   * @param radius thickness of the skin [mm]
   */
  record Rounded(Convex core, double radius) implements Convex {

    /** Refuses a skin that is none. */
    public Rounded {
      if (!(radius >= 0 && radius <= 1e6)) {
        throw new IllegalArgumentException(
            "a rounding must have a radius of 0 to 1 000 000 mm, found " + radius + " mm");
      }
    }

    @Override
    public Vector support(Vector n) {
      return core.support(n).plus(radius, n.unit());
    }

    @Override
    public Ball ball() {
      Ball inner = core.ball();
      return new Ball(inner.centre, inner.radius + radius);
    }
  }

  /**
   * Returns a ball.
   *
   * @param centre its middle
   * @param radius radius [mm]
   */
  static Convex ball(Vector centre, double radius) {
    return new Rounded(new Hull(List.of(centre)), radius);
  }

  /**
   * Returns a round bar with ball ends, as a lever or a finger.
   *
   * @param from middle of one ball
   * @param to middle of the other
   * @param radius radius [mm]
   */
  static Convex capsule(Vector from, Vector to, double radius) {
    return new Rounded(new Hull(List.of(from, to)), radius);
  }
}
