package fettle.mechanics.gears;

/** Stress in the root of a spur tooth: Lewis, and the form factors of ISO 6336-3. */
public final class ToothStrength {

  private static final double[][] LEWIS = {
    {12, 0.245}, {13, 0.261}, {14, 0.277}, {15, 0.290}, {16, 0.296}, {17, 0.303}, {18, 0.309},
    {19, 0.314}, {20, 0.322}, {21, 0.328}, {22, 0.331}, {24, 0.337}, {26, 0.346}, {28, 0.353},
    {30, 0.359}, {34, 0.371}, {38, 0.384}, {43, 0.397}, {50, 0.409}, {60, 0.422}, {75, 0.435},
    {100, 0.447}, {150, 0.460}, {300, 0.472}
  };

  /** Lewis factor of a rack. */
  public static final double RACK_LEWIS = 0.485;

  /**
   * Form and stress correction of one gear.
   *
   * @param rootChord tooth root chord s_Fn, in modules [-]
   * @param fillet radius of the fillet ρ_F, in modules [-]
   * @param arm bending moment arm h_F, in modules [-]
   * @param form form factor Y_F [-]
   * @param correction stress correction factor Y_S [-]
   * @param notch notch parameter q_s; the correction holds from 1 to 8 [-]
   */
  public record Factors(
      double rootChord, double fillet, double arm, double form, double correction, double notch) {}

  /** How teeth were made, for the factor of speed. */
  public enum Finish {
    HAND_CRANKED,
    CUT_OR_MILLED,
    CAST,
    HOBBED
  }

  private ToothStrength() {}

  /**
   * Returns the Lewis form factor of a 20-degree full-depth tooth, linear between the printed
   * teeth.
   *
   * @param teeth number of teeth, 12 or more; above 300 towards the rack
   * @return form factor Y [-]
   */
  public static double lewisFactor(int teeth) {
    Teeth.check("gear", teeth);
    if (teeth < 12) {
      throw new IllegalArgumentException(
          "teeth [-] must be 12 or more for the Lewis table, found "
              + teeth
              + "; use the form factor of ISO 6336-3");
    }
    for (int i = 1; i < LEWIS.length; i++) {
      if (teeth <= LEWIS[i][0]) {
        double share = (teeth - LEWIS[i - 1][0]) / (LEWIS[i][0] - LEWIS[i - 1][0]);
        return LEWIS[i - 1][1] + share * (LEWIS[i][1] - LEWIS[i - 1][1]);
      }
    }
    double towardsRack = 300.0 / teeth;
    return RACK_LEWIS + (0.472 - RACK_LEWIS) * towardsRack;
  }

  /**
   * Returns the factor of speed K_v: (6.1 + v)/6.1 for cut or milled, (3.05 + v)/3.05 for cast,
   * (3.56 + sqrt v)/3.56 for hobbed teeth with v in m/s; 1 by hand.
   *
   * @param finish how the teeth were made
   * @param speed pitch line speed [mm/s]
   * @return factor K_v [-]
   */
  public static double speedFactor(Finish finish, double speed) {
    double v = Teeth.notNegative("speed", "mm/s", speed) / 1000;
    return switch (finish) {
      case HAND_CRANKED -> 1;
      case CUT_OR_MILLED -> (6.1 + v) / 6.1;
      case CAST -> (3.05 + v) / 3.05;
      case HOBBED -> (3.56 + Math.sqrt(v)) / 3.56;
    };
  }

  /**
   * Returns the Lewis bending stress F_t K_v/(b m Y).
   *
   * @param force tangential force [N]
   * @param speedFactor factor K_v [-]
   * @param width face width [mm]
   * @param module module [mm]
   * @param factor form factor Y [-]
   * @return bending stress [MPa]
   */
  public static double lewisStress(
      double force, double speedFactor, double width, double module, double factor) {
    Teeth.notNegative("tangential force", "N", force);
    Teeth.positive("face width", "mm", width);
    Teeth.positive("module", "mm", module);
    Teeth.positive("form factor", "-", factor);
    return force * speedFactor / (width * module * factor);
  }

  /**
   * Returns the form factors with the load at the tip: Y_Fa, Y_Sa.
   *
   * @param gear the gear; its basic rack gives root depth and radius
   * @param tip tip diameter [mm]
   */
  public static Factors atTip(Gear gear, double tip) {
    return at(gear, tip);
  }

