package fettle.mechanics.metrology;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Dial against indicator: {@code y = o_run + T t - d B/2 + sum of (a_k cos(2 pi t/P_k) + b_k sin(2
 * pi t/P_k))}, one offset for each run, travel per turn T, backlash B (the slide lags the dial),
 * and the periodic errors of shafts and meshes.
 *
 * @param fit the fit, with coefficients {@code T}, {@code B} (if both directions were run), {@code
 *     o1...}, {@code a1}, {@code b1} ...
 * @param periods periods of the harmonics [turns]
 * @param readings the readings, all of them
 */
public record DialTest(LinearFit fit, List<Double> periods, List<DialReading> readings) {

  /**
   * Fits the readings.
   *
   * @param readings readings of all runs
   * @param periods periods to be found, e.g. 1 for once per turn [turns]
   */
  public static DialTest of(List<DialReading> readings, double... periods) {
    HarmonicDesign harmonics = HarmonicDesign.of(periods);
    List<Integer> runs = readings.stream().map(DialReading::run).distinct().sorted().toList();
    boolean both = readings.stream().map(DialReading::direction).distinct().count() > 1;
    List<String> names = new ArrayList<>();
    for (int run : runs) {
      names.add("o" + run);
    }
    names.add("T");
    if (both) {
      names.add("B");
    }
    names.addAll(harmonics.names());
    double middle = readings.stream().mapToDouble(DialReading::turns).average().orElse(0);
    double[][] rows = new double[readings.size()][names.size()];
    double[] y = new double[readings.size()];
    for (int i = 0; i < rows.length; i++) {
      DialReading r = readings.get(i);
      rows[i][runs.indexOf(r.run())] = 1;
      int at = runs.size();
      rows[i][at++] = r.turns() - middle;
      if (both) {
        rows[i][at++] = -r.direction() / 2.0;
      }
      double[] more = harmonics.row(r.turns());
      System.arraycopy(more, 0, rows[i], at, more.length);
      y[i] = r.position();
    }
    LinearFit fit = LeastSquares.fit(names, rows, y);
    return new DialTest(fit, harmonics.periods(), List.copyOf(readings));
  }

  /**
   * Returns the travel per turn.
   *
   * @return travel [mm]
   */
  public double travelPerTurn() {
    return fit.value("T");
  }

  /** Tells whether both directions were run, so that the backlash is known. */
  public boolean hasBacklash() {
    return fit.names().contains("B");
  }

  /**
   * Returns the backlash as observed, hysteresis of the indicator included.
   *
   * @return backlash [mm]
   */
  public double backlash() {
    if (!hasBacklash()) {
      throw new IllegalArgumentException(
          "readings: all approach from one side; backlash needs runs both ways");
    }
    return fit.value("B");
  }

  /** Returns the harmonic number {@code k}, counted from 1. */
  public Harmonic harmonic(int k) {
    return Harmonic.of(fit, k);
  }

  /**
   * Returns the error of the dial by the fitted model, relative to the nominal travel and to dial
   * position 0, without backlash.
   *
   * @param turns dial position [turns]
   * @param nominal nominal travel per turn [mm]
   * @return fitted position less nominal position [mm]
   */
  public double error(double turns, double nominal) {
    return (travelPerTurn() - nominal) * turns + periodic(turns) - periodic(0);
  }

  private double periodic(double turns) {
    double sum = 0;
    for (int k = 1; k <= periods.size(); k++) {
      double phase = turns / periods.get(k - 1);
      sum +=
          fit.value("a" + k) * HarmonicDesign.cosine(phase)
              + fit.value("b" + k) * HarmonicDesign.sine(phase);
    }
    return sum;
  }

  /**
   * Returns the scatter of the travel per turn from run to run, fitted one by one.
   *
   * @return standard uncertainty of T from the runs, 0 for fewer than two runs [mm]
   */
  public double runScatter() {
    SortedMap<Integer, List<DialReading>> byRun = new TreeMap<>();
    for (DialReading r : readings) {
      byRun.computeIfAbsent(r.run(), k -> new ArrayList<>()).add(r);
    }
    List<Double> slopes = new ArrayList<>();
    double[] p = periods.stream().mapToDouble(Double::doubleValue).toArray();
    for (List<DialReading> run : byRun.values()) {
      if (run.size() > fit.names().size() - byRun.size() + 2) {
        slopes.add(of(run, p).travelPerTurn());
      }
    }
    if (slopes.size() < 2) {
      return 0;
    }
    double[] values = slopes.stream().mapToDouble(Double::doubleValue).toArray();
    return Sample.of(values).uncertaintyOfMean(0);
  }

  /** Names runs that lack a reading at some position that others have. */
  public List<String> gaps() {
    List<String> gaps = new ArrayList<>();
    for (int direction : new int[] {1, -1}) {
      SortedSet<Double> places = new TreeSet<>();
      SortedMap<Integer, SortedSet<Double>> byRun = new TreeMap<>();
      for (DialReading r : readings) {
        if (r.direction() == direction) {
          places.add(r.turns());
          byRun.computeIfAbsent(r.run(), k -> new TreeSet<>()).add(r.turns());
        }
      }
      byRun.forEach(
          (run, seen) -> {
            for (double place : places) {
              if (!seen.contains(place)) {
                gaps.add(
                    "no reading: run "
                        + run
                        + ", "
                        + Numbers.significant(place, 6)
                        + " turns, "
                        + (direction > 0 ? "turned up" : "turned down"));
              }
            }
          });
    }
    return gaps;
  }

  /** Names readings far from the fitted curve; none is dropped. */
  public List<String> outliers() {
    List<String> found = new ArrayList<>();
    double[] residuals = fit.residuals().toArray();
    for (int i : Outliers.robust(Sample.of(residuals))) {
      DialReading r = readings.get(i);
      found.add(
          "run "
              + r.run()
              + ", "
              + Numbers.significant(r.turns(), 6)
              + " turns, "
              + (r.direction() > 0 ? "turned up" : "turned down")
              + ": "
              + Numbers.fixed(residuals[i] * 1000, 1)
              + " µm from the curve");
    }
    return found;
  }

  /**
   * Says what to do about a wrong travel per turn.
   *
   * @param gain relative gain error {@code T/T_nom - 1} [-]
   * @param expanded its expanded uncertainty [-]
   * @param travel longest move made without setting the dial anew [mm]
   * @param division one division of the dial [mm]
   */
  public static String remedy(double gain, double expanded, double travel, double division) {
    double size = Math.abs(gain);
    if (size <= expanded) {
      return "not proven: the gain error is within its uncertainty; change nothing";
    }
    if (size * travel <= division / 2) {
      return "invisible: less than half a division over the longest move; change nothing";
    }
    if (size * travel <= 2 * division) {
      return "a printed factor is enough: true travel = dial reading x "
          + Numbers.fixed(1 + gain, 5);
    }
    return "change the number of divisions or the gear pair; accept what is left below "
        + Numbers.fixed(1000 * Math.max(division / 2, expanded * travel), 1)
        + " µm over the longest move";
  }
}
