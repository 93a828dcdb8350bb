package fettle.mechanics.gears;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The fewest cone wheels that give every target, for multipliers that are settled: an exact set
 * cover. Each target can be met by at most one wheel a multiplier, so the search branches little.
 */
final class LeastCover {

  private final Map<Fraction, Integer> index = new LinkedHashMap<>();
  private final List<Fraction> wheels = new ArrayList<>();
  private long[] covers = new long[16];
  private final int[][] serving;
  private final int targets;
  private int[] best = {};
  private int bestSize;
  private long steps;
  private long mostSteps = Long.MAX_VALUE;

  /** Prepares a cover of so many targets. */
  LeastCover(int targets) {
    if (targets > 62) {
      throw new IllegalArgumentException(
          "at most 62 targets can be met by one box, found " + targets);
    }
    this.targets = targets;
    this.serving = new int[targets][0];
  }

  /** Prepares a cover by wheels that are given by the targets they meet only. */
  static LeastCover ofSets(long[] sets, int targets) {
    LeastCover cover = new LeastCover(targets);
    cover.covers = sets;
    int[] ends = new int[targets];
    for (long set : sets) {
      for (long rest = set; rest != 0; rest &= rest - 1) {
        ends[Long.numberOfTrailingZeros(rest)]++;
      }
    }
    for (int t = 0; t < targets; t++) {
      cover.serving[t] = new int[ends[t]];
    }
    for (int at = sets.length - 1; at >= 0; at--) {
      for (long rest = sets[at]; rest != 0; rest &= rest - 1) {
        int target = Long.numberOfTrailingZeros(rest);
        ends[target]--;
        cover.serving[target][ends[target]] = at;
      }
    }
    return cover;
  }

  /** Tells whether so many wheels meet all targets; no, if the work granted does not tell. */
  boolean possible(int most) {
    bestSize = most + 1;
    branch((1L << targets) - 1, new int[most + 2], 0);
    return bestSize <= most;
  }

  /** Tells that a wheel meets a target. */
  void add(Fraction wheel, int target) {
    Integer at = index.get(wheel);
    if (at == null) {
      at = wheels.size();
      index.put(wheel, at);
      wheels.add(wheel);
      if (at == covers.length) {
        covers = Arrays.copyOf(covers, 2 * at);
      }
    }
    if ((covers[at] & (1L << target)) == 0) {
      covers[at] |= 1L << target;
      int[] now = serving[target];
      serving[target] = Arrays.copyOf(now, now.length + 1);
      serving[target][now.length] = at;
    }
  }

  /** Bounds the work; more {@link #steps()} than that mean that the answer is not proven least. */
  LeastCover within(long most) {
    mostSteps = most;
    return this;
  }

  /** Returns how many branches were tried. */
  long steps() {
    return steps;
  }

  /**
   * Returns the wheels of a least cover with fewer than {@code below} wheels; empty if there is
   * none.
   */
  List<Fraction> fewerThan(int below) {
    bestSize = below;
    best = new int[0];
    branch((1L << targets) - 1, new int[below + 1], 0);
    return Arrays.stream(best).mapToObj(wheels::get).toList();
  }

  private void branch(long open, int[] taken, int size) {
    steps++;
    if (steps > mostSteps) {
      return;
    }
    if (open == 0) {
      best = Arrays.copyOf(taken, size);
      bestSize = size;
      return;
    }
    int most = 1;
    int pick = -1;
    int pickCount = Integer.MAX_VALUE;
    for (long rest = open; rest != 0; rest &= rest - 1) {
      int target = Long.numberOfTrailingZeros(rest);
      int useful = 0;
      for (int wheel : serving[target]) {
        int gain = Long.bitCount(covers[wheel] & open);
        most = Math.max(most, gain);
        useful += gain > 1 ? 1 : 0;
      }
      if (useful < pickCount) {
        pickCount = useful;
        pick = target;
      }
    }
    int need = (Long.bitCount(open) + most - 1) / most;
    if (size + need >= bestSize) {
      return;
    }
    boolean alone = false;
    for (int wheel : serving[pick]) {
      boolean single = Long.bitCount(covers[wheel] & open) == 1;
      if (single && (alone || pickCount > 0)) {
        continue;
      }
      alone |= single;
      taken[size] = wheel;
      branch(open & ~covers[wheel], taken, size + 1);
    }
  }
}
