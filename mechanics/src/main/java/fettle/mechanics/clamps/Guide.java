package fettle.mechanics.clamps;

import fettle.mechanics.base.Bound;

/** Guides a slide or tailstock is clamped down on. */
public enum Guide {
  /** Flat on flat. */
  FLAT,
  /** On a V alone. */
  VEE,
  /** Half the force on a V, half on a flat. */
  VEE_AND_FLAT;

  /**
   * How many times the clamping force the faces press together: 1 on a flat, 1/sin(g/2) on a V of
   * included angle g, the mean of both on V and flat.
   *
   * @param included included angle of the V [rad]
   * @return sum of the normals over the clamping force [-]
   */
  public double gain(double included) {
    Bound.angle("vee_angle", included, 20, 180);
    double vee = 1 / Math.sin(included / 2);
    return switch (this) {
      case FLAT -> 1;
      case VEE -> vee;
      case VEE_AND_FLAT -> (1 + vee) / 2;
    };
  }

  /**
   * Clamping force needed: S F/(mu gain) + lift - weight.
   *
   * @param along force along the guide F [N]
   * @param safety safety S [-]
   * @param friction friction mu [-]
   * @param included included angle of the V [rad]
   * @param lifting lifting force less weight, negative if the weight is greater [N]
   * @return clamping force, not below 0 [N]
   */
  public double clampForce(
      double along, double safety, double friction, double included, double lifting) {
    return Math.max(0, safety * along / (friction * gain(included)) + lifting);
  }

  /**
   * Force along the guide that a clamping force holds: mu gain (N - lift + weight)/S.
   *
   * @param clamp clamping force N [N]
   * @param safety safety S [-]
   * @param friction friction mu [-]
   * @param included included angle of the V [rad]
   * @param lifting lifting force less weight, negative if the weight is greater [N]
   * @return force held, not below 0 [N]
   */
  public double held(
      double clamp, double safety, double friction, double included, double lifting) {
    return Math.max(0, friction * gain(included) * (clamp - lifting) / safety);
  }
}
