package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Single calculations on repeated readings and fits. */
final class StatisticsReckoners {

  static final String GROUP = "measuring";
  private static final int NAMED = 11;

  private StatisticsReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        sampleStatistics(),
        polynomialFit(),
        multipleFit(),
        harmonicFit(),
        designRank(),
        setupVariance(),
        dayVariance(),
        levene(),
        grubbs(),
        grubbsCritical(),
        deviationLimits(),
        quantile());
  }

  private static Reckoner sampleStatistics() {
    return Reckoner.of(GROUP, "sample-statistics", "Mean, scatter and independence of readings")
        .numbers("y", Unit.ONE, "readings in the order made, in any one unit")
        .number("resolution", Unit.ONE, "smallest step that can be read, 0 if not known", "0")
        .number("confidence", Unit.ONE, "confidence of the limits of the scatter", "0.95")
        .result("n", Unit.ONE, "number of readings")
        .result("mean", Unit.ONE, "mean")
        .result("s", Unit.ONE, "standard deviation, with n - 1")
        .result("u", Unit.ONE, "standard uncertainty of the mean")
        .result("median", Unit.ONE, "median")
        .result("MAD", Unit.ONE, "median absolute deviation")
        .result("r1", Unit.ONE, "lag-1 autocorrelation")
        .result("n_eff", Unit.ONE, "independent readings these are worth")
        .result("s_low", Unit.ONE, "lower limit of the true standard deviation")
        .result("s_high", Unit.ONE, "upper limit of the true standard deviation")
        .result("outliers", Unit.ONE, "readings that do not belong to the others")
        .source(Sources.STATISTICS)
        .rule(
            g -> {
              Sample sample = Sample.of(g.numbers("y"));
              double resolution = Require.notNegative("resolution", g.number("resolution"));
              Answer answer =
                  Answer.start()
                      .with("n", sample.count())
                      .with("mean", sample.mean())
                      .with("median", sample.median())
                      .with("MAD", sample.medianDeviation());
              if (sample.count() < 2) {
                return answer.caution(
                    "One reading has no scatter; repeat it to learn its uncertainty.");
              }
              Interval limits = sample.deviationInterval(g.number("confidence"));
              double effective = sample.effectiveCount();
              double s = sample.standardDeviation();
              double read = Math.max(s, resolution / Math.sqrt(12));
              answer =
                  answer
                      .with("s", s)
                      .with("u", read / Math.sqrt(Math.min(effective, sample.count())))
                      .with("r1", sample.lagOne())
                      .with("n_eff", effective)
                      .with("s_low", limits.low())
                      .with("s_high", limits.high())
                      .with("outliers", named(sample));
              if (effective < sample.count()) {
                answer =
                    answer.caution(
                        "The readings follow one another (r1 beyond 2/sqrt(n)): they are worth fewer"
                            + " independent ones.");
              }
              return s == 0 && resolution == 0
                  ? answer.caution(
                      "All readings are equal: the scatter hides in the resolution; give it.")
                  : answer;
            });
  }

  /** Names readings that do not belong to the others. */
  static List<String> named(Sample sample) {
    List<String> lines = new ArrayList<>();
    for (int i : Outliers.robust(sample)) {
      lines.add("reading " + (i + 1) + ": " + Numbers.significant(sample.values()[i], 8));
    }
    return lines;
  }

  private static Reckoner.Draft coefficients(Reckoner.Draft draft) {
    draft
        .result("B", Unit.ONE, "all coefficients in order")
        .result("s_B", Unit.ONE, "their standard uncertainties");
    for (int i = 0; i < NAMED; i++) {
      draft
          .result("B" + i, Unit.ONE, "coefficient of term " + i)
          .result("s_B" + i, Unit.ONE, "its standard uncertainty");
    }
    return draft
        .result("s", Unit.ONE, "residual standard deviation")
        .result("nu", Unit.ONE, "degrees of freedom")
        .result("R2", Unit.ONE, "share of the variance explained")
        .result("RSS", Unit.ONE, "sum of squared residuals")
        .result("r1", Unit.ONE, "lag-1 autocorrelation of the residuals")
        .result("outliers", Unit.ONE, "readings far from the curve; none is dropped");
  }

  private static Answer coefficients(LinearFit fit, List<String> names) {
    Answer answer = Answer.start();
    double[] s = new double[names.size()];
    double[] b = new double[names.size()];
    for (int i = 0; i < names.size(); i++) {
      b[i] = fit.value(names.get(i));
      s[i] = fit.uncertainty(names.get(i));
      if (names.get(i).length() <= 3) {
        answer = answer.with(names.get(i), b[i]).with("s_" + names.get(i), s[i]);
      }
    }
    answer = answer.with("B", b).with("s_B", s);
    return closing(answer, fit);
  }

  private static Answer closing(Answer start, LinearFit fit) {
    Sample residuals = Sample.of(fit.residuals().toArray());
    Answer answer =
        start
            .with("s", fit.deviation())
            .with("nu", fit.freedom())
            .with("R2", fit.share())
            .with("RSS", fit.residualSquares())
            .with("r1", residuals.lagOne())
            .with("outliers", named(residuals));
    return fit.isWeak() ? answer.caution(weak(fit)) : answer;
  }

  static String weak(LinearFit fit) {
    return "These places can hardly tell all terms apart (smallest singular value "
        + Numbers.significant(fit.weakest(), 2)
        + " of the largest): spread the readings more.";
  }

  private static Reckoner polynomialFit() {
    Reckoner.Draft draft =
        Reckoner.of(GROUP, "polynomial-fit", "Straight line or parabola through readings")
            .numbers("x", Unit.ONE, "places")
            .numbers("y", Unit.ONE, "readings")
            .count("degree", "1 for a line, 2 for a parabola, up to 10", "1")
            .input("at", Input.Kind.NUMBER, Unit.ONE, "place to foretell", null, false)
            .result("y_at", Unit.ONE, "height of the curve at that place")
            .result("u_at", Unit.ONE, "standard uncertainty of that height, covariances included");
    return coefficients(draft)
        .source(Sources.STATISTICS)
        .rule(
            g -> {
              int degree = Require.atMost("degree", g.count("degree"), NAMED - 1);
              double[] x = g.numbers("x");
              LinearFit fit = LeastSquares.polynomial(x, g.numbers("y"), degree);
              Answer answer = coefficients(fit, fit.names());
              if (g.has("at")) {
                double[] row = new double[degree + 1];
                for (int k = 0; k <= degree; k++) {
                  row[k] = Math.pow(g.number("at"), k);
                }
                answer =
                    answer
                        .with("y_at", fit.prediction(row))
                        .with("u_at", fit.predictionUncertainty(row));
              }
              return answer;
            });
  }

  private static Reckoner multipleFit() {
    return coefficients(
            Reckoner.of(GROUP, "multiple-fit", "Least-squares fit with several causes")
                .rows("x", Unit.ONE, "a row for each reading with the values of the causes")
                .numbers("y", Unit.ONE, "readings")
                .choice("intercept", "whether a constant B0 is fitted", "yes", "no"))
        .source(Sources.STATISTICS)
        .rule(
            g -> {
              double[][] x = g.rows("x");
              Require.columns("x", x, x.length == 0 ? 0 : x[0].length, "equal for every row");
              boolean constant = g.choice("intercept").equals("yes");
              int shift = constant ? 1 : 0;
              double[][] rows = new double[x.length][x[0].length + shift];
              List<String> names = new ArrayList<>();
              for (int j = 0; j < rows[0].length; j++) {
                names.add("B" + (constant ? j : j + 1));
                for (int i = 0; i < x.length; i++) {
                  rows[i][j] = constant && j == 0 ? 1 : x[i][j - shift];
                }
              }
              Require.atMost("causes", names.size(), NAMED - 1);
              return coefficients(LeastSquares.fit(names, rows, g.numbers("y")), names);
            });
  }

  private static Reckoner harmonicFit() {
    Reckoner.Draft draft =
        Reckoner.of(GROUP, "harmonic-fit", "Periodic errors of known periods in readings")
            .numbers("x", Unit.ONE, "places, in turns, teeth or millimetres")
            .numbers("y", Unit.ONE, "readings")
            .numbers("periods", Unit.ONE, "periods in the unit of x")
            .choice("slope", "whether a straight line is fitted beside them", "no", "yes")
            .result("b1", Unit.ONE, "constant")
            .result("slope", Unit.ONE, "slope of the line, if fitted")
            .result("A", Unit.ONE, "amplitudes in the order of the periods")
            .result("phase", Unit.DEG, "phases: the term is A cos(2 pi x/P - phase)")
            .result("a", Unit.ONE, "cosine coefficients")
            .result("b", Unit.ONE, "sine coefficients")
            .result("u_A", Unit.ONE, "standard uncertainties of the amplitudes")
            .result("s", Unit.ONE, "residual standard deviation")
            .result("nu", Unit.ONE, "degrees of freedom")
            .result("R2", Unit.ONE, "share of the variance explained")
            .result("RSS", Unit.ONE, "sum of squared residuals")
            .result("r1", Unit.ONE, "lag-1 autocorrelation of the residuals")
            .result("outliers", Unit.ONE, "readings far from the curve; none is dropped")
            .result("F", Unit.ONE, "F of each pair; significant above F_limit")
            .result("F_limit", Unit.ONE, "5 % point of F");
    for (int i = 1; i <= NAMED; i++) {
      draft
          .result("A" + i, Unit.ONE, "amplitude of period " + i)
          .result("phase" + i, Unit.DEG, "phase of period " + i)
          .result("u_A" + i, Unit.ONE, "standard uncertainty of amplitude " + i);
    }
    return draft.source(Sources.DIAL).rule(StatisticsReckoners::harmonics);
  }

  private static Answer harmonics(Given g) {
    double[] x = g.numbers("x");
    double[] y = g.numbers("y");
    double[] periods = g.numbers("periods");
    Require.sameLength("y", y.length, x.length);
    boolean slope = g.choice("slope").equals("yes");
    HarmonicDesign design = HarmonicDesign.of(periods).withConstant();
    design = slope ? design.withSlope() : design;
    LinearFit fit = design.fit(x, y);
    Answer answer = Answer.start().with("b1", fit.value("offset"));
    answer = slope ? answer.with("slope", fit.value("slope")) : answer;
    int k = periods.length;
    double[] size = new double[k];
    double[] phase = new double[k];
    double[] a = new double[k];
    double[] b = new double[k];
    double[] u = new double[k];
    double[] f = new double[k];
    for (int i = 0; i < k; i++) {
      Harmonic harmonic = Harmonic.of(fit, i + 1);
      size[i] = harmonic.amplitude();
      phase[i] = harmonic.phase();
      a[i] = harmonic.cosine();
      b[i] = harmonic.sine();
      u[i] = harmonic.uncertainty();
      f[i] = harmonic.significance();
    }
    answer =
        closing(answer, fit)
            .with("A", size)
            .with("phase", phase)
            .with("a", a)
            .with("b", b)
            .with("u_A", u)
            .with("F", f)
            .with("F_limit", Quantiles.fisher(0.95, 2, fit.freedom()));
    for (int i = 0; i < k; i++) {
      if (i < NAMED) {
        answer =
            answer
                .with("A" + (i + 1), size[i])
                .with("phase" + (i + 1), phase[i])
                .with("u_A" + (i + 1), u[i]);
      }
      if (size[i] < 2.5 * u[i]) {
        answer =
            answer.caution(
                "Period "
                    + Numbers.significant(periods[i], 6)
                    + ": the amplitude is below 2.5 of its uncertainty and does not count as found.");
      }
    }
    return answer;
  }

  private static Reckoner designRank() {
    return Reckoner.of(GROUP, "design-rank", "How many terms the places of readings can tell apart")
        .numbers("turns", Unit.TURNS, "dial positions of the readings")
        .numbers("periods", Unit.TURNS, "periods to be found, in turns")
        .result("terms", Unit.ONE, "terms to be found: constant, slope, two for each period")
        .result("rank", Unit.ONE, "terms that can be told apart")
        .result("hidden", Unit.ONE, "periods that these places cannot see")
        .source(Sources.DIAL)
        .rule(
            g -> {
              double[] turns = g.numbers("turns");
              double[] periods = g.numbers("periods");
              Require.atLeast("turns", turns.length, 1);
              HarmonicDesign all = HarmonicDesign.of(periods).withConstant().withSlope();
              int rank = LeastSquares.rank(all.rows(turns));
              List<String> hidden = all.hidden(turns);
              Answer answer =
                  Answer.start()
                      .with("terms", 2 + 2 * periods.length)
                      .with("rank", rank)
                      .with("hidden", hidden);
              return hidden.isEmpty()
                  ? answer
                  : answer.caution(
                      "These targets hide periodic errors; shift some by a part of a turn.");
            });
  }

  private static List<Sample> groups(Given g) {
    double[] group = g.numbers("group");
    double[] y = g.numbers("y");
    Require.sameLength("y", y.length, group.length);
    Map<Double, List<Double>> map = new LinkedHashMap<>();
    for (int i = 0; i < y.length; i++) {
      map.computeIfAbsent(group[i], k -> new ArrayList<>()).add(y[i]);
    }
    return map.values().stream()
        .map(l -> Sample.of(l.stream().mapToDouble(Double::doubleValue).toArray()))
        .toList();
  }

  private static Reckoner setupVariance() {
    return Reckoner.of(GROUP, "setup-variance", "Do setups differ more than readings of one setup?")
        .numbers("group", Unit.ONE, "number of the setup of each reading")
        .numbers("y", Unit.ONE, "readings")
        .result("F", Unit.ONE, "variance between over variance within")
        .result("p", Unit.ONE, "probability of such an F if all setups were alike")
        .result("F_critical", Unit.ONE, "5 % point of F")
        .result("differ", Unit.ONE, "yes if the setups differ at the 5 % level")
        .result("SS_between", Unit.ONE, "sum of squares between setups")
        .result("SS_within", Unit.ONE, "sum of squares within setups")
        .result("MS_between", Unit.ONE, "mean square between setups")
        .result("MS_within", Unit.ONE, "mean square within setups")
        .result("s_within", Unit.ONE, "standard deviation within a setup")
        .result("s_setup", Unit.ONE, "standard deviation of the setups themselves")
        .result("R2", Unit.ONE, "share of the variance that the setups explain")
        .result("mean", Unit.ONE, "mean of all readings")
        .result("u", Unit.ONE, "standard uncertainty of the mean")
        .result("nu", Unit.ONE, "its degrees of freedom")
        .source(Sources.STATISTICS)
        .rule(g -> variance(VarianceAnalysis.of(groups(g))));
  }

  private static Answer variance(VarianceAnalysis v) {
    double between = v.between() * v.above();
    double within = v.within() * v.below();
    if (Double.isInfinite(v.f())) {
      throw new IllegalArgumentException(
          "y: readings of one setup are all equal; read with a finer instrument");
    }
    return Answer.start()
        .with("F", v.f())
        .with("p", v.probability())
        .with("F_critical", Quantiles.fisher(0.95, v.above(), v.below()))
        .with("differ", v.setupsDiffer() ? "yes" : "no")
        .with("SS_between", between)
        .with("SS_within", within)
        .with("MS_between", v.between())
        .with("MS_within", v.within())
        .with("s_within", Math.sqrt(v.within()))
        .with("s_setup", v.setupDeviation())
        .with("R2", between + within > 0 ? between / (between + within) : 0)
        .with("mean", v.mean())
        .with("u", v.uncertainty())
        .with("nu", v.freedom());
  }

  private static Reckoner dayVariance() {
    return Reckoner.of(GROUP, "day-variance", "Variance between days from daily means and scatters")
        .numbers("means", Unit.ONE, "mean of each day")
        .numbers("s", Unit.ONE, "standard deviation of each day, in the same unit")
        .count("n", "readings in a day")
        .result("F", Unit.ONE, "n s^2(day means) / mean(s_day^2)")
        .result("p", Unit.ONE, "probability of such an F if all days were alike")
        .result("F_critical", Unit.ONE, "5 % point of F")
        .result("differ", Unit.ONE, "yes if the days differ at the 5 % level")
        .result("mean", Unit.ONE, "mean of all readings")
        .result("s_means", Unit.ONE, "standard deviation of the daily means")
        .result("s_a", Unit.ONE, "between-day estimate of the scatter of a reading")
        .result("s_b", Unit.ONE, "within-day estimate of the scatter of a reading")
        .result("s_B", Unit.ONE, "standard deviation of the days themselves")
        .result("u", Unit.ONE, "standard uncertainty of the mean")
        .result("nu", Unit.ONE, "its degrees of freedom")
        .source(Sources.GUM_H5)
        .rule(
            g -> {
              VarianceAnalysis v =
                  VarianceAnalysis.of(g.numbers("means"), g.numbers("s"), g.count("n"));
              if (Double.isInfinite(v.f())) {
                throw new IllegalArgumentException("s: all are 0, expected scatter within a day");
              }
              return Answer.start()
                  .with("F", v.f())
                  .with("p", v.probability())
                  .with("F_critical", Quantiles.fisher(0.95, v.above(), v.below()))
                  .with("differ", v.setupsDiffer() ? "yes" : "no")
                  .with("mean", v.mean())
                  .with("s_means", Math.sqrt(v.between() / g.count("n")))
                  .with("s_a", Math.sqrt(v.between()))
                  .with("s_b", Math.sqrt(v.within()))
                  .with("s_B", v.setupDeviation())
                  .with("u", v.uncertainty())
                  .with("nu", v.freedom());
            });
  }

  private static Reckoner levene() {
    return Reckoner.of(GROUP, "levene", "Does the scatter differ between groups? (medians)")
        .numbers("group", Unit.ONE, "number of the group of each reading")
        .numbers("y", Unit.ONE, "readings")
        .result("W", Unit.ONE, "Levene's statistic with medians")
        .result("p", Unit.ONE, "probability of such a W if the scatter were the same")
        .result("W_critical", Unit.ONE, "5 % point")
        .result("differ", Unit.ONE, "yes if the scatter differs at the 5 % level")
        .source(Sources.LEVENE)
        .rule(
            g -> {
              VarianceAnalysis v = VarianceAnalysis.levene(groups(g));
              if (Double.isInfinite(v.f())) {
                throw new IllegalArgumentException(
                    "y: too few different readings to compare the scatter; take more");
              }
              return Answer.start()
                  .with("W", v.f())
                  .with("p", v.probability())
                  .with("W_critical", Quantiles.fisher(0.95, v.above(), v.below()))
                  .with("differ", v.setupsDiffer() ? "yes" : "no");
            });
  }

  private static Reckoner grubbs() {
    return Reckoner.of(GROUP, "grubbs", "Does the most extreme reading belong to the others?")
        .numbers("y", Unit.ONE, "readings, 3 or more")
        .number("alpha", Unit.ONE, "risk of naming a good reading", "0.05")
        .choice("side", "where an outlier is expected", "both", "high", "low")
        .result("G", Unit.ONE, "Grubbs' statistic")
        .result("G_critical", Unit.ONE, "critical value")
        .result("outlier", Unit.ONE, "yes or no")
        .result("value", Unit.ONE, "the extreme reading")
        .result("place", Unit.ONE, "its number, counted from 1")
        .source(Sources.GRUBBS)
        .rule(
            g -> {
              Sample sample = Sample.of(g.numbers("y"));
              Outliers.Side side =
                  switch (g.choice("side")) {
                    case "high" -> Outliers.Side.HIGH;
                    case "low" -> Outliers.Side.LOW;
                    default -> Outliers.Side.BOTH;
                  };
              Outliers.Grubbs found = Outliers.grubbs(sample, g.number("alpha"), side);
              Answer answer =
                  Answer.start()
                      .with("G", found.statistic())
                      .with("G_critical", found.critical())
                      .with("outlier", found.isOutlier() ? "yes" : "no")
                      .with("value", sample.values()[found.index()])
                      .with("place", found.index() + 1);
              return found.isOutlier()
                  ? answer.caution(
                      "Repeat this reading. Leave it out only with a physical cause in writing (chip,"
                          + " touched stand), and keep both results.")
                  : answer;
            });
  }

  private static Reckoner grubbsCritical() {
    return Reckoner.of(GROUP, "grubbs-critical", "Critical value of Grubbs' test")
        .count("n", "readings, 3 or more")
        .number("alpha", Unit.ONE, "risk", "0.05")
        .count("sides", "1 or 2", "2")
        .result("G_critical", Unit.ONE, "critical value")
        .source(Sources.GRUBBS)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "G_critical",
                        Outliers.critical(g.count("n"), g.number("alpha"), g.count("sides"))));
  }

  private static Reckoner deviationLimits() {
    return Reckoner.of(GROUP, "deviation-limits", "How well n readings know their own scatter")
        .count("n", "readings, 2 or more")
        .number("s", Unit.ONE, "standard deviation found", "1")
        .number("confidence", Unit.ONE, "confidence", "0.95")
        .result("low", Unit.ONE, "lower limit of the true standard deviation")
        .result("high", Unit.ONE, "upper limit of the true standard deviation")
        .result("relative", Unit.ONE, "relative standard uncertainty of s")
        .source(Sources.GUM)
        .rule(
            g -> {
              double nu = Require.atLeast("n", g.count("n"), 2) - 1.0;
              double tail = (1 - Require.between("confidence", g.number("confidence"), 0, 1)) / 2;
              double s = Require.notNegative("s", g.number("s"));
              return Answer.start()
                  .with("low", s * Math.sqrt(nu / Quantiles.chiSquared(1 - tail, nu)))
                  .with("high", s * Math.sqrt(nu / Quantiles.chiSquared(tail, nu)))
                  .with("relative", 1 / Math.sqrt(2 * nu));
            });
  }

  private static Reckoner quantile() {
    return Reckoner.of(GROUP, "quantile", "Quantile of the normal, t, chi-square or F distribution")
        .choice("distribution", "which distribution", "normal", "t", "chi-square", "F")
        .number("p", Unit.ONE, "probability, between 0 and 1")
        .number("nu", Unit.ONE, "degrees of freedom (of the numerator for F)", "1")
        .number("nu2", Unit.ONE, "degrees of freedom of the denominator for F", "1")
        .result("q", Unit.ONE, "quantile")
        .source(Sources.STATISTICS)
        .rule(
            g -> {
              double p = g.number("p");
              double nu = g.number("nu");
              return Answer.start()
                  .with(
                      "q",
                      switch (g.choice("distribution")) {
                        case "t" -> Quantiles.student(p, nu);
                        case "chi-square" -> Quantiles.chiSquared(p, nu);
                        case "F" -> Quantiles.fisher(p, nu, g.number("nu2"));
                        default -> Quantiles.normal(p);
                      });
            });
  }
}
