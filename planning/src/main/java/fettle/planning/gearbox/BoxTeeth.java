package fettle.planning.gearbox;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.Concern;
import fettle.mechanics.gears.ConeTeeth;
import fettle.mechanics.gears.FixedCentre;
import fettle.mechanics.gears.GearPair;
import fettle.mechanics.gears.GearboxSearch;
import fettle.mechanics.gears.SharedShift;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whole teeth for a box in proportions.
 *
 * @param cone teeth of the cone, in the order of the design
 * @param idler teeth of the gear on the arm between cone and tumbler
 * @param pairs pairs of the multiplier on one centre distance, in the order of the design
 */
record BoxTeeth(List<Integer> cone, int idler, List<GearPair> pairs) {

  /** Teeth of the tumbler's gear; only the link gears depend on it. */
  static final int TUMBLER = 40;

  private static final int MOST = 200;
  private static final int MOST_SUM = 400;
  private static final double FAR = 1.5;

  BoxTeeth {
    cone = List.copyOf(cone);
    pairs = List.copyOf(pairs);
  }

  /**
   * Settles the teeth.
   *
   * @param fewest fewest teeth of any gear on a keyed shaft
   * @throws IllegalArgumentException if a gear would be too large, or no pairs run on the centres
   */
  static BoxTeeth of(GearboxSearch.Design design, BoxFrame frame, int fewest) {
    List<Integer> cone = ConeTeeth.teeth(design.cone(), fewest, MOST);
    List<GearPair> pairs =
        frame.centres().isPresent()
            ? design.multipliers().stream()
                .map(m -> onCentres(m, frame, frame.centres().getAsDouble(), fewest))
                .toList()
            : leastSum(design.multipliers(), frame, fewest);
    return new BoxTeeth(cone, idler(cone, frame.module()), pairs);
  }

  /** The least teeth with which the arm reaches the smallest wheel past the largest. */
  private static int idler(List<Integer> cone, double module) {
    int least = cone.stream().mapToInt(Integer::intValue).min().orElse(0);
    int most = cone.stream().mapToInt(Integer::intValue).max().orElse(0);
    return Math.max(20, (int) Math.ceil((most - least + 4) / 2.0 + 1 + FAR / module));
  }

  /** On their own centres: one tooth sum for all pairs, or one tooth off taken up by shift. */
  private static List<GearPair> leastSum(List<Ratio> ratios, BoxFrame frame, int fewest) {
    for (int slack = 0; slack <= 1; slack++) {
      FixedCentre.Outcome outcome = FixedCentre.leastSum(ratios, fewest, slack, MOST_SUM);
      if (outcome instanceof FixedCentre.Outcome.Least least) {
        double axes = frame.module() * least.sum() / 2;
        List<GearPair> pairs = new ArrayList<>();
        for (FixedCentre.Pair p : least.pairs()) {
          pairs.add(SharedShift.on(frame.module(), frame.rack(), p.driver(), p.driven(), axes));
        }
        if (pairs.stream().allMatch(BoxTeeth::runs)) {
          return pairs;
        }
      }
    }
    throw new IllegalArgumentException(
        "the multiplier's pairs need more than "
            + MOST_SUM
            + " teeth together; ask for fewer threads");
  }

  /** On centres that are there: the pair of the ratio whose shifts are least. */
  private static GearPair onCentres(Ratio ratio, BoxFrame frame, double axes, int fewest) {
    int up = ratio.numerator().intValueExact();
    int down = ratio.denominator().intValueExact();
    Optional<GearPair> best =
        IntStream.rangeClosed(1, MOST_SUM)
            .filter(k -> Math.min(up, down) * k >= fewest && (long) (up + down) * k <= MOST_SUM)
            .mapToObj(k -> tried(frame, up * k, down * k, axes))
            .flatMap(Optional::stream)
            .filter(BoxTeeth::runs)
            .min(Comparator.comparingDouble(p -> Math.abs(p.pinion().shift() + p.wheel().shift())));
    return best.orElseThrow(
        () ->
            new IllegalArgumentException(
                "on shaft centres of "
                    + Numbers.significant(axes, 6)
                    + " mm no pair of module "
                    + Numbers.significant(frame.module(), 6)
                    + " mm gives "
                    + ratio.text()
                    + " without being undercut, pointed, or losing contact; "
                    + Numbers.significant(
                        frame.module()
                            * (up + down)
                            * Math.ceil((double) fewest / Math.min(up, down))
                            / 2,
                        6)
                    + " mm would do for this ratio"));
  }

  private static Optional<GearPair> tried(BoxFrame frame, int driver, int driven, double axes) {
    try {
      return Optional.of(SharedShift.on(frame.module(), frame.rack(), driver, driven, axes));
    } catch (IllegalArgumentException tooFar) {
      return Optional.empty();
    }
  }

  private static boolean runs(GearPair pair) {
    return pair.concerns().stream().noneMatch(c -> c.level() == Concern.Level.REFUSE);
  }

  int largest() {
    return cone.stream().mapToInt(Integer::intValue).max().orElse(0);
  }

  int smallest() {
    return cone.stream().mapToInt(Integer::intValue).min().orElse(0);
  }
}
