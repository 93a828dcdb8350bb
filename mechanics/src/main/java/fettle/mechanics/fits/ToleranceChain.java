package fettle.mechanics.fits;

import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Interval;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * A linear chain of sizes that add up to a gap: g = sum of a_i x_i. Worst case, root sum of squares
 * and random draws answer how far the gap can be from its mean.
 *
 * @param links the sizes, in the order of the path
 */
public record ToleranceChain(List<Link> links) {

  /** How a size is spread within its tolerance. */
  public enum Spread {
    /** Every value equally likely. */
    UNIFORM,
    /** Normal; the half tolerance is three standard deviations. */
    NORMAL,
    /** A clearance: the part lies against the wall at a random angle, t cos(angle). */
    CLEARANCE
  }

  /**
   * One size of the chain.
   *
   * @param name what it is
   * @param factor +1, -1 or a lever ratio [-]
   * @param mean middle of its limits [mm]
   * @param half half its tolerance, 0 or more [mm]
   * @param spread how it is spread
   */
  public record Link(String name, double factor, double mean, double half, Spread spread) {

    /** Refuses a negative tolerance and numbers that are none. */
    public Link {
      Bound.notNegative(name + ", half tolerance", half, "mm");
      Bound.within(name + ", factor", factor, -1e9, 1e9, "");
      Bound.within(name + ", middle", mean, -1e9, 1e9, "mm");
    }

    /**
     * Returns how far this link alone can move the gap.
     *
     * @return reach, plus and minus [mm]
     */
    double reach() {
      return Math.abs(factor) * half;
    }

    /**
     * Returns the standard deviation of this link's share of the gap.
     *
     * @return sigma [mm]
     */
    double sigma() {
      return switch (spread) {
        case UNIFORM -> reach() / Math.sqrt(3);
        case NORMAL -> reach() / 3;
        case CLEARANCE -> reach() / Math.sqrt(2);
      };
    }

    private double draw(Random random) {
      return switch (spread) {
        case UNIFORM -> half * (2 * random.nextDouble() - 1);
        case NORMAL -> half / 3 * random.nextGaussian();
        case CLEARANCE -> half * Math.cos(2 * Math.PI * random.nextDouble());
      };
    }
  }

  /**
   * What random draws of the chain show.
   *
   * @param ninetyFive half-width about the mean that holds 95 % of the draws [mm]
   * @param nearlyAll half-width about the mean that holds 99.73 % of the draws [mm]
   * @param sigma standard deviation of the draws [mm]
   * @param outside share of draws outside the limits asked for [-]
   */
  public record Draws(double ninetyFive, double nearlyAll, double sigma, double outside) {}

  /** Refuses an empty chain. */
  public ToleranceChain {
    links = List.copyOf(links);
    if (links.isEmpty() || links.size() > 1000) {
      throw new IllegalArgumentException("a chain needs 1 to 1000 links, found " + links.size());
    }
  }

  /**
   * Returns the gap with every size at its middle.
   *
   * @return mean gap [mm]
   */
  public double mean() {
    return links.stream().mapToDouble(l -> l.factor() * l.mean()).sum();
  }

  /**
   * Returns the half-width that no combination exceeds: sum of |a| t.
   *
   * @return worst case, plus and minus [mm]
   */
  public double worstCase() {
    return links.stream().mapToDouble(Link::reach).sum();
  }

  /**
   * Returns the root sum of squares of |a| t.
   *
   * @return statistical half-width, the same multiple of sigma as the tolerances are [mm]
   */
  public double rootSumOfSquares() {
    return Math.sqrt(links.stream().mapToDouble(l -> l.reach() * l.reach()).sum());
  }

  /**
   * Returns the standard deviation of the gap with the spreads of the links.
   *
   * @return sigma [mm]
   */
  public double sigma() {
    return Math.sqrt(links.stream().mapToDouble(l -> l.sigma() * l.sigma()).sum());
  }

  /**
   * Returns each link's share of the variance of the gap; they add up to 1.
   *
   * @return shares in the order of the links; all 0 if nothing varies [-]
   */
  public double[] shares() {
    double all = sigma() * sigma();
    return links.stream().mapToDouble(l -> all > 0 ? l.sigma() * l.sigma() / all : 0).toArray();
  }

  /**
   * Draws the chain at random; the same seed gives the same draws.
   *
   * @param limits limits of the gap whose violation is counted [mm]
   * @param draws how many, 1000 to 5 000 000
   * @param seed starts the sequence of random numbers
   */
  public Draws draws(Interval limits, int draws, long seed) {
    if (draws < 1000 || draws > 5_000_000) {
      throw new IllegalArgumentException(
          "draws " + draws + ": expected 1000 to 5000000; 200000 is usual");
    }
    if ((long) draws * links.size() > 100_000_000L) {
      throw new IllegalArgumentException(
          "draws times links must not exceed 100 million; take fewer draws");
    }
    Random random = new Random(seed);
    double mean = mean();
    double[] away = new double[draws];
    int outside = 0;
    double squares = 0;
    for (int i = 0; i < draws; i++) {
      double gap = 0;
      for (Link link : links) {
        gap += link.factor() * link.draw(random);
      }
      outside += limits.contains(mean + gap) ? 0 : 1;
      squares += gap * gap;
      away[i] = Math.abs(gap);
    }
    Arrays.sort(away);
    return new Draws(
        quantile(away, 0.95),
        quantile(away, 0.9973),
        Math.sqrt(squares / draws),
        outside / (double) draws);
  }

  private static double quantile(double[] sorted, double share) {
    return sorted[Math.min(sorted.length - 1, (int) Math.ceil(share * sorted.length) - 1)];
  }
}
