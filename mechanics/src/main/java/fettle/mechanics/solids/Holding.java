package fettle.mechanics.solids;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Turns supports into held nodes and springs, and finds what hangs in the air. */
final class Holding {

  private final Grid grid;
  private final float[] fill;
  private final int[] n;

  /** A covered face: the axis of its normal, its plane and its place, and how much is covered. */
  private record Face(int axis, int plane, int u, int v, double coverage) {}

  Holding(Grid grid, float[] fill) {
    this.grid = grid;
    this.fill = fill;
    n = new int[] {grid.cells(0), grid.cells(1), grid.cells(2)};
  }

  private int index(int[] at) {
    return (at[2] * n[1] + at[1]) * n[0] + at[0];
  }

  /** Cell on the low (side 0) or high (side 1) side of a face, or -1. */
  private int beside(Face f, int side) {
    int[] at = new int[3];
    at[f.axis] = f.plane - 1 + side;
    at[(f.axis + 1) % 3] = f.u;
    at[(f.axis + 2) % 3] = f.v;
    return at[f.axis] < 0 || at[f.axis] >= n[f.axis] ? -1 : index(at);
  }

  private boolean surface(Face f) {
    int a = beside(f, 0);
    int b = beside(f, 1);
    return (a >= 0 && fill[a] > 0) || (b >= 0 && fill[b] > 0);
  }

