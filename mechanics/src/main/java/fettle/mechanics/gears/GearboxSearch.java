package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The cone-and-tumbler box with a multiplier stage that gives a list of leads, and if wanted a list
 * of threads per inch from the same wheels, exactly and with the fewest wheels: n on the cone and
 * two for each of the r ratios of the multiplier.
 *
 * <p>With the cone driving, a lead is cone times multiplier; with the roles reversed, threads per
 * inch are cone over multiplier times a constant that the change gears bring (a 127 link).
 *
 * <p>Why the search is finite and the answer proven, for one list: only ratios of multipliers
 * count. If the multipliers fell into groups that share no wheel, one group could be rescaled
 * together with its wheels without more wheels; so some best box has multipliers that are linked to
 * each other by quotients of targets. All such sets are tried, for each an exact set cover. A wheel
 * meets at most r targets, so n is at least the number of targets over r; that bounds every r not
 * tried.
 *
 * <p>For two lists {@link TwoLists} finds a box or proves that there is none; where it can do
 * neither, the bound and the gap are told.
 */
public final class GearboxSearch {

  /**
   * What is asked.
   *
   * @param leads leads, or any numbers that are to be proportional to cone times multiplier
   * @param perInch threads per inch, proportional to cone over multiplier; may be empty
   * @param mostMultipliers most ratios the multiplier stage may have
   * @param mostSets most sets of multipliers to try in all, a bound of the work
   */
  public record Query(List<Ratio> leads, List<Ratio> perInch, int mostMultipliers, long mostSets) {
    /** Refuses too many targets, and bounds that are no bounds. */
    public Query {
      leads = List.copyOf(new LinkedHashSet<>(leads));
      perInch = List.copyOf(new LinkedHashSet<>(perInch));
      if (leads.isEmpty() || leads.size() + perInch.size() > 62) {
        throw new IllegalArgumentException(
            "targets [-] must be 1 to 62 in number, found " + (leads.size() + perInch.size()));
      }
      if (mostMultipliers < 1 || mostMultipliers > 8) {
        throw new IllegalArgumentException(
            "multipliers [-] must be 1 to 8, found " + mostMultipliers);
      }
      if (mostSets < 1) {
        throw new IllegalArgumentException("sets [-] must be 1 or more, found " + mostSets);
      }
    }
  }

  /**
   * A box.
   *
   * @param cone sizes of the cone wheels, in proportion
   * @param multipliers ratios of the multiplier stage, the smallest 1
   * @param constant threads per inch are this times cone over multiplier; 1 if there are none
   */
  public record Design(List<Ratio> cone, List<Ratio> multipliers, Ratio constant) {
    /** Returns the wheels: n on the cone and two for each multiplier. */
    public int wheels() {
      return cone.size() + 2 * multipliers.size();
    }
  }

  /**
   * What is known about boxes with so many multipliers.
   *
   * @param multipliers number of multipliers r
   * @param found fewest cone wheels found; 0 if none was looked for
   * @param least fewest cone wheels possible, proven
   * @param sets sets of multipliers tried
   * @param reason how the bound is known
   */
  public record Level(int multipliers, int found, int least, long sets, String reason) {}

  /**
   * How far the search has come.
   *
   * @param multipliers number of multipliers being tried
   * @param sets sets of multipliers tried so far
   * @param bestWheels wheels of the best box found; 0 before the first
   * @param bound fewest wheels that any box not yet ruled out may have
   */
  public record Progress(int multipliers, long sets, int bestWheels, int bound) {}

  /** The answer. */
  public sealed interface Outcome {
    /** Returns the best box found. */
    Design design();

    /** Returns what is known, level by level: the certificate. */
    List<Level> levels();

    /** Returns the fewest wheels any box of this kind needs, as far as is proven. */
    int lowerBound();

    /**
     * No box of this kind has fewer wheels.
     *
     * @param design the box
     * @param levels what is known, level by level
     */
    record Proven(Design design, List<Level> levels) implements Outcome {
      @Override
      public int lowerBound() {
        return design.wheels();
      }
    }

    /**
     * The best box found, and how many wheels a better one might save at most.
     *
     * @param design the box
     * @param levels what is known, level by level
     * @param lowerBound fewest wheels possible as far as is proven
     * @param stopped why there is no proof
     */
    record BestFound(Design design, List<Level> levels, int lowerBound, String stopped)
        implements Outcome {}
  }

  /** Branches of covers granted for each set of multipliers, a bound of the work. */
  private static final long STEPS_A_SET = 200;

