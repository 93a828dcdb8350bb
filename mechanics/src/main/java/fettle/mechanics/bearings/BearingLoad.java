package fettle.mechanics.bearings;

/**
 * Force and moment on the shaft, at the origin of a bearing set.
 *
 * @param axial Fx [N]
 * @param radialY Fy [N]
 * @param radialZ Fz [N]
 * @param momentY My [N mm]
 * @param momentZ Mz [N mm]
 */
public record BearingLoad(
    double axial, double radialY, double radialZ, double momentY, double momentZ) {

  /** Refuses loads that are not finite. */
  public BearingLoad {
    if (!Double.isFinite(
        Math.abs(axial)
            + Math.abs(radialY)
            + Math.abs(radialZ)
            + Math.abs(momentY)
            + Math.abs(momentZ))) {
      throw new IllegalArgumentException("a bearing load needs finite forces and moments");
    }
  }

  /**
   * Returns a load without moment.
   *
   * @param axial Fx [N]
   * @param radial Fy [N]
   */
  public static BearingLoad of(double axial, double radial) {
    return new BearingLoad(axial, radial, 0, 0, 0);
  }
}
