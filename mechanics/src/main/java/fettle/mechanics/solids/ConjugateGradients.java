package fettle.mechanics.solids;

/** Solves for displacements in double, preconditioned by the multigrid cycle in float. */
final class ConjugateGradients {

  private static final int MOST = 3000;

  private final Cells cells;
  private final DoubleOperator operator;
  private final Multigrid multigrid;
  private final double[][] r;
  private final double[][] p;
  private final double[][] ap;
  private final float[][] narrow;
  private final float[][] z;
  private final int parts;
  private int iterations;
  private double residual;

  ConjugateGradients(Cells cells, DoubleOperator operator, Multigrid multigrid) {
    this.cells = cells;
    this.operator = operator;
    this.multigrid = multigrid;
    parts = Workers.parts(cells.nodes);
    r = new double[3][cells.nodes];
    p = new double[3][cells.nodes];
    ap = new double[3][cells.nodes];
    narrow = new float[3][cells.nodes];
    z = new float[3][cells.nodes];
  }

  int iterations() {
    return iterations;
  }

  double residual() {
    return residual;
  }

  /**
   * Improves x until the true residual is below a share of the load.
   *
   * @param f load; zero where a node is held [N]
   * @param x start and result [mm]
   * @param tolerance residual over load [-]
   */
  void solve(double[][] f, double[][] x, double tolerance) {
    double norm = Math.sqrt(dot(f, f));
    iterations = 0;
    residual = 0;
    if (norm == 0) {
      for (double[] c : x) {
        java.util.Arrays.fill(c, 0);
      }
      return;
    }
    for (int restart = 0; restart < 4; restart++) {
      operator.apply(x, r);
      combine(f, -1, r);
      residual = Math.sqrt(dot(r, r)) / norm;
      if (residual <= tolerance || iterations >= MOST) {
        break;
      }
      run(x, norm, 0.7 * tolerance);
    }
    if (!(residual <= 10 * tolerance)) {
      throw new IllegalStateException(
          "the elastic solution did not settle (residual "
              + residual
              + " after "
              + iterations
              + " iterations): the part is not held in every direction, or a step of the grid is"
              + " far too thin");
    }
  }

  private void run(double[][] x, double norm, double tolerance) {
    double old = 0;
    while (iterations < MOST) {
      float scale = (float) (1 / Math.sqrt(dot(r, r)));
      each((c, from, to) -> shrink(r[c], scale, narrow[c], from, to));
      multigrid.apply(narrow, z);
      double rz = dotFloat(r, z) / scale;
      double beta = old == 0 ? 0 : rz / old;
      old = rz;
      double grow = 1.0 / scale;
      each((c, from, to) -> direction(z[c], grow, beta, p[c], from, to));
      operator.apply(p, ap);
      double pap = dot(p, ap);
      if (!(pap > 0) || !(rz > 0)) {
        return;
      }
      double alpha = rz / pap;
      each((c, from, to) -> advance(alpha, p[c], ap[c], x[c], r[c], from, to));
      iterations++;
      if (Math.sqrt(dot(r, r)) / norm <= tolerance) {
        return;
      }
    }
  }

  private static void shrink(double[] r, float scale, float[] n, int from, int to) {
    for (int i = from; i < to; i++) {
      n[i] = (float) (r[i] * scale);
    }
  }

  private static void direction(float[] z, double grow, double beta, double[] p, int from, int to) {
    for (int i = from; i < to; i++) {
      p[i] = grow * z[i] + beta * p[i];
    }
  }

  private static void advance(
      double alpha, double[] p, double[] ap, double[] x, double[] r, int from, int to) {
    for (int i = from; i < to; i++) {
      x[i] += alpha * p[i];
      r[i] -= alpha * ap[i];
    }
  }

  private void combine(double[][] f, double factor, double[][] to) {
    for (int c = 0; c < 3; c++) {
      for (int i = 0; i < cells.nodes; i++) {
        to[c][i] = f[c][i] + factor * to[c][i];
      }
    }
  }

  double dot(double[][] a, double[][] b) {
    double[] sums = new double[parts];
    Workers.run(
        parts,
        part -> {
          int from = (int) ((long) cells.nodes * part / parts);
          int to = (int) ((long) cells.nodes * (part + 1) / parts);
          double sum = 0;
          for (int c = 0; c < 3; c++) {
            sum += product(a[c], b[c], from, to);
          }
          sums[part] = sum;
        });
    double sum = 0;
    for (double s : sums) {
      sum += s;
    }
    return sum;
  }

  private static double product(double[] a, double[] b, int from, int to) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int i = from;
    for (; i + 3 < to; i += 4) {
      s0 += a[i] * b[i];
      s1 += a[i + 1] * b[i + 1];
      s2 += a[i + 2] * b[i + 2];
      s3 += a[i + 3] * b[i + 3];
    }
    for (; i < to; i++) {
      s0 += a[i] * b[i];
    }
    return s0 + s1 + (s2 + s3);
  }

  private double dotFloat(double[][] a, float[][] b) {
    double[] sums = new double[parts];
    Workers.run(
        parts,
        part -> {
          int from = (int) ((long) cells.nodes * part / parts);
          int to = (int) ((long) cells.nodes * (part + 1) / parts);
          double sum = 0;
          for (int c = 0; c < 3; c++) {
            for (int i = from; i < to; i++) {
              sum += a[c][i] * b[c][i];
            }
          }
          sums[part] = sum;
        });
    double sum = 0;
    for (double s : sums) {
      sum += s;
    }
    return sum;
  }

  /** Work on a range of one component. */
  private interface Range {
    void run(int component, int from, int to);
  }

  private void each(Range range) {
    Workers.run(
        parts,
        part -> {
          int from = (int) ((long) cells.nodes * part / parts);
          int to = (int) ((long) cells.nodes * (part + 1) / parts);
          for (int c = 0; c < 3; c++) {
            range.run(c, from, to);
          }
        });
  }
}
