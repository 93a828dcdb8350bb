package fettle.mechanics.metrology;

import java.util.ArrayList;
import java.util.List;

/**
 * One-way analysis of variance: do the setups (days, re-seatings) differ more than repeated
 * readings of one setup?
 *
 * @param f variance between setups over variance within [-]
 * @param above degrees of freedom between
 * @param below degrees of freedom within
 * @param between mean square between setups [same, squared]
 * @param within mean square within setups [same, squared]
 * @param setupDeviation standard deviation of the setups themselves, 0 if none is seen [same]
 * @param mean mean of all readings [same]
 * @param uncertainty standard uncertainty of the mean [same]
 * @param freedom degrees of freedom of that uncertainty [-]
 */
public record VarianceAnalysis(
    double f,
    double above,
    double below,
    double between,
    double within,
    double setupDeviation,
    double mean,
    double uncertainty,
    double freedom) {

  /** Risk at which the setups count as different. */
  static final double RISK = 0.05;

  /**
   * Returns the probability of such an F if all setups were alike.
   *
   * @return p value [-]
   */
  public double probability() {
    return Double.isInfinite(f) ? 0 : Quantiles.fisherTail(f, above, below);
  }

  /** Tells whether the setups differ at the 5 % level. */
  public boolean setupsDiffer() {
    return probability() < RISK;
  }

  /** Analyses readings grouped by setup. */
  public static VarianceAnalysis of(List<Sample> setups) {
    Require.atLeast("setups", setups.size(), 2);
    int n = setups.stream().mapToInt(Sample::count).sum();
    int k = setups.size();
    if (n <= k) {
      throw new IllegalArgumentException(
          "readings: found one in each setup, expected at least 2 in one of them");
    }
    double origin = setups.get(0).values()[0];
    double[] all = new double[n];
    int at = 0;
    double within = 0;
    double squares = 0;
    for (Sample setup : setups) {
      within += setup.sumOfSquares();
      squares += (double) setup.count() * setup.count();
      for (double value : setup.values()) {
        all[at++] = value - origin;
      }
    }
    double grand = Sample.of(all).mean();
    double between = 0;
    for (Sample setup : setups) {
      double d = setup.mean() - origin - grand;
      between += setup.count() * d * d;
    }
    double perSetup = (n - squares / n) / (k - 1);
    return of(between / (k - 1), within / (n - k), perSetup, k, n, origin + grand);
  }

  /**
   * Analyses setups of which only mean and standard deviation are known.
   *
   * @param means mean of each setup [any]
   * @param deviations standard deviation of each setup [same]
   * @param each readings in each setup
   */
  public static VarianceAnalysis of(double[] means, double[] deviations, int each) {
    Require.sameLength("deviations", deviations.length, means.length);
    Require.atLeast("setups", means.length, 2);
    Require.atLeast("readings in each setup", each, 2);
    double within = 0;
    for (double s : deviations) {
      within += Require.notNegative("standard deviation", s) * s / means.length;
    }
    Sample sample = Sample.of(means);
    double s = sample.standardDeviation();
    return of(each * s * s, within, each, means.length, means.length * each, sample.mean());
  }

  private static VarianceAnalysis of(
      double between, double within, double perSetup, int k, int n, double mean) {
    double f = within > 0 ? between / within : between > 0 ? Double.POSITIVE_INFINITY : 0;
    double above = k - 1.0;
    double below = n - k;
    double setup = Math.sqrt(Math.max(0, (between - within) / perSetup));
    boolean differ = Double.isInfinite(f) || Quantiles.fisherTail(f, above, below) < RISK;
    double pooled = (above * between + below * within) / (n - 1.0);
    double u = differ ? Math.sqrt(between / perSetup / k) : Math.sqrt(pooled / n);
    return new VarianceAnalysis(
        f, above, below, between, within, setup, mean, u, differ ? above : n - 1.0);
  }

  /**
   * Levene's test with medians: does the scatter differ between groups?
   *
   * @return the analysis of the distances from the medians; its f is Levene's W
   */
  public static VarianceAnalysis levene(List<Sample> groups) {
    List<Sample> distances = new ArrayList<>();
    for (Sample group : groups) {
      double median = group.median();
      double[] distance = group.values();
      for (int i = 0; i < distance.length; i++) {
        distance[i] = Math.abs(distance[i] - median);
      }
      distances.add(Sample.of(distance));
    }
    return of(distances);
  }
}
