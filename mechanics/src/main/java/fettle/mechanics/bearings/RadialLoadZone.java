package fettle.mechanics.bearings;

/**
 * Radial load of a bearing with radial play: how far the rings shift, how the load spreads.
 *
 * @see Sources#SJOVALL
 */
public final class RadialLoadZone {

  private static final int POINTS = 2000;

  private final int elements;
  private final double stiffness;
  private final double exponent;
  private final double play;

  /**
   * Describes the bearing.
   *
   * @param elements rolling elements Z
   * @param stiffness Kn of {@code Q = Kn delta^n} [N/mm^n]
   * @param exponent n, 1.5 for balls and 10/9 for rollers [-]
   * @param play diametral clearance Pd, negative for preload [mm]
   */
  public RadialLoadZone(int elements, double stiffness, double exponent, double play) {
    if (elements < 3) {
      throw new IllegalArgumentException("Z: found " + elements + ", expected 3 or more");
    }
    this.elements = elements;
    this.stiffness = Need.positive("Kn", stiffness);
    this.exponent = Need.within("exponent", exponent, 1, 2);
    this.play = Need.within("Pd", play, -1, 10);
  }

  /**
   * Returns the radial load integral {@code Jr = 1/pi int [1-(1-cos psi)/(2 eps)]^n cos psi dpsi}
   * over the loaded half zone.
   *
   * @param extent eps, above 0; 0.5 without play, above 1 with all elements loaded [-]
   * @param exponent n [-]
   * @return Jr [-]
   */
  public static double integral(double extent, double exponent) {
    Need.positive("eps", extent);
    double end = extent >= 1 ? Math.PI : Math.acos(1 - 2 * extent);
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      double psi = end * (i + 0.5) / POINTS;
      double part = 1 - (1 - Math.cos(psi)) / (2 * extent);
      sum += part > 0 ? Math.pow(part, exponent) * Math.cos(psi) : 0;
    }
    return sum * end / POINTS / Math.PI;
  }

  /**
   * Returns the radial shift of the rings under a load.
   *
   * @param load Fr, above 0 [N]
   * @return dr, from the middle of the play [mm]
   */
  public double shift(double load) {
    Need.positive("Fr", load);
    double low = Math.max(0, play / 2);
    double high = low + Math.pow(10 * load / (elements * stiffness), 1 / exponent);
    for (int i = 0; i < 100 && load(high) < load; i++) {
      high = low + 2 * (high - low);
    }
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (load(middle) < load) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  /**
   * Returns the load that shifts the rings so far.
   *
   * @param shift dr [mm]
   * @return Fr [N]
   */
  public double load(double shift) {
    double greatest = shift - play / 2;
    if (!(greatest > 0) || shift <= 0) {
      return 0;
    }
    return elements * stiffness * Math.pow(greatest, exponent) * integral(extent(shift), exponent);
  }

  /**
   * Returns the extent of the load zone: {@code eps = 0.5 (1 - Pd/(2 dr))}.
   *
   * @param shift dr [mm]
   * @return eps [-]
   */
  public double extent(double shift) {
    return 0.5 * (1 - play / (2 * shift));
  }

  /**
   * Returns the greatest element load: {@code Kn (dr - Pd/2)^n}.
   *
   * @param shift dr [mm]
   * @return Qmax [N]
   */
  public double greatest(double shift) {
    return stiffness * Math.pow(Math.max(0, shift - play / 2), exponent);
  }
}
