package fettle.mechanics.solids;

/**
 * Force of one row of cells on its nodes. Works by sums and differences over the corners, in short
 * loops over whole rows so that the compiler turns each into vector instructions. One instance
 * serves one thread.
 */
final class DoubleRowKernel {

  private final double[][] b = new double[12][Cells.LONGEST + 1];
  private final double[][] q = new double[24][Cells.LONGEST + 1];
  private final double[] s = new double[Cells.LONGEST + 1];
  private final double[] u = new double[Cells.LONGEST + 1];
  private final double[] v = new double[Cells.LONGEST + 1];
  private final double[] w = new double[Cells.LONGEST + 1];

  /** Adds the forces of n cells; nodes start at o0..o3 in x, low rows go to lowY less shift. */
  void add(
      double[][] x,
      double[][] y,
      double[][] lowY,
      int shift,
      int n,
      int[] o,
      int at,
      double[] coefficient,
      int first,
      int width,
      float[] fill,
      int cell) {
    for (int c = 0; c < 3; c++) {
      across(x[c], o[at], o[at + 1], o[at + 2], o[at + 3], n + 1, c);
      for (int yz = 0; yz < 4; yz++) {
        along(b[4 * c + yz], q[8 * c + 2 * yz], q[8 * c + 2 * yz + 1], n);
      }
    }
    for (int r = 0; r < 8; r++) {
      block(r, n, coefficient, first + 6 * r * width, width);
    }
    if (cell >= 0) {
      for (int m = 0; m < 24; m++) {
        scale(q[m], fill, cell, n);
      }
    }
    for (int c = 0; c < 3; c++) {
      for (int yz = 0; yz < 4; yz++) {
        back(b[4 * c + yz], q[8 * c + 2 * yz], q[8 * c + 2 * yz + 1], n);
      }
      spread(c, n + 1);
      plus(lowY[c], o[at] - shift, s, n + 1);
      plus(lowY[c], o[at + 1] - shift, u, n + 1);
      plus(y[c], o[at + 2], v, n + 1);
      plus(y[c], o[at + 3], w, n + 1);
    }
  }

  private void across(double[] x, int o0, int o1, int o2, int o3, int n, int c) {
    System.arraycopy(x, o0, s, 0, n);
    System.arraycopy(x, o1, u, 0, n);
    System.arraycopy(x, o2, v, 0, n);
    System.arraycopy(x, o3, w, 0, n);
    sums(s, u, v, w, b[4 * c], b[4 * c + 1], b[4 * c + 2], b[4 * c + 3], n);
  }

  private static void sums(
      double[] s,
      double[] u,
      double[] v,
      double[] w,
      double[] ss,
      double[] as,
      double[] sa,
      double[] aa,
      int n) {
    for (int i = 0; i < n; i++) {
      double p = s[i] + u[i];
      double m = u[i] - s[i];
      double pp = v[i] + w[i];
      double mm = w[i] - v[i];
      ss[i] = pp + p;
      as[i] = mm + m;
      sa[i] = pp - p;
      aa[i] = mm - m;
    }
  }

  private void along(double[] in, double[] sum, double[] difference, int n) {
    System.arraycopy(in, 1, s, 0, n);
    halves(in, s, sum, difference, n);
  }

  private static void halves(double[] a, double[] next, double[] sum, double[] difference, int n) {
    for (int i = 0; i < n; i++) {
      sum[i] = next[i] + a[i];
      difference[i] = next[i] - a[i];
    }
  }

  private void block(int r, int n, double[] coefficient, int first, int width) {
    double[] x = q[r ^ 1];
    double[] y = q[8 + (r ^ 2)];
    double[] z = q[16 + (r ^ 4)];
    coupled(x, y, z, coefficient, first, width, n);
  }

  private static void coupled(
      double[] x, double[] y, double[] z, double[] k, int first, int width, int n) {
    int xx = first;
    int yy = xx + width;
    int zz = yy + width;
    int xy = zz + width;
    int xz = xy + width;
    int yz = xz + width;
    for (int i = 0; i < n; i++) {
      double a = x[i];
      double b = y[i];
      double c = z[i];
      x[i] = k[xx + i] * a + k[xy + i] * b + k[xz + i] * c;
      y[i] = k[xy + i] * a + k[yy + i] * b + k[yz + i] * c;
      z[i] = k[xz + i] * a + k[yz + i] * b + k[zz + i] * c;
    }
  }

  private static void scale(double[] a, float[] fill, int cell, int n) {
    for (int i = 0; i < n; i++) {
      a[i] *= fill[cell + i];
    }
  }

  private void back(double[] out, double[] sum, double[] difference, int n) {
    halves(difference, sum, s, out, n);
    System.arraycopy(s, 0, u, 1, n);
    u[0] = 0;
    out[n] = 0;
    plus(out, 0, u, n + 1);
  }

  private void spread(int c, int n) {
    outward(b[4 * c], b[4 * c + 1], b[4 * c + 2], b[4 * c + 3], s, u, v, w, n);
  }

  private static void outward(
      double[] ss,
      double[] as,
      double[] sa,
      double[] aa,
      double[] s,
      double[] u,
      double[] v,
      double[] w,
      int n) {
    for (int i = 0; i < n; i++) {
      double p = ss[i] - sa[i];
      double m = as[i] - aa[i];
      double pp = ss[i] + sa[i];
      double mm = as[i] + aa[i];
      s[i] = p - m;
      u[i] = p + m;
      v[i] = pp - mm;
      w[i] = pp + mm;
    }
  }

  private static void plus(double[] y, int at, double[] a, int n) {
    for (int i = 0; i < n; i++) {
      y[at + i] += a[i];
    }
  }
}
