package fettle.mechanics.gears;

/**
 * An external spur gear without its bore: module, teeth, profile shift and basic rack.
 *
 * @param module module m [mm]
 * @param teeth number of teeth z
 * @param shift profile shift coefficient x; positive gives a thicker tooth on a larger blank [-]
 * @param rack basic rack
 */
public record Gear(double module, int teeth, double shift, BasicRack rack) {

  /** Refuses what is no gear. */
  public Gear {
    Teeth.positive("module", "mm", module);
    Teeth.check("gear", teeth);
    if (!(Math.abs(shift) <= 3)) {
      throw new IllegalArgumentException(
          "profile shift [-] must lie between -3 and 3, found " + shift);
    }
    if (!(module <= 1000)) {
      throw new IllegalArgumentException("module [mm] must be at most 1000, found " + module);
    }
  }

  /**
   * Returns a gear with the basic rack of ISO 53.
   *
   * @param module module [mm]
   * @param teeth number of teeth
   * @param shift profile shift coefficient [-]
   * @param angle pressure angle [rad]
   */
  public static Gear of(double module, int teeth, double shift, double angle) {
    return new Gear(module, teeth, shift, BasicRack.of(angle));
  }

  /**
   * Returns the same gear with another profile shift.
   *
   * @param other profile shift coefficient [-]
   */
  public Gear shifted(double other) {
    return new Gear(module, teeth, other, rack);
  }

  /**
   * Returns the reference diameter d = m z.
   *
   * @return reference diameter [mm]
   */
  public double reference() {
    return module * teeth;
  }

  /**
   * Returns the base diameter d_b = d cos α.
   *
   * @return base diameter [mm]
   */
  public double base() {
    return reference() * Math.cos(rack.angle());
  }

  /**
   * Returns the tip diameter d_a = d + 2m(h_aP* + x + k).
   *
   * @param alteration tip alteration coefficient k, 0 or negative [-]
   * @return tip diameter [mm]
   */
  public double tip(double alteration) {
    return reference() + 2 * module * (rack.addendum() + shift + alteration);
  }

  /**
   * Returns the root diameter d_f = d - 2m(h_aP* + c_P* - x).
   *
   * @return root diameter [mm]
   */
  public double root() {
    return reference() - 2 * module * (rack.addendum() + rack.clearance() - shift);
  }

  /**
   * Returns the tooth thickness on the reference circle, s = m(π/2 + 2x tan α).
   *
   * @return thickness without allowance [mm]
   */
  public double thickness() {
    return module * (Math.PI / 2 + 2 * shift * Math.tan(rack.angle()));
  }

  /**
   * Returns the pressure angle on a diameter: cos α_y = d_b/d_y.
   *
   * @param diameter diameter, not below the base diameter [mm]
   * @return pressure angle there [rad]
   */
  public double angleAt(double diameter) {
    double cos = base() / diameter;
    if (!(cos > 0 && cos <= 1 + 1e-12)) {
      throw new IllegalArgumentException(
          "diameter [mm] must not lie below the base circle of " + base() + ", found " + diameter);
    }
    return Math.acos(Math.min(1, cos));
  }

  /**
   * Returns the tooth thickness on a diameter: s_y = d_y(s/d + inv α - inv α_y).
   *
   * @param diameter diameter, not below the base diameter [mm]
   * @return thickness there, along the arc [mm]
   */
  public double thicknessAt(double diameter) {
    return diameter
        * (thickness() / reference()
            + Involute.inv(rack.angle())
            - Involute.inv(angleAt(diameter)));
  }

  /**
   * Returns the least profile shift without undercut by the generating rack, x_min = h_aP* - z
   * sin²α/2.
   *
   * @return least profile shift [-]
   */
  public double shiftWithoutUndercut() {
    double sin = Math.sin(rack.angle());
    return rack.addendum() - teeth * sin * sin / 2;
  }

  /**
   * Returns the root form diameter, where the true involute ends: cos α_F = d_b/d_Ff, tan α_F = tan
   * α - 4(h_aP* - x)/(z sin 2α); the base diameter if the flank is undercut.
   *
   * @return root form diameter [mm]
   */
  public double form() {
    double tangent =
        Math.tan(rack.angle())
            - 4 * (rack.addendum() - shift) / (teeth * Math.sin(2 * rack.angle()));
    return tangent <= 0 ? base() : base() * Math.sqrt(1 + tangent * tangent);
  }

  /**
   * Returns the number of teeth to span: the one that touches nearest the middle of the flanks, at
   * least 2.
   */
  public int spanTeeth() {
    double alpha = rack.angle();
    double ratio = 1 + 2 * shift / teeth;
    double cos = Math.cos(alpha);
    double under = ratio * ratio - cos * cos;
    double k =
        teeth
                / Math.PI
                * (Math.sqrt(Math.max(0, under)) / cos
                    - Involute.inv(alpha)
                    - 2 * shift / teeth * Math.tan(alpha))
            + 0.5;
    return (int) Math.max(2, Math.round(k));
  }

