package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.motion.Clearance;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.Pair;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

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

  /** Keeps its own copies. */
  public Clearances {
    rows = List.copyOf(rows);
    skipped = List.copyOf(skipped);
  }

  /**
   * Searches a lathe.
   *
   * @param tolerance how near the bounds shall come [mm]
   * @param budget how many distances each pair of solids may take
   */
  public static Clearances of(Machine machine, double tolerance, int budget) {
    Mechanism mechanism = Envelopes.of(machine);
    Mechanism.Pairs pairs = mechanism.pairs();
    return of(
        mechanism, pairs, Clearance.table(pairs.searched(), mechanism.domain(), tolerance, budget));
  }

  /**
   * Searches a lathe, but leaves what is proven to keep a distance that is enough.
   *
   * @param enough distance beyond which nothing more is asked [mm]
   */
  static Clearances near(Machine machine, double enough) {
    Mechanism mechanism = Envelopes.of(machine);
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

  /** Returns the witness position in words: only the axes that move one of the two. */
  public String position(Row row) {
    Set<Integer> moved = new HashSet<>();
    java.util.stream.Stream.of(row.gap().pair().a(), row.gap().pair().b())
        .flatMap(c -> c.steps().stream())
        .forEach(
            s -> {
              if (s instanceof fettle.mechanics.motion.Step.Slide slide) {
                moved.add(slide.axis());
              } else if (s instanceof fettle.mechanics.motion.Step.Turn turn) {
                moved.add(turn.axis());
              }
            });
    List<String> words = new ArrayList<>();
    for (int axis : moved.stream().sorted().toList()) {
      double at = row.gap().position()[axis];
      String name = mechanism.domain().names().get(axis);
      words.add(name + " at " + (slides(axis) ? mm(at) : degrees(at)));
    }
    return String.join(", ", words);
  }

  /** Tells whether an axis is a slide. */
  public boolean slides(int axis) {
    return mechanism.links().stream()
        .flatMap(l -> l.steps().stream())
        .anyMatch(
            s -> s instanceof fettle.mechanics.motion.Step.Slide slide && slide.axis() == axis);
  }

  private static String mm(double value) {
    return Numbers.fixed(value, 1) + " mm";
  }

  private static String degrees(double value) {
    return Numbers.fixed(Math.toDegrees(value), 0) + " deg";
  }
}
