package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Single calculations of uncertainty after the GUM. */
final class UncertaintyReckoners {

  private static final String GROUP = StatisticsReckoners.GROUP;

  private UncertaintyReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        budget(),
        formula(),
        drawn(),
        gauge(),
        together(),
        calibrationLine(),
        standard(),
        coverage(),
        freedom(),
        doubt(),
        cosine(),
        tilt(),
        indicator(),
        thermal());
  }

  private static double[] list(Given g, String name, int n, double standard) {
    double[] values = new double[n];
    Arrays.fill(values, standard);
    if (!g.has(name)) {
      return values;
    }
    List<String> words = g.words(name);
    Require.sameLength(name, words.size(), n);
    for (int i = 0; i < n; i++) {
      String word = words.get(i).toLowerCase(Locale.ROOT);
      if (word.equals("inf") || word.equals("infinite") || word.equals("infinity")) {
        values[i] = Double.POSITIVE_INFINITY;
      } else {
        values[i] = number(name, word);
      }
    }
    return values;
  }

  private static double number(String name, String word) {
    try {
      double value = Double.parseDouble(word);
      if (Double.isFinite(value) && word.matches("[-+0-9.e]+")) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    throw new IllegalArgumentException(
        name + ": found '" + word + "', expected a number or 'inf' for certain limits");
  }

  private static List<Contribution.Shape> shapes(Given g, int n) {
    List<Contribution.Shape> shapes = new ArrayList<>();
    if (!g.has("shapes")) {
      for (int i = 0; i < n; i++) {
        shapes.add(Contribution.Shape.STANDARD);
      }
      return shapes;
    }
    List<String> words = g.words("shapes");
    Require.sameLength("shapes", words.size(), n);
    for (String word : words) {
      shapes.add(shape(word));
    }
    return shapes;
  }

  private static Contribution.Shape shape(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "standard", "normal" -> Contribution.Shape.STANDARD;
      case "rectangular", "rectangle" -> Contribution.Shape.RECTANGULAR;
      case "triangular", "triangle" -> Contribution.Shape.TRIANGULAR;
      case "arcsine" -> Contribution.Shape.ARCSINE;
      case "resolution" -> Contribution.Shape.RESOLUTION;
      case "certificate" -> Contribution.Shape.CERTIFICATE;
      default ->
          throw new IllegalArgumentException(
              "shapes: found '"
                  + word
                  + "', expected standard, rectangular, triangular, arcsine, resolution or"
                  + " certificate");
    };
  }

  private static List<UncertaintyBudget.Correlation> correlations(Given g) {
    List<UncertaintyBudget.Correlation> list = new ArrayList<>();
    if (g.has("correlations")) {
      double[][] rows = g.rows("correlations");
      Require.columns("correlations", rows, 3, "first input, second input, coefficient");
      for (double[] row : rows) {
        list.add(new UncertaintyBudget.Correlation(index(row[0]) - 1, index(row[1]) - 1, row[2]));
      }
    }
    return list;
  }

  private static int index(double value) {
    if (value != Math.rint(value) || Math.abs(value) > 1000) {
      throw new IllegalArgumentException(
          "correlations: found input number " + value + ", expected whole numbers from 1");
    }
    return (int) value;
  }

  private static Reckoner.Draft spread(Reckoner.Draft draft) {
    return draft
        .numbers("u", Unit.ONE, "standard uncertainties, or half-widths where a shape is given")
        .input(
            "shapes",
            Input.Kind.WORDS,
            Unit.ONE,
            "shape of each: standard, rectangular, triangular, arcsine, resolution, certificate",
            null,
            false)
        .input(
            "nu",
            Input.Kind.WORDS,
            Unit.ONE,
            "degrees of freedom of each, 'inf' for certain limits",
            null,
            false)
        .input(
            "correlations",
            Input.Kind.ROWS,
            Unit.ONE,
            "rows of two input numbers and their correlation, e.g. 1,2,0.5",
            null,
            false)
        .number("confidence", Unit.ONE, "probability of the expanded uncertainty", "0.95")
        .result("u_c", Unit.ONE, "combined standard uncertainty")
        .result("nu_eff", Unit.ONE, "effective degrees of freedom; left out if infinite")
        .result("k", Unit.ONE, "coverage factor; left out for correlated inputs")
        .result("U", Unit.ONE, "expanded uncertainty; left out for correlated inputs")
        .result("shares", Unit.ONE, "share of each input, sensitivity times u")
        .result("budget", Unit.ONE, "the inputs, largest share first")
        .result("halving", Unit.ONE, "cheapest way to halve the uncertainty");
  }

  private static Answer answer(Answer start, UncertaintyBudget budget, double confidence) {
    double[] shares = budget.contributions().stream().mapToDouble(Contribution::share).toArray();
    Answer answer =
        start
            .with("u_c", budget.combined())
            .with("shares", shares)
            .with("budget", budget.lines())
            .with("halving", budget.halving());
    if (!budget.isIndependent()) {
      return answer.caution(
          "The inputs are correlated: Welch-Satterthwaite does not hold, so no coverage factor is"
              + " given. Use the drawn distribution instead.");
    }
    answer = answer.with("k", budget.coverage(confidence)).with("U", budget.expanded(confidence));
    return Double.isFinite(budget.freedom()) ? answer.with("nu_eff", budget.freedom()) : answer;
  }

  private static Reckoner budget() {
    return spread(
            Reckoner.of(GROUP, "uncertainty-budget", "Uncertainty of a result from its causes")
                .input("names", Input.Kind.WORDS, Unit.ONE, "names of the causes", null, false)
                .input(
                    "c",
                    Input.Kind.WORDS,
                    Unit.ONE,
                    "sensitivity of the result to each, 1 if left out",
                    null,
                    false))
        .source(Sources.GUM)
        .rule(
            g -> {
              double[] u = g.numbers("u");
              int n = u.length;
              double[] c = list(g, "c", n, 1);
              double[] nu = list(g, "nu", n, Double.POSITIVE_INFINITY);
              List<Contribution.Shape> shapes = shapes(g, n);
              List<Contribution> list = new ArrayList<>();
              List<String> names = g.has("names") ? g.words("names") : List.of();
              for (int i = 0; i < n; i++) {
                Require.notNegative("u", u[i]);
                list.add(
                    new Contribution(
                        i < names.size() ? names.get(i) : "input " + (i + 1),
                        shapes.get(i).standard(u[i]),
                        c[i],
                        nu[i],
                        Double.isFinite(nu[i])
                            ? Contribution.Kind.READINGS
                            : Contribution.Kind.JUDGEMENT));
              }
              return answer(
                  Answer.start(),
                  new UncertaintyBudget(list, correlations(g), 0),
                  g.number("confidence"));
            });
  }

  private static Reckoner.Draft model(Reckoner.Draft draft) {
    return draft
        .text("formula", "the result as a formula of the inputs, e.g. V/I*cos(phi)")
        .input("names", Input.Kind.WORDS, Unit.ONE, "names of the inputs", null, true)
        .numbers("values", Unit.ONE, "values of the inputs in the order of the names");
  }

  private static double[] standards(Given g, int n) {
    double[] u = g.numbers("u");
    Require.sameLength("u", u.length, n);
    List<Contribution.Shape> shapes = shapes(g, n);
    for (int i = 0; i < n; i++) {
      u[i] = shapes.get(i).standard(Require.notNegative("u", u[i]));
    }
    return u;
  }

  private static Reckoner formula() {
    return spread(
            model(
                Reckoner.of(
                    GROUP, "formula-uncertainty", "Uncertainty of a result given by a formula")))
        .result("y", Unit.ONE, "the result")
        .result("c", Unit.ONE, "sensitivities")
        .result("u_second", Unit.ONE, "combined uncertainty with the terms of second order")
        .source(Sources.GUM)
        .rule(
            g -> {
              double[] values = g.numbers("values");
              MeasurementModel m = MeasurementModel.of(g.text("formula"), g.words("names"), values);
              double[] u = standards(g, values.length);
              double[] nu = list(g, "nu", values.length, Double.POSITIVE_INFINITY);
              List<Contribution> list = m.contributions(values, u, nu);
              UncertaintyBudget first = new UncertaintyBudget(list, correlations(g), 0);
              UncertaintyBudget second =
                  new UncertaintyBudget(list, correlations(g), m.secondOrder(values, u));
              return answer(
                  Answer.start()
                      .with("y", m.value(values))
                      .with("c", m.sensitivities(values, u))
                      .with("u_second", second.combined()),
                  first,
                  g.number("confidence"));
            });
  }

  private static Reckoner drawn() {
    return model(
            Reckoner.of(
                GROUP,
                "formula-monte-carlo",
                "Distribution of a result found by drawing its inputs"))
        .numbers("u", Unit.ONE, "standard uncertainties, or half-widths where a shape is given")
        .input(
            "shapes",
            Input.Kind.WORDS,
            Unit.ONE,
            "shape of each: standard, rectangular, triangular, arcsine, resolution, certificate",
            null,
            false)
        .input(
            "nu",
            Input.Kind.WORDS,
            Unit.ONE,
            "degrees of freedom of each, 'inf' for certain limits",
            null,
            false)
        .number("confidence", Unit.ONE, "share that the interval holds", "0.95")
        .count("trials", "number of draws, 100 to 2000000", "200000")
        .count("seed", "seed of the draws; the same seed gives the same result", "20240301")
        .result("mean", Unit.ONE, "mean of the results")
        .result("u", Unit.ONE, "standard deviation of the results")
        .result("low", Unit.ONE, "lower end of the interval with equal tails")
        .result("high", Unit.ONE, "upper end")
        .source(Sources.MONTE_CARLO)
        .rule(
            g -> {
              double[] values = g.numbers("values");
              int n = values.length;
              MeasurementModel m = MeasurementModel.of(g.text("formula"), g.words("names"), values);
              double[] u = g.numbers("u");
              Require.sameLength("u", u.length, n);
              double[] nu = list(g, "nu", n, Double.POSITIVE_INFINITY);
              List<MonteCarlo.Input> inputs = new ArrayList<>();
              List<Contribution.Shape> shapes = shapes(g, n);
              for (int i = 0; i < n; i++) {
                inputs.add(
                    new MonteCarlo.Input(
                        values[i],
                        Require.notNegative("u", u[i]),
                        shapes.get(i),
                        Require.positiveOrInfinite("nu", nu[i])));
              }
              MonteCarlo drawn =
                  MonteCarlo.of(
                      m, inputs, g.count("trials"), g.number("confidence"), g.count("seed"));
              return Answer.start()
                  .with("mean", drawn.mean())
                  .with("u", drawn.standard())
                  .with("low", drawn.interval().low())
                  .with("high", drawn.interval().high());
            });
  }

  private static Reckoner gauge() {
    String[][] inputs = {
      {"u_ls", "uncertainty of the standard"},
      {"u_dbar", "repeatability of the comparator, mean of readings"},
      {"u_d1", "random effects of the comparator"},
      {"u_d2", "systematic effects of the comparator"}
    };
    Reckoner.Draft draft =
        Reckoner.of(GROUP, "gauge-length", "Length of a gauge compared with a standard")
            .number("l_s", Unit.NANOMETRE, "length of the standard")
            .number("d", Unit.NANOMETRE, "difference read");
    for (String[] input : inputs) {
      draft
          .number(input[0], Unit.NANOMETRE, input[1])
          .number("nu_" + input[0].substring(2), Unit.ONE, "its degrees of freedom");
    }
    return draft
        .number("alpha_s", Unit.PER_K, "expansion of the standard", "0.0000115")
        .number("a_alpha_s", Unit.PER_K, "half-width of alpha_s, rectangular")
        .number("dalpha", Unit.PER_K, "difference of the expansions", "0")
        .number("a_dalpha", Unit.PER_K, "half-width of dalpha, rectangular")
        .number("nu_dalpha", Unit.ONE, "its degrees of freedom", "50")
        .number("theta_mean", Unit.K, "mean deviation from 20 degrees")
        .number("u_theta_mean", Unit.K, "uncertainty of the mean deviation")
        .number("a_theta", Unit.K, "amplitude of the cycling temperature, arcsine")
        .number("dtheta", Unit.K, "difference of the temperatures", "0")
        .number("a_dtheta", Unit.K, "half-width of dtheta, rectangular")
        .number("nu_dtheta", Unit.ONE, "its degrees of freedom", "2")
        .number("confidence", Unit.ONE, "probability of the expanded uncertainty", "0.99")
        .result("l", Unit.NANOMETRE, "length at 20 degrees")
        .result("u_c", Unit.NANOMETRE, "combined standard uncertainty, first order")
        .result("u_second", Unit.NANOMETRE, "with the terms of second order")
        .result("nu_eff", Unit.ONE, "effective degrees of freedom")
        .result("k", Unit.ONE, "coverage factor")
        .result("U", Unit.NANOMETRE, "expanded uncertainty")
        .result("budget", Unit.ONE, "the inputs, largest share first")
        .source(Sources.GUM_H1)
        .rule(UncertaintyReckoners::gauge);
  }

  private static Answer gauge(Given g) {
    List<String> names =
        List.of("ls", "d0", "d1", "d2", "alpha", "dalpha", "theta", "cycle", "dtheta");
    double[] values = {
      g.number("l_s"),
      g.number("d"),
      0,
      0,
      g.number("alpha_s"),
      g.number("dalpha"),
      g.number("theta_mean"),
      0,
      g.number("dtheta")
    };
    double[] u = {
      g.number("u_ls"),
      g.number("u_dbar"),
      g.number("u_d1"),
      g.number("u_d2"),
      Contribution.Shape.RECTANGULAR.standard(g.number("a_alpha_s")),
      Contribution.Shape.RECTANGULAR.standard(g.number("a_dalpha")),
      g.number("u_theta_mean"),
      Contribution.Shape.ARCSINE.standard(g.number("a_theta")),
      Contribution.Shape.RECTANGULAR.standard(g.number("a_dtheta"))
    };
    double inf = Double.POSITIVE_INFINITY;
    double[] nu = {
      g.number("nu_ls"),
      g.number("nu_dbar"),
      g.number("nu_d1"),
      g.number("nu_d2"),
      inf,
      g.number("nu_dalpha"),
      inf,
      inf,
      g.number("nu_dtheta")
    };
    MeasurementModel m =
        MeasurementModel.of("ls+d0+d1+d2-ls*(dalpha*(theta+cycle)+alpha*dtheta)", names, values);
    List<Contribution> list = m.contributions(values, u, nu);
    UncertaintyBudget first = new UncertaintyBudget(list, List.of(), 0);
    UncertaintyBudget second = new UncertaintyBudget(list, List.of(), m.secondOrder(values, u));
    double confidence = g.number("confidence");
    Answer answer =
        Answer.start()
            .with("l", m.value(values))
            .with("u_c", first.combined())
            .with("u_second", second.combined())
            .with("k", first.coverage(confidence))
            .with("U", first.expanded(confidence))
            .with("budget", first.lines());
    return Double.isFinite(first.freedom()) ? answer.with("nu_eff", first.freedom()) : answer;
  }

  private static Reckoner together() {
    return Reckoner.of(
            GROUP, "readings-uncertainty", "Result of quantities that were read together")
        .text("formula", "the result as a formula of the names, e.g. V/I*cos(phi)")
        .input("formula2", Input.Kind.TEXT, Unit.ONE, "a second result", null, false)
        .input("names", Input.Kind.WORDS, Unit.ONE, "names of the quantities", null, true)
        .rows("readings", Unit.ONE, "a row for each set of readings taken together")
        .result("y", Unit.ONE, "result of the mean readings")
        .result("u", Unit.ONE, "its standard uncertainty, correlations included")
        .result("y2", Unit.ONE, "second result")
        .result("u2", Unit.ONE, "its standard uncertainty")
        .result("r", Unit.ONE, "correlation of the two results")
        .result("means", Unit.ONE, "mean readings")
        .result("u_means", Unit.ONE, "standard uncertainties of the means")
        .result("r_means", Unit.ONE, "correlations of the means: 1-2, 1-3, ... 2-3, ...")
        .source(Sources.GUM_H2)
        .rule(UncertaintyReckoners::together);
  }

  private static Answer together(Given g) {
    List<String> names = g.words("names");
    double[][] rows = g.rows("readings");
    Require.columns("readings", rows, names.size(), "in the order of the names");
    int p = names.size();
    int n = Require.atLeast("sets of readings", rows.length, 2);
    double[] means = new double[p];
    double[] u = new double[p];
    double[][] cov = new double[p][p];
    for (int i = 0; i < p; i++) {
      means[i] = Sample.of(Require.column(rows, i)).mean();
    }
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        for (double[] row : rows) {
          cov[i][j] += (row[i] - means[i]) * (row[j] - means[j]) / (n * (n - 1.0));
        }
      }
      u[i] = Math.sqrt(cov[i][i]);
    }
    List<Double> r = new ArrayList<>();
    for (int i = 0; i < p; i++) {
      for (int j = i + 1; j < p; j++) {
        r.add(u[i] > 0 && u[j] > 0 ? cov[i][j] / u[i] / u[j] : 0);
      }
    }
    MeasurementModel m = MeasurementModel.of(g.text("formula"), names, means);
    double[] c = m.sensitivities(means, u);
    double first = Math.sqrt(Math.max(0, covariance(c, cov, c)));
    Answer answer =
        Answer.start()
            .with("y", m.value(means))
            .with("u", first)
            .with("means", means)
            .with("u_means", u)
            .with("r_means", r.stream().mapToDouble(Double::doubleValue).toArray());
    if (g.has("formula2")) {
      MeasurementModel m2 = MeasurementModel.of(g.text("formula2"), names, means);
      double[] c2 = m2.sensitivities(means, u);
      double second = Math.sqrt(Math.max(0, covariance(c2, cov, c2)));
      double both = covariance(c, cov, c2);
      answer =
          answer
              .with("y2", m2.value(means))
              .with("u2", second)
              .with("r", first > 0 && second > 0 ? both / first / second : 0);
    }
    return answer.caution(
        "Correlated inputs: no degrees of freedom and no coverage factor are given.");
  }

  private static double covariance(double[] a, double[][] cov, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < b.length; j++) {
        sum += a[i] * cov[i][j] * b[j];
      }
    }
    return sum;
  }

  private static Reckoner calibrationLine() {
    return Reckoner.of(GROUP, "calibration-line", "Straight calibration line and what it foretells")
        .numbers("x", Unit.ONE, "places")
        .numbers("y", Unit.ONE, "readings")
        .number("x0", Unit.ONE, "place to which the intercept belongs", "0")
        .optional("at", Unit.ONE, "place to foretell")
        .optional("height", Unit.ONE, "height whose place is wanted")
        .number("u_height", Unit.ONE, "standard uncertainty of that height", "0")
        .result("y1", Unit.ONE, "intercept at x0")
        .result("y2", Unit.ONE, "slope")
        .result("s_y1", Unit.ONE, "standard uncertainty of the intercept")
        .result("s_y2", Unit.ONE, "standard uncertainty of the slope")
        .result("r", Unit.ONE, "correlation of intercept and slope")
        .result("s", Unit.ONE, "residual standard deviation")
        .result("nu", Unit.ONE, "degrees of freedom")
        .result("y_at", Unit.ONE, "height foretold")
        .result("u_at", Unit.ONE, "its standard uncertainty, covariance included")
        .result("u_reading", Unit.ONE, "standard uncertainty of one further reading there")
        .result("place", Unit.ONE, "place of the given height")
        .result("u_place", Unit.ONE, "its standard uncertainty")
        .source(Sources.GUM_H3)
        .rule(
            g -> {
              double[] x = g.numbers("x");
              double[] y = g.numbers("y");
              Require.sameLength("y", y.length, x.length);
              CalibrationLine line = CalibrationLine.of(x, y, g.number("x0"));
              LinearFit fit = line.fit();
              Answer answer =
                  Answer.start()
                      .with("y1", fit.value("y1"))
                      .with("y2", fit.value("y2"))
                      .with("s_y1", fit.uncertainty("y1"))
                      .with("s_y2", fit.uncertainty("y2"))
                      .with("r", line.correlation())
                      .with("s", fit.deviation())
                      .with("nu", fit.freedom());
              if (g.has("at")) {
                double u = line.uncertaintyAt(g.number("at"));
                answer =
                    answer
                        .with("y_at", line.at(g.number("at")))
                        .with("u_at", u)
                        .with("u_reading", Math.hypot(u, fit.deviation()));
              }
              if (g.has("height")) {
                double height = g.number("height");
                answer =
                    answer
                        .with("place", line.inverse(height))
                        .with("u_place", line.inverseUncertainty(height, g.number("u_height")));
              }
              return answer;
            });
  }

  private static Reckoner standard() {
    return Reckoner.of(GROUP, "standard-uncertainty", "Standard uncertainty from limits (Type B)")
        .number("a", Unit.ONE, "half-width, step or expanded uncertainty, in any unit")
        .choice(
            "shape",
            "what a is",
            "rectangular",
            "triangular",
            "arcsine",
            "resolution",
            "certificate",
            "standard")
        .result("u", Unit.ONE, "standard uncertainty")
        .source(Sources.GUM)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "u",
                        shape(g.choice("shape"))
                            .standard(Require.notNegative("a", g.number("a")))));
  }

  private static Reckoner coverage() {
    return Reckoner.of(GROUP, "coverage-factor", "Coverage factor from degrees of freedom")
        .input(
            "nu",
            Input.Kind.WORDS,
            Unit.ONE,
            "degrees of freedom, 'inf' for very many",
            "inf",
            true)
        .number("confidence", Unit.ONE, "probability", "0.95")
        .number("u", Unit.ONE, "standard uncertainty to expand", "1")
        .result("k", Unit.ONE, "coverage factor with the degrees of freedom truncated down")
        .result("U", Unit.ONE, "expanded uncertainty")
        .source(Sources.GUM)
        .rule(
            g -> {
              double nu = list(g, "nu", 1, 1)[0];
              Require.positiveOrInfinite("nu", nu);
              UncertaintyBudget budget = UncertaintyBudget.of(Contribution.readings("u", 1, 1, nu));
              double k = budget.coverage(g.number("confidence"));
              return Answer.start()
                  .with("k", k)
                  .with("U", k * Require.notNegative("u", g.number("u")));
            });
  }

  private static Reckoner freedom() {
    return Reckoner.of(GROUP, "effective-freedom", "Degrees of freedom by Welch-Satterthwaite")
        .numbers("u", Unit.ONE, "shares of the result's uncertainty")
        .input("nu", Input.Kind.WORDS, Unit.ONE, "degrees of freedom of each, or 'inf'", null, true)
        .result("u_c", Unit.ONE, "combined standard uncertainty")
        .result("nu_eff", Unit.ONE, "effective degrees of freedom; left out if infinite")
        .result("k", Unit.ONE, "coverage factor for 95 %")
        .source(Sources.GUM)
        .rule(
            g -> {
              double[] u = g.numbers("u");
              double[] nu = list(g, "nu", u.length, 1);
              Contribution[] list = new Contribution[u.length];
              for (int i = 0; i < u.length; i++) {
                list[i] = Contribution.readings("input " + (i + 1), u[i], 1, nu[i]);
              }
              UncertaintyBudget budget = UncertaintyBudget.of(list);
              Answer answer =
                  Answer.start().with("u_c", budget.combined()).with("k", budget.coverage(0.95));
              return Double.isFinite(budget.freedom())
                  ? answer.with("nu_eff", budget.freedom())
                  : answer;
            });
  }

  private static Reckoner doubt() {
    return Reckoner.of(GROUP, "freedom-of-doubt", "Degrees of freedom of a judged uncertainty")
        .number("doubt", Unit.ONE, "relative doubt of the standard uncertainty, e.g. 0.25")
        .result("nu", Unit.ONE, "degrees of freedom")
        .source(Sources.GUM)
        .rule(
            g -> {
              Require.positive("doubt", g.number("doubt"));
              return Answer.start()
                  .with("nu", Working.of("nu", Unit.ONE, "1/(2*doubt^2)", g.term("doubt")));
            });
  }

  private static Reckoner cosine() {
    return Reckoner.of(GROUP, "cosine-error", "Error of an indicator or rod set at a random tilt")
        .number("sigma", Unit.RAD, "standard deviation of the tilt in each plane")
        .number("length", Unit.MM, "length or travel measured")
        .count("planes", "1 or 2 planes of tilt", "2")
        .result("expected", Unit.MICRON, "expected size of the error 1 - cos")
        .result("u", Unit.MICRON, "its standard uncertainty")
        .result("relative", Unit.ONE, "expected relative error")
        .source(Sources.GUM_COSINE)
        .rule(
            g -> {
              double sigma = Require.between("sigma", g.number("sigma"), 0, 0.3);
              int planes = g.count("planes");
              if (planes != 1 && planes != 2) {
                throw new IllegalArgumentException("planes: found " + planes + ", expected 1 or 2");
              }
              double length = Require.positive("length", g.number("length"));
              double mean = planes * sigma * sigma / 2;
              return Answer.start()
                  .with("expected", mean * length)
                  .with("u", sigma * sigma * length * Math.sqrt(planes / 2.0))
                  .with("relative", mean);
            });
  }

  private static Reckoner tilt() {
    return Reckoner.of(GROUP, "indicator-tilt", "True movement behind a tilted indicator")
        .number("reading", Unit.MM, "difference read")
        .number("theta", Unit.DEG, "tilt of stylus or plunger")
        .choice(
            "kind",
            "lever: angle of the stylus to the surface; plunger: ball plunger on a face; scale: rod"
                + " or scale touching a ball",
            "lever",
            "plunger",
            "scale")
        .result("true", Unit.MM, "true movement")
        .result("error", Unit.MICRON, "reading minus true movement")
        .source(Sources.GEOMETRY)
        .rule(
            g -> {
              double theta = g.number("theta");
              if (!(Math.abs(theta) < 1.3)) {
                throw new IllegalArgumentException(
                    "theta: found "
                        + Math.toDegrees(theta)
                        + " deg, expected less than 74 deg; set the indicator up anew");
              }
              double cos = Math.cos(theta);
              double reading = g.number("reading");
              double real = g.choice("kind").equals("scale") ? reading / cos : reading * cos;
              return Answer.start().with("true", real).with("error", reading - real);
            });
  }

  private static Reckoner indicator() {
    return Reckoner.of(
            GROUP, "indicator-uncertainty", "Uncertainty of a difference of two readings")
        .number("division", Unit.MM, "graduation of the indicator", "0.01")
        .number("range", Unit.MM, "measuring range of the indicator", "1")
        .choice("bezel", "size of the dial", "50 mm", "small")
        .choice("plunger", "whether the plunger reversed between the two", "same", "reversed")
        .choice("state", "a worn or cheap indicator is taken as twice as bad", "sound", "worn")
        .optional("resolution", Unit.MM, "smallest step that is read; the division if left out")
        .result("u", Unit.MICRON, "standard uncertainty of a difference within a tenth of a turn")
        .result("tenth", Unit.MICRON, "largest permissible error within any tenth of a turn")
        .result("half", Unit.MICRON, "within any half turn")
        .result("turn", Unit.MICRON, "within any turn")
        .result("whole", Unit.MICRON, "over the whole range")
        .result("retrace", Unit.MICRON, "retrace (hysteresis) limit")
        .result("repeat", Unit.MICRON, "repeatability limit")
        .source(Sources.INDICATOR)
        .rule(UncertaintyReckoners::indicator);
  }

  private static Answer indicator(Given g) {
    Indicator sound =
        Indicator.of(
            g.number("division"),
            g.number("range"),
            g.choice("bezel").equals("small") ? Indicator.Bezel.SMALL : Indicator.Bezel.LARGE);
    Indicator used = g.choice("state").equals("worn") ? sound.worn() : sound;
    double resolution = g.number("resolution", used.resolution());
    Require.notNegative("resolution", resolution);
    double u =
        g.choice("plunger").equals("same")
            ? used.uncertainty(resolution)
            : used.uncertaintyReversed(resolution);
    return Answer.start()
        .with("u", u)
        .with("tenth", used.tenth())
        .with("half", used.half())
        .with("turn", used.turn())
        .with("whole", used.whole())
        .with("retrace", used.retrace())
        .with("repeat", used.repeatability());
  }

  private static Reckoner thermal() {
    return Reckoner.of(GROUP, "thermal-length", "Growth of a length by a difference of temperature")
        .number("L", Unit.MM, "length")
        .number("alpha", Unit.PPM_PER_K, "expansion of the material", "11.5")
        .number("dT", Unit.K, "temperature difference")
        .number("u_dT", Unit.K, "standard uncertainty of the difference", "0")
        .result("growth", Unit.MICRON, "growth")
        .result("u", Unit.MICRON, "its standard uncertainty from the temperature")
        .source(Sources.GUM_H1)
        .rule(
            g -> {
              Require.positive("L", g.number("L"));
              return Answer.start()
                  .with(
                      "growth",
                      Working.of(
                          "growth",
                          Unit.MICRON,
                          "alpha*L*dT",
                          g.term("alpha"),
                          g.term("L"),
                          g.term("dT")))
                  .with(
                      "u",
                      Math.abs(g.number("alpha") * g.number("L"))
                          * Require.notNegative("u_dT", g.number("u_dT")));
            });
  }
}
