package fettle.bench;

import fettle.mechanics.fits.Deviations;
import fettle.mechanics.fits.ToleranceClass;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Limits of a tolerance class by ISO 286, for every whole millimetre to 120. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class FitLookup {

  private record Range(double above, double upTo, Deviations deviations) {}

  private final ToleranceClass bore = ToleranceClass.parse("H7");
  private final List<Range> ranges = ranges();

  private static List<Range> ranges() {
    List<Range> all = new ArrayList<>();
    for (int above = 0; above < 120; above++) {
      all.add(new Range(above, above + 1, ToleranceClass.parse("H7").deviations(above + 1)));
    }
    return all;
  }

  /** The look-up of the program. */
  @Benchmark
  public double table() {
    double sum = 0;
    for (int size = 1; size <= 120; size++) {
      sum += bore.deviations(size).upper();
    }
    return sum;
  }

  /** Reading the class as written each time, too. */
  @Benchmark
  public double asWritten() {
    double sum = 0;
    for (int size = 1; size <= 120; size++) {
      sum += ToleranceClass.parse("H7").deviations(size).upper();
    }
    return sum;
  }

  /** Rows of a printed table, gone through from the top. */
  @Benchmark
  public double rows() {
    double sum = 0;
    for (int size = 1; size <= 120; size++) {
      for (Range range : ranges) {
        if (size > range.above && size <= range.upTo) {
          sum += range.deviations.upper();
          break;
        }
      }
    }
    return sum;
  }

  /** Refuses to measure look-ups that do not agree. */
  static void agree() {
    FitLookup all = new FitLookup();
    Agreement.near("sum of limits", all.table(), all.rows(), 1e-12);
    Agreement.near("sum of limits", all.table(), all.asWritten(), 1e-12);
  }
}
