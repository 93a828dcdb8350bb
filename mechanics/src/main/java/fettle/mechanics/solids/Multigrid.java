package fettle.mechanics.solids;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The preconditioner: one symmetric V-cycle in float over all levels. */
final class Multigrid {

  private static final int DENSE = 700;
  private static final int SMOOTH = 3;
  private static final int COARSE_SMOOTH = 2;
  private static final double SPAN = 10;

  /** One level below the cells. */
  private static final class Level {
    final BlockMatrix matrix;
    final float[] inverse;
    final Chebyshev smoother;
    final float[] right;
    final float[] x;
    final float[] work;
    final float[] direction;
    BlockMatrix prolongation;

    Level(BlockMatrix matrix, float[] inverse, double greatest) {
      this.matrix = matrix;
      this.inverse = inverse;
      smoother = new Chebyshev(COARSE_SMOOTH, greatest, SPAN);
      right = new float[matrix.size()];
      x = new float[matrix.size()];
      work = new float[matrix.size()];
      direction = new float[matrix.size()];
      prolongation = matrix;
    }
  }

  private final Cells cells;
  private final FloatOperator operator;
  private final float[][] inverse;
  private final Chebyshev smoother;
  private final int[] start;
  private final int[] parent;
  private final float[] weight;
  private final List<Level> levels = new ArrayList<>();
  private final double[][] dense;
  private final double[] denseRight;
  private final float[][] work;
  private final float[][] direction;
  private final float[][] gathered;
  private final int parts;

  Multigrid(Cells cells, Held held, Elastic material, FloatOperator operator) {
    this.cells = cells;
    this.operator = operator;
    parts = Workers.parts(cells.nodes);
    inverse = inverseDiagonal(held, material);
    work = new float[3][cells.nodes];
    direction = new float[3][cells.nodes];
    smoother = new Chebyshev(SMOOTH, greatest(material) / 1.1, SPAN);
    FirstCoarse first = new FirstCoarse(cells);
    start = first.start;
    parent = first.parent;
    weight = first.weight;
    BlockMatrix matrix = first.matrix(material, held);
    double[] nearNull = rigidModes(first.coordinates);
    gathered = new float[parts][];
    while (true) {
      float[] d = matrix.inverseDiagonal();
      double greatest = matrix.greatest(d);
      Level level = new Level(matrix, d, greatest);
      levels.add(level);
      if (matrix.size() <= DENSE) {
        break;
      }
      Aggregation next = new Aggregation(matrix, nearNull, greatest);
      if (next.coarse.size() > 0.8 * matrix.size()) {
        break;
      }
      level.prolongation = next.prolongation;
      matrix = next.coarse;
      nearNull = next.nearNull;
    }
    for (int p = 0; p < parts; p++) {
      gathered[p] = new float[levels.get(0).right.length];
    }
    BlockMatrix last = levels.get(levels.size() - 1).matrix;
    dense = last.size() <= 3 * DENSE ? factor(last) : new double[0][];
    denseRight = new double[last.size()];
  }

  /** Returns sizes of the levels in unknowns, finest first. */
  List<Integer> sizes() {
    List<Integer> sizes = new ArrayList<>(List.of(3 * cells.nodes));
    levels.forEach(l -> sizes.add(l.matrix.size()));
    return sizes;
  }

  /** Returns the bytes held in arrays. */
  long bytes() {
    long bytes = 12L * cells.nodes * 3 + 4L * (start.length + parent.length + weight.length);
    for (Level l : levels) {
      bytes += 20L * l.matrix.size() + 4L * l.matrix.value.length + 4L * l.matrix.column.length;
      if (l.prolongation != l.matrix) {
        bytes += 4L * (l.prolongation.value.length + l.prolongation.column.length);
      }
    }
    return bytes + 8L * dense.length * dense.length / 2 + 4L * parts * levels.get(0).right.length;
  }

  private float[][] inverseDiagonal(Held held, Elastic material) {
    float[][] d = new float[3][cells.nodes];
    int ny = cells.kinds[1].length;
    int nx = cells.kinds[0].length;
    float[][] corner = new float[nx * ny * cells.kinds[2].length][];
    for (int k = 0; k < cells.nz; k++) {
      for (int j = 0; j < cells.ny; j++) {
        for (int i = 0; i < cells.nx; i++) {
          float fill = cells.fill[cells.cellIndex(i, j, k)];
          if (fill > 0) {
            int type = cells.kind[0][i] + nx * (cells.kind[1][j] + ny * cells.kind[2][k]);
            if (corner[type] == null) {
              double[] e = BoxElement.stiffness(cells.sizes(i, j, k), material);
              corner[type] = new float[] {(float) e[0], (float) e[25], (float) e[50]};
            }
            for (int n = 0; n < 8; n++) {
              int node = cells.node[cells.nodeIndex(i + (n & 1), j + (n >> 1 & 1), k + (n >> 2))];
              for (int c = 0; c < 3; c++) {
                d[c][node] += fill * corner[type][c];
              }
            }
          }
        }
      }
    }
    for (int f = 0; f < held.faces(); f++) {
      for (int a = 0; a < 4; a++) {
        for (int c = 0; c < 3; c++) {
          d[c][held.faceNodes[4 * f + a]] +=
              (float) (held.faceAreas[16 * f + 5 * a] * held.faceSprings[3 * f + c]);
        }
      }
    }
    for (int c = 0; c < 3; c++) {
      for (int n = 0; n < cells.nodes; n++) {
        d[c][n] = 1 / d[c][n];
      }
    }
    for (int c = 0; c < 3; c++) {
      for (int n : held.fixed[c]) {
        d[c][n] = 0;
      }
    }
    return d;
  }

