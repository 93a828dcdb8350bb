package fettle.mechanics.solids;

import java.util.ArrayList;
import java.util.List;

/**
 * The stretches of cells that the kernels work through in one go. Mostly these are runs of equal
 * cells along x. Where planes of the part stand so close that such runs would be short, a whole
 * layer of the grid is one stretch, its voids included, and every cell has coefficients of its own.
 */
final class Rows {

  /** Runs of equal cells shorter than this on average are not worth a loop of their own. */
  private static final int SHORT = 48;

  /** Most nodes of a grid that is worked through with its voids. */
  private static final int SMALL = 400_000;

  /** Number of nodes by which stretches are placed. */
  final int nodes;

  /** First node of each plane of nodes, with the end behind the last. */
  final int[] planeStart;

  /** First stretch of each layer of cells, with the end behind the last. */
  final int[] layerStart;

  final int[] length;

  /** First node of each of the four edges of a stretch. */
  final int[] node;

  /** Place of the first coefficient of a stretch. */
  final int[] coefficient;

  /** Distance of the coefficients of a cell; 0 if the cells of a stretch are all alike. */
  final int apart;

  /** Place of the first share filled, -1 if all cells are full. */
  final int[] cell;

  final float[] fill;

  /** Place of each node of the cells among the nodes of the stretches; empty if they are same. */
  final int[] place;

  private Rows(Cells cells) {
    nodes = cells.nodes;
    planeStart = cells.planeStart;
    layerStart = cells.layerStart;
    length = cells.rowLength;
    node = cells.rowNode;
    coefficient = new int[cells.rows];
    cell = new int[cells.rows];
    for (int r = 0; r < cells.rows; r++) {
      coefficient[r] = 48 * cells.rowType[r];
      cell[r] = cells.rowFull[r] ? -1 : cells.rowCell[r];
    }
    apart = 0;
    fill = cells.fill;
    place = new int[0];
  }

  private Rows(Cells cells, int layer) {
    int plane = (cells.nx + 1) * (cells.ny + 1);
    nodes = plane * (cells.nz + 1);
    planeStart = new int[cells.nz + 2];
    layerStart = new int[cells.nz + 1];
    fill = new float[layer * cells.nz];
    apart = layer;
    List<int[]> stretches = new ArrayList<>();
    for (int k = 0; k < cells.nz; k++) {
      planeStart[k + 1] = (k + 1) * plane;
      fillLayer(cells, k);
      for (int at = 0; at < layer - 1; at += Cells.LONGEST) {
        int n = Math.min(Cells.LONGEST, layer - 1 - at);
        if (solid(k * layer + at, n)) {
          stretches.add(new int[] {n, k * plane + at, 48 * cells.kind[2][k] * layer + at, k, at});
        }
      }
      layerStart[k + 1] = stretches.size();
    }
    planeStart[cells.nz + 1] = nodes;
    int rows = stretches.size();
    length = new int[rows];
    node = new int[4 * rows];
    coefficient = new int[rows];
    cell = new int[rows];
    for (int r = 0; r < rows; r++) {
      int[] s = stretches.get(r);
      length[r] = s[0];
      for (int edge = 0; edge < 4; edge++) {
        node[4 * r + edge] = s[1] + (edge & 1) * (cells.nx + 1) + (edge >> 1) * plane;
      }
      coefficient[r] = s[2];
      cell[r] = s[3] * layer + s[4];
    }
    place = new int[cells.nodes];
    for (int n = 0; n < cells.node.length; n++) {
      if (cells.node[n] >= 0) {
        place[cells.node[n]] = n;
      }
    }
  }

  private void fillLayer(Cells cells, int k) {
    for (int j = 0; j < cells.ny; j++) {
      System.arraycopy(
          cells.fill, cells.cellIndex(0, j, k), fill, k * apart + j * (cells.nx + 1), cells.nx);
    }
  }

  private boolean solid(int from, int n) {
    for (int i = from; i < from + n; i++) {
      if (fill[i] > 0) {
        return true;
      }
    }
    return false;
  }

  /** Returns the stretches of these cells. */
  static Rows of(Cells cells) {
    boolean brief = cells.active < (long) SHORT * cells.rows;
    return brief && cells.node.length <= SMALL
        ? new Rows(cells, (cells.nx + 1) * cells.ny)
        : new Rows(cells);
  }

  /** Tells whether stretches count the nodes of the grid, voids and all. */
  boolean whole() {
    return apart > 0;
  }
}
