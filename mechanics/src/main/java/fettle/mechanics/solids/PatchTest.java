package fettle.mechanics.solids;

import java.util.Random;

/**
 * The patch test on an uneven box mesh of the unit cube: the surface is moved by {@code u = e(2x +
 * y + z)/2} and so on, the inner nodes must follow exactly.
 *
 * @param normal normal stress, from the nodal forces on a face; those of its four neighbours cancel
 *     [MPa]
 * @param shear shear stress, likewise [MPa]
 * @param error greatest error of an inner node over the greatest displacement [-]
 */
record PatchTest(double normal, double shear, double error) {

  static PatchTest of(Elastic material, double strain) {
    double[] x = {0, 0.17, 0.61, 0.83, 1};
    double[] y = {0, 0.29, 0.4, 0.75, 1};
    double[] z = {0, 0.23, 0.55, 0.64, 1};
    Grid grid = Grid.of(x, y, z);
    Body cube = Body.of(new Shape.Box(0, 1, 0, 1, 0, 1));
    Cells cells = new Cells(grid, Cells.filled(grid, cube));
    double[] table = Coefficients.table(cells, material);
    double[][] place = cells.places();
    double[][] exact = new double[3][cells.nodes];
    int[][] surface = new int[3][];
    for (int c = 0; c < 3; c++) {
      for (int n = 0; n < cells.nodes; n++) {
        double sum = place[0][n] + place[1][n] + place[2][n];
        exact[c][n] = strain * (sum + place[c][n]) / 2;
      }
      surface[c] =
          java.util.stream.IntStream.range(0, cells.nodes)
              .filter(n -> onSurface(place, n))
              .toArray();
    }
    Held held = new Held(surface, new int[0], new double[0], new double[0]);
    Held free = new Held(new int[3][0], new int[0], new double[0], new double[0]);
    DoubleOperator loose = new DoubleOperator(cells, free, table);
    DoubleOperator bound = new DoubleOperator(cells, held, table);
    double[][] u = Holding.zeros(cells.nodes);
    Random random = new Random(3);
    for (int c = 0; c < 3; c++) {
      for (int n = 0; n < cells.nodes; n++) {
        u[c][n] = onSurface(place, n) ? exact[c][n] : strain * random.nextDouble();
      }
    }
    settle(loose, bound, u, cells.nodes);
    double error = 0;
    for (int c = 0; c < 3; c++) {
      for (int n = 0; n < cells.nodes; n++) {
        error = Math.max(error, Math.abs(u[c][n] - exact[c][n]) / (2 * strain));
      }
    }
    double[][] f = Holding.zeros(cells.nodes);
    loose.apply(u, f);
    double[] onFace = new double[3];
    for (int n = 0; n < cells.nodes; n++) {
      if (place[0][n] == 1) {
        for (int c = 0; c < 3; c++) {
          onFace[c] += f[c][n];
        }
      }
    }
    return new PatchTest(onFace[0], onFace[1], error);
  }

  private static boolean onSurface(double[][] place, int n) {
    for (double[] p : place) {
      if (p[n] == 0 || p[n] == 1) {
        return true;
      }
    }
    return false;
  }

  /** Plain conjugate gradients on the inner nodes. */
  private static void settle(DoubleOperator loose, DoubleOperator bound, double[][] u, int nodes) {
    double[][] r = Holding.zeros(nodes);
    loose.apply(u, r);
    bound.hold(r);
    double[][] p = Holding.zeros(nodes);
    double[][] ap = Holding.zeros(nodes);
    double old = 0;
    for (int i = 0; i < 400; i++) {
      double rr = 0;
      for (int c = 0; c < 3; c++) {
        for (int n = 0; n < nodes; n++) {
          rr += r[c][n] * r[c][n];
        }
      }
      if (rr < 1e-40) {
        return;
      }
      double pap = 0;
      for (int c = 0; c < 3; c++) {
        for (int n = 0; n < nodes; n++) {
          p[c][n] = -r[c][n] + (i == 0 ? 0 : rr / old * p[c][n]);
        }
      }
      bound.apply(p, ap);
      for (int c = 0; c < 3; c++) {
        for (int n = 0; n < nodes; n++) {
          pap += p[c][n] * ap[c][n];
        }
      }
      for (int c = 0; c < 3; c++) {
        for (int n = 0; n < nodes; n++) {
          u[c][n] += rr / pap * p[c][n];
          r[c][n] += rr / pap * ap[c][n];
        }
      }
      old = rr;
    }
  }
}