  /**
   * Bound of the greatest eigenvalue of the stiffness scaled by its diagonal: the greatest that any
   * single cell has. It holds however little a cell is filled.
   */
  private double greatest(Elastic material) {
    double most = 1;
    boolean[] seen =
        new boolean[cells.kinds[0].length * cells.kinds[1].length * cells.kinds[2].length];
    for (int row = 0; row < cells.rows; row++) {
      int type = cells.rowType[row];
      if (!seen[type]) {
        seen[type] = true;
        int nx = cells.kinds[0].length;
        int ny = cells.kinds[1].length;
        double[] h = {
          cells.kinds[0][type % nx], cells.kinds[1][type / nx % ny], cells.kinds[2][type / nx / ny]
        };
        most = Math.max(most, BoxElement.greatest(BoxElement.stiffness(h, material)));
      }
    }
    return most;
  }

  private static double[] rigidModes(double[] coordinates) {
    int n = coordinates.length / 3;
    double[] middle = new double[3];
    for (int i = 0; i < coordinates.length; i++) {
      middle[i % 3] += coordinates[i] / n;
    }
    double size = 1e-30;
    for (int i = 0; i < coordinates.length; i++) {
      size = Math.max(size, Math.abs(coordinates[i] - middle[i % 3]));
    }
    double[] b = new double[n * 18];
    for (int i = 0; i < n; i++) {
      double x = (coordinates[3 * i] - middle[0]) / size;
      double y = (coordinates[3 * i + 1] - middle[1]) / size;
      double z = (coordinates[3 * i + 2] - middle[2]) / size;
      double[] rows = {
        1, 0, 0, 0, z, -y,
        0, 1, 0, -z, 0, x,
        0, 0, 1, y, -x, 0
      };
      System.arraycopy(rows, 0, b, 18 * i, 18);
    }
    return b;
  }

  private static double[][] factor(BlockMatrix m) {
    int n = m.size();
    double[][] l = new double[n][];
    for (int i = 0; i < n; i++) {
      l[i] = new double[i + 1];
    }
    for (int r = 0; r < m.rows; r++) {
      for (int e = m.start[r]; e < m.start[r + 1]; e++) {
        for (int i = 0; i < m.high; i++) {
          for (int j = 0; j < m.wide; j++) {
            int row = r * m.high + i;
            int col = m.column[e] * m.wide + j;
            if (col <= row) {
              l[row][col] = m.value[(e * m.high + i) * m.wide + j];
            }
          }
        }
      }
    }
    for (int i = 0; i < n; i++) {
      double diagonal = l[i][i];
      for (int j = 0; j <= i; j++) {
        double sum = l[i][j];
        double[] li = l[i];
        double[] lj = l[j];
        for (int k = 0; k < j; k++) {
          sum -= li[k] * lj[k];
        }
        if (i == j) {
          li[i] = sum > 1e-5 * diagonal && sum > 0 ? 1 / Math.sqrt(sum) : 0;
        } else {
          li[j] = sum * lj[j];
        }
      }
    }
    return l;
  }

  /** Sets z to an approximate solution for the right side r; both zero where a node is held. */
  void apply(float[][] r, float[][] z) {
    smoothFromZero(r, z);
    residual(r, z);
    restrict();
    cycle(0);
    prolong(z);
    smooth(r, z);
  }

  private void smoothFromZero(float[][] r, float[][] z) {
    each((c, from, to) -> first(r[c], inverse[c], direction[c], z[c], smoother.step[0], from, to));
    chebyshev(r, z, 1);
  }

  private static void first(
      float[] r, float[] inverse, float[] d, float[] z, float step, int from, int to) {
    for (int i = from; i < to; i++) {
      float v = step * inverse[i] * r[i];
      d[i] = v;
      z[i] = v;
    }
  }

  private void smooth(float[][] r, float[][] z) {
    chebyshev(r, z, 0);
  }

  private void chebyshev(float[][] r, float[][] z, int from) {
    for (int s = from; s < smoother.degree; s++) {
      operator.apply(z, work);
      float keep = smoother.keep[s];
      float step = smoother.step[s];
      each((c, a, b) -> advance(r[c], work[c], inverse[c], direction[c], z[c], keep, step, a, b));
    }
  }

