package fettle.mechanics.cutting;

/**
 * Forces of a turning cut: {@code h = f sin(kr), b = ap/sin(kr), kc = kc1.1 h^-mc, Fc = kc b h K}.
 * Good for h from 0.05 to 1.5 mm; below 0.03 mm the force is held at the value of 0.03 mm chips'
 * specific force.
 *
 * @param unitForce kc1.1 [MPa]
 * @param exponent mc [-]
 * @param feed f a turn [mm]
 * @param depth ap [mm]
 * @param edge cutting edge angle kr [rad]
 * @param correction K of rake, speed, tool, wear [-]
 * @see Sources#KIENZLE
 */
public record CuttingForce(
    double unitForce, double exponent, double feed, double depth, double edge, double correction) {

  /** Chip thickness below which rubbing begins [mm]. */
  public static final double THINNEST = 0.03;

  /** Refuses impossible cuts. */
  public CuttingForce {
    Need.positive("kc1.1", unitForce);
    Need.within("mc", exponent, 0, 0.9);
    Need.positive("f", feed);
    Need.positive("ap", depth);
    Need.within("kappa in degrees", Math.toDegrees(edge), 5, 120);
    Need.positive("K", correction);
    if (!(feed * Math.sin(edge) <= 3)) {
      throw new IllegalArgumentException(
          "f: found " + feed + " mm, expected a chip thickness of at most 3 mm");
    }
  }

  /**
   * Returns the chip thickness.
   *
   * @return h [mm]
   */
  public double thickness() {
    return feed * Math.sin(edge);
  }

  /**
   * Returns the chip width.
   *
   * @return b [mm]
   */
  public double width() {
    return depth / Math.sin(edge);
  }

  /**
   * Returns the specific cutting force with corrections.
   *
   * @return kc K [MPa]
   */
  public double specific() {
    return unitForce * Math.pow(Math.max(THINNEST, thickness()), -exponent) * correction;
  }

  /**
   * Returns the main cutting force.
   *
   * @return Fc [N]
   */
  public double main() {
    return specific() * depth * feed;
  }

  /** Tells whether the chip is thick enough for the law. */
  public boolean isInRange() {
    return thickness() >= 0.05 - 1e-12 && thickness() <= 1.5;
  }

  /**
   * Returns the correction for rake: {@code 1 - (gamma-gamma0)/66.7}, degrees.
   *
   * @param rake gamma [rad]
   * @param reference gamma0; 6 degrees for steel, 2 for iron [rad]
   * @return K [-]
   */
  public static double rakeFactor(double rake, double reference) {
    double k = 1 - Math.toDegrees(rake - reference) / 66.7;
    return Need.within("factor for rake", k, 0.2, 2);
  }

  /**
   * Returns the edge angle that counts where the nose does the cutting: {@code acos(1-ap/r)/2} for
   * {@code ap < r}.
   *
   * @param depth ap [mm]
   * @param nose r [mm]
   * @return effective angle [rad]
   */
  public static double noseAngle(double depth, double nose) {
    return Math.acos(1 - Need.within("ap/r", depth / Need.positive("r", nose), 0, 1)) / 2;
  }
}
