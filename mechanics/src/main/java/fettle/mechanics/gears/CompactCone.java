package fettle.mechanics.gears;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Of all cones with so many wheels that give every target, one whose largest wheel is the smallest
 * multiple of its smallest: the shortest and lowest box for the same number of wheels.
 */
final class CompactCone {

  private final TreeMap<Fraction, Long> sets = new TreeMap<>();
  private final int targets;

  CompactCone(int targets) {
    this.targets = targets;
  }

  /** Tells that a wheel meets a target. */
  void add(Fraction wheel, int target) {
    sets.merge(wheel, 1L << target, (a, b) -> a | b);
  }

  /**
   * Returns the wheels; empty if so many do not meet all targets.
   *
   * @param wheels most wheels
   * @param steps branches of covers granted for each range of wheels looked at
   */
  List<Fraction> of(int wheels, long steps) {
    List<Fraction> sizes = List.copyOf(sets.keySet());
    List<Fraction> best = List.of();
    int end = 0;
    for (int start = 0; start < sizes.size(); start++) {
      List<Fraction> cone = within(sizes.subList(start, end), wheels, steps);
      while (cone.isEmpty() && end < sizes.size()) {
        end++;
        cone = within(sizes.subList(start, end), wheels, steps);
      }
      if (cone.isEmpty()) {
        break;
      }
      List<Fraction> sorted = new ArrayList<>(cone);
      sorted.sort(null);
      if (best.isEmpty() || span(sorted).compareTo(span(best)) < 0) {
        best = List.copyOf(sorted);
      }
    }
    return best;
  }

  private static Fraction span(List<Fraction> ascending) {
    return ascending.get(ascending.size() - 1).over(ascending.get(0));
  }

  private List<Fraction> within(List<Fraction> sizes, int wheels, long steps) {
    long met = 0;
    LeastCover cover = new LeastCover(targets).within(steps);
    for (Fraction wheel : sizes) {
      long set = sets.getOrDefault(wheel, 0L);
      met |= set;
      for (long rest = set; rest != 0; rest &= rest - 1) {
        cover.add(wheel, Long.numberOfTrailingZeros(rest));
      }
    }
    return met == (1L << targets) - 1 ? cover.fewerThan(wheels + 1) : List.of();
  }
}
