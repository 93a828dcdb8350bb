package fettle.mechanics.metrology;

import fettle.mechanics.base.Interval;
import java.util.Arrays;

/** Repeated readings of one quantity, and what statistics says of them. */
public final class Sample {

  private final double[] values;

  private Sample(double[] values) {
    this.values = values;
  }

  /**
   * Takes readings in the order in which they were made.
   *
   * @param values at least one finite reading [any]
   */
  public static Sample of(double... values) {
    Require.atLeast("readings", values.length, 1);
    for (double value : values) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("readings: found " + value + ", expected a number");
      }
    }
    return new Sample(values.clone());
  }

  /** Returns the number of readings. */
  public int count() {
    return values.length;
  }

  /**
   * Returns the readings in order.
   *
   * @return the readings [any]
   */
  public double[] values() {
    return values.clone();
  }

  /**
   * Returns the arithmetic mean, computed in two passes about the first reading.
   *
   * @return mean [same]
   */
  public double mean() {
    double first = values[0];
    double provisional = first + sum(values, first) / values.length;
    return provisional + sum(values, provisional) / values.length;
  }

  /**
   * Returns the sum of squared deviations from the mean.
   *
   * @return sum of squares [same, squared]
   */
  public double sumOfSquares() {
    double mean = mean();
    double squares = 0;
    double rest = 0;
    for (double value : values) {
      double d = value - mean;
      squares += d * d;
      rest += d;
    }
    return Math.max(0, squares - rest * rest / values.length);
  }

  /**
   * Returns the standard deviation with n - 1.
   *
   * @return standard deviation [same]
   * @throws IllegalArgumentException with fewer than two readings
   */
  public double standardDeviation() {
    if (values.length < 2) {
      throw new IllegalArgumentException(
          "standard deviation: found 1 reading, expected at least 2; repeat the reading");
    }
    return Math.sqrt(sumOfSquares() / (values.length - 1));
  }

  /**
   * Returns the standard uncertainty of the mean; never below that of the resolution.
   *
   * @param resolution smallest step that can be read, 0 if not known [same]
   * @return standard uncertainty [same]
   */
  public double uncertaintyOfMean(double resolution) {
    double read = Require.notNegative("resolution", resolution) / Math.sqrt(12);
    return Math.max(standardDeviation(), read) / Math.sqrt(values.length);
  }

  /**
   * Returns the middle reading.
   *
   * @return median [same]
   */
  public double median() {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
  }

  /**
   * Returns the median of the distances from the median.
   *
   * @return median absolute deviation [same]
   */
  public double medianDeviation() {
    double median = median();
    double[] distance = new double[values.length];
    for (int i = 0; i < distance.length; i++) {
      distance[i] = Math.abs(values[i] - median);
    }
    return Sample.of(distance).median();
  }

  /**
   * Returns the lag-1 autocorrelation {@code r1 = sum((y_i-m)(y_(i+1)-m))/sum((y_i-m)^2)}.
   *
   * @return r1, 0 if all readings are equal [-]
   */
  public double lagOne() {
    double mean = mean();
    double above = 0;
    for (int i = 0; i + 1 < values.length; i++) {
      above += (values[i] - mean) * (values[i + 1] - mean);
    }
    double below = sumOfSquares();
    return below > 0 ? above / below : 0;
  }

  /**
   * Returns how many independent readings these are worth: {@code n(1-r1)/(1+r1)} where r1 is
   * beyond {@code 2/sqrt(n)}, otherwise n.
   *
   * @return effective number of readings, from 1 to n for positive r1 [-]
   */
  public double effectiveCount() {
    double r1 = lagOne();
    int n = values.length;
    if (Math.abs(r1) <= 2 / Math.sqrt(n)) {
      return n;
    }
    return Math.max(1, n * (1 - r1) / (1 + r1));
  }

  /**
   * Returns the interval that holds the true standard deviation.
   *
   * @param confidence probability, e.g. 0.95 [-]
   */
  public Interval deviationInterval(double confidence) {
    Require.between("confidence", confidence, 0, 1);
    double nu = values.length - 1.0;
    double s = standardDeviation();
    double tail = (1 - confidence) / 2;
    return new Interval(
        s * Math.sqrt(nu / Quantiles.chiSquared(1 - tail, nu)),
        s * Math.sqrt(nu / Quantiles.chiSquared(tail, nu)));
  }

  private static double sum(double[] values, double origin) {
    double sum = 0;
    for (double value : values) {
      sum += value - origin;
    }
    return sum;
  }
}
