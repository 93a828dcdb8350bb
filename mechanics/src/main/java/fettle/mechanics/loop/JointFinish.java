package fettle.mechanics.loop;

import java.util.Arrays;

/**
 * Finish of the faces of a joint and its constants in {@code lambda[µm] = C p[kgf/cm2]^m}, the
 * middle of the published band.
 *
 * @see Sources#ITO_NORMAL
 */
public enum JointFinish {
  SCRAPED_25_FINE("scraped-20-25-fine", 0.3, 0.5),
  SCRAPED_25("scraped-20-25", 0.5, 0.5),
  SCRAPED_18("scraped-15-18", 0.9, 0.5),
  SCRAPED_12("scraped-10-12", 1.4, 0.5),
  SCRAPED_ROUGH("scraped-5-12", 1.75, 0.5),
  SCRAPED_ON_GROUND("scraped-on-ground", 0.9, 0.4),
  GROUND("ground", 0.65, 0.45),
  PLANED("planed", 0.6, 0.5);

  private final String word;
  private final double constant;
  private final double exponent;

  JointFinish(String word, double constant, double exponent) {
    this.word = word;
    this.constant = constant;
    this.exponent = exponent;
  }

  /** Returns the words for all finishes. */
  static String[] words() {
    return Arrays.stream(values()).map(f -> f.word).toArray(String[]::new);
  }

  /** Returns the finish of that word. */
  public static JointFinish of(String word) {
    return Arrays.stream(values())
        .filter(f -> f.word.equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "finish: found '" + word + "', expected one of " + Arrays.toString(words())));
  }

  /**
   * Returns the constant C.
   *
   * @return approach in micrometres at 1 kgf/cm2 [-]
   */
  public double constant() {
    return constant;
  }

  /**
   * Returns the exponent m.
   *
   * @return exponent of the pressure [-]
   */
  public double exponent() {
    return exponent;
  }

  /**
   * Normal stiffness per area: {@code dp/dlambda = p^(1-m)/(C m)}.
   *
   * @param pressure mean pressure, above 0 [MPa]
   * @return stiffness per area [N/mm3]
   */
  public double normalStiffness(double pressure) {
    return Slideway.PRESSURE_UNIT
        * Math.pow(pressure * 1000 / Slideway.PRESSURE_UNIT, 1 - exponent)
        / (constant * exponent);
  }
}
