package fettle.mechanics.bearings;

/**
 * Two equal bearings pressed against each other axially: how far each gives, how stiff the pair is,
 * and the outer load at which the relieved one runs free.
 *
 * @param curve axial curve of each bearing
 * @param preload axial force between them [N]
 * @param approach approach of each by the preload [mm]
 * @see Sources#MODEL
 */
public record PreloadedPair(AxialCurve curve, double preload, double approach) {

  /**
   * Returns the pair under a preload.
   *
   * @param bearing inside of each bearing
   * @param preload axial force between them, above 0 [N]
   */
  public static PreloadedPair of(BallBearing bearing, double preload) {
    Need.positive("preload", preload);
    AxialCurve curve = AxialCurve.of(bearing);
    return new PreloadedPair(curve, preload, curve.approach(preload));
  }

  /**
   * Returns the pair whose bearings stand together by so much.
   *
   * @param bearing inside of each bearing
   * @param approach approach of each bearing; 0 or less is play [mm]
   */
  public static PreloadedPair byApproach(BallBearing bearing, double approach) {
    AxialCurve curve = AxialCurve.of(bearing);
    return new PreloadedPair(curve, curve.force(approach), approach);
  }

  /**
   * Returns the axial stiffness of the pair about its preload, {@code 2 dF/dd}.
   *
   * @return stiffness [N/mm]
   */
  public double stiffness() {
    return 2 * curve.tangent(approach);
  }

  /**
   * Returns the outer axial load that unloads the relieved bearing: {@code Fa(2 d0)}.
   *
   * @return lift-off load [N]
   */
  public double liftOff() {
    return curve.force(2 * approach);
  }

  /**
   * Returns how far the shaft moves under an outer axial load: {@code Fa(d0+d) - Fa(d0-d) = K}.
   *
   * @param load outer axial load K, not negative [N]
   * @return movement [mm]
   */
  public double movement(double load) {
    Need.notNegative("outer axial load", load);
    double low = 0;
    double high = curve.approach(load + preload) + Math.abs(approach);
    for (int i = 0; i < 200 && high - low > 1e-16 * high; i++) {
      double middle = 0.5 * (low + high);
      if (curve.force(approach + middle) - curve.force(approach - middle) < load) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
