package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.List;

/** Single calculations on trials repeated over the years. */
final class ControlReckoners {

  private static final String GROUP = StatisticsReckoners.GROUP;
  private static final String LEAVE =
      "Without a signal, do not adjust: adjusting noise doubles the variance.";

  private ControlReckoners() {}

  static List<Reckoner> all() {
    return List.of(
        individuals(),
        subgroups(),
        ewma(),
        cusum(),
        ewmaRunLength(),
        shewhartRunLength(),
        factors(),
        prediction(),
        runs(),
        drift());
  }

  private static double[] places(List<Integer> places) {
    return places.stream().mapToDouble(i -> i + 1.0).toArray();
  }

  private static Reckoner individuals() {
    return Reckoner.of(GROUP, "individuals-chart", "Control chart of single values")
        .numbers("x", Unit.ONE, "values in order of time, best 20 or more")
        .number("d2", Unit.ONE, "mean range of two over the standard deviation", "1.128")
        .result("centre", Unit.ONE, "mean")
        .result("UCL", Unit.ONE, "upper limit")
        .result("LCL", Unit.ONE, "lower limit")
        .result("MR", Unit.ONE, "mean moving range")
        .result("UCL_MR", Unit.ONE, "upper limit of the moving range")
        .result("sigma", Unit.ONE, "standard deviation from the moving range")
        .result("signals", Unit.ONE, "numbers of the values outside the limits")
        .result("runs", Unit.ONE, "runs that chance seldom makes")
        .source(Sources.SHEWHART)
        .rule(
            g -> {
              double[] x = g.numbers("x");
              ControlChart.Individuals chart = ControlChart.individuals(x, g.number("d2"));
              double sigma = chart.meanRange() / g.number("d2");
              List<String> runs = ControlChart.runs(x, chart.centre(), sigma);
              Answer answer =
                  Answer.start()
                      .with("centre", chart.centre())
                      .with("UCL", chart.upper())
                      .with("LCL", chart.lower())
                      .with("MR", chart.meanRange())
                      .with("UCL_MR", chart.rangeLimit())
                      .with("sigma", sigma)
                      .with("signals", places(chart.beyond()))
                      .with("runs", runs);
              if (chart.beyond().isEmpty() && runs.isEmpty()) {
                answer = answer.caution(LEAVE);
              }
              return x.length < 20
                  ? answer.caution(
                      "Fewer than 20 values: use prediction limits, these limits alarm too often.")
                  : answer;
            });
  }

  private static Reckoner subgroups() {
    return Reckoner.of(GROUP, "subgroup-chart", "Control chart of means and ranges of groups")
        .rows("x", Unit.ONE, "a row for each group, all of one size")
        .result("centre", Unit.ONE, "mean of the means")
        .result("UCL", Unit.ONE, "upper limit of the means")
        .result("LCL", Unit.ONE, "lower limit of the means")
        .result("R", Unit.ONE, "mean range")
        .result("UCL_R", Unit.ONE, "upper limit of the ranges")
        .result("LCL_R", Unit.ONE, "lower limit of the ranges")
        .result("signals", Unit.ONE, "numbers of the groups outside the limits")
        .source(Sources.SHEWHART)
        .rule(
            g -> {
              double[][] x = g.rows("x");
              int n = x.length == 0 ? 2 : x[0].length;
              Require.columns("x", x, n, "equal for every group");
              Require.atLeast("readings in a group", n, 2);
              Require.atLeast("groups", x.length, 2);
              double[] means = new double[x.length];
              double[] ranges = new double[x.length];
              for (int i = 0; i < x.length; i++) {
                Sample group = Sample.of(x[i]);
                means[i] = group.mean();
                ranges[i] =
                    java.util.Arrays.stream(x[i]).max().orElseThrow()
                        - java.util.Arrays.stream(x[i]).min().orElseThrow();
              }
              double centre = Sample.of(means).mean();
              double range = Sample.of(ranges).mean();
              double half = 3 * range / ControlChart.rangeMean(n) / Math.sqrt(n);
              double spread = 3 * ControlChart.rangeDeviation(n) / ControlChart.rangeMean(n);
              double top = (1 + spread) * range;
              double bottom = Math.max(0, 1 - spread) * range;
              List<Integer> signals = new ArrayList<>();
              for (int i = 0; i < x.length; i++) {
                boolean far = Math.abs(means[i] - centre) > half;
                if (far || ranges[i] > top || ranges[i] < bottom) {
                  signals.add(i);
                }
              }
              return Answer.start()
                  .with("centre", centre)
                  .with("UCL", centre + half)
                  .with("LCL", centre - half)
                  .with("R", range)
                  .with("UCL_R", top)
                  .with("LCL_R", bottom)
                  .with("signals", places(signals));
            });
  }

