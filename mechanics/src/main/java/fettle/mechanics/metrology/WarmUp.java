package fettle.mechanics.metrology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Warm-up law {@code rise = final (1 - exp(-rate t))} fitted to a log.
 *
 * @param fit the fit; parameter 0 is the final rise, parameter 1 the rate
 */
public record WarmUp(NonlinearFit fit) {

  /**
   * Fits the law. The rate is first searched over a wide range with the best final rise for each,
   * so no first guess is needed.
   *
   * @param time times from the start [any]
   * @param rise rises over the start [any]
   */
  public static WarmUp of(double[] time, double[] rise) {
    Require.sameLength("rise", rise.length, time.length);
    double longest = 0;
    for (double t : time) {
      longest = Math.max(longest, Require.notNegative("time", t));
    }
    Require.positive("longest time", longest);
    double best = Double.POSITIVE_INFINITY;
    double rate = 0;
    for (int i = 0; i <= 400; i++) {
      double candidate = Math.pow(10, -2.5 + i * 5.5 / 400) / longest;
      double squares = squares(time, rise, candidate);
      if (squares < best) {
        best = squares;
        rate = candidate;
      }
    }
    NonlinearFit fit =
        NonlinearFit.fit(
            (t, p) -> p[0] * -Math.expm1(-p[1] * t),
            time,
            rise,
            new double[] {finalRise(time, rise, rate), rate});
    if (!(fit.parameters().getEntry(1) > 0)) {
      throw new IllegalArgumentException(
          "log: the temperature does not level off; log longer, at least two time constants");
    }
    return new WarmUp(fit);
  }

  private static double finalRise(double[] time, double[] rise, double rate) {
    double above = 0;
    double below = 0;
    for (int i = 0; i < time.length; i++) {
      double g = -Math.expm1(-rate * time[i]);
      above += g * rise[i];
      below += g * g;
    }
    return below > 0 ? above / below : 0;
  }

  private static double squares(double[] time, double[] rise, double rate) {
    double last = finalRise(time, rise, rate);
    double sum = 0;
    for (int i = 0; i < time.length; i++) {
      double d = rise[i] + last * Math.expm1(-rate * time[i]);
      sum += d * d;
    }
    return sum;
  }

  /**
   * Returns the final rise.
   *
   * @return final rise [as the log]
   */
  public double finalRise() {
    return fit.parameters().getEntry(0);
  }

  /**
   * Returns the rate.
   *
   * @return rate [1/time]
   */
  public double rate() {
    return fit.parameters().getEntry(1);
  }

  /**
   * Says what a run-in log calls for.
   *
   * @param time times [s]
   * @param temperature temperatures at the bearing [K or degrees]
   * @param ambient temperature of the room [same]
   * @return sentences; the first is the verdict
   */
  public static List<String> runIn(double[] time, double[] temperature, double ambient) {
    Require.sameLength("temperature", temperature.length, time.length);
    Require.atLeast("log entries", time.length, 3);
    List<String> lines = new ArrayList<>();
    double highest = Arrays.stream(temperature).max().orElseThrow();
    double[] slopes = new double[time.length - 1];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] =
          (temperature[i + 1] - temperature[i])
              / Require.positive("step of time", time[i + 1] - time[i]);
    }
    int growing = 0;
    boolean runaway = false;
    for (int i = 1; i < slopes.length; i++) {
      growing = slopes[i] > slopes[i - 1] && slopes[i] > 0 ? growing + 1 : 0;
      runaway |= growing >= 3;
    }
    if (highest > 65) {
      lines.add("stop: above 65 degrees at the bearing");
    }
    if (highest - ambient > 35) {
      lines.add("stop: more than 35 K above the room");
    }
    if (runaway) {
      lines.add("stop: the temperature rises faster and faster over three readings");
    }
    if (lines.isEmpty()) {
      double perTen = slopes[slopes.length - 1] * 600;
      lines.add(
          perTen < 1
              ? "next step: the temperature changes by less than 1 K in 10 min"
              : "wait: the temperature still rises by more than 1 K in 10 min");
    }
    return lines;
  }
}
