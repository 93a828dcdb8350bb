package fettle.mechanics.motion;

import java.util.List;
import java.util.Optional;

/**
 * The stretch of one axis on which solids can meet, whatever the other axes do within their limits.
 * Outside it they keep the wanted gap to a millionth of a millimetre, and that is proven.
 *
 * @param from where it begins [mm or rad]
 * @param to where it ends [mm or rad]
 * @param low travel lost if the axis comes from its high end [mm or rad]
 * @param high travel lost if the axis comes from its low end [mm or rad]
 * @param hit who is met
 * @param certified whether both ends were found to the tolerance
 */
public record ContactSpan(
    double from, double to, double low, double high, String hit, boolean certified) {

  /**
   * Finds the stretch.
   *
   * @param pairs what may meet
   * @param domain limits of all axes
   * @param axis the axis that moves
   * @param gap wanted gap [mm]
   * @param tolerance how near its ends are found [mm or rad]
   * @return the stretch; none if the whole travel is free
   */
  public static Optional<ContactSpan> of(
      List<Pair> pairs, Domain domain, int axis, double gap, double tolerance) {
    FreeTravel rising = FreeTravel.of(pairs, domain, axis, gap, tolerance, 1);
    if (rising.lost() == 0) {
      return Optional.empty();
    }
    FreeTravel falling = FreeTravel.of(pairs, domain, axis, gap, tolerance, -1);
    return Optional.of(
        new ContactSpan(
            rising.to(),
            falling.to(),
            falling.lost(),
            rising.lost(),
            rising.hit(),
            rising.certified() && falling.certified()));
  }
}