  /** Branches of covers granted for each range of wheels when the most compact cone is sought. */
  private static final long COMPACT_STEPS = 20_000;

  /** Most wheels of a bound that is sought with cone and multipliers exchanged. */
  private static final int MOST_EXCHANGED = 4;

  private final List<Fraction> first;
  private final List<Fraction> second;
  private final long mostSets;
  private final BooleanSupplier cancelled;
  private final Consumer<Progress> watcher;
  private final long mostSteps;
  private long sets;
  private long steps;
  private boolean cut;
  private int settled = Integer.MAX_VALUE;

  private final @Nullable PrimeCode code;
  private Design best;

  private GearboxSearch(Query query, BooleanSupplier cancelled, Consumer<Progress> watcher) {
    this.first = Fraction.all(query.leads);
    this.second = Fraction.all(query.perInch);
    this.mostSets = query.mostSets;
    this.mostSteps = STEPS_A_SET * query.mostSets;
    this.cancelled = cancelled;
    this.watcher = watcher;
    List<Fraction> all = new ArrayList<>(first);
    all.addAll(second);
    this.code = PrimeCode.of(all);
    this.best = new Design(List.of(), List.of(Ratio.ONE), Ratio.ONE);
  }

  /** Finds the box with the fewest wheels. */
  public static Outcome search(Query query) {
    return search(query, () -> false, p -> {});
  }

  /**
   * Finds the box with the fewest wheels.
   *
   * @param query what is asked
   * @param cancelled asked often; the best found so far is returned when it says yes
   * @param watcher told how far the search has come
   */
  public static Outcome search(Query query, BooleanSupplier cancelled, Consumer<Progress> watcher) {
    return new GearboxSearch(query, cancelled, watcher).outcome(query.mostMultipliers);
  }

  /**
   * Takes up a search again from a box found before: only boxes with fewer wheels are looked for.
   *
   * @param query what is asked
   * @param known a box that serves the query
   * @param cancelled asked often; the best found so far is returned when it says yes
   * @param watcher told how far the search has come
   */
  public static Outcome resumed(
      Query query, Design known, BooleanSupplier cancelled, Consumer<Progress> watcher) {
    GearboxSearch search = new GearboxSearch(query, cancelled, watcher);
    search.best = known;
    return search.outcome(query.mostMultipliers);
  }

  private Outcome outcome(int mostMultipliers) {
    List<Level> levels = new ArrayList<>();
    Design plain = plainBox();
    best = best.cone().isEmpty() || plain.wheels() < best.wheels() ? plain : best;
    int targets = larger().size();
    for (int r = 1; r <= targets; r++) {
      Level level = settle(r, mostMultipliers);
      levels.add(level);
      settled = Math.min(settled, level.least + 2 * r);
    }
    return settled >= best.wheels()
        ? new Outcome.Proven(best, List.copyOf(levels))
        : new Outcome.BestFound(
            best,
            List.copyOf(levels),
            settled,
            cut
                ? "the search was ended before all sets were tried"
                : "the bound of the lists taken singly is not reached");
  }

  private Level settle(int r, int mostMultipliers) {
    int counting = counting(r, best.wheels() - 2 * r);
    if (counting + 2 * r >= best.wheels()) {
      return new Level(r, 0, counting, 0, counted(r));
    }
    return r > mostMultipliers || cut
        ? new Level(r, 0, counting, 0, "not searched; " + counted(r))
        : level(r, best.wheels() - 2 * r);
  }

  /** Returns the fewest wheels of a box with r or more multipliers, or of a level left open. */
  private int bound(int r) {
    int bound = Math.min(settled, best.wheels());
    for (int more = r; more <= larger().size(); more++) {
      bound = Math.min(bound, wheelsAtLeast(more) + 2 * more);
    }
    return bound;
  }

  /** A wheel meets at most r targets of a list. */
  private int wheelsAtLeast(int r) {
    return (larger().size() + r - 1) / r;
  }

  private List<Fraction> larger() {
    return first.size() >= second.size() ? first : second;
  }

  /**
   * Returns a bound for n without a search among sets of r multipliers: a wheel meets at most r
   * targets of the larger list; and as cone and multipliers may exchange roles, n wheels with r
   * multipliers do not serve that list if r wheels with n multipliers do not.
   *
   * @param enough a bound no larger than this is of use
   */
  private int counting(int r, int enough) {
    int n = wheelsAtLeast(r);
    while (code != null && n < Math.min(enough, Math.min(r, MOST_EXCHANGED + 1))) {
      ListCores exchanged = ListCores.of(code.codes(larger()), r, n, limits());
      if (exchanged.cut() || !exchanged.noneUpTo(n)) {
        return n;
      }
      n++;
    }
    return n;
  }

