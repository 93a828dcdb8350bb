package fettle.mechanics.bearings;

/**
 * Speeds up to which grease-packed bearings run without special care, as speed times pitch
 * diameter.
 *
 * @see Sources#SPEED_GUIDE
 */
public enum SpeedGuide {
  /** Deep groove, open or shielded. */
  DEEP_GROOVE("deep_groove", 500_000),
  /** Deep groove with contact seals. */
  DEEP_GROOVE_SEALED("deep_groove_sealed", 350_000),
  /** Angular contact 15 degrees, accuracy P4. */
  ANGULAR_15("angular_15", 900_000),
  /** Angular contact 25 degrees. */
  ANGULAR_25("angular_25", 700_000),
  /** Angular contact 40 degrees. */
  ANGULAR_40("angular_40", 400_000),
  /** Tapered roller. */
  TAPERED("tapered", 250_000),
  /** Thrust ball. */
  THRUST_BALL("thrust_ball", 120_000);

  private final String word;
  private final double product;

  SpeedGuide(String word, double product) {
    this.word = word;
    this.product = product;
  }

  /** Returns the word by which it is asked for. */
  public String word() {
    return word;
  }

  /**
   * Returns the guide value.
   *
   * @return n dm [mm/min]
   */
  public double product() {
    return product;
  }

  /** Returns the guide of a word. */
  public static SpeedGuide of(String word) {
    for (SpeedGuide guide : values()) {
      if (guide.word.equals(word)) {
        return guide;
      }
    }
    throw new IllegalArgumentException("type: found '" + word + "', expected one of the listed");
  }

  /**
   * Returns the factor by which preload lowers the guide.
   *
   * @param preload none, light or heavy
   * @return factor [-]
   */
  public static double preloadFactor(String preload) {
    return switch (preload) {
      case "light" -> 0.75;
      case "heavy" -> 0.5;
      default -> 1;
    };
  }

  /**
   * Returns the highest speed by the guide.
   *
   * @param pitch dm [mm]
   * @param factor factor for preload [-]
   * @return n [rad/s]
   */
  public double speed(double pitch, double factor) {
    return product * factor / Need.positive("dm", pitch) * Math.PI / 30;
  }
}
