package fettle.mechanics.solids;

import java.util.Arrays;

/** Stiffness times displacement over all cells, without a matrix, in float. */
final class FloatOperator {

  private final Cells cells;
  private final Held held;
  private final float[] table;
  private final FloatRowKernel[] kernels;
  private final int[] firstLayer;
  private final float[][][] edge;

  FloatOperator(Cells cells, Held held, float[] table) {
    this.cells = cells;
    this.held = held;
    this.table = table;
    int parts = Math.min(Workers.parts(cells.nodes), cells.nz);
    kernels = new FloatRowKernel[parts];
    firstLayer = new int[parts + 1];
    edge = new float[parts][3][];
    firstLayer[parts] = cells.nz;
    int layer = 0;
    for (int p = 0; p < parts; p++) {
      kernels[p] = new FloatRowKernel();
      while (layer < cells.nz && cells.planeStart[layer] < (long) cells.nodes * p / parts) {
        layer++;
      }
      firstLayer[p] = layer;
      int size = layer > cells.nz ? 0 : cells.planeStart[layer + 1] - cells.planeStart[layer];
      for (int c = 0; c < 3; c++) {
        edge[p][c] = new float[p == 0 ? 0 : size];
      }
    }
  }

  /** Sets y to the force that holds the displacement x; zero where a node is held. */
  void apply(float[][] x, float[][] y) {
    Workers.run(kernels.length, part -> part(part, x, y));
    for (int p = 1; p < kernels.length; p++) {
      int start = cells.planeStart[firstLayer[p]];
      for (int c = 0; c < 3; c++) {
        float[] yc = y[c];
        float[] e = edge[p][c];
        for (int i = 0; i < e.length; i++) {
          yc[start + i] += e[i];
        }
      }
    }
    addSprings(x, y);
    hold(y);
  }

  /** Sets to zero what is held. */
  void hold(float[][] y) {
    for (int c = 0; c < 3; c++) {
      for (int n : held.fixed[c]) {
        y[c][n] = 0;
      }
    }
  }

  private void part(int p, float[][] x, float[][] y) {
    int from = firstLayer[p];
    int to = firstLayer[p + 1];
    int zeroFrom = cells.planeStart[p == 0 ? 0 : Math.min(from + 1, cells.nz + 1)];
    int zeroTo =
        cells.planeStart[p + 1 == kernels.length ? cells.nz + 1 : Math.min(to + 1, cells.nz + 1)];
    for (int c = 0; c < 3; c++) {
      if (zeroTo > zeroFrom) {
        Arrays.fill(y[c], zeroFrom, zeroTo, 0);
      }
      Arrays.fill(edge[p][c], 0);
    }
    int edgeStart = cells.planeStart[from];
    for (int k = from; k < to; k++) {
      boolean shared = p > 0 && k == from;
      float[][] low = shared ? edge[p] : y;
      int shift = shared ? edgeStart : 0;
      for (int row = cells.layerStart[k]; row < cells.layerStart[k + 1]; row++) {
        row(kernels[p], row, x, y, low, shift);
      }
    }
  }

  private void row(
      FloatRowKernel kernel, int row, float[][] x, float[][] y, float[][] low, int shift) {
    kernel.add(
        x,
        y,
        low,
        shift,
        cells.rowLength[row],
        cells.rowNode,
        4 * row,
        table,
        cells.rowType[row] * 48,
        cells.fill,
        cells.rowFull[row] ? -1 : cells.rowCell[row]);
  }

  private void addSprings(float[][] x, float[][] y) {
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
          y[c][held.faceNodes[4 * f + a]] += (float) (k * sum);
        }
      }
    }
  }
}
