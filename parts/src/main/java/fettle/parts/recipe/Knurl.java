package fettle.parts.recipe;

/**
 * A knurl (ISO 13444; forms as DIN 82).
 *
 * @param form form letters
 * @param pitch pitch of the knurl [mm]
 */
public record Knurl(Form form, double pitch) {

  /** Forms of knurl. */
  public enum Form {
    /** Parallel to the axis. */
    RAA,
    /** Left-hand. */
    RBL,
    /** Right-hand. */
    RBR,
    /** Crossed at an angle, raised points. */
    RGE,
    /** Crossed at an angle, recessed points. */
    RGV,
    /** Crossed at right angles, raised points. */
    RKE,
    /** Crossed at right angles, recessed points. */
    RKV
  }

  /** Refuses a pitch that is none. */
  public Knurl {
    if (!(pitch > 0) || pitch > 5) {
      throw new IllegalArgumentException(
          "knurl pitch must lie above 0 and up to 5 mm, found " + pitch);
    }
  }
}
