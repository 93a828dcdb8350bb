package fettle.mechanics.metrology;

import java.util.List;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A least-squares fit that is linear in its coefficients.
 *
 * @param names name of each coefficient
 * @param coefficients the coefficients
 * @param covariance their covariance matrix
 * @param residuals reading minus fitted value, in the order of the readings
 * @param freedom readings less coefficients
 * @param deviation residual standard deviation
 * @param share share of the variance about the mean that the fit explains
 * @param weakest smallest singular value of the scaled design over the largest
 */
public record LinearFit(
    List<String> names,
    RealVector coefficients,
    RealMatrix covariance,
    RealVector residuals,
    int freedom,
    double deviation,
    double share,
    double weakest) {

  /** Design so nearly dependent that its coefficients deserve a warning. */
  static final double WEAK = 1e-2;

  private int index(String name) {
    int index = names.indexOf(name);
    if (index < 0) {
      throw new IllegalStateException("the fit has no coefficient " + name + ", only " + names);
    }
    return index;
  }

  /**
   * Returns a coefficient.
   *
   * @return its value [any]
   */
  public double value(String name) {
    return coefficients.getEntry(index(name));
  }

  /**
   * Returns the standard uncertainty of a coefficient.
   *
   * @return standard uncertainty [same]
   */
  public double uncertainty(String name) {
    int i = index(name);
    return Math.sqrt(covariance.getEntry(i, i));
  }

  /**
   * Returns the covariance of two coefficients.
   *
   * @return covariance [product]
   */
  public double covariance(String one, String other) {
    return covariance.getEntry(index(one), index(other));
  }

  /**
   * Returns the sum of squared residuals.
   *
   * @return sum of squares [same, squared]
   */
  public double residualSquares() {
    return deviation * deviation * freedom;
  }

  /**
   * Returns the fitted value for one row of the design.
   *
   * @param row the row, as long as the coefficients [any]
   * @return fitted value [any]
   */
  public double prediction(double[] row) {
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      sum += row[i] * coefficients.getEntry(i);
    }
    return sum;
  }

  /**
   * Returns the standard uncertainty of the fitted value for one row of the design, covariances
   * included.
   *
   * @param row the row, as long as the coefficients [any]
   * @return standard uncertainty [any]
   */
  public double predictionUncertainty(double[] row) {
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      for (int j = 0; j < row.length; j++) {
        sum += row[i] * covariance.getEntry(i, j) * row[j];
      }
    }
    return Math.sqrt(Math.max(0, sum));
  }

  /** Tells whether some coefficients can hardly be told apart by these readings. */
  public boolean isWeak() {
    return weakest < WEAK;
  }
}
