package fettle.mechanics.screws;

/**
 * How the two ends of a screw are held. A plain bush longer than 1.5 d or a pair of bearings counts
 * as fixed, a single bearing or a nut as pinned (common practice).
 */
public enum EndFixity {
  FIXED_FREE(2, 1.875104),
  PINNED_PINNED(1, Math.PI),
  FIXED_PINNED(0.707, 3.926602),
  FIXED_FIXED(0.5, 4.730041);

  private final double lengthFactor;
  private final double waveNumber;

  EndFixity(double lengthFactor, double waveNumber) {
    this.lengthFactor = lengthFactor;
    this.waveNumber = waveNumber;
  }

  /**
   * Returns the buckling length as a share of the length.
   *
   * @return K [-]
   */
  public double lengthFactor() {
    return lengthFactor;
  }

  /**
   * Returns the first root of the bending vibration.
   *
   * @return kappa [-]
   */
  public double waveNumber() {
    return waveNumber;
  }
}
