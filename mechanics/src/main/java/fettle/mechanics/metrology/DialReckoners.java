package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;

/** Single calculations on dials, scales and positioning. */
final class DialReckoners {

  private static final String GROUP = StatisticsReckoners.GROUP;
  private static final int NAMED = 6;

  private DialReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        dialTest(),
        correctionTable(),
        positioning(),
        dialGain(),
        trueBacklash(),
        eccentricDial(),
        dialRemedy());
  }

  private static Reckoner dialTest() {
    Reckoner.Draft draft =
        Reckoner.of(GROUP, "dial-test", "Dial against indicator: travel, backlash, periodic errors")
            .input(
                "readings",
                Input.Kind.ROWS,
                Unit.ONE,
                "rows: run, dir (1 turned up, -1 down), turns, indicator in mm",
                null,
                true)
            .numbers("periods", Unit.TURNS, "periods to be found; 1 is once per turn")
            .optional("nominal", Unit.MM, "nominal travel per turn")
            .optional("hysteresis", Unit.MM, "hysteresis of the indicator, measured")
            .number("retrace", Unit.MM, "retrace limit of the indicator", "0.003")
            .number("u_rod", Unit.MM, "standard uncertainty of the length standard", "0")
            .number("tilt", Unit.RAD, "standard deviation of the set-up tilt in each plane", "0")
            .number("u_dT", Unit.K, "uncertainty of the temperature difference", "0")
            .result("T", Unit.MM, "travel per turn")
            .result("u_T", Unit.MICRON, "its standard uncertainty from the fit")
            .result("u_T_runs", Unit.MICRON, "from the differences between the runs")
            .result("u_T_all", Unit.MICRON, "with scale, tilt and temperature; the larger of both")
            .result("U_T", Unit.MICRON, "expanded uncertainty of T, 95 %")
            .result("gain", Unit.PERCENT, "gain error T/T_nominal - 1")
            .result("U_gain", Unit.PERCENT, "its expanded uncertainty")
            .result("B", Unit.MICRON, "backlash as observed")
            .result("u_B", Unit.MICRON, "its standard uncertainty")
            .result("B_true", Unit.MICRON, "backlash less the hysteresis of the indicator")
            .result("u_B_true", Unit.MICRON, "its standard uncertainty")
            .result("A", Unit.MICRON, "amplitudes in the order of the periods")
            .result("phase", Unit.DEG, "phases: the term is A cos(2 pi turns/P - phase)")
            .result("u_A", Unit.MICRON, "standard uncertainties of the amplitudes")
            .result("found", Unit.ONE, "yes for each period whose error is significant")
            .result("s", Unit.MICRON, "scatter about the curve")
            .result("nu", Unit.ONE, "degrees of freedom")
            .result("r1", Unit.ONE, "lag-1 autocorrelation of the residuals")
            .result("gaps", Unit.ONE, "readings that are missing")
            .result("outliers", Unit.ONE, "readings far from the curve; none is dropped");
    for (int i = 1; i <= NAMED; i++) {
      draft
          .result("A" + i, Unit.MICRON, "amplitude of period " + i)
          .result("phase" + i, Unit.DEG, "phase of period " + i)
          .result("u_A" + i, Unit.MICRON, "standard uncertainty of amplitude " + i);
    }
    return draft.source(Sources.DIAL).rule(DialReckoners::dialTest);
  }

  static List<DialReading> readings(Given g) {
    double[][] rows = g.rows("readings");
    Require.columns("readings", rows, 4, "run, dir, turns, mm");
    List<DialReading> readings = new ArrayList<>();
    for (double[] row : rows) {
      readings.add(
          new DialReading(
              Require.whole("run", row[0]), Require.whole("dir", row[1]), row[2], row[3]));
    }
    return readings;
  }

  private static Answer dialTest(Given g) {
    DialTest test = DialTest.of(readings(g), g.numbers("periods"));
    LinearFit fit = test.fit();
    double t = test.travelPerTurn();
    double u = fit.uncertainty("T");
    double runs = test.runScatter();
    double all = travelUncertainty(g, test);
    double k = Quantiles.student(0.975, fit.freedom());
    Answer answer =
        Answer.start()
            .with("T", t)
            .with("u_T", u)
            .with("u_T_runs", runs)
            .with("u_T_all", all)
            .with("U_T", k * all)
            .with("s", fit.deviation())
            .with("nu", fit.freedom())
            .with("r1", Sample.of(fit.residuals().toArray()).lagOne())
            .with("gaps", test.gaps())
            .with("outliers", test.outliers());
    if (g.has("nominal")) {
      double nominal = Require.positive("nominal", g.number("nominal"));
      answer = answer.with("gain", t / nominal - 1).with("U_gain", k * all / nominal);
    }
    answer = backlash(g, test, answer);
    return harmonics(test, answer);
  }

  private static double travelUncertainty(Given g, DialTest test) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (DialReading r : test.readings()) {
      low = Math.min(low, r.turns());
      high = Math.max(high, r.turns());
    }
    double t = test.travelPerTurn();
    double scale = Require.notNegative("u_rod", g.number("u_rod")) / (high - low);
    double tilt = t * Math.pow(g.number("tilt"), 2);
    double heat = t * 11.5e-6 * Require.notNegative("u_dT", g.number("u_dT"));
    double fit = Math.max(test.fit().uncertainty("T"), test.runScatter());
    return Math.sqrt(fit * fit + scale * scale + tilt * tilt + heat * heat);
  }

  private static Answer backlash(Given g, DialTest test, Answer start) {
    if (!test.hasBacklash()) {
      return start.caution("All readings approach from one side: the backlash is not known.");
    }
    double b = test.backlash();
    double u = test.fit().uncertainty("B");
    Answer answer = start.with("B", b).with("u_B", u);
    double retrace = Require.notNegative("retrace", g.number("retrace"));
    if (g.has("hysteresis")) {
      return answer.with("B_true", b - g.number("hysteresis")).with("u_B_true", u);
    }
    return answer
        .with("B_true", b - retrace / 2)
        .with("u_B_true", Math.hypot(u, retrace / (2 * Math.sqrt(3))))
        .caution(
            "The hysteresis of the indicator always adds to the backlash; here half its limit is"
                + " taken off. Measure it on a gauge block and state it.");
  }

  private static Answer harmonics(DialTest test, Answer start) {
    int n = test.periods().size();
    double[] size = new double[n];
    double[] phase = new double[n];
    double[] u = new double[n];
    List<String> found = new ArrayList<>();
    Answer answer = start;
    double limit = Quantiles.fisher(0.95, 2, test.fit().freedom());
    for (int k = 1; k <= n; k++) {
      Harmonic h = test.harmonic(k);
      size[k - 1] = h.amplitude();
      phase[k - 1] = h.phase();
      u[k - 1] = h.uncertainty();
      boolean seen = h.significance() > limit && h.amplitude() >= 2.5 * h.uncertainty();
      found.add(
          Numbers.significant(test.periods().get(k - 1), 6) + " turns: " + (seen ? "yes" : "no"));
      if (k <= NAMED) {
        answer =
            answer
                .with("A" + k, h.amplitude())
                .with("phase" + k, h.phase())
                .with("u_A" + k, h.uncertainty());
      }
    }
    answer = answer.with("A", size).with("phase", phase).with("u_A", u).with("found", found);
    if (!test.outliers().isEmpty() || !test.gaps().isEmpty()) {
      answer =
          answer.caution("Readings are missing or far off: see gaps and outliers, and repeat.");
    }
    return test.fit().isWeak() ? answer.caution(StatisticsReckoners.weak(test.fit())) : answer;
  }

  private static Reckoner correctionTable() {
    return Reckoner.of(GROUP, "dial-correction", "Correction table of a dial from its fitted error")
        .input(
            "readings",
            Input.Kind.ROWS,
            Unit.ONE,
            "rows: run, dir, turns, indicator in mm",
            null,
            true)
        .numbers("periods", Unit.TURNS, "periods of the model; 1 is once per turn")
        .number("nominal", Unit.MM, "nominal travel per turn")
        .numbers("at", Unit.TURNS, "dial positions to tabulate")
        .result("table", Unit.MICRON, "correction c(D) = nominal less fitted, to be dialled in")
        .result("error", Unit.MICRON, "fitted position less nominal")
        .result(
            "worth", Unit.ONE, "yes if a table is worth its paper: 4s below half the error range")
        .source(Sources.DIAL)
        .rule(
            g -> {
              DialTest test = DialTest.of(readings(g), g.numbers("periods"));
              double nominal = Require.positive("nominal", g.number("nominal"));
              double[] at = g.numbers("at");
              Require.atLeast("at", at.length, 1);
              double[] error = new double[at.length];
              double[] table = new double[at.length];
              for (int i = 0; i < at.length; i++) {
                error[i] = test.error(at[i], nominal);
                table[i] = -error[i];
              }
              double range = RunOut.range(error);
              boolean worth = 4 * test.fit().deviation() < range / 2;
              return Answer.start()
                  .with("error", error)
                  .with("table", table)
                  .with("worth", worth ? "yes" : "no")
                  .caution(
                      "The table holds only for a dial that keeps its angle to the screw; setting the"
                          + " dial anew loses the phase of periodic errors.");
            });
  }

  private static Reckoner positioning() {
    return Reckoner.of(
            GROUP, "positioning", "Accuracy and repeatability of positioning (ISO 230-2)")
        .input(
            "readings",
            Input.Kind.ROWS,
            Unit.ONE,
            "rows: target in mm, dir (1 up, -1 down), run, actual position in mm",
            null,
            true)
        .choice("given", "what the last number of a row is", "position", "deviation")
        .number("u_scale", Unit.PPM, "relative standard uncertainty of the length standard", "0")
        .count("trials", "draws for the uncertainties, 100 to 100000", "5000")
        .count("seed", "seed of the draws", "20240301")
        .result("u_B", Unit.MICRON, "standard uncertainty of B, drawn")
        .result("u_E", Unit.MICRON, "standard uncertainty of E, drawn")
        .result("u_M", Unit.MICRON, "standard uncertainty of M, drawn")
        .result("u_R", Unit.MICRON, "standard uncertainty of R, drawn")
        .result("u_A", Unit.MICRON, "standard uncertainty of A, drawn")
        .result(
            "u_B_mean",
            Unit.MICRON,
            "standard uncertainty of the mean reversal, from the pooled scatter")
        .result("bias", Unit.MICRON, "what scatter alone adds to B, E, M, R, A")
        .result("B", Unit.MICRON, "reversal value, largest amount")
        .result("B_mean", Unit.MICRON, "mean reversal value, signed")
        .result("R_up", Unit.MICRON, "repeatability going up")
        .result("R_down", Unit.MICRON, "repeatability going down")
        .result("R", Unit.MICRON, "bidirectional repeatability")
        .result("E_up", Unit.MICRON, "systematic deviation going up")
        .result("E_down", Unit.MICRON, "systematic deviation going down")
        .result("E", Unit.MICRON, "bidirectional systematic deviation")
        .result("M", Unit.MICRON, "mean bidirectional deviation")
        .result("A_up", Unit.MICRON, "accuracy going up")
        .result("A_down", Unit.MICRON, "accuracy going down")
        .result("A", Unit.MICRON, "bidirectional accuracy")
        .result("targets", Unit.MM, "targets in order")
        .result("mean_up", Unit.MICRON, "mean deviation at each target going up")
        .result("mean_down", Unit.MICRON, "mean deviation at each target going down")
        .result("s_up", Unit.MICRON, "standard deviation at each target going up")
        .result("s_down", Unit.MICRON, "standard deviation at each target going down")
        .result("B_i", Unit.MICRON, "reversal value at each target, signed")
        .result("R_i", Unit.MICRON, "repeatability at each target")
        .result("noise_floor", Unit.MICRON, "E that scatter alone would give")
        .result("drift_up", Unit.MICRON, "drift from run to run going up")
        .result("drift_down", Unit.MICRON, "drift from run to run going down")
        .result("gaps", Unit.ONE, "readings missing or doubled")
        .result("outliers", Unit.ONE, "readings extreme in their cell; none is dropped")
        .source(Sources.POSITIONING)
        .rule(DialReckoners::positioning);
  }

  private static Answer positioning(Given g) {
    double[][] rows = g.rows("readings");
    Require.columns("readings", rows, 4, "target, dir, run, position");
    boolean deviations = g.choice("given").equals("deviation");
    List<PositioningReading> readings = new ArrayList<>();
    for (double[] row : rows) {
      double d = deviations ? row[3] : row[3] - row[0];
      readings.add(
          new PositioningReading(
              row[0], Require.whole("dir", row[1]), Require.whole("run", row[2]), d));
    }
    PositioningTest test = PositioningTest.of(readings);
    List<String> gaps = PositioningTest.gaps(readings);
    List<String> outliers = test.outliers();
    Answer answer =
        Answer.start()
            .with("targets", each(test, PositioningTest.Target::position))
            .with("noise_floor", test.noiseFloor())
            .with("gaps", gaps)
            .with("outliers", outliers);
    if (test.has(1)) {
      answer =
          answer
              .with("R_up", test.repeatability(1))
              .with("E_up", test.systematic(1))
              .with("A_up", test.accuracy(1))
              .with("mean_up", each(test, t -> t.meanUp().orElseThrow()))
              .with("s_up", each(test, PositioningTest.Target::deviationUp))
              .with("drift_up", PositioningTest.drift(readings, 1));
    }
    if (test.has(-1)) {
      answer =
          answer
              .with("R_down", test.repeatability(-1))
              .with("E_down", test.systematic(-1))
              .with("A_down", test.accuracy(-1))
              .with("mean_down", each(test, t -> t.meanDown().orElseThrow()))
              .with("s_down", each(test, PositioningTest.Target::deviationDown))
              .with("drift_down", PositioningTest.drift(readings, -1));
    }
    if (test.isBidirectional()) {
      answer =
          answer
              .with("B", test.reversal())
              .with("B_mean", test.meanReversal())
              .with("R", test.repeatability())
              .with("E", test.systematic())
              .with("M", test.meanDeviation())
              .with("A", test.accuracy())
              .with("u_B_mean", test.meanReversalUncertainty())
              .with("B_i", each(test, PositioningTest.Target::reversal))
              .with("R_i", each(test, PositioningTest.Target::repeatability));
    } else {
      answer =
          answer.caution(
              "One direction only (or gaps): reversal and bidirectional values left out.");
    }
    if (!gaps.isEmpty() || !outliers.isEmpty()) {
      answer =
          answer.caution(
              "Readings are missing, doubled or extreme: see gaps and outliers; repeat.");
    }
    int runs = test.targets().get(0).up().size();
    return test.targets().size() < 5 || runs < 5
        ? answer.caution(
            "ISO 230-2 asks for at least 5 targets and 5 runs each way; these are fewer.")
        : answer;
  }

  private static double[] each(
      PositioningTest test, java.util.function.ToDoubleFunction<PositioningTest.Target> of) {
    return test.targets().stream().mapToDouble(of).toArray();
  }

  private static Reckoner dialGain() {
    return Reckoner.of(GROUP, "dial-gain", "Gain error of a dial from one long move")
        .number("travel", Unit.MM, "travel measured")
        .number("dial", Unit.MM, "travel the dial shows")
        .number("u", Unit.MM, "standard uncertainty of the travel measured", "0")
        .result("gain", Unit.PERCENT, "travel/dial - 1; positive: the dial under-reads")
        .result("u_gain", Unit.PERCENT, "its standard uncertainty")
        .source(Sources.DIAL)
        .rule(
            g -> {
              double dial = Require.positive("dial", Math.abs(g.number("dial")));
              return Answer.start()
                  .with(
                      "gain",
                      Working.of(
                          "gain",
                          Unit.PERCENT,
                          "travel/dial - 1",
                          g.term("travel"),
                          g.term("dial")))
                  .with("u_gain", Require.notNegative("u", g.number("u")) / dial);
            });
  }

  private static Reckoner trueBacklash() {
    return Reckoner.of(GROUP, "true-backlash", "Backlash less the hysteresis of the indicator")
        .number("B_obs", Unit.MICRON, "backlash as observed")
        .optional("H", Unit.MICRON, "hysteresis of the indicator, measured on a gauge block")
        .number("retrace", Unit.MICRON, "retrace limit of the indicator, if H is not known", "3")
        .number("wanted", Unit.MICRON, "play that shall remain", "0")
        .result("B_true", Unit.MICRON, "backlash of the slide; middle of its limits")
        .result("low", Unit.MICRON, "lower limit")
        .result("high", Unit.MICRON, "upper limit")
        .result("u", Unit.MICRON, "standard uncertainty from the hysteresis")
        .result("adjust", Unit.MICRON, "to take out at the nut or thrust face")
        .source(Sources.DIAL)
        .rule(
            g -> {
              double b = g.number("B_obs");
              double retrace = Require.notNegative("retrace", g.number("retrace"));
              double real = g.has("H") ? b - g.number("H") : b - retrace / 2;
              double half = g.has("H") ? 0 : retrace / 2;
              return Answer.start()
                  .with("B_true", real)
                  .with("low", real - half)
                  .with("high", real + half)
                  .with("u", half / Math.sqrt(3))
                  .with("adjust", real - g.number("wanted"));
            });
  }

  private static Reckoner eccentricDial() {
    return Reckoner.of(GROUP, "eccentric-dial", "Once-per-turn error of an eccentric dial or gear")
        .number("T", Unit.MM, "travel per turn of the shaft")
        .number("e", Unit.MM, "eccentricity (half the total reading)")
        .number("r", Unit.MM, "radius of the dial ring or gear")
        .result("A", Unit.MICRON, "amplitude of the error in travel")
        .source(Sources.DIAL)
        .rule(
            g -> {
              Require.positive("r", g.number("r"));
              Require.notNegative("e", g.number("e"));
              return Answer.start()
                  .with(
                      "A",
                      Working.of(
                          "A", Unit.MICRON, "T*e/(2*pi*r)", g.term("T"), g.term("e"), g.term("r")));
            });
  }

  private static Reckoner dialRemedy() {
    return Reckoner.of(GROUP, "dial-remedy", "What to do about the gain error of a dial")
        .number("gain", Unit.PERCENT, "gain error")
        .number("U_gain", Unit.PERCENT, "its expanded uncertainty")
        .number("L", Unit.MM, "longest move made without setting the dial anew")
        .number("d", Unit.MM, "one division of the dial")
        .result("remedy", Unit.ONE, "what to do")
        .result("error", Unit.MICRON, "error over the longest move")
        .source(Sources.DIAL)
        .rule(
            g -> {
              double l = Require.positive("L", g.number("L"));
              return Answer.start()
                  .with(
                      "remedy",
                      DialTest.remedy(
                          g.number("gain"),
                          Require.notNegative("U_gain", g.number("U_gain")),
                          l,
                          Require.positive("d", g.number("d"))))
                  .with("error", g.number("gain") * l);
            });
  }
}
