package fettle.mechanics.gears;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * Two external spur gears of one module on a given centre distance.
 *
 * @param pinion first gear
 * @param wheel second gear
 * @param axes actual centre distance a_w, as measured on the housing [mm]
 */
public record GearPair(Gear pinion, Gear wheel, double axes) {

  /** Refuses gears that do not belong together, and axes closer than the base circles. */
  public GearPair {
    double first = Math.PI * pinion.module() * Math.cos(pinion.rack().angle());
    double second = Math.PI * wheel.module() * Math.cos(wheel.rack().angle());
    if (!(Math.abs(first / second - 1) < 0.002)) {
      throw new IllegalArgumentException(
          "base pitches [mm] of the two gears differ, "
              + Numbers.significant(first, 6)
              + " and "
              + Numbers.significant(second, 6)
              + ": module and diametral pitch, or 14.5 and 20 degrees, do not mesh");
    }
    Teeth.positive("centre distance", "mm", axes);
    workingAngle(reference(pinion, wheel), pinion.rack().angle(), axes);
  }

  /**
   * Returns the pair on the centre distance where it runs without play: inv α_w = inv α + 2(x1 +
   * x2)tan α/(z1 + z2).
   */
  public static GearPair withoutPlay(Gear pinion, Gear wheel) {
    double alpha = pinion.rack().angle();
    double involute =
        Involute.inv(alpha)
            + 2
                * (pinion.shift() + wheel.shift())
                * Math.tan(alpha)
                / (pinion.teeth() + wheel.teeth());
    if (!(involute >= 0)) {
      throw new IllegalArgumentException(
          "sum of profile shifts [-] is too negative for these teeth: the pair has no centre"
              + " distance without play");
    }
    double working = Involute.angle(involute);
    return new GearPair(
        pinion, wheel, reference(pinion, wheel) * Math.cos(alpha) / Math.cos(working));
  }

  /**
   * Returns the pair that runs without play on a centre distance, the wheel taking what shift the
   * pinion leaves.
   *
   * @param pinion first gear, with its shift
   * @param wheelTeeth teeth of the second gear
   * @param axes centre distance [mm]
   */
  public static GearPair onCentres(Gear pinion, int wheelTeeth, double axes) {
    double sum =
        shiftSum(
            pinion.teeth(),
            wheelTeeth,
            pinion.module() * (pinion.teeth() + wheelTeeth) / 2,
            pinion.rack().angle(),
            pinion.rack().angle(),
            axes);
    Gear wheel = new Gear(pinion.module(), wheelTeeth, sum - pinion.shift(), pinion.rack());
    return new GearPair(pinion, wheel, axes);
  }

  /**
   * Returns the working pressure angle: cos α_w = a cos α/a_w.
   *
   * @param reference reference centre distance a [mm]
   * @param angle (transverse) pressure angle α [rad]
   * @param axes actual centre distance a_w [mm]
   * @return working pressure angle [rad]
   */
  public static double workingAngle(double reference, double angle, double axes) {
    double cos = reference * Math.cos(angle) / axes;
    if (!(cos > 0 && cos <= 1)) {
      throw new IllegalArgumentException(
          "centre distance [mm] must be above "
              + Numbers.significant(reference * Math.cos(angle), 7)
              + ", where the base circles touch; found "
              + axes);
    }
    return Math.acos(cos);
  }

  /**
   * Returns the sum of profile shifts that runs without play: (z1 + z2)(inv α_wt - inv α_t)/(2 tan
   * α_n).
   *
   * @param first teeth of the first gear
   * @param second teeth of the second gear
   * @param reference reference centre distance [mm]
   * @param transverse transverse pressure angle [rad]
   * @param normal normal pressure angle, the same for spur gears [rad]
   * @param axes actual centre distance [mm]
   * @return sum of profile shift coefficients [-]
   */
  public static double shiftSum(
      int first, int second, double reference, double transverse, double normal, double axes) {
    double working = workingAngle(reference, transverse, axes);
    return (first + second)
        * (Involute.inv(working) - Involute.inv(transverse))
        / (2 * Math.tan(normal));
  }

  /**
   * Returns the reference centre distance a = (d1 + d2)/2.
   *
   * @return reference centre distance [mm]
   */
  public double reference() {
    return reference(pinion, wheel);
  }

  private static double reference(Gear pinion, Gear wheel) {
    return (pinion.reference() + wheel.reference()) / 2;
  }

  /**
   * Returns the working pressure angle.
   *
   * @return working pressure angle [rad]
   */
  public double workingAngle() {
    return workingAngle(reference(), pinion.rack().angle(), axes);
  }

