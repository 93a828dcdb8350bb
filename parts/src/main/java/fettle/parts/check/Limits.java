package fettle.parts.check;

import fettle.mechanics.base.Source;

/**
 * Limits that recipes are held to.
 *
 * @param wall least wall between two surfaces [mm]
 * @param tapRoom least room under a full thread, in pitches [-]
 */
public record Limits(double wall, double tapRoom) {

  static final Source WALL =
      Source.practice("a wall under 1.5 mm yields under the cutter or the chuck");
  static final Source TAP =
      Source.practice("a tap needs its lead of 3 pitches below the full thread");
  static final Source GEOMETRY = Source.derived("the recipe's own geometry");
  static final Source FIT =
      Source.practice("a fit needs a finished surface, Ra 1.6 or finer up to grade 7");
  static final Source BEND =
      Source.practice("inside radius about the sheet's thickness; hole edge 2 T + R from the bend");
  static final Source BLANK = Source.derived("a whole number of knurl teeth goes round the blank");

  /** Returns the usual limits. */
  public static Limits usual() {
    return new Limits(1.5, 3);
  }
}
