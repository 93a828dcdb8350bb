package fettle.mechanics.solids;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * The first coarse level: cells of two by two by two, by Galerkin's rule. A coarse node stands for
 * connected solid only: where a slit passes, each side has a node of its own, so that a slit
 * thinner than a coarse cell survives.
 */
final class FirstCoarse {

  final Cells cells;
  final int mx;
  final int my;
  final int mz;

  /** Number of each coarse cell that holds solid, -1 else. */
  private final int[] coarseCell;

  private int coarseCells;

  /** Eight coarse nodes of each coarse cell. */
  private int[] corner = new int[0];

  int coarseNodes;
  double[] coordinates = new double[0];

  /** Coarse nodes and weights of each fine node. */
  final int[] start;

  int[] parent = new int[0];
  float[] weight = new float[0];

  FirstCoarse(Cells cells) {
    this.cells = cells;
    mx = (cells.nx + 1) / 2;
    my = (cells.ny + 1) / 2;
    mz = (cells.nz + 1) / 2;
    coarseCell = new int[mx * my * mz];
    start = new int[cells.nodes + 1];
    numberCells();
    join();
    weigh();
  }

  private int coarseAt(int i, int j, int k) {
    return (k / 2 * my + j / 2) * mx + i / 2;
  }

  private void numberCells() {
    Arrays.fill(coarseCell, -1);
    for (int k = 0; k < cells.nz; k++) {
      for (int j = 0; j < cells.ny; j++) {
        for (int i = 0; i < cells.nx; i++) {
          if (cells.fill[cells.cellIndex(i, j, k)] > 0) {
            coarseCell[coarseAt(i, j, k)] = 0;
          }
        }
      }
    }
    for (int c = 0; c < coarseCell.length; c++) {
      if (coarseCell[c] == 0) {
        coarseCell[c] = coarseCells++;
      }
    }
  }

  private void join() {
    int[] link = new int[8 * coarseCells];
    Arrays.setAll(link, i -> i);
    int[] around = new int[8];
    for (int k = 0; k <= cells.nz; k++) {
      for (int j = 0; j <= cells.ny; j++) {
        for (int i = 0; i <= cells.nx; i++) {
          if (cells.node[cells.nodeIndex(i, j, k)] >= 0) {
            joinAt(i, j, k, around, link);
          }
        }
      }
    }
    corner = new int[8 * coarseCells];
    Arrays.fill(corner, -1);
    for (int e = 0; e < link.length; e++) {
      int root = root(link, e);
      if (corner[root] < 0) {
        corner[root] = coarseNodes++;
      }
      corner[e] = corner[root];
    }
    coordinates = new double[3 * coarseNodes];
    for (int c = 0; c < coarseCell.length; c++) {
      if (coarseCell[c] >= 0) {
        int[] at = {c % mx, c / mx % my, c / mx / my};
        for (int l = 0; l < 8; l++) {
          int n = corner[8 * coarseCell[c] + l];
          for (int a = 0; a < 3; a++) {
            coordinates[3 * n + a] = coarsePlane(a, at[a] + (l >> a & 1));
          }
        }
      }
    }
  }

  private double coarsePlane(int axis, int index) {
    int n = cells.grid.cells(axis);
    return 2 * index <= n
        ? cells.grid.plane(axis, 2 * index)
        : cells.grid.plane(axis, n) + cells.grid.step(axis, n - 1);
  }

  private void joinAt(int i, int j, int k, int[] around, int[] link) {
    int count = 0;
    for (int c = 0; c < 8; c++) {
      int ci = i - 1 + (c & 1);
      int cj = j - 1 + (c >> 1 & 1);
      int ck = k - 1 + (c >> 2);
      if (ci >= 0
          && cj >= 0
          && ck >= 0
          && ci < cells.nx
          && cj < cells.ny
          && ck < cells.nz
          && cells.fill[cells.cellIndex(ci, cj, ck)] > 0) {
        around[count++] = coarseAt(ci, cj, ck);
      }
    }
    for (int l = 0; l < 8; l++) {
      if (onEntity(i, l) && onEntity(j, l >> 1) && onEntity(k, l >> 2)) {
        int px = i / 2 + (i & l & 1);
        int py = j / 2 + (j & (l >> 1) & 1);
        int pz = k / 2 + (k & (l >> 2) & 1);
        int first = root(link, local(around[0], px, py, pz));
        for (int a = 1; a < count; a++) {
          int other = root(link, local(around[a], px, py, pz));
          link[Math.max(first, other)] = Math.min(first, other);
          first = Math.min(first, other);
        }
      }
    }
  }

