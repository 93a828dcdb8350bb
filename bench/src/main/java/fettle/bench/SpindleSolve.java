package fettle.bench;

import fettle.mechanics.shafts.BeamElement;
import fettle.mechanics.shafts.Section;
import fettle.mechanics.shafts.ShaftMaterial;
import fettle.mechanics.shafts.Spindle;
import fettle.mechanics.shafts.SpindleModel;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A stepped hollow spindle on two bearings: deflection at the nose, natural frequencies. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class SpindleSolve {

  private static final double FORCE = 100;
  private static final List<Spindle.Step> STEPS =
      List.of(
          new Spindle.Step(35, 30, 20),
          new Spindle.Step(40, 34, 20),
          new Spindle.Step(120, 38, 20),
          new Spindle.Step(50, 45, 20));

  private final Spindle spindle =
      new Spindle(
          STEPS,
          ShaftMaterial.STEEL,
          List.of(
              new Spindle.Support("front", 195, 120e3, 0),
              new Spindle.Support("rear", 35, 60e3, 0)),
          List.of(new Spindle.RigidMass(245, 0.0016, 1.5, 2.5, 20)));

  /** Deflection with its causes. */
  @Benchmark
  public SpindleModel.Deflected deflection() {
    return SpindleModel.under(spindle, spindle.length(), FORCE);
  }

  /** All natural frequencies. */
  @Benchmark
  public double[] frequencies() {
    return SpindleModel.frequencies(spindle);
  }

  /** The same deflection from elements of 2.5 mm and a general dense solver. */
  @Benchmark
  public double denseSolver() {
    int parts = 98;
    double each = spindle.length() / parts;
    DMatrixRMaj k = new DMatrixRMaj(2 * parts + 2, 2 * parts + 2);
    for (int e = 0; e < parts; e++) {
      Spindle.Step step = step((e + 0.5) * each);
      Section section = Section.round(step.outer(), step.inner(), spindle.material().poisson());
      double[] m = new BeamElement(each, section, spindle.material()).stiffness();
      for (int i = 0; i < 16; i++) {
        k.add(2 * e + i / 4, 2 * e + i % 4, m[i]);
      }
    }
    for (Spindle.Support s : spindle.supports()) {
      int n = (int) Math.round(s.place() / each);
      k.add(2 * n, 2 * n, s.radial());
    }
    DMatrixRMaj load = new DMatrixRMaj(2 * parts + 2, 1);
    load.set(2 * parts, 0, FORCE);
    DMatrixRMaj u = new DMatrixRMaj(2 * parts + 2, 1);
    if (!CommonOps_DDRM.solve(k, load, u)) {
      throw new IllegalStateException("the dense solver found no deflection");
    }
    return u.get(2 * parts, 0);
  }

  private static Spindle.Step step(double x) {
    double end = 0;
    for (Spindle.Step step : STEPS) {
      end += step.length();
      if (x < end) {
        return step;
      }
    }
    return STEPS.get(STEPS.size() - 1);
  }

  /** Refuses to measure two models that do not agree. */
  static void agree() {
    SpindleSolve both = new SpindleSolve();
    Agreement.near("deflection", both.deflection().deflection(), both.denseSolver(), 1e-7);
  }
}
