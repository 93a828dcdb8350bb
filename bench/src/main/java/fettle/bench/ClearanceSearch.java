package fettle.bench;

import fettle.mechanics.motion.Clearance;
import fettle.mechanics.motion.Domain;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.Pair;
import java.util.List;
import java.util.Locale;
import java.util.Random;
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

/** Least gaps of 60 convex solids on 4 slides and 3 turning seats, proven to 0.05 mm. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class ClearanceSearch {

  private static final double TOLERANCE = 0.05;
  private static final int SOLIDS = 60;
  private static final int PLAIN_BUDGET = 2_000;
  private static final int MACHINE_BUDGET = 2_000_000;
  private static final int SAMPLES = 3_000;

  private final Mechanism machine = MovingMachine.of(SOLIDS);
  private final Domain domain = machine.domain();
  private final List<Pair> pairs = machine.pairs().searched();

  /** Least gap of the whole machine. */
  @Benchmark
  public Gap least() {
    return Clearance.least(pairs, domain, TOLERANCE, MACHINE_BUDGET);
  }

  /** Every pair with its bounds and its witness position. */
  @Benchmark
  public List<Gap> table() {
    return Clearance.table(pairs, domain, TOLERANCE, Clearance.BUDGET);
  }

  /** The same table by the plain bound, each pair left open after some distances. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public List<PlainBound.Bracket> plain() {
    return pairs.parallelStream()
        .map(pair -> PlainBound.of(pair, domain, TOLERANCE, PLAIN_BUDGET))
        .toList();
  }

  /** Least gap met at random positions of all axes: no proof, only luck. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public double sampled() {
    Random random = new Random(1);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < SAMPLES; i++) {
      double[] at = domain.middle();
      for (int axis = 0; axis < at.length; axis++) {
        double span = domain.high()[axis] - domain.low()[axis];
        at[axis] = domain.low()[axis] + random.nextDouble() * span;
      }
      least =
          pairs.parallelStream()
              .mapToDouble(pair -> Clearance.at(pair, domain, at).upper())
              .reduce(least, Math::min);
    }
    return least;
  }

  /** Refuses to measure if a proven bound lies above what the baselines met. */
  static void agree() {
    ClearanceSearch both = new ClearanceSearch();
    for (Pair pair : both.pairs) {
      Gap gap = Clearance.of(pair, both.domain, TOLERANCE, Clearance.BUDGET);
      PlainBound.Bracket plain = PlainBound.of(pair, both.domain, TOLERANCE, 300);
      if (gap.lower() > plain.upper() + 1e-6 || plain.lower() > gap.upper() + 1e-6) {
        throw new IllegalStateException(
            pair.name() + ": found " + gap.lower() + ".." + gap.upper() + " and " + plain);
      }
    }
    if (both.least().lower() > both.sampled()) {
      throw new IllegalStateException("a random position lies below the proven gap");
    }
  }

  /** Says in a sentence what stands behind the times. */
  static String found() {
    ClearanceSearch both = new ClearanceSearch();
    Gap least = both.least();
    List<Gap> table = both.table();
    StringBuilder words = new StringBuilder();
    words.append(
        String.format(
            Locale.ROOT,
            "%d pairs of %d solids. The least gap is proven between %.3f and %.3f mm after %d"
                + " distances; %d random positions met %.3f mm. The table takes %d distances; open"
                + " after %d distances a pair: %s. The plain bound leaves %d pairs open after %d"
                + " distances a pair.",
            both.pairs.size(),
            SOLIDS,
            least.lower(),
            least.upper(),
            least.evaluations(),
            SAMPLES,
            both.sampled(),
            table.stream().mapToInt(Gap::evaluations).sum(),
            Clearance.BUDGET,
            open(table),
            both.plain().stream().filter(b -> !b.closed(TOLERANCE)).count(),
            PLAIN_BUDGET));
    return words.toString();
  }

  private static String open(List<Gap> table) {
    List<String> open =
        table.stream()
            .filter(g -> !g.certified())
            .map(
                g ->
                    String.format(
                        Locale.ROOT, "%s (%.3f to %.3f mm)", g.pair().name(), g.lower(), g.upper()))
            .toList();
    return open.isEmpty() ? "none" : String.join(", ", open);
  }
}
