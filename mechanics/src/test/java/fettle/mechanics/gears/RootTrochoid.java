package fettle.mechanics.gears;

/** The fillet a rack with rounded corners leaves in a gear, point by point, for comparison. */
final class RootTrochoid {

  private static final int POINTS = 4000;

  private RootTrochoid() {}

  /**
   * Returns the width of the tooth, in modules, where its fillet leans 30 degrees from its centre
   * line. The rack rolls past; the normal at the point of contact passes through the pitch point.
   */
  static double chordAtThirtyDegrees(Gear gear) {
    BasicRack rack = gear.rack();
    double below = rack.addendum() + rack.clearance() - rack.rootRadius() - gear.shift();
    double furthest = below / Math.tan(rack.angle());
    double[] last = point(gear, below, 0);
    double lastLean = Math.PI / 2;
    double lastChord = 2 * Math.abs(last[0]);
    for (int i = 1; i <= POINTS; i++) {
      double[] next = point(gear, below, furthest * i / POINTS);
      double lean = Math.atan2(Math.abs(next[0] - last[0]), Math.abs(next[1] - last[1]));
      if (lastLean > Math.toRadians(30) && lean <= Math.toRadians(30)) {
        double share = (lastLean - Math.toRadians(30)) / (lastLean - lean);
        return lastChord + share * (Math.abs(next[0] + last[0]) - lastChord);
      }
      lastChord = Math.abs(next[0] + last[0]);
      lastLean = lean;
      last = next;
    }
    throw new AssertionError("no point leans 30 degrees");
  }

  private static double[] point(Gear gear, double below, double along) {
    BasicRack rack = gear.rack();
    double radius = gear.teeth() / 2.0;
    double depth = rack.addendum() + rack.clearance();
    double corner =
        Math.PI / 4
            - depth * Math.tan(rack.angle())
            - rack.rootRadius() * (1 - Math.sin(rack.angle())) / Math.cos(rack.angle());
    double stretch = 1 + rack.rootRadius() / Math.hypot(along, below);
    double px = along * stretch;
    double py = radius - below * stretch;
    double turn = (along - corner) / radius + Math.PI / gear.teeth();
    return new double[] {
      px * Math.cos(turn) - py * Math.sin(turn), px * Math.sin(turn) + py * Math.cos(turn)
    };
  }
}
