package fettle.mechanics.gears;

/**
 * The basic rack of a tooth system, in modules.
 *
 * @param angle pressure angle α [rad]
 * @param addendum addendum h_aP* [-]
 * @param clearance tip clearance c_P* [-]
 * @param rootRadius root radius ρ_fP* [-]
 */
public record BasicRack(double angle, double addendum, double clearance, double rootRadius) {

  /** Refuses what is no tooth. */
  public BasicRack {
    if (!(angle >= Math.toRadians(5) && angle <= Math.toRadians(35))) {
      throw new IllegalArgumentException(
          "pressure angle [deg] must be 5 to 35, found " + Math.toDegrees(angle));
    }
    if (!(addendum > 0 && addendum <= 1.5)) {
      throw new IllegalArgumentException(
          "addendum [modules] must be above 0 and at most 1.5, found " + addendum);
    }
    if (!(clearance >= 0 && clearance <= 1)) {
      throw new IllegalArgumentException("clearance [modules] must be 0 to 1, found " + clearance);
    }
    if (!(rootRadius >= 0 && rootRadius <= 0.6)) {
      throw new IllegalArgumentException(
          "root radius [modules] must be 0 to 0.6, found " + rootRadius);
    }
  }

  /**
   * Returns profile A of ISO 53 (addendum 1, clearance 0.25, root radius 0.38) at a pressure angle.
   *
   * @param angle pressure angle [rad]
   */
  public static BasicRack of(double angle) {
    return new BasicRack(angle, 1, 0.25, 0.38);
  }
}
