package fettle.mechanics.solids;

import fettle.mechanics.base.Unit;

/**
 * An isotropic elastic material.
 *
 * @param modulus Young's modulus, above 0 [MPa]
 * @param poisson Poisson's ratio, above -1 and below 0.5 [-]
 */
public record Elastic(double modulus, double poisson) {

  /** Refuses what no material can be. */
  public Elastic {
    Limits.positive("E", modulus, Unit.MPA);
    Limits.poisson(poisson);
  }

  /**
   * Shear modulus.
   *
   * @return {@code E/(2(1+nu))} [MPa]
   */
  public double shear() {
    return modulus / (2 * (1 + poisson));
  }

  /**
   * First Lamé constant.
   *
   * @return {@code E nu/((1+nu)(1-2nu))} [MPa]
   */
  public double lame() {
    return modulus * poisson / ((1 + poisson) * (1 - 2 * poisson));
  }
}
