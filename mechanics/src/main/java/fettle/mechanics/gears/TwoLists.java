package fettle.mechanics.gears;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Boxes of r multipliers and at most n cone wheels that give one list as cone times multiplier and
 * another as a constant times cone over multiplier: one is found, or it is proven that there is
 * none. In packed numbers ({@link PrimeCode}), where products are sums.
 *
 * <p>Let a box have the fewest cone wheels for its r multipliers, all in use. Give each target of
 * the first list to one wheel and one multiplier, and tie multipliers together that share a wheel.
 *
 * <ol>
 *   <li>If all are tied, they form one of the {@link ListCores} of the first list. Were there no
 *       wheel that serves both lists, the constant could be changed until two wheels become one; so
 *       the constant is one that lets a wheel serve both. All of them are tried.
 *   <li>If one multiplier μ is not tied to the rest, its targets of the first list can be given to
 *       the rest with as many wheels, so the rest is a core. Constant k and μ are two unknown
 *       factors. A wheel used in two of the four ways (first or second list, by the core or by μ)
 *       ties them: the relations are μ = a, k = b, k/μ = c and k/μ² = d with numbers a, b, c, d
 *       that follow from the lists. With fewer than two independent relations one factor could be
 *       changed until two wheels become one. All pairs of relations are tried.
 *   <li>If two or more are not tied to the rest, r - 2 multipliers or fewer serve the first list
 *       with n wheels. Where such a core exists, nothing is said.
 *   <li>If there are two groups of two or more, their wheels meet at most 2 + (n - 1)(r - 2)
 *       targets. Where this is no fewer than the list has, nothing is said.
 * </ol>
 *
 * <p>If the first list alone has no core of up to r multipliers with n wheels, there is no box: for
 * one list, groups that share no wheel can be rescaled until two wheels become one.
 */
final class TwoLists {

  /** What is known. */
  enum Verdict {
    FOUND("the least possible is found"),
    NONE_ALONE("the larger list alone would need more: all tied sets of multipliers tried"),
    NONE("all sets of multipliers tried that serve the larger list, with all shared constants"),
    OPEN("multipliers that no wheel ties together could do better"),
    CUT("ended before all sets were tried");

    private final String reason;

    Verdict(String reason) {
      this.reason = reason;
    }

    /** Returns it in words. */
    String reason() {
      return reason;
    }
  }

  /**
   * The answer.
   *
   * @param verdict what is known
   * @param multipliers codes of the multipliers of a box, empty unless found
   * @param constant code of its constant
   * @param sets sets of multipliers and constants tried
   * @param steps branches of covers tried
   */
  @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
  record Answer(Verdict verdict, long[] multipliers, long constant, long sets, long steps) {}

  private final long[] first;
  private final long[] second;
  private final PrimeCode code;
  private final SearchLimits limits;
  private final GainBound gains;
  private long sets;
  private long coreSteps;
  private int wheels;

  /**
   * Prepares the search.
   *
   * @param first targets that are cone times multiplier
   * @param second targets that are a constant times cone over multiplier
   * @param code the code of both lists
   * @param limits bounds of the work
   */
  TwoLists(List<Fraction> first, List<Fraction> second, PrimeCode code, SearchLimits limits) {
    this.first = code.codes(first);
    this.second = code.codes(second);
    this.code = code;
    this.limits = limits;
    this.gains = new GainBound(limits.steps());
  }

  /**
   * Finds a box of so many multipliers and at most so many cone wheels, or proves there is none.
   */
  Answer box(int most, int r) {
    wheels = most;
    if (most < 1) {
      return answer(Verdict.NONE_ALONE);
    }
    ListCores cores = ListCores.of(first, most, r, limits);
    sets = cores.tried();
    coreSteps = cores.steps();
    for (ListCores.Key core : cores.ofSize(r)) {
      Answer found = withConstants(core.codes());
      if (found != null) {
        return found;
      }
    }
    for (ListCores.Key core : r < 2 ? Set.<ListCores.Key>of() : cores.ofSize(r - 1)) {
      Answer found = withOneMore(core.codes());
      if (found != null) {
        return found;
      }
    }
    return answer(none(cores, r));
  }

