package fettle.mechanics.gears;

/** Hand of a screw or worm. */
public enum Hand {
  RIGHT(1),
  LEFT(-1);

  private final int sign;

  Hand(int sign) {
    this.sign = sign;
  }

  /** Returns +1 for right-hand, -1 for left-hand. */
  public int sign() {
    return sign;
  }
}
