package fettle.mechanics.solids;

import java.util.Arrays;

/** The coarse matrix {@code P^T A P} of block matrices. */
final class Triple {

  private static final int MODES = 6;

  private Triple() {}

  static BlockMatrix product(BlockMatrix p, BlockMatrix a, int coarse) {
    int[][] transposed = transpose(p, coarse);
    int[] start = new int[coarse + 1];
    int[] columns = new int[coarse * 27];
    int[] place = new int[coarse];
    Arrays.fill(place, -1);
    int total = 0;
    for (int g = 0; g < coarse; g++) {
      int from = total;
      for (int t = transposed[0][g]; t < transposed[0][g + 1]; t++) {
        int r = transposed[1][t];
        for (int e = a.start[r]; e < a.start[r + 1]; e++) {
          int j = a.column[e];
          for (int q = p.start[j]; q < p.start[j + 1]; q++) {
            int c = p.column[q];
            if (place[c] < from) {
              place[c] = total;
              if (total == columns.length) {
                columns = Arrays.copyOf(columns, total + total / 2 + 64);
              }
              columns[total++] = c;
            }
          }
        }
      }
      start[g + 1] = total;
    }
    float[] value = new float[Math.multiplyExact(total, MODES * MODES)];
    BlockMatrix result =
        new BlockMatrix(coarse, MODES, MODES, start, Arrays.copyOf(columns, total), value);
    int parts = Workers.parts(a.rows);
    Workers.run(
        parts,
        part -> {
          int from = (int) ((long) coarse * part / parts);
          int to = (int) ((long) coarse * (part + 1) / parts);
          new Rows(p, a, transposed, result).fill(from, to);
        });
    return result;
  }

  private static int[][] transpose(BlockMatrix p, int coarse) {
    int[] start = new int[coarse + 1];
    for (int c : p.column) {
      start[c + 1]++;
    }
    for (int g = 0; g < coarse; g++) {
      start[g + 1] += start[g];
    }
    int[] row = new int[p.column.length];
    int[] entry = new int[p.column.length];
    int[] next = start.clone();
    for (int r = 0; r < p.rows; r++) {
      for (int e = p.start[r]; e < p.start[r + 1]; e++) {
        int at = next[p.column[e]]++;
        row[at] = r;
        entry[at] = e;
      }
    }
    return new int[][] {start, row, entry};
  }

  /** Fills rows of the result one after the other; one instance for each thread. */
  private static final class Rows {
    private final BlockMatrix p;
    private final BlockMatrix a;
    private final int[][] transposed;
    private final BlockMatrix result;
    private final int[] place;
    private final float[] half;

    Rows(BlockMatrix p, BlockMatrix a, int[][] transposed, BlockMatrix result) {
      this.p = p;
      this.a = a;
      this.transposed = transposed;
      this.result = result;
      place = new int[result.rows];
      half = new float[MODES * a.high];
    }

    void fill(int from, int to) {
      int b = a.high;
      for (int g = from; g < to; g++) {
        for (int e = result.start[g]; e < result.start[g + 1]; e++) {
          place[result.column[e]] = e;
        }
        for (int t = transposed[0][g]; t < transposed[0][g + 1]; t++) {
          int r = transposed[1][t];
          int left = transposed[2][t] * b * MODES;
          for (int e = a.start[r]; e < a.start[r + 1]; e++) {
            left(left, e * b * b, b);
            int j = a.column[e];
            for (int q = p.start[j]; q < p.start[j + 1]; q++) {
              right(q * b * MODES, place[p.column[q]] * MODES * MODES, b);
            }
          }
        }
      }
    }

    private void left(int left, int at, int b) {
      for (int m = 0; m < MODES; m++) {
        for (int k = 0; k < b; k++) {
          float sum = 0;
          for (int i = 0; i < b; i++) {
            sum += p.value[left + i * MODES + m] * a.value[at + i * b + k];
          }
          half[m * b + k] = sum;
        }
      }
    }

    private void right(int from, int to, int b) {
      float[] out = result.value;
      float[] v = p.value;
      for (int m = 0; m < MODES; m++) {
        for (int k = 0; k < b; k++) {
          float h = half[m * b + k];
          int f = from + k * MODES;
          int o = to + m * MODES;
          for (int n = 0; n < MODES; n++) {
            out[o + n] += h * v[f + n];
          }
        }
      }
    }
  }
}
