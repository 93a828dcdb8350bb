package fettle.mechanics.metrology;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.Well19937c;

/** How many readings a trial needs, and where. */
public final class TestPlan {

  private TestPlan() {}

  /**
   * Returns the sum of squared distances from the middle of equally spaced points, {@code L^2
   * N(N+1)/(12(N-1))}.
   *
   * @param points number of points N
   * @param travel distance of the ends L [mm]
   * @return sum of squares [mm2]
   */
  public static double spread(int points, double travel) {
    Require.atLeast("points", points, 2);
    Require.positive("travel", travel);
    return travel * travel * points * (points + 1.0) / (12 * (points - 1.0));
  }

  /**
   * Returns the expanded uncertainty (k = 2) of the error at the end of the travel.
   *
   * @param points number of points
   * @param travel travel [mm]
   * @param sigma scatter of a reading [mm]
   * @param runs there-and-back runs, two passes each
   * @return expanded uncertainty [mm]
   */
  public static double endUncertainty(int points, double travel, double sigma, int runs) {
    Require.atLeast("runs", runs, 1);
    return 2
        * travel
        * Require.notNegative("sigma", sigma)
        / Math.sqrt(2.0 * runs * spread(points, travel));
  }

  /**
   * Returns the smallest number of there-and-back runs that brings the error at the end within a
   * wanted uncertainty.
   *
   * @param points number of points
   * @param travel travel [mm]
   * @param sigma scatter of a reading [mm]
   * @param wanted wanted expanded uncertainty [mm]
   */
  public static int runs(int points, double travel, double sigma, double wanted) {
    double one = endUncertainty(points, travel, sigma, 1);
    double runs = Math.pow(one / Require.positive("wanted", wanted), 2);
    if (runs > 1e6) {
      throw new IllegalArgumentException(
          "wanted: needs more than a million runs; use a finer instrument or more points");
    }
    return (int) Math.max(1, Math.ceil(runs - 1e-9));
  }

  /**
   * Returns targets after ISO 230-2: at least 5 and at least 5 for each metre, {@code (i-1) p + r}
   * with a small random offset r, so that no period hides.
   *
   * @param travel travel [mm]
   * @param seed seed of the offsets
   * @return targets in rising order [mm]
   */
  public static double[] targets(double travel, long seed) {
    Require.positive("travel", travel);
    if (travel > 1e5) {
      throw new IllegalArgumentException("travel: found " + travel + " mm, expected up to 100 m");
    }
    int n = (int) Math.max(5, Math.ceil(5 * travel / 1000 - 1e-9));
    double pitch = travel / n;
    Well19937c random = new Well19937c(seed);
    double[] targets = new double[n];
    for (int i = 0; i < n; i++) {
      targets[i] = (i + 0.1 + 0.8 * random.nextDouble()) * pitch;
    }
    return targets;
  }

  /**
   * Names the periodic errors that targets cannot see, because they are whole periods apart, or see
   * badly.
   *
   * @param targets targets [mm]
   * @param periods periods of the errors [mm]
   */
  public static List<String> hidden(double[] targets, double[] periods) {
    List<String> hidden = new ArrayList<>();
    for (double period : periods) {
      Require.positive("period", period);
      double c = 0;
      double s = 0;
      for (double target : targets) {
        c += HarmonicDesign.cosine(target / period);
        s += HarmonicDesign.sine(target / period);
      }
      double alike = Math.hypot(c, s) / targets.length;
      if (alike > 0.9) {
        hidden.add(
            "period "
                + Numbers.significant(period, 6)
                + " mm is hidden: the targets stand at "
                + Numbers.fixed(100 * alike, 0)
                + " % the same place of it");
      }
    }
    return hidden;
  }
}
