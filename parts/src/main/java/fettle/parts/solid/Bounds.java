package fettle.parts.solid;

/**
 * A box with sides along the axes.
 *
 * @param low its lowest corner
 * @param high its highest corner
 */
public record Bounds(Vec low, Vec high) {

  static final Bounds NOTHING =
      new Bounds(
          new Vec(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY),
          new Vec(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY));

  Bounds with(Vec p) {
    return new Bounds(
        new Vec(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()), Math.min(low.z(), p.z())),
        new Vec(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()), Math.max(high.z(), p.z())));
  }

  Bounds with(Bounds b) {
    return with(b.low).with(b.high);
  }

  Bounds grown(double by) {
    Vec d = new Vec(by, by, by);
    return new Bounds(low.minus(d), high.plus(d));
  }

  boolean meets(Bounds b) {
    return low.x() <= b.high.x()
        && b.low.x() <= high.x()
        && low.y() <= b.high.y()
        && b.low.y() <= high.y()
        && low.z() <= b.high.z()
        && b.low.z() <= high.z();
  }

  boolean holds(Vec p) {
    return p.x() >= low.x()
        && p.x() <= high.x()
        && p.y() >= low.y()
        && p.y() <= high.y()
        && p.z() >= low.z()
        && p.z() <= high.z();
  }

  /** Returns the part of a line inside, as two parameters; the second is smaller if it misses. */
  double[] clip(Vec p, Vec d) {
    double from = Double.NEGATIVE_INFINITY;
    double to = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      double a = low.get(i) - p.get(i);
      double b = high.get(i) - p.get(i);
      double k = d.get(i);
      if (Math.abs(k) < 1e-14) {
        if (a > 0 || b < 0) {
          return new double[] {1, 0};
        }
      } else {
        from = Math.max(from, Math.min(a / k, b / k));
        to = Math.min(to, Math.max(a / k, b / k));
      }
    }
    return new double[] {from, to};
  }

  /** Returns the lengths of its sides. */
  public Vec extent() {
    return high.minus(low);
  }

  /**
   * Returns the length of its diagonal.
   *
   * @return diagonal [mm]
   */
  public double diagonal() {
    return extent().length();
  }
}
