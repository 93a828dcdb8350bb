package fettle.mechanics.shafts;

/**
 * Cross section of a beam.
 *
 * @param area A [mm2]
 * @param secondMoment I [mm4]
 * @param shear shear coefficient kappa; infinity for a beam that does not give in shear [-]
 */
public record Section(double area, double secondMoment, double shear) {

  /** Refuses sections without material. */
  public Section {
    Need.positive("A", area);
    Need.positive("I", secondMoment);
    if (!(shear > 0)) {
      throw new IllegalArgumentException(
          "shear coefficient: found " + shear + ", expected above 0, about 0.5 to 1");
    }
  }

  /**
   * Returns a round section, hollow or solid.
   *
   * @param outer outside diameter [mm]
   * @param inner bore, 0 if solid [mm]
   * @param poisson nu, for the shear coefficient [-]
   */
  public static Section round(double outer, double inner, double poisson) {
    diameters(outer, inner);
    return new Section(
        Math.PI / 4 * (outer * outer - inner * inner),
        Math.PI / 64 * (Math.pow(outer, 4) - Math.pow(inner, 4)),
        shearCoefficient(inner / outer, poisson));
  }

  /**
   * Returns a rectangle.
   *
   * @param height across the axis of bending [mm]
   * @param width along it [mm]
   * @param shear shear coefficient, 5/6 usual [-]
   */
  public static Section rectangle(double height, double width, double shear) {
    Need.positive("h", height);
    Need.positive("b", width);
    return new Section(height * width, width * Math.pow(height, 3) / 12, shear);
  }

  private static void diameters(double outer, double inner) {
    Need.positive("outside diameter", outer);
    if (!(inner >= 0 && inner < outer)) {
      throw new IllegalArgumentException(
          "bore: found "
              + inner
              + " mm in a shaft of "
              + outer
              + " mm, expected 0 to less than it");
    }
  }

  /**
   * Returns the shear coefficient of a hollow circle: {@code 6(1+nu)(1+m^2)^2 / ((7+6nu)(1+m^2)^2 +
   * (20+12nu) m^2)}.
   *
   * @param bore bore over outside diameter m, 0 to below 1 [-]
   * @param poisson nu [-]
   * @return kappa [-]
   * @see Sources#COWPER
   */
  public static double shearCoefficient(double bore, double poisson) {
    Need.within("di/do", bore, 0, 1);
    Need.within("nu", poisson, 0, 0.5);
    double m2 = bore * bore;
    double square = (1 + m2) * (1 + m2);
    return 6 * (1 + poisson) * square / ((7 + 6 * poisson) * square + (20 + 12 * poisson) * m2);
  }
}
