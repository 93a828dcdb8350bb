package fettle.machine.trials;

import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Sample;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Turns of the spindle counted against time. */
final class SpeedTrial {

  private static final Source COUNTED = Source.derived("n = 2 pi N/t");

  private SpeedTrial() {}

  /** Returns the name of a step's figure. */
  private static String name(Trial trial, int step) {
    return called(trial, step)
        .map(s -> "speed " + s.replace(",", ""))
        .orElse("speed of step " + step);
  }

  /** Returns what the forecast calls a step, if the trial says so. */
  private static Optional<String> called(Trial trial, int step) {
    List<?> steps = trial.values().held().get("steps") instanceof List<?> list ? list : List.of();
    return step >= 1 && step <= steps.size()
        ? Optional.of(String.valueOf(steps.get(step - 1)))
        : Optional.empty();
  }

  static Set<String> names(Trial trial) {
    Set<String> names = new LinkedHashSet<>();
    trial.readings().lines().forEach(l -> names.add(name(trial, l.whole(0))));
    return names;
  }

  static void evaluate(Draft draft) {
    Trial trial = draft.trial();
    SortedMap<Integer, List<Readings.Line>> steps = new TreeMap<>();
    for (Readings.Line l : trial.readings().lines()) {
      if (!(l.at(1) > 0) || !(l.reading() > 0)) {
        throw new IllegalArgumentException(
            "line " + l.number() + ": expected turns and time above 0");
      }
      steps.computeIfAbsent(l.whole(0), s -> new ArrayList<>()).add(l);
    }
    steps.forEach(
        (step, lines) -> {
          String name = name(trial, step);
          step(draft, name, lines);
          called(trial, step)
              .ifPresent(s -> draft.expected.put(name, "speeds/spindle/speed, " + s));
        });
    draft.cautions.add(
        "Count with the chuck guard shut, hair, sleeves and gloves away; an empty spindle or a"
            + " small chuck only, and never above its marked speed.");
  }

  private static void step(Draft draft, String name, List<Readings.Line> lines) {
    double[] speeds =
        lines.stream().mapToDouble(l -> 2 * Math.PI * l.at(1) / l.reading()).toArray();
    if (speeds.length < 2) {
      throw new IllegalArgumentException(name + ": counted once, expected twice or more");
    }
    double mean = Sample.of(speeds).mean();
    double least = Double.POSITIVE_INFINITY;
    double time = 0;
    for (Readings.Line l : lines) {
      least = Math.min(least, l.at(1));
      time += l.reading() / lines.size();
    }
    double counted = mean / (Math.sqrt(12) * least);
    double seen = Sample.of(speeds).standardDeviation();
    double s = seen > 0 ? seen : counted;
    draft.add(
        name,
        mean,
        Unit.RPM,
        new Draft.Repeats(speeds.length, "counts", false),
        0,
        "look for a slipping or bottoming belt, a wrong step, or the inverter's setting",
        COUNTED,
        Contribution.readings(
            "scatter of the counts", s / Math.sqrt(speeds.length), 1, speeds.length - 1.0),
        new Contribution(
            "doubt of the timing",
            draft.trial().instrumentDoubt(),
            mean / time,
            Double.POSITIVE_INFINITY,
            Contribution.Kind.JUDGEMENT));
  }
}