  /**
   * Returns the span over k teeth: W_k = m cos α((k - 1/2)π + z inv α) + 2xm sin α + E_sn cos α.
   *
   * @param spanned number of teeth spanned, 1 or more
   * @param allowance thickness allowance E_sn, negative for thinner teeth [mm]
   * @return base tangent length [mm]
   */
  public double span(int spanned, double allowance) {
    if (spanned < 1 || spanned >= teeth) {
      throw new IllegalArgumentException(
          "teeth spanned [-] must be 1 to " + (teeth - 1) + ", found " + spanned);
    }
    double alpha = rack.angle();
    return module * Math.cos(alpha) * ((spanned - 0.5) * Math.PI + teeth * Involute.inv(alpha))
        + 2 * shift * module * Math.sin(alpha)
        + allowance * Math.cos(alpha);
  }

  /**
   * Returns the diameter on which the jaws touch when a span is taken: sqrt(d_b² + W²).
   *
   * @param span base tangent length [mm]
   * @return contact diameter [mm]
   */
  public double spanContact(double span) {
    return Math.hypot(base(), span);
  }

  /**
   * Returns the profile shift a span tells of.
   *
   * @param span measured base tangent length [mm]
   * @param spanned number of teeth spanned
   * @return profile shift, thinning of the teeth included [-]
   */
  public double shiftFromSpan(double span, int spanned) {
    double zero = shifted(0).span(spanned, 0);
    return (span - zero) / (2 * module * Math.sin(rack.angle()));
  }

  /**
   * Returns the size over two pins: inv α_K = s/d + inv α + D_M/d_b - π/z, d_K = d_b/cos α_K, M =
   * d_K + D_M, for an odd number of teeth d_K cos(π/2z) + D_M.
   *
   * @param pin pin diameter D_M [mm]
   * @param allowance thickness allowance E_sn, negative for thinner teeth [mm]
   * @return size over pins [mm]
   */
  public double overPins(double pin, double allowance) {
    double centre = pinCentre(pin, allowance);
    double across = teeth % 2 == 0 ? centre : centre * Math.cos(Math.PI / (2 * teeth));
    return across + pin;
  }

  /**
   * Returns the diameter on which the centres of the pins lie.
   *
   * @param pin pin diameter [mm]
   * @param allowance thickness allowance, negative for thinner teeth [mm]
   * @return diameter of the pin centres [mm]
   */
  public double pinCentre(double pin, double allowance) {
    return base() / Math.cos(pinAngle(pin, allowance));
  }

  /**
   * Returns the diameter on which the pins touch the flanks.
   *
   * @param pin pin diameter [mm]
   * @param allowance thickness allowance, negative for thinner teeth [mm]
   * @return contact diameter [mm]; below the base circle the pin is too small
   */
  public double pinContact(double pin, double allowance) {
    return Math.hypot(base(), base() * Math.tan(pinAngle(pin, allowance)) - pin);
  }

  private double pinAngle(double pin, double allowance) {
    Teeth.positive("pin diameter", "mm", pin);
    double involute =
        (thickness() + allowance) / reference()
            + Involute.inv(rack.angle())
            + pin / base()
            - Math.PI / teeth;
    if (!(involute > 0 && involute <= 3)) {
      throw new IllegalArgumentException(
          "pin diameter [mm] of "
              + pin
              + " does not rest on the flanks of this gear; about "
              + 1.7 * module
              + " would");
    }
    return Involute.angle(involute);
  }

  /**
   * Returns the profile shift a size over pins tells of.
   *
   * @param size measured size over pins [mm]
   * @param pin pin diameter [mm]
   * @return profile shift, thinning of the teeth included [-]
   */
  public double shiftFromPins(double size, double pin) {
    double odd = teeth % 2 == 0 ? 1 : Math.cos(Math.PI / (2 * teeth));
    double centre = (Teeth.positive("size over pins", "mm", size) - pin) / odd;
    double involute = Involute.inv(angleAt(centre));
    double half = involute - Involute.inv(rack.angle()) - pin / base() + Math.PI / teeth;
    double thickness = half * reference();
    return (thickness / module - Math.PI / 2) / (2 * Math.tan(rack.angle()));
  }

  /**
   * Returns the chordal thickness on the reference circle: d sin(s/d).
   *
   * @return chordal thickness [mm]
   */
  public double chord() {
    return reference() * Math.sin(thickness() / reference());
  }

  /**
   * Returns the chordal height, from the tip circle to the chord: h_a + d/2(1 - cos(s/d)).
   *
   * @param tip actual tip diameter [mm]
   * @return chordal height [mm]
   */
  public double chordHeight(double tip) {
    return (tip - reference()) / 2 + reference() / 2 * (1 - Math.cos(thickness() / reference()));
  }

  /**
   * Returns the number of the form cutter of the series of eight: 1 for 135 teeth to a rack, 8 for
   * 12 and 13 teeth; 0 if no cutter of the series serves.
   */
  public int cutterNumber() {
    int[] fewest = {135, 55, 35, 26, 21, 17, 14, 12};
    for (int i = 0; i < fewest.length; i++) {
      if (teeth >= fewest[i]) {
        return i + 1;
      }
    }
    return 0;
  }
}
