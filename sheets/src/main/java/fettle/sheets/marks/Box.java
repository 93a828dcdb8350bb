package fettle.sheets.marks;

/**
 * An upright rectangle on paper.
 *
 * @param x0 left [mm]
 * @param y0 bottom [mm]
 * @param x1 right [mm]
 * @param y1 top [mm]
 */
public record Box(double x0, double y0, double x1, double y1) {

  public static final Box NOTHING =
      new Box(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  /** Returns the box round this one and another. */
  public Box with(Box b) {
    return new Box(Math.min(x0, b.x0), Math.min(y0, b.y0), Math.max(x1, b.x1), Math.max(y1, b.y1));
  }

  /** Returns the box round this one and a point. */
  public Box with(double x, double y) {
    return with(new Box(x, y, x, y));
  }

  /** Returns this box grown on all sides. */
  public Box grown(double by) {
    return new Box(x0 - by, y0 - by, x1 + by, y1 + by);
  }

  /** Returns this box moved. */
  public Box moved(double dx, double dy) {
    return new Box(x0 + dx, y0 + dy, x1 + dx, y1 + dy);
  }

  /** Tells whether it overlaps another. */
  public boolean meets(Box b) {
    return x0 < b.x1 && b.x0 < x1 && y0 < b.y1 && b.y0 < y1;
  }

  /** Tells whether it holds another wholly. */
  public boolean holds(Box b) {
    return x0 <= b.x0 && b.x1 <= x1 && y0 <= b.y0 && b.y1 <= y1;
  }

  /**
   * Returns the width.
   *
   * @return width [mm]
   */
  public double width() {
    return x1 - x0;
  }

  /**
   * Returns the height.
   *
   * @return height [mm]
   */
  public double height() {
    return y1 - y0;
  }

  /** Tells whether a straight line passes through it. */
  public boolean crossed(Point a, Point b) {
    double[] range = inside(a, b);
    return range[0] < range[1];
  }

  /**
   * Returns the piece of a straight line that lies inside, as shares of its length; the second is
   * not above the first if there is none.
   *
   * @return start and end of the piece [-]
   */
  public double[] inside(Point a, Point b) {
    double t0 = 0;
    double t1 = 1;
    double[] p = {a.x() - b.x(), b.x() - a.x(), a.y() - b.y(), b.y() - a.y()};
    double[] q = {a.x() - x0, x1 - a.x(), a.y() - y0, y1 - a.y()};
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0) {
        if (q[i] <= 0) {
          return new double[] {1, 0};
        }
      } else if (p[i] < 0) {
        t0 = Math.max(t0, q[i] / p[i]);
      } else {
        t1 = Math.min(t1, q[i] / p[i]);
      }
    }
    return new double[] {t0, t1};
  }
}
