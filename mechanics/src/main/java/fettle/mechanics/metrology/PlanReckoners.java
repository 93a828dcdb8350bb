package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on planning a trial. */
final class PlanReckoners {

  private static final String GROUP = StatisticsReckoners.GROUP;

  private PlanReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        slope(), harmonic(), backlash(), scatter(), targets(), instrument(), setups(), trialPlan());
  }

  private static Reckoner slope() {
    return Reckoner.of(GROUP, "plan-gain", "Runs that a gain test needs")
        .count("points", "equally spaced points over the travel")
        .number("travel", Unit.MM, "travel")
        .number("sigma", Unit.MICRON, "scatter of a reading")
        .optional("wanted", Unit.MICRON, "wanted uncertainty (k = 2) at the end of the travel")
        .count("runs_planned", "there-and-back runs planned", "1")
        .result("runs", Unit.ONE, "smallest number of there-and-back runs")
        .result(
            "U", Unit.MICRON, "uncertainty (k = 2) at the end with those runs, or the planned ones")
        .result("u_T", Unit.PPM, "standard uncertainty of the slope with those runs")
        .source(Sources.PLAN)
        .rule(
            g -> {
              int points = g.count("points");
              double travel = g.number("travel");
              double sigma = g.number("sigma");
              int runs = g.count("runs_planned");
              Answer answer = Answer.start();
              if (g.has("wanted")) {
                runs = TestPlan.runs(points, travel, sigma, g.number("wanted"));
                answer = answer.with("runs", runs);
              }
              double u = TestPlan.endUncertainty(points, travel, sigma, runs);
              return answer.with("U", u).with("u_T", u / 2 / travel);
            });
  }

  private static Reckoner harmonic() {
    return Reckoner.of(GROUP, "plan-harmonic", "How well n readings know a periodic error")
        .number("sigma", Unit.MICRON, "scatter of a reading")
        .count("n", "readings over whole periods", "64")
        .optional("A", Unit.MICRON, "amplitude to be found")
        .result("u_A", Unit.MICRON, "standard uncertainty of the amplitude, sigma sqrt(2/n)")
        .result("u_phase", Unit.DEG, "standard uncertainty of the phase")
        .result("least", Unit.MICRON, "smallest amplitude that counts as found, 2.5 u_A")
        .result("found", Unit.ONE, "yes if A would be found")
        .source(Sources.PLAN)
        .rule(
            g -> {
              int n = Require.atLeast("n", g.count("n"), 4);
              double u = Require.notNegative("sigma", g.number("sigma")) * Math.sqrt(2.0 / n);
              Answer answer = Answer.start().with("u_A", u).with("least", 2.5 * u);
              if (g.has("A")) {
                double a = Require.positive("A", g.number("A"));
                answer = answer.with("u_phase", u / a).with("found", a >= 2.5 * u ? "yes" : "no");
              }
              return answer;
            });
  }

  private static Reckoner backlash() {
    return Reckoner.of(GROUP, "plan-backlash", "Readings that a backlash test needs")
        .number("sigma", Unit.MICRON, "scatter of a reading")
        .number("U", Unit.MICRON, "wanted uncertainty (k = 2)")
        .result("nm", Unit.ONE, "runs times targets each way, 8 (sigma/U)^2 rounded up")
        .source(Sources.PLAN)
        .rule(
            g -> {
              double ratio =
                  Require.notNegative("sigma", g.number("sigma"))
                      / Require.positive("U", g.number("U"));
              return Answer.start().with("nm", Math.max(1, Math.ceil(8 * ratio * ratio - 1e-9)));
            });
  }

  private static Reckoner scatter() {
    return Reckoner.of(GROUP, "plan-scatter", "Readings needed to know the scatter itself")
        .number("relative", Unit.PERCENT, "wanted relative standard uncertainty of s, e.g. 25 %")
        .result("nu", Unit.ONE, "degrees of freedom, 1/(2 r^2) rounded up")
        .source(Sources.GUM)
        .rule(
            g -> {
              double r = Require.positive("relative", g.number("relative"));
              return Answer.start().with("nu", Math.max(1, Math.ceil(0.5 / (r * r) - 1e-9)));
            });
  }

  private static Reckoner targets() {
    return Reckoner.of(GROUP, "plan-targets", "Targets that hide no periodic error")
        .number("travel", Unit.MM, "travel")
        .input("targets", Input.Kind.NUMBERS, Unit.MM, "own targets to check instead", null, false)
        .input("periods", Input.Kind.NUMBERS, Unit.MM, "periods of possible errors", null, false)
        .count("seed", "seed of the random offsets", "20240301")
        .result("targets", Unit.MM, "targets")
        .result("hidden", Unit.ONE, "periods that these targets hide")
        .source(Sources.POSITIONING)
        .rule(
            g -> {
              double[] targets =
                  g.has("targets")
                      ? g.numbers("targets")
                      : TestPlan.targets(g.number("travel"), g.count("seed"));
              Require.atLeast("targets", targets.length, 2);
              List<String> hidden =
                  g.has("periods") ? TestPlan.hidden(targets, g.numbers("periods")) : List.of();
              Answer answer = Answer.start().with("targets", targets).with("hidden", hidden);
              return hidden.isEmpty()
                  ? answer
                  : answer.caution(
                      "Targets a whole number of periods apart hide that error: shift some of them.");
            });
  }

  private static Reckoner instrument() {
    return Reckoner.of(GROUP, "instrument-decides", "Can this instrument prove a limit?")
        .number("limit", Unit.MICRON, "upper limit")
        .number("u", Unit.MICRON, "standard uncertainty of a measurement")
        .result(
            "largest", Unit.MICRON, "largest reading that still proves the limit; below 0: none")
        .result("useful", Unit.ONE, "yes if u is at most a fifth of the limit")
        .source(Sources.VERDICT)
        .rule(
            g -> {
              double limit = Require.positive("limit", g.number("limit"));
              double u = Require.notNegative("u", g.number("u"));
              Answer answer =
                  Answer.start()
                      .with(
                          "largest",
                          Working.of(
                              "largest",
                              Unit.MICRON,
                              "limit - 1.6448536269514722*u",
                              g.term("limit"),
                              g.term("u")))
                      .with("useful", u <= limit / 5 ? "yes" : "no");
              return u <= limit / 5
                  ? answer
                  : answer.caution("Instrument too coarse for this limit.");
            });
  }

  private static Reckoner setups() {
    return Reckoner.of(GROUP, "setup-uncertainty", "Uncertainty of a mean over several setups")
        .number("s_B", Unit.MICRON, "standard deviation between setups")
        .number("s_w", Unit.MICRON, "standard deviation within a setup")
        .count("setups", "number of setups")
        .count("n", "readings in each")
        .result("u", Unit.MICRON, "standard uncertainty of the grand mean")
        .result("nu", Unit.ONE, "degrees of freedom, setups less 1")
        .source(Sources.GUM_H5)
        .rule(
            g -> {
              int k = Require.atLeast("setups", g.count("setups"), 1);
              int n = Require.atLeast("n", g.count("n"), 1);
              double b = Require.notNegative("s_B", g.number("s_B"));
              double w = Require.notNegative("s_w", g.number("s_w"));
              Answer answer =
                  Answer.start().with("u", Math.sqrt((b * b + w * w / n) / k)).with("nu", k - 1);
              return k == 1
                  ? answer.caution("Ten readings of one setup are one setup: re-seat and repeat.")
                  : answer;
            });
  }

  private static Reckoner trialPlan() {
    return Reckoner.of(GROUP, "trial-plan", "How many targets, runs and seatings a trial takes")
        .choice("trial", "which trial", "dial", "alignment", "push", "spindle")
        .choice("effort", "how thorough", "normal", "quick", "accept")
        .number("travel", Unit.MM, "travel, for the number of targets", "100")
        .result("targets", Unit.ONE, "targets, forces, angles or seatings")
        .result("runs", Unit.ONE, "runs or loops")
        .result("steps", Unit.ONE, "what to do in order")
        .source(Sources.TRIAL_PLAN)
        .rule(
            g -> {
              double travel = Require.positive("travel", g.number("travel"));
              String effort = g.choice("effort");
              int metre = (int) Math.max(5, Math.min(10_000, Math.ceil(5 * travel / 1000)));
              int targets =
                  switch (g.choice("trial")) {
                    case "alignment" -> 3;
                    case "push" -> 7;
                    case "spindle" -> 12;
                    default -> effort.equals("quick") ? 5 : effort.equals("normal") ? 11 : metre;
                  };
              int runs =
                  switch (g.choice("trial")) {
                    case "alignment", "spindle" -> 2;
                    case "push" -> 3;
                    default -> effort.equals("quick") ? 2 : effort.equals("normal") ? 3 : 5;
                  };
              return Answer.start()
                  .with("targets", targets)
                  .with("runs", runs)
                  .with("steps", steps(g.choice("trial")))
                  .caution("Motor isolated while you measure; key and indicator out before power.");
            });
  }

  private static List<String> steps(String trial) {
    String log =
        "Log the indicator standing still for 5 minutes; creep above 2 µm a minute: new stand.";
    String end = "Read the first point again at the end; note the temperature twice.";
    return switch (trial) {
      case "alignment" ->
          List.of(
              log,
              "Seat the bar 3 times; each time read 2 spindle positions, half a turn apart, in front"
                  + " and on top.",
              end);
      case "push" ->
          List.of(
              log,
              "7 forces up and down, both ways, 3 loops; keep the first loop but do not use it.",
              end);
      case "spindle" ->
          List.of(
              log,
              "12 spindle angles at two distances; turn the bar half round in the taper and repeat.",
              end);
      default ->
          List.of(
              log,
              "Overshoot by more than the backlash before each pass; never back up within a pass.",
              "Read every target going up and coming down in every run.",
              "Scan two turns at 16 positions a turn both ways for the once-per-turn error.",
              end);
    };
  }
}
