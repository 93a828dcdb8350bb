package fettle.machine.trials;

import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Two collars turned without the tailstock. */
final class CollarTrial {

  static final String TAPER = "head collar larger than free collar";

  private static final Source TURNED =
      Source.derived("two collars: axis leans by (d_head - d_free)/(2 L)");

  private CollarTrial() {}

  static void evaluate(Draft draft) {
    Trial trial = draft.trial();
    SortedMap<Integer, List<List<Double>>> cuts = new TreeMap<>();
    for (Readings.Line l : trial.readings().lines()) {
      cuts.computeIfAbsent(l.whole(0), c -> List.of(new ArrayList<>(), new ArrayList<>()))
          .get(l.whole(1))
          .add(l.reading());
    }
    List<Double> differences = new ArrayList<>();
    cuts.forEach(
        (cut, ends) -> {
          if (ends.get(0).isEmpty() || ends.get(1).isEmpty()) {
            draft.gaps.add("cut " + cut + ": only one collar was measured; the cut is left out");
          } else {
            differences.add(mean(ends.get(0)) - mean(ends.get(1)));
          }
        });
    double[] d = differences.stream().mapToDouble(Double::doubleValue).toArray();
    var scatter = draft.scatter("scatter of the cuts", d, 1);
    Odd.of(differences, "cut", new ArrayList<>(cuts.keySet()), draft);
    double distance = trial.given("distance");
    double taper = Sample.of(d).mean();
    double lean = taper / (2 * distance);
    double lever = trial.given("lever");
    String adjust =
        "level the bed first; then "
            + (lever == 0
                ? "slew the headstock by " + Evaluations.mm(Math.abs(lean) * 1000) + " for a metre"
                : "move the headstock by "
                    + Evaluations.mm(Math.abs(lean) * lever)
                    + " at the adjusting screw"
                    + BarTrial.turns(trial, Math.abs(lean) * lever))
            + ", nose "
            + (lean > 0 ? "away from" : "towards")
            + " the tool";
    Draft.Repeats repeats = new Draft.Repeats(d.length, "cuts", true);
    draft.add(
        TAPER, taper, Unit.MICRON, repeats, distance, adjust, TURNED, scatter, draft.instrument(1));
    draft.cautions.add("Keep the chuck guard shut; measure with the spindle at rest.");
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
