package fettle.mechanics.metrology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Uncertainty of the extreme-value results of a bidirectional positioning test, by drawing every
 * cell anew: its mean with {@code s/sqrt(n)}, its {@code s} with chi-square, and the error of the
 * length standard once for a whole trial.
 *
 * @param names the results, in order: B, E, M, R, A
 * @param standard standard uncertainty of each [mm]
 * @param bias median of the drawn results less the result found: what scatter alone adds [mm]
 */
public record PositioningUncertainty(List<String> names, List<Double> standard, List<Double> bias) {

  /** Names of the results. */
  static final List<String> RESULTS = List.of("B", "E", "M", "R", "A");

  /**
   * Draws the results.
   *
   * @param test a test in both directions
   * @param scale relative standard uncertainty of the length standard [-]
   * @param trials number of draws, 100 to 100 000
   * @param seed seed of the generator
   */
  public static PositioningUncertainty of(
      PositioningTest test, double scale, int trials, long seed) {
    Require.notNegative("relative uncertainty of the scale", scale);
    Require.atLeast("trials", trials, 100);
    Require.atMost("trials", trials, 100_000);
    List<PositioningTest.Target> targets = test.targets();
    if ((long) targets.size() * trials > 5_000_000L) {
      throw new IllegalArgumentException(
          "trials: too many for " + targets.size() + " targets; take fewer");
    }
    double[] found = {
      test.reversal(),
      test.systematic(),
      test.meanDeviation(),
      test.repeatability(),
      test.accuracy()
    };
    RandomGenerator random = new Well19937c(seed);
    double[][] drawn = new double[RESULTS.size()][trials];
    for (int i = 0; i < trials; i++) {
      double[] one = draw(targets, scale * random.nextGaussian(), random);
      for (int k = 0; k < one.length; k++) {
        drawn[k][i] = one[k];
      }
    }
    List<Double> standard = new ArrayList<>();
    List<Double> bias = new ArrayList<>();
    for (int k = 0; k < found.length; k++) {
      Sample sample = Sample.of(drawn[k]);
      standard.add(sample.standardDeviation());
      bias.add(sample.median() - found[k]);
    }
    return new PositioningUncertainty(RESULTS, List.copyOf(standard), List.copyOf(bias));
  }

  private static double[] draw(
      List<PositioningTest.Target> targets, double slope, RandomGenerator random) {
    double reversal = 0;
    double repeat = 0;
    double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (PositioningTest.Target t : targets) {
      double shift = slope * t.position();
      double up = shift + mean(t.up(), t.deviationUp(), random);
      double down = shift + mean(t.down(), t.deviationDown(), random);
      double su = scatter(t.up(), t.deviationUp(), random);
      double sd = scatter(t.down(), t.deviationDown(), random);
      reversal = Math.max(reversal, Math.abs(up - down));
      double own = 2 * su + 2 * sd + Math.abs(up - down);
      repeat = Math.max(repeat, Math.max(own, 4 * Math.max(su, sd)));
      double[] least = {Math.min(up, down), (up + down) / 2, Math.min(up - 2 * su, down - 2 * sd)};
      double[] most = {Math.max(up, down), (up + down) / 2, Math.max(up + 2 * su, down + 2 * sd)};
      for (int k = 0; k < 3; k++) {
        low[k] = Math.min(low[k], least[k]);
        high[k] = Math.max(high[k], most[k]);
      }
    }
    return new double[] {reversal, high[0] - low[0], high[1] - low[1], repeat, high[2] - low[2]};
  }

  private static double mean(List<Double> cell, double s, RandomGenerator random) {
    double mean = Arrays.stream(values(cell)).average().orElseThrow();
    return mean + s / Math.sqrt(cell.size()) * random.nextGaussian();
  }

  private static double scatter(List<Double> cell, double s, RandomGenerator random) {
    double squares = 0;
    int freedom = cell.size() - 1;
    for (int i = 0; i < freedom; i++) {
      double g = random.nextGaussian();
      squares += g * g;
    }
    return s * Math.sqrt(squares / freedom);
  }

  private static double[] values(List<Double> cell) {
    return cell.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
