package fettle.mechanics.gears;

import java.util.function.BooleanSupplier;

/**
 * Bounds of the work of a search.
 *
 * @param sets most sets of multipliers to try
 * @param steps most branches of covers to try
 * @param cancelled asked often; the search ends when it says yes
 */
record SearchLimits(long sets, long steps, BooleanSupplier cancelled) {

  /** Returns no bounds at all. */
  static SearchLimits none() {
    return new SearchLimits(Long.MAX_VALUE, Long.MAX_VALUE, () -> false);
  }

  /** Asks whether the search is cancelled, at the first set and then now and again. */
  boolean cancelledAt(long set) {
    return (set & 1023) == 1 && cancelled.getAsBoolean();
  }

  /** Returns what is left of these bounds. */
  SearchLimits less(long setsTried, long stepsTaken) {
    return new SearchLimits(
        Math.max(0, sets - setsTried), Math.max(0, steps - stepsTaken), cancelled);
  }
}
