package fettle.mechanics.solids;

/** Block coefficients of every kind of cell, laid out row by row for the row kernels. */
final class Coefficients {

  private Coefficients() {}

  /** Returns 48 runs of nx numbers for each kind of row. */
  static double[] table(Cells cells, Elastic material) {
    int nx = cells.nx;
    int types = cells.kinds[1].length * cells.kinds[2].length;
    double[] table = new double[Math.multiplyExact(types, 48 * nx)];
    boolean[] used = new boolean[types];
    for (int row = 0; row < cells.rows; row++) {
      used[cells.rowType[row]] = true;
    }
    for (int type = 0; type < types; type++) {
      if (!used[type]) {
        continue;
      }
      double hy = cells.kinds[1][type % cells.kinds[1].length];
      double hz = cells.kinds[2][type / cells.kinds[1].length];
      double[][] blocks = new double[cells.kinds[0].length][];
      for (int kx = 0; kx < blocks.length; kx++) {
        double[] h = {cells.kinds[0][kx], hy, hz};
        blocks[kx] = BoxElement.blocks(BoxElement.stiffness(h, material));
      }
      for (int e = 0; e < 48; e++) {
        for (int i = 0; i < nx; i++) {
          table[(type * 48 + e) * nx + i] = blocks[cells.kind[0][i]][e];
        }
      }
    }
    return table;
  }

  static float[] single(double[] table) {
    float[] f = new float[table.length];
    for (int i = 0; i < f.length; i++) {
      f[i] = (float) table[i];
    }
    return f;
  }
}
