package fettle.mechanics.solids;

import java.util.ArrayList;
import java.util.List;

/** A simple solid that a body is built from. */
public sealed interface Shape {

  /** How a box lies to a shape. */
  enum Side {
    INSIDE,
    OUTSIDE,
    CUT
  }

  /**
   * Tells whether a point lies inside.
   *
   * @param x coordinate [mm]
   * @param y coordinate [mm]
   * @param z coordinate [mm]
   */
  boolean contains(double x, double y, double z);

  /** Tells how a box lies to this shape; CUT may be said of a box that is not, never otherwise. */
  Side side(double[] low, double[] high);

  /**
   * Coordinates of the plane faces normal to an axis.
   *
   * @param axis 0, 1 or 2
   * @return coordinates [mm]
   */
  double[] planes(int axis);

  /**
   * Box around the shape.
   *
   * @return low and high corner, infinite where it has no end [mm]
   */
  double[][] bounds();

  /** Tells along which axes membership changes within a box that is cut. */
  default boolean[] varies(double[] low, double[] high) {
    return new boolean[] {true, true, true};
  }

  /**
   * A box along the axes.
   *
   * @param x0 low x [mm]
   * @param x1 high x [mm]
   * @param y0 low y [mm]
   * @param y1 high y [mm]
   * @param z0 low z [mm]
   * @param z1 high z [mm]
   */
  record Box(double x0, double x1, double y0, double y1, double z0, double z1) implements Shape {
    /** Refuses a box without volume. */
    public Box {
      if (!(x1 > x0) || !(y1 > y0) || !(z1 > z0)) {
        throw new IllegalArgumentException(
            "box: each low end must lie below its high end, found x "
                + x0
                + " to "
                + x1
                + ", y "
                + y0
                + " to "
                + y1
                + ", z "
                + z0
                + " to "
                + z1
                + " mm");
      }
    }

    @Override
    public boolean contains(double x, double y, double z) {
      return x > x0 && x < x1 && y > y0 && y < y1 && z > z0 && z < z1;
    }

    @Override
    public Side side(double[] low, double[] high) {
      double e = 1e-7;
      if (high[0] <= x0 + e
          || low[0] >= x1 - e
          || high[1] <= y0 + e
          || low[1] >= y1 - e
          || high[2] <= z0 + e
          || low[2] >= z1 - e) {
        return Side.OUTSIDE;
      }
      boolean inside =
          low[0] >= x0 - e
              && high[0] <= x1 + e
              && low[1] >= y0 - e
              && high[1] <= y1 + e
              && low[2] >= z0 - e
              && high[2] <= z1 + e;
      return inside ? Side.INSIDE : Side.CUT;
    }

    @Override
    public double[] planes(int axis) {
      return switch (axis) {
        case 0 -> new double[] {x0, x1};
        case 1 -> new double[] {y0, y1};
        default -> new double[] {z0, z1};
      };
    }

    @Override
    public double[][] bounds() {
      return new double[][] {{x0, y0, z0}, {x1, y1, z1}};
    }
  }

  /**
   * A round bar or hole along an axis.
   *
   * @param axis 0, 1 or 2
   * @param u coordinate of its middle on the next axis (y, z or x) [mm]
   * @param v coordinate of its middle on the axis after (z, x or y) [mm]
   * @param radius radius [mm]
   * @param from low end along the axis [mm]
   * @param to high end along the axis [mm]
   */
  record Cylinder(int axis, double u, double v, double radius, double from, double to)
      implements Shape {
    /** Refuses a cylinder without volume. */
    public Cylinder {
      if (axis < 0 || axis > 2 || !(radius > 0) || !(to > from)) {
        throw new IllegalArgumentException(
            "cylinder: needs an axis, a radius above 0 and a low end below its high end, found"
                + " radius "
                + radius
                + ", "
                + from
                + " to "
                + to
                + " mm");
      }
    }

    @Override
    public boolean contains(double x, double y, double z) {
      double[] p = {x, y, z};
      double du = p[(axis + 1) % 3] - u;
      double dv = p[(axis + 2) % 3] - v;
      return p[axis] > from && p[axis] < to && du * du + dv * dv < radius * radius;
    }

    @Override
    public Side side(double[] low, double[] high) {
      double e = 1e-7;
      if (high[axis] <= from + e || low[axis] >= to - e) {
        return Side.OUTSIDE;
      }
      int a = (axis + 1) % 3;
      int b = (axis + 2) % 3;
      double nearU = Math.max(0, Math.max(low[a] - u, u - high[a]));
      double nearV = Math.max(0, Math.max(low[b] - v, v - high[b]));
      if (nearU * nearU + nearV * nearV >= radius * radius) {
        return Side.OUTSIDE;
      }
      double farU = Math.max(Math.abs(low[a] - u), Math.abs(high[a] - u));
      double farV = Math.max(Math.abs(low[b] - v), Math.abs(high[b] - v));
      boolean inside =
          low[axis] >= from - e
              && high[axis] <= to + e
              && farU * farU + farV * farV <= radius * radius;
      return inside ? Side.INSIDE : Side.CUT;
    }

    @Override
    public boolean[] varies(double[] low, double[] high) {
      boolean[] v = {true, true, true};
      v[axis] = low[axis] < from - 1e-7 || high[axis] > to + 1e-7;
      return v;
    }

    @Override
    public double[] planes(int along) {
      return along == axis ? new double[] {from, to} : new double[0];
    }

    @Override
    public double[][] bounds() {
      double[] low = new double[3];
      double[] high = new double[3];
      low[axis] = from;
      high[axis] = to;
      low[(axis + 1) % 3] = u - radius;
      high[(axis + 1) % 3] = u + radius;
      low[(axis + 2) % 3] = v - radius;
      high[(axis + 2) % 3] = v + radius;
      return new double[][] {low, high};
    }
  }

