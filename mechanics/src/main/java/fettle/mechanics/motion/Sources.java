package fettle.mechanics.motion;

import fettle.mechanics.base.Source;

/** Where the clearance room takes its statements from. */
final class Sources {

  static final Source GEOMETRY = Source.derived("plane geometry of circles, lines and arcs");
  static final Source SEARCH =
      Source.derived("branch and bound on the distance of convex solids, bounds proven");
  static final Source SWING = Source.derived("twice the height of the axis over what is below");

  static final Source ALLOWANCE =
      Source.practice("worst case: everything that takes from the gap is summed");

  private Sources() {}
}
