package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.motion.Chain;
import fettle.mechanics.motion.Clearance;
import fettle.mechanics.motion.ContactSpan;
import fettle.mechanics.motion.Domain;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.Pair;
import fettle.mechanics.motion.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The least gap of every two members over all their positions.
 *
 * @param mechanism the lathe as solids on seats
 * @param rows the members, nearest first
 * @param skipped members that were not searched, and why
 */
public record Clearances(Mechanism mechanism, List<Row> rows, List<Mechanism.Skipped> skipped) {

  /**
   * Two members.
   *
   * @param first the one
   * @param second the other
   * @param gap their nearest solids, with bounds and witness
   */
  public record Row(String first, String second, Gap gap) {
    /** Returns both names. */
    public String name() {
      return first + " x " + second;
    }
  }

  /** How near bounds come unless more or less is asked [mm]. */
  public static final double TOLERANCE = 0.05;

  /** How near the ends of a stretch are found [mm or rad]. */
  private static final double END = 1e-3;

  private static final int WHOLE_BUDGET = 6_000_000;
  private static final int LEAST_SHARE = 50;

  /**
   * A stretch of one axis on which two members can meet.
   *
   * @param axis the member that moves
   * @param slides true for a slide, false for what turns
   * @param travel how far it goes [mm or rad]
   * @param span the stretch
   */
  public record Stretch(String axis, boolean slides, double travel, ContactSpan span) {
    /** Tells whether they can meet anywhere on its travel, so that it frees nothing. */
    public boolean whole() {
      return span.to() - span.from() >= travel - 2 * END;
    }
  }

  /** Keeps its own copies. */
  public Clearances {
    rows = List.copyOf(rows);
    skipped = List.copyOf(skipped);
  }

  /** Searches a lathe to a twentieth of a millimetre. */
  public static Clearances of(Machine machine, Use use) {
    return of(machine, use, TOLERANCE, Clearance.BUDGET);
  }

  /**
   * Searches a lathe.
   *
   * @param use what is held where
   * @param tolerance how near the bounds shall come [mm]
   * @param budget how many distances each pair of solids may take
   */
  public static Clearances of(Machine machine, Use use, double tolerance, int budget) {
    Mechanism mechanism = Envelopes.of(machine, use);
    Mechanism.Pairs pairs = mechanism.pairs();
    int fair = Math.min(budget, share(pairs.searched().size()));
    return of(
        mechanism, pairs, Clearance.table(pairs.searched(), mechanism.domain(), tolerance, fair));
  }

  /** What one pair may take of the distances that all of them may take together. */
  private static int share(int pairs) {
    return Math.max(LEAST_SHARE, WHOLE_BUDGET / Math.max(1, pairs));
  }

  /**
   * Searches a lathe, but leaves what is proven to keep a distance that is enough.
   *
   * @param enough distance beyond which nothing more is asked [mm]
   */
  static Clearances near(Machine machine, double enough) {
    Mechanism mechanism = Envelopes.of(machine, Use.WHOLE);
    Mechanism.Pairs pairs = mechanism.pairs();
    return of(
        mechanism, pairs, Clearance.table(pairs.searched(), mechanism.domain(), 0.5, 300, enough));
  }

  private static Clearances of(Mechanism mechanism, Mechanism.Pairs pairs, List<Gap> gaps) {
    Map<List<String>, Gap> least = new LinkedHashMap<>();
    for (Gap gap : gaps) {
      least.merge(members(gap.pair()), gap, Clearances::nearer);
    }
    List<Row> rows = new ArrayList<>();
    least.forEach((members, gap) -> rows.add(new Row(members.get(0), members.get(1), gap)));
    rows.sort(Comparator.comparingDouble((Row r) -> r.gap().upper()).thenComparing(Row::name));
    return new Clearances(mechanism, rows, pairs.skipped());
  }

  /** The nearer of two; the lower bound holds for both. */
  private static Gap nearer(Gap p, Gap q) {
    Gap near = p.upper() <= q.upper() ? p : q;
    return new Gap(
        near.pair(),
        Math.min(p.lower(), q.lower()),
        near.upper(),
        near.position(),
        near.onFirst(),
        near.onSecond(),
        p.evaluations() + q.evaluations(),
        near.tolerance());
  }

  private static List<String> members(Pair pair) {
    return List.of(member(pair.first()), member(pair.second()));
  }

  private static String member(String title) {
    int bracket = title.lastIndexOf(" (");
    return bracket < 0 ? title : title.substring(0, bracket);
  }

  /** Returns the names of the members that touch, both in one. */
  public Set<String> touching() {
    Set<String> names = new HashSet<>();
    rows.stream().filter(r -> r.gap().touches()).forEach(r -> names.add(r.name()));
    return names;
  }

  /** Returns the two members by their names, in either order. */
  public Optional<Row> row(String first, String second) {
    return rows.stream()
        .filter(
            r ->
                (r.first().equals(first) && r.second().equals(second))
                    || (r.first().equals(second) && r.second().equals(first)))
        .findFirst();
  }

  /** Returns the pairs of solids of two members. */
  public List<Pair> pairs(Row row) {
    return mechanism.pairs().searched().stream()
        .filter(p -> members(p).equals(List.of(row.first(), row.second())))
        .toList();
  }

  /**
   * Returns for each axis that moves one of two members the stretch on which they can meet; nothing
   * for members that keep clear.
   */
  public List<Stretch> stretches(Row row) {
    List<Stretch> stretches = new ArrayList<>();
    if (!row.gap().touches()) {
      return stretches;
    }
    List<Pair> pairs = pairs(row);
    Domain domain = mechanism.domain();
    for (int axis : axes(row)) {
      double travel = domain.high()[axis] - domain.low()[axis];
      ContactSpan.of(pairs, domain, axis, 0, END)
          .ifPresent(
              s -> stretches.add(new Stretch(domain.names().get(axis), slides(axis), travel, s)));
    }
    return stretches;
  }

  /** Returns the axes that change how two members stand to each other, in their order. */
  public List<Integer> axes(Row row) {
    Set<Integer> moved = new TreeSet<>();
    for (Pair pair : pairs(row)) {
      for (Chain chain : List.of(pair.a().plain(), pair.b().plain())) {
        for (Step step : chain.steps()) {
          if (step instanceof Step.Slide slide) {
            moved.add(slide.axis());
          } else if (step instanceof Step.Turn turn) {
            moved.add(turn.axis());
          }
        }
      }
    }
    return List.copyOf(moved);
  }

  /** Returns the witness position in words: only the axes that matter to the two. */
  public String position(Row row) {
    List<String> words = new ArrayList<>();
    for (int axis : axes(row)) {
      double at = row.gap().position()[axis];
      words.add(mechanism.domain().names().get(axis) + " at " + shown(axis, at));
    }
    return String.join(", ", words);
  }

  /**
   * Returns a position of an axis with its unit.
   *
   * @param axis number of the axis
   * @param at position [mm or rad]
   */
  public String shown(int axis, double at) {
    return slides(axis) ? mm(at) : degrees(at);
  }

  /** Tells whether an axis is a slide. */
  public boolean slides(int axis) {
    return mechanism.links().stream()
        .flatMap(l -> l.steps().stream())
        .anyMatch(s -> s instanceof Step.Slide slide && slide.axis() == axis);
  }

  private static String mm(double value) {
    return Numbers.fixed(value, 1) + " mm";
  }

  private static String degrees(double value) {
    return Numbers.fixed(Math.toDegrees(value), 0) + " deg";
  }
}
