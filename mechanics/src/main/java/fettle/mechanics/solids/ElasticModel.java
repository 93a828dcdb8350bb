package fettle.mechanics.solids;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A held elastic body on one grid, set up once for any number of loads. Displacements are those of
 * the 8-node box with incompatible modes; a cell that is cut counts by the share it is filled.
 */
public final class ElasticModel {

  /** Residual over load at which a solution counts as found [-]. */
  public static final double TOLERANCE = 1e-8;

  /** A cell filled less than this hands its load to a fuller neighbour [-]. */
  private static final double FIRM = 0.25;

  private final Grid grid;
  private final Cells cells;
  private final Held held;
  private final DoubleOperator operator;
  private final Multigrid multigrid;
  private final ConjugateGradients solver;

  private final Elastic material;

  private ElasticModel(Grid grid, Cells cells, Held held, Elastic material) {
    this.material = material;
    this.grid = grid;
    this.cells = cells;
    this.held = held;
    double[] table = Coefficients.table(cells, material);
    operator = new DoubleOperator(cells, held, table);
    FloatOperator narrow = new FloatOperator(cells, held, Coefficients.single(table));
    multigrid = new Multigrid(cells, held, material, narrow);
    solver = new ConjugateGradients(cells, operator, multigrid);
  }

  /**
   * Sets a body up.
   *
   * @param body the body
   * @param material what it is made of
   * @param grid the grid; its planes should lie in the body's plane faces
   * @param supports how it is held
   * @throws IllegalArgumentException if a piece hangs on nothing or the body can move freely
   */
  public static ElasticModel of(
      Body body, Elastic material, Grid grid, List<? extends Support> supports) {
    if (grid.size() > 150_000_000L) {
      throw new IllegalArgumentException(
          "grid: " + grid.size() + " cells; at most 150 million fit, choose a larger step");
    }
    float[] fill = Cells.filled(grid, body);
    List<Support> list = List.copyOf(supports);
    if (list.isEmpty()) {
      throw new IllegalArgumentException("support: the part is not held anywhere");
    }
    Holding holding = new Holding(grid, fill);
    holding.settle(list);
    Cells cells = new Cells(grid, fill);
    Held held = holding.held(cells, list);
    Holding.refuseLoose(cells, held);
    return new ElasticModel(grid, cells, held, material);
  }

  /**
   * Returns the load of an even traction, or of the linear traction that has a moment, over a
   * patch.
   *
   * @param patch where
   * @param wrench Fx, Fy, Fz and Mx, My, Mz about the middle of the patch [N and N mm]
   * @return nodal forces, an array for each direction [N]
   */
  public double[][] load(Patch patch, double... wrench) {
    List<Patch.Spot> spots = patch.spots(grid);
    Area area = Area.of(spots);
    double[] w = new double[6];
    System.arraycopy(wrench, 0, w, 0, wrench.length);
    double[] turn = area.spin(w);
    double[][] f = Holding.zeros(cells.nodes);
    double[] t = new double[3];
    for (Patch.Spot s : spots) {
      double x = s.x() - area.middle()[0];
      double y = s.y() - area.middle()[1];
      double z = s.z() - area.middle()[2];
      t[0] = w[0] / area.area() + turn[1] * z - turn[2] * y;
      t[1] = w[1] / area.area() + turn[2] * x - turn[0] * z;
      t[2] = w[2] / area.area() + turn[0] * y - turn[1] * x;
      add(s, t, f);
    }
    operator.hold(f);
    return f;
  }

  /**
   * Returns the load of an even pressure on the wall of a bore.
   *
   * @param bore where
   * @param pressure pressure, pushing away from the axis [MPa]
   * @return nodal forces, an array for each direction [N]
   */
  public double[][] pressure(Patch.Bore bore, double pressure) {
    double[][] f = Holding.zeros(cells.nodes);
    for (Patch.Spot s : bore.spots(grid)) {
      double[] t = {s.x(), s.y(), s.z()};
      t[bore.axis()] = 0;
      t[(bore.axis() + 1) % 3] -= bore.u();
      t[(bore.axis() + 2) % 3] -= bore.v();
      for (int c = 0; c < 3; c++) {
        t[c] *= pressure / bore.radius();
      }
      add(s, t, f);
    }
    operator.hold(f);
    return f;
  }

  private void add(Patch.Spot s, double[] traction, double[][] f) {
    int[] at = cellOf(s);
    double[] p = {s.x(), s.y(), s.z()};
    double[] local = new double[3];
    for (int a = 0; a < 3; a++) {
      double t = (p[a] - grid.plane(a, at[a])) / grid.step(a, at[a]);
      local[a] = Math.min(1, Math.max(0, t));
    }
    for (int n = 0; n < 8; n++) {
      double w = s.area();
      for (int a = 0; a < 3; a++) {
        w *= (n >> a & 1) == 1 ? local[a] : 1 - local[a];
      }
      int node =
          cells.node[cells.nodeIndex(at[0] + (n & 1), at[1] + (n >> 1 & 1), at[2] + (n >> 2))];
      for (int c = 0; c < 3; c++) {
        f[c][node] += w * traction[c];
      }
    }
  }

