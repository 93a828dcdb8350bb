package fettle.desk.picture;

import fettle.mechanics.gears.Gear;

/**
 * A gear in its place on a picture.
 *
 * @param gear its geometry
 * @param tip its tip diameter [mm]
 * @param x its middle [mm]
 * @param y its middle [mm]
 * @param phase direction of the middle of one tooth [rad]
 * @param turns turns for each turn of the input, signed [-]
 * @param style kind of line
 */
record Wheel(Gear gear, double tip, double x, double y, double phase, double turns, String style) {

  private static final int FLANK = 5;

  /**
   * Returns a wheel that meshes with this one.
   *
   * @param next its geometry
   * @param nextTip its tip diameter [mm]
   * @param axes centre distance [mm]
   * @param direction from this wheel's middle to the other's [rad]
   */
  Wheel meshing(Gear next, double nextTip, double axes, double direction) {
    double away = toothAway(direction);
    double phaseNext = direction + Math.PI + (away + 0.5) * 2 * Math.PI / next.teeth();
    return new Wheel(
        next,
        nextTip,
        x + axes * Math.cos(direction),
        y + axes * Math.sin(direction),
        phaseNext,
        -turns * gear.teeth() / next.teeth(),
        style);
  }

  /**
   * Returns a wheel on the same shaft, turned so that its first tooth lies where this one's does.
   */
  Wheel beside(Gear next, double nextTip) {
    return new Wheel(next, nextTip, x, y, phase, turns, style);
  }

  /** Returns this wheel with another kind of line. */
  Wheel styled(String other) {
    return new Wheel(gear, tip, x, y, phase, turns, other);
  }

  /**
   * Returns how far past a tooth's middle a direction lies, in pitches.
   *
   * @param direction direction [rad]
   * @return 0 to 1 [-]
   */
  double toothAway(double direction) {
    double pitches = (direction - phase) * gear.teeth() / (2 * Math.PI);
    return pitches - Math.floor(pitches);
  }

  /** Draws the wheel with its pitch circle, its shaft and a mark by which one sees it turn. */
  void draw(Pen pen, double hub, String word) {
    pen.turning(
        x,
        y,
        turns,
        p -> {
          p.trace("gear " + style, outline(), true);
          p.circle("thin", x, y, hub);
          double r = gear.root() / 2 - 0.6 * gear.module();
          if (r > hub * 1.4) {
            p.line(
                "mark",
                x + hub * Math.cos(phase),
                y + hub * Math.sin(phase),
                x + r * Math.cos(phase),
                y + r * Math.sin(phase));
          }
        });
    pen.circle("centre", x, y, gear.reference() / 2);
    if (!word.isEmpty()) {
      pen.words("halo", x, y + 7 * pen.unit(), "middle", word);
    }
  }

  /** Returns the outline: root, involute flanks and tip of every tooth. */
  private double[] outline() {
    double root = gear.root() / 2;
    double low = Math.max(gear.base() / 2, root);
    double top = tip / 2;
    double[] radii = new double[FLANK];
    double[] halves = new double[FLANK];
    for (int i = 0; i < FLANK; i++) {
      double s = (double) i / (FLANK - 1);
      radii[i] = low + (top - low) * s * s;
      radii[i] = Math.max(radii[i], low * (1 + 1e-9));
      halves[i] = Math.max(0.0, gear.thicknessAt(2 * radii[i]) / (2 * radii[i]));
    }
    int per = 2 * FLANK + 2;
    double[] points = new double[2 * per * gear.teeth()];
    int at = 0;
    double pitch = 2 * Math.PI / gear.teeth();
    for (int z = 0; z < gear.teeth(); z++) {
      double middle = phase + z * pitch;
      double foot = Math.min(halves[0] + 0.02 * pitch, 0.49 * pitch);
      at = put(points, at, root, middle - foot);
      for (int i = 0; i < FLANK; i++) {
        at = put(points, at, radii[i], middle - halves[i]);
      }
      for (int i = FLANK - 1; i >= 0; i--) {
        at = put(points, at, radii[i], middle + halves[i]);
      }
      at = put(points, at, root, middle + foot);
    }
    return points;
  }

  private int put(double[] points, int at, double radius, double direction) {
    points[at] = x + radius * Math.cos(direction);
    points[at + 1] = y + radius * Math.sin(direction);
    return at + 2;
  }
}
