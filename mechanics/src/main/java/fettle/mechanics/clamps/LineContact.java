package fettle.mechanics.clamps;

/**
 * A round face pressed on a flat one along a line, after Hertz.
 *
 * @param force force F [N]
 * @param radius radius R of the round face [mm]
 * @param length length L of contact [mm]
 * @param modulus common modulus E*, 1/E* = (1 - nu1²)/E1 + (1 - nu2²)/E2 [MPa]
 */
public record LineContact(double force, double radius, double length, double modulus) {

  /** Refuses sizes that are not above 0. */
  public LineContact {
    if (!(force >= 0) || !(radius > 0) || !(length > 0) || !(modulus > 0)) {
      throw new IllegalArgumentException(
          "line contact needs F >= 0 N and R, L, E* above 0; found "
              + force
              + ", "
              + radius
              + ", "
              + length
              + ", "
              + modulus);
    }
  }

  /**
   * Common modulus of two materials.
   *
   * @param modulus1 E1 [MPa]
   * @param poisson1 nu1 [-]
   * @param modulus2 E2 [MPa]
   * @param poisson2 nu2 [-]
   * @return E* [MPa]
   */
  public static double commonModulus(
      double modulus1, double poisson1, double modulus2, double poisson2) {
    return 1 / ((1 - poisson1 * poisson1) / modulus1 + (1 - poisson2 * poisson2) / modulus2);
  }

  /**
   * Greatest pressure sqrt(F E*&#47;(pi L R)).
   *
   * @return p0 [MPa]
   */
  public double greatestPressure() {
    return Math.sqrt(force * modulus / (Math.PI * length * radius));
  }

  /**
   * Half the width of the strip in contact, sqrt(4 F R/(pi L E*)).
   *
   * @return b [mm]
   */
  public double halfWidth() {
    return Math.sqrt(4 * force * radius / (Math.PI * length * modulus));
  }
}
