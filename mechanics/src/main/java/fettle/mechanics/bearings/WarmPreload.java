package fettle.mechanics.bearings;

/**
 * How warming changes the approach of a preloaded pair (sum over both bearings; minus loosens).
 *
 * @see Sources#GROWTH
 */
public final class WarmPreload {

  private WarmPreload() {}

  /**
   * Returns the part of the spacers: back to back {@code -(Ls as dTs - Lh ah dTh)}, face to face
   * the opposite.
   *
   * @param arrangement back to back or face to face
   * @param shaftLength length between the inner rings Ls [mm]
   * @param shaftGrowth alpha of the shaft times its rise [-]
   * @param housingLength length between the outer rings Lh [mm]
   * @param housingGrowth alpha of the housing times its rise [-]
   * @return change of the approach [mm]
   */
  public static double spacers(
      BearingSet.Arrangement arrangement,
      double shaftLength,
      double shaftGrowth,
      double housingLength,
      double housingGrowth) {
    double longer = shaftLength * shaftGrowth - housingLength * housingGrowth;
    return switch (arrangement) {
      case BACK_TO_BACK -> -longer;
      case FACE_TO_FACE -> longer;
      case TANDEM -> 0;
    };
  }

  /**
   * Returns the part of the raceways of both bearings: {@code 2 (as dTs di/2 - ah dTh Do/2) /
   * tan(alpha)}.
   *
   * @param inner inner raceway diameter di [mm]
   * @param innerGrowth alpha of the inner ring times its rise [-]
   * @param outer outer raceway diameter Do [mm]
   * @param outerGrowth alpha of the outer ring times its rise [-]
   * @param angle contact angle [rad]
   * @return change of the approach [mm]
   */
  public static double raceways(
      double inner, double innerGrowth, double outer, double outerGrowth, double angle) {
    return (innerGrowth * inner - outerGrowth * outer)
        / Math.tan(Need.within("alpha", angle, 1e-3, Math.PI / 2));
  }

  /**
   * Returns the spacing at which both parts cancel in a back-to-back pair: {@code dm/tan(alpha)}.
   *
   * @param pitch dm [mm]
   * @param angle contact angle [rad]
   * @return spacing [mm]
   */
  public static double neutralSpacing(double pitch, double angle) {
    return Need.positive("dm", pitch) / Math.tan(Need.within("alpha", angle, 1e-3, Math.PI / 2));
  }
}
