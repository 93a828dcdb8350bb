package fettle.mechanics.shafts;

/**
 * What a shaft is made of.
 *
 * @param modulus E [MPa]
 * @param poisson nu [-]
 * @param density rho [t/mm3]
 */
public record ShaftMaterial(double modulus, double poisson, double density) {

  /** Steel as usual: 206 000 MPa, 0.3, 7850 kg/m3. */
  public static final ShaftMaterial STEEL = new ShaftMaterial(206_000, 0.3, 7.85e-9);

  /** Refuses impossible materials. */
  public ShaftMaterial {
    Need.positive("E", modulus);
    Need.within("nu", poisson, 0, 0.5);
    Need.positive("rho", density);
  }

  /**
   * Returns the shear modulus {@code E/(2(1+nu))}.
   *
   * @return G [MPa]
   */
  public double shearModulus() {
    return modulus / (2 * (1 + poisson));
  }
}
