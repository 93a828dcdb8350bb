package fettle.mechanics.loop;

import fettle.mechanics.solids.Torsion;

/**
 * A bed of two upright walls joined by ribs, clamped at one end.
 *
 * @param length free length [mm]
 * @param wall thickness of a wall [mm]
 * @param height height of a wall [mm]
 * @param centres distance between the middles of the walls [mm]
 * @param modulus Young's modulus [MPa]
 * @param poisson Poisson's ratio [-]
 */
public record TwinWallBed(
    double length, double wall, double height, double centres, double modulus, double poisson) {

  /**
   * Twist stiffness: {@code 2 G J/L + c^2/2 n E I/L^3}; the walls twist and bend against each
   * other.
   *
   * @param restraint 3 if the wall ends are free to slope, 12 if ribs hold them [-]
   * @return torque per angle at the free end [N mm/rad]
   * @see Sources#TWIN_WALL
   */
  public double twistStiffness(double restraint) {
    double shear = modulus / (2 * (1 + poisson));
    double second = wall * height * height * height / 12;
    return 2 * shear * Torsion.rectangle(wall, height) / length
        + centres * centres / 2 * restraint * modulus * second / Math.pow(length, 3);
  }

  /**
   * Vertical compliance at the free end, bending and shear of both walls.
   *
   * @return deflection per force [mm/N]
   */
  public double verticalCompliance() {
    double second = 2 * wall * height * height * height / 12;
    double kappa = 10 * (1 + poisson) / (12 + 11 * poisson);
    return Math.pow(length, 3) / (3 * modulus * second)
        + length * 2 * (1 + poisson) / (kappa * modulus * 2 * wall * height);
  }
}
