package fettle.mechanics.gears;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * A pinion in a ring with internal teeth, on a given centre distance. Signs as in ISO 21771 with a
 * negative number of ring teeth: a positive shift of the ring makes its teeth thicker and its tip
 * circle smaller.
 *
 * @param pinion the pinion
 * @param ringTeeth teeth of the ring, more than the pinion's
 * @param ringShift profile shift of the ring; positive for thicker teeth [-]
 * @param axes actual centre distance [mm]
 */
public record RingPair(Gear pinion, int ringTeeth, double ringShift, double axes) {

  /** Refuses rings that are too small and axes the base circles do not allow. */
  public RingPair {
    Teeth.check("ring", ringTeeth);
    if (ringTeeth <= pinion.teeth()) {
      throw new IllegalArgumentException(
          "ring [teeth] must have more teeth than its pinion of "
              + pinion.teeth()
              + ", found "
              + ringTeeth);
    }
    if (!(Math.abs(ringShift) <= 3)) {
      throw new IllegalArgumentException(
          "profile shift [-] must lie between -3 and 3, found " + ringShift);
    }
    GearPair.workingAngle(
        pinion.module() * (ringTeeth - pinion.teeth()) / 2.0,
        pinion.rack().angle(),
        Teeth.positive("centre distance", "mm", axes));
  }

  /**
   * Returns the pair that runs without play on a centre distance, the ring taking the shift: x1 +
   * x2 = -(z2 - z1)(inv α_w - inv α)/(2 tan α).
   *
   * @param pinion the pinion
   * @param ringTeeth teeth of the ring
   * @param axes centre distance [mm]
   */
  public static RingPair onCentres(Gear pinion, int ringTeeth, double axes) {
    RingPair plain = new RingPair(pinion, ringTeeth, 0, axes);
    double alpha = pinion.rack().angle();
    double sum =
        -(ringTeeth - pinion.teeth())
            * (Involute.inv(plain.workingAngle()) - Involute.inv(alpha))
            / (2 * Math.tan(alpha));
    return new RingPair(pinion, ringTeeth, sum - pinion.shift(), axes);
  }

  /**
   * Returns the pair on the centre distance where it runs without play.
   *
   * @param pinion the pinion
   * @param ringTeeth teeth of the ring
   * @param ringShift profile shift of the ring [-]
   */
  public static RingPair withoutPlay(Gear pinion, int ringTeeth, double ringShift) {
    if (ringTeeth <= pinion.teeth()) {
      throw new IllegalArgumentException(
          "ring [teeth] must have more teeth than its pinion, found " + ringTeeth);
    }
    double alpha = pinion.rack().angle();
    double involute =
        Involute.inv(alpha)
            - 2 * (pinion.shift() + ringShift) * Math.tan(alpha) / (ringTeeth - pinion.teeth());
    if (!(involute >= 0)) {
      throw new IllegalArgumentException(
          "sum of profile shifts [-] is too large for this ring: there is no centre distance"
              + " without play");
    }
    double reference = pinion.module() * (ringTeeth - pinion.teeth()) / 2;
    double working = Involute.angle(involute);
    return new RingPair(
        pinion, ringTeeth, ringShift, reference * Math.cos(alpha) / Math.cos(working));
  }

  /**
   * Returns the reference centre distance m(z2 - z1)/2.
   *
   * @return reference centre distance [mm]
   */
  public double reference() {
    return pinion.module() * (ringTeeth - pinion.teeth()) / 2;
  }

  /**
   * Returns the working pressure angle.
   *
   * @return working pressure angle [rad]
   */
  public double workingAngle() {
    return GearPair.workingAngle(reference(), pinion.rack().angle(), axes);
  }

  /**
   * Returns the ring's base diameter.
   *
   * @return base diameter [mm]
   */
  public double ringBase() {
    return pinion.module() * ringTeeth * Math.cos(pinion.rack().angle());
  }

  /**
   * Returns the ring's tip diameter, m z2 - 2m(h_aP* + x2).
   *
   * @return tip diameter [mm]
   */
  public double ringTip() {
    return pinion.module() * (ringTeeth - 2 * (pinion.rack().addendum() + ringShift));
  }

  /**
   * Returns the ring's root diameter, m z2 + 2m(h_aP* + c_P* - x2).
   *
   * @return root diameter [mm]
   */
  public double ringRoot() {
    return pinion.module()
        * (ringTeeth + 2 * (pinion.rack().addendum() + pinion.rack().clearance() - ringShift));
  }

