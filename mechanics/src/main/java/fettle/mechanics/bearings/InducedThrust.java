package fettle.mechanics.bearings;

/**
 * Axial loads of two single angular contact or tapered bearings that face each other without
 * preload: each bearing's radial load pushes the shaft against the other.
 *
 * @param first axial load of bearing A [N]
 * @param second axial load of bearing B [N]
 * @see Sources#INDUCED
 */
public record InducedThrust(double first, double second) {

  /**
   * Shares an outer thrust that pushes towards bearing B.
   *
   * @param ownFirst thrust that A's radial load makes, S_A [N]
   * @param ownSecond thrust that B's radial load makes, S_B [N]
   * @param outer outer thrust Ka towards B; negative towards A [N]
   */
  public static InducedThrust of(double ownFirst, double ownSecond, double outer) {
    Need.notNegative("S_A", ownFirst);
    Need.notNegative("S_B", ownSecond);
    return ownFirst + outer >= ownSecond
        ? new InducedThrust(ownFirst, ownFirst + outer)
        : new InducedThrust(ownSecond - outer, ownSecond);
  }
}
