package fettle.mechanics.solids;

/**
 * Force of one row of cells on its nodes. Works by sums and differences over the corners, in short
 * loops over whole rows so that the compiler turns each into vector instructions. Coefficients are
 * those of one kind of cell, or stand for every cell of the row at a given distance. One instance
 * serves one thread.
 */
final class FloatRowKernel {

  private final float[][] b = new float[12][Cells.LONGEST + 1];
  private final float[][] q = new float[24][Cells.LONGEST + 1];
  private final float[] s = new float[Cells.LONGEST + 1];
  private final float[] u = new float[Cells.LONGEST + 1];
  private final float[] v = new float[Cells.LONGEST + 1];
  private final float[] w = new float[Cells.LONGEST + 1];
  private final float[] t = new float[Cells.LONGEST + 1];
  private final float[] r = new float[Cells.LONGEST + 1];

  /** Adds the forces of n cells; nodes start at o0..o3 in x, low rows go to lowY less shift. */
  void add(
      float[][] x,
      float[][] y,
      float[][] lowY,
      int shift,
      int n,
      int[] o,
      int at,
      float[] coefficient,
      int first,
      int apart,
      float[] fill,
      int cell) {
    for (int c = 0; c < 3; c++) {
      across(x[c], o[at], o[at + 1], o[at + 2], o[at + 3], n + 1, c);
      for (int yz = 0; yz < 4; yz++) {
        along(b[4 * c + yz], q[8 * c + 2 * yz], q[8 * c + 2 * yz + 1], n);
      }
    }
    for (int r = 0; r < 8; r++) {
      if (apart == 0) {
        block(r, n, coefficient, first + 6 * r);
      } else {
        blockEach(r, n, coefficient, first + 6 * r * apart, apart);
      }
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

  private void across(float[] x, int o0, int o1, int o2, int o3, int n, int c) {
    System.arraycopy(x, o0, s, 0, n);
    System.arraycopy(x, o1, u, 0, n);
    System.arraycopy(x, o2, v, 0, n);
    System.arraycopy(x, o3, w, 0, n);
    sums(s, u, v, w, b[4 * c], b[4 * c + 1], b[4 * c + 2], b[4 * c + 3], n);
  }

  private static void sums(
      float[] s,
      float[] u,
      float[] v,
      float[] w,
      float[] ss,
      float[] as,
      float[] sa,
      float[] aa,
      int n) {
    halves(s, u, aa, ss, n);
    halves(v, w, as, sa, n);
    System.arraycopy(aa, 0, s, 0, n);
    System.arraycopy(as, 0, v, 0, n);
    System.arraycopy(ss, 0, u, 0, n);
    System.arraycopy(sa, 0, w, 0, n);
    halves(s, v, ss, sa, n);
    halves(u, w, as, aa, n);
  }

  private void along(float[] in, float[] sum, float[] difference, int n) {
    System.arraycopy(in, 1, s, 0, n);
    halves(in, s, sum, difference, n);
  }

  private static void halves(float[] a, float[] next, float[] sum, float[] difference, int n) {
    for (int i = 0; i < n; i++) {
      sum[i] = next[i] + a[i];
      difference[i] = next[i] - a[i];
    }
  }

  /** A block couples all three components (0 and 7), or two, the third alone or without force. */
  private void block(int r, int n, float[] k, int at) {
    float[] x = q[r ^ 1];
    float[] y = q[8 + (r ^ 2)];
    float[] z = q[16 + (r ^ 4)];
    switch (r) {
      case 0, 7 -> {
        System.arraycopy(x, 0, s, 0, n);
        System.arraycopy(y, 0, u, 0, n);
        System.arraycopy(z, 0, v, 0, n);
        three(s, u, v, x, k[at], k[at + 3], k[at + 4], n);
        three(s, u, v, y, k[at + 3], k[at + 1], k[at + 5], n);
        three(s, u, v, z, k[at + 4], k[at + 5], k[at + 2], n);
      }
      case 1 -> pair(y, z, x, k[at + 1], k[at + 5], k[at + 2], k[at], n);
      case 2 -> pair(x, z, y, k[at], k[at + 4], k[at + 2], k[at + 1], n);
      case 3 -> pair(x, y, z, k[at], k[at + 3], k[at + 1], k[at + 2], n);
      case 4 -> pair(x, y, z, k[at], k[at + 3], k[at + 1], k[at + 2], n);
      case 5 -> pair(x, z, y, k[at], k[at + 4], k[at + 2], k[at + 1], n);
      default -> pair(y, z, x, k[at + 1], k[at + 5], k[at + 2], k[at], n);
    }
  }

  private static void three(
      float[] a, float[] b, float[] c, float[] out, float ka, float kb, float kc, int n) {
    for (int i = 0; i < n; i++) {
      out[i] = ka * a[i] + kb * b[i] + kc * c[i];
    }
  }

  private void pair(
      float[] a, float[] b, float[] alone, float aa, float ab, float bb, float single, int n) {
    System.arraycopy(a, 0, s, 0, n);
    System.arraycopy(b, 0, u, 0, n);
    System.arraycopy(alone, 0, v, 0, n);
    two(s, u, a, aa, ab, n);
    two(s, u, b, ab, bb, n);
    one(v, alone, single, n);
  }

  private static void two(float[] a, float[] b, float[] out, float ka, float kb, int n) {
    for (int i = 0; i < n; i++) {
      out[i] = ka * a[i] + kb * b[i];
    }
  }

  private static void one(float[] a, float[] out, float k, int n) {
    for (int i = 0; i < n; i++) {
      out[i] = k * a[i];
    }
  }

  /** As block, with coefficients for every cell. */
  private void blockEach(int r, int n, float[] k, int at, int apart) {
    float[] x = q[r ^ 1];
    float[] y = q[8 + (r ^ 2)];
    float[] z = q[16 + (r ^ 4)];
    int xx = at;
    int yy = at + apart;
    int zz = at + 2 * apart;
    int xy = at + 3 * apart;
    int xz = at + 4 * apart;
    int yz = at + 5 * apart;
    switch (r) {
      case 0, 7 -> {
        System.arraycopy(x, 0, s, 0, n);
        System.arraycopy(y, 0, u, 0, n);
        System.arraycopy(z, 0, v, 0, n);
        first(s, x, k, xx, n);
        more(u, x, k, xy, n);
        more(v, x, k, xz, n);
        first(s, y, k, xy, n);
        more(u, y, k, yy, n);
        more(v, y, k, yz, n);
        first(s, z, k, xz, n);
        more(u, z, k, yz, n);
        more(v, z, k, zz, n);
      }
      case 1, 6 -> pairEach(y, z, x, k, yy, yz, zz, xx, n);
      case 2, 5 -> pairEach(x, z, y, k, xx, xz, zz, yy, n);
      default -> pairEach(x, y, z, k, xx, xy, yy, zz, n);
    }
  }

  private void pairEach(
      float[] a, float[] b, float[] alone, float[] k, int aa, int ab, int bb, int single, int n) {
    System.arraycopy(a, 0, s, 0, n);
    System.arraycopy(b, 0, u, 0, n);
    System.arraycopy(alone, 0, v, 0, n);
    first(s, a, k, aa, n);
    more(u, a, k, ab, n);
    first(s, b, k, ab, n);
    more(u, b, k, bb, n);
    first(v, alone, k, single, n);
  }

  private static void first(float[] a, float[] out, float[] k, int at, int n) {
    for (int i = 0; i < n; i++) {
      out[i] = k[at + i] * a[i];
    }
  }

  private static void more(float[] a, float[] out, float[] k, int at, int n) {
    for (int i = 0; i < n; i++) {
      out[i] += k[at + i] * a[i];
    }
  }

  private static void scale(float[] a, float[] fill, int cell, int n) {
    for (int i = 0; i < n; i++) {
      a[i] *= fill[cell + i];
    }
  }

  private void back(float[] out, float[] sum, float[] difference, int n) {
    halves(difference, sum, s, out, n);
    System.arraycopy(s, 0, u, 1, n);
    u[0] = 0;
    out[n] = 0;
    plus(out, 0, u, n + 1);
  }

  private void spread(int c, int n) {
    outward(b[4 * c], b[4 * c + 1], b[4 * c + 2], b[4 * c + 3], n);
  }

  private void outward(float[] ss, float[] as, float[] sa, float[] aa, int n) {
    halves(sa, ss, s, u, n);
    halves(aa, as, v, w, n);
    System.arraycopy(s, 0, ss, 0, n);
    System.arraycopy(u, 0, sa, 0, n);
    System.arraycopy(v, 0, as, 0, n);
    System.arraycopy(w, 0, aa, 0, n);
    halves(aa, sa, u, s, n);
    halves(as, ss, w, v, n);
  }

  private void plus(float[] y, int at, float[] a, int n) {
    System.arraycopy(y, at, t, 0, n);
    sum(t, a, r, n);
    System.arraycopy(r, 0, y, at, n);
  }

  private static void sum(float[] a, float[] b, float[] out, int n) {
    for (int i = 0; i < n; i++) {
      out[i] = a[i] + b[i];
    }
  }
}
