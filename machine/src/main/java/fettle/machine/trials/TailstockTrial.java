package fettle.machine.trials;

import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** A bar between centres, read at both ends. */
final class TailstockTrial {

  static final String SIDEWAYS = "tailstock centre sideways";
  static final String HEIGHT = "tailstock centre in height";

  private static final Source CENTRES =
      Source.derived("bar between centres: offset is the difference of its ends times L over l");

  private TailstockTrial() {}

  static void evaluate(Draft draft) {
    Trial trial = draft.trial();
    double factor = trial.given("between centres") / trial.given("distance");
    for (int plane = 0; plane < 2; plane++) {
      int wanted = plane;
      List<Readings.Line> lines =
          trial.readings().lines().stream().filter(l -> l.whole(1) == wanted).toList();
      if (lines.isEmpty()) {
        draft.gaps.add("no readings in the plane " + (plane == 0 ? "h" : "v"));
        continue;
      }
      plane(draft, plane, lines, factor);
    }
    draft.cautions.add("Read with the power off and the tailstock clamped as in use.");
  }

  private static void plane(Draft draft, int plane, List<Readings.Line> lines, double factor) {
    SortedMap<Integer, List<List<Double>>> seatings = new TreeMap<>();
    for (Readings.Line l : lines) {
      seatings
          .computeIfAbsent(l.whole(0), c -> List.of(new ArrayList<>(), new ArrayList<>()))
          .get(l.whole(2))
          .add(l.reading());
    }
    List<Double> differences = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    seatings.forEach(
        (seating, ends) -> {
          if (ends.get(0).isEmpty() || ends.get(1).isEmpty()) {
            draft.gaps.add("seating " + seating + ": only one end was read; it is left out");
          } else {
            numbers.add(seating);
            differences.add(mean(ends.get(1)) - mean(ends.get(0)));
          }
        });
    double[] d = differences.stream().mapToDouble(Double::doubleValue).toArray();
    var scatter = draft.scatter("scatter of the seatings", d, factor);
    Odd.of(differences, "seating", numbers, draft);
    double offset = Sample.of(d).mean() * factor;
    String way = Evaluations.mm(Math.abs(offset));
    String adjust =
        plane == 0
            ? "set the tailstock over by "
                + way
                + (offset > 0 ? " away from" : " towards")
                + " the tool"
                + BarTrial.turns(draft.trial(), Math.abs(offset))
                + "; unscrew one side first"
            : offset > 0
                ? "it is high by " + way + "; within the limit leave it to wear"
                : "shim the tailstock by " + way + " and a little more for wear";
    draft.add(
        plane == 0 ? SIDEWAYS : HEIGHT,
        offset,
        Unit.MICRON,
        new Draft.Repeats(d.length, "seatings", true),
        0,
        adjust,
        CENTRES,
        scatter,
        draft.instrument(factor));
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
