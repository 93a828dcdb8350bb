package fettle.mechanics.loop;

import fettle.mechanics.base.Unit;
import fettle.mechanics.solids.Limits;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * One elastic element of the loop: a joint between two rigid bodies, or an elastic member between
 * its two ends. Its stiffness is that at a point, in machine axes.
 *
 * @param name what it is called
 * @param from body on one side
 * @param to body on the other side
 * @param at point of its stiffness: x, y, z [mm]
 * @param stiffness 36 entries by rows, ux uy uz rx ry rz by Fx Fy Fz Mx My Mz; 0 where it gives way
 *     freely [N/mm, N, N mm/rad]
 * @param doubt one sigma of the stiffness as a factor, 1 if it is known [-]
 * @param rides axes whose travel carries the point along, each with its direction of length 1
 */
public record Link(
    String name,
    String from,
    String to,
    List<Double> at,
    List<Double> stiffness,
    double doubt,
    Map<String, List<Double>> rides) {

  /** Refuses what cannot be an element. */
  public Link {
    at = List.copyOf(at);
    stiffness = List.copyOf(stiffness);
    rides = Map.copyOf(rides);
    if (from.equals(to)) {
      throw new IllegalArgumentException(name + ": joins " + from + " to itself");
    }
    if (!(doubt >= 1)) {
      throw Limits.outside(name + ": doubt", doubt, Unit.ONE, "1 or more (a factor)");
    }
    if (at.size() != 3 || stiffness.size() != 36) {
      throw new IllegalArgumentException(
          name + ": needs a point of 3 and a stiffness of 36 numbers");
    }
  }

  /**
   * Returns an elastic member or a joint by its compliance.
   *
   * @param name what it is called
   * @param from body on one side
   * @param to body on the other side
   * @param at point of the compliance: x, y, z [mm]
   * @param compliance compliance of the far side against the near side at that point
   * @param doubt one sigma of the stiffness as a factor, 1 if it is known [-]
   */
  public static Link of(
      String name, String from, String to, double[] at, Compliance compliance, double doubt) {
    return new Link(name, from, to, list(at), list(compliance.stiffness()), doubt, Map.of());
  }

  /**
   * Returns a joint by its springs.
   *
   * @param name what it is called
   * @param from body on one side
   * @param to body on the other side
   * @param at its middle: x, y, z [mm]
   * @param springs six stiffnesses along and about x, y, z; 0 where it slides or turns freely [N/mm
   *     and N mm/rad]
   * @param doubt one sigma of the stiffness as a factor, 1 if it is known [-]
   */
  public static Link springs(
      String name, String from, String to, double[] at, double[] springs, double doubt) {
    double[] k = new double[36];
    for (int i = 0; i < 6; i++) {
      if (!(springs[i] >= 0)) {
        throw Limits.outside(name + ": stiffness", springs[i], Unit.ONE, "0 or more");
      }
      k[7 * i] = springs[i];
    }
    return new Link(name, from, to, list(at), list(k), doubt, Map.of());
  }

  /**
   * Returns this element riding along with an axis.
   *
   * @param axis name of the axis
   * @param direction direction of positive travel, of length 1: x, y, z [-]
   */
  public Link riding(String axis, double... direction) {
    Map<String, List<Double>> more = new java.util.LinkedHashMap<>(rides);
    more.put(axis, list(direction));
    return new Link(name, from, to, at, stiffness, doubt, more);
  }

  /**
   * Returns this element so many times stiffer.
   *
   * @param factor the factor, above 0 [-]
   */
  public Link stiffer(double factor) {
    return new Link(
        name, from, to, at, stiffness.stream().map(k -> k * factor).toList(), doubt, rides);
  }

  /**
   * Returns this element with another doubt.
   *
   * @param sigma one sigma of the stiffness as a factor [-]
   */
  public Link doubted(double sigma) {
    return new Link(name, from, to, at, stiffness, sigma, rides);
  }

  /** Returns this element where it is when the axes have travelled. */
  Link moved(Map<String, Double> travel) {
    double[] p = at.stream().mapToDouble(Double::doubleValue).toArray();
    rides.forEach(
        (axis, direction) -> {
          double s = travel.getOrDefault(axis, 0.0);
          for (int a = 0; a < 3; a++) {
            p[a] += s * direction.get(a);
          }
        });
    return new Link(name, from, to, list(p), stiffness, doubt, rides);
  }

  /** Stiffness for twists that are referred to another point. */
  double[] stiffnessAbout(double[] origin) {
    double[] t =
        Compliance.shift(at.get(0) - origin[0], at.get(1) - origin[1], at.get(2) - origin[2]);
    double[] k = stiffness.stream().mapToDouble(Double::doubleValue).toArray();
    return Compliance.times(Compliance.times(Compliance.transposed(t), k), t);
  }

  static List<Double> list(double[] values) {
    return Arrays.stream(values).boxed().toList();
  }
}
