package fettle.mechanics.metrology;

import java.util.ArrayList;
import java.util.List;

/** Readings that do not belong to the others. They are named; nothing is dropped. */
public final class Outliers {

  /** Limit of the robust score. */
  public static final double ROBUST_LIMIT = 3.5;

  private Outliers() {}

  /**
   * Grubbs' statistic of one sample.
   *
   * @param statistic {@code G = max|x-mean|/s} [-]
   * @param critical critical value [-]
   * @param index which reading, counted from 0
   */
  public record Grubbs(double statistic, double critical, int index) {
    /** Tells whether the reading is an outlier at the chosen level. */
    public boolean isOutlier() {
      return statistic > critical;
    }
  }

  /** Which side an outlier may lie on. */
  public enum Side {
    BOTH,
    HIGH,
    LOW
  }

  /**
   * Tests the most extreme reading.
   *
   * @param sample at least 3 readings that are not all equal
   * @param alpha risk of naming a good reading [-]
   * @param side where an outlier is expected
   */
  public static Grubbs grubbs(Sample sample, double alpha, Side side) {
    double s = sample.standardDeviation();
    int index = extreme(sample, side);
    double distance = Math.abs(sample.values()[index] - sample.mean());
    double g = s > 0 ? distance / s : 0;
    return new Grubbs(g, critical(sample.count(), alpha, side == Side.BOTH ? 2 : 1), index);
  }

  /**
   * Returns the critical value {@code (n-1)/sqrt(n) sqrt(t^2/(n-2+t^2))}.
   *
   * @param n readings, 3 or more
   * @param alpha risk [-]
   * @param sides 1 or 2
   * @return critical value [-]
   */
  public static double critical(int n, double alpha, int sides) {
    Require.atLeast("n", n, 3);
    Require.between("alpha", alpha, 0, 1);
    if (sides != 1 && sides != 2) {
      throw new IllegalArgumentException("sides: found " + sides + ", expected 1 or 2");
    }
    double t = Quantiles.student(1 - alpha / (sides * (double) n), n - 2.0);
    return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
  }

  /**
   * Returns the places of readings whose robust score {@code 0.6745|x-median|/MAD} is above 3.5.
   */
  public static List<Integer> robust(Sample sample) {
    double median = sample.median();
    double mad = sample.medianDeviation();
    List<Integer> found = new ArrayList<>();
    double[] values = sample.values();
    for (int i = 0; i < values.length; i++) {
      if (0.6745 * Math.abs(values[i] - median) > ROBUST_LIMIT * mad && mad > 0) {
        found.add(i);
      }
    }
    return found;
  }

  private static int extreme(Sample sample, Side side) {
    double[] values = sample.values();
    double mean = sample.mean();
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < values.length; i++) {
      double d = values[i] - mean;
      double size = side == Side.BOTH ? Math.abs(d) : side == Side.HIGH ? d : -d;
      if (size > most) {
        most = size;
        best = i;
      }
    }
    return best;
  }
}
