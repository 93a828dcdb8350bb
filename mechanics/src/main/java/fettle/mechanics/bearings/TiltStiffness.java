package fettle.mechanics.bearings;

/**
 * Stiffness of two equal preloaded bearings about their middle, by closed matrix from the stiffness
 * of one bearing, cross term of radial and tilt included. Independent of {@link BearingSet}, which
 * solves all balls together.
 *
 * @param axial along the shaft [N/mm]
 * @param radial across it [N/mm]
 * @param tilt about an axis across it, shaft free to shift sideways [N mm/rad]
 * @see Sources#MODEL
 */
public record TiltStiffness(double axial, double radial, double tilt) {

  /**
   * Assembles a pair: per bearing at x with direction o, {@code (da, dy, tz) = T (X, Y, theta), T =
   * [[o,0,0],[0,1,x],[0,0,o]]}.
   *
   * @param bearing inside of each bearing
   * @param arrangement how they face each other
   * @param spacing distance of the ring centres [mm]
   * @param preload axial force between them [N]
   */
  public static TiltStiffness of(
      BallBearing bearing, BearingSet.Arrangement arrangement, double spacing, double preload) {
    AxialCurve curve = AxialCurve.of(bearing);
    BearingState one = BearingSet.single(bearing).at(curve.approach(preload), 0, 0, 0, 0);
    double k = one.stiffness(1, 1);
    double cross = one.stiffness(1, 4);
    double own = one.stiffness(4, 4);
    double half = spacing / 2;
    int left = arrangement == BearingSet.Arrangement.FACE_TO_FACE ? -1 : 1;
    int right = arrangement == BearingSet.Arrangement.BACK_TO_BACK ? -1 : 1;
    double tilt =
        2 * k * half * half + 2 * own + 2 * cross * (-half * left) + 2 * cross * half * right;
    double shift = cross * (left + right);
    return new TiltStiffness(2 * one.stiffness(0, 0), 2 * k, tilt - shift * shift / (2 * k));
  }
}
