package fettle.mechanics.fits;

/**
 * Elastic constants of one part.
 *
 * @param modulus Young's modulus [MPa]
 * @param poisson Poisson's ratio [-]
 */
public record Elasticity(double modulus, double poisson) {

  /** Refuses what no workshop material has. */
  public Elasticity {
    if (!(modulus > 0) || !(modulus < 1e7)) {
      throw new IllegalArgumentException("E = " + modulus + " MPa: must be above 0");
    }
    if (!(poisson >= 0) || !(poisson < 0.5)) {
      throw new IllegalArgumentException(
          "Poisson's ratio " + poisson + ": must lie from 0 to below 0.5");
    }
  }
}
