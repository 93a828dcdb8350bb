package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.LeastSquares;
import fettle.mechanics.metrology.LinearFit;
import fettle.mechanics.metrology.Outliers;
import fettle.mechanics.metrology.Sample;
import fettle.mechanics.metrology.Straightness;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The carriage driven by the lead screw, against rods, from both sides. */
final class LeadTrial {

  static final String LEAD = "lead too long by";
  static final String PLAY = "play of the lead screw";

  private static final Source FIT =
      Source.derived("least squares: an offset for each run, error of the lead, play");
  private static final Source WINDOW =
      Source.memory("ISO 1708:1989", "G15: largest difference of the error within the length");

  private final Draft draft;
  private final List<Readings.Line> lines;
  private final LinearFit fit;
  private final List<Integer> runs;
  private final double middle;
  private final double span;

  private LeadTrial(Draft draft) {
    this.draft = draft;
    lines = draft.trial().readings().lines();
    double[] targets = draft.trial().readings().column(2);
    double low = Arrays.stream(targets).min().orElse(0);
    span = Arrays.stream(targets).max().orElse(0) - low;
    middle = low + span / 2;
    runs = lines.stream().map(l -> l.whole(0)).distinct().sorted().toList();
    fit = fit();
  }

  static void evaluate(Draft draft) {
    new LeadTrial(draft).evaluate();
  }

  /**
   * Returns the name of the error within a length.
   *
   * @param window length [mm]
   */
  static String within(double window) {
    return "lead error within any " + Numbers.significant(window, 4) + " mm";
  }

  private LinearFit fit() {
    boolean both = lines.stream().mapToInt(l -> l.whole(1)).distinct().count() > 1;
    List<String> names = new ArrayList<>(runs.stream().map(r -> "o" + r).toList());
    names.add("lead");
    if (both) {
      names.add("B");
    }
    double[][] rows = new double[lines.size()][names.size()];
    double[] y = new double[lines.size()];
    for (int i = 0; i < rows.length; i++) {
      Readings.Line l = lines.get(i);
      rows[i][runs.indexOf(l.whole(0))] = 1;
      rows[i][runs.size()] = l.at(2) - middle;
      if (both) {
        rows[i][runs.size() + 1] = -l.whole(1) / 2.0;
      }
      y[i] = l.reading() - l.at(2);
    }
    if (rows.length <= names.size()) {
      throw new IllegalArgumentException("too few readings; read every rod both ways and twice");
    }
    return LeastSquares.fit(names, rows, y);
  }

  private void evaluate() {
    for (int i : Outliers.robust(Sample.of(fit.residuals().toArray()))) {
      draft.outliers.add(
          "line "
              + lines.get(i).number()
              + ": "
              + Numbers.fixed(fit.residuals().getEntry(i) * 1000, 1)
              + " µm from the fitted line");
    }
    SortedMap<Double, List<Double>> cells = cells();
    double squares = 0;
    int freedom = 0;
    int fewest = Integer.MAX_VALUE;
    for (List<Double> cell : cells.values()) {
      Sample sample = Sample.of(cell.stream().mapToDouble(v -> v).toArray());
      squares += sample.sumOfSquares();
      freedom += sample.count() - 1;
      fewest = Math.min(fewest, sample.count());
    }
    if (fewest < 2) {
      throw new IllegalArgumentException("every rod must be read twice or more");
    }
    double s = Math.max(Math.sqrt(squares / freedom), draft.trial().stepDoubt());
    lead(s, freedom);
    play(s, freedom);
    for (double window : new double[] {60, 300}) {
      within(window, cells, s / Math.sqrt(fewest), freedom);
    }
  }

  /** Returns the errors at each place, offsets of the runs and the play taken off. */
  private SortedMap<Double, List<Double>> cells() {
    SortedMap<Double, List<Double>> cells = new TreeMap<>();
    double play = fit.names().contains("B") ? fit.value("B") : 0;
    for (Readings.Line l : lines) {
      double error = l.reading() - l.at(2) - fit.value("o" + l.whole(0)) + l.whole(1) * play / 2;
      cells.computeIfAbsent(l.at(2), z -> new ArrayList<>()).add(error);
    }
    return cells;
  }

  private Draft.Repeats repeats(boolean signed) {
    return new Draft.Repeats(runs.size(), "runs both ways", signed);
  }

  /** Returns the fit's uncertainty with the scatter of the readings instead of its residuals. */
  private double scattered(String name, double s) {
    return fit.deviation() > 0 ? fit.uncertainty(name) * s / fit.deviation() : s;
  }

  private void lead(double s, int freedom) {
    double value = fit.value("lead");
    draft.add(
        LEAD,
        value,
        Unit.PPM,
        repeats(true),
        0,
        "thread lengths come out wrong by this; choose change gears that make up for it",
        FIT,
        Contribution.readings("scatter of the readings", scattered("lead", s), 1, freedom),
        draft.instrument(1 / Math.sqrt(2 * squares())),
        Contribution.of(
            "length standard",
            draft.trial().given("scale doubt"),
            Contribution.Shape.CERTIFICATE,
            1));
  }

  /** Returns the sum of squares of the places about their mean, each counted once [mm2]. */
  private double squares() {
    double[] z = lines.stream().mapToDouble(l -> l.at(2)).distinct().toArray();
    return Sample.of(z).sumOfSquares();
  }

  private void play(double s, int freedom) {
    if (!fit.names().contains("B")) {
      draft.notes.add("All rods were reached from one side: nothing is known of the play.");
      return;
    }
    double retrace = draft.trial().retrace();
    draft.add(
        PLAY,
        fit.value("B") - retrace / 2,
        Unit.MICRON,
        repeats(true),
        0,
        "thrust collar or half nut: read the end of the screw to tell which, and shim that",
        FIT,
        Contribution.readings("scatter of the readings", scattered("B", s), 1, freedom),
        DialTrial.lag(retrace));
    draft
        .trial()
        .values()
        .text("train")
        .ifPresent(t -> draft.expected.put(PLAY, "play/" + t + "/play at the slide"));
  }

  private void within(double window, SortedMap<Double, List<Double>> cells, double u, int freedom) {
    if (span < window) {
      draft.notes.add(
          "The rods reach "
              + Numbers.fixed(span, 0)
              + " mm: nothing is known of the error within "
              + Numbers.fixed(window, 0)
              + " mm.");
      return;
    }
    double[] z = cells.keySet().stream().mapToDouble(v -> v).toArray();
    double[] errors =
        cells.values().stream()
            .mapToDouble(c -> c.stream().mapToDouble(v -> v).average().orElse(0))
            .toArray();
    draft.add(
        within(window),
        Straightness.windowed(z, errors, window),
        Unit.MICRON,
        repeats(false),
        0,
        "even error: gears; once a turn: thrust face or bent journal; in one place: worn there",
        WINDOW,
        Contribution.readings("scatter of the readings", Math.sqrt(2) * u, 1, freedom),
        draft.instrument(1),
        Contribution.of(
            "length standard",
            draft.trial().given("scale doubt") * window,
            Contribution.Shape.CERTIFICATE,
            1));
  }
}
