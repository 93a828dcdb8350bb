package fettle.mechanics.loop;

import fettle.mechanics.solids.Torsion;

/**
 * A straight uniform bar along x.
 *
 * @param length length [mm]
 * @param area area of the section [mm2]
 * @param secondMomentY second moment about y: bends along z [mm4]
 * @param secondMomentZ second moment about z: bends along y [mm4]
 * @param torsionConstant torsion constant [mm4]
 * @param modulus Young's modulus [MPa]
 * @param poisson Poisson's ratio [-]
 * @param shearCoefficient Timoshenko's shear coefficient; infinite to neglect shear [-]
 */
public record BarMember(
    double length,
    double area,
    double secondMomentY,
    double secondMomentZ,
    double torsionConstant,
    double modulus,
    double poisson,
    double shearCoefficient) {

  /**
   * Returns a rectangular bar with shear.
   *
   * @param length length along x [mm]
   * @param width size along y [mm]
   * @param height size along z [mm]
   * @param modulus Young's modulus [MPa]
   * @param poisson Poisson's ratio [-]
   */
  public static BarMember rectangular(
      double length, double width, double height, double modulus, double poisson) {
    return new BarMember(
        length,
        width * height,
        width * height * height * height / 12,
        height * width * width * width / 12,
        Torsion.rectangle(width, height),
        modulus,
        poisson,
        10 * (1 + poisson) / (12 + 11 * poisson));
  }

  /**
   * Returns a round bar with shear.
   *
   * @param length length along x [mm]
   * @param diameter diameter [mm]
   * @param bore diameter of the bore, 0 if solid [mm]
   * @param modulus Young's modulus [MPa]
   * @param poisson Poisson's ratio [-]
   */
  public static BarMember round(
      double length, double diameter, double bore, double modulus, double poisson) {
    double second = Math.PI / 64 * (Math.pow(diameter, 4) - Math.pow(bore, 4));
    double m2 = bore * bore / (diameter * diameter);
    double top = 6 * (1 + poisson) * (1 + m2) * (1 + m2);
    double bottom = (7 + 6 * poisson) * (1 + m2) * (1 + m2) + (20 + 12 * poisson) * m2;
    return new BarMember(
        length,
        Math.PI / 4 * (diameter * diameter - bore * bore),
        second,
        second,
        2 * second,
        modulus,
        poisson,
        top / bottom);
  }

  /** Returns the same bar with shear neglected. */
  public BarMember withoutShear() {
    return new BarMember(
        length,
        area,
        secondMomentY,
        secondMomentZ,
        torsionConstant,
        modulus,
        poisson,
        Double.POSITIVE_INFINITY);
  }

  /**
   * Shear modulus.
   *
   * @return {@code E/(2(1+nu))} [MPa]
   */
  public double shearModulus() {
    return modulus / (2 * (1 + poisson));
  }

  /**
   * Shear flexibility per length.
   *
   * @return {@code 1/(kappa G A)}, 0 if shear is neglected [1/N]
   */
  public double shearFlexibility() {
    return 1 / (shearCoefficient * shearModulus() * area);
  }
}
