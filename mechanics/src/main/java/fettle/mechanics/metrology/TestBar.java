package fettle.mechanics.metrology;

/** A test bar held at one end, drooping under its own weight and under the indicator. */
public final class TestBar {

  private TestBar() {}

  /**
   * Returns the weight of a round bar for each millimetre.
   *
   * @param diameter outside diameter [mm]
   * @param bore inside diameter, 0 for a solid bar [mm]
   * @param density density [t/mm3]
   * @param gravity acceleration of gravity [mm/s2]
   * @return weight per length [N/mm]
   */
  public static double weight(double diameter, double bore, double density, double gravity) {
    return density * gravity * Math.PI / 4 * (diameter * diameter - bore * bore);
  }

  /**
   * Returns the second moment of area of a round bar.
   *
   * @param diameter outside diameter [mm]
   * @param bore inside diameter, 0 for a solid bar [mm]
   * @return second moment [mm4]
   */
  public static double secondMoment(double diameter, double bore) {
    Require.positive("D", diameter);
    if (!(bore >= 0 && bore < diameter)) {
      throw new IllegalArgumentException(
          "bore: found " + bore + " mm, expected 0 or more and less than D = " + diameter + " mm");
    }
    return Math.PI / 64 * (Math.pow(diameter, 4) - Math.pow(bore, 4));
  }

  /**
   * Returns the sag {@code w z^2 (6L^2 - 4Lz + z^2)/(24EI) + F z^2 (3L - z)/(6EI)}.
   *
   * @param z place, 0 at the root, up to L [mm]
   * @param length free length L [mm]
   * @param weight weight per length [N/mm]
   * @param force end force, downwards [N]
   * @param rigidity E times I [N mm2]
   * @return sag, downwards [mm]
   */
  public static double sag(double z, double length, double weight, double force, double rigidity) {
    Require.positive("L", length);
    Require.positive("E*I", rigidity);
    if (!(z >= 0 && z <= length)) {
      throw new IllegalArgumentException(
          "z: found " + z + " mm, expected 0 to L = " + length + " mm");
    }
    double own = weight * z * z * (6 * length * length - 4 * length * z + z * z) / 24;
    double end = force * z * z * (3 * length - z) / 6;
    return (own + end) / rigidity;
  }
}
