package fettle.mechanics.metrology;

import fettle.mechanics.base.Interval;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Distribution of a result found by drawing the inputs, with a fixed seed: the same seed gives the
 * same report.
 *
 * @param mean mean of the results [result]
 * @param standard their standard deviation [result]
 * @param interval interval with equal tails that holds the asked share
 */
public record MonteCarlo(double mean, double standard, Interval interval) {

  /** Seed used where none is asked for. */
  public static final long SEED = 20_240_301L;

  /** One drawn result. */
  public interface Draw {
    /**
     * Returns one result.
     *
     * @return the result [any]
     */
    double next(RandomGenerator random);
  }

  /**
   * One input to draw.
   *
   * @param value best value [any]
   * @param width standard uncertainty or half-width, as the shape says [same]
   * @param shape distribution
   * @param freedom degrees of freedom of a standard uncertainty; infinite draws a normal value [-]
   */
  public record Input(double value, double width, Contribution.Shape shape, double freedom) {

    /**
     * Draws one value.
     *
     * @return the value [any]
     */
    double draw(RandomGenerator random) {
      double spread =
          switch (shape) {
            case STANDARD -> Double.isInfinite(freedom) ? random.nextGaussian() : student(random);
            case RECTANGULAR -> 2 * random.nextDouble() - 1;
            case TRIANGULAR -> random.nextDouble() + random.nextDouble() - 1;
            case ARCSINE -> Math.sin(2 * Math.PI * random.nextDouble());
            case RESOLUTION -> random.nextDouble() - 0.5;
            case CERTIFICATE -> random.nextGaussian() / 2;
          };
      return value + width * spread;
    }

    private double student(RandomGenerator random) {
      double squares = 0;
      int whole = (int) Math.max(1, Math.min(1000, Math.floor(freedom)));
      for (int i = 0; i < whole; i++) {
        double g = random.nextGaussian();
        squares += g * g;
      }
      return random.nextGaussian() / Math.sqrt(squares / whole);
    }
  }

  /**
   * Draws results.
   *
   * @param draw the result of one draw
   * @param trials draws, 100 to 2 000 000
   * @param confidence share that the interval holds [-]
   * @param seed seed of the generator
   */
  public static MonteCarlo of(Draw draw, int trials, double confidence, long seed) {
    Require.atLeast("trials", trials, 100);
    Require.atMost("trials", trials, 2_000_000);
    Require.between("confidence", confidence, 0, 1);
    RandomGenerator random = new Well19937c(seed);
    double[] results = new double[trials];
    for (int i = 0; i < trials; i++) {
      results[i] = draw.next(random);
      if (!Double.isFinite(results[i])) {
        throw new IllegalArgumentException(
            "formula: has no value at some drawn inputs; check for a division by 0");
      }
    }
    Sample sample = Sample.of(results);
    Arrays.sort(results);
    int inside = (int) Math.floor(confidence * trials + 0.5);
    int low = (trials - inside) / 2;
    return new MonteCarlo(
        sample.mean(),
        sample.standardDeviation(),
        new Interval(results[low], results[Math.min(trials - 1, low + inside)]));
  }

  /** Draws the inputs of a model. */
  public static MonteCarlo of(
      MeasurementModel model, List<Input> inputs, int trials, double confidence, long seed) {
    double[] values = new double[inputs.size()];
    return of(
        random -> {
          for (int i = 0; i < values.length; i++) {
            values[i] = inputs.get(i).draw(random);
          }
          return model.value(values);
        },
        trials,
        confidence,
        seed);
  }
}
