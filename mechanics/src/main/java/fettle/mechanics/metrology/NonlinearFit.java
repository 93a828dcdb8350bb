package fettle.mechanics.metrology;

import java.util.function.BiFunction;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * A least-squares fit of a curve that is bent in its parameters.
 *
 * @param parameters the parameters
 * @param covariance their covariance matrix
 * @param residuals reading minus curve
 * @param deviation residual standard deviation
 */
public record NonlinearFit(
    RealVector parameters, RealMatrix covariance, RealVector residuals, double deviation) {

  /** A curve of x with parameters; derivatives are taken by central differences. */
  public interface Curve {
    /**
     * Returns the height of the curve.
     *
     * @param x place [any]
     * @param p parameters [any]
     * @return height [any]
     */
    double at(double x, double[] p);
  }

  /**
   * Fits a curve by Levenberg-Marquardt.
   *
   * @param curve the curve
   * @param x places [any]
   * @param y readings [any]
   * @param start first guess of the parameters [any]
   */
  public static NonlinearFit fit(Curve curve, double[] x, double[] y, double[] start) {
    int n = x.length;
    int p = start.length;
    Require.sameLength("y", y.length, n);
    if (n <= p) {
      throw new IllegalArgumentException(
          "readings: found " + n + ", expected at least " + (p + 1) + "; take more readings");
    }
    BiFunction<double[], Double, Double> value = (q, at) -> curve.at(at, q);
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(start)
            .target(y)
            .model(q -> new Pair<>(heights(value, x, q.toArray()), slopes(value, x, q.toArray())))
            .maxEvaluations(5000)
            .maxIterations(5000)
            .build();
    RealVector best;
    try {
      best =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(1e-15)
              .withParameterRelativeTolerance(1e-14)
              .withOrthoTolerance(1e-15)
              .optimize(problem)
              .getPoint();
    } catch (MathRuntimeException e) {
      throw new IllegalArgumentException(
          "readings: no curve of this form fits them; check their order and units", e);
    }
    best = polished(value, x, new ArrayRealVector(y), best);
    RealVector residuals = new ArrayRealVector(y).subtract(heights(value, x, best.toArray()));
    double variance = residuals.dotProduct(residuals) / (n - p);
    RealMatrix slopes = slopes(value, x, best.toArray());
    RealMatrix r = new QRDecomposition(slopes).getR().getSubMatrix(0, p - 1, 0, p - 1);
    if (!new QRDecomposition(r).getSolver().isNonSingular()) {
      throw new IllegalArgumentException(
          "readings: they do not fix all parameters of the curve; log longer");
    }
    RealMatrix inverse = new QRDecomposition(r).getSolver().getInverse();
    return new NonlinearFit(
        best,
        inverse.multiply(inverse.transpose()).scalarMultiply(variance),
        residuals,
        Math.sqrt(variance));
  }

  /**
   * Returns the standard uncertainty of a parameter.
   *
   * @param index which parameter
   * @return standard uncertainty [any]
   */
  public double uncertainty(int index) {
    return Math.sqrt(covariance.getEntry(index, index));
  }

  /** Gauss-Newton steps down to the last digits, as long as they do not go uphill. */
  private static RealVector polished(
      BiFunction<double[], Double, Double> curve, double[] x, RealVector y, RealVector start) {
    RealVector best = start;
    double least = squares(curve, x, y, best);
    for (int i = 0; i < 20; i++) {
      RealVector residuals = y.subtract(heights(curve, x, best.toArray()));
      QRDecomposition qr = new QRDecomposition(slopes(curve, x, best.toArray()));
      if (!qr.getSolver().isNonSingular()) {
        return best;
      }
      RealVector next = best.add(qr.getSolver().solve(residuals));
      double squares = squares(curve, x, y, next);
      if (!(squares <= least * (1 + 1e-13))) {
        return best;
      }
      best = next;
      least = squares;
    }
    return best;
  }

  private static double squares(
      BiFunction<double[], Double, Double> curve, double[] x, RealVector y, RealVector q) {
    RealVector residuals = y.subtract(heights(curve, x, q.toArray()));
    return residuals.dotProduct(residuals);
  }

  private static RealVector heights(
      BiFunction<double[], Double, Double> curve, double[] x, double[] q) {
    double[] heights = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      heights[i] = curve.apply(q, x[i]);
    }
    return new ArrayRealVector(heights);
  }

  private static RealMatrix slopes(
      BiFunction<double[], Double, Double> curve, double[] x, double[] q) {
    RealMatrix slopes = MatrixUtils.createRealMatrix(x.length, q.length);
    for (int j = 0; j < q.length; j++) {
      double step = 6e-4 * Math.max(Math.abs(q[j]), 1e-6);
      for (int i = 0; i < x.length; i++) {
        slopes.setEntry(i, j, slope(curve, x[i], q, j, step));
      }
    }
    return slopes;
  }

  /** Central difference of fourth order. */
  private static double slope(
      BiFunction<double[], Double, Double> curve, double x, double[] q, int j, double step) {
    double[] moved = q.clone();
    double[] at = new double[4];
    double[] places = {-2, -1, 1, 2};
    for (int k = 0; k < 4; k++) {
      moved[j] = q[j] + places[k] * step;
      at[k] = curve.apply(moved, x);
    }
    return (at[0] - 8 * at[1] + 8 * at[2] - at[3]) / (12 * step);
  }
}