  /**
   * Returns the form factors with the load at the outer point of single contact: Y_F, Y_S.
   *
   * @param gear the gear
   * @param tip tip diameter [mm]
   * @param contactRatio contact ratio of the pair, 1 to below 2 [-]
   */
  public static Factors atSingleContact(Gear gear, double tip, double contactRatio) {
    if (!(contactRatio >= 1 && contactRatio < 2)) {
      throw new IllegalArgumentException(
          "contact ratio [-] must be 1 to below 2, found " + contactRatio);
    }
    double along =
        Math.sqrt(Math.max(0, tip * tip - gear.base() * gear.base())) / 2
            - Math.PI * gear.module() * Math.cos(gear.rack().angle()) * (contactRatio - 1);
    if (!(along > 0)) {
      throw new IllegalArgumentException(
          "contact ratio [-] of " + contactRatio + " is too large for this gear");
    }
    return at(gear, 2 * Math.hypot(along, gear.base() / 2));
  }

  private static Factors at(Gear gear, double loadCircle) {
    BasicRack rack = gear.rack();
    int z = gear.teeth();
    double x = gear.shift();
    double alpha = rack.angle();
    double rho = rack.rootRadius();
    double depth = rack.addendum() + rack.clearance();
    double e =
        Math.PI / 4 - depth * Math.tan(alpha) - (1 - Math.sin(alpha)) * rho / Math.cos(alpha);
    double g = rho - depth + x;
    double h = 2.0 / z * (Math.PI / 2 - e) - Math.PI / 3;
    double theta = tangentAngle(z, g, h);
    double cosTheta = Math.cos(theta);
    double chord = z * Math.sin(Math.PI / 3 - theta) + Math.sqrt(3) * (g / cosTheta - rho);
    double fillet = rho + 2 * g * g / (cosTheta * (z * cosTheta * cosTheta - 2 * g));
    double de = loadCircle / gear.module();
    double loadAngle = gear.angleAt(loadCircle);
    double gamma =
        (Math.PI / 2 + 2 * x * Math.tan(alpha)) / z + Involute.inv(alpha) - Involute.inv(loadAngle);
    double alphaF = loadAngle - gamma;
    double arm =
        ((Math.cos(gamma) - Math.sin(gamma) * Math.tan(alphaF)) * de
                - z * Math.cos(Math.PI / 3 - theta)
                - (g / cosTheta - rho))
            / 2;
    if (!(chord > 0 && fillet > 0 && arm > 0)) {
      throw new IllegalArgumentException(
          "a gear of " + z + " teeth with profile shift " + x + " has no tooth root to load");
    }
    double form = 6 * arm * Math.cos(alphaF) / (chord * chord * Math.cos(alpha));
    double slender = chord / arm;
    double notch = chord / (2 * fillet);
    double correction = (1.2 + 0.13 * slender) * Math.pow(notch, 1 / (1.21 + 2.3 / slender));
    return new Factors(chord, fillet, arm, form, correction, notch);
  }

  /** Solves θ = 2G/z tan θ - H; a few rounds of Newton's method from π/6. */
  private static double tangentAngle(int z, double g, double h) {
    double theta = Math.PI / 6;
    for (int round = 0; round < 50; round++) {
      double tangent = Math.tan(theta);
      double f = theta - 2 * g / z * tangent + h;
      double slope = 1 - 2 * g / z * (1 + tangent * tangent);
      double step = f / slope;
      theta -= step;
      if (!(Math.abs(theta) < Math.PI / 2)) {
        throw new IllegalArgumentException(
            "a gear of " + z + " teeth with this profile shift has no 30-degree tangent");
      }
      if (Math.abs(step) < 1e-14) {
        break;
      }
    }
    return theta;
  }

  /**
   * Returns the diameter of a double-shear pin that lets go at a torque: sqrt(4T/(π d τ)).
   *
   * @param torque torque at which it shears [N mm]
   * @param shaft shaft diameter [mm]
   * @param shear shear strength of the pin [MPa]
   * @return pin diameter [mm]
   */
  public static double shearPin(double torque, double shaft, double shear) {
    Teeth.positive("torque", "N mm", torque);
    Teeth.positive("shaft diameter", "mm", shaft);
    Teeth.positive("shear strength", "MPa", shear);
    return Math.sqrt(4 * torque / (Math.PI * shaft * shear));
  }
}
