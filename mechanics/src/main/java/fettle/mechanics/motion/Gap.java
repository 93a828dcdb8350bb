package fettle.mechanics.motion;

/**
 * The least distance of two solids over all positions, between proven bounds.
 *
 * @param pair the solids
 * @param lower the distance is nowhere less [mm]
 * @param upper the distance at the witness position; 0 if they touch there [mm]
 * @param position the witness position: of every axis of the machine [mm or rad]
 * @param onFirst nearest point of the first solid, seen from the member both stand on
 * @param onSecond nearest point of the second solid, seen from the same member
 * @param evaluations how many distances were computed
 * @param tolerance how near the bounds were asked to come [mm]
 */
@SuppressWarnings("ArrayRecordComponent")
public record Gap(
    Pair pair,
    double lower,
    double upper,
    double[] position,
    Vector onFirst,
    Vector onSecond,
    int evaluations,
    double tolerance) {

  /** Tells whether the bounds came as near as was asked. */
  public boolean certified() {
    return upper - lower <= tolerance || touches();
  }

  /** Tells whether the solids touch or run into each other at the witness position. */
  public boolean touches() {
    return upper <= 0;
  }
}
