package fettle.mechanics.solids;

import java.util.Arrays;

/** Stiffness times displacement over all cells, without a matrix, in double. */
final class DoubleOperator {

  private final Cells cells;
  private final Held held;
  private final double[] table;
  private final Rows rows;
  private final double[][] wideX;
  private final double[][] wideY;
  private final DoubleRowKernel[] kernels;
  private final int[] firstLayer;
  private final double[][][] edge;

  DoubleOperator(Cells cells, Held held, double[] table) {
    this.cells = cells;
    this.held = held;
    this.table = table;
    rows = cells.stretches;
    wideX = new double[3][rows.whole() ? rows.nodes : 0];
    wideY = new double[3][rows.whole() ? rows.nodes : 0];
    int parts = Math.min(Workers.parts(cells.nodes), cells.nz);
    kernels = new DoubleRowKernel[parts];
    firstLayer = new int[parts + 1];
    edge = new double[parts][3][];
    firstLayer[parts] = cells.nz;
    int layer = 0;
    for (int p = 0; p < parts; p++) {
      kernels[p] = new DoubleRowKernel();
      while (layer < cells.nz && rows.planeStart[layer] < (long) rows.nodes * p / parts) {
        layer++;
      }
      firstLayer[p] = layer;
      int size = layer > cells.nz ? 0 : rows.planeStart[layer + 1] - rows.planeStart[layer];
      for (int c = 0; c < 3; c++) {
        edge[p][c] = new double[p == 0 ? 0 : size];
      }
    }
  }

  /** Sets y to the force that holds the displacement x; zero where a node is held. */
  void apply(double[][] x, double[][] y) {
    if (rows.whole()) {
      for (int c = 0; c < 3; c++) {
        spread(x[c], wideX[c]);
      }
      run(wideX, wideY);
      for (int c = 0; c < 3; c++) {
        gather(wideY[c], y[c]);
      }
    } else {
      run(x, y);
    }
    addSprings(x, y);
    hold(y);
  }

  private void spread(double[] from, double[] to) {
    for (int n = 0; n < rows.place.length; n++) {
      to[rows.place[n]] = from[n];
    }
  }

  private void gather(double[] from, double[] to) {
    for (int n = 0; n < rows.place.length; n++) {
      to[n] = from[rows.place[n]];
    }
  }

  private void run(double[][] x, double[][] y) {
    Workers.run(kernels.length, part -> part(part, x, y));
    for (int p = 1; p < kernels.length; p++) {
      int start = rows.planeStart[firstLayer[p]];
      for (int c = 0; c < 3; c++) {
        double[] yc = y[c];
        double[] e = edge[p][c];
        for (int i = 0; i < e.length; i++) {
          yc[start + i] += e[i];
        }
      }
    }
  }

  /** Sets to zero what is held. */
  void hold(double[][] y) {
    for (int c = 0; c < 3; c++) {
      for (int n : held.fixed[c]) {
        y[c][n] = 0;
      }
    }
  }

  private void part(int p, double[][] x, double[][] y) {
    int from = firstLayer[p];
    int to = firstLayer[p + 1];
    int zeroFrom = rows.planeStart[p == 0 ? 0 : Math.min(from + 1, cells.nz + 1)];
    int zeroTo =
        rows.planeStart[p + 1 == kernels.length ? cells.nz + 1 : Math.min(to + 1, cells.nz + 1)];
    for (int c = 0; c < 3; c++) {
      if (zeroTo > zeroFrom) {
        Arrays.fill(y[c], zeroFrom, zeroTo, 0);
      }
      Arrays.fill(edge[p][c], 0);
    }
    int edgeStart = rows.planeStart[from];
    for (int k = from; k < to; k++) {
      boolean shared = p > 0 && k == from;
      double[][] low = shared ? edge[p] : y;
      int shift = shared ? edgeStart : 0;
      for (int row = rows.layerStart[k]; row < rows.layerStart[k + 1]; row++) {
        row(kernels[p], row, x, y, low, shift);
      }
    }
  }

  private void row(
      DoubleRowKernel kernel, int row, double[][] x, double[][] y, double[][] low, int shift) {
    kernel.add(
        x,
        y,
        low,
        shift,
        rows.length[row],
        rows.node,
        4 * row,
        table,
        rows.coefficient[row],
        rows.apart,
        rows.fill,
        rows.cell[row]);
  }

  private void addSprings(double[][] x, double[][] y) {
    for (int f = 0; f < held.faces(); f++) {
      for (int c = 0; c < 3; c++) {
        double k = held.faceSprings[3 * f + c];
        if (k == 0) {
          continue;
        }
        for (int a = 0; a < 4; a++) {
          double sum = 0;
          for (int b = 0; b < 4; b++) {
            sum += held.faceAreas[16 * f + 4 * a + b] * x[c][held.faceNodes[4 * f + b]];
          }
          y[c][held.faceNodes[4 * f + a]] += k * sum;
        }
      }
    }
  }
}
