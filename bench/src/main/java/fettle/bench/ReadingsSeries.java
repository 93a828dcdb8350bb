package fettle.bench;

import fettle.mechanics.metrology.DialReading;
import fettle.mechanics.metrology.DialTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
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

/**
 * Fitting a dial trial: travel per turn, backlash and once-per-turn error from so many readings.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class ReadingsSeries {

  /** Number of readings. */
  @Param({"10", "100", "1000", "10000"})
  public int readings = 100;

  private List<DialReading> list = List.of();

  /** Makes readings of a stated truth with noise. */
  @Setup
  public void make() {
    list = readings(readings);
  }

  private static List<DialReading> readings(int count) {
    Random noise = new Random(86);
    List<DialReading> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double turns = 4.0 * i / count;
      int direction = i % 2 == 0 ? 1 : -1;
      double x =
          20 * turns
              - 0.05 * direction
              + 0.03 * Math.sin(2 * Math.PI * turns)
              + 0.005 * noise.nextGaussian();
      all.add(new DialReading(1, direction, turns, x));
    }
    return all;
  }

  /** The fit of the program, with uncertainties. */
  @Benchmark
  public double fit() {
    return DialTest.of(list, 1).travelPerTurn();
  }

  /** A general regression on the same columns, without uncertainties. */
  @Benchmark
  public double regression() {
    double[][] rows = new double[list.size()][];
    double[] y = new double[list.size()];
    for (int i = 0; i < y.length; i++) {
      DialReading r = list.get(i);
      double angle = 2 * Math.PI * r.turns();
      rows[i] = new double[] {r.turns(), -r.direction() / 2.0, Math.cos(angle), Math.sin(angle)};
      y[i] = r.position();
    }
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
    regression.newSampleData(y, rows);
    return regression.estimateRegressionParameters()[1];
  }

  /** Refuses to measure two fits that do not agree. */
  static void agree() {
    ReadingsSeries both = new ReadingsSeries();
    both.make();
    Agreement.near("travel per turn", both.fit(), both.regression(), 1e-9);
  }
}
