package fettle.mechanics.gears;

/**
 * Every wheel that can meet a target with given multipliers, and which targets it meets; in packed
 * numbers ({@link PrimeCode}), made anew for millions of sets of multipliers.
 *
 * <p>The quick bound: n wheels meet at most as many targets as the n that meet the most.
 */
final class GainBound {

  private static final int SLOTS = 2048;

  private final long[] keys = new long[SLOTS];
  private final long[] masks = new long[SLOTS];
  private final int[] stamp = new int[SLOTS];
  private final int[] used = new int[SLOTS];
  private int count;
  private int now;
  private final long most;
  private long steps;

  /** Grants so many branches of covers in all. */
  GainBound(long most) {
    this.most = most;
  }

  /** Returns the branches of covers tried. */
  long steps() {
    return steps;
  }

  /** Tells whether the branches granted are used up, so that a cover may have been missed. */
  boolean cut() {
    return steps > most;
  }

  /** Forgets all wheels. */
  void clear() {
    now++;
    count = 0;
  }

  /** Tells that a wheel meets a target. */
  void add(long wheel, int target) {
    long mixed = wheel * 0x9E3779B97F4A7C15L;
    int slot = (int) (mixed >>> 53);
    while (stamp[slot] == now && keys[slot] != wheel) {
      slot = (slot + 1) & (SLOTS - 1);
    }
    if (stamp[slot] != now) {
      stamp[slot] = now;
      keys[slot] = wheel;
      masks[slot] = 0;
      used[count] = slot;
      count++;
    }
    masks[slot] |= 1L << target;
  }

  /** Tells whether so many wheels might meet so many targets. */
  boolean mayMeet(int targets, int wheels) {
    int[] gains = new int[64];
    for (int i = 0; i < count; i++) {
      gains[Long.bitCount(masks[used[i]])]++;
    }
    int left = wheels;
    int met = 0;
    for (int gain = 63; gain > 0 && left > 0; gain--) {
      int taken = Math.min(left, gains[gain]);
      met += taken * gain;
      left -= taken;
    }
    return met >= targets;
  }

  /** Tells whether so many wheels meet so many targets; no, if the branches granted are used up. */
  boolean covered(int targets, int wheels) {
    if (!mayMeet(targets, wheels)) {
      return false;
    }
    long[] sets = new long[count];
    for (int i = 0; i < count; i++) {
      sets[i] = masks[used[i]];
    }
    LeastCover cover = LeastCover.ofSets(sets, targets).within(most - steps);
    boolean covered = cover.possible(wheels);
    steps += cover.steps();
    return covered;
  }
}
