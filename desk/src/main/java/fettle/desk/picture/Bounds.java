package fettle.desk.picture;

/** What a picture covers; grows with everything put into it. */
final class Bounds {
  private double left = Double.POSITIVE_INFINITY;
  private double top = Double.POSITIVE_INFINITY;
  private double right = Double.NEGATIVE_INFINITY;
  private double foot = Double.NEGATIVE_INFINITY;

  /**
   * Takes in a circle.
   *
   * @param x middle [mm]
   * @param y middle [mm]
   * @param radius radius [mm]
   */
  void take(double x, double y, double radius) {
    left = Math.min(left, x - radius);
    right = Math.max(right, x + radius);
    top = Math.min(top, y - radius);
    foot = Math.max(foot, y + radius);
  }

  /**
   * Returns the left edge.
   *
   * @return left [mm]
   */
  double left() {
    return left;
  }

  /**
   * Returns the upper edge.
   *
   * @return top [mm]
   */
  double top() {
    return top;
  }

  /**
   * Returns the width.
   *
   * @return width, never 0 [mm]
   */
  double width() {
    return Math.max(1, right - left);
  }

  /**
   * Returns the height.
   *
   * @return height, never 0 [mm]
   */
  double height() {
    return Math.max(1, foot - top);
  }
}
