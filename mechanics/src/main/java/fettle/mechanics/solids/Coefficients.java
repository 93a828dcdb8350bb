package fettle.mechanics.solids;

/** Block coefficients of every kind of cell, for the row kernels. */
final class Coefficients {

  private Coefficients() {}

  /**
   * Returns 48 numbers for each kind of row that occurs; for stretches that are whole layers, each
   * number for every cell of a layer.
   */
  static double[] table(Cells cells, Elastic material) {
    double[] kinds = kinds(cells, material);
    if (!cells.stretches.whole()) {
      return kinds;
    }
    int layer = cells.stretches.apart;
    int nx = cells.kinds[0].length;
    int ny = cells.kinds[1].length;
    double[] table = new double[Math.multiplyExact(48 * cells.kinds[2].length, layer)];
    for (int z = 0; z < cells.kinds[2].length; z++) {
      for (int e = 0; e < 48; e++) {
        for (int j = 0; j < cells.ny; j++) {
          int row = nx * (cells.kind[1][j] + ny * z);
          int at = (48 * z + e) * layer + j * (cells.nx + 1);
          for (int i = 0; i < cells.nx; i++) {
            table[at + i] = kinds[48 * (row + cells.kind[0][i]) + e];
          }
        }
      }
    }
    return table;
  }

  private static double[] kinds(Cells cells, Elastic material) {
    int nx = cells.kinds[0].length;
    int ny = cells.kinds[1].length;
    int types = Math.multiplyExact(nx * ny, cells.kinds[2].length);
    double[] table = new double[Math.multiplyExact(types, 48)];
    boolean[] done = new boolean[types];
    for (int row = 0; row < cells.rows; row++) {
      int type = cells.rowType[row];
      if (!done[type]) {
        done[type] = true;
        double[] h = {
          cells.kinds[0][type % nx], cells.kinds[1][type / nx % ny], cells.kinds[2][type / nx / ny]
        };
        double[] blocks = BoxElement.blocks(BoxElement.stiffness(h, material));
        System.arraycopy(blocks, 0, table, 48 * type, 48);
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
