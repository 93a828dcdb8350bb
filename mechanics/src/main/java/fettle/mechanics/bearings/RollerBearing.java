package fettle.mechanics.bearings;

/**
 * Axial give of a tapered roller bearing with ideal line contact; real crowned rollers are two to
 * three times as soft.
 *
 * @param rollers Z
 * @param length effective roller length Lwe [mm]
 * @param angle contact angle, above 0 and below 90 degrees [rad]
 * @see Sources#PALMGREN_LINE
 */
public record RollerBearing(int rollers, double length, double angle) {

  private static final double GIVE = 7.68e-5;

  /** Refuses what cannot be built. */
  public RollerBearing {
    if (rollers < 3) {
      throw new IllegalArgumentException("Z: found " + rollers + ", expected 3 or more rollers");
    }
    Need.positive("Lwe", length);
    Need.within("alpha in degrees", Math.toDegrees(angle), 1, 89);
  }

  /**
   * Returns the approach of a roller and both races: {@code 7.68e-5 Q^0.9 / l^0.8}.
   *
   * @param load Q [N]
   * @param length l [mm]
   * @return delta [mm]
   */
  public static double give(double load, double length) {
    return GIVE * Math.pow(Need.notNegative("Q", load), 0.9) / Math.pow(length, 0.8);
  }

  /**
   * Returns the load of each roller under an axial load alone.
   *
   * @param axial Fa [N]
   * @return Q [N]
   */
  public double rollerLoad(double axial) {
    return Need.notNegative("Fa", axial) / (rollers * Math.sin(angle));
  }

  /**
   * Returns the axial approach under an axial load.
   *
   * @param axial Fa [N]
   * @return approach [mm]
   */
  public double approach(double axial) {
    return give(rollerLoad(axial), length) / Math.sin(angle);
  }

  private double tangent(double axial) {
    double q = rollerLoad(Need.positive("Fa", axial));
    return q / (0.9 * give(q, length));
  }

  /**
   * Returns the axial tangent stiffness under an axial load.
   *
   * @param axial Fa [N]
   * @return stiffness [N/mm]
   */
  public double axialStiffness(double axial) {
    double s = Math.sin(angle);
    return rollers * tangent(axial) * s * s;
  }

  /**
   * Returns the radial tangent stiffness under an axial load.
   *
   * @param axial Fa [N]
   * @return stiffness [N/mm]
   */
  public double radialStiffness(double axial) {
    double c = Math.cos(angle);
    return 0.5 * rollers * tangent(axial) * c * c;
  }

  /**
   * Returns the outer load that relieves one of two equal preloaded bearings: {@code 2^(10/9) F0}.
   *
   * @param preload F0 [N]
   * @return lift-off load [N]
   */
  public static double liftOff(double preload) {
    return Math.pow(2, 1 / 0.9) * Need.positive("preload", preload);
  }
}
