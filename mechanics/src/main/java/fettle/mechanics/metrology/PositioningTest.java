package fettle.mechanics.metrology;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * Accuracy and repeatability of positioning an axis after ISO 230-2:2014, from several runs to the
 * same targets in one or both directions. Deviations are actual less target; the dial may be the
 * target.
 *
 * @param targets what was found at each target, in order of position
 */
public record PositioningTest(List<Target> targets) {

  /**
   * What was found at one target.
   *
   * @param position the target [mm]
   * @param up deviations going up, in order of the runs; empty if never approached so
   * @param down deviations going down
   */
  public record Target(double position, List<Double> up, List<Double> down) {

    private static OptionalDouble mean(List<Double> list) {
      return list.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sample(list).mean());
    }

    private static Sample sample(List<Double> list) {
      return Sample.of(list.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Returns the mean deviation going up [mm]. */
    OptionalDouble meanUp() {
      return mean(up);
    }

    /** Returns the mean deviation going down [mm]. */
    OptionalDouble meanDown() {
      return mean(down);
    }

    /**
     * Returns the standard deviation going up.
     *
     * @return standard deviation, 0 for fewer than two runs [mm]
     */
    public double deviationUp() {
      return up.size() < 2 ? 0 : sample(up).standardDeviation();
    }

    /**
     * Returns the standard deviation going down.
     *
     * @return standard deviation, 0 for fewer than two runs [mm]
     */
    public double deviationDown() {
      return down.size() < 2 ? 0 : sample(down).standardDeviation();
    }

    /**
     * Returns the reversal value: mean going up less mean going down.
     *
     * @return reversal value [mm]
     */
    public double reversal() {
      return meanUp().orElseThrow() - meanDown().orElseThrow();
    }

    /**
     * Returns the mean of both directions, or of the one that was tested.
     *
     * @return mean bidirectional deviation [mm]
     */
    public double mean() {
      if (up.isEmpty()) {
        return meanDown().orElseThrow();
      }
      return down.isEmpty()
          ? meanUp().orElseThrow()
          : (meanUp().orElseThrow() + meanDown().orElseThrow()) / 2;
    }

    /**
     * Returns the repeatability {@code max(2s_up + 2s_down + |B|, 4s_up, 4s_down)}.
     *
     * @return bidirectional repeatability of this target [mm]
     */
    public double repeatability() {
      double one = 4 * deviationUp();
      double other = 4 * deviationDown();
      double both = up.isEmpty() || down.isEmpty() ? 0 : (one + other) / 2 + Math.abs(reversal());
      return Math.max(both, Math.max(one, other));
    }
  }

  /** Groups readings by target. Two targets closer than 1 nm are the same. */
  public static PositioningTest of(List<PositioningReading> readings) {
    Require.atLeast("readings", readings.size(), 1);
    SortedMap<Double, List<PositioningReading>> byTarget = new TreeMap<>();
    for (PositioningReading r : readings) {
      byTarget.computeIfAbsent(key(r), k -> new ArrayList<>()).add(r);
    }
    List<Target> targets = new ArrayList<>();
    byTarget.forEach(
        (position, list) ->
            targets.add(new Target(position, deviations(list, 1), deviations(list, -1))));
    PositioningTest test = new PositioningTest(List.copyOf(targets));
    Require.atLeast("targets", targets.size(), 2);
    if (!test.has(1) && !test.has(-1)) {
      throw new IllegalArgumentException(
          "readings: no direction reaches every target with at least 2 runs; repeat the runs");
    }
    return test;
  }

  private static double key(PositioningReading r) {
    return Math.rint(r.target() * 1e6) / 1e6;
  }

  private static List<Double> deviations(List<PositioningReading> list, int direction) {
    return list.stream()
        .filter(r -> r.direction() == direction)
        .map(PositioningReading::deviation)
        .toList();
  }

  /** Names runs that lack a reading at some target, and targets read twice in a run. */
  public static List<String> gaps(List<PositioningReading> readings) {
    SortedSet<Double> targets = new TreeSet<>();
    SortedSet<Integer> runs = new TreeSet<>();
    SortedSet<Integer> directions = new TreeSet<>();
    SortedMap<String, Integer> seen = new TreeMap<>();
    for (PositioningReading r : readings) {
      targets.add(key(r));
      runs.add(r.run());
      directions.add(r.direction());
      seen.merge(cell(key(r), r.direction(), r.run()), 1, Integer::sum);
    }
    List<String> gaps = new ArrayList<>();
    for (int direction : directions) {
      for (int run : runs) {
        for (double target : targets) {
          int count = seen.getOrDefault(cell(target, direction, run), 0);
          if (count != 1) {
            gaps.add(
                (count == 0 ? "no reading: " : "read " + count + " times: ")
                    + cell(target, direction, run));
          }
        }
      }
    }
    return gaps;
  }

  private static String cell(double target, int direction, int run) {
    return "target "
        + Numbers.significant(target, 9)
        + " mm, run "
        + run
        + (direction > 0 ? ", going up" : ", going down");
  }

  /**
   * Names readings that Grubbs' test finds extreme within their cell, or cells too small for it.
   */
  public List<String> outliers() {
    List<String> found = new ArrayList<>();
    for (Target t : targets) {
      outlier(found, t, t.up(), "going up");
      outlier(found, t, t.down(), "going down");
    }
    return found;
  }

  private static void outlier(List<String> found, Target t, List<Double> cell, String way) {
    if (cell.size() < 3) {
      return;
    }
    Sample sample = Target.sample(cell);
    Outliers.Grubbs grubbs = Outliers.grubbs(sample, 0.05, Outliers.Side.BOTH);
    if (grubbs.isOutlier()) {
      found.add(
          "target "
              + Numbers.significant(t.position(), 9)
              + " mm, "
              + way
              + ", run "
              + (grubbs.index() + 1)
              + ": deviation "
              + Numbers.fixed(sample.values()[grubbs.index()] * 1000, 1)
              + " µm");
    }
  }

  /** Tells whether every target was approached at least twice in this direction. */
  public boolean has(int direction) {
    return targets.stream().allMatch(t -> (direction > 0 ? t.up() : t.down()).size() >= 2);
  }

  /** Tells whether both directions were tested at every target. */
  public boolean isBidirectional() {
    return has(1) && has(-1);
  }

  private double highest(ToDoubleFunction<Target> of) {
    return targets.stream().mapToDouble(of).max().orElseThrow();
  }

  private double lowest(ToDoubleFunction<Target> of) {
    return targets.stream().mapToDouble(of).min().orElseThrow();
  }

  private void both() {
    if (!isBidirectional()) {
      throw new IllegalArgumentException(
          "readings: both directions are needed with at least 2 runs at every target");
    }
  }

  private static double edge(Target t, int direction, double deviations) {
    return direction > 0
        ? t.meanUp().orElseThrow() + deviations * t.deviationUp()
        : t.meanDown().orElseThrow() + deviations * t.deviationDown();
  }

  /**
   * Returns the reversal value B, the largest amount of the reversal of any target.
   *
   * @return reversal value of the axis [mm]
   */
  public double reversal() {
    both();
    return highest(t -> Math.abs(t.reversal()));
  }

  /**
   * Returns the mean reversal value, signed.
   *
   * @return mean reversal value [mm]
   */
  public double meanReversal() {
    both();
    return targets.stream().mapToDouble(Target::reversal).average().orElseThrow();
  }

  /**
   * Returns the unidirectional repeatability, largest {@code 4s}.
   *
   * @param direction +1 up, -1 down
   * @return repeatability [mm]
   */
  public double repeatability(int direction) {
    return highest(t -> 4 * (direction > 0 ? t.deviationUp() : t.deviationDown()));
  }

  /**
   * Returns the bidirectional repeatability R, the largest of the targets' own; not the larger of
   * the two unidirectional ones.
   *
   * @return repeatability [mm]
   */
  public double repeatability() {
    both();
    return highest(Target::repeatability);
  }

  /**
   * Returns the unidirectional systematic deviation.
   *
   * @param direction +1 up, -1 down
   * @return range of the mean deviations [mm]
   */
  public double systematic(int direction) {
    return highest(t -> edge(t, direction, 0)) - lowest(t -> edge(t, direction, 0));
  }

  /**
   * Returns the bidirectional systematic deviation E.
   *
   * @return range of the mean deviations of both directions [mm]
   */
  public double systematic() {
    both();
    return highest(t -> Math.max(edge(t, 1, 0), edge(t, -1, 0)))
        - lowest(t -> Math.min(edge(t, 1, 0), edge(t, -1, 0)));
  }

  /**
   * Returns the mean bidirectional deviation M.
   *
   * @return range of the means of both directions [mm]
   */
  public double meanDeviation() {
    both();
    return highest(Target::mean) - lowest(Target::mean);
  }

  /**
   * Returns the unidirectional accuracy.
   *
   * @param direction +1 up, -1 down
   * @return accuracy [mm]
   */
  public double accuracy(int direction) {
    return highest(t -> edge(t, direction, 2)) - lowest(t -> edge(t, direction, -2));
  }

  /**
   * Returns the bidirectional accuracy A.
   *
   * @return accuracy [mm]
   */
  public double accuracy() {
    both();
    return highest(t -> Math.max(edge(t, 1, 2), edge(t, -1, 2)))
        - lowest(t -> Math.min(edge(t, 1, -2), edge(t, -1, -2)));
  }

  /**
   * Returns the standard uncertainty of the mean reversal from the pooled scatter: {@code s_p^2
   * sum(1/n_up + 1/n_down)/m^2}.
   *
   * @return standard uncertainty [mm]
   */
  public double meanReversalUncertainty() {
    both();
    double sum = 0;
    for (Target t : targets) {
      sum += 1.0 / t.up().size() + 1.0 / t.down().size();
    }
    return pooled() * Math.sqrt(sum) / targets.size();
  }

  /**
   * Returns the range that pure scatter alone would give E: the mean range of as many means.
   *
   * @return noise floor of the systematic deviation [mm]
   */
  public double noiseFloor() {
    int means = 0;
    double readings = 0;
    for (Target t : targets) {
      for (List<Double> cell : List.of(t.up(), t.down())) {
        means += cell.isEmpty() ? 0 : 1;
        readings += cell.size();
      }
    }
    return ControlChart.rangeMean(Math.min(1000, means)) * pooled() / Math.sqrt(readings / means);
  }

  /**
   * Returns the standard deviation of a reading, pooled over all cells.
   *
   * @return standard deviation [mm]
   */
  public double pooled() {
    double squares = 0;
    double freedom = 0;
    for (Target t : targets) {
      for (List<Double> cell : List.of(t.up(), t.down())) {
        if (cell.size() >= 2) {
          squares += Target.sample(cell).sumOfSquares();
          freedom += cell.size() - 1.0;
        }
      }
    }
    return Math.sqrt(squares / freedom);
  }

  /**
   * Returns the drift of a direction: slope of the mean deviation of a run over its number.
   *
   * @param readings all readings
   * @param direction +1 up, -1 down
   * @return drift for one run [mm]
   */
  public static double drift(List<PositioningReading> readings, int direction) {
    SortedMap<Integer, List<Double>> byRun = new TreeMap<>();
    for (PositioningReading r : readings) {
      if (r.direction() == direction) {
        byRun.computeIfAbsent(r.run(), k -> new ArrayList<>()).add(r.deviation());
      }
    }
    if (byRun.size() < 3) {
      return 0;
    }
    double[] run = byRun.keySet().stream().mapToDouble(Integer::doubleValue).toArray();
    double[] mean = byRun.values().stream().mapToDouble(l -> Target.sample(l).mean()).toArray();
    return CalibrationLine.of(run, mean, 0).fit().value("y2");
  }
}
