package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.ControlChart;
import fettle.mechanics.metrology.LeastSquares;
import fettle.mechanics.metrology.LinearFit;
import fettle.mechanics.metrology.Sample;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One figure kept over the years: control chart, drift, service hours. */
final class RecordTrial {

  static final String DRIFT = "drift in a year";

  private static final Source LAST = Source.derived("newest reading, scatter of the settled time");
  private static final Source LINE =
      Source.derived("least squares of the readings since the settled time");
  private static final double YEAR = 365.25;

  /** Chances of a false alarm: to warn and to act. */
  private static final double WARN = 0.05;

  private static final double ACT = 0.0027;

  /** Weight and width of the average whose false alarms come as seldom as three sigma's. */
  private static final double WEIGHT = 0.2;

  private static final double WIDTH = 2.86;
  private static final int LEAST = 5;

  private final Draft draft;
  private final Unit unit;
  private final List<Readings.Line> lines;
  private final double[] values;

  private RecordTrial(Draft draft) {
    this.draft = draft;
    unit = FreeTrial.unit(draft.trial());
    lines = draft.trial().readings().lines();
    values = lines.stream().mapToDouble(l -> unit.toCoherent(l.reading())).toArray();
    if (values.length < LEAST) {
      throw new IllegalArgumentException(
          "found " + values.length + " readings, expected " + LEAST + " or more");
    }
    for (int i = 1; i < lines.size(); i++) {
      if (lines.get(i).at(0) < lines.get(i - 1).at(0)) {
        throw new IllegalArgumentException(
            "line " + lines.get(i).number() + ": its date lies before that of the line above");
      }
    }
  }

  static void evaluate(Draft draft) {
    new RecordTrial(draft).evaluate();
  }

  private void evaluate() {
    int settled = settled();
    Sample base = Sample.of(Arrays.copyOf(values, settled));
    double s = base.standardDeviation();
    if (!(s > 0)) {
      throw new IllegalArgumentException(
          "the first readings are all alike; read a finer step, or state more of them as settled");
    }
    draft.add(
        FreeTrial.name(draft.trial()),
        values[values.length - 1],
        unit,
        new Draft.Repeats(1, "readings", true),
        0,
        "set up anew and read again before a screw is touched",
        LAST,
        Contribution.readings("scatter of the settled time", s, 1, settled - 1.0),
        FreeTrial.common(draft.trial()));
    drift(settled);
    double warning = ControlChart.predictionFactor(settled, WARN) * s;
    double action = ControlChart.predictionFactor(settled, ACT) * s;
    double[] averages = ControlChart.averages(values, WEIGHT, base.mean());
    List<Double> limits = new ArrayList<>();
    List<Chart.Point> points = new ArrayList<>();
    double few = action / (3 * s);
    for (int i = 0; i < values.length; i++) {
      limits.add(few * ControlChart.averageLimit(WEIGHT, WIDTH, s, i + 1));
      points.add(new Chart.Point(lines.get(i).at(0), lines.get(i).at(1), values[i], averages[i]));
    }
    List<String> signals = signals(points, settled, base.mean(), warning, action, limits);
    draft.chart =
        java.util.Optional.of(
            new Chart(
                points, settled, base.mean(), warning, action, limits, unit, signals, service()));
  }

  private int settled() {
    int stated = draft.trial().values().held().get("settled") instanceof Integer n ? n : 0;
    int settled = stated == 0 ? Math.max(LEAST, values.length / 2) : stated;
    if (settled > values.length) {
      throw new IllegalArgumentException(
          "settled: found " + settled + ", expected at most the " + values.length + " readings");
    }
    return settled;
  }

  private void drift(int settled) {
    int after = values.length - settled;
    double first = lines.get(0).at(0);
    double[][] rows = new double[after][];
    for (int i = 0; i < after; i++) {
      rows[i] = new double[] {1, (lines.get(settled + i).at(0) - first) / YEAR};
    }
    if (after < 3 || !(rows[after - 1][1] > rows[0][1])) {
      draft.notes.add("Three readings after the settled time are needed to tell of a drift.");
      return;
    }
    double[] late = Arrays.copyOfRange(values, settled, values.length);
    LinearFit fit = LeastSquares.fit(List.of("a", "slope"), rows, late);
    draft.add(
        DRIFT,
        fit.value("slope"),
        unit,
        new Draft.Repeats(after, "readings", true),
        0,
        "find what wears or loosens before it is put right",
        LINE,
        Contribution.readings("scatter of the readings", fit.uncertainty("slope"), 1, after - 2.0));
  }

  private List<String> signals(
      List<Chart.Point> points,
      int settled,
      double centre,
      double warning,
      double action,
      List<Double> limits) {
    List<String> signals = new ArrayList<>();
    boolean average = false;
    for (int i = settled; i < points.size(); i++) {
      double off = Math.abs(points.get(i).value() - centre);
      if (off > warning) {
        signals.add(
            day(points.get(i))
                + ": "
                + shown(points.get(i).value())
                + (off > action
                    ? " lies beyond the action limit; set up anew and read again"
                    : " lies beyond the warning limit; read again soon"));
      }
      if (!average && Math.abs(points.get(i).average() - centre) > limits.get(i)) {
        average = true;
        signals.add(
            day(points.get(i))
                + ": the weighted average leaves its limits: a slow drift, about "
                + shown(points.get(i).average() - centre)
                + " by then");
      }
    }
    if (signals.isEmpty()) {
      signals.add("Nothing stands out: leave it alone; adjusting on scatter only adds to it.");
    }
    return signals;
  }

  private static String day(Chart.Point point) {
    return LocalDate.ofEpochDay((long) point.day()).toString();
  }

  private String shown(double value) {
    String number = Numbers.significant(unit.fromCoherent(value), 3);
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }

  private String service() {
    double every = draft.trial().given("service every") / 3600;
    double hours = lines.get(lines.size() - 1).at(1);
    if (every == 0) {
      return "";
    }
    double next = draft.trial().given("served at") / 3600 + every;
    return next > hours
        ? "next service in " + Numbers.fixed(next - hours, 0) + " running hours"
        : "service is overdue by " + Numbers.fixed(hours - next, 0) + " running hours";
  }
}
