package fettle.bench;

import fettle.mechanics.solids.Body;
import fettle.mechanics.solids.BoxElement;
import fettle.mechanics.solids.Elastic;
import fettle.mechanics.solids.ElasticModel;
import fettle.mechanics.solids.Grid;
import fettle.mechanics.solids.Patch;
import fettle.mechanics.solids.Shape;
import fettle.mechanics.solids.Support;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Give of a solid iron bar held at one end, by elements of a given size. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class SolidSolve {

  private static final Elastic IRON = new Elastic(110_000, 0.26);
  private static final double[] SIZE = {48, 24, 12};

  /** Edge of an element, in mm. */
  @Param({"6", "4", "3"})
  public int step = 6;

  private Grid grid = grid(6);

  /** Cuts the bar. */
  @Setup
  public void make() {
    grid = grid(step);
  }

  private static Grid grid(double h) {
    return Grid.through(
        new double[][] {{0, SIZE[0]}, {0, SIZE[1]}, {0, SIZE[2]}}, new double[] {h, h, h}, 1);
  }

  /** The solver of the program, set-up and all. */
  @Benchmark
  public double multigrid() {
    Support root = new Support.Fixed(Patch.Rectangle.of(0, 0, 0, SIZE[1], 0, SIZE[2]));
    Patch tip = Patch.Rectangle.of(SIZE[0], SIZE[0], 0, SIZE[1], 0, SIZE[2]);
    return ElasticModel.of(
            Body.of(new Shape.Box(0, SIZE[0], 0, SIZE[1], 0, SIZE[2])), IRON, grid, List.of(root))
        .compliance(tip, 0, 0, 1);
  }

  /** The same elements put into one dense matrix, solved by a general library. */
  @Benchmark
  public double denseSolver() {
    int[] n = {grid.cells(0), grid.cells(1), grid.cells(2)};
    double h = SIZE[0] / n[0];
    double[] element = BoxElement.stiffness(new double[] {h, h, h}, IRON);
    int layer = 3 * (n[1] + 1) * (n[2] + 1);
    DMatrixRMaj k = new DMatrixRMaj(layer * n[0], layer * n[0]);
    DMatrixRMaj load = new DMatrixRMaj(layer * n[0], 1);
    int[] at = new int[24];
    for (int cell = 0; cell < n[0] * n[1] * n[2]; cell++) {
      int x = cell / (n[1] * n[2]);
      int y = cell / n[2] % n[1];
      int z = cell % n[2];
      for (int corner = 0; corner < 8; corner++) {
        int node =
            ((x + (corner & 1)) * (n[1] + 1) + y + (corner >> 1 & 1)) * (n[2] + 1)
                + z
                + (corner >> 2);
        for (int way = 0; way < 3; way++) {
          at[3 * corner + way] = 3 * node + way - layer;
        }
        if (x + (corner & 1) == n[0]) {
          load.add(at[3 * corner + 2], 0, 0.25 / (n[1] * n[2]));
        }
      }
      for (int i = 0; i < 24; i++) {
        for (int j = 0; j < 24; j++) {
          if (at[i] >= 0 && at[j] >= 0) {
            k.add(at[i], at[j], element[24 * i + j]);
          }
        }
      }
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(k.numRows);
    DMatrixRMaj u = new DMatrixRMaj(k.numRows, 1);
    if (!solver.setA(k)) {
      throw new IllegalStateException("the dense solver found no deflection");
    }
    solver.solve(load, u);
    double work = 0;
    for (int i = 0; i < load.numRows; i++) {
      work += load.get(i, 0) * u.get(i, 0);
    }
    return work;
  }

  /** Refuses to measure two solvers that do not agree. */
  static void agree() {
    SolidSolve both = new SolidSolve();
    Agreement.near("give", both.multigrid(), both.denseSolver(), 1e-6);
  }
}
