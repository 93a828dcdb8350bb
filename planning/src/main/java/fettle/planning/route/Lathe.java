package fettle.planning.route;

import java.util.List;

/**
 * What a lathe can do, as far as a route asks.
 *
 * @param swing largest diameter over the cross slide [mm]
 * @param centres longest work between centres [mm]
 * @param bore bore of the spindle [mm]
 * @param speeds spindle speeds, any order [rad/s]
 * @param pitches pitches of thread it cuts; empty if any is supposed [mm]
 * @param tailstock whether there is a tailstock at present
 */
public record Lathe(
    double swing,
    double centres,
    double bore,
    List<Double> speeds,
    List<Double> pitches,
    Tailstock tailstock) {

  /** Whether there is a tailstock at present. */
  public enum Tailstock {
    THERE,
    STRIPPED
  }

  /** Keeps its own copies. */
  public Lathe {
    speeds = List.copyOf(speeds);
    pitches = List.copyOf(pitches);
    if (!(swing > 0) || !(centres > 0) || !(bore >= 0) || speeds.isEmpty()) {
      throw new IllegalArgumentException(
          "a lathe needs a swing and a length between centres above 0 mm, and a speed");
    }
    if (!speeds.stream().allMatch(s -> s > 0 && s < 1e5)) {
      throw new IllegalArgumentException("every spindle speed must lie above 0 rpm");
    }
  }

  double[] ladder() {
    return speeds.stream().mapToDouble(Double::doubleValue).toArray();
  }

  boolean cuts(double pitch) {
    return pitches.isEmpty() || pitches.stream().anyMatch(p -> Math.abs(p - pitch) < 2e-4 * pitch);
  }
}
