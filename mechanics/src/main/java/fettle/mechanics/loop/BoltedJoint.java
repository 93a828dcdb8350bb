package fettle.mechanics.loop;

/** Plates clamped by a bolt. */
public final class BoltedJoint {

  private BoltedJoint() {}

  /**
   * Stiffness of a hollow cone frustum: {@code pi E d tan(a) / ln(((2 t tan a + D - d)(D + d)) /
   * ((2 t tan a + D + d)(D - d)))}.
   *
   * @param modulus Young's modulus [MPa]
   * @param hole diameter of the bolt [mm]
   * @param small diameter of the small end, above the bolt's [mm]
   * @param height height of the frustum [mm]
   * @param tangent tangent of the half angle [-]
   * @return stiffness [N/mm]
   * @see Sources#SHIGLEY
   */
  public static double frustum(
      double modulus, double hole, double small, double height, double tangent) {
    double wide = small + 2 * height * tangent;
    return Math.PI
        * modulus
        * hole
        * tangent
        / Math.log((wide - hole) * (small + hole) / ((wide + hole) * (small - hole)));
  }

  /**
   * Stiffness of a stack of plates, frusta growing from both ends to the middle of the grip.
   *
   * @param thickness thicknesses from one end to the other [mm]
   * @param modulus Young's moduli in the same order [MPa]
   * @param hole diameter of the bolt [mm]
   * @param head bearing diameter at both ends [mm]
   * @param tangent tangent of the half angle [-]
   * @return stiffness [N/mm]
   * @see Sources#SHIGLEY
   */
  public static double plates(
      double[] thickness, double[] modulus, double hole, double head, double tangent) {
    double grip = 0;
    for (double t : thickness) {
      grip += t;
    }
    double compliance = 0;
    double at = 0;
    for (int i = 0; i < thickness.length; i++) {
      double end = at + thickness[i];
      double nearest = Math.min(at, grip / 2);
      double upTo = Math.min(end, grip / 2);
      compliance += layer(modulus[i], hole, head + 2 * nearest * tangent, upTo - nearest, tangent);
      double from = Math.max(at, grip / 2);
      double to = Math.max(end, grip / 2);
      compliance += layer(modulus[i], hole, head + 2 * (grip - to) * tangent, to - from, tangent);
      at = end;
    }
    return 1 / compliance;
  }

  private static double layer(
      double modulus, double hole, double small, double height, double tangent) {
    return height > 1e-9 ? 1 / frustum(modulus, hole, small, height, tangent) : 0;
  }
}