  /**
   * All that lies on one side of a plane: {@code a x + b y + c z <= d}.
   *
   * @param a component of the normal that points out [-]
   * @param b component of the normal that points out [-]
   * @param c component of the normal that points out [-]
   * @param d offset along the normal as given [mm]
   */
  record HalfSpace(double a, double b, double c, double d) implements Shape {
    /** Refuses a plane without a normal. */
    public HalfSpace {
      if (!(a * a + b * b + c * c > 0)) {
        throw new IllegalArgumentException("half-space: the normal needs a length");
      }
    }

    @Override
    public boolean contains(double x, double y, double z) {
      return a * x + b * y + c * z < d;
    }

    @Override
    public Side side(double[] low, double[] high) {
      double least = 0;
      double most = 0;
      double[] n = {a, b, c};
      for (int i = 0; i < 3; i++) {
        least += n[i] * (n[i] > 0 ? low[i] : high[i]);
        most += n[i] * (n[i] > 0 ? high[i] : low[i]);
      }
      double e = 1e-7 * Math.sqrt(a * a + b * b + c * c);
      return most <= d + e ? Side.INSIDE : least >= d - e ? Side.OUTSIDE : Side.CUT;
    }

    @Override
    public boolean[] varies(double[] low, double[] high) {
      return new boolean[] {a != 0, b != 0, c != 0};
    }

    @Override
    public double[] planes(int axis) {
      double[] n = {a, b, c};
      boolean alone = n[(axis + 1) % 3] == 0 && n[(axis + 2) % 3] == 0;
      return alone ? new double[] {d / n[axis]} : new double[0];
    }

    @Override
    public double[][] bounds() {
      double inf = Double.POSITIVE_INFINITY;
      return new double[][] {{-inf, -inf, -inf}, {inf, inf, inf}};
    }
  }

  /**
   * What several shapes have in common: a prism of half-spaces, a sector of a ring.
   *
   * @param shapes the shapes, at least one
   */
  record Common(List<Shape> shapes) implements Shape {
    /** Keeps its own list. */
    public Common {
      shapes = List.copyOf(shapes);
    }

    /** Returns what these shapes have in common. */
    public static Common of(Shape... shapes) {
      return new Common(List.of(shapes));
    }

    @Override
    public boolean contains(double x, double y, double z) {
      for (Shape s : shapes) {
        if (!s.contains(x, y, z)) {
          return false;
        }
      }
      return true;
    }

    @Override
    public Side side(double[] low, double[] high) {
      Side all = Side.INSIDE;
      for (Shape s : shapes) {
        Side one = s.side(low, high);
        if (one == Side.OUTSIDE) {
          return Side.OUTSIDE;
        }
        if (one == Side.CUT) {
          all = Side.CUT;
        }
      }
      return all;
    }

    @Override
    public boolean[] varies(double[] low, double[] high) {
      boolean[] v = new boolean[3];
      for (Shape s : shapes) {
        if (s.side(low, high) == Side.CUT) {
          boolean[] one = s.varies(low, high);
          for (int i = 0; i < 3; i++) {
            v[i] |= one[i];
          }
        }
      }
      return v;
    }

    @Override
    public double[] planes(int axis) {
      List<Double> all = new ArrayList<>();
      for (Shape s : shapes) {
        for (double p : s.planes(axis)) {
          all.add(p);
        }
      }
      return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public double[][] bounds() {
      double[][] b = new HalfSpace(1, 0, 0, 0).bounds();
      for (Shape s : shapes) {
        double[][] one = s.bounds();
        for (int i = 0; i < 3; i++) {
          b[0][i] = Math.max(b[0][i], one[0][i]);
          b[1][i] = Math.min(b[1][i], one[1][i]);
        }
      }
      return b;
    }
  }
}
