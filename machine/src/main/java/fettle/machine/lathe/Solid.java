package fettle.machine.lathe;

import fettle.machine.dictionary.Values;

/** A simple solid of a member's envelope, in the member's own directions. */
public sealed interface Solid {

  /**
   * A box with its sides along the axes.
   *
   * @param corner its corner with the least coordinates
   * @param size its size in each direction
   */
  record Box(Point corner, Point size) implements Solid {}

  /**
   * A round body.
   *
   * @param end middle of its end with the least coordinate
   * @param axis direction of its axis
   * @param diameter diameter [mm]
   * @param length length [mm]
   */
  record Cylinder(Point end, Axis axis, double diameter, double length) implements Solid {}

  /** Makes a solid of its block. */
  static Solid of(Values block) {
    Point at = block.block("at").map(Point::of).orElse(Point.ZERO);
    if (block.shape().equals("solid/box")) {
      return new Box(at, Point.of(block));
    }
    return new Cylinder(
        at,
        Axis.valueOf(block.needText("axis")),
        block.need("diameter").value(),
        block.need("length").value());
  }
}
