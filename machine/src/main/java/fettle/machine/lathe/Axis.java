package fettle.machine.lathe;

/** Directions of the machine by ISO 841: X across, Y up, Z along the spindle. */
public enum Axis {
  X,
  Y,
  Z
}
