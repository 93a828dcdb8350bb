package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.LeastSquares;
import fettle.mechanics.metrology.LinearFit;
import fettle.mechanics.metrology.Quantiles;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Axial force until one row of a preloaded pair lets go. */
final class PreloadTrial {

  static final String KNEE = "force at which a row lets go";
  static final String PRELOAD = "preload";

  private static final Source LETS_GO =
      Source.derived("rows of point contact let go at 2^(3/2) times the preload, rollers at twice");
  private static final double SHAPE = 0.05;
  private static final int STEPS = 200;

  private final Draft draft;
  private final List<Readings.Line> lines;
  private final double most;

  private PreloadTrial(Draft draft) {
    this.draft = draft;
    List<Readings.Line> all = draft.trial().readings().lines();
    int first = all.stream().mapToInt(l -> l.whole(0)).min().orElse(0);
    long loops = all.stream().mapToInt(l -> l.whole(0)).distinct().count();
    lines = loops > 1 ? all.stream().filter(l -> l.whole(0) != first).toList() : all;
    if (loops > 1) {
      draft.notes.add(
          "Loop " + first + " settles the seats: it is kept in the file and left out of the fit.");
    }
    most = lines.stream().mapToDouble(l -> l.at(2)).max().orElse(0);
    if (lines.stream().anyMatch(l -> l.at(2) < 0)) {
      throw new IllegalArgumentException("force: expected one way of pull, all forces 0 or more");
    }
  }

  static void evaluate(Draft draft) {
    new PreloadTrial(draft).evaluate();
  }

  private LinearFit fit(double knee) {
    boolean both = lines.stream().mapToInt(l -> l.whole(1)).distinct().count() > 1;
    boolean bent = knee > 0;
    List<String> names = new ArrayList<>(List.of("c", "b"));
    if (bent) {
      names.add("more");
    }
    if (both) {
      names.add("H");
    }
    double[][] rows = new double[lines.size()][];
    double[] y = new double[lines.size()];
    for (int i = 0; i < rows.length; i++) {
      Readings.Line l = lines.get(i);
      List<Double> row = new ArrayList<>(List.of(1.0, l.at(2)));
      if (bent) {
        row.add(Math.max(0, l.at(2) - knee));
      }
      if (both) {
        row.add(-l.whole(1) / 2.0);
      }
      rows[i] = row.stream().mapToDouble(v -> v).toArray();
      y[i] = l.reading();
    }
    if (rows.length < names.size() + 3) {
      throw new IllegalArgumentException("too few readings; read ten forces up and down, twice");
    }
    return LeastSquares.fit(names, rows, y);
  }

  private void evaluate() {
    double ratio = draft.trial().values().needText("rows").equals("rollers") ? 2 : Math.pow(2, 1.5);
    double straight = fit(0).residualSquares();
    double low = 0.1 * most;
    double high = 0.9 * most;
    double[] squares = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      squares[i] = fit(low + (high - low) * i / STEPS).residualSquares();
    }
    double least = Arrays.stream(squares).min().orElseThrow();
    int best = 0;
    while (squares[best] > least) {
      best++;
    }
    double knee = low + (high - low) * best / STEPS;
    double freedom = fit(knee).freedom() - 1;
    boolean found =
        freedom > 0
            && (straight - least) / 2 > least / freedom * Quantiles.fisher(0.99, 2, freedom)
            && fit(knee).value("more") > 0.3 * fit(knee).value("b")
            && best > 0
            && best < STEPS;
    if (!found) {
      draft.notes.add(
          "No row lets go up to "
              + Numbers.fixed(most, 0)
              + " N: the preload is at least "
              + Numbers.fixed(most / ratio, 0)
              + " N, unless there is none at all and the whole curve is soft.");
    } else {
      figures(knee, width(squares, least, freedom, (high - low) / STEPS), freedom, ratio);
    }
    draft.cautions.add(
        "Pull with the power off and the plug out, square to the face; a gauge that slips off"
            + " under load can hurt a hand.");
  }

  /** Half the range of knees that fit not worse than one standard deviation; at least a step. */
  private static double width(double[] squares, double least, double freedom, double step) {
    double most = least * (1 + 1 / freedom);
    long within = Arrays.stream(squares).filter(s -> s <= most).count();
    return Math.max(1, within) * step / 2;
  }

  private void figures(double knee, double u, double freedom, double ratio) {
    Draft.Repeats loops =
        new Draft.Repeats(
            (int) lines.stream().mapToInt(l -> l.whole(0)).distinct().count(), "loops", false);
    double gauge = draft.trial().given("force doubt");
    draft.add(
        KNEE,
        knee,
        Unit.N,
        loops,
        0,
        "",
        LETS_GO,
        Contribution.readings("scatter of the readings", u, 1, freedom),
        Contribution.of("force gauge", gauge * knee, Contribution.Shape.CERTIFICATE, 1));
    draft.add(
        PRELOAD,
        knee / ratio,
        Unit.N,
        loops,
        0,
        "turn the preload nut or change the spacer, run the bearing in, and pull again",
        LETS_GO,
        Contribution.readings("scatter of the readings", u, 1 / ratio, freedom),
        Contribution.of("force gauge", gauge * knee, Contribution.Shape.CERTIFICATE, 1 / ratio),
        Contribution.of(
            "shape of the curve (common practice)",
            SHAPE * knee / ratio,
            Contribution.Shape.CERTIFICATE,
            1));
  }
}