  private static Reckoner ewma() {
    return Reckoner.of(
            GROUP, "ewma-chart", "Chart of exponentially weighted averages, for slow drift")
        .numbers("x", Unit.ONE, "values in order of time")
        .number("lambda", Unit.ONE, "weight of the newest value", "0.2")
        .number("start", Unit.ONE, "centre line, value before the first")
        .number("s", Unit.ONE, "standard deviation of a value, re-setting included")
        .number("L", Unit.ONE, "half-width of the limits in standard deviations", "2.86")
        .result("z", Unit.ONE, "weighted average after each value")
        .result("last", Unit.ONE, "last weighted average")
        .result("UCL", Unit.ONE, "upper limit of the steady state")
        .result("LCL", Unit.ONE, "lower limit of the steady state")
        .result("UCL_t", Unit.ONE, "upper limit after each value")
        .result("LCL_t", Unit.ONE, "lower limit after each value")
        .result("signal", Unit.ONE, "number of the first value beyond its limit, 0 if none")
        .source(Sources.EWMA)
        .rule(
            g -> {
              double[] x = g.numbers("x");
              Require.atLeast("values", x.length, 1);
              double lambda = g.number("lambda");
              double start = g.number("start");
              double s = Require.positive("s", g.number("s"));
              double width = Require.positive("L", g.number("L"));
              double[] z = ControlChart.averages(x, lambda, start);
              double[] high = new double[x.length];
              double[] low = new double[x.length];
              int signal = 0;
              for (int i = 0; i < x.length; i++) {
                double half = ControlChart.averageLimit(lambda, width, s, i + 1);
                high[i] = start + half;
                low[i] = start - half;
                signal = signal == 0 && Math.abs(z[i] - start) > half ? i + 1 : signal;
              }
              double steady = ControlChart.averageLimit(lambda, width, s, 0);
              Answer answer =
                  Answer.start()
                      .with("z", z)
                      .with("last", z[z.length - 1])
                      .with("UCL", start + steady)
                      .with("LCL", start - steady)
                      .with("UCL_t", high)
                      .with("LCL_t", low)
                      .with("signal", signal);
              return signal == 0 ? answer.caution(LEAVE) : answer;
            });
  }

  private static Reckoner cusum() {
    return Reckoner.of(GROUP, "cusum-chart", "Cumulative sums, for a lasting small shift")
        .numbers("x", Unit.ONE, "values in order of time")
        .number("target", Unit.ONE, "wanted value")
        .number("k", Unit.ONE, "allowance, half the shift to find")
        .number("h", Unit.ONE, "limit, 4 to 5 standard deviations")
        .result("high", Unit.ONE, "sums above")
        .result("low", Unit.ONE, "sums below")
        .result("signal", Unit.ONE, "number of the first value that signals, 0 if none")
        .result("change", Unit.ONE, "number of the value at which the shift began, 0 if none")
        .source(Sources.CUSUM)
        .rule(
            g -> {
              double[] x = g.numbers("x");
              Require.atLeast("values", x.length, 1);
              ControlChart.Sums sums =
                  ControlChart.cumulativeSums(x, g.number("target"), g.number("k"), g.number("h"));
              Answer answer =
                  Answer.start()
                      .with("high", array(sums.high()))
                      .with("low", array(sums.low()))
                      .with("signal", sums.signal())
                      .with("change", sums.change());
              return sums.signal() == 0 ? answer.caution(LEAVE) : answer;
            });
  }

