package fettle.mechanics.shafts;

/**
 * How a round bar gives under the tool: in the chuck, between centres, in the chuck with the
 * tailstock. The force across the bar is what matters for size.
 *
 * @see Sources#WORK
 */
public final class HeldWork {

  private HeldWork() {}

  /**
   * Returns the bending stiffness of a round bar.
   *
   * @param modulus E [MPa]
   * @param diameter d [mm]
   * @param bore bore, 0 if solid [mm]
   * @return E I [N mm2]
   */
  public static double bending(double modulus, double diameter, double bore) {
    Need.positive("d", diameter);
    if (!(bore >= 0 && bore < diameter)) {
      throw new IllegalArgumentException(
          "bore: found " + bore + " mm, expected 0 to less than the diameter");
    }
    return Need.positive("E", modulus) * Math.PI / 64 * (Math.pow(diameter, 4) - Math.pow(bore, 4));
  }

  /**
   * Returns the give of a chucked bar at its end: {@code F L^3/(3EI) + F L^2/kt}.
   *
   * @param force F [N]
   * @param length L out of the chuck [mm]
   * @param bending E I [N mm2]
   * @param tilt stiffness of the grip against tilting; infinity if rigid [N mm/rad]
   * @return give [mm]
   */
  public static double chucked(double force, double length, double bending, double tilt) {
    double l = Need.positive("L", length);
    return force * l * l * (l / (3 * bending) + 1 / tilt);
  }

  /**
   * Returns the give between centres at x from the headstock: {@code F x^2 (L-x)^2/(3EIL) +
   * F((1-x/L)^2/kh + (x/L)^2/kt)}.
   *
   * @param force F [N]
   * @param length L [mm]
   * @param place x from the headstock centre [mm]
   * @param bending E I [N mm2]
   * @param head stiffness of the headstock centre; infinity if rigid [N/mm]
   * @param tail stiffness of the tailstock centre; infinity if rigid [N/mm]
   * @return give [mm]
   */
  public static double betweenCentres(
      double force, double length, double place, double bending, double head, double tail) {
    double l = Need.positive("L", length);
    double x = Need.within("x", place, 0, l);
    double r = x / l;
    return force
        * (x * x * (l - x) * (l - x) / (3 * bending * l) + (1 - r) * (1 - r) / head + r * r / tail);
  }

  /**
   * Returns the give at x from the chuck with the other end on the tailstock. With a rigid
   * tailstock this is {@code F a^3 b^2 (3L+b)/(12EIL^3)}, b = L-a.
   *
   * @param force F [N]
   * @param length L from chuck to centre [mm]
   * @param place a from the chuck [mm]
   * @param bending E I [N mm2]
   * @param tail stiffness of the tailstock; infinity if rigid [N/mm]
   * @return give [mm]
   */
  public static double chuckAndTailstock(
      double force, double length, double place, double bending, double tail) {
    double l = Need.positive("L", length);
    double a = Need.within("x", place, 0, l);
    double unit = a * a * (3 * l - a) / (6 * bending);
    double reaction = force * unit / (1 / tail + l * l * l / (3 * bending));
    return force * a * a * a / (3 * bending) - reaction * unit;
  }

  /**
   * Returns the longest stick-out for a give: {@code (3 E I delta/F)^(1/3)}.
   *
   * @param force F [N]
   * @param bending E I [N mm2]
   * @param give delta [mm]
   * @return L [mm]
   */
  public static double longestOverhang(double force, double bending, double give) {
    return Math.cbrt(3 * bending * Need.positive("delta", give) / Need.positive("F", force));
  }
}