  /**
   * Returns the contact ratio: (sqrt(r_a1² - r_b1²) - sqrt(r_a2² - r_b2²) + a_w sin α_w)/(πm cos
   * α).
   *
   * @return contact ratio [-]
   */
  public double contactRatio() {
    double tip = pinion.tip(0);
    double pinionPart = Math.sqrt(Math.max(0, tip * tip - pinion.base() * pinion.base())) / 2;
    double ring = ringTip();
    double ringPart = Math.sqrt(Math.max(0, ring * ring - ringBase() * ringBase())) / 2;
    return (pinionPart - ringPart + axes * Math.sin(workingAngle()))
        / (Math.PI * pinion.module() * Math.cos(pinion.rack().angle()));
  }

  /**
   * Returns the base tangent backlash.
   *
   * @param allowances sum of both thickness allowances, negative for thinner teeth [mm]
   * @return base tangent backlash; negative means that the teeth overlap [mm]
   */
  public double backlash(double allowances) {
    double alpha = pinion.rack().angle();
    return -(ringTeeth - pinion.teeth())
            * pinion.module()
            * Math.cos(alpha)
            * (Involute.inv(workingAngle()) - Involute.inv(alpha))
        - 2 * (pinion.shift() + ringShift) * pinion.module() * Math.sin(alpha)
        - allowances * Math.cos(alpha);
  }

  /**
   * Returns the clearance of the pinion's tips in the ring's root.
   *
   * @return tip clearance [mm]
   */
  public double tipClearance() {
    return ringRoot() / 2 - axes - pinion.tip(0) / 2;
  }

  /**
   * Returns how far the ring's tips stay outside the pinion's tangent point: negative means that
   * they meet the pinion below its base circle.
   *
   * @return distance along the line of action [mm]
   */
  public double involuteMargin() {
    double ring = ringTip();
    double ringPart = Math.sqrt(Math.max(0, ring * ring - ringBase() * ringBase())) / 2;
    return ringPart - axes * Math.sin(workingAngle());
  }

  /**
   * Returns the angle by which the tips of pinion and ring miss each other where their tip circles
   * cross: θ1 z1/z2 + inv α_w - inv α_a2 - θ2 with θ1 = acos((r_a2² - r_a1² - a²)/(2a r_a1)) + inv
   * α_a1 - inv α_w and θ2 = acos((a² + r_a2² - r_a1²)/(2a r_a2)). Negative means that they foul.
   *
   * @return angle at the ring's axis [rad]
   */
  public double tipMargin() {
    double first = pinion.tip(0) / 2;
    double second = ringTip() / 2;
    double cos1 = (second * second - first * first - axes * axes) / (2 * axes * first);
    double cos2 = (axes * axes + second * second - first * first) / (2 * axes * second);
    if (Math.abs(cos1) > 1 || Math.abs(cos2) > 1 || second * 2 < ringBase()) {
      return Double.NEGATIVE_INFINITY;
    }
    double working = Involute.inv(workingAngle());
    double theta1 = Math.acos(cos1) + Involute.inv(pinion.angleAt(2 * first)) - working;
    double tipAngle = Math.acos(Math.min(1, ringBase() / (2 * second)));
    return theta1 * pinion.teeth() / ringTeeth + working - Involute.inv(tipAngle) - Math.acos(cos2);
  }

  /** Returns everything about the pair that is doubtful or wrong. */
  public List<Concern> concerns() {
    List<Concern> found = new ArrayList<>();
    GearConcerns.gear("pinion", pinion, pinion.tip(0), found);
    if (ringTip() < ringBase()) {
      found.add(
          Concern.refuse(
              "the ring's tips lie inside its base circle, "
                  + Numbers.fixed(ringTip(), 3)
                  + " mm; shorten them to "
                  + Numbers.fixed(ringBase(), 3)
                  + " mm or more"));
    } else if (involuteMargin() < 0) {
      found.add(
          Concern.refuse(
              "the ring's tips meet the pinion "
                  + Numbers.fixed(-involuteMargin(), 3)
                  + " mm beyond its tangent point: shorten the ring's teeth"));
    }
    if (tipMargin() < 0) {
      found.add(
          Concern.refuse(
              "the tips foul where the tip circles cross: take a larger difference of teeth than "
                  + (ringTeeth - pinion.teeth())));
    }
    if (contactRatio() < 1.2) {
      found.add(Concern.warn("contact ratio is " + Numbers.fixed(contactRatio(), 3)));
    }
    if (tipClearance() < 0.15 * pinion.module()) {
      found.add(
          Concern.refuse(
              "tip clearance is "
                  + Numbers.fixed(tipClearance(), 3)
                  + " mm; "
                  + Numbers.fixed(0.15 * pinion.module(), 3)
                  + " least"));
    }
    if (backlash(0) < -1e-9) {
      found.add(
          Concern.refuse(
              "the teeth overlap by "
                  + Numbers.fixed(-backlash(0), 3)
                  + " mm on the base tangent: the pair cannot be assembled"));
    }
    return List.copyOf(found);
  }
}