  private Verdict none(ListCores cores, int r) {
    if (cores.cut() || gains.cut()) {
      return Verdict.CUT;
    }
    if (cores.noneUpTo(r)) {
      return Verdict.NONE_ALONE;
    }
    boolean grouped = r >= 4 && 2 + (wheels - 1) * (r - 2) >= first.length;
    return grouped || !cores.noneUpTo(r - 2) ? Verdict.OPEN : Verdict.NONE;
  }

  private Answer answer(Verdict verdict) {
    return new Answer(verdict, new long[0], 0, sets, coreSteps + gains.steps());
  }

  /** Tries every constant that lets a wheel serve both lists. */
  private @Nullable Answer withConstants(long[] m) {
    for (long k : constants(m)) {
      Answer found = tried(m, k);
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** Tries a core with one more multiplier that the first list does not tie to it. */
  private @Nullable Answer withOneMore(long[] core) {
    for (long factor : quotients(core)) {
      Answer found = withConstants(with(core, factor));
      if (found != null) {
        return found;
      }
    }
    Set<Long> constants = constants(core);
    Set<Long> crossed = crossed(core);
    Set<Long> plain = crossed(new long[1]);
    for (long x : crossed) {
      for (long k : constants) {
        Answer found = tried(with(core, k - x), k);
        if (found != null) {
          return found;
        }
      }
      for (long y : plain) {
        Answer found = tried(with(core, x - y), 2 * x - y);
        if (found != null) {
          return found;
        }
      }
    }
    for (long k : constants) {
      for (long y : plain) {
        Answer found = code.isSquare(k - y) ? tried(with(core, (k - y) / 2), k) : null;
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }

  private static long[] with(long[] core, long more) {
    long[] all = Arrays.copyOf(core, core.length + 1);
    all[core.length] = more;
    return all;
  }

  /** Factors μ with which a wheel serves one list both by the core and by μ. */
  private Set<Long> quotients(long[] core) {
    Set<Long> all = new HashSet<>();
    for (long[] list : List.of(first, second)) {
      for (long a : list) {
        for (long b : list) {
          for (long m : core) {
            all.add(a - b + m);
          }
        }
      }
    }
    for (long m : core) {
      all.remove(m);
    }
    return all;
  }

  /** Constants k with which a wheel serves both lists. */
  private Set<Long> constants(long[] multipliers) {
    Set<Long> products = new HashSet<>();
    for (long m : multipliers) {
      for (long other : multipliers) {
        products.add(m + other);
      }
    }
    return differences(products);
  }

  /** Quotients k/μ with which a wheel serves one list by the core, the other by μ. */
  private Set<Long> crossed(long[] core) {
    Set<Long> multipliers = new HashSet<>();
    for (long m : core) {
      multipliers.add(m);
    }
    return differences(multipliers);
  }

  private Set<Long> differences(Set<Long> products) {
    Set<Long> all = new HashSet<>();
    for (long a : first) {
      for (long b : second) {
        for (long product : products) {
          all.add(b - a + product);
        }
      }
    }
    return all;
  }

  private @Nullable Answer tried(long[] m, long k) {
    sets++;
    if (sets > limits.sets() || gains.cut() || limits.cancelledAt(sets)) {
      return answer(Verdict.CUT);
    }
    gains.clear();
    for (long multiplier : m) {
      for (int t = 0; t < first.length; t++) {
        gains.add(first[t] - multiplier, t);
      }
      for (int u = 0; u < second.length; u++) {
        gains.add(second[u] + multiplier - k, first.length + u);
      }
    }
    return gains.covered(first.length + second.length, wheels)
        ? new Answer(Verdict.FOUND, m, k, sets, coreSteps + gains.steps())
        : null;
  }
}
