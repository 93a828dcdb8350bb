package fettle.mechanics.bearings;

/** A table of one quantity over another, read by straight lines between its points. */
final class Curve {

  private final double[] x;
  private final double[] y;

  private Curve(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  /**
   * Makes a curve.
   *
   * @param x abscissae, rising [any]
   * @param y ordinates, as many [any]
   */
  static Curve of(double[] x, double[] y) {
    if (x.length != y.length) {
      throw new IllegalStateException("a curve needs as many ordinates as abscissae");
    }
    return new Curve(x.clone(), y.clone());
  }

  /**
   * Reads the curve; beyond its ends the end value holds.
   *
   * @param at abscissa [as x]
   * @return ordinate [as y]
   */
  double at(double at) {
    if (!(at > x[0])) {
      return y[0];
    }
    for (int i = 1; i < x.length; i++) {
      if (at <= x[i]) {
        return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
      }
    }
    return y[y.length - 1];
  }

  /**
   * Returns the last abscissa.
   *
   * @return end of the table [as x]
   */
  double end() {
    return x[x.length - 1];
  }

  /**
   * Returns the first abscissa.
   *
   * @return start of the table [as x]
   */
  double start() {
    return x[0];
  }
}