  private List<Face> faces(Support support) {
    Patch.Flat patch = support.patch();
    int axis = patch.axis();
    int plane = grid.planeAt(axis, patch.at());
    if (plane < 0) {
      throw new IllegalArgumentException(
          "support: no plane of the grid at " + patch.at() + " mm; it must lie on a plane face");
    }
    int ua = (axis + 1) % 3;
    int va = (axis + 2) % 3;
    double[] r = patch.range();
    List<Face> faces = new ArrayList<>();
    for (int u = grid.cell(ua, r[0]); u < n[ua] && grid.plane(ua, u) < r[1]; u++) {
      for (int v = grid.cell(va, r[2]); v < n[va] && grid.plane(va, v) < r[3]; v++) {
        double coverage =
            patch.coverage(
                grid.plane(ua, u), grid.plane(ua, u + 1), grid.plane(va, v), grid.plane(va, v + 1));
        Face face = new Face(axis, plane, u, v, coverage);
        boolean counts =
            support instanceof Support.Fixed fixed
                ? coverage >= Math.max(fixed.coverage(), 1e-9)
                : coverage > 0;
        if (counts && surface(face)) {
          faces.add(face);
        }
      }
    }
    if (faces.isEmpty()) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "support: no solid at the patch around %.2f, %.2f on the plane at %.2f mm",
              (r[0] + r[1]) / 2,
              (r[2] + r[3]) / 2,
              patch.at()));
    }
    return faces;
  }

  /** Drops slivers that hang on nothing; refuses a piece of any size that is not held. */
  void settle(List<Support> supports) {
    boolean[] reached = new boolean[fill.length];
    ArrayDeque<Integer> queue = new ArrayDeque<>();
    for (Support s : supports) {
      for (Face f : faces(s)) {
        for (int side = 0; side < 2; side++) {
          int c = beside(f, side);
          if (c >= 0 && fill[c] > 0 && !reached[c]) {
            reached[c] = true;
            queue.add(c);
          }
        }
      }
    }
    flood(reached, queue, null);
    for (int c = 0; c < fill.length; c++) {
      if (fill[c] > 0 && !reached[c]) {
        List<Integer> island = new ArrayList<>();
        reached[c] = true;
        queue.add(c);
        flood(reached, queue, island);
        judge(island);
      }
    }
  }

  private void flood(
      boolean[] reached,
      ArrayDeque<Integer> queue,
      @org.jspecify.annotations.Nullable List<Integer> island) {
    int[] jump = {1, n[0], n[0] * n[1]};
    while (!queue.isEmpty()) {
      int c = queue.remove();
      if (island != null) {
        island.add(c);
      }
      int[] at = {c % n[0], c / n[0] % n[1], c / n[0] / n[1]};
      for (int axis = 0; axis < 3; axis++) {
        for (int d = -1; d <= 1; d += 2) {
          int to = at[axis] + d;
          int other = c + d * jump[axis];
          if (to >= 0 && to < n[axis] && fill[other] > 0 && !reached[other]) {
            reached[other] = true;
            queue.add(other);
          }
        }
      }
    }
  }

  private void judge(List<Integer> island) {
    double volume = 0;
    double[] middle = new double[3];
    boolean cut = true;
    for (int c : island) {
      int[] at = {c % n[0], c / n[0] % n[1], c / n[0] / n[1]};
      double v = fill[c];
      for (int a = 0; a < 3; a++) {
        v *= grid.step(a, at[a]);
      }
      for (int a = 0; a < 3; a++) {
        middle[a] += v * (grid.plane(a, at[a]) + grid.plane(a, at[a] + 1)) / 2;
      }
      volume += v;
      cut &= fill[c] < 1;
    }
    if (cut && island.size() <= 8) {
      island.forEach(c -> fill[c] = 0);
      return;
    }
    throw new IllegalArgumentException(
        String.format(
            Locale.ROOT,
            "solid: a piece of %.3g mm3 around x %.2f, y %.2f, z %.2f mm is joined to the held"
                + " part by no face; join it, hold it or cut it away",
            volume,
            middle[0] / volume,
            middle[1] / volume,
            middle[2] / volume));
  }

  /** Returns held nodes and springs for these cells. */
  Held held(Cells cells, List<Support> supports) {
    boolean[][] fixed = new boolean[3][cells.nodes];
    List<Integer> nodes = new ArrayList<>();
    List<Double> areas = new ArrayList<>();
    List<Double> springs = new ArrayList<>();
    for (Support s : supports) {
      for (Face f : faces(s)) {
        int[] four = nodes(cells, f);
        if (s instanceof Support.Springs k) {
          double[] u = shapes(k.patch(), f, 1);
          double[] v = shapes(k.patch(), f, 2);
          double even = k.patch() instanceof Patch.Rectangle ? 1 : f.coverage;
          for (int a = 0; a < 4; a++) {
            nodes.add(four[a]);
            for (int b = 0; b < 4; b++) {
              areas.add(even * u[2 * (a & 1) + (b & 1)] * v[2 * (a >> 1) + (b >> 1)]);
            }
          }
          for (int c = 0; c < 3; c++) {
            springs.add(c == f.axis ? k.normal() : k.tangential());
          }
        } else {
          for (int c = 0; c < 3; c++) {
            if (c == f.axis || s instanceof Support.Fixed) {
              for (int node : four) {
                fixed[c][node] = true;
              }
            }
          }
        }
      }
    }
    int[][] lists = new int[3][];
    for (int c = 0; c < 3; c++) {
      boolean[] one = fixed[c];
      lists[c] = java.util.stream.IntStream.range(0, cells.nodes).filter(i -> one[i]).toArray();
    }
    return new Held(
        lists,
        nodes.stream().mapToInt(Integer::intValue).toArray(),
        areas.stream().mapToDouble(Double::doubleValue).toArray(),
        springs.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /**
   * Integrals of products of the two shape functions along an edge of a face, over what a rectangle
   * covers of it; over all of it for a patch of another form.
   */
  private double[] shapes(Patch.Flat patch, Face f, int next) {
    int axis = (f.axis + next) % 3;
    int at = next == 1 ? f.u : f.v;
    double low = grid.plane(axis, at);
    double h = grid.step(axis, at);
    double from = 0;
    double to = 1;
    if (patch instanceof Patch.Rectangle) {
      from = Math.max(0, (patch.range()[2 * next - 2] - low) / h);
      to = Math.min(1, (patch.range()[2 * next - 1] - low) / h);
    }
    double whole = to - from;
    double square = (to * to - from * from) / 2;
    double cube = (to * to * to - from * from * from) / 3;
    double mixed = h * (square - cube);
    return new double[] {h * (whole - 2 * square + cube), mixed, mixed, h * cube};
  }

  private static int[] nodes(Cells cells, Face f) {
    int[] four = new int[4];
    for (int a = 0; a < 4; a++) {
      int[] at = new int[3];
      at[f.axis] = f.plane;
      at[(f.axis + 1) % 3] = f.u + (a & 1);
      at[(f.axis + 2) % 3] = f.v + (a >> 1);
      four[a] = cells.node[cells.nodeIndex(at[0], at[1], at[2])];
    }
    return four;
  }

  /** Refuses supports that leave a rigid motion free. */
  static void refuseLoose(Cells cells, Held held) {
    double[][] gram = new double[6][6];
    double[][] b = cells.grid.bounds();
    double size = Math.max(b[1][0] - b[0][0], Math.max(b[1][1] - b[0][1], b[1][2] - b[0][2]));
    double[][] place = cells.places();
    for (int c = 0; c < 3; c++) {
      for (int node : held.fixed[c]) {
        addRow(gram, row(place, node, c, b, size));
      }
      for (int f = 0; f < held.faces(); f++) {
        if (held.faceSprings[3 * f + c] > 0) {
          for (int a = 0; a < 4; a++) {
            addRow(gram, row(place, held.faceNodes[4 * f + a], c, b, size));
          }
        }
      }
    }
    String[] motion = {
      "moving along x", "moving along y", "moving along z",
      "turning about x", "turning about y", "turning about z"
    };
    double greatest = 0;
    for (int i = 0; i < 6; i++) {
      greatest = Math.max(greatest, gram[i][i]);
    }
    for (int i = 0; i < 6; i++) {
      if (!(gram[i][i] > 1e-8 * greatest)) {
        throw new IllegalArgumentException(
            "support: the part is not held against " + motion[i] + "; add a support");
      }
      for (int r = i + 1; r < 6; r++) {
        double f = gram[r][i] / gram[i][i];
        for (int c = 0; c < 6; c++) {
          gram[r][c] -= f * gram[i][c];
        }
      }
    }
  }

  private static double[] row(double[][] place, int node, int c, double[][] b, double size) {
    double[] r = new double[3];
    for (int a = 0; a < 3; a++) {
      r[a] = (place[a][node] - (b[0][a] + b[1][a]) / 2) / size;
    }
    return switch (c) {
      case 0 -> new double[] {1, 0, 0, 0, r[2], -r[1]};
      case 1 -> new double[] {0, 1, 0, -r[2], 0, r[0]};
      default -> new double[] {0, 0, 1, r[1], -r[0], 0};
    };
  }

  private static void addRow(double[][] gram, double[] row) {
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        gram[i][j] += row[i] * row[j];
      }
    }
  }

  static double[][] zeros(int nodes) {
    double[][] z = new double[3][];
    Arrays.setAll(z, c -> new double[nodes]);
    return z;
  }
}
