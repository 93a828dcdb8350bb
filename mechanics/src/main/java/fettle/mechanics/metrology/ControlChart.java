package fettle.mechanics.metrology;

import fettle.mechanics.base.Interval;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.special.Gamma;

/** Charts of one characteristic measured again and again over the years. */
public final class ControlChart {

  /** Mean moving range of two over the standard deviation, as printed in the tables. */
  public static final double D2_OF_TWO = 1.128;

  private static final GaussIntegratorFactory INTEGRATORS = new GaussIntegratorFactory();

  private ControlChart() {}

  /**
   * Chart of single values with moving ranges of two.
   *
   * @param centre mean [same]
   * @param lower lower limit [same]
   * @param upper upper limit [same]
   * @param meanRange mean moving range [same]
   * @param rangeLimit upper limit of the moving range [same]
   * @param beyond places of values outside the limits
   */
  public record Individuals(
      double centre,
      double lower,
      double upper,
      double meanRange,
      double rangeLimit,
      List<Integer> beyond) {}

  /**
   * Draws up the chart of single values: {@code mean ± 3 MR/d2}.
   *
   * @param values values in order of time, 3 or more [any]
   * @param d2 mean range of two over the standard deviation [-]
   */
  public static Individuals individuals(double[] values, double d2) {
    Require.atLeast("values", values.length, 3);
    Require.positive("d2", d2);
    double sum = 0;
    for (int i = 1; i < values.length; i++) {
      sum += Math.abs(values[i] - values[i - 1]);
    }
    double range = sum / (values.length - 1);
    double mean = Sample.of(values).mean();
    double lower = mean - 3 * range / d2;
    double upper = mean + 3 * range / d2;
    double spread = 3 * rangeDeviation(2) / rangeMean(2);
    return new Individuals(
        mean, lower, upper, range, (1 + spread) * range, outside(values, lower, upper));
  }

  /**
   * Returns the exponentially weighted averages {@code z = lambda x + (1-lambda) z}.
   *
   * @param values values in order of time [any]
   * @param lambda weight of the newest, 0 to 1 [-]
   * @param start value before the first [same]
   * @return averages after each value [same]
   */
  public static double[] averages(double[] values, double lambda, double start) {
    if (!(lambda > 0 && lambda <= 1)) {
      throw new IllegalArgumentException("lambda: found " + lambda + ", expected above 0, up to 1");
    }
    double[] averages = new double[values.length];
    double z = start;
    for (int i = 0; i < values.length; i++) {
      z = lambda * values[i] + (1 - lambda) * z;
      averages[i] = z;
    }
    return averages;
  }

  /**
   * Returns the half-width of the limits of the weighted average after so many values.
   *
   * @param lambda weight of the newest [-]
   * @param width half-width in standard deviations of the average [-]
   * @param sigma standard deviation of a value [any]
   * @param count values so far; 0 for the steady state
   * @return half-width [same as sigma]
   */
  public static double averageLimit(double lambda, double width, double sigma, int count) {
    double steady = lambda / (2 - lambda);
    double share = count == 0 ? 1 : 1 - Math.pow(1 - lambda, 2.0 * count);
    return width * sigma * Math.sqrt(steady * share);
  }

  /**
   * A two-sided cumulative sum.
   *
   * @param high sums above [same]
   * @param low sums below [same]
   * @param signal number of the first value that signals, counted from 1; 0 if none
   * @param change number of the first value of the run that led to the signal; 0 if none
   */
  public record Sums(List<Double> high, List<Double> low, int signal, int change) {}

  /**
   * Sums up deviations beyond an allowance.
   *
   * @param values values in order of time [any]
   * @param target wanted value [same]
   * @param k allowance, half the shift to find [same]
   * @param h limit [same]
   */
  public static Sums cumulativeSums(double[] values, double target, double k, double h) {
    Require.notNegative("k", k);
    Require.positive("h", h);
    List<Double> high = new ArrayList<>();
    List<Double> low = new ArrayList<>();
    double up = 0;
    double down = 0;
    int upFrom = 1;
    int downFrom = 1;
    int signal = 0;
    int change = 0;
    for (int i = 0; i < values.length; i++) {
      up = Math.max(0, up + values[i] - target - k);
      down = Math.max(0, down + target - k - values[i]);
      upFrom = up > 0 ? upFrom : i + 2;
      downFrom = down > 0 ? downFrom : i + 2;
      high.add(up);
      low.add(down);
      if (signal == 0 && (up > h || down > h)) {
        signal = i + 1;
        change = up > h ? upFrom : downFrom;
      }
    }
    return new Sums(List.copyOf(high), List.copyOf(low), signal, change);
  }

  /**
   * Returns the mean number of values until the weighted average signals, by a Markov chain of 201
   * states.
   *
   * @param lambda weight of the newest [-]
   * @param width half-width of the steady limits [standard deviations of the average]
   * @param shift shift of the mean [standard deviations of a value]
   * @return average run length [values]
   */
  public static double averageRunLength(double lambda, double width, double shift) {
    if (!(lambda > 0 && lambda <= 1)) {
      throw new IllegalArgumentException("lambda: found " + lambda + ", expected above 0, up to 1");
    }
    Require.between("width", width, 0, 20);
    if (lambda > 0.999) {
      return singleRunLength(width, shift);
    }
    int states = 201;
    double h = averageLimit(lambda, width, 1, 0);
    double cell = 2 * h / states;
    RealMatrix stay = MatrixUtils.createRealIdentityMatrix(states);
    for (int i = 0; i < states; i++) {
      double from = -h + (i + 0.5) * cell;
      double below = Quantiles.normalProbability((-h - (1 - lambda) * from) / lambda - shift);
      for (int j = 0; j < states; j++) {
        double edge = -h + (j + 1) * cell;
        double above = Quantiles.normalProbability((edge - (1 - lambda) * from) / lambda - shift);
        stay.addToEntry(i, j, below - above);
        below = above;
      }
    }
    return new LUDecomposition(stay)
        .getSolver()
        .solve(new ArrayRealVector(states, 1.0))
        .getEntry(states / 2);
  }

