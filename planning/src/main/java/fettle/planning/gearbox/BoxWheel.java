package fettle.planning.gearbox;

import fettle.mechanics.gears.Gear;

/**
 * One wheel of a box, as it is made.
 *
 * @param name what it is, as a part of the change
 * @param gear its teeth
 * @param tip tip diameter [mm]
 * @param width face width [mm]
 * @param bore bore [mm]
 * @param fixing how it sits on its shaft
 * @param mate what it runs with
 * @param axes distance of the two axes [mm]
 * @param count how many are made
 */
public record BoxWheel(
    String name,
    Gear gear,
    double tip,
    double width,
    double bore,
    Fixing fixing,
    String mate,
    double axes,
    int count) {

  /** How a wheel sits on its shaft. */
  public enum Fixing {
    KEYED,
    SLIDING,
    LOOSE
  }

  /** Least tolerance of tooth thickness that a wheel cut at home needs (common practice) [mm]. */
  private static final double THICKNESS_TOLERANCE = 0.06;

  /**
   * Returns the largest thickness allowance: half of the backlash that ISO/TR 10064-2 recommends,
   * (2/3)(0.06 + 0.0005 a + 0.03 m), taken from each of the two wheels.
   *
   * @return allowance E_sns, negative [mm]
   */
  double allowance() {
    double play = 2.0 / 3 * (0.06 + 0.0005 * axes + 0.03 * gear.module());
    return -play / (2 * Math.cos(gear.rack().angle()));
  }

  /**
   * Returns the largest span over {@code gear().spanTeeth()} teeth.
   *
   * @return span [mm]
   */
  public double spanMost() {
    return gear.span(gear.spanTeeth(), allowance());
  }

  /**
   * Returns the least span.
   *
   * @return span [mm]
   */
  public double spanLeast() {
    return gear.span(gear.spanTeeth(), allowance() - THICKNESS_TOLERANCE);
  }
}