  /** Cell with the most solid that the spot touches. */
  private int[] cellOf(Patch.Spot s) {
    double[] p = {s.x(), s.y(), s.z()};
    int[] best = {-1, 0, 0};
    double most = 0;
    for (int reach = 0; reach <= 1 && most < FIRM; reach++) {
      int[][] choice = new int[3][];
      for (int a = 0; a < 3; a++) {
        int i = grid.cell(a, p[a]);
        boolean onLow = Math.abs(grid.plane(a, i) - p[a]) < 1e-6;
        boolean onHigh = Math.abs(grid.plane(a, i + 1) - p[a]) < 1e-6;
        int low = Math.max(0, i - (onLow ? 1 : 0) - reach);
        int high = Math.min(grid.cells(a) - 1, i + (onHigh ? 1 : 0) + reach);
        choice[a] = java.util.stream.IntStream.rangeClosed(low, high).toArray();
      }
      for (int k : choice[2]) {
        for (int j : choice[1]) {
          for (int i : choice[0]) {
            double fill = cells.fill[cells.cellIndex(i, j, k)];
            if (fill > most) {
              most = fill;
              best = new int[] {i, j, k};
            }
          }
        }
      }
    }
    if (best[0] < 0) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "load: there is no solid at x %.2f, y %.2f, z %.2f mm",
              p[0],
              p[1],
              p[2]));
    }
    return best;
  }

  /**
   * Solves for a load.
   *
   * @param load nodal forces [N]
   * @return nodal displacements, an array for each direction [mm]
   */
  public double[][] displacement(double[][] load) {
    double[][] u = Holding.zeros(cells.nodes);
    solver.solve(load, u, TOLERANCE);
    return u;
  }

  /**
   * Work of one load on the displacement of another.
   *
   * @param load nodal forces [N]
   * @param displacement nodal displacements [mm]
   * @return work [N mm]
   */
  public double work(double[][] load, double[][] displacement) {
    return solver.dot(load, displacement);
  }

  /**
   * Compliance of a patch in one direction: mean displacement along the force, per force.
   *
   * @param patch where it is loaded
   * @param direction Fx, Fy, Fz and, if wanted, Mx, My, Mz of a unit load [-]
   * @return compliance [mm/N or rad/(N mm)]
   */
  public double compliance(Patch patch, double... direction) {
    double[][] f = load(patch, direction);
    return work(f, displacement(f));
  }

  /**
   * Compliance of patches as interfaces, six unit wrenches each.
   *
   * @param patches the interfaces
   * @return 6n by 6n, symmetric [mm/N, 1/N, rad/(N mm)]
   */
  public double[][] compliances(List<? extends Patch> patches) {
    List<double[][]> loads = new ArrayList<>();
    for (Patch p : patches) {
      for (int i = 0; i < 6; i++) {
        double[] w = new double[6];
        w[i] = 1;
        loads.add(load(p, w));
      }
    }
    double[][] c = new double[loads.size()][loads.size()];
    for (int j = 0; j < loads.size(); j++) {
      double[][] u = displacement(loads.get(j));
      for (int i = 0; i < loads.size(); i++) {
        c[i][j] = work(loads.get(i), u);
      }
    }
    return c;
  }

  /**
   * Stiffness of a rigid plate bonded to a patch, about the middle of the patch.
   *
   * @param patch where the plate sits
   * @return 6 by 6, by rows ux uy uz rx ry rz [N/mm, N, N mm/rad]
   */
  public double[][] rigidPlate(Patch.Flat patch) {
    Support.Fixed plate = new Support.Fixed(patch);
    float[] fill = cells.fill;
    Held bonded = new Holding(grid, fill).held(cells, List.of(plate));
    return RigidPlate.stiffness(cells, held, bonded, this, Area.of(patch.spots(grid)).middle());
  }

  /** Returns the same body with other nodes held. */
  ElasticModel heldBy(int[][] fixed) {
    return new ElasticModel(
        grid, cells, new Held(fixed, held.faceNodes, held.faceAreas, held.faceSprings), material);
  }

  DoubleOperator operator() {
    return operator;
  }

  /** Returns the number of unknowns. */
  public int unknowns() {
    return 3 * cells.nodes;
  }

  /** Returns the number of cells that hold solid. */
  public int activeCells() {
    return cells.active;
  }

  /** Returns the iterations of the last solution. */
  public int iterations() {
    return solver.iterations();
  }

  /**
   * Returns the true residual over load of the last solution.
   *
   * @return share [-]
   */
  public double residual() {
    return solver.residual();
  }

  /** Returns sizes of the solver's levels in unknowns, finest first. */
  public List<Integer> levels() {
    return multigrid.sizes();
  }

  /** Returns the bytes that its arrays hold, load and displacement of one case included. */
  public long bytes() {
    long n = cells.nodes;
    long doubles = 8L * 3 * 5 * n;
    long floats = 4L * 3 * 2 * n;
    return doubles + floats + multigrid.bytes() + 4L * (cells.fill.length + cells.node.length);
  }

  /**
   * Displacement at a node of the grid, if there is solid.
   *
   * @param displacement nodal displacements [mm]
   * @param i plane along x
   * @param j plane along y
   * @param k plane along z
   * @return displacement, NaN in the void [mm]
   */
  public double[] at(double[][] displacement, int i, int j, int k) {
    int n = cells.node[cells.nodeIndex(i, j, k)];
    return n < 0
        ? new double[] {Double.NaN, Double.NaN, Double.NaN}
        : new double[] {displacement[0][n], displacement[1][n], displacement[2][n]};
  }

  /** Returns the grid. */
  public Grid grid() {
    return grid;
  }
}
