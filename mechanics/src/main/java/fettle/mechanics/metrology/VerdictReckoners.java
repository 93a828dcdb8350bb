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

/** Single calculations of verdicts, limits, and forecasts held against measurements. */
final class VerdictReckoners {

  private static final String GROUP = StatisticsReckoners.GROUP;

  private VerdictReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        verdict(),
        conformance(),
        acceptanceLimit(),
        acceptanceVerdict(),
        normalisedError(),
        agreement(),
        weightedUpdate(),
        parameterUpdate());
  }

  private static Answer outcome(Answer start, Verdict v) {
    Answer answer =
        start
            .with("verdict", v.outcome().words())
            .with("code", v.code())
            .with("p_c", v.probability())
            .with("u_needed", v.neededUncertainty());
    return answer;
  }

  private static Reckoner verdict() {
    return Reckoner.of(GROUP, "verdict", "Good, not good, or cannot tell (ISO 14253-1)")
        .number("y", Unit.ONE, "measured value, in any one unit")
        .number("u", Unit.ONE, "its standard uncertainty")
        .optional("limit", Unit.ONE, "upper limit")
        .optional("low", Unit.ONE, "lower limit")
        .optional("g", Unit.ONE, "guard factor; 1.645 if left out")
        .optional("nu", Unit.ONE, "degrees of freedom, for the guard factor of few readings")
        .input("n", Input.Kind.COUNT, Unit.ONE, "readings so far", null, false)
        .optional("u_A", Unit.ONE, "standard uncertainty from the readings")
        .number("u_B", Unit.ONE, "standard uncertainty from all else", "0")
        .result("verdict", Unit.ONE, "good, not good, or cannot tell")
        .result("code", Unit.ONE, "1 good, -1 not good, 0 cannot tell")
        .result("p_c", Unit.ONE, "probability that the limits are kept")
        .result("u_needed", Unit.ONE, "standard uncertainty at which the verdict would be sure")
        .result("n_needed", Unit.ONE, "readings in all that would settle it")
        .result("n_more", Unit.ONE, "readings still to take")
        .result("way_out", Unit.ONE, "cheapest way to a sure verdict")
        .source(Sources.VERDICT)
        .rule(VerdictReckoners::verdict);
  }

  private static Answer verdict(Given g) {
    double y = g.number("y");
    double u = g.number("u");
    double guard =
        g.has("g")
            ? Require.positive("g", g.number("g"))
            : g.has("nu") ? Quantiles.student(0.95, g.number("nu")) : Verdict.GUARD;
    Verdict v;
    if (g.has("limit") && g.has("low")) {
      v =
          g.has("g") || g.has("nu")
              ? guarded(y, u, g.number("low"), g.number("limit"), guard)
              : Verdict.between(y, u, g.number("low"), g.number("limit"), 0.95);
    } else if (g.has("limit")) {
      v = Verdict.upper(y, u, g.number("limit"), guard);
    } else if (g.has("low")) {
      v = Verdict.lower(y, u, g.number("low"), guard);
    } else {
      throw new IllegalArgumentException("give limit (upper), low (lower) or both");
    }
    Answer answer = outcome(Answer.start(), v);
    if (v.outcome() != Verdict.Outcome.CANNOT_TELL) {
      return answer;
    }
    if (!g.has("n") || !g.has("u_A")) {
      return answer.with(
          "way_out",
          "bring the standard uncertainty below " + Numbers.significant(v.neededUncertainty(), 3));
    }
    int n = Require.atLeast("n", g.count("n"), 1);
    double fixed = Require.notNegative("u_B", g.number("u_B"));
    double needed = v.readingsNeeded(n, Require.notNegative("u_A", g.number("u_A")), fixed);
    if (Double.isInfinite(needed) || needed > 1e6) {
      return answer.with(
          "way_out",
          "no number of readings will do: use a better instrument, or a reversal that takes its error"
              + " out");
    }
    double more = Math.max(1, needed - n);
    return answer
        .with("n_needed", Math.max(needed, n + 1.0))
        .with("n_more", more)
        .with("way_out", Numbers.fixed(more, 0) + " more readings would settle it");
  }

  private static Verdict guarded(double y, double u, double low, double high, double guard) {
    Verdict v = Verdict.between(y, u, low, high, 0.95);
    Verdict.Outcome outcome =
        y >= low + guard * u && y <= high - guard * u
            ? Verdict.Outcome.GOOD
            : y >= high + guard * u || y <= low - guard * u
                ? Verdict.Outcome.NOT_GOOD
                : Verdict.Outcome.CANNOT_TELL;
    double nearest = Math.min(Math.abs(y - low), Math.abs(y - high));
    return new Verdict(outcome, v.probability(), nearest / guard);
  }

  private static Reckoner conformance() {
    return Reckoner.of(GROUP, "conformance", "Probability that a true value keeps its limits")
        .number("y", Unit.ONE, "measured value")
        .number("u", Unit.ONE, "its standard uncertainty")
        .number("low", Unit.ONE, "lower limit")
        .number("high", Unit.ONE, "upper limit")
        .result("p_c", Unit.ONE, "probability that the limits are kept")
        .result("verdict", Unit.ONE, "good from 0.95, not good up to 0.05, else cannot tell")
        .result("code", Unit.ONE, "1 good, -1 not good, 0 cannot tell")
        .result("u_needed", Unit.ONE, "standard uncertainty at which the verdict would be sure")
        .source(Sources.CONFORMANCE)
        .rule(
            g ->
                outcome(
                    Answer.start(),
                    Verdict.between(
                        g.number("y"), g.number("u"), g.number("low"), g.number("high"), 0.95)));
  }

  private static Reckoner.Draft limitInputs(Reckoner.Draft draft) {
    return draft
        .choice("family", "set of limits", "iso-1708", "schlesinger", "bench")
        .text("test", "name of the test, e.g. G7h; a wrong one lists all")
        .input(
            "class",
            Input.Kind.TEXT,
            Unit.ONE,
            "iso-1708: precision, standard, large; schlesinger: finish, toolroom; bench: bench",
            null,
            true)
        .number("length", Unit.MM, "test length, or distance between centres for G1a and G2", "300")
        .result("limit", Unit.MM, "limit at that length")
        .result("allowed", Unit.ONE, "which deviations are allowed")
        .result("what", Unit.ONE, "what is tested")
        .result("from", Unit.ONE, "where the limit comes from and how that is known")
        .result("note", Unit.ONE, "what else is known of it");
  }

  private static AcceptanceLimit limit(Given g) {
    return AcceptanceLimit.of(
        g.choice("family"), g.text("test"), g.text("class"), g.number("length"));
  }

  private static Answer described(Answer start, AcceptanceLimit limit, double length) {
    Answer answer =
        start
            .with("limit", limit.at(length))
            .with("allowed", limit.allowed())
            .with("what", limit.what())
            .with("from", limit.source().text())
            .with("note", limit.note());
    return limit.source().basis() == fettle.mechanics.base.Source.Basis.MEMORY
        ? answer.caution("No page of the standard was seen: before a dispute, buy the standard.")
        : answer;
  }

  private static Reckoner acceptanceLimit() {
    return limitInputs(Reckoner.of(GROUP, "acceptance-limit", "Acceptance limit of a lathe test"))
        .source(Sources.GEOMETRY)
        .rule(g -> described(Answer.start(), limit(g), g.number("length")));
  }

  private static Reckoner acceptanceVerdict() {
    return limitInputs(
            Reckoner.of(
                    GROUP, "acceptance-verdict", "A measured deviation against an acceptance limit")
                .number("y", Unit.MICRON, "measured deviation with its sign")
                .number("u", Unit.MICRON, "its standard uncertainty"))
        .result("verdict", Unit.ONE, "good, not good, or cannot tell")
        .result("code", Unit.ONE, "1 good, -1 not good, 0 cannot tell")
        .result("p_c", Unit.ONE, "probability that the limit is kept")
        .result("u_needed", Unit.MICRON, "standard uncertainty at which the verdict would be sure")
        .result("sentence", Unit.ONE, "the verdict in words")
        .source(Sources.VERDICT)
        .rule(
            g -> {
              AcceptanceLimit limit = limit(g);
              double y = g.number("y");
              double u = g.number("u");
              double length = g.number("length");
              Verdict v = limit.verdict(y, u, length);
              return outcome(described(Answer.start(), limit, length), v)
                  .with("sentence", sentence(limit, y, u, length, v));
            });
  }

  private static String sentence(
      AcceptanceLimit limit, double y, double u, double length, Verdict v) {
    String measured =
        limit.what()
            + ": "
            + Numbers.significant(Unit.MICRON.fromCoherent(y), 3)
            + " ± "
            + Numbers.significant(Unit.MICRON.fromCoherent(2 * u), 2)
            + " µm (k = 2), limit "
            + Numbers.significant(Unit.MICRON.fromCoherent(limit.at(length)), 3)
            + " µm, "
            + limit.allowed()
            + ". ";
    return measured
        + switch (v.outcome()) {
          case GOOD -> "Inside with more than 95 % certainty.";
          case NOT_GOOD -> "Outside with more than 95 % certainty.";
          case CANNOT_TELL ->
              "Neither inside nor outside can be proven; a standard uncertainty of "
                  + Numbers.significant(Unit.MICRON.fromCoherent(v.neededUncertainty()), 2)
                  + " µm would decide.";
        };
  }

  private static Reckoner normalisedError() {
    return Reckoner.of(GROUP, "normalised-error", "Is the difference from the forecast explained?")
        .number("x_meas", Unit.ONE, "measured value")
        .number("U_meas", Unit.ONE, "its expanded uncertainty, k = 2")
        .number("x_pred", Unit.ONE, "predicted value")
        .number("U_pred", Unit.ONE, "its expanded uncertainty, k = 2")
        .number("cov", Unit.ONE, "covariance of the two expanded values, 0 if independent", "0")
        .result("En", Unit.ONE, "normalised error")
        .result("explained", Unit.ONE, "yes if En is at most 1 in amount")
        .result("difference", Unit.ONE, "measured less predicted")
        .result("U", Unit.ONE, "combined expanded uncertainty")
        .result("strength", Unit.ONE, "confirmed, not contradicted, or not explained")
        .source(Sources.NORMALISED)
        .rule(
            g -> {
              double um = g.number("U_meas");
              double up = g.number("U_pred");
              double en =
                  Forecast.normalisedError(
                      g.number("x_meas"), um, g.number("x_pred"), up, g.number("cov"));
              boolean explained = Math.abs(en) <= 1;
              String strength =
                  !explained
                      ? "not explained"
                      : um <= up / 2
                          ? "confirmed"
                          : "not contradicted: the measurement is the weak side";
              Answer answer =
                  Answer.start()
                      .with("En", en)
                      .with("explained", explained ? "yes" : "no")
                      .with("difference", g.number("x_meas") - g.number("x_pred"))
                      .with("U", Math.sqrt(um * um + up * up - 2 * g.number("cov")))
                      .with("strength", strength);
              return g.number("cov") == 0
                  ? answer.showing(
                      Working.check(
                          "En",
                          en,
                          Unit.ONE,
                          "(x_meas - x_pred)/sqrt(U_meas^2 + U_pred^2)",
                          g.term("x_meas"),
                          g.term("x_pred"),
                          g.term("U_meas"),
                          g.term("U_pred")))
                  : answer;
            });
  }

  private static Reckoner agreement() {
    return Reckoner.of(GROUP, "forecast-agreement", "Are several differences explained together?")
        .numbers("d", Unit.ONE, "differences, measured less predicted")
        .input("u", Input.Kind.NUMBERS, Unit.ONE, "their standard uncertainties", null, false)
        .input("C", Input.Kind.ROWS, Unit.ONE, "their covariance, instead of u", null, false)
        .result("chi2", Unit.ONE, "chi-square")
        .result("p", Unit.ONE, "probability of so large a value if all is explained")
        .result("chi2_95", Unit.ONE, "95 % point")
        .result("explained", Unit.ONE, "yes or no")
        .result("birge", Unit.ONE, "Birge ratio sqrt(chi2/nu)")
        .result("shares", Unit.ONE, "contribution of each difference")
        .result("largest", Unit.ONE, "number of the largest contribution")
        .source(Sources.NORMALISED)
        .rule(
            g -> {
              double[] d = g.numbers("d");
              int n = Require.atLeast("d", d.length, 1);
              Forecast.Agreement found = Forecast.agreement(d, covariance(g, "u", "C", n));
              double[] shares = found.shares().stream().mapToDouble(Double::doubleValue).toArray();
              int largest = 0;
              for (int i = 1; i < n; i++) {
                largest = shares[i] > shares[largest] ? i : largest;
              }
              boolean explained = found.probability() >= 0.05;
              Answer answer =
                  Answer.start()
                      .with("chi2", found.chiSquare())
                      .with("p", found.probability())
                      .with("chi2_95", Quantiles.chiSquared(0.95, n))
                      .with("explained", explained ? "yes" : "no")
                      .with("birge", Math.sqrt(found.chiSquare() / n))
                      .with("shares", shares)
                      .with("largest", largest + 1);
              return found.probability() > 0.95 && n > 1
                  ? answer.caution("Far too good an agreement: the uncertainties are too generous.")
                  : answer;
            });
  }

  private static double[][] covariance(Given g, String u, String full, int n) {
    if (g.has(full)) {
      double[][] c = g.rows(full);
      Require.sameLength(full, c.length, n);
      Require.columns(full, c, n, "a square matrix");
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < i; j++) {
          if (Math.abs(c[i][j] - c[j][i]) > 1e-9 * Math.sqrt(Math.abs(c[i][i] * c[j][j]))) {
            throw new IllegalArgumentException(full + ": is not symmetric, expected a covariance");
          }
        }
      }
      return c;
    }
    if (!g.has(u)) {
      throw new IllegalArgumentException("give " + u + " or " + full);
    }
    double[] s = g.numbers(u);
    Require.sameLength(u, s.length, n);
    double[][] c = new double[n][n];
    for (int i = 0; i < n; i++) {
      c[i][i] = Require.positive(u, s[i]) * s[i];
    }
    return c;
  }

  private static Reckoner weightedUpdate() {
    return Reckoner.of(GROUP, "weighted-update", "Forecast corrected by one measurement")
        .number("prior", Unit.ONE, "predicted value")
        .number("u_prior", Unit.ONE, "its standard uncertainty")
        .number("measured", Unit.ONE, "measured value")
        .number("u_measured", Unit.ONE, "its standard uncertainty")
        .result("x", Unit.ONE, "corrected value, weighted by inverse variance")
        .result("u", Unit.ONE, "its standard uncertainty")
        .result("weight", Unit.ONE, "weight of the measurement")
        .result("allowed", Unit.ONE, "no if the two disagree at the 95 % level: look for the cause")
        .source(Sources.BAYES)
        .rule(
            g -> {
              double a = Require.positive("u_prior", g.number("u_prior"));
              double b = Require.positive("u_measured", g.number("u_measured"));
              double d = g.number("measured") - g.number("prior");
              boolean allowed = d * d / (a * a + b * b) <= Quantiles.chiSquared(0.95, 1);
              Answer answer =
                  Answer.start()
                      .with(
                          "x",
                          Working.of(
                              "x",
                              Unit.ONE,
                              "(prior/u_prior^2 + measured/u_measured^2)/(1/u_prior^2 +"
                                  + " 1/u_measured^2)",
                              g.term("prior"),
                              g.term("u_prior"),
                              g.term("measured"),
                              g.term("u_measured")))
                      .with("u", a * b / Math.hypot(a, b))
                      .with("weight", a * a / (a * a + b * b))
                      .with("allowed", allowed ? "yes" : "no");
              return allowed
                  ? answer
                  : answer.caution(
                      "Forecast and measurement disagree: do not average, find the cause.");
            });
  }

  private static Reckoner parameterUpdate() {
    return Reckoner.of(GROUP, "parameter-update", "Parameters of a model corrected by measurements")
        .numbers("p0", Unit.ONE, "parameters before")
        .input("u0", Input.Kind.NUMBERS, Unit.ONE, "their standard uncertainties", null, false)
        .input("C0", Input.Kind.ROWS, Unit.ONE, "their covariance, instead of u0", null, false)
        .rows(
            "H", Unit.ONE, "a row for each measurement: its change for one unit of each parameter")
        .numbers("y", Unit.ONE, "measurements")
        .input("u_y", Input.Kind.NUMBERS, Unit.ONE, "their standard uncertainties", null, false)
        .input("R", Input.Kind.ROWS, Unit.ONE, "their covariance, instead of u_y", null, false)
        .result("p1", Unit.ONE, "parameters after")
        .result("u1", Unit.ONE, "their standard uncertainties")
        .result("r1", Unit.ONE, "their correlations: 1-2, 1-3, ... 2-3, ...")
        .result("chi2", Unit.ONE, "distance of the measurements from the forecast")
        .result("gate", Unit.ONE, "95 % point up to which the update is allowed")
        .result("allowed", Unit.ONE, "yes, or no: then do not update")
        .result("suspects", Unit.ONE, "parameters that alone would explain a disagreement")
        .source(Sources.BAYES)
        .rule(VerdictReckoners::parameterUpdate);
  }

  private static Answer parameterUpdate(Given g) {
    double[] p0 = g.numbers("p0");
    double[] y = g.numbers("y");
    double[][] h = g.rows("H");
    Require.atLeast("p0", p0.length, 1);
    Require.atLeast("y", y.length, 1);
    Require.sameLength("H", h.length, y.length);
    Require.columns("H", h, p0.length, "one number for each parameter");
    double[][] c0 = covariance(g, "u0", "C0", p0.length);
    double[][] r = covariance(g, "u_y", "R", y.length);
    Forecast.Update update = Forecast.update(p0, c0, h, y, r);
    int n = p0.length;
    double[] u1 = new double[n];
    for (int i = 0; i < n; i++) {
      u1[i] = Math.sqrt(Math.max(0, update.covariance().getEntry(i, i)));
    }
    List<Double> correlation = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        double below = u1[i] * u1[j];
        correlation.add(below > 0 ? update.covariance().getEntry(i, j) / below : 0);
      }
    }
    List<String> suspects = new ArrayList<>();
    double[] shifts = Forecast.suspects(p0, c0, h, y, r);
    for (int i = 0; i < n; i++) {
      if (Double.isFinite(shifts[i])) {
        suspects.add(
            "parameter "
                + (i + 1)
                + ", moved by "
                + Numbers.significant(shifts[i], 3)
                + " of its standard uncertainties");
      }
    }
    Answer answer =
        Answer.start()
            .with("p1", update.parameters().toArray())
            .with("u1", u1)
            .with("r1", correlation.stream().mapToDouble(Double::doubleValue).toArray())
            .with("chi2", update.distance())
            .with("gate", update.gate())
            .with("allowed", update.isAllowed() ? "yes" : "no");
    return update.isAllowed()
        ? answer
        : answer
            .with("suspects", suspects)
            .caution(
                "The measurements lie outside the forecast: do not update, look at the suspects.");
  }
}
