package fettle.mechanics.motion;

import java.util.List;

/**
 * How far an axis can go before anything comes nearer than a wanted gap, whatever the other axes do
 * within their limits.
 *
 * @param from where it starts [mm or rad]
 * @param to the last position that is proven free [mm or rad]
 * @param limit where the travel ends [mm or rad]
 * @param lost travel that is lost [mm or rad]
 * @param hit who is met; empty if the whole travel is free
 * @param certified whether the end was found to the tolerance
 */
public record FreeTravel(
    double from, double to, double limit, double lost, String hit, boolean certified) {

  private static final int MOST = 60;

  /** Distances one stretch may take before it counts as not free. */
  private static final int BUDGET = 4_000;

  /**
   * Advances an axis from the beginning of its interval to the end, or back.
   *
   * <p>The gap over all positions of the interval gone through so far only falls as the interval
   * grows; so the place where it passes the wanted gap is bracketed by halving, and what is
   * returned lies on the proven side.
   *
   * @param pairs what may meet
   * @param domain limits of all axes
   * @param axis the axis that moves
   * @param gap wanted gap [mm]
   * @param tolerance how near the end is found [mm or rad]
   * @param direction 1 from the low end, -1 from the high end
   */
  public static FreeTravel of(
      List<Pair> pairs, Domain domain, int axis, double gap, double tolerance, int direction) {
    if (!(gap >= 0 && gap <= 1e5)) {
      throw new IllegalArgumentException("the gap must be 0 to 100 000 mm, found " + gap + " mm");
    }
    if (!(tolerance >= 1e-6) || Math.abs(direction) != 1) {
      throw new IllegalArgumentException(
          "the end can be found to 0.000001 at best, going one way (1 or -1)");
    }
    double from = direction > 0 ? domain.low()[axis] : domain.high()[axis];
    double limit = direction > 0 ? domain.high()[axis] : domain.low()[axis];
    Advance advance = new Advance(pairs, domain, axis, gap);
    return advance.run(from, limit, tolerance);
  }

  /** The search of one end. */
  private static final class Advance {
    private final List<Pair> pairs;
    private final Domain domain;
    private final int axis;
    private final double gap;
    private String hit = "";
    private boolean open;

    Advance(List<Pair> pairs, Domain domain, int axis, double gap) {
      this.pairs = pairs;
      this.domain = domain;
      this.axis = axis;
      this.gap = gap;
    }

    FreeTravel run(double from, double limit, double tolerance) {
      if (free(from, limit)) {
        return new FreeTravel(from, limit, limit, 0, "", true);
      }
      if (!free(from, from)) {
        return new FreeTravel(from, from, limit, Math.abs(limit - from), hit, !open);
      }
      double good = from;
      double bad = limit;
      for (int i = 0; i < MOST && Math.abs(bad - good) > tolerance; i++) {
        double half = (good + bad) / 2;
        if (free(good, half)) {
          good = half;
        } else {
          bad = half;
        }
      }
      return new FreeTravel(from, good, limit, Math.abs(limit - good), hit, !open);
    }

    /** Tells whether it is proven that nothing comes nearer between two positions. */
    private boolean free(double a, double b) {
      Domain gone = domain.with(axis, Math.min(a, b), Math.max(a, b));
      for (Pair pair : pairs) {
        PairSearch search = new PairSearch(pair, gone);
        while (search.lower() < gap + 1e-9
            && search.upper() > gap
            && search.evaluations() < BUDGET
            && !search.closed(1e-6)) {
          search.step();
        }
        if (!(search.lower() >= gap - 1e-6 && search.upper() > 0)) {
          open |= search.upper() > gap + 1e-6;
          hit = pair.name();
          return false;
        }
      }
      return true;
    }
  }
}
