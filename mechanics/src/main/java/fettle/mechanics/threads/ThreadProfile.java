package fettle.mechanics.threads;

/**
 * Basic sizes of a thread: the diameters before any tolerance.
 *
 * @param form thread form
 * @param d major diameter of the screw [mm]
 * @param p pitch, not the lead [mm]
 */
public record ThreadProfile(ThreadForm form, double d, double p) {

  private static final double H60 = Math.sqrt(3) / 2;
  private static final double HIGHEST_PITCH_SHARE = 0.6;

  /** Refuses what is not a thread. */
  public ThreadProfile {
    if (!(d > 0) || !(d <= 1000)) {
      throw new IllegalArgumentException(
          "d = " + d + " mm: expected more than 0 and at most 1000 mm");
    }
    if (!(p > 0) || !(p <= HIGHEST_PITCH_SHARE * d)) {
      throw new IllegalArgumentException(
          "P = "
              + p
              + " mm: expected more than 0 and at most 0.6 d = "
              + HIGHEST_PITCH_SHARE * d
              + " mm; give the pitch, not the lead");
    }
    if (!(coreOf(form, d, p) > 0)) {
      throw new IllegalArgumentException(
          "d = " + d + " mm with P = " + p + " mm leaves no core; check diameter and pitch");
    }
  }

  /**
   * Pitch diameter of screw and nut; {@code d2 = d - 0.649519 P} (60 degrees), {@code d - P/2}
   * (trapezoidal, Acme), {@code d - 0.640327 P} (Whitworth).
   *
   * @return d2 = D2 [mm]
   */
  public double d2() {
    return switch (form) {
      case METRIC, UNIFIED -> d - 0.75 * H60 * p;
      case TRAPEZOIDAL, ACME -> d - p / 2;
      case WHITWORTH -> d - whitworthHeight();
    };
  }

  /**
   * Minor diameter of the nut.
   *
   * @return D1 [mm]
   */
  public double nutMinor() {
    return switch (form) {
      case METRIC, UNIFIED -> d - 1.25 * H60 * p;
      case TRAPEZOIDAL, ACME -> d - p;
      case WHITWORTH -> d - 2 * whitworthHeight();
    };
  }

  /**
   * Major diameter of the nut, at its root.
   *
   * @return D4, for 60 and 55 degree threads D [mm]
   */
  public double nutMajor() {
    return d + 2 * clearance();
  }

  /**
   * Core (minor) diameter of the screw; {@code d3 = d - 1.226869 P} (metric, rounded root), {@code
   * d - P - 2 ac} (trapezoidal).
   *
   * @return d3 [mm]
   */
  public double d3() {
    return coreOf(form, d, p);
  }

  /**
   * Depth of the screw thread.
   *
   * @return h3 [mm]
   */
  public double depth() {
    return (d - d3()) / 2;
  }

  /**
   * Depth on which flanks of screw and nut face each other.
   *
   * @return H1 [mm]
   */
  public double engagement() {
    return (d - nutMinor()) / 2;
  }

  /**
   * Clearance between crest and root on the radius: ac of ISO 2901, half the Acme root clearance; 0
   * for the other forms.
   *
   * @return ac [mm]
   */
  public double clearance() {
    return clearanceOf(form, p);
  }

  /**
   * Height of the sharp triangle.
   *
   * @return H [mm]
   */
  public double triangleHeight() {
    return p / (2 * Math.tan(form.halfAngle()));
  }

  /**
   * Width of the groove at the root of the screw, which is the width of a tool that cuts full depth
   * with no deviation; {@code 0.366025 P - 0.535898 ac} for trapezoidal.
   *
   * @return w0 [mm]
   */
  public double rootFlat() {
    return p / 2 - (d2() - d3()) * Math.tan(form.halfAngle());
  }

  /**
   * Width of the crest of the screw.
   *
   * @return flat at d [mm]
   */
  public double crestFlat() {
    return p / 2 - (d - d2()) * Math.tan(form.halfAngle());
  }

  /**
   * Lead angle at the pitch diameter, {@code tan lambda = Ph/(pi d2)}.
   *
   * @param lead axial advance in one turn [mm]
   * @return lambda [rad]
   */
  public double leadAngle(double lead) {
    return Math.atan(lead / (Math.PI * d2()));
  }

  /**
   * Tensile stress area; {@code pi/4 ((d2+d3)/2)^2}, for Unified {@code pi/4 (d - 0.9743 P)^2}.
   *
   * @return As [mm2]
   */
  public double stressArea() {
    double mean = form == ThreadForm.UNIFIED ? d - 0.9743 * p : (d2() + d3()) / 2;
    return Math.PI / 4 * mean * mean;
  }

  /**
   * Area of the core.
   *
   * @return A3 [mm2]
   */
  public double coreArea() {
    return Math.PI / 4 * d3() * d3();
  }

  private double whitworthHeight() {
    return 0.640327 * p;
  }

  private static double clearanceOf(ThreadForm form, double p) {
    return switch (form) {
      case METRIC, UNIFIED, WHITWORTH -> 0;
      case ACME -> (p >= 2.54 - 1e-9 ? 0.010 : 0.005) * 25.4;
      case TRAPEZOIDAL -> p < 2 ? 0.15 : p < 6 ? 0.25 : p < 14 ? 0.5 : 1;
    };
  }

  private static double coreOf(ThreadForm form, double d, double p) {
    return switch (form) {
      case METRIC -> d - 17.0 / 12 * H60 * p;
      case UNIFIED -> d - 11.0 / 8 * H60 * p;
      case TRAPEZOIDAL, ACME -> d - p - 2 * clearanceOf(form, p);
      case WHITWORTH -> d - 2 * 0.640327 * p;
    };
  }
}
