package fettle.mechanics.solids;

import java.util.Arrays;

/**
 * A coarser level by smoothed aggregation: neighbouring nodes move together as small rigid bodies,
 * then one step of Jacobi smooths the seams. No strength threshold: every neighbour counts.
 */
final class Aggregation {

  private static final int MODES = 6;

  final BlockMatrix prolongation;
  final BlockMatrix coarse;

  /** Near-null vectors of the coarse level, six for each coarse unknown, by rows. */
  final double[] nearNull;

  Aggregation(BlockMatrix a, double[] nearNull, double greatest) {
    int[] aggregate = aggregates(a);
    int count = 0;
    for (int g : aggregate) {
      count = Math.max(count, g + 1);
    }
    this.nearNull = new double[count * MODES * MODES];
    float[] tentative = tentative(a, aggregate, count, nearNull, this.nearNull);
    prolongation = smoothed(a, aggregate, count, tentative, greatest);
    coarse = Triple.product(prolongation, a, count);
  }

  private static int[] aggregates(BlockMatrix a) {
    int[] g = new int[a.rows];
    Arrays.fill(g, -1);
    int count = 0;
    for (int r = 0; r < a.rows; r++) {
      boolean free = true;
      for (int e = a.start[r]; e < a.start[r + 1] && free; e++) {
        free = g[a.column[e]] < 0;
      }
      if (free) {
        for (int e = a.start[r]; e < a.start[r + 1]; e++) {
          g[a.column[e]] = count;
        }
        count++;
      }
    }
    int[] size = new int[count];
    for (int v : g) {
      if (v >= 0) {
        size[v]++;
      }
    }
    int[] joined = g.clone();
    for (int r = 0; r < a.rows; r++) {
      if (g[r] < 0) {
        int best = -1;
        for (int e = a.start[r]; e < a.start[r + 1]; e++) {
          int v = g[a.column[e]];
          if (v >= 0 && (best < 0 || size[v] < size[best])) {
            best = v;
          }
        }
        joined[r] = best;
      }
    }
    for (int r = 0; r < a.rows; r++) {
      if (joined[r] < 0) {
        joined[r] = count++;
      }
    }
    return joined;
  }

  /** Orthonormal local rigid modes by Gram and Schmidt; dependent ones are dropped. */
  private static float[] tentative(
      BlockMatrix a, int[] aggregate, int count, double[] fine, double[] coarse) {
    int b = a.high;
    float[] p = new float[a.rows * b * MODES];
    int[] start = new int[count + 1];
    for (int g : aggregate) {
      start[g + 1]++;
    }
    for (int g = 0; g < count; g++) {
      start[g + 1] += start[g];
    }
    int[] member = new int[a.rows];
    int[] next = start.clone();
    for (int r = 0; r < a.rows; r++) {
      member[next[aggregate[r]]++] = r;
    }
    for (int g = 0; g < count; g++) {
      int n = (start[g + 1] - start[g]) * b;
      double[][] q = new double[MODES][n];
      for (int s = start[g]; s < start[g + 1]; s++) {
        for (int i = 0; i < b; i++) {
          for (int m = 0; m < MODES; m++) {
            q[m][(s - start[g]) * b + i] = fine[(member[s] * b + i) * MODES + m];
          }
        }
      }
      orthonormal(q, coarse, g);
      for (int s = start[g]; s < start[g + 1]; s++) {
        for (int i = 0; i < b; i++) {
          for (int m = 0; m < MODES; m++) {
            p[(member[s] * b + i) * MODES + m] = (float) q[m][(s - start[g]) * b + i];
          }
        }
      }
    }
    return p;
  }

  private static void orthonormal(double[][] q, double[] coarse, int g) {
    for (int m = 0; m < MODES; m++) {
      double before = Math.sqrt(dot(q[m], q[m]));
      for (int k = 0; k < m; k++) {
        double f = dot(q[k], q[m]);
        coarse[(g * MODES + k) * MODES + m] = f;
        for (int i = 0; i < q[m].length; i++) {
          q[m][i] -= f * q[k][i];
        }
      }
      double norm = Math.sqrt(dot(q[m], q[m]));
      boolean keep = norm > 1e-6 * before && norm > 0;
      coarse[(g * MODES + m) * MODES + m] = keep ? norm : 0;
      for (int i = 0; i < q[m].length; i++) {
        q[m][i] = keep ? q[m][i] / norm : 0;
      }
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static BlockMatrix smoothed(
      BlockMatrix a, int[] aggregate, int count, float[] tentative, double greatest) {
    int b = a.high;
    float[] inverse = a.inverseDiagonal();
    float omega = (float) (4 / (3 * 1.1 * greatest));
    int[] start = new int[a.rows + 1];
    int[] columns = new int[a.rows * 6];
    int[] place = new int[count];
    Arrays.fill(place, -1);
    int total = 0;
    for (int r = 0; r < a.rows; r++) {
      int from = total;
      for (int e = a.start[r]; e < a.start[r + 1]; e++) {
        int g = aggregate[a.column[e]];
        if (place[g] < from) {
          place[g] = total;
          if (total == columns.length) {
            columns = Arrays.copyOf(columns, total + total / 2 + 64);
          }
          columns[total++] = g;
        }
      }
      start[r + 1] = total;
    }
    float[] value = new float[Math.multiplyExact(total, b * MODES)];
    Arrays.fill(place, -1);
    for (int r = 0; r < a.rows; r++) {
      for (int e = start[r]; e < start[r + 1]; e++) {
        place[columns[e]] = e;
      }
      for (int e = a.start[r]; e < a.start[r + 1]; e++) {
        int j = a.column[e];
        int to = place[aggregate[j]] * b * MODES;
        subtract(a.value, e * b * b, tentative, j * b * MODES, value, to, b);
      }
      for (int e = start[r]; e < start[r + 1]; e++) {
        for (int i = 0; i < b; i++) {
          float f = omega * inverse[r * b + i];
          for (int m = 0; m < MODES; m++) {
            value[(e * b + i) * MODES + m] *= f;
          }
        }
      }
      int own = place[aggregate[r]] * b * MODES;
      for (int i = 0; i < b * MODES; i++) {
        value[own + i] += tentative[r * b * MODES + i];
      }
    }
    return new BlockMatrix(a.rows, b, MODES, start, Arrays.copyOf(columns, total), value);
  }

  private static void subtract(float[] a, int at, float[] p, int from, float[] out, int to, int b) {
    for (int i = 0; i < b; i++) {
      for (int k = 0; k < b; k++) {
        float v = a[at + i * b + k];
        for (int m = 0; m < MODES; m++) {
          out[to + i * MODES + m] -= v * p[from + k * MODES + m];
        }
      }
    }
  }
}