  /** On an even plane only the low choice counts; between planes both do. */
  private static boolean onEntity(int index, int choice) {
    return (index & 1) == 1 || (choice & 1) == 0;
  }

  private int local(int coarse, int px, int py, int pz) {
    int x = coarse % mx;
    int y = coarse / mx % my;
    int z = coarse / mx / my;
    return 8 * coarseCell[coarse] + (px - x) + 2 * (py - y) + 4 * (pz - z);
  }

  private static int root(int[] link, int e) {
    int r = e;
    while (link[r] != r) {
      link[r] = link[link[r]];
      r = link[r];
    }
    return r;
  }

  private void weigh() {
    int total = 0;
    for (int pass = 0; pass < 2; pass++) {
      if (pass == 1) {
        parent = new int[total];
        weight = new float[total];
      }
      total = 0;
      for (int k = 0; k <= cells.nz; k++) {
        for (int j = 0; j <= cells.ny; j++) {
          for (int i = 0; i <= cells.nx; i++) {
            int n = cells.node[cells.nodeIndex(i, j, k)];
            if (n >= 0) {
              int count = 1 << ((i & 1) + (j & 1) + (k & 1));
              if (pass == 1) {
                weighAt(i, j, k, total);
              }
              total += count;
              start[n + 1] = total;
            }
          }
        }
      }
    }
  }

  private void weighAt(int i, int j, int k, int from) {
    int owner = -1;
    for (int c = 0; c < 8 && owner < 0; c++) {
      int ci = i - 1 + (c & 1);
      int cj = j - 1 + (c >> 1 & 1);
      int ck = k - 1 + (c >> 2);
      if (ci >= 0
          && cj >= 0
          && ck >= 0
          && ci < cells.nx
          && cj < cells.ny
          && ck < cells.nz
          && cells.fill[cells.cellIndex(ci, cj, ck)] > 0) {
        owner = coarseAt(ci, cj, ck);
      }
    }
    int at = from;
    for (int l = 0; l < 8; l++) {
      if (onEntity(i, l) && onEntity(j, l >> 1) && onEntity(k, l >> 2)) {
        int px = i / 2 + (i & l & 1);
        int py = j / 2 + (j & (l >> 1) & 1);
        int pz = k / 2 + (k & (l >> 2) & 1);
        parent[at] = corner[local(owner, px, py, pz)];
        weight[at] =
            (float) (weight(0, i, l & 1) * weight(1, j, l >> 1 & 1) * weight(2, k, l >> 2 & 1));
        at++;
      }
    }
  }

  private double weight(int axis, int index, int high) {
    if ((index & 1) == 0) {
      return 1;
    }
    double low = coarsePlane(axis, index / 2);
    double top = coarsePlane(axis, index / 2 + 1);
    double t = (cells.grid.plane(axis, index) - low) / (top - low);
    return high == 1 ? t : 1 - t;
  }

  /** Builds the coarse matrix {@code P^T K P}. */
  BlockMatrix matrix(Elastic material, Held held) {
    int[] rowStart = new int[coarseNodes + 1];
    int[] columns = structure(rowStart);
    float[] value = new float[Math.multiplyExact(9, columns.length)];
    BlockMatrix matrix = new BlockMatrix(coarseNodes, 3, 3, rowStart, columns, value);
    byte[] mask = new byte[cells.nodes];
    for (int c = 0; c < 3; c++) {
      for (int n : held.fixed[c]) {
        mask[n] |= (byte) (1 << c);
      }
    }
    Children children = new Children(cells, material);
    double[] element = new double[576];
    for (int c = 0; c < coarseCell.length; c++) {
      if (coarseCell[c] >= 0) {
        Arrays.fill(element, 0);
        children.sum(c % mx, c / mx % my, c / mx / my, mask, element);
        scatter(matrix, coarseCell[c], element);
      }
    }
    addSprings(matrix, held, mask);
    return matrix;
  }

