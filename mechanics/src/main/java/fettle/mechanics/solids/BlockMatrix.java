package fettle.mechanics.solids;

/** A sparse matrix of small dense blocks, rows of blocks one after another, in float. */
final class BlockMatrix {

  final int rows;
  final int high;
  final int wide;
  final int[] start;
  final int[] column;
  final float[] value;

  BlockMatrix(int rows, int high, int wide, int[] start, int[] column, float[] value) {
    this.rows = rows;
    this.high = high;
    this.wide = wide;
    this.start = start;
    this.column = column;
    this.value = value;
  }

  int size() {
    return rows * high;
  }

  /** Sets y to this matrix times x. */
  void multiply(float[] x, float[] y) {
    int parts = Workers.parts(rows * 4);
    Workers.run(
        parts,
        p -> {
          int from = (int) ((long) rows * p / parts);
          int to = (int) ((long) rows * (p + 1) / parts);
          if (high == 3 && wide == 3) {
            multiplyThree(x, y, from, to);
          } else {
            multiplyAny(x, y, from, to);
          }
        });
  }

  private void multiplyThree(float[] x, float[] y, int from, int to) {
    for (int r = from; r < to; r++) {
      float a = 0;
      float b = 0;
      float c = 0;
      for (int e = start[r]; e < start[r + 1]; e++) {
        int j = 3 * column[e];
        int v = 9 * e;
        float x0 = x[j];
        float x1 = x[j + 1];
        float x2 = x[j + 2];
        a += value[v] * x0 + value[v + 1] * x1 + value[v + 2] * x2;
        b += value[v + 3] * x0 + value[v + 4] * x1 + value[v + 5] * x2;
        c += value[v + 6] * x0 + value[v + 7] * x1 + value[v + 8] * x2;
      }
      y[3 * r] = a;
      y[3 * r + 1] = b;
      y[3 * r + 2] = c;
    }
  }

  private void multiplyAny(float[] x, float[] y, int from, int to) {
    for (int r = from; r < to; r++) {
      for (int i = 0; i < high; i++) {
        float sum = 0;
        for (int e = start[r]; e < start[r + 1]; e++) {
          int j = wide * column[e];
          int v = (e * high + i) * wide;
          for (int k = 0; k < wide; k++) {
            sum += value[v + k] * x[j + k];
          }
        }
        y[r * high + i] = sum;
      }
    }
  }

  /** Adds the transposed matrix times x to y. */
  void addTransposed(float[] x, float[] y) {
    for (int r = 0; r < rows; r++) {
      for (int e = start[r]; e < start[r + 1]; e++) {
        int j = wide * column[e];
        for (int i = 0; i < high; i++) {
          float xi = x[r * high + i];
          int v = (e * high + i) * wide;
          for (int k = 0; k < wide; k++) {
            y[j + k] += value[v + k] * xi;
          }
        }
      }
    }
  }

  /** Returns one over the diagonal, 0 where the diagonal is 0. */
  float[] inverseDiagonal() {
    float[] d = new float[size()];
    for (int r = 0; r < rows; r++) {
      for (int e = start[r]; e < start[r + 1]; e++) {
        if (column[e] == r) {
          for (int i = 0; i < high; i++) {
            float v = value[(e * high + i) * wide + i];
            d[r * high + i] = v > 1e-30f ? 1 / v : 0;
          }
        }
      }
    }
    return d;
  }

  /** Greatest eigenvalue of this matrix scaled by its diagonal, from below, by the power method. */
  double greatest(float[] inverseDiagonal) {
    float[] x = new float[size()];
    float[] y = new float[size()];
    java.util.Random random = new java.util.Random(17);
    for (int i = 0; i < x.length; i++) {
      x[i] = inverseDiagonal[i] > 0 ? random.nextFloat() - 0.5f : 0;
    }
    double value = 1;
    for (int pass = 0; pass < 25; pass++) {
      multiply(x, y);
      double norm = 0;
      for (int i = 0; i < y.length; i++) {
        y[i] *= inverseDiagonal[i];
        norm = Math.max(norm, Math.abs(y[i]));
      }
      double xy = 0;
      double xx = 0;
      for (int i = 0; i < y.length; i++) {
        if (inverseDiagonal[i] > 0) {
          xy += (double) x[i] * y[i] / inverseDiagonal[i];
          xx += (double) x[i] * x[i] / inverseDiagonal[i];
        }
      }
      if (!(norm > 0) || !(xx > 0)) {
        return 1;
      }
      value = xy / xx;
      float scale = (float) (1 / norm);
      for (int i = 0; i < x.length; i++) {
        x[i] = y[i] * scale;
      }
    }
    return Math.max(value, 1);
  }
}
