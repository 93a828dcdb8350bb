package fettle.mechanics.bearings;

/**
 * Friction torque of rolling bearings in a load-free and a load-borne part, and the heat of it.
 *
 * @see Sources#FRICTION
 */
public final class BearingFriction {

  private BearingFriction() {}

  /**
   * Returns the load-free part: {@code M0 = 1e-7 f0 (nu n)^(2/3) dm^3} where {@code nu n} is 2000
   * or more, else {@code 160e-7 f0 dm^3}.
   *
   * @param factor f0 of the lubrication, 0.5 to 12; not the f0 of ratings [-]
   * @param viscosity nu at running temperature [mm2/s]
   * @param speed n [rad/s]
   * @param pitch dm [mm]
   * @return M0 [N mm]
   */
  public static double loadFree(double factor, double viscosity, double speed, double pitch) {
    Need.notNegative("f0", factor);
    Need.notNegative("nu", viscosity);
    Need.notNegative("n", speed);
    double product = viscosity * speed * 30 / Math.PI;
    double flow = product >= 2000 ? 1e-7 * Math.pow(product, 2.0 / 3) : 160e-7;
    return flow * factor * Math.pow(Need.positive("dm", pitch), 3);
  }

  /**
   * Returns the load-borne part: {@code M1 = f1 Fb dm}.
   *
   * @param factor f1 [-]
   * @param load Fb [N]
   * @param pitch dm [mm]
   * @return M1 [N mm]
   */
  public static double loadBorne(double factor, double load, double pitch) {
    return Need.notNegative("f1", factor)
        * Need.notNegative("Fb", load)
        * Need.positive("dm", pitch);
  }

  /**
   * Returns the factor {@code f1 = z (P0/C0)^y}.
   *
   * @param z factor [-]
   * @param y exponent [-]
   * @param load P0 [N]
   * @param rating C0 [N]
   * @return f1 [-]
   */
  public static double factor(double z, double y, double load, double rating) {
    return Need.notNegative("z", z)
        * Math.pow(Need.notNegative("P0", load) / Need.positive("C0", rating), y);
  }

  /**
   * Returns the load that rubs in a ball bearing: {@code max(0.9 Fa cot(alpha) - 0.1 Fr, Fr)}; at
   * 90 degrees the axial load.
   *
   * @param radial Fr [N]
   * @param axial Fa [N]
   * @param angle contact angle, above 0 [rad]
   * @return Fb [N]
   */
  public static double ballLoad(double radial, double axial, double angle) {
    if (angle > Math.PI / 2 - 1e-6) {
      return axial;
    }
    if (!(angle > 0)) {
      return Math.max(radial, axial);
    }
    return Math.max(0.9 * axial / Math.tan(angle) - 0.1 * radial, radial);
  }

  /**
   * Returns the load that rubs in a tapered roller bearing: {@code max(0.8 Fa cot(alpha), Fr)}.
   *
   * @param radial Fr [N]
   * @param axial Fa [N]
   * @param angle contact angle [rad]
   * @return Fb [N]
   */
  public static double taperedLoad(double radial, double axial, double angle) {
    return Math.max(0.8 * axial / Math.tan(Need.within("alpha", angle, 0.01, 1.55)), radial);
  }

  /**
   * Returns the heat of a friction torque.
   *
   * @param torque M [N mm]
   * @param speed n [rad/s]
   * @return power [N mm/s]
   */
  public static double heat(double torque, double speed) {
    return torque * Need.notNegative("n", speed);
  }

  /**
   * Returns the steady temperature rise of what sheds the heat: {@code H/(h A)}.
   *
   * @param power H [N mm/s]
   * @param transfer h [N/(mm s K)]
   * @param surface A [mm2]
   * @return rise [K]
   */
  public static double rise(double power, double transfer, double surface) {
    return power / (Need.positive("h", transfer) * Need.positive("A", surface));
  }
}
