package fettle.mechanics.screws;

import java.util.List;

/** Springs along the axis of a screw drive. */
public final class AxialStiffness {

  private AxialStiffness() {}

  /**
   * Screw held against thrust at one end, {@code k = E A/x}.
   *
   * @param elasticity E [MPa]
   * @param area cross-section A, usually from (d2 + d3)/2 [mm2]
   * @param x distance from the thrust bearing to the nut [mm]
   * @return k [N/mm]
   */
  public static double heldAtOneEnd(double elasticity, double area, double x) {
    check(elasticity, area, x);
    return elasticity * area / x;
  }

  /**
   * Screw held against thrust at both ends, {@code k = E A L/(x (L - x))}.
   *
   * @param elasticity E [MPa]
   * @param area cross-section A [mm2]
   * @param x distance from one thrust bearing to the nut, less than L [mm]
   * @param length distance between the thrust bearings, L [mm]
   * @return k [N/mm]
   */
  public static double heldAtBothEnds(double elasticity, double area, double x, double length) {
    check(elasticity, area, x);
    if (!(length > x)) {
      throw new IllegalArgumentException(
          "x = " + x + " mm: expected less than the length L = " + length + " mm");
    }
    return elasticity * area * length / (x * (length - x));
  }

  /**
   * Thread contact, an estimate: {@code E A3/(0.5 d)} of the screw in series with {@code En An/(0.4
   * d)} of the nut, An = pi d^2/4.
   *
   * @param d major diameter [mm]
   * @param core core diameter d3 [mm]
   * @param elasticity E of the screw [MPa]
   * @param nutElasticity En of the nut [MPa]
   * @return k [N/mm]
   */
  public static double thread(double d, double core, double elasticity, double nutElasticity) {
    check(elasticity, nutElasticity, core);
    if (!(d >= core)) {
      throw new IllegalArgumentException("d = " + d + " mm: expected not below d3");
    }
    double screw = elasticity * Math.PI / 4 * core * core / (0.5 * d);
    double nut = nutElasticity * Math.PI / 4 * d * d / (0.4 * d);
    return inSeries(List.of(screw, nut));
  }

  /**
   * Springs one behind the other, {@code 1/k = sum 1/k_i}.
   *
   * @param springs stiffness of each, all above 0 [N/mm]
   * @return stiffness of the chain [N/mm]
   */
  public static double inSeries(List<Double> springs) {
    if (springs.isEmpty()) {
      throw new IllegalArgumentException("k: expected at least one stiffness");
    }
    double compliance = 0;
    for (double k : springs) {
      if (!(k > 0)) {
        throw new IllegalArgumentException("k = " + k + " N/mm: expected more than 0");
      }
      compliance += 1 / k;
    }
    return 1 / compliance;
  }

  private static void check(double a, double b, double c) {
    if (!(a > 0) || !(b > 0) || !(c > 0)) {
      throw new IllegalArgumentException(
          "E, area and distance: expected more than 0, found " + a + ", " + b + ", " + c);
    }
  }
}