  private static double[] array(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static Reckoner ewmaRunLength() {
    return Reckoner.of(GROUP, "ewma-run-length", "Mean number of values until the average signals")
        .number("lambda", Unit.ONE, "weight of the newest value", "0.2")
        .number("L", Unit.ONE, "half-width of the steady limits", "2.86")
        .number("shift", Unit.ONE, "shift of the mean in standard deviations", "0")
        .result("ARL", Unit.ONE, "average run length, steady limits, starting at the centre")
        .source(Sources.RUN_LENGTH)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "ARL",
                        ControlChart.averageRunLength(
                            g.number("lambda"), g.number("L"), g.number("shift"))));
  }

  private static Reckoner shewhartRunLength() {
    return Reckoner.of(
            GROUP, "shewhart-run-length", "Mean number of values until one leaves the limits")
        .number("L", Unit.ONE, "half-width of the limits in standard deviations", "3")
        .number("shift", Unit.ONE, "shift of the mean in standard deviations", "0")
        .result("ARL", Unit.ONE, "average run length, scatter known")
        .source(Sources.SHEWHART)
        .rule(
            g ->
                Answer.start()
                    .with("ARL", ControlChart.singleRunLength(g.number("L"), g.number("shift"))));
  }

  private static Reckoner factors() {
    return Reckoner.of(GROUP, "chart-factors", "Factors of control charts for groups of n")
        .count("n", "readings in a group, 2 to 1000")
        .result("d2", Unit.ONE, "mean range over the standard deviation")
        .result("d3", Unit.ONE, "standard deviation of the range over the standard deviation")
        .result("c4", Unit.ONE, "mean of s over the standard deviation")
        .result("A2", Unit.ONE, "3/(d2 sqrt(n))")
        .result("D3", Unit.ONE, "max(0, 1 - 3 d3/d2)")
        .result("D4", Unit.ONE, "1 + 3 d3/d2")
        .source(Sources.SHEWHART)
        .rule(
            g -> {
              int n = g.count("n");
              double d2 = ControlChart.rangeMean(n);
              double d3 = ControlChart.rangeDeviation(n);
              return Answer.start()
                  .with("d2", d2)
                  .with("d3", d3)
                  .with("c4", ControlChart.deviationMean(n))
                  .with("A2", 3 / d2 / Math.sqrt(n))
                  .with("D3", Math.max(0, 1 - 3 * d3 / d2))
                  .with("D4", 1 + 3 * d3 / d2);
            });
  }

  private static Reckoner prediction() {
    return Reckoner.of(
            GROUP, "prediction-limits", "Limits for the next value after a few earlier ones")
        .input("x", Input.Kind.NUMBERS, Unit.ONE, "earlier values, 2 or more", null, false)
        .input(
            "n",
            Input.Kind.COUNT,
            Unit.ONE,
            "number of earlier values, if x is left out",
            null,
            false)
        .number("mean", Unit.ONE, "their mean, if x is left out", "0")
        .number("s", Unit.ONE, "their standard deviation, if x is left out", "1")
        .number("alpha", Unit.ONE, "risk of a false alarm: 0.05 to warn, 0.0027 to act", "0.05")
        .result("factor", Unit.ONE, "factor on the standard deviation")
        .result("low", Unit.ONE, "lower limit")
        .result("high", Unit.ONE, "upper limit")
        .source(Sources.PREDICTION_LIMITS)
        .rule(
            g -> {
              double alpha = Require.between("alpha", g.number("alpha"), 0, 1);
              if (g.has("x")) {
                Sample sample = Sample.of(g.numbers("x"));
                Interval limits = ControlChart.predictionLimits(sample, alpha);
                return Answer.start()
                    .with("factor", ControlChart.predictionFactor(sample.count(), alpha))
                    .with("low", limits.low())
                    .with("high", limits.high());
              }
              double factor = ControlChart.predictionFactor(g.count("n"), alpha);
              double half = factor * Require.notNegative("s", g.number("s"));
              return Answer.start()
                  .with("factor", factor)
                  .with("low", g.number("mean") - half)
                  .with("high", g.number("mean") + half);
            });
  }

  private static Reckoner runs() {
    return Reckoner.of(GROUP, "run-rules", "Runs of values that chance seldom makes")
        .numbers("x", Unit.ONE, "values in order of time")
        .number("centre", Unit.ONE, "centre line")
        .number("sigma", Unit.ONE, "standard deviation")
        .result("runs", Unit.ONE, "the runs found")
        .source(Sources.SHEWHART)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "runs",
                        ControlChart.runs(
                            g.numbers("x"),
                            g.number("centre"),
                            Require.positive("sigma", g.number("sigma")))));
  }

  private static Reckoner drift() {
    return Reckoner.of(GROUP, "drift", "Has it drifted? Slope of repeated trials over time")
        .numbers("t", Unit.ONE, "times, in days, runs or hours")
        .numbers("x", Unit.ONE, "values")
        .number("alpha", Unit.ONE, "risk of a false alarm", "0.05")
        .result("slope", Unit.ONE, "drift for one unit of time")
        .result("u", Unit.ONE, "its standard uncertainty")
        .result("t_ratio", Unit.ONE, "slope over its uncertainty")
        .result("p", Unit.ONE, "probability of such a slope without drift")
        .result("drifted", Unit.ONE, "yes or no")
        .result("total", Unit.ONE, "drift from the first to the last time")
        .result("s", Unit.ONE, "scatter about the line")
        .result("r1", Unit.ONE, "lag-1 autocorrelation about the line")
        .source(Sources.PLAN)
        .rule(
            g -> {
              double[] t = g.numbers("t");
              double[] x = g.numbers("x");
              Require.sameLength("x", x.length, t.length);
              LinearFit fit = CalibrationLine.of(t, x, Sample.of(t).mean()).fit();
              double u = fit.uncertainty("y2");
              double slope = fit.value("y2");
              double ratio = u > 0 ? slope / u : slope == 0 ? 0 : Math.copySign(1e12, slope);
              double p = Quantiles.studentTails(ratio, fit.freedom());
              boolean drifted = p < Require.between("alpha", g.number("alpha"), 0, 1);
              double low = java.util.Arrays.stream(t).min().orElseThrow();
              double high = java.util.Arrays.stream(t).max().orElseThrow();
              Answer answer =
                  Answer.start()
                      .with("slope", slope)
                      .with("u", u)
                      .with("t_ratio", ratio)
                      .with("p", p)
                      .with("drifted", drifted ? "yes" : "no")
                      .with("total", slope * (high - low))
                      .with("s", fit.deviation())
                      .with("r1", Sample.of(fit.residuals().toArray()).lagOne());
              return drifted
                  ? answer.caution(
                      "Repeat the trial another day before touching a screw; drift within one test is"
                          + " warming up until proven otherwise.")
                  : answer.caution(LEAVE);
            });
  }
}
