package fettle.bench;

import fettle.mechanics.bearings.BallBearing;
import fettle.mechanics.bearings.BearingLoad;
import fettle.mechanics.bearings.BearingSet;
import fettle.mechanics.bearings.BearingState;
import java.util.concurrent.TimeUnit;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A preloaded pair of ball bearings under load, all five ways free. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class BallBearingSolve {

  private static final BallBearing BALLS =
      new BallBearing(14, 7.9, 42, Math.toRadians(25), 0.52, 0.52, 207_000, 0.3);
  private static final BearingLoad LOAD = new BearingLoad(300, 500, -200, 4000, 9000);
  private static final double[] FORCE = {300, 500, -200, 4000, 9000};

  private final BearingSet pair =
      BearingSet.pair(BALLS, BearingSet.Arrangement.BACK_TO_BACK, 30, 200);

  /** The solver of the program. */
  @Benchmark
  public BearingState solver() {
    return pair.under(LOAD);
  }

  /** A general least-squares optimiser on the same balls, slopes by differences. */
  @Benchmark
  public LeastSquaresOptimizer.Optimum optimiser() {
    return new LevenbergMarquardtOptimizer()
        .withCostRelativeTolerance(1e-14)
        .withParameterRelativeTolerance(1e-12)
        .optimize(
            new LeastSquaresBuilder()
                .start(new double[5])
                .target(FORCE)
                .model(this::forceAndSlopes)
                .maxEvaluations(2000)
                .maxIterations(2000)
                .build());
  }

  private Pair<RealVector, RealMatrix> forceAndSlopes(RealVector at) {
    double[] u = at.toArray();
    RealMatrix slopes = MatrixUtils.createRealMatrix(5, 5);
    for (int j = 0; j < 5; j++) {
      double step = j < 3 ? 1e-7 : 1e-9;
      double[] up = u.clone();
      double[] down = u.clone();
      up[j] += step;
      down[j] -= step;
      double[] high = force(up);
      double[] low = force(down);
      for (int i = 0; i < 5; i++) {
        slopes.setEntry(i, j, (high[i] - low[i]) / (2 * step));
      }
    }
    return new Pair<>(new ArrayRealVector(force(u)), slopes);
  }

  private double[] force(double[] displacement) {
    BearingState state = pair.at(displacement);
    double[] force = new double[5];
    for (int i = 0; i < 5; i++) {
      force[i] = state.force(i);
    }
    return force;
  }

  /** Refuses to measure two solvers that do not agree. */
  static void agree() {
    BallBearingSolve both = new BallBearingSolve();
    BearingState own = both.solver();
    double[] other = both.optimiser().getPoint().toArray();
    for (int i = 0; i < 5; i++) {
      Agreement.near("displacement", own.displacement(i), other[i], 1e-6);
    }
  }
}