  private SearchLimits limits() {
    return new SearchLimits(
        Math.max(0, mostSets - sets), Math.max(0, mostSteps - steps), cancelled);
  }

  private static String counted(int r) {
    return "a wheel meets at most "
        + r
        + " targets of a list; cone and multipliers may exchange roles";
  }

  /** One wheel for each target, one multiplier; a common constant of both lists is tried later. */
  private Design plainBox() {
    Set<Fraction> cone = new TreeSet<>(first);
    cone.addAll(second);
    return new Design(cone.stream().map(Fraction::ratio).toList(), List.of(Ratio.ONE), Ratio.ONE);
  }

  /** Searches all boxes of r multipliers with fewer than {@code below} cone wheels. */
  private Level level(int r, int below) {
    long before = sets;
    if (second.isEmpty()) {
      Single single = single(first, r, below);
      if (!single.cone.isEmpty()) {
        best =
            new Design(ratios(new TreeSet<>(single.cone)), ratios(single.multipliers), Ratio.ONE);
      }
      int least = cut ? counting(r, best.wheels()) : Math.max(single.least, 1);
      return new Level(
          r,
          single.cone.size(),
          least,
          sets - before,
          cut ? "ended before all sets were tried" : "all linked sets of multipliers tried");
    }
    return joint(r, below, before);
  }

  private record Single(List<Fraction> cone, List<Fraction> multipliers, int least) {}

  /**
   * Least cone of one list with r multipliers; {@code least} is {@code below} if none is smaller.
   */
  private Single single(List<Fraction> targets, int r, int below) {
    List<Fraction> cone = List.of();
    List<Fraction> multipliers = List.of();
    int limit = below;
    int counting = (targets.size() + r - 1) / r;
    for (List<Fraction> m : linkedSets(quotients(targets), r)) {
      if (stop(r)) {
        break;
      }
      List<Fraction> found = cover(targets, m, limit);
      if (!found.isEmpty()) {
        cone = found;
        multipliers = m;
        limit = found.size();
        if (limit == counting) {
          break;
        }
      }
    }
    return new Single(cone, multipliers, limit);
  }

  private List<Fraction> solved(LeastCover cover, int below) {
    List<Fraction> found = cover.within(mostSteps - steps).fewerThan(below);
    steps += cover.steps();
    cut |= steps > mostSteps || cancelled.getAsBoolean();
    return found;
  }

  private List<Fraction> cover(List<Fraction> targets, List<Fraction> m, int below) {
    LeastCover cover = new LeastCover(targets.size());
    for (int t = 0; t < targets.size(); t++) {
      for (Fraction multiplier : m) {
        cover.add(targets.get(t).over(multiplier), t);
      }
    }
    return solved(cover, below);
  }

  /** Two lists: boxes are found, each with fewer wheels, until it is proven that there are none. */
  private Level joint(int r, int below, long before) {
    int counting = counting(r, below);
    if (code == null) {
      return new Level(r, 0, counting, 0, "not searched: the targets have too many primes");
    }
    boolean swap = second.size() > first.size();
    int found = 0;
    int limit = below;
    TwoLists.Verdict verdict = TwoLists.Verdict.NONE;
    while (limit > counting) {
      TwoLists lists = new TwoLists(larger(), swap ? first : second, code, limits());
      TwoLists.Answer answer = lists.box(limit - 1, r);
      sets += answer.sets();
      steps += answer.steps();
      watcher.accept(new Progress(r, sets, best.wheels(), bound(r)));
      verdict = answer.verdict();
      if (verdict != TwoLists.Verdict.FOUND) {
        break;
      }
      best = design(answer, code, swap, limit);
      limit = best.cone.size();
      found = limit;
    }
    cut |= verdict == TwoLists.Verdict.CUT;
    boolean known = verdict != TwoLists.Verdict.CUT && verdict != TwoLists.Verdict.OPEN;
    return new Level(r, found, known ? limit : counting, sets - before, verdict.reason());
  }

