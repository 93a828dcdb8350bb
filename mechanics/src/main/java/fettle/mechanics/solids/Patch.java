package fettle.mechanics.solids;

import java.util.ArrayList;
import java.util.List;

/** A part of a body's surface where it is held or loaded. */
public sealed interface Patch {

  /**
   * A point that stands for a bit of the patch.
   *
   * @param x coordinate [mm]
   * @param y coordinate [mm]
   * @param z coordinate [mm]
   * @param area area it stands for [mm2]
   */
  record Spot(double x, double y, double z, double area) {}

  /** Returns spots over the patch, fine enough for the grid. */
  List<Spot> spots(Grid grid);

  /**
   * Coordinates at which the grid needs a plane.
   *
   * @param axis 0, 1 or 2
   * @return coordinates [mm]
   */
  double[] planes(int axis);

  /**
   * A flat face, normal to an axis, of which a rectangle or a round ring counts.
   *
   * @param axis axis of its normal, 0, 1 or 2
   * @param at where it lies on that axis [mm]
   * @param u0 low end on the next axis [mm]
   * @param u1 high end on the next axis [mm]
   * @param v0 low end on the axis after [mm]
   * @param v1 high end on the axis after [mm]
   */
  record Rectangle(int axis, double at, double u0, double u1, double v0, double v1)
      implements Flat {
    /** Refuses a patch without area. */
    public Rectangle {
      if (axis < 0 || axis > 2 || !(u1 > u0) || !(v1 > v0)) {
        throw new IllegalArgumentException("patch: a rectangle needs low ends below high ends");
      }
    }

    /**
     * Returns a rectangle given by the ranges along x, y and z, one of them a single value.
     *
     * @param r x0, x1, y0, y1, z0, z1 [mm]
     */
    public static Rectangle of(double... r) {
      for (int axis = 0; axis < 3; axis++) {
        if (r[2 * axis] == r[2 * axis + 1]) {
          int u = (axis + 1) % 3;
          int v = (axis + 2) % 3;
          return new Rectangle(axis, r[2 * axis], r[2 * u], r[2 * u + 1], r[2 * v], r[2 * v + 1]);
        }
      }
      throw new IllegalArgumentException(
          "patch: give x0, x1, y0, y1, z0, z1 with one pair equal, so that it is a flat face");
    }

    @Override
    public double[] range() {
      return new double[] {u0, u1, v0, v1};
    }

    @Override
    public boolean covers(double u, double v) {
      return u >= u0 && u <= u1 && v >= v0 && v <= v1;
    }

    @Override
    public double coverage(double a0, double a1, double b0, double b1) {
      double along = Math.min(a1, u1) - Math.max(a0, u0);
      double up = Math.min(b1, v1) - Math.max(b0, v0);
      return along > 0 && up > 0 ? along * up / ((a1 - a0) * (b1 - b0)) : 0;
    }

    @Override
    public double[] planes(int along) {
      return along == axis
          ? new double[] {at}
          : along == (axis + 1) % 3 ? new double[] {u0, u1} : new double[] {v0, v1};
    }
  }

  /**
   * A flat round face or ring, normal to an axis.
   *
   * @param axis axis of its normal, 0, 1 or 2
   * @param at where it lies on that axis [mm]
   * @param u its middle on the next axis [mm]
   * @param v its middle on the axis after [mm]
   * @param radius outer radius [mm]
   * @param inner inner radius, 0 for a full disc [mm]
   */
  record Disc(int axis, double at, double u, double v, double radius, double inner)
      implements Flat {
    /** Refuses a patch without area. */
    public Disc {
      if (axis < 0 || axis > 2 || !(radius > inner) || !(inner >= 0)) {
        throw new IllegalArgumentException("patch: a disc needs a radius above its inner radius");
      }
    }

    @Override
    public double[] range() {
      return new double[] {u - radius, u + radius, v - radius, v + radius};
    }

    @Override
    public boolean covers(double a, double b) {
      double d = (a - u) * (a - u) + (b - v) * (b - v);
      return d <= radius * radius && d >= inner * inner;
    }

    @Override
    public double[] planes(int along) {
      return along == axis ? new double[] {at} : new double[0];
    }
  }