  /**
   * Returns the mean number of single values until one leaves the limits.
   *
   * @param width half-width of the limits [standard deviations]
   * @param shift shift of the mean [standard deviations]
   * @return average run length [values]
   */
  public static double singleRunLength(double width, double shift) {
    Require.between("width", width, 0, 20);
    double out =
        Quantiles.normalProbability(-width - shift) + Quantiles.normalProbability(-width + shift);
    return 1 / out;
  }

  /**
   * Returns the mean range of n normal values over their standard deviation (d2).
   *
   * @return d2 [-]
   */
  public static double rangeMean(int n) {
    groupSize(n);
    return integral(
        -9,
        9,
        x ->
            1
                - Math.pow(1 - Quantiles.normalProbability(x), n)
                - Math.pow(Quantiles.normalProbability(x), n));
  }

  /**
   * Returns the standard deviation of the range of n normal values over their standard deviation
   * (d3).
   *
   * @return d3 [-]
   */
  public static double rangeDeviation(int n) {
    double mean = rangeMean(n);
    double square =
        2
            * integral(
                -9,
                9,
                y ->
                    integral(
                        -9,
                        y,
                        x -> {
                          double high = Quantiles.normalProbability(y);
                          double low = Quantiles.normalProbability(x);
                          return 1
                              - Math.pow(high, n)
                              - Math.pow(1 - low, n)
                              + Math.pow(Math.max(0, high - low), n);
                        }));
    return Math.sqrt(square - mean * mean);
  }

  /**
   * Returns the mean standard deviation of n normal values over the true one (c4).
   *
   * @return c4 [-]
   */
  public static double deviationMean(int n) {
    groupSize(n);
    return Math.sqrt(2.0 / (n - 1))
        * Math.exp(Gamma.logGamma(n / 2.0) - Gamma.logGamma((n - 1) / 2.0));
  }

  /**
   * Returns the limits within which one further value falls: {@code mean ± t s sqrt(1+1/n)}.
   *
   * @param sample earlier values
   * @param alpha risk of a false alarm [-]
   */
  public static Interval predictionLimits(Sample sample, double alpha) {
    double half = predictionFactor(sample.count(), alpha) * sample.standardDeviation();
    return Interval.about(sample.mean(), half);
  }

  /**
   * Returns the factor of the prediction limits.
   *
   * @param n earlier values
   * @param alpha risk of a false alarm [-]
   * @return factor on the standard deviation [-]
   */
  public static double predictionFactor(int n, double alpha) {
    Require.atLeast("n", n, 2);
    return Quantiles.student(1 - alpha / 2, n - 1.0) * Math.sqrt(1 + 1.0 / n);
  }

  /**
   * Names runs that pure chance seldom makes: 8 on one side, 6 rising or falling, 2 of 3 beyond two
   * standard deviations.
   *
   * @param values values in order of time [any]
   * @param centre centre line [same]
   * @param sigma standard deviation [same]
   */
  public static List<String> runs(double[] values, double centre, double sigma) {
    List<String> found = new ArrayList<>();
    int side = 0;
    int trend = 0;
    for (int i = 0; i < values.length; i++) {
      int here = Double.compare(values[i], centre);
      side = here != 0 && Integer.signum(side) == here ? side + here : here;
      int step = i == 0 ? 0 : Double.compare(values[i], values[i - 1]);
      trend = step != 0 && Integer.signum(trend) == step ? trend + step : step;
      if (Math.abs(side) == 8) {
        found.add("8 values on one side of the centre, up to value " + (i + 1));
      }
      if (Math.abs(trend) == 5) {
        found.add(
            (trend > 0 ? "6 values rising" : "6 values falling") + ", up to value " + (i + 1));
      }
      if (i >= 2 && beyondTwo(values, i, centre, sigma)) {
        found.add("2 of 3 values beyond two standard deviations, up to value " + (i + 1));
      }
    }
    return found;
  }

  private static boolean beyondTwo(double[] values, int last, double centre, double sigma) {
    int high = 0;
    int low = 0;
    for (int i = last - 2; i <= last; i++) {
      high += values[i] > centre + 2 * sigma ? 1 : 0;
      low += values[i] < centre - 2 * sigma ? 1 : 0;
    }
    return high >= 2 || low >= 2;
  }

  private static List<Integer> outside(double[] values, double lower, double upper) {
    List<Integer> outside = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      if (values[i] < lower || values[i] > upper) {
        outside.add(i);
      }
    }
    return List.copyOf(outside);
  }

  private static void groupSize(int n) {
    Require.atLeast("n", n, 2);
    Require.atMost("n", n, 1000);
  }

  private static double integral(
      double low, double high, org.hipparchus.analysis.UnivariateFunction f) {
    double sum = 0;
    int pieces = 6;
    double width = (high - low) / pieces;
    for (int i = 0; i < pieces; i++) {
      GaussIntegrator g = INTEGRATORS.legendre(12, low + i * width, low + (i + 1) * width);
      sum += g.integrate(f);
    }
    return sum;
  }
}
