package fettle.mechanics.shafts;

/**
 * Give of a spindle nose by closed form, one section between the bearings and one at the nose:
 * {@code a^3/(3EIa) + a^2 L/(3EIL) + a/(kappa G Aa) + a^2/(L kappa G AL) + (1+a/L)^2/kA +
 * (a/L)^2/kB}.
 *
 * @param nose bending of the nose [mm/N]
 * @param span bending between the bearings [mm/N]
 * @param noseShear shear of the nose [mm/N]
 * @param spanShear shear between the bearings [mm/N]
 * @param front front bearing [mm/N]
 * @param rear rear bearing [mm/N]
 * @see Sources#NOSE
 */
public record NoseStiffness(
    double nose, double span, double noseShear, double spanShear, double front, double rear) {

  /**
   * Returns the parts of the give.
   *
   * @param overhang a, from the front bearing to the force [mm]
   * @param length span L [mm]
   * @param atNose section of the nose
   * @param between section between the bearings
   * @param material material
   * @param springs stiffness of the front and of the rear bearing [N/mm]
   */
  public static NoseStiffness of(
      double overhang,
      double length,
      Section atNose,
      Section between,
      ShaftMaterial material,
      Bearings springs) {
    double a = overhang;
    if (!(a >= 0) || Double.isInfinite(a)) {
      throw new IllegalArgumentException("a: found " + a + " mm, expected 0 or more");
    }
    double l = Need.positive("L", length);
    double e = material.modulus();
    double g = material.shearModulus();
    double ratio = a / l;
    return new NoseStiffness(
        a * a * a / (3 * e * atNose.secondMoment()),
        a * a * l / (3 * e * between.secondMoment()),
        a / (atNose.shear() * g * atNose.area()),
        a * a / (l * between.shear() * g * between.area()),
        (1 + ratio) * (1 + ratio) / Need.positive("kA", springs.front),
        ratio * ratio / Need.positive("kB", springs.rear));
  }

  /**
   * Radial stiffness of both bearings.
   *
   * @param front kA [N/mm]
   * @param rear kB [N/mm]
   */
  public record Bearings(double front, double rear) {}

  /**
   * Returns the whole give.
   *
   * @return give [mm/N]
   */
  public double give() {
    return nose + span + noseShear + spanShear + front + rear;
  }

  /**
   * Returns the span of least give of a uniform shaft without shear: the positive root of {@code
   * L^3 - (6EI/(kA a)) L - 6EI(1/kA+1/kB) = 0}.
   *
   * @param overhang a [mm]
   * @param bendingStiffness E I [N mm2]
   * @param springs stiffness of the bearings
   * @return best span [mm]
   * @see Sources#SPAN
   */
  public static double bestSpan(double overhang, double bendingStiffness, Bearings springs) {
    double a = Need.positive("a", overhang);
    double ei = Need.positive("E I", bendingStiffness);
    double p = 6 * ei / (Need.positive("kA", springs.front) * a);
    double q = 6 * ei * (1 / springs.front + 1 / Need.positive("kB", springs.rear));
    double low = 0;
    double high = Math.sqrt(p) + Math.cbrt(q) + 1;
    for (int i = 0; i < 200 && high - low > 1e-15 * high; i++) {
      double l = 0.5 * (low + high);
      if (l * l * l - p * l - q < 0) {
        low = l;
      } else {
        high = l;
      }
    }
    return 0.5 * (low + high);
  }
}
