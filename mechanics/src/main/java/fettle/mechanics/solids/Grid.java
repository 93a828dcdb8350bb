package fettle.mechanics.solids;

import java.util.Arrays;

/** A box grid: planes along x, y and z, so placed that every plane face lies in one. */
public final class Grid {

  /** Planes nearer than this share of the whole length are one. */
  private static final double SAME = 1e-6;

  private final double[][] planes;

  private Grid(double[][] planes) {
    this.planes = planes;
  }

  /**
   * Returns a grid by its planes.
   *
   * @param x planes normal to x, rising [mm]
   * @param y planes normal to y, rising [mm]
   * @param z planes normal to z, rising [mm]
   */
  public static Grid of(double[] x, double[] y, double[] z) {
    double[][] p = {x.clone(), y.clone(), z.clone()};
    for (double[] axis : p) {
      if (axis.length < 2) {
        throw new IllegalArgumentException("grid: an axis needs two planes or more");
      }
      for (int i = 1; i < axis.length; i++) {
        if (!(axis[i] > axis[i - 1])) {
          throw new IllegalArgumentException("grid: planes must rise, found " + axis[i]);
        }
      }
    }
    return new Grid(p);
  }

  /**
   * Returns a grid whose planes include these and whose steps are at most so large; planes that
   * fall together are merged.
   *
   * @param forced planes that must be there, an array for each axis, in any order [mm]
   * @param step largest step along each axis [mm]
   * @param least least number of cells between two forced planes
   */
  public static Grid through(double[][] forced, double[] step, int least) {
    double[][] p = new double[3][];
    for (int axis = 0; axis < 3; axis++) {
      p[axis] = filled(merged(forced[axis]), step[axis], least);
    }
    return of(p[0], p[1], p[2]);
  }

  private static double[] merged(double[] planes) {
    double[] sorted = planes.clone();
    Arrays.sort(sorted);
    double same = SAME * (sorted[sorted.length - 1] - sorted[0]);
    double[] kept = new double[sorted.length];
    int n = 0;
    for (double p : sorted) {
      if (n == 0 || p - kept[n - 1] > same) {
        kept[n++] = p;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  private static double[] filled(double[] planes, double step, int least) {
    double[] out = new double[16];
    int n = 0;
    for (int i = 0; i + 1 < planes.length; i++) {
      double gap = planes[i + 1] - planes[i];
      int cells = Math.max(least, (int) Math.ceil(gap / step - 1e-9));
      if (cells > 100_000) {
        throw new IllegalArgumentException(
            "grid: a step of " + step + " mm is too fine for a length of " + gap + " mm");
      }
      for (int c = 0; c < cells; c++) {
        if (n + 2 > out.length) {
          out = Arrays.copyOf(out, 2 * out.length);
        }
        out[n++] = planes[i] + gap * c / cells;
      }
    }
    out[n++] = planes[planes.length - 1];
    return Arrays.copyOf(out, n);
  }

  /**
   * Number of cells along an axis.
   *
   * @param axis 0, 1 or 2
   */
  public int cells(int axis) {
    return planes[axis].length - 1;
  }

  /**
   * Coordinate of a plane.
   *
   * @param axis 0, 1 or 2
   * @param index number of the plane from 0
   * @return coordinate [mm]
   */
  public double plane(int axis, int index) {
    return planes[axis][index];
  }

  /**
   * Size of a cell along an axis.
   *
   * @param axis 0, 1 or 2
   * @param index number of the cell from 0
   * @return size [mm]
   */
  public double step(int axis, int index) {
    return planes[axis][index + 1] - planes[axis][index];
  }

  /**
   * Number of the cell that holds a coordinate, the lower one on a plane; bounded by the grid.
   *
   * @param axis 0, 1 or 2
   * @param at coordinate [mm]
   */
  public int cell(int axis, double at) {
    int i = Arrays.binarySearch(planes[axis], at);
    int cell = i >= 0 ? i - 1 : -i - 2;
    return Math.min(Math.max(cell, 0), cells(axis) - 1);
  }

  /**
   * Number of the plane at a coordinate, or -1 if there is none.
   *
   * @param axis 0, 1 or 2
   * @param at coordinate [mm]
   */
  public int planeAt(int axis, double at) {
    double[] p = planes[axis];
    double same = 2 * SAME * (p[p.length - 1] - p[0]);
    int i = cell(axis, at);
    if (Math.abs(p[i] - at) <= same) {
      return i;
    }
    return Math.abs(p[i + 1] - at) <= same ? i + 1 : -1;
  }

  /** Returns the number of all cells. */
  public long size() {
    return (long) cells(0) * cells(1) * cells(2);
  }

  /**
   * Box around the grid.
   *
   * @return low and high corner [mm]
   */
  public double[][] bounds() {
    double[][] b = new double[2][3];
    for (int axis = 0; axis < 3; axis++) {
      b[0][axis] = planes[axis][0];
      b[1][axis] = planes[axis][planes[axis].length - 1];
    }
    return b;
  }

  /** Returns the grid with every cell halved along every axis. */
  public Grid halved() {
    double[][] p = new double[3][];
    for (int axis = 0; axis < 3; axis++) {
      p[axis] = new double[2 * planes[axis].length - 1];
      for (int i = 0; i < p[axis].length; i++) {
        p[axis][i] =
            i % 2 == 0 ? planes[axis][i / 2] : (planes[axis][i / 2] + planes[axis][i / 2 + 1]) / 2;
      }
    }
    return of(p[0], p[1], p[2]);
  }
}
