package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Teeth that bring the travel per turn of a handwheel nearest to a round value: pinion z1 on the
 * handwheel shaft, gear z2, rack pinion z3. Every combination in the ranges is tried, so the best
 * is the best. With a module or DP rack the error is never zero: the travel is π times a rational
 * number.
 */
public final class TravelSearch {

  private static final long MOST = 40_000_000L;

  /**
   * A range of tooth numbers, both ends included.
   *
   * @param low fewest teeth
   * @param high most teeth
   */
  public record Range(int low, int high) {
    /** Refuses ends in the wrong order and numbers that are no gears. */
    public Range {
      Teeth.check("range", low);
      Teeth.check("range", high);
      if (low > high) {
        throw new IllegalArgumentException(
            "range [teeth] needs low <= high, found " + low + " to " + high);
      }
    }

    int size() {
      return high - low + 1;
    }
  }

  /**
   * What is there now.
   *
   * @param z1 teeth of the handwheel pinion
   * @param z2 teeth of the gear
   * @param z3 teeth of the rack pinion
   */
  public record Trio(int z1, int z2, int z3) {}

  /**
   * What is looked for.
   *
   * @param wanted travel per turn wanted [mm]
   * @param rackPitch pitch of the rack [mm]
   * @param z1 teeth of the handwheel pinion
   * @param z2 teeth of the gear
   * @param z3 teeth of the rack pinion
   * @param sums tooth sums z1 + z2 that the centres allow; empty if the centres are free
   * @param present what is there now; null if nothing need be kept
   */
  public record Query(
      Ratio wanted,
      Ratio rackPitch,
      Range z1,
      Range z2,
      Range z3,
      List<Integer> sums,
      @Nullable Trio present) {
    /** Refuses searches that would not end in reasonable time. */
    public Query {
      sums = List.copyOf(sums);
      Teeth.positive("travel wanted", wanted);
      Teeth.positive("rack pitch", rackPitch);
      if ((long) z1.size() * z2.size() * z3.size() > MOST) {
        throw new IllegalArgumentException(
            "the ranges hold more than " + MOST + " trains; narrow them");
      }
    }
  }

  /**
   * One choice of teeth.
   *
   * @param teeth the tooth numbers
   * @param travel its travel per turn, exact
   * @param ppm deviation from the travel wanted [ppm]
   * @param effort 0 only the handwheel pinion changes, 1 the pair, 2 also the rack pinion
   */
  public record Choice(Trio teeth, Ratio travel, double ppm, int effort) {}

  /** What the search found. */
  public sealed interface Outcome {
    /**
     * Choices found.
     *
     * @param best nearest choice
     * @param pareto best choice for each effort, where more effort brings less error
     * @param tried number of trains compared
     * @param excluded number of trains whose tooth sum the centres do not allow
     */
    record Found(Choice best, List<Choice> pareto, long tried, long excluded) implements Outcome {}

    /**
     * No train lies within the limits.
     *
     * @param reason why
     * @param excluded number of trains whose tooth sum the centres do not allow
     */
    record None(String reason, long excluded) implements Outcome {}
  }

  private TravelSearch() {}

  /** Tries every combination; ties go to the smallest z2, then z1, then z3. */
  public static Outcome search(Query query) {
    double target = query.wanted.over(query.rackPitch).toDouble();
    List<List<Trio>> nearest = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    long tried = 0;
    long excluded = 0;
    for (int z2 = query.z2.low; z2 <= query.z2.high; z2++) {
      for (int z1 = query.z1.low; z1 <= query.z1.high; z1++) {
        if (!query.sums.isEmpty() && !query.sums.contains(z1 + z2)) {
          excluded += query.z3.size();
          continue;
        }
        for (int z3 = query.z3.low; z3 <= query.z3.high; z3++) {
          tried++;
          double error = Math.abs((double) z1 * z3 / (z2 * target) - 1);
          int effort = effort(query.present, z2, z3);
          if (error <= least[effort] * (1 + 1e-9) + 1e-15) {
            List<Trio> kept = nearest.get(effort);
            if (error < least[effort] * (1 - 1e-9) - 1e-15) {
              kept.clear();
            }
            least[effort] = Math.min(error, least[effort]);
            if (kept.size() < 100_000) {
              kept.add(new Trio(z1, z2, z3));
            }
          }
        }
      }
    }
    return outcome(query, nearest, tried, excluded);
  }

  private static Outcome outcome(Query query, List<List<Trio>> nearest, long tried, long excluded) {
    List<Choice> pareto = new ArrayList<>();
    for (int effort = 0; effort <= 2; effort++) {
      int level = effort;
      nearest.get(effort).stream()
          .map(t -> choice(query, t, level))
          .min(byError(query))
          .filter(c -> pareto.isEmpty() || better(query, c, pareto.get(pareto.size() - 1)))
          .ifPresent(pareto::add);
    }
    if (pareto.isEmpty()) {
      return new Outcome.None(
          "no tooth numbers in the ranges have a sum z1 + z2 of " + query.sums, excluded);
    }
    return new Outcome.Found(pareto.get(pareto.size() - 1), List.copyOf(pareto), tried, excluded);
  }

  private static boolean better(Query query, Choice a, Choice b) {
    return Deviation.compareSize(a.travel.over(query.wanted), b.travel.over(query.wanted)) < 0;
  }

  private static Comparator<Choice> byError(Query query) {
    Comparator<Choice> size =
        (a, b) -> Deviation.compareSize(a.travel.over(query.wanted), b.travel.over(query.wanted));
    return size.thenComparingInt(c -> c.teeth.z2)
        .thenComparingInt(c -> c.teeth.z1)
        .thenComparingInt(c -> c.teeth.z3);
  }

  private static Choice choice(Query query, Trio t, int effort) {
    Ratio travel = query.rackPitch.times(Ratio.of(t.z1, t.z2)).times(t.z3);
    return new Choice(t, travel, Deviation.ppm(travel, query.wanted), effort);
  }

  private static int effort(@Nullable Trio present, int z2, int z3) {
    if (present == null || z3 != present.z3) {
      return 2;
    }
    return z2 == present.z2 ? 0 : 1;
  }
}