  /** A patch in a plane of the grid. */
  sealed interface Flat extends Patch permits Rectangle, Disc {
    /** Returns the axis of the normal. */
    int axis();

    /**
     * Where the patch lies on its axis.
     *
     * @return coordinate [mm]
     */
    double at();

    /**
     * Box around the patch in its plane.
     *
     * @return low and high on the next axis, low and high on the axis after [mm]
     */
    double[] range();

    /**
     * Tells whether a point of the plane belongs to the patch.
     *
     * @param u coordinate on the next axis [mm]
     * @param v coordinate on the axis after [mm]
     */
    boolean covers(double u, double v);

    /**
     * Share of a face that the patch covers.
     *
     * @param u0 low end of the face on the next axis [mm]
     * @param u1 high end [mm]
     * @param v0 low end of the face on the axis after [mm]
     * @param v1 high end [mm]
     * @return share [-]
     */
    default double coverage(double u0, double u1, double v0, double v1) {
      int n = 8;
      int hits = 0;
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          hits += covers(u0 + (u1 - u0) * (i + 0.5) / n, v0 + (v1 - v0) * (j + 0.5) / n) ? 1 : 0;
        }
      }
      return hits / (double) (n * n);
    }

    @Override
    default List<Spot> spots(Grid grid) {
      List<Spot> spots = new ArrayList<>();
      int ua = (axis() + 1) % 3;
      int va = (axis() + 2) % 3;
      double[] r = range();
      for (int i = grid.cell(ua, r[0] + 1e-9);
          i < grid.cells(ua) && grid.plane(ua, i) < r[1];
          i++) {
        for (int j = grid.cell(va, r[2] + 1e-9);
            j < grid.cells(va) && grid.plane(va, j) < r[3];
            j++) {
          double u0 = Math.max(grid.plane(ua, i), r[0]);
          double u1 = Math.min(grid.plane(ua, i + 1), r[1]);
          double v0 = Math.max(grid.plane(va, j), r[2]);
          double v1 = Math.min(grid.plane(va, j + 1), r[3]);
          if (u1 > u0 && v1 > v0) {
            boolean whole = coverage(u0, u1, v0, v1) == 1;
            addSpots(spots, new double[] {u0, u1, v0, v1}, whole);
          }
        }
      }
      return spots;
    }

    private void addSpots(List<Spot> spots, double[] f, boolean whole) {
      int n = whole ? 2 : 6;
      double g = 1 / Math.sqrt(3);
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          double s = whole ? (1 + (2 * i - 1) * g) / 2 : (i + 0.5) / n;
          double t = whole ? (1 + (2 * j - 1) * g) / 2 : (j + 0.5) / n;
          double u = f[0] + (f[1] - f[0]) * s;
          double v = f[2] + (f[3] - f[2]) * t;
          if (whole || covers(u, v)) {
            double[] p = new double[3];
            p[axis()] = at();
            p[(axis() + 1) % 3] = u;
            p[(axis() + 2) % 3] = v;
            spots.add(new Spot(p[0], p[1], p[2], (f[1] - f[0]) * (f[3] - f[2]) / (n * n)));
          }
        }
      }
    }
  }

  /**
   * The wall of a bore or of a round bar, from one angle to another.
   *
   * @param axis axis of the bore, 0, 1 or 2
   * @param u its middle on the next axis [mm]
   * @param v its middle on the axis after [mm]
   * @param radius radius [mm]
   * @param along low and high end along the axis [mm]
   * @param angle from and to, from the next axis towards the axis after [rad]
   */
  record Bore(
      int axis,
      double u,
      double v,
      double radius,
      fettle.mechanics.base.Interval along,
      fettle.mechanics.base.Interval angle)
      implements Patch {
    @Override
    public List<Spot> spots(Grid grid) {
      List<Spot> spots = new ArrayList<>();
      int ua = (axis + 1) % 3;
      double step = grid.step(ua, grid.cell(ua, u + radius * 0.7));
      int n = Math.max(24, (int) Math.ceil(angle.width() * radius / step * 3));
      for (int k = grid.cell(axis, along.low() + 1e-9);
          k < grid.cells(axis) && grid.plane(axis, k) < along.high();
          k++) {
        double a = Math.max(grid.plane(axis, k), along.low());
        double b = Math.min(grid.plane(axis, k + 1), along.high());
        for (int i = 0; i < n && b > a; i++) {
          double t = angle.low() + angle.width() * (i + 0.5) / n;
          for (int g = -1; g <= 1; g += 2) {
            double[] p = new double[3];
            p[axis] = (a + b) / 2 + g * (b - a) / 2 / Math.sqrt(3);
            p[ua] = u + radius * Math.cos(t);
            p[(axis + 2) % 3] = v + radius * Math.sin(t);
            spots.add(new Spot(p[0], p[1], p[2], radius * angle.width() / n * (b - a) / 2));
          }
        }
      }
      return spots;
    }

    @Override
    public double[] planes(int axisOfPlane) {
      return axisOfPlane == axis ? new double[] {along.low(), along.high()} : new double[0];
    }
  }

  /**
   * An inclined flat face: a parallelogram.
   *
   * @param corner one corner, x y z [mm]
   * @param first edge from it, x y z [mm]
   * @param second other edge from it, x y z [mm]
   */
  record Slope(List<Double> corner, List<Double> first, List<Double> second) implements Patch {
    @Override
    public List<Spot> spots(Grid grid) {
      double[] c = corner.stream().mapToDouble(Double::doubleValue).toArray();
      double[] a = first.stream().mapToDouble(Double::doubleValue).toArray();
      double[] b = second.stream().mapToDouble(Double::doubleValue).toArray();
      double cx = a[1] * b[2] - a[2] * b[1];
      double cy = a[2] * b[0] - a[0] * b[2];
      double cz = a[0] * b[1] - a[1] * b[0];
      double area = Math.sqrt(cx * cx + cy * cy + cz * cz);
      int n = count(grid, c, a);
      int m = count(grid, c, b);
      List<Spot> spots = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < m; j++) {
          double s = (i + 0.5) / n;
          double t = (j + 0.5) / m;
          spots.add(
              new Spot(
                  c[0] + s * a[0] + t * b[0],
                  c[1] + s * a[1] + t * b[1],
                  c[2] + s * a[2] + t * b[2],
                  area / (n * (double) m)));
        }
      }
      return spots;
    }

    private static int count(Grid grid, double[] c, double[] edge) {
      double most = 4;
      for (int axis = 0; axis < 3; axis++) {
        if (edge[axis] != 0) {
          double step = grid.step(axis, grid.cell(axis, c[axis] + edge[axis] / 2));
          most = Math.max(most, 3 * Math.abs(edge[axis]) / step);
        }
      }
      return (int) Math.ceil(Math.min(most, 2000));
    }

    @Override
    public double[] planes(int axis) {
      double c = corner.get(axis);
      return new double[] {c, c + first.get(axis) + second.get(axis)};
    }
  }

  /**
   * Several patches loaded as one, such as the two ways of a bed.
   *
   * @param patches the patches, at least one
   */
  record Several(List<Patch> patches) implements Patch {
    /** Keeps its own list. */
    public Several {
      patches = List.copyOf(patches);
      if (patches.isEmpty()) {
        throw new IllegalArgumentException("patch: name at least one face");
      }
    }

    @Override
    public List<Spot> spots(Grid grid) {
      return patches.stream().flatMap(p -> p.spots(grid).stream()).toList();
    }

    @Override
    public double[] planes(int axis) {
      return patches.stream()
          .flatMapToDouble(p -> java.util.Arrays.stream(p.planes(axis)))
          .toArray();
    }
  }
}
