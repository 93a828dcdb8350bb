package fettle.mechanics.gears;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Every set of multipliers, tied together by shared wheels, with which a list can be met by so many
 * cone wheels; in packed numbers ({@link PrimeCode}), apart from a common factor.
 *
 * <p>Nothing is missed: give each target to one wheel and one multiplier, the wheel that can meet
 * most taking all it can. Some wheel meets at least targets over wheels, so the largest share of a
 * wheel lies between that and the number of multipliers; all its choices are tried, and each
 * settles as many multipliers. While multipliers remain unsettled, one of the other wheels that
 * meets a target by a settled multiplier also meets one by an unsettled one, as all are tied
 * together; it takes all the targets it can. All such wheels and all targets for its new
 * multipliers are tried. No wheel takes more than the largest share, which ends most branches.
 */
final class ListCores {

  private final long[] targets;
  private final int wheels;
  private final int multipliers;
  private final SearchLimits limits;
  private final GainBound gains;
  private final List<Set<Key>> cores = new ArrayList<>();
  private int share;
  private long tried;
  private boolean cut;

  /** A set of multipliers; the least code is 0. */
  @SuppressWarnings("ArrayRecordComponent") // compared by content
  record Key(long[] codes) {
    static Key of(long[] codes, int length) {
      long[] sorted = Arrays.copyOf(codes, length);
      Arrays.sort(sorted);
      long least = sorted[0];
      for (int i = 0; i < length; i++) {
        sorted[i] -= least;
      }
      return new Key(sorted);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Key key && Arrays.equals(codes, key.codes);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(codes);
    }
  }

  private ListCores(long[] targets, int wheels, int multipliers, SearchLimits limits) {
    this.targets = targets;
    this.wheels = wheels;
    this.multipliers = multipliers;
    this.limits = limits;
    this.gains = new GainBound(limits.steps());
    for (int size = 0; size <= multipliers; size++) {
      cores.add(new LinkedHashSet<>());
    }
  }

  /**
   * Finds them.
   *
   * @param targets codes of the list
   * @param wheels most cone wheels
   * @param multipliers most multipliers in a set
   * @param limits bounds of the work
   */
  static ListCores of(long[] targets, int wheels, int multipliers, SearchLimits limits) {
    ListCores all = new ListCores(targets, wheels, multipliers, limits);
    all.start();
    return all;
  }

  /** Returns the sets of so many multipliers. */
  Set<Key> ofSize(int size) {
    return cores.get(size);
  }

  /** Tells whether there is no set of up to so many multipliers. */
  boolean noneUpTo(int size) {
    return cores.subList(0, Math.max(0, size) + 1).stream().allMatch(Set::isEmpty);
  }

  /** Returns how many sets were tried. */
  long tried() {
    return tried;
  }

  /** Returns the branches of covers tried. */
  long steps() {
    return gains.steps();
  }

  /** Tells whether the bound of the work was reached, so that sets may be missing. */
  boolean cut() {
    return cut || gains.cut();
  }

  private void start() {
    int n = targets.length;
    int least = (n + wheels - 1) / wheels;
    for (share = least; share <= Math.min(multipliers, n); share++) {
      chooseFirst(new long[multipliers], 0, 0, (1L << n) - 1);
    }
  }

  /** Chooses the targets of the first wheel, whose size is 1: they are its multipliers. */
  private void chooseFirst(long[] settled, int size, int from, long open) {
    if (size == share) {
      grow(settled, size, open, wheels - 1);
      return;
    }
    for (int t = from; t < targets.length && !cut; t++) {
      settled[size] = targets[t];
      chooseFirst(settled, size + 1, t + 1, open & ~(1L << t));
    }
  }

  private void grow(long[] settled, int size, long open, int left) {
    if (cut || Long.bitCount(open) > left * share) {
      return;
    }
    record(settled, size);
    if (size == multipliers || left == 0) {
      return;
    }
    for (int i = 0; i < size; i++) {
      for (long rest = open; rest != 0; rest &= rest - 1) {
        long wheel = targets[Long.numberOfTrailingZeros(rest)] - settled[i];
        long still = open & ~met(wheel, settled, size, open);
        int taken = Long.bitCount(open) - Long.bitCount(still);
        extend(settled, size, still, left - 1, wheel, taken, still);
      }
    }
  }

  private long met(long wheel, long[] settled, int size, long open) {
    long met = 0;
    for (long rest = open; rest != 0; rest &= rest - 1) {
      int t = Long.numberOfTrailingZeros(rest);
      for (int i = 0; i < size; i++) {
        if (targets[t] - settled[i] == wheel) {
          met |= 1L << t;
        }
      }
    }
    return met;
  }

  /** Gives the wheel one more target by a new multiplier, then grows on or gives it another. */
  private void extend(
      long[] settled, int size, long open, int left, long wheel, int taken, long choices) {
    if (size == multipliers || taken == share) {
      return;
    }
    for (long rest = choices; rest != 0; rest &= rest - 1) {
      int t = Long.numberOfTrailingZeros(rest);
      long[] more = settled.clone();
      more[size] = targets[t] - wheel;
      long still = open & ~(1L << t);
      grow(more, size + 1, still, left);
      extend(more, size + 1, still, left, wheel, taken + 1, rest & (rest - 1));
    }
  }

  private void record(long[] settled, int size) {
    tried++;
    if (tried > limits.sets() || gains.cut() || limits.cancelledAt(tried)) {
      cut = true;
      return;
    }
    gains.clear();
    for (int t = 0; t < targets.length; t++) {
      for (int i = 0; i < size; i++) {
        gains.add(targets[t] - settled[i], t);
      }
    }
    if (gains.covered(targets.length, wheels)) {
      cores.get(size).add(Key.of(settled, size));
    }
  }
}
