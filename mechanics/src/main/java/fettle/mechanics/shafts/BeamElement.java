package fettle.mechanics.shafts;

/**
 * A straight beam of one section between two nodes, with shear; per node deflection v and slope
 * theta. Exact for loads at its ends.
 *
 * @param length L [mm]
 * @param section its section
 * @param material its material
 * @see Sources#BEAM
 */
public record BeamElement(double length, Section section, ShaftMaterial material) {

  /** Refuses a beam without length. */
  public BeamElement {
    Need.positive("element length", length);
  }

  /**
   * Returns the shear number {@code Phi = 12 E I/(kappa G A L^2)}.
   *
   * @return Phi [-]
   */
  public double shearNumber() {
    return 12
        * material.modulus()
        * section.secondMoment()
        / (section.shear() * material.shearModulus() * section.area() * length * length);
  }

  /**
   * Returns the stiffness matrix, order v1, theta1, v2, theta2, row by row.
   *
   * @return 16 entries [N/mm, N, N mm]
   */
  public double[] stiffness() {
    double p = shearNumber();
    double l = length;
    double f = material.modulus() * section.secondMoment() / ((1 + p) * l * l * l);
    double a = 12 * f;
    double b = 6 * l * f;
    double c = (4 + p) * l * l * f;
    double d = (2 - p) * l * l * f;
    return new double[] {a, b, -a, b, b, c, -b, d, -a, -b, a, -b, b, d, -b, c};
  }

  /**
   * Returns the consistent mass matrix of translation.
   *
   * @return 16 entries [t, t mm, t mm2]
   * @see Sources#MASS
   */
  public double[] mass() {
    double p = shearNumber();
    double l = length;
    double f = material.density() * section.area() * l / ((1 + p) * (1 + p));
    double a = (13.0 / 35 + 0.7 * p + p * p / 3) * f;
    double b = (11.0 / 210 + 11 * p / 120 + p * p / 24) * l * f;
    double c = (9.0 / 70 + 0.3 * p + p * p / 6) * f;
    double d = (13.0 / 420 + 3 * p / 40 + p * p / 24) * l * f;
    double e = (1.0 / 105 + p / 60 + p * p / 120) * l * l * f;
    double g = (1.0 / 140 + p / 60 + p * p / 120) * l * l * f;
    return new double[] {a, b, c, -d, b, e, d, -g, c, d, a, -b, -d, -g, -b, e};
  }

  /**
   * Returns the mass matrix of rotary inertia; twice it is the gyroscopic matrix of a round shaft.
   *
   * @return 16 entries [t, t mm, t mm2]
   * @see Sources#MASS
   */
  public double[] rotary() {
    double p = shearNumber();
    double l = length;
    double f = material.density() * section.secondMoment() / (l * (1 + p) * (1 + p));
    double g = 1.2 * f;
    double h = (0.1 - p / 2) * l * f;
    double a = (2.0 / 15 + p / 6 + p * p / 3) * l * l * f;
    double q = (1.0 / 30 + p / 6 - p * p / 6) * l * l * f;
    return new double[] {g, h, -g, h, h, a, -h, -q, -g, -h, g, -h, h, -q, -h, a};
  }
}
