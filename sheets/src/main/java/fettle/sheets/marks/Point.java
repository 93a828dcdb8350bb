package fettle.sheets.marks;

/**
 * A point on paper.
 *
 * @param x to the right [mm]
 * @param y up [mm]
 */
public record Point(double x, double y) {

  /**
   * Returns this point moved.
   *
   * @param dx to the right [mm]
   * @param dy up [mm]
   */
  public Point moved(double dx, double dy) {
    return new Point(x + dx, y + dy);
  }

  /**
   * Returns the distance to another point.
   *
   * @return distance [mm]
   */
  public double to(Point other) {
    return Math.hypot(other.x - x, other.y - y);
  }
}
