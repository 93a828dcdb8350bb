package fettle.machine.trials;

import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** A faced disc, read on both sides of its centre by an indicator on the cross slide. */
final class FacingTrial {

  static final String HOLLOW = "hollow of the face";
  static final String SQUARE = "cross slide to the spindle, hollow";

  private static final Source FACED =
      Source.derived(
          "the near side repeats the tool's path and reads nothing; the far side reads twice it");

  private FacingTrial() {}

  static void evaluate(Draft draft) {
    Trial trial = draft.trial();
    double radius = trial.given("radius");
    SortedMap<Integer, List<List<Double>>> cuts = new TreeMap<>();
    for (Readings.Line l : trial.readings().lines()) {
      cuts.computeIfAbsent(l.whole(0), c -> List.of(new ArrayList<>(), new ArrayList<>()))
          .get(l.whole(1))
          .add(l.reading());
    }
    List<Double> steps = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    cuts.forEach(
        (cut, sides) -> {
          if (sides.get(0).isEmpty() || sides.get(1).isEmpty()) {
            draft.gaps.add("cut " + cut + ": only one side was read; the cut is left out");
          } else {
            numbers.add(cut);
            steps.add(mean(sides.get(1)) - mean(sides.get(0)));
          }
        });
    double[] d = steps.stream().mapToDouble(v -> v).toArray();
    Contribution scatter = draft.scatter("scatter of the cuts", d, 0.5);
    double step = Sample.of(d).mean();
    Odd.of(steps, "cut", numbers, draft);
    String adjust = adjust(trial, step / (2 * radius));
    Draft.Repeats repeats = new Draft.Repeats(d.length, "cuts", true);
    draft.add(
        HOLLOW,
        step / 2,
        Unit.MICRON,
        repeats,
        2 * radius,
        adjust,
        FACED,
        scatter,
        draft.instrument(0.5));
    double lever = 1 / (2 * radius);
    draft.add(
        SQUARE,
        step * lever,
        Unit.MICRON_PER_M,
        repeats,
        0,
        adjust,
        FACED,
        draft.scatter("scatter of the cuts", d, lever),
        draft.instrument(lever));
    draft.cautions.add(
        "A faced disc has sharp edges; measure with the spindle at rest and the power off.");
  }

  private static String adjust(Trial trial, double hollow) {
    double way = trial.given("way length");
    return (hollow < 0 ? "it faces crowned, which is never allowed: " : "")
        + "if the headstock leans the same way, slew it first; else scrape the cross way of the"
        + " saddle at one end"
        + (way == 0 ? "" : " by " + Evaluations.mm(Math.abs(hollow) * way));
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
