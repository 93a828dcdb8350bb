package fettle.mechanics.metrology;

import java.util.Map;

/**
 * A dial indicator and the largest errors it may have.
 *
 * @param division graduation [mm]
 * @param retrace retrace, hysteresis [mm]
 * @param repeatability repeatability [mm]
 * @param tenth error within any tenth of a turn [mm]
 * @param half error within any half turn [mm]
 * @param turn error within any turn [mm]
 * @param whole error over the whole range [mm]
 */
public record Indicator(
    double division,
    double retrace,
    double repeatability,
    double tenth,
    double half,
    double turn,
    double whole) {

  /** Size of the dial. */
  public enum Bezel {
    /** 50 mm and larger. */
    LARGE,
    /** Below 50 mm. */
    SMALL
  }

  /** Columns: range [mm], then retrace, repeatability, 1/10, 1/2, 1 turn, whole range [µm]. */
  private static final Map<Double, double[][]> LARGE =
      Map.of(
          0.01,
          new double[][] {
            {1, 3, 3, 5, 8, 8, 8},
            {3, 3, 3, 5, 8, 9, 10},
            {5, 3, 3, 5, 9, 10, 12},
            {10, 3, 3, 5, 9, 10, 15},
            {20, 5, 4, 8, 10, 15, 25}
          },
          0.005,
          new double[][] {{5, 3, 3, 5, 9, 10, 12}},
          0.001,
          new double[][] {
            {1, 2, 0.5, 2, 3.5, 4, 5}, {2, 2, 0.5, 2, 4, 5, 7}, {5, 3, 1, 3.5, 5, 6, 10}
          });

  private static final Map<Double, double[][]> SMALL =
      Map.of(
          0.01,
          new double[][] {{3, 4, 3, 8, 11, 12, 16}},
          0.001,
          new double[][] {{1, 2, 1, 2.5, 4, 4.5, 5}});

  /**
   * Returns an indicator that just keeps its limits (JIS B 7503:2011).
   *
   * @param division graduation, 0.01, 0.005 or 0.001 [mm]
   * @param range measuring range [mm]
   * @param bezel size of the dial
   */
  public static Indicator of(double division, double range, Bezel bezel) {
    Require.positive("range", range);
    Map<Double, double[][]> table = bezel == Bezel.LARGE ? LARGE : SMALL;
    for (double[] row : table.getOrDefault(division, new double[0][])) {
      if (range <= row[0]) {
        return new Indicator(
            division,
            row[1] / 1000,
            row[2] / 1000,
            row[3] / 1000,
            row[4] / 1000,
            row[5] / 1000,
            row[6] / 1000);
      }
    }
    throw new IllegalArgumentException(
        "division and range: found "
            + division
            + " mm with "
            + range
            + " mm, expected 0.01 mm up to 20 mm (small dial: 3 mm), 0.005 mm up to 5 mm or 0.001 mm"
            + " up to 5 mm (small dial: 1 mm); else state the uncertainty from your own check");
  }

  /** Returns the same indicator, worn or cheap: twice as bad (common practice). */
  public Indicator worn() {
    return new Indicator(
        division, 2 * retrace, 2 * repeatability, 2 * tenth, 2 * half, 2 * turn, 2 * whole);
  }

  /**
   * Returns the smallest step that a practised eye reads: a fifth of a 0.01 mm division, otherwise
   * a division (common practice).
   *
   * @return step [mm]
   */
  public double resolution() {
    return division >= 0.01 ? division / 5 : division;
  }

  /**
   * Returns the standard uncertainty of a difference of two readings within a tenth of a turn, the
   * plunger moving the same way: {@code u^2 = (tenth/sqrt(3))^2 + (repeat/(2 sqrt(3)))^2 +
   * res^2/12}.
   *
   * @param resolution smallest step read [mm]
   * @return standard uncertainty [mm]
   */
  public double uncertainty(double resolution) {
    double repeat = repeatability / (2 * Math.sqrt(3));
    return Math.sqrt(tenth * tenth / 3 + repeat * repeat + resolution * resolution / 12);
  }

  /**
   * Returns the same with the plunger reversed between the readings: the retrace is added as {@code
   * (retrace/(2 sqrt(3)))^2}.
   *
   * @param resolution smallest step read [mm]
   * @return standard uncertainty [mm]
   */
  public double uncertaintyReversed(double resolution) {
    return Math.hypot(uncertainty(resolution), retrace / (2 * Math.sqrt(3)));
  }
}
