package fettle.mechanics.loop;

/** How springs of machine and work show on the diameter that is turned. */
public final class TurnedProfile {

  private TurnedProfile() {}

  /**
   * Excess of diameter between centres: {@code 2 Fp [(1-x/L)^2/kA + (x/L)^2/kB + 1/kT + x^2(L-x)^2
   * /(3EIL)]}.
   *
   * @param force radial force Fp [N]
   * @param x place of the tool from the headstock centre [mm]
   * @param length distance between the centres [mm]
   * @param bending stiffness EI of the work [N mm2]
   * @param headstock radial stiffness at the headstock centre [N/mm]
   * @param tailstock radial stiffness at the tailstock centre [N/mm]
   * @param tool radial stiffness of the tool side [N/mm]
   * @return diameter left too large [mm]
   * @see Sources#PROFILE
   */
  public static double betweenCentres(
      double force,
      double x,
      double length,
      double bending,
      double headstock,
      double tailstock,
      double tool) {
    double s = x / length;
    double work = x * x * (length - x) * (length - x) / (3 * bending * length);
    return 2 * force * ((1 - s) * (1 - s) / headstock + s * s / tailstock + 1 / tool + work);
  }
}