  private Design design(TwoLists.Answer answer, PrimeCode primes, boolean swap, int below) {
    List<Fraction> m = primes.fractions(answer.multipliers());
    Fraction k = primes.fraction(answer.constant());
    m = swap ? inverse(m) : m;
    k = swap ? k.inverse() : k;
    Fraction least = Collections.min(m);
    m = m.stream().map(f -> f.over(least)).sorted().toList();
    k = k.over(least).over(least);
    List<Fraction> cone = jointCover(m, k, below);
    if (cone.isEmpty()) {
      throw new IllegalStateException("the box found does not give every target");
    }
    return new Design(ratios(new TreeSet<>(cone)), ratios(m), k.ratio());
  }

  private static List<Fraction> inverse(List<Fraction> m) {
    return m.stream().map(Fraction::inverse).toList();
  }

  /** The cone whose wheels differ least in size, as far as the work granted allows. */
  private List<Fraction> jointCover(List<Fraction> m, Fraction constant, int below) {
    LeastCover cover = new LeastCover(first.size() + second.size());
    CompactCone compact = new CompactCone(first.size() + second.size());
    for (Fraction multiplier : m) {
      for (int t = 0; t < first.size(); t++) {
        cover.add(first.get(t).over(multiplier), t);
        compact.add(first.get(t).over(multiplier), t);
      }
      for (int u = 0; u < second.size(); u++) {
        cover.add(second.get(u).times(multiplier).over(constant), first.size() + u);
        compact.add(second.get(u).times(multiplier).over(constant), first.size() + u);
      }
    }
    List<Fraction> least = cover.within(mostSteps).fewerThan(below);
    List<Fraction> cone = compact.of(least.size(), COMPACT_STEPS);
    return cone.size() == least.size() ? cone : least;
  }

  /** All quotients of two targets other than 1, ascending. */
  private static List<Fraction> quotients(List<Fraction> targets) {
    Set<Fraction> quotients = new TreeSet<>();
    for (Fraction a : targets) {
      for (Fraction b : targets) {
        if (!a.equals(b)) {
          quotients.add(a.over(b));
        }
      }
    }
    return List.copyOf(quotients);
  }

  /** All sets of r ratios, the smallest 1, that are linked by quotients. */
  private List<List<Fraction>> linkedSets(List<Fraction> quotients, int r) {
    Set<List<Fraction>> sets = new LinkedHashSet<>();
    sets.add(List.of(Fraction.ONE));
    for (int size = 1; size < r; size++) {
      Set<List<Fraction>> larger = new LinkedHashSet<>();
      for (List<Fraction> set : sets) {
        for (Fraction m : set) {
          for (Fraction q : quotients) {
            Fraction next = m.times(q);
            if (!set.contains(next)) {
              larger.add(normal(set, next));
            }
          }
        }
        if (cancelled.getAsBoolean() || larger.size() > mostSets) {
          cut = true;
          return new ArrayList<>(larger);
        }
      }
      sets = larger;
    }
    return new ArrayList<>(sets);
  }

  private static List<Fraction> normal(List<Fraction> set, Fraction next) {
    List<Fraction> all = new ArrayList<>(set);
    all.add(next);
    Fraction smallest = Collections.min(all);
    all.replaceAll(f -> f.over(smallest));
    Collections.sort(all);
    return List.copyOf(all);
  }

  private boolean stop(int r) {
    sets++;
    if (sets > mostSets || cancelled.getAsBoolean()) {
      cut = true;
    }
    if (sets % 16 == 0) {
      watcher.accept(new Progress(r, sets, best.wheels(), bound(r)));
    }
    return cut;
  }

  private static List<Ratio> ratios(Iterable<Fraction> fractions) {
    List<Ratio> ratios = new ArrayList<>();
    fractions.forEach(f -> ratios.add(f.ratio()));
    return List.copyOf(ratios);
  }

  /**
   * Returns the least cone for exactly so many multipliers, one list.
   *
   * @param targets the targets
   * @param multipliers number of multipliers
   */
  public static Level leastCone(List<Ratio> targets, int multipliers) {
    Query query = new Query(targets, List.of(), multipliers, 300_000);
    GearboxSearch search = new GearboxSearch(query, () -> false, p -> {});
    return search.level(multipliers, query.leads.size() + 1);
  }

  /** Returns how many classes the targets fall into if factors of two do not count. */
  public static int classesModuloTwo(List<Ratio> targets) {
    Set<Fraction> classes = new HashSet<>();
    for (Fraction t : Fraction.all(targets)) {
      classes.add(
          Fraction.of(
              t.num() >> Long.numberOfTrailingZeros(t.num()),
              t.den() >> Long.numberOfTrailingZeros(t.den())));
    }
    return classes.size();
  }
}
