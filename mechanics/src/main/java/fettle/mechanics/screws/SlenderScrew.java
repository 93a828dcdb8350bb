package fettle.mechanics.screws;

/**
 * A screw as a slender round bar of its core diameter.
 *
 * @param core core diameter d3, or the groove if it is smaller [mm]
 * @param length free length between the supports [mm]
 */
public record SlenderScrew(double core, double length) {

  /** Refuses impossible sizes. */
  public SlenderScrew {
    if (!(core > 0) || !(core < 2000)) {
      throw new IllegalArgumentException("d3 = " + core + " mm: expected more than 0");
    }
    if (!(length > 0) || !(length < 1e5)) {
      throw new IllegalArgumentException("L = " + length + " mm: expected more than 0");
    }
  }

  /** Which law rules the buckling. */
  public enum Law {
    EULER,
    JOHNSON
  }

  /**
   * Core area.
   *
   * @return A3 [mm2]
   */
  public double area() {
    return Math.PI / 4 * core * core;
  }

  /**
   * Second moment of the core.
   *
   * @return I [mm4]
   */
  public double secondMoment() {
    return Math.PI / 64 * Math.pow(core, 4);
  }

  /**
   * Slenderness, {@code s = K L/(d3/4)}.
   *
   * @param lengthFactor K [-]
   * @return s [-]
   */
  public double slenderness(double lengthFactor) {
    if (!(lengthFactor > 0) || !(lengthFactor <= 2.5)) {
      throw new IllegalArgumentException(
          "K = " + lengthFactor + ": expected 0.5 (both ends fixed) to 2 (one end free)");
    }
    return lengthFactor * length / (core / 4);
  }

  /**
   * Slenderness at which Euler takes over from Johnson, {@code sqrt(2 pi^2 E/Sy)}.
   *
   * @param elasticity modulus of elasticity E [MPa]
   * @param yield yield strength Sy [MPa]
   * @return s at the change [-]
   */
  public static double transition(double elasticity, double yield) {
    if (!(elasticity > 0) || !(yield > 0)) {
      throw new IllegalArgumentException(
          "E = " + elasticity + " MPa, Sy = " + yield + " MPa: expected more than 0");
    }
    return Math.sqrt(2 * Math.PI * Math.PI * elasticity / yield);
  }

  /**
   * Buckling law by slenderness.
   *
   * @param lengthFactor K [-]
   * @param elasticity E [MPa]
   * @param yield Sy [MPa]
   */
  public Law law(double lengthFactor, double elasticity, double yield) {
    return slenderness(lengthFactor) >= transition(elasticity, yield) ? Law.EULER : Law.JOHNSON;
  }

  /**
   * Axial force at which the screw buckles: Euler {@code pi^2 E I/(K L)^2}, below the change of
   * laws Johnson {@code A3 (Sy - (Sy s/(2 pi))^2/E)}.
   *
   * @param lengthFactor K [-]
   * @param elasticity E [MPa]
   * @param yield Sy [MPa]
   * @return critical force, no safety [N]
   */
  public double bucklingForce(double lengthFactor, double elasticity, double yield) {
    double s = slenderness(lengthFactor);
    if (law(lengthFactor, elasticity, yield) == Law.EULER) {
      return Math.PI * Math.PI * elasticity * secondMoment() / Math.pow(lengthFactor * length, 2);
    }
    return area() * (yield - Math.pow(yield * s / (2 * Math.PI), 2) / elasticity);
  }

  /**
   * Speed at which the turning screw whirls, {@code (kappa/L)^2 sqrt(E I/(rho A))}.
   *
   * @param waveNumber kappa [-]
   * @param elasticity E [MPa]
   * @param density rho [t/mm3]
   * @return critical speed [rad/s]
   */
  public double criticalSpeed(double waveNumber, double elasticity, double density) {
    if (!(elasticity > 0) || !(density > 0)) {
      throw new IllegalArgumentException(
          "E = " + elasticity + " MPa, rho = " + density + " t/mm3: expected more than 0");
    }
    return Math.pow(waveNumber / length, 2) * core / 4 * Math.sqrt(elasticity / density);
  }

  /**
   * Sag under its own weight between two supports that let it tilt, {@code 5 w L^4/(384 E I)}.
   *
   * @param elasticity E [MPa]
   * @param density rho [t/mm3]
   * @return sag in the middle [mm]
   */
  public double sag(double elasticity, double density) {
    if (!(elasticity > 0) || !(density > 0)) {
      throw new IllegalArgumentException("E and rho: expected more than 0");
    }
    double weight = density * area() * STANDARD_GRAVITY;
    return 5 * weight * Math.pow(length, 4) / (384 * elasticity * secondMoment());
  }

  /**
   * Turn of one end against the other seen along the axis, {@code T L Ph/(2 pi G J)}.
   *
   * @param moment moment carried, T [N mm]
   * @param shear shear modulus G [MPa]
   * @param lead lead Ph [mm]
   * @return travel lost [mm]
   */
  public double windUp(double moment, double shear, double lead) {
    if (!(shear > 0) || !(lead > 0)) {
      throw new IllegalArgumentException("G and Ph: expected more than 0");
    }
    return moment * length * lead / (2 * Math.PI * shear * 2 * secondMoment());
  }

  /**
   * Force that bends the screw when its nut stands off its axis, {@code n E I delta/a^3}: n = 3
   * with the screw held at one end and the nut free to tilt, 12 with both guided.
   *
   * @param constraint 3 or 12 [-]
   * @param elasticity E [MPa]
   * @param offset distance between the axes, delta [mm]
   * @return force across the axis; length is the free length a [N]
   */
  public double misalignmentForce(double constraint, double elasticity, double offset) {
    if (!(elasticity > 0)) {
      throw new IllegalArgumentException("E = " + elasticity + " MPa: expected more than 0");
    }
    return constraint * elasticity * secondMoment() * offset / Math.pow(length, 3);
  }

  private static final double STANDARD_GRAVITY = 9806.65;
}
