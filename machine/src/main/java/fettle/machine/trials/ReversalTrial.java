package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Outliers;
import fettle.mechanics.metrology.PositioningReading;
import fettle.mechanics.metrology.PositioningTest;
import fettle.mechanics.metrology.Sample;
import java.util.ArrayList;
import java.util.List;

/** A slide brought to the same places from both sides. */
final class ReversalTrial {

  private ReversalTrial() {}

  static void evaluate(Draft draft) {
    List<PositioningReading> readings = new ArrayList<>();
    for (Readings.Line l : draft.trial().readings().lines()) {
      double deviation = l.reading() - l.at(2);
      readings.add(new PositioningReading(l.at(2), l.whole(1), l.whole(0), deviation));
    }
    draft.gaps.addAll(PositioningTest.gaps(readings));
    PositioningTest test = PositioningTest.of(readings);
    outliers(draft, readings, test);
    double retrace = draft.trial().retrace();
    double u =
        Math.max(
            test.meanReversalUncertainty(), draft.trial().stepDoubt() / Math.sqrt(readings.size()));
    double freedom =
        test.targets().stream()
            .mapToDouble(t -> Math.max(0, t.up().size() - 1) + Math.max(0, t.down().size() - 1))
            .sum();
    int runs = (int) readings.stream().map(PositioningReading::run).distinct().count();
    draft.add(
        DialTrial.REVERSAL,
        -test.meanReversal() - retrace / 2,
        Unit.MICRON,
        new Draft.Repeats(runs, "runs both ways", true),
        0,
        "take up nut and thrust by what is too much, at the place where the slide goes tightest",
        DialTrial.POSITIONING,
        Contribution.readings("scatter of the readings", u, 1, freedom),
        DialTrial.lag(retrace));
    DialTrial.positioning(draft, readings, 0, List.of(DialTrial.REPEATABILITY));
    double most = test.targets().stream().mapToDouble(t -> -t.reversal()).max().orElse(0);
    double least = test.targets().stream().mapToDouble(t -> -t.reversal()).min().orElse(0);
    draft.notes.add(
        "As seen, the pointer's lag included, the reversal goes from "
            + Numbers.fixed(least * 1000, 1)
            + " to "
            + Numbers.fixed(most * 1000, 1)
            + " µm over the travel.");
    draft
        .trial()
        .values()
        .text("train")
        .ifPresent(t -> draft.expected.put(DialTrial.REVERSAL, "play/" + t + "/play at the slide"));
  }

  /** Cells of three readings are too small for a test of their own: all are judged together. */
  private static void outliers(
      Draft draft, List<PositioningReading> readings, PositioningTest test) {
    double[] rest = new double[readings.size()];
    for (int i = 0; i < rest.length; i++) {
      PositioningReading r = readings.get(i);
      rest[i] =
          test.targets().stream()
              .filter(t -> Math.abs(t.position() - r.target()) < 1e-6)
              .mapToDouble(t -> r.deviation() - mean(r.direction() > 0 ? t.up() : t.down()))
              .findFirst()
              .orElse(0);
    }
    if (rest.length < 3) {
      return;
    }
    for (int i : Outliers.robust(Sample.of(rest))) {
      PositioningReading r = readings.get(i);
      draft.outliers.add(
          "run "
              + r.run()
              + ", target "
              + Numbers.significant(r.target(), 6)
              + " mm, going "
              + (r.direction() > 0 ? "up" : "down")
              + ": "
              + Numbers.fixed(rest[i] * 1000, 1)
              + " µm from the mean of its place");
    }
  }

  private static double mean(List<Double> cell) {
    return cell.stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }
}
