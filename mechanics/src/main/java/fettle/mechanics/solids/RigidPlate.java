package fettle.mechanics.solids;

/** A rigid plate bonded to nodes of a body. */
final class RigidPlate {

  private RigidPlate() {}

  /** Returns the plate's 6 by 6 stiffness; the bonded nodes must not be held otherwise. */
  static double[][] stiffness(
      Cells cells, Held held, Held bonded, ElasticModel free, double[] middle) {
    int[][] both = new int[3][];
    for (int c = 0; c < 3; c++) {
      both[c] =
          java.util.stream.IntStream.concat(
                  java.util.Arrays.stream(held.fixed[c]), java.util.Arrays.stream(bonded.fixed[c]))
              .distinct()
              .toArray();
    }
    ElasticModel clamped = free.heldBy(both);
    double[][] place = cells.places();
    double[][][] shape = new double[6][][];
    double[][][] force = new double[6][][];
    for (int m = 0; m < 6; m++) {
      double[][] u = Holding.zeros(cells.nodes);
      for (int c = 0; c < 3; c++) {
        for (int n : bonded.fixed[c]) {
          u[c][n] = motion(m, c, place, n, middle);
        }
      }
      double[][] f = Holding.zeros(cells.nodes);
      free.operator().apply(u, f);
      for (int c = 0; c < 3; c++) {
        for (int i = 0; i < cells.nodes; i++) {
          f[c][i] = -f[c][i];
        }
      }
      clamped.operator().hold(f);
      double[][] rest = clamped.displacement(f);
      for (int c = 0; c < 3; c++) {
        for (int i = 0; i < cells.nodes; i++) {
          rest[c][i] += u[c][i];
        }
      }
      double[][] all = Holding.zeros(cells.nodes);
      free.operator().apply(rest, all);
      shape[m] = u;
      force[m] = all;
    }
    double[][] k = new double[6][6];
    for (int a = 0; a < 6; a++) {
      for (int b = 0; b < 6; b++) {
        k[a][b] = free.work(force[b], shape[a]);
      }
    }
    return k;
  }

  private static double motion(int m, int c, double[][] place, int n, double[] middle) {
    if (m < 3) {
      return m == c ? 1 : 0;
    }
    int axis = m - 3;
    if (c == axis) {
      return 0;
    }
    int other = 3 - axis - c;
    double r = place[other][n] - middle[other];
    return (axis + 1) % 3 == other ? r : -r;
  }
}
