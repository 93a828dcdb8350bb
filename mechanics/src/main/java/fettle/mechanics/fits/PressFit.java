package fettle.mechanics.fits;

/**
 * A shaft or bush pressed into a hub: two thick rings after Lamé, elastic, long against their
 * thickness, standing still.
 *
 * @param diameter nominal diameter of the joint [mm]
 * @param hubOutside outside diameter of the hub [mm]
 * @param shaftBore bore of the shaft or bush, 0 if solid [mm]
 * @param hub material of the hub
 * @param shaft material of the shaft or bush
 */
public record PressFit(
    double diameter, double hubOutside, double shaftBore, Elasticity hub, Elasticity shaft) {

  /** Refuses diameters in the wrong order. */
  public PressFit {
    if (!(diameter > 0) || !(diameter < 1e5)) {
      throw new IllegalArgumentException("d = " + diameter + " mm: must be above 0");
    }
    if (!(hubOutside > diameter) || !(hubOutside < 1e7)) {
      throw new IllegalArgumentException(
          "hub outside diameter " + hubOutside + " mm: must be above d = " + diameter + " mm");
    }
    if (!(shaftBore >= 0) || !(shaftBore < diameter)) {
      throw new IllegalArgumentException(
          "shaft bore " + shaftBore + " mm: must lie from 0 to below d = " + diameter + " mm");
    }
  }

  /**
   * Interference left after the peaks of roughness are pressed flat: delta - 0.8 (Rz hub + Rz
   * shaft).
   *
   * @param measured interference over the peaks, on diameter [mm]
   * @param hubRoughness Rz of the bore [mm]
   * @param shaftRoughness Rz of the shaft [mm]
   * @return effective interference, not below 0 [mm]
   */
  public static double effective(double measured, double hubRoughness, double shaftRoughness) {
    return Math.max(0, measured - 0.8 * (hubRoughness + shaftRoughness));
  }

  /**
   * Pressure in the joint: p = delta/(d ((Do²+d²)/(Do²-d²) + nu_o)/E_o + ((d²+di²)/(d²-di²) -
   * nu_i)/E_i)).
   *
   * @param interference effective interference on diameter, 0 or more [mm]
   * @return pressure [MPa]
   */
  public double pressure(double interference) {
    if (!(interference >= 0)) {
      throw new IllegalArgumentException(
          "interference " + interference + " mm: must be 0 or more; negative is a clearance");
    }
    return interference / interferencePerPressure();
  }

  /**
   * Interference that makes a pressure.
   *
   * @param pressure pressure [MPa]
   * @return effective interference on diameter [mm]
   */
  public double interference(double pressure) {
    return pressure * interferencePerPressure();
  }

  private double interferencePerPressure() {
    return diameter
        * ((hubRatio() + hub.poisson()) / hub.modulus()
            + (shaftRatio() - shaft.poisson()) / shaft.modulus());
  }

  private double hubRatio() {
    double d2 = diameter * diameter;
    double o2 = hubOutside * hubOutside;
    return (o2 + d2) / (o2 - d2);
  }

  private double shaftRatio() {
    double d2 = diameter * diameter;
    double i2 = shaftBore * shaftBore;
    return (d2 + i2) / (d2 - i2);
  }

  /**
   * Tangential tension at the bore of the hub.
   *
   * @param pressure pressure in the joint [MPa]
   * @return hoop stress [MPa]
   */
  public double hubHoop(double pressure) {
    return pressure * hubRatio();
  }

  /**
   * Equivalent stress (von Mises) at the bore of the hub: sqrt(h² + h p + p²).
   *
   * @param pressure pressure in the joint [MPa]
   * @return equivalent stress [MPa]
   */
  public double hubEquivalent(double pressure) {
    double h = hubHoop(pressure);
    return Math.sqrt(h * h + h * pressure + pressure * pressure);
  }

  /**
   * Tangential stress where the shaft is stressed most: -p throughout a solid shaft, -2 p
   * d²/(d²-di²) at the bore of a hollow one.
   *
   * @param pressure pressure in the joint [MPa]
   * @return hoop stress, negative for compression [MPa]
   */
  public double shaftHoop(double pressure) {
    if (shaftBore == 0) {
      return -pressure;
    }
    double d2 = diameter * diameter;
    return -2 * pressure * d2 / (d2 - shaftBore * shaftBore);
  }

  /**
   * How much the bore of the shaft or bush closes: 2 p d² di/(E_i (d² - di²)).
   *
   * @param pressure pressure in the joint [MPa]
   * @return loss of bore diameter [mm]
   */
  public double boreClosure(double pressure) {
    double d2 = diameter * diameter;
    return 2 * pressure * d2 * shaftBore / (shaft.modulus() * (d2 - shaftBore * shaftBore));
  }

  /**
   * How much the hub grows outside: 2 p d² Do/(E_o (Do² - d²)).
   *
   * @param pressure pressure in the joint [MPa]
   * @return growth of the outside diameter [mm]
   */
  public double hubGrowth(double pressure) {
    double d2 = diameter * diameter;
    return 2 * pressure * d2 * hubOutside / (hub.modulus() * (hubOutside * hubOutside - d2));
  }

  /**
   * Torque at which the joint slips: mu p pi d² L/2.
   *
   * @param pressure pressure in the joint [MPa]
   * @param length length of the joint [mm]
   * @param friction coefficient of friction [-]
   * @return slip torque [N mm]
   */
  public double slipTorque(double pressure, double length, double friction) {
    return slipForce(pressure, length, friction) * diameter / 2;
  }

  /**
   * Axial force at which the joint slips, also the force to press it home: mu p pi d L.
   *
   * @param pressure pressure in the joint [MPa]
   * @param length length of the joint [mm]
   * @param friction coefficient of friction [-]
   * @return axial force [N]
   */
  public double slipForce(double pressure, double length, double friction) {
    return friction * pressure * Math.PI * diameter * length;
  }
}