  private static void advance(
      float[] r,
      float[] az,
      float[] inverse,
      float[] d,
      float[] z,
      float keep,
      float step,
      int from,
      int to) {
    for (int i = from; i < to; i++) {
      float v = keep * d[i] + step * inverse[i] * (r[i] - az[i]);
      d[i] = v;
      z[i] += v;
    }
  }

  private void residual(float[][] r, float[][] z) {
    operator.apply(z, work);
    each((c, from, to) -> minus(r[c], work[c], from, to));
  }

  private static void minus(float[] r, float[] w, int from, int to) {
    for (int i = from; i < to; i++) {
      w[i] = r[i] - w[i];
    }
  }

  private void restrict() {
    Workers.run(
        parts,
        p -> {
          float[] to = gathered[p];
          Arrays.fill(to, 0);
          int end = (int) ((long) cells.nodes * (p + 1) / parts);
          for (int n = (int) ((long) cells.nodes * p / parts); n < end; n++) {
            float x = inverse[0][n] > 0 ? work[0][n] : 0;
            float y = inverse[1][n] > 0 ? work[1][n] : 0;
            float z = inverse[2][n] > 0 ? work[2][n] : 0;
            for (int e = start[n]; e < start[n + 1]; e++) {
              int c = 3 * parent[e];
              float w = weight[e];
              to[c] += w * x;
              to[c + 1] += w * y;
              to[c + 2] += w * z;
            }
          }
        });
    float[] right = levels.get(0).right;
    System.arraycopy(gathered[0], 0, right, 0, right.length);
    for (int p = 1; p < parts; p++) {
      float[] g = gathered[p];
      for (int i = 0; i < right.length; i++) {
        right[i] += g[i];
      }
    }
  }

  private void prolong(float[][] z) {
    float[] x = levels.get(0).x;
    Workers.run(
        parts,
        p -> {
          int end = (int) ((long) cells.nodes * (p + 1) / parts);
          for (int n = (int) ((long) cells.nodes * p / parts); n < end; n++) {
            float a = 0;
            float b = 0;
            float d = 0;
            for (int e = start[n]; e < start[n + 1]; e++) {
              int c = 3 * parent[e];
              float w = weight[e];
              a += w * x[c];
              b += w * x[c + 1];
              d += w * x[c + 2];
            }
            z[0][n] += inverse[0][n] > 0 ? a : 0;
            z[1][n] += inverse[1][n] > 0 ? b : 0;
            z[2][n] += inverse[2][n] > 0 ? d : 0;
          }
        });
  }

  private void cycle(int at) {
    Level l = levels.get(at);
    if (at + 1 == levels.size()) {
      solveLast(l);
      return;
    }
    for (int i = 0; i < l.x.length; i++) {
      l.direction[i] = l.smoother.step[0] * l.inverse[i] * l.right[i];
      l.x[i] = l.direction[i];
    }
    chebyshev(l, 1);
    l.matrix.multiply(l.x, l.work);
    for (int i = 0; i < l.x.length; i++) {
      l.work[i] = l.right[i] - l.work[i];
    }
    Level below = levels.get(at + 1);
    Arrays.fill(below.right, 0);
    l.prolongation.addTransposed(l.work, below.right);
    cycle(at + 1);
    l.prolongation.multiply(below.x, l.work);
    for (int i = 0; i < l.x.length; i++) {
      l.x[i] += l.work[i];
    }
    chebyshev(l, 0);
  }

  private static void chebyshev(Level l, int from) {
    for (int s = from; s < l.smoother.degree; s++) {
      l.matrix.multiply(l.x, l.work);
      advance(
          l.right,
          l.work,
          l.inverse,
          l.direction,
          l.x,
          l.smoother.keep[s],
          l.smoother.step[s],
          0,
          l.x.length);
    }
  }

  private void solveLast(Level l) {
    if (dense.length == 0) {
      Arrays.fill(l.x, 0);
      for (int pass = 0; pass < 10; pass++) {
        chebyshev(l, 0);
      }
      return;
    }
    double[] y = denseRight;
    int n = y.length;
    for (int i = 0; i < n; i++) {
      double sum = l.right[i];
      for (int k = 0; k < i; k++) {
        sum -= dense[i][k] * y[k];
      }
      y[i] = sum * dense[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      double v = y[i] * dense[i][i];
      y[i] = v;
      for (int k = 0; k < i; k++) {
        y[k] -= dense[i][k] * v;
      }
      l.x[i] = (float) v;
    }
  }

  /** Work on a range of one component. */
  private interface Range {
    void run(int component, int from, int to);
  }

  private void each(Range range) {
    Workers.run(
        parts,
        p -> {
          int from = (int) ((long) cells.nodes * p / parts);
          int to = (int) ((long) cells.nodes * (p + 1) / parts);
          for (int c = 0; c < 3; c++) {
            range.run(c, from, to);
          }
        });
  }
}
