package fettle.mechanics.threads;

import fettle.mechanics.base.Source;

/** The thread forms whose sizes can be computed, each with its flank angle. */
public enum ThreadForm {
  /** ISO metric, 60 degrees. */
  METRIC("metric", "M", 30),
  /** ISO metric trapezoidal, 30 degrees. */
  TRAPEZOIDAL("trapezoidal", "Tr", 15),
  /** Acme, 29 degrees, general purpose. */
  ACME("Acme", "Acme", 14.5),
  /** Unified, 60 degrees. */
  UNIFIED("Unified", "UN", 30),
  /** Whitworth, 55 degrees, rounded. */
  WHITWORTH("Whitworth", "W", 27.5);

  private final String words;
  private final String symbol;
  private final double halfAngleDegrees;

  ThreadForm(String words, String symbol, double halfAngleDegrees) {
    this.words = words;
    this.symbol = symbol;
    this.halfAngleDegrees = halfAngleDegrees;
  }

  /** Returns the name of the form in words. */
  public String words() {
    return words;
  }

  /** Returns the letters that stand for the form in a designation. */
  public String symbol() {
    return symbol;
  }

  /**
   * Returns half the angle between the flanks, in the axial plane.
   *
   * @return alpha [rad]
   */
  public double halfAngle() {
    return Math.toRadians(halfAngleDegrees);
  }

  /** Tells whether sizes of this form are stated in inches. */
  public boolean isInch() {
    return this == ACME || this == UNIFIED || this == WHITWORTH;
  }

  /** Returns where the profile is laid down. */
  public Source source() {
    return switch (this) {
      case METRIC -> Source.memory("ISO 68-1:1998", "basic profile");
      case TRAPEZOIDAL -> Source.page("ISO 2901:2016", "basic and design profiles");
      case ACME -> Source.page("ASME B1.5", "general purpose Acme, Table 2");
      case UNIFIED -> Source.memory("ASME B1.1", "basic profile");
      case WHITWORTH -> Source.page("BS 84:2007", "basic form");
    };
  }
}
