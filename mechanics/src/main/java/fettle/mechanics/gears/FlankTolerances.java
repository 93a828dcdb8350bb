package fettle.mechanics.gears;

/**
 * Flank tolerances of ISO 1328-1:2013. Formulas hold for classes 1 to 11, 5 to 1000 teeth, d 5 to
 * 15000 mm, m 0.5 to 70 mm, b 4 to 1200 mm; each class is sqrt 2 wider than the one before.
 */
public final class FlankTolerances {

  private FlankTolerances() {}

  /**
   * Returns the single pitch tolerance f_pT = (0.001d + 0.4m + 5) sqrt(2)^(A-5) µm.
   *
   * @param diameter reference diameter [mm]
   * @param module module [mm]
   * @param grade class A
   * @return tolerance, not rounded [mm]
   */
  public static double singlePitch(double diameter, double module, int grade) {
    return step(diameter, module, grade) * (0.001 * diameter + 0.4 * module + 5);
  }

  /**
   * Returns the cumulative pitch tolerance F_pT = (0.002d + 0.55 sqrt d + 0.7m + 12) sqrt(2)^(A-5)
   * µm.
   *
   * @param diameter reference diameter [mm]
   * @param module module [mm]
   * @param grade class A
   * @return tolerance, not rounded [mm]
   */
  public static double cumulativePitch(double diameter, double module, int grade) {
    return step(diameter, module, grade)
        * (0.002 * diameter + 0.55 * Math.sqrt(diameter) + 0.7 * module + 12);
  }

  /**
   * Returns the run-out tolerance F_rT = 0.9 F_pT (informative).
   *
   * @param diameter reference diameter [mm]
   * @param module module [mm]
   * @param grade class A
   * @return tolerance, not rounded [mm]
   */
  public static double runout(double diameter, double module, int grade) {
    return 0.9 * cumulativePitch(diameter, module, grade);
  }

  /**
   * Returns the profile slope tolerance f_HαT = (0.4m + 0.001d + 4) sqrt(2)^(A-5) µm.
   *
   * @param diameter reference diameter [mm]
   * @param module module [mm]
   * @param grade class A
   * @return tolerance, not rounded [mm]
   */
  public static double profileSlope(double diameter, double module, int grade) {
    return step(diameter, module, grade) * (0.4 * module + 0.001 * diameter + 4);
  }

  /**
   * Returns the profile form tolerance f_fαT = (0.55m + 5) sqrt(2)^(A-5) µm.
   *
   * @param diameter reference diameter [mm]
   * @param module module [mm]
   * @param grade class A
   * @return tolerance, not rounded [mm]
   */
  public static double profileForm(double diameter, double module, int grade) {
    return step(diameter, module, grade) * (0.55 * module + 5);
  }

  /**
   * Returns the total profile tolerance, the root of the sum of squares of slope and form.
   *
   * @param diameter reference diameter [mm]
   * @param module module [mm]
   * @param grade class A
   * @return tolerance, not rounded [mm]
   */
  public static double profile(double diameter, double module, int grade) {
    return Math.hypot(profileSlope(diameter, module, grade), profileForm(diameter, module, grade));
  }

  /**
   * Returns the helix slope tolerance f_HβT = (0.05 sqrt d + 0.35 sqrt b + 4) sqrt(2)^(A-5) µm.
   *
   * @param diameter reference diameter [mm]
   * @param width face width [mm]
   * @param grade class A
   * @return tolerance, not rounded [mm]
   */
  public static double helixSlope(double diameter, double width, int grade) {
    return width(width)
        * step(diameter, 1, grade)
        * (0.05 * Math.sqrt(diameter) + 0.35 * Math.sqrt(width) + 4);
  }

  /**
   * Returns the helix form tolerance f_fβT = (0.07 sqrt d + 0.45 sqrt b + 4) sqrt(2)^(A-5) µm.
   *
   * @param diameter reference diameter [mm]
   * @param width face width [mm]
   * @param grade class A
   * @return tolerance, not rounded [mm]
   */
  public static double helixForm(double diameter, double width, int grade) {
    return width(width)
        * step(diameter, 1, grade)
        * (0.07 * Math.sqrt(diameter) + 0.45 * Math.sqrt(width) + 4);
  }

  /**
   * Returns the total helix tolerance, the root of the sum of squares of slope and form.
   *
   * @param diameter reference diameter [mm]
   * @param width face width [mm]
   * @param grade class A
   * @return tolerance, not rounded [mm]
   */
  public static double helix(double diameter, double width, int grade) {
    return Math.hypot(helixSlope(diameter, width, grade), helixForm(diameter, width, grade));
  }

  /**
   * Rounds a tolerance as the standard does: above 10 µm to 1, from 5 to 10 to 0.5, below 5 to 0.1.
   *
   * @param tolerance tolerance [mm]
   * @return rounded tolerance [mm]
   */
  public static double rounded(double tolerance) {
    double microns = tolerance * 1000;
    if (microns > 10) {
      return Math.rint(microns) / 1000;
    }
    return (microns >= 5 ? Math.rint(microns * 2) / 2 : Math.rint(microns * 10) / 10) / 1000;
  }

  private static double width(double width) {
    if (!(width >= 4 && width <= 1200)) {
      throw new IllegalArgumentException(
          "face width [mm] must be 4 to 1200 for ISO 1328-1:2013, found " + width);
    }
    return 1;
  }

  private static double step(double diameter, double module, int grade) {
    if (grade < 1 || grade > 11) {
      throw new IllegalArgumentException(
          "class [-] must be 1 to 11 for ISO 1328-1:2013, found " + grade);
    }
    if (!(diameter >= 5 && diameter <= 15_000)) {
      throw new IllegalArgumentException(
          "reference diameter [mm] must be 5 to 15000 for ISO 1328-1:2013, found " + diameter);
    }
    if (!(module >= 0.5 && module <= 70)) {
      throw new IllegalArgumentException(
          "module [mm] must be 0.5 to 70 for ISO 1328-1:2013, found " + module);
    }
    return Math.pow(2, (grade - 5) / 2.0) / 1000;
  }
}
