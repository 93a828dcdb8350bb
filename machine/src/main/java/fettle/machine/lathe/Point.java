package fettle.machine.lathe;

import fettle.machine.dictionary.Values;

/**
 * A point in a member's own directions.
 *
 * @param x across, towards the operator [mm]
 * @param y up [mm]
 * @param z along the spindle, towards the tailstock [mm]
 */
public record Point(double x, double y, double z) {

  /** The zero of a member. */
  public static final Point ZERO = new Point(0, 0, 0);

  /** Makes a point of its block. */
  public static Point of(Values block) {
    return new Point(block.need("x").value(), block.need("y").value(), block.need("z").value());
  }

  /** Returns this point moved by another. */
  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y, z + other.z);
  }

  /**
   * Returns this point moved along an axis.
   *
   * @param axis the axis
   * @param distance how far [mm]
   */
  public Point along(Axis axis, double distance) {
    return switch (axis) {
      case X -> new Point(x + distance, y, z);
      case Y -> new Point(x, y + distance, z);
      case Z -> new Point(x, y, z + distance);
    };
  }
}
