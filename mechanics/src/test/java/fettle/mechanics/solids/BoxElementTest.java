package fettle.mechanics.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BoxElementTest {

  private static final Elastic IRON = new Elastic(110_000, 0.26);

  @Test
  void rigidMotionsNeedNoForce() {
    double[] h = {2, 3, 5};
    double[] k = BoxElement.stiffness(h, IRON);
    for (int motion = 0; motion < 6; motion++) {
      double[] u = new double[24];
      for (int n = 0; n < 8; n++) {
        double x = h[0] * (n & 1);
        double y = h[1] * (n >> 1 & 1);
        double z = h[2] * (n >> 2);
        double[][] turn = {{0, -z, y}, {z, 0, -x}, {-y, x, 0}};
        for (int c = 0; c < 3; c++) {
          u[3 * n + c] = motion < 3 ? (c == motion ? 1 : 0) : turn[motion - 3][c];
        }
      }
      for (int i = 0; i < 24; i++) {
        double f = 0;
        for (int j = 0; j < 24; j++) {
          f += k[24 * i + j] * u[j];
        }
        assertThat(f / k[0]).isCloseTo(0, within(1e-12));
      }
    }
  }

  @Test
  void symmetryLeavesNothingBetweenTheEightBlocks() {
    double[] k = BoxElement.stiffness(new double[] {2, 3, 5}, IRON);
    for (int c = 0; c < 3; c++) {
      for (int d = 0; d < 3; d++) {
        for (int m = 0; m < 8; m++) {
          for (int n = 0; n < 8; n++) {
            if ((m ^ 1 << c) != (n ^ 1 << d)) {
              assertThat(BoxElement.modal(k, c, m, d, n) / k[0]).isCloseTo(0, within(1e-13));
            }
          }
        }
      }
    }
  }

  @Test
  void oneCellBendsExactlyAndThePlainOneLocks() {
    double length = 10;
    double height = 2;
    double slope = 1e-3;
    double[] h = {length, height, 1};
    Elastic noPoisson = new Elastic(100_000, 0);
    double exact = noPoisson.modulus() * h[2] * Math.pow(height, 3) / 12 / length * slope * slope;
    double[] u = new double[24];
    for (int n = 0; n < 8; n++) {
      double sx = (n & 1) == 1 ? 1 : -1;
      double sy = (n >> 1 & 1) == 1 ? 1 : -1;
      u[3 * n] = -sx * sy * height / 2 * slope / 2;
    }
    assertThat(energy(BoxElement.stiffness(h, noPoisson), u))
        .isCloseTo(exact, within(1e-9 * exact));
    double ratio = energy(BoxElement.plainStiffness(h, noPoisson), u) / exact;
    double aspect = length / height;
    assertThat(ratio).isCloseTo(1 + aspect * aspect / 2, within(1e-9));
  }

  private static double energy(double[] k, double[] u) {
    double sum = 0;
    for (int i = 0; i < 24; i++) {
      for (int j = 0; j < 24; j++) {
        sum += u[i] * k[24 * i + j] * u[j];
      }
    }
    return sum;
  }

  private static final Body PIERCED =
      Body.of(new Shape.Box(0, 7, 0, 5, 0, 6)).cut(new Shape.Cylinder(2, 3, 2, 1.4, -1, 9));

  /** Where planes stand close, a whole layer of the grid is one stretch. */
  @Test
  void wholeLayersAgreeWithTheElementMatrices() {
    Grid grid =
        Grid.of(
            new double[] {0, 1, 2, 3, 3.5, 4, 6, 7},
            new double[] {0, 1, 2, 3, 5},
            new double[] {0, 2, 3, 6});
    Cells cells = new Cells(grid, Cells.filled(grid, PIERCED));
    assertThat(cells.stretches.whole()).isTrue();
    agrees(cells);
  }

  @Test
  void longRowsAgreeWithTheElementMatrices() {
    double[] x = new double[261];
    java.util.Arrays.setAll(x, i -> i * 7.0 / 260);
    Grid grid = Grid.of(x, new double[] {0, 2, 5}, new double[] {0, 1, 6});
    Cells cells = new Cells(grid, Cells.filled(grid, PIERCED));
    assertThat(cells.stretches.whole()).isFalse();
    agrees(cells);
  }

  private static void agrees(Cells cells) {
    Held free = new Held(new int[3][0], new int[0], new double[0], new double[0]);
    double[] table = Coefficients.table(cells, IRON);
    double[][] u = Holding.zeros(cells.nodes);
    Random random = new Random(1);
    float[][] narrow = new float[3][cells.nodes];
    for (int c = 0; c < 3; c++) {
      for (int i = 0; i < cells.nodes; i++) {
        u[c][i] = random.nextDouble();
        narrow[c][i] = (float) u[c][i];
      }
    }
    double[][] f = Holding.zeros(cells.nodes);
    new DoubleOperator(cells, free, table).apply(u, f);
    float[][] single = new float[3][cells.nodes];
    new FloatOperator(cells, free, Coefficients.single(table)).apply(narrow, single);
    double[][] slow = slow(cells, u);
    double size = IRON.modulus() * 5;
    for (int c = 0; c < 3; c++) {
      for (int i = 0; i < cells.nodes; i++) {
        assertThat(f[c][i]).isCloseTo(slow[c][i], within(1e-12 * size));
        assertThat((double) single[c][i]).isCloseTo(slow[c][i], within(1e-5 * size));
      }
    }
  }

  private static double[][] slow(Cells cells, double[][] u) {
    double[][] f = Holding.zeros(cells.nodes);
    for (int cell = 0; cell < cells.fill.length; cell++) {
      int i = cell % cells.nx;
      int j = cell / cells.nx % cells.ny;
      int k = cell / cells.nx / cells.ny;
      double[] matrix = BoxElement.stiffness(cells.sizes(i, j, k), IRON);
      for (int d = 0; d < 24 && cells.fill[cell] > 0; d++) {
        for (int e = 0; e < 24; e++) {
          int to = node(cells, i, j, k, d / 3);
          int from = node(cells, i, j, k, e / 3);
          f[d % 3][to] += cells.fill[cell] * matrix[24 * d + e] * u[e % 3][from];
        }
      }
    }
    return f;
  }

  private static int node(Cells cells, int i, int j, int k, int corner) {
    return cells.node[cells.nodeIndex(i + (corner & 1), j + (corner >> 1 & 1), k + (corner >> 2))];
  }
}
