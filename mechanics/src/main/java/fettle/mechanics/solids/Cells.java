package fettle.mechanics.solids;

import java.util.Arrays;

/**
 * The cells of a grid that hold material, in rows along x, with their nodes numbered row by row.
 * Voids cost nothing. A cell that is cut carries the share it is filled.
 */
final class Cells {

  /** Longest row that is worked on at once; keeps the working set in the nearest cache. */
  static final int LONGEST = 240;

  static final double LEAST_FILL = 1e-3;

  final Grid grid;
  final int nx;
  final int ny;
  final int nz;

  /** Share filled of every cell of the grid, 0 for void [-]. */
  final float[] fill;

  /** Number of each node of the grid, -1 in the void. */
  final int[] node;

  final int nodes;
  final int active;

  /** First node of each plane of nodes, with the end behind the last. */
  final int[] planeStart;

  final int rows;
  final int[] rowCell;
  final int[] rowLength;
  final int[] rowType;
  final int[] rowNode;
  final boolean[] rowFull;

  /** What the kernels work through. */
  final Rows stretches;

  /** First row of each layer of cells, with the end behind the last. */
  final int[] layerStart;

  /** Kinds of step along each axis and the kind of each cell. */
  final double[][] kinds = new double[3][];

  final int[][] kind = new int[3][];

  Cells(Grid grid, float[] fill) {
    this.grid = grid;
    this.fill = fill;
    nx = grid.cells(0);
    ny = grid.cells(1);
    nz = grid.cells(2);
    for (int axis = 0; axis < 3; axis++) {
      sortKinds(axis);
    }
    node = new int[Math.multiplyExact(Math.multiplyExact(nx + 1, ny + 1), nz + 1)];
    planeStart = new int[nz + 2];
    nodes = number();
    int[] count = countRows();
    rows = count[0];
    active = count[1];
    rowCell = new int[rows];
    rowLength = new int[rows];
    rowType = new int[rows];
    rowNode = new int[4 * rows];
    rowFull = new boolean[rows];
    layerStart = new int[nz + 1];
    fillRows();
    stretches = Rows.of(this);
  }

  /** Fills the grid with a body; an island that touches nothing fixed is not yet looked for. */
  static float[] filled(Grid grid, Body body) {
    int nx = grid.cells(0);
    int ny = grid.cells(1);
    float[] fill = new float[Math.multiplyExact(Math.multiplyExact(nx, ny), grid.cells(2))];
    double[] low = new double[3];
    double[] high = new double[3];
    for (int k = 0; k < grid.cells(2); k++) {
      for (int j = 0; j < ny; j++) {
        for (int i = 0; i < nx; i++) {
          int[] at = {i, j, k};
          for (int a = 0; a < 3; a++) {
            low[a] = grid.plane(a, at[a]);
            high[a] = grid.plane(a, at[a] + 1);
          }
          double f = body.fraction(low, high);
          fill[(k * ny + j) * nx + i] = f < LEAST_FILL ? 0 : f > 1 - LEAST_FILL ? 1 : (float) f;
        }
      }
    }
    return fill;
  }

  private void sortKinds(int axis) {
    int n = grid.cells(axis);
    kind[axis] = new int[n];
    double[] found = new double[n];
    int count = 0;
    for (int i = 0; i < n; i++) {
      double h = grid.step(axis, i);
      int same = 0;
      while (same < count && Math.abs(found[same] - h) > 1e-9 * h) {
        same++;
      }
      if (same == count) {
        found[count++] = h;
      }
      kind[axis][i] = same;
    }
    kinds[axis] = Arrays.copyOf(found, count);
  }

  int cellIndex(int i, int j, int k) {
    return (k * ny + j) * nx + i;
  }

  int nodeIndex(int i, int j, int k) {
    return (k * (ny + 1) + j) * (nx + 1) + i;
  }

  private int number() {
    Arrays.fill(node, -1);
    for (int k = 0; k < nz; k++) {
      for (int j = 0; j < ny; j++) {
        for (int i = 0; i < nx; i++) {
          if (fill[cellIndex(i, j, k)] > 0) {
            for (int c = 0; c < 8; c++) {
              node[nodeIndex(i + (c & 1), j + (c >> 1 & 1), k + (c >> 2))] = 0;
            }
          }
        }
      }
    }
    int count = 0;
    int plane = (nx + 1) * (ny + 1);
    for (int k = 0; k <= nz; k++) {
      planeStart[k] = count;
      for (int at = k * plane; at < (k + 1) * plane; at++) {
        if (node[at] == 0) {
          node[at] = count++;
        }
      }
    }
    planeStart[nz + 1] = count;
    return count;
  }

  private int[] countRows() {
    int count = 0;
    int cells = 0;
    for (int jk = 0; jk < ny * nz; jk++) {
      int length = 0;
      for (int i = 0; i < nx; i++) {
        boolean solid = fill[jk * nx + i] > 0;
        cells += solid ? 1 : 0;
        if (length == LONGEST || (i > 0 && kind[0][i] != kind[0][i - 1])) {
          length = 0;
        }
        if (solid && length == 0) {
          count++;
        }
        length = solid ? length + 1 : 0;
      }
    }
    return new int[] {count, cells};
  }

  private void fillRows() {
    int row = 0;
    for (int k = 0; k < nz; k++) {
      layerStart[k] = row;
      for (int j = 0; j < ny; j++) {
        int i = 0;
        while (i < nx) {
          if (!(fill[cellIndex(i, j, k)] > 0)) {
            i++;
            continue;
          }
          int length = 0;
          boolean full = true;
          while (i + length < nx
              && length < LONGEST
              && kind[0][i + length] == kind[0][i]
              && fill[cellIndex(i + length, j, k)] > 0) {
            full &= fill[cellIndex(i + length, j, k)] == 1;
            length++;
          }
          rowCell[row] = cellIndex(i, j, k);
          rowLength[row] = length;
          rowType[row] = kind[0][i] + kinds[0].length * (kind[1][j] + kinds[1].length * kind[2][k]);
          rowFull[row] = full;
          for (int c = 0; c < 4; c++) {
            rowNode[4 * row + c] = node[nodeIndex(i, j + (c & 1), k + (c >> 1))];
          }
          row++;
          i += length;
        }
      }
    }
    layerStart[nz] = row;
  }

  /** Sizes of a cell. */
  double[] sizes(int i, int j, int k) {
    return new double[] {kinds[0][kind[0][i]], kinds[1][kind[1][j]], kinds[2][kind[2][k]]};
  }

  /** Coordinates of every node, an array for each axis. */
  double[][] places() {
    double[][] place = new double[3][nodes];
    for (int k = 0; k <= nz; k++) {
      for (int j = 0; j <= ny; j++) {
        for (int i = 0; i <= nx; i++) {
          int n = node[nodeIndex(i, j, k)];
          if (n >= 0) {
            place[0][n] = grid.plane(0, i);
            place[1][n] = grid.plane(1, j);
            place[2][n] = grid.plane(2, k);
          }
        }
      }
    }
    return place;
  }
}
