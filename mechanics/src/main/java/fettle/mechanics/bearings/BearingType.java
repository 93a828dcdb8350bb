package fettle.mechanics.bearings;

/** Kinds of rolling bearing a small lathe meets. */
public enum BearingType {
  /** Deep groove ball bearing. */
  DEEP_GROOVE("deep groove ball bearing"),
  /** Self-aligning ball bearing. */
  SELF_ALIGNING("self-aligning ball bearing"),
  /** Spherical roller bearing. */
  SPHERICAL_ROLLER("spherical roller bearing"),
  /** Angular contact ball bearing, single row. */
  ANGULAR_CONTACT("angular contact ball bearing"),
  /** Angular contact ball bearing, double row. */
  ANGULAR_CONTACT_DOUBLE("double row angular contact ball bearing"),
  /** Tapered roller bearing. */
  TAPERED_ROLLER("tapered roller bearing"),
  /** Cylindrical roller bearing. */
  CYLINDRICAL_ROLLER("cylindrical roller bearing"),
  /** Needle roller bearing. */
  NEEDLE_ROLLER("needle roller bearing"),
  /** Thrust ball bearing, one direction. */
  THRUST_BALL("thrust ball bearing, single direction"),
  /** Thrust ball bearing, both directions. */
  THRUST_BALL_DOUBLE("thrust ball bearing, double direction");

  private final String words;

  BearingType(String words) {
    this.words = words;
  }

  /** Returns the name of the trade. */
  public String words() {
    return words;
  }

  /** Returns the kind of a tabulated series. */
  static BearingType ofSeries(String code) {
    return switch (code.charAt(0)) {
      case '5' -> THRUST_BALL;
      case '7' -> ANGULAR_CONTACT;
      case '3' -> code.length() == 2 ? ANGULAR_CONTACT_DOUBLE : TAPERED_ROLLER;
      default -> DEEP_GROOVE;
    };
  }
}
