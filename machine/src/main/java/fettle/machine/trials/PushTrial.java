package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.Outliers;
import fettle.mechanics.metrology.PushTest;
import fettle.mechanics.metrology.Sample;
import java.util.Arrays;
import java.util.List;

/** Push and pull at the tool post. */
final class PushTrial {

  static final String STIFFNESS = "stiffness";
  static final String LOST = "lost motion";
  static final String HYSTERESIS = "hysteresis";

  private static final Source LOOP =
      Source.derived("least squares on the push-pull loop: slope, gap at the change of sign, lag");

  private PushTrial() {}

  static void evaluate(Draft draft) {
    Trial trial = draft.trial();
    List<Readings.Line> all = trial.readings().lines();
    int first = all.stream().mapToInt(l -> l.whole(0)).min().orElse(0);
    int loops = (int) all.stream().mapToInt(l -> l.whole(0)).distinct().count();
    List<Readings.Line> lines =
        loops > 1 ? all.stream().filter(l -> l.whole(0) != first).toList() : all;
    if (loops > 1) {
      draft.notes.add(
          "Loop " + first + " settles the joints: it is kept in the file and left out of the fit.");
    }
    double least = trial.given("least force");
    double[] force = lines.stream().mapToDouble(l -> l.at(2)).toArray();
    double[] way = lines.stream().mapToDouble(l -> l.at(1)).toArray();
    double[] moved = lines.stream().mapToDouble(Readings.Line::reading).toArray();
    PushTest test = PushTest.of(force, way, moved, least);
    double freedom = test.fit().freedom();
    if (!(freedom >= 1)) {
      throw new IllegalArgumentException("too few readings above the least force; take more");
    }
    outliers(draft, lines, least, test);
    double k = test.stiffness();
    double span = Arrays.stream(moved).max().orElse(0) - Arrays.stream(moved).min().orElse(0);
    Draft.Repeats repeats = new Draft.Repeats(Math.max(1, loops - 1), "loops", false);
    String adjust = "find the softest joint: read post, slide, saddle and bed one after the other";
    draft.add(
        STIFFNESS,
        k,
        Unit.N_PER_MICRON,
        repeats,
        0,
        adjust,
        LOOP,
        Contribution.readings(
            "scatter of the readings", floor(draft, test, test.stiffnessUncertainty()), 1, freedom),
        draft.instrument(k / span),
        Contribution.of(
            "force gauge", trial.given("force doubt"), Contribution.Shape.CERTIFICATE, k));
    width(draft, test, LOST, "G", repeats, "adjust the gib: a gap is crossed when the force turns");
    width(draft, test, HYSTERESIS, "H", repeats, "");
    draft.cautions.add(
        "Push with the power off and the plug out; a gauge that slips off under load can hurt a"
            + " hand.");
  }

  private static double floor(Draft draft, PushTest test, double u) {
    double s = test.fit().deviation();
    double step = draft.trial().stepDoubt();
    return s >= step || s == 0 ? u : u * step / s;
  }

  private static void width(
      Draft draft,
      PushTest test,
      String name,
      String coefficient,
      Draft.Repeats repeats,
      String adjust) {
    draft.add(
        name,
        test.fit().value(coefficient),
        Unit.MICRON,
        new Draft.Repeats(repeats.taken(), repeats.word(), true),
        0,
        adjust,
        LOOP,
        Contribution.readings(
            "scatter of the readings",
            floor(draft, test, test.fit().uncertainty(coefficient)),
            1,
            test.fit().freedom()),
        draft.instrument(1));
  }

  private static void outliers(
      Draft draft, List<Readings.Line> lines, double least, PushTest test) {
    List<Readings.Line> used =
        lines.stream()
            .filter(l -> Math.abs(l.at(2)) >= least * (1 - 1e-12) && l.at(2) != 0)
            .toList();
    double[] rest = test.fit().residuals().toArray();
    for (int i : Outliers.robust(Sample.of(rest))) {
      draft.outliers.add(
          "line "
              + used.get(i).number()
              + ": "
              + Numbers.fixed(rest[i] * 1000, 1)
              + " µm from the fitted loop");
    }
  }
}
