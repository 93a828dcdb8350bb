package fettle.mechanics.motion;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** Least distances over all positions, each between proven bounds. */
public final class Clearance {

  /** How many distances a pair is given before it is left open. */
  public static final int BUDGET = 20_000;

  private Clearance() {}

  /**
   * Returns the least distance of two solids.
   *
   * @param tolerance how near the bounds shall come [mm]
   * @param budget how many distances may be computed
   */
  public static Gap of(Pair pair, Domain domain, double tolerance, int budget) {
    check(tolerance, budget);
    PairSearch search = new PairSearch(pair, domain);
    while (!search.closed(tolerance) && search.evaluations() < budget) {
      search.step();
    }
    return search.gap(tolerance);
  }

  /**
   * Returns the distance of two solids at one position.
   *
   * @param position position of every axis [mm or rad]
   * @throws IllegalArgumentException if there is not one position for each axis
   */
  public static Gap at(Pair pair, Domain domain, double[] position) {
    if (position.length != domain.size()) {
      throw new IllegalArgumentException(
          "a position needs " + domain.size() + " numbers, found " + position.length);
    }
    return new PairSearch(pair, new Domain(domain.names(), position, position)).gap(1e-6);
  }

  /**
   * Returns the least distance of every pair, the least first.
   *
   * @param tolerance how near the bounds shall come [mm]
   * @param budget how many distances each pair may take
   */
  public static List<Gap> table(List<Pair> pairs, Domain domain, double tolerance, int budget) {
    return pairs.parallelStream()
        .map(pair -> of(pair, domain, tolerance, budget))
        .sorted(Comparator.comparingDouble(Gap::upper).thenComparing(g -> g.pair().name()))
        .toList();
  }

  /**
   * Returns the least distance of every pair, but leaves a pair as soon as it is proven to keep a
   * distance that is enough.
   *
   * @param tolerance how near the bounds shall come [mm]
   * @param budget how many distances each pair may take
   * @param enough distance beyond which nothing more is asked [mm]
   */
  public static List<Gap> table(
      List<Pair> pairs, Domain domain, double tolerance, int budget, double enough) {
    check(tolerance, budget);
    return pairs.parallelStream()
        .map(pair -> upTo(pair, domain, tolerance, budget, enough))
        .toList();
  }

  private static Gap upTo(Pair pair, Domain domain, double tolerance, int budget, double enough) {
    PairSearch search = new PairSearch(pair, domain);
    while (!search.closed(tolerance) && search.evaluations() < budget && search.lower() < enough) {
      search.step();
    }
    return search.gap(tolerance);
  }

  /**
   * Returns the least distance of the whole machine: no pair comes nearer than its lower bound.
   *
   * @param tolerance how near the bounds shall come [mm]
   * @param budget how many distances all pairs together may take
   * @throws IllegalArgumentException if there is no pair
   */
  public static Gap least(List<Pair> pairs, Domain domain, double tolerance, int budget) {
    check(tolerance, budget);
    if (pairs.isEmpty()) {
      throw new IllegalArgumentException("no two solids move against each other");
    }
    PriorityQueue<PairSearch> open =
        new PriorityQueue<>(Comparator.comparingDouble(PairSearch::lower));
    List<PairSearch> all = pairs.parallelStream().map(p -> new PairSearch(p, domain)).toList();
    open.addAll(all);
    PairSearch best = all.get(0);
    int spent = 0;
    for (PairSearch search : all) {
      best = search.upper() < best.upper() ? search : best;
      spent += search.evaluations();
    }
    while (spent < budget) {
      PairSearch next = open.poll();
      if (next == null || best.upper() <= 0 || best.upper() - next.lower() <= tolerance) {
        return machine(best, next, tolerance, spent);
      }
      int before = next.evaluations();
      next.step();
      spent += Math.max(1, next.evaluations() - before);
      best = next.upper() < best.upper() ? next : best;
      if (next != best || !next.closed(tolerance)) {
        open.add(next);
      }
    }
    return machine(best, open.peek(), tolerance, spent);
  }

  private static Gap machine(
      PairSearch best,
      @org.jspecify.annotations.Nullable PairSearch next,
      double tolerance,
      int spent) {
    Gap gap = best.gap(tolerance);
    double lower = next == null ? gap.lower() : Math.min(gap.lower(), Math.max(0, next.lower()));
    return new Gap(
        gap.pair(),
        lower,
        gap.upper(),
        gap.position(),
        gap.onFirst(),
        gap.onSecond(),
        spent,
        tolerance);
  }

  private static void check(double tolerance, int budget) {
    if (!(tolerance >= 1e-6 && tolerance <= 1e6)) {
      throw new IllegalArgumentException(
          "the bounds can be asked to come within 0.000001 to 1 000 000 mm, found " + tolerance);
    }
    if (budget < 1) {
      throw new IllegalArgumentException("at least one distance must be computed, found " + budget);
    }
  }
}
