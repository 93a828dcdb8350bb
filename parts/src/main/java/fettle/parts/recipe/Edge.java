package fettle.parts.recipe;

/** What becomes of a corner. */
public sealed interface Edge {

  Edge SHARP = new Sharp();

  /** Left as it comes; the general edge note applies. */
  record Sharp() implements Edge {}

  /**
   * A chamfer.
   *
   * @param width its extent along the axis, or along the first face of a block's edge [mm]
   * @param angle its angle to the axis or to that face [rad]
   */
  record Chamfer(double width, double angle) implements Edge {}

  /**
   * A rounding of an outside corner or a fillet in an inside one.
   *
   * @param radius radius [mm]
   */
  record Round(double radius) implements Edge {}

  /**
   * An undercut in the smaller diameter beside a shoulder.
   *
   * @param width width along the axis [mm]
   * @param depth depth below the smaller diameter, measured on the radius [mm]
   */
  record Undercut(double width, double depth) implements Edge {}

  /**
   * Returns a chamfer of 45 degrees.
   *
   * @param width leg of the chamfer [mm]
   */
  static Edge chamfer(double width) {
    return new Chamfer(width, Math.PI / 4);
  }

  /**
   * Returns a rounding.
   *
   * @param radius radius [mm]
   */
  static Edge round(double radius) {
    return new Round(radius);
  }
}
