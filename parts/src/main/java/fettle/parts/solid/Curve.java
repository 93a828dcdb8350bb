package fettle.parts.solid;

import java.util.List;

/** A curve in space along which faces meet. */
public sealed interface Curve {

  /**
   * Returns the point at a parameter.
   *
   * @param t parameter [-]
   */
  Vec at(double t);

  /**
   * Returns the derivative by the parameter.
   *
   * @param t parameter [-]
   */
  Vec tangent(double t);

  /**
   * Returns the lowest parameter.
   *
   * @return parameter [-]
   */
  double from();

  /**
   * Returns the highest parameter.
   *
   * @return parameter [-]
   */
  double to();

  /** Tells whether it returns to its start. */
  boolean closed();

  /** Returns the least number of equal parts into which to divide it for looking at it closely. */
  int parts();

  /**
   * A straight line; the parameter is the length.
   *
   * @param point where the parameter is 0
   * @param direction its direction
   * @param from lowest parameter [mm]
   * @param to highest parameter [mm]
   */
  record Line(Vec point, Vec direction, double from, double to) implements Curve {
    @Override
    public Vec at(double t) {
      return point.plus(direction.times(t));
    }

    @Override
    public Vec tangent(double t) {
      return direction;
    }

    @Override
    public boolean closed() {
      return false;
    }

    @Override
    public int parts() {
      return 24;
    }
  }

  /**
   * A circle or an ellipse; the parameter is the angle from the frame's first direction.
   *
   * @param frame centre and plane
   * @param first radius along the first direction [mm]
   * @param second radius along the second direction [mm]
   */
  record Oval(Frame frame, double first, double second) implements Curve {
    @Override
    public Vec at(double t) {
      return frame.at(first * Math.cos(t), second * Math.sin(t), 0);
    }

    @Override
    public Vec tangent(double t) {
      return frame.direction(new Vec(-first * Math.sin(t), second * Math.cos(t), 0));
    }

    @Override
    public double from() {
      return 0;
    }

    @Override
    public double to() {
      return 2 * Math.PI;
    }

    @Override
    public boolean closed() {
      return true;
    }

    @Override
    public int parts() {
      return 48;
    }

    /** Tells whether it is a circle. */
    public boolean isCircle() {
      return first == second;
    }
  }

  /**
   * The curve in which two surfaces meet, traced by points on both; between them it is found again
   * on both surfaces. The parameter counts the points.
   *
   * @param points points on both surfaces; for a closed curve the last is the first
   * @param a one surface
   * @param b the other surface
   * @param closed whether it returns to its start
   */
  record Traced(List<Vec> points, Surface a, Surface b, boolean closed) implements Curve {
    /** Keeps its own copy. */
    public Traced {
      points = List.copyOf(points);
    }

    @Override
    public Vec at(double t) {
      int i = piece(t);
      Vec p = points.get(i);
      Vec chord = points.get(i + 1).minus(p);
      return onBoth(p.plus(chord.times(wrapped(t) - i)), chord.unit(), a, b);
    }

    @Override
    public Vec tangent(double t) {
      int i = piece(t);
      Vec chord = points.get(i + 1).minus(points.get(i));
      Vec p = at(t);
      Vec d = a.normal(p).cross(b.normal(p)).unit();
      double along = d.dot(chord.unit());
      return d.times(chord.length() / along);
    }

    private double wrapped(double t) {
      int n = points.size() - 1;
      return closed ? t - n * Math.floor(t / n) : t;
    }

    private int piece(double t) {
      return (int) Math.max(0, Math.min(points.size() - 2, Math.floor(wrapped(t))));
    }

    @Override
    public double from() {
      return 0;
    }

    @Override
    public double to() {
      return points.size() - 1;
    }

    @Override
    public int parts() {
      return points.size() - 1;
    }

    /** Moves a point within the plane across a direction until it lies on both surfaces. */
    static Vec onBoth(Vec start, Vec across, Surface a, Surface b) {
      Vec p = start;
      for (int i = 0; i < 12; i++) {
        double fa = a.value(p);
        double fb = b.value(p);
        if (Math.abs(fa) + Math.abs(fb) < 1e-14) {
          break;
        }
        Vec na = a.normal(p);
        Vec nb = b.normal(p);
        double det = na.dot(nb.cross(across));
        if (Math.abs(det) < 1e-9) {
          break;
        }
        Vec step = nb.cross(across).times(-fa / det).plus(across.cross(na).times(-fb / det));
        p = p.plus(step);
      }
      return p;
    }
  }

  /** Returns a circle. */
  static Oval circle(Frame frame, double radius) {
    return new Oval(frame, radius, radius);
  }
}
