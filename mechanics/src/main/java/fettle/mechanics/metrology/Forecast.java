package fettle.mechanics.metrology;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Forecast held against measurement, and the parameters that the measurement corrects. */
public final class Forecast {

  private Forecast() {}

  /**
   * Returns the normalised error {@code (x - X)/sqrt(U1^2 + U2^2 - 2cov)}.
   *
   * @param measured measured value [any]
   * @param expandedMeasured its expanded uncertainty, k = 2 [same]
   * @param predicted predicted value [same]
   * @param expandedPredicted its expanded uncertainty, k = 2 [same]
   * @param covariance covariance of the expanded uncertainties, 0 if independent [same, squared]
   * @return En; explained up to 1 in amount [-]
   */
  public static double normalisedError(
      double measured,
      double expandedMeasured,
      double predicted,
      double expandedPredicted,
      double covariance) {
    Require.notNegative("U of the measurement", expandedMeasured);
    Require.notNegative("U of the prediction", expandedPredicted);
    double squared =
        expandedMeasured * expandedMeasured
            + expandedPredicted * expandedPredicted
            - 2 * covariance;
    return (measured - predicted) / Math.sqrt(Require.positive("combined uncertainty", squared));
  }

  /**
   * Agreement of several quantities together.
   *
   * @param chiSquare {@code d^T C^-1 d} [-]
   * @param probability probability of so large a value if all is explained [-]
   * @param shares contribution of each quantity, adding up to chi-square [-]
   */
  public record Agreement(double chiSquare, double probability, List<Double> shares) {}

  /**
   * Tests differences against their covariance.
   *
   * @param differences measured less predicted [any]
   * @param covariance covariance of the differences [squared]
   */
  public static Agreement agreement(double[] differences, double[][] covariance) {
    RealVector d = new ArrayRealVector(differences);
    RealVector solved = solver(covariance, differences.length).solve(d);
    List<Double> shares = new ArrayList<>();
    for (int i = 0; i < differences.length; i++) {
      shares.add(differences[i] * solved.getEntry(i));
    }
    double chi = d.dotProduct(solved);
    return new Agreement(
        chi, Quantiles.chiSquaredTail(chi, differences.length), List.copyOf(shares));
  }

  private static org.hipparchus.linear.DecompositionSolver solver(double[][] matrix, int n) {
    Require.sameLength("covariance", matrix.length, n);
    Require.columns("covariance", matrix, n, "a square matrix");
    try {
      return new CholeskyDecomposition(MatrixUtils.createRealMatrix(matrix), 1e-9, 1e-300)
          .getSolver();
    } catch (org.hipparchus.exception.MathRuntimeException e) {
      throw new IllegalArgumentException(
          "covariance: expected symmetric, with uncertainties above 0 and correlations below 1", e);
    }
  }

  /**
   * Parameters after a measurement.
   *
   * @param parameters corrected parameters
   * @param covariance their covariance
   * @param distance {@code r^T S^-1 r} of the measurement from the prediction [-]
   * @param gate 95 % point up to which an update is allowed [-]
   */
  public record Update(RealVector parameters, RealMatrix covariance, double distance, double gate) {
    /** Tells whether the measurement lies within the gate. */
    public boolean isAllowed() {
      return distance <= gate;
    }
  }

  /**
   * Corrects parameters by a measurement {@code y = H p + e}: {@code S = H C H^T + R}, {@code K = C
   * H^T S^-1}, {@code p + K(y - H p)}, covariance in Joseph's form.
   *
   * @param prior parameters before [any]
   * @param priorCovariance their covariance [squared]
   * @param design H, a row for each measurement [any]
   * @param measured measurements [any]
   * @param noise covariance R of the measurements [squared]
   */
  public static Update update(
      double[] prior,
      double[][] priorCovariance,
      double[][] design,
      double[] measured,
      double[][] noise) {
    int n = prior.length;
    int m = measured.length;
    Require.atLeast("parameters", n, 1);
    Require.atLeast("measurements", m, 1);
    Require.sameLength("prior covariance", priorCovariance.length, n);
    Require.columns("prior covariance", priorCovariance, n, "a square matrix");
    Require.sameLength("H", design.length, m);
    Require.columns("H", design, n, "one number for each parameter");
    Require.sameLength("R", noise.length, m);
    Require.columns("R", noise, m, "a square matrix");
    RealVector p = new ArrayRealVector(prior);
    RealMatrix c = MatrixUtils.createRealMatrix(priorCovariance);
    RealMatrix h = MatrixUtils.createRealMatrix(design);
    RealMatrix r = MatrixUtils.createRealMatrix(noise);
    RealMatrix s = h.multiply(c).multiplyTransposed(h).add(r);
    org.hipparchus.linear.DecompositionSolver solver = solver(symmetric(s).getData(), m);
    RealVector rest = new ArrayRealVector(measured).subtract(h.operate(p));
    RealMatrix gain = solver.solve(h.multiply(c.transpose())).transpose();
    RealMatrix left = MatrixUtils.createRealIdentityMatrix(n).subtract(gain.multiply(h));
    RealMatrix covariance =
        left.multiply(c).multiplyTransposed(left).add(gain.multiply(r).multiplyTransposed(gain));
    return new Update(
        p.add(gain.operate(rest)),
        symmetric(covariance),
        rest.dotProduct(solver.solve(rest)),
        Quantiles.chiSquared(0.95, m));
  }

  private static RealMatrix symmetric(RealMatrix m) {
    return m.add(m.transpose()).scalarMultiply(0.5);
  }

  /**
   * Returns for each parameter the shift, in its own prior standard deviations, that alone would
   * bring the prediction nearest to the measurement, or none if it would not bring it within the
   * gate.
   *
   * @param prior parameters before [any]
   * @param priorCovariance their covariance [squared]
   * @param design H [any]
   * @param measured measurements [any]
   * @param noise covariance of the measurements [squared]
   * @return needed shift of each parameter over its standard deviation; infinite if it is no
   *     suspect [-]
   */
  public static double[] suspects(
      double[] prior,
      double[][] priorCovariance,
      double[][] design,
      double[] measured,
      double[][] noise) {
    int m = measured.length;
    RealVector rest =
        new ArrayRealVector(measured)
            .subtract(MatrixUtils.createRealMatrix(design).operate(new ArrayRealVector(prior)));
    org.hipparchus.linear.DecompositionSolver solver = solver(noise, m);
    double gate = Quantiles.chiSquared(0.95, m);
    double[] shifts = new double[prior.length];
    for (int k = 0; k < prior.length; k++) {
      RealVector column = new ArrayRealVector(Require.column(design, k));
      double below = column.dotProduct(solver.solve(column));
      shifts[k] = Double.POSITIVE_INFINITY;
      double sigma = Math.sqrt(priorCovariance[k][k]);
      if (below > 0 && sigma > 0) {
        double step = column.dotProduct(solver.solve(rest)) / below;
        RealVector after = rest.subtract(column.mapMultiply(step));
        boolean explains = after.dotProduct(solver.solve(after)) <= gate;
        if (explains && Math.abs(step) <= 3 * sigma) {
          shifts[k] = step / sigma;
        }
      }
    }
    return shifts;
  }
}
