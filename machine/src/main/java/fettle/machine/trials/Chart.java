package fettle.machine.trials;

import fettle.mechanics.base.Unit;
import java.util.List;

/**
 * Readings of one figure over the years, with the limits that its settled time gives.
 *
 * @param points the readings in order of time
 * @param settled how many of the first of them set the limits
 * @param centre mean while settled [coherent]
 * @param warning half-width that 19 of 20 readings keep within [coherent]
 * @param action half-width that all but 27 in 10000 keep within [coherent]
 * @param averageAction half-width for the weighted average at each point [coherent]
 * @param unit unit in which it is shown
 * @param signals what stands out, in words
 * @param service what the running hours say of the next service; empty if nothing is stated
 */
public record Chart(
    List<Point> points,
    int settled,
    double centre,
    double warning,
    double action,
    List<Double> averageAction,
    Unit unit,
    List<String> signals,
    String service) {

  /** Keeps its own copies. */
  public Chart {
    points = List.copyOf(points);
    averageAction = List.copyOf(averageAction);
    signals = List.copyOf(signals);
  }

  /**
   * One reading.
   *
   * @param day days since 1970 [-]
   * @param hours running hours [h]
   * @param value the reading [coherent]
   * @param average exponentially weighted average so far [coherent]
   */
  public record Point(double day, double hours, double value, double average) {}
}
