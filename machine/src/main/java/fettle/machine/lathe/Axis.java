package fettle.machine.lathe;

/** Directions of the machine by ISO 841: X across, Y up, Z along the spindle. */
public enum Axis {
  X,
  Y,
  Z;

  /** Returns its number: 0 for x, 1 for y, 2 for z. */
  public int number() {
    return switch (this) {
      case X -> 0;
      case Y -> 1;
      case Z -> 2;
    };
  }
}
