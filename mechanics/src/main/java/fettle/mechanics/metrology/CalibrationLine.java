package fettle.mechanics.metrology;

import java.util.List;

/**
 * A straight calibration line through readings, {@code y = y1 + y2 (x - x0)}.
 *
 * @param fit the fit, with coefficients {@code y1} and {@code y2}
 * @param origin the place x0 [x]
 */
public record CalibrationLine(LinearFit fit, double origin) {

  /**
   * Fits a line.
   *
   * @param x places [any]
   * @param y readings [any]
   * @param origin place x0 to which the intercept belongs [same as x]
   */
  public static CalibrationLine of(double[] x, double[] y, double origin) {
    double[][] rows = new double[x.length][];
    for (int i = 0; i < x.length; i++) {
      rows[i] = new double[] {1, x[i] - origin};
    }
    return new CalibrationLine(LeastSquares.fit(List.of("y1", "y2"), rows, y), origin);
  }

  /**
   * Returns the height of the line.
   *
   * @param x place [x]
   * @return height [y]
   */
  public double at(double x) {
    return fit.prediction(row(x));
  }

  /**
   * Returns the standard uncertainty of the height of the line.
   *
   * @param x place [x]
   * @return standard uncertainty [y]
   */
  public double uncertaintyAt(double x) {
    return fit.predictionUncertainty(row(x));
  }

  /**
   * Returns the correlation of intercept and slope.
   *
   * @return correlation [-]
   */
  public double correlation() {
    double below = fit.uncertainty("y1") * fit.uncertainty("y2");
    return below > 0 ? fit.covariance("y1", "y2") / below : 0;
  }

  /**
   * Returns the place at which the line has a height.
   *
   * @param y the height [y]
   * @return the place [x]
   */
  public double inverse(double y) {
    double slope = fit.value("y2");
    if (!(Math.abs(slope) > 0)) {
      throw new IllegalArgumentException("readings: the line is level, expected a slope");
    }
    return origin + (y - fit.value("y1")) / slope;
  }

  /**
   * Returns the standard uncertainty of that place.
   *
   * @param y the height [y]
   * @param u standard uncertainty of the height [y]
   * @return standard uncertainty [x]
   */
  public double inverseUncertainty(double y, double u) {
    double slope = fit.value("y2");
    double[] row = row(inverse(y));
    double line = fit.predictionUncertainty(row);
    return Math.sqrt(u * u + line * line) / Math.abs(slope);
  }

  private double[] row(double x) {
    return new double[] {1, x - origin};
  }
}