  private void scatter(BlockMatrix matrix, int cell, double[] element) {
    for (int a = 0; a < 8; a++) {
      int row = corner[8 * cell + a];
      for (int b = 0; b < 8; b++) {
        int at = find(matrix, row, corner[8 * cell + b]);
        for (int i = 0; i < 3; i++) {
          for (int j = 0; j < 3; j++) {
            matrix.value[9 * at + 3 * i + j] += (float) element[24 * (3 * a + i) + 3 * b + j];
          }
        }
      }
    }
  }

  private static int find(BlockMatrix matrix, int row, int column) {
    int at = matrix.start[row];
    while (matrix.column[at] != column) {
      at++;
    }
    return at;
  }

  private void addSprings(BlockMatrix matrix, Held held, byte[] mask) {
    for (int f = 0; f < held.faces(); f++) {
      for (int a = 0; a < 4; a++) {
        int na = held.faceNodes[4 * f + a];
        for (int b = 0; b < 4; b++) {
          int nb = held.faceNodes[4 * f + b];
          double area = held.faceAreas[16 * f + 4 * a + b];
          for (int p = start[na]; p < start[na + 1]; p++) {
            for (int q = start[nb]; q < start[nb + 1]; q++) {
              int at = find(matrix, parent[p], parent[q]);
              for (int c = 0; c < 3; c++) {
                if (((mask[na] | mask[nb]) >> c & 1) == 0) {
                  matrix.value[9 * at + 4 * c] +=
                      (float) (weight[p] * weight[q] * area * held.faceSprings[3 * f + c]);
                }
              }
            }
          }
        }
      }
    }
  }

  private int[] structure(int[] rowStart) {
    int[] cellStart = new int[coarseNodes + 1];
    for (int n : corner) {
      cellStart[n + 1]++;
    }
    for (int n = 0; n < coarseNodes; n++) {
      cellStart[n + 1] += cellStart[n];
    }
    int[] cellOf = new int[corner.length];
    int[] next = Arrays.copyOf(cellStart, coarseNodes);
    for (int e = 0; e < corner.length; e++) {
      cellOf[next[corner[e]]++] = e / 8;
    }
    int[] seen = new int[coarseNodes];
    Arrays.fill(seen, -1);
    int[] columns = new int[coarseNodes * 27];
    int count = 0;
    for (int n = 0; n < coarseNodes; n++) {
      for (int s = cellStart[n]; s < cellStart[n + 1]; s++) {
        for (int l = 0; l < 8; l++) {
          int m = corner[8 * cellOf[s] + l];
          if (seen[m] != n) {
            seen[m] = n;
            if (count == columns.length) {
              columns = Arrays.copyOf(columns, count + count / 2 + 64);
            }
            columns[count++] = m;
          }
        }
      }
      Arrays.sort(columns, rowStart[n], count);
      rowStart[n + 1] = count;
    }
    return Arrays.copyOf(columns, count);
  }

  /** What each fine cell gives to its coarse cell; kept for every kind that has occurred. */
  private static final class Children {
    private static final int MOST = 3000;

    private record Key(long steps, int child, int pattern) {}

    private final Cells cells;
    private final Elastic material;
    private final Map<Key, double[]> known = new HashMap<>();

    Children(Cells cells, Elastic material) {
      this.cells = cells;
      this.material = material;
    }

    void sum(int x, int y, int z, byte[] mask, double[] element) {
      boolean whole = true;
      for (int child = 0; child < 8 && whole; child++) {
        int i = 2 * x + (child & 1);
        int j = 2 * y + (child >> 1 & 1);
        int k = 2 * z + (child >> 2);
        whole =
            i < cells.nx
                && j < cells.ny
                && k < cells.nz
                && cells.fill[cells.cellIndex(i, j, k)] == 1
                && pattern(i, j, k, mask) == 0;
      }
      if (whole) {
        Key key = key(x, y, z, 8, 0);
        double[] all = known.get(key);
        if (all == null) {
          all = new double[576];
          for (int child = 0; child < 8; child++) {
            add(x, y, z, child, mask, all);
          }
          keep(key, all);
        }
        for (int e = 0; e < 576; e++) {
          element[e] += all[e];
        }
        return;
      }
      for (int child = 0; child < 8; child++) {
        int i = 2 * x + (child & 1);
        int j = 2 * y + (child >> 1 & 1);
        int k = 2 * z + (child >> 2);
        if (i < cells.nx && j < cells.ny && k < cells.nz) {
          add(x, y, z, child, mask, element);
        }
      }
    }