  /**
   * Returns the tip alteration that keeps the standard tip clearance: k = (a_w - a)/m - (x1 + x2),
   * never positive.
   *
   * @return tip alteration coefficient [-]
   */
  public double alteration() {
    return Math.min(0, (axes - reference()) / pinion.module() - (pinion.shift() + wheel.shift()));
  }

  /**
   * Returns the tip diameter of the pinion, shortened by k.
   *
   * @return tip diameter [mm]
   */
  public double pinionTip() {
    return pinion.tip(alteration());
  }

  /**
   * Returns the tip diameter of the wheel, shortened by k.
   *
   * @return tip diameter [mm]
   */
  public double wheelTip() {
    return wheel.tip(alteration());
  }

  /**
   * Returns the transverse contact ratio with the given tip diameters: (sqrt(r_a1² - r_b1²) +
   * sqrt(r_a2² - r_b2²) - a_w sin α_w)/(πm cos α).
   *
   * @param pinionTip tip diameter of the pinion [mm]
   * @param wheelTip tip diameter of the wheel [mm]
   * @return contact ratio [-]
   */
  public double contactRatio(double pinionTip, double wheelTip) {
    return (tipLength(pinion, pinionTip)
            + tipLength(wheel, wheelTip)
            - axes * Math.sin(workingAngle()))
        / (Math.PI * pinion.module() * Math.cos(pinion.rack().angle()));
  }

  /**
   * Returns the contact ratio with the tips shortened by k.
   *
   * @return contact ratio [-]
   */
  public double contactRatio() {
    return contactRatio(pinionTip(), wheelTip());
  }

  private static double tipLength(Gear gear, double tip) {
    double square = tip * tip - gear.base() * gear.base();
    return square <= 0 ? 0 : Math.sqrt(square) / 2;
  }

  /**
   * Returns the start of the active profile of the pinion: d_Nf1² = d_b1² + (2a_w sin α_w -
   * sqrt(d_a2² - d_b2²))².
   *
   * @return start of the active profile [mm]
   */
  public double pinionActive() {
    return active(pinion, wheel, wheelTip());
  }

  /**
   * Returns the start of the active profile of the wheel.
   *
   * @return start of the active profile [mm]
   */
  public double wheelActive() {
    return active(wheel, pinion, pinionTip());
  }

  private double active(Gear gear, Gear mate, double mateTip) {
    double along = 2 * axes * Math.sin(workingAngle()) - 2 * tipLength(mate, mateTip);
    return along <= 0 ? gear.base() : Math.hypot(gear.base(), along);
  }

  /**
   * Returns form diameter minus start of the active profile of the pinion; positive means that the
   * mate's tip digs into its fillet.
   *
   * @return interference of the pinion's root [mm]
   */
  public double pinionInterference() {
    return pinion.form() - pinionActive();
  }

  /**
   * Returns form diameter minus start of the active profile of the wheel.
   *
   * @return interference of the wheel's root [mm]
   */
  public double wheelInterference() {
    return wheel.form() - wheelActive();
  }

  /**
   * Returns the clearance between a tip and the mate's root, the smaller of the two.
   *
   * @param pinionTip tip diameter of the pinion [mm]
   * @param wheelTip tip diameter of the wheel [mm]
   * @return least tip clearance [mm]
   */
  public double tipClearance(double pinionTip, double wheelTip) {
    return Math.min(
        axes - pinionTip / 2 - wheel.root() / 2, axes - wheelTip / 2 - pinion.root() / 2);
  }

  /**
   * Returns the base tangent backlash: j_bn = (z1 + z2)m cos α(inv α_w - inv α) - 2(x_E1 + x_E2)m
   * sin α, with x_E = x + E_sn/(2m tan α). Negative means that the teeth overlap.
   *
   * @param allowances sum of both thickness allowances E_sn, negative for thinner teeth [mm]
   * @return base tangent backlash j_bn [mm]
   */
  public double backlash(double allowances) {
    double alpha = pinion.rack().angle();
    return (pinion.teeth() + wheel.teeth())
            * pinion.module()
            * Math.cos(alpha)
            * (Involute.inv(workingAngle()) - Involute.inv(alpha))
        - 2 * (pinion.shift() + wheel.shift()) * pinion.module() * Math.sin(alpha)
        - allowances * Math.cos(alpha);
  }

  /** Returns everything about the pair that is doubtful or wrong. */
  public List<Concern> concerns() {
    List<Concern> found = new ArrayList<>();
    GearConcerns.gear("pinion", pinion, pinionTip(), found);
    GearConcerns.gear("wheel", wheel, wheelTip(), found);
    GearConcerns.pair(this, found);
    return List.copyOf(found);
  }
}