    private void add(int x, int y, int z, int child, byte[] mask, double[] element) {
      int i = 2 * x + (child & 1);
      int j = 2 * y + (child >> 1 & 1);
      int k = 2 * z + (child >> 2);
      double fill = cells.fill[cells.cellIndex(i, j, k)];
      if (!(fill > 0)) {
        return;
      }
      int pattern = pattern(i, j, k, mask);
      Key key = key(x, y, z, child, pattern);
      double[] one = known.get(key);
      if (one == null) {
        one = galerkin(i, j, k, pattern);
        keep(key, one);
      }
      for (int e = 0; e < 576; e++) {
        element[e] += fill * one[e];
      }
    }

    private void keep(Key key, double[] matrix) {
      if (known.size() >= MOST) {
        known.clear();
      }
      known.put(key, matrix);
    }

    private int pattern(int i, int j, int k, byte[] mask) {
      int pattern = 0;
      for (int n = 0; n < 8; n++) {
        int node = cells.node[cells.nodeIndex(i + (n & 1), j + (n >> 1 & 1), k + (n >> 2))];
        pattern |= mask[node] << (3 * n);
      }
      return pattern;
    }

    private Key key(int x, int y, int z, int child, int pattern) {
      return new Key((pair(0, x) << 20 | pair(1, y)) << 20 | pair(2, z), child, pattern);
    }

    private long pair(int axis, int coarse) {
      int n = cells.grid.cells(axis);
      int first = cells.kind[axis][2 * coarse];
      int second = 2 * coarse + 1 < n ? cells.kind[axis][2 * coarse + 1] : first;
      return (long) first * cells.kinds[axis].length + second & 0xFFFFF;
    }

    private double[] galerkin(int i, int j, int k, int pattern) {
      double[] stiffness = BoxElement.stiffness(cells.sizes(i, j, k), material);
      for (int d = 0; d < 24; d++) {
        if ((pattern >> d & 1) == 1) {
          for (int e = 0; e < 24; e++) {
            stiffness[24 * d + e] = 0;
            stiffness[24 * e + d] = 0;
          }
        }
      }
      double[][] p = new double[8][8];
      int[] at = {i, j, k};
      double[][] low = new double[3][2];
      for (int a = 0; a < 3; a++) {
        double h = cells.grid.step(a, at[a]);
        boolean second = (at[a] & 1) == 1;
        double other =
            second
                ? cells.grid.step(a, at[a] - 1)
                : at[a] + 1 < cells.grid.cells(a) ? cells.grid.step(a, at[a] + 1) : h;
        low[a][0] = second ? other / (h + other) : 0;
        low[a][1] = second ? 1 : h / (h + other);
      }
      for (int n = 0; n < 8; n++) {
        for (int c = 0; c < 8; c++) {
          double w = 1;
          for (int a = 0; a < 3; a++) {
            double t = low[a][n >> a & 1];
            w *= (c >> a & 1) == 1 ? t : 1 - t;
          }
          p[n][c] = w;
        }
      }
      return sandwich(stiffness, p);
    }

    private static double[] sandwich(double[] stiffness, double[][] p) {
      double[] half = new double[576];
      for (int r = 0; r < 24; r++) {
        for (int n = 0; n < 8; n++) {
          for (int c = 0; c < 8; c++) {
            for (int d = 0; d < 3; d++) {
              half[24 * r + 3 * c + d] += stiffness[24 * r + 3 * n + d] * p[n][c];
            }
          }
        }
      }
      double[] full = new double[576];
      for (int n = 0; n < 8; n++) {
        for (int c = 0; c < 8; c++) {
          if (p[n][c] != 0) {
            for (int d = 0; d < 3; d++) {
              for (int e = 0; e < 24; e++) {
                full[24 * (3 * c + d) + e] += p[n][c] * half[24 * (3 * n + d) + e];
              }
            }
          }
        }
      }
      return full;
    }
  }
}
