package fettle.mechanics.metrology;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Linear least squares by Householder QR on a design whose columns are centred (where there is a
 * constant column) and scaled; never by normal equations. A design that cannot tell its terms apart
 * is refused, and the terms are named.
 */
public final class LeastSquares {

  /** Singular values below this share of the largest count as zero. */
  public static final double CUT = 1e-10;

  private static final MathContext DIGITS = new MathContext(60);
  private static final int MOST_TERMS = 60;

  private LeastSquares() {}

  /**
   * Fits {@code y = sum of b_j x_j}.
   *
   * @param names name of each column
   * @param rows design, one row for each reading [any]
   * @param y readings [any]
   */
  public static LinearFit fit(List<String> names, double[][] rows, double[] y) {
    int n = rows.length;
    int p = names.size();
    Require.sameLength("readings", y.length, n);
    Require.atMost("terms of the fit", p, MOST_TERMS);
    if (n <= p) {
      throw new IllegalArgumentException(
          "readings: found "
              + n
              + ", expected at least "
              + (p + 1)
              + " to fit "
              + p
              + " terms with a standard deviation; take more readings");
    }
    Scaled scaled = scaled(rows, p);
    QRDecomposition qr = new QRDecomposition(scaled.matrix);
    RealMatrix upper = qr.getR().getSubMatrix(0, p - 1, 0, p - 1);
    double weakest = weakest(names, rows, scaled, upper);
    double shift = scaled.constant < 0 ? 0 : Sample.of(y).mean();
    RealVector right = new ArrayRealVector(y).mapSubtract(shift);
    RealVector solution = qr.getSolver().solve(right);
    RealVector residuals = right.subtract(scaled.matrix.operate(solution));
    RealVector more = qr.getSolver().solve(residuals);
    solution = solution.add(more);
    residuals = right.subtract(scaled.matrix.operate(solution));
    RealVector coefficients = scaled.back.operate(solution);
    if (scaled.constant >= 0) {
      coefficients.addToEntry(scaled.constant, shift / rows[0][scaled.constant]);
    }
    double squares = residuals.dotProduct(residuals);
    int freedom = n - p;
    double variance = squares / freedom;
    RealMatrix inverse = inverse(upper);
    RealMatrix root = scaled.back.multiply(inverse);
    RealMatrix covariance = root.multiply(root.transpose()).scalarMultiply(variance);
    double total =
        scaled.constant < 0
            ? new ArrayRealVector(y).dotProduct(new ArrayRealVector(y))
            : Sample.of(y).sumOfSquares();
    return new LinearFit(
        List.copyOf(names),
        coefficients,
        covariance,
        residuals,
        freedom,
        Math.sqrt(variance),
        total > 0 ? 1 - squares / total : 1,
        weakest);
  }

  /**
   * Fits a polynomial {@code y = B0 + B1 x + ... } in a centred and scaled variable, and expands it
   * exactly into powers of x.
   *
   * @param x places [any]
   * @param y readings [any]
   * @param degree degree, 0 to 12
   */
  public static LinearFit polynomial(double[] x, double[] y, int degree) {
    Require.sameLength("y", y.length, x.length);
    Require.atLeast("degree", degree, 0);
    Require.atMost("degree", degree, 12);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : x) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    if (degree > 0 && !(high > low)) {
      throw new IllegalArgumentException("x: all places are equal, expected different places");
    }
    double middle = low + (high - low) / 2;
    double half = degree == 0 ? 1 : (high - low) / 2;
    List<String> names = new ArrayList<>();
    double[][] rows = new double[x.length][degree + 1];
    for (int i = 0; i < x.length; i++) {
      double t = (x[i] - middle) / half;
      rows[i][0] = 1;
      for (int k = 1; k <= degree; k++) {
        rows[i][k] = rows[i][k - 1] * t;
      }
    }
    for (int k = 0; k <= degree; k++) {
      names.add("B" + k);
    }
    LinearFit inner = fit(names, rows, y);
    BigDecimal[][] powers = expansion(degree, middle, half);
    return expanded(inner, powers);
  }

  private static LinearFit expanded(LinearFit inner, BigDecimal[][] powers) {
    int p = powers.length;
    RealMatrix root = MatrixUtils.createRealMatrix(p, p);
    double[] coefficients = new double[p];
    RealMatrix inside = squareRoot(inner.covariance());
    for (int i = 0; i < p; i++) {
      BigDecimal sum = BigDecimal.ZERO;
      for (int k = 0; k < p; k++) {
        sum = sum.add(powers[i][k].multiply(new BigDecimal(inner.coefficients().getEntry(k))));
      }
      coefficients[i] = sum.doubleValue();
      for (int j = 0; j < p; j++) {
        BigDecimal entry = BigDecimal.ZERO;
        for (int k = 0; k < p; k++) {
          entry = entry.add(powers[i][k].multiply(new BigDecimal(inside.getEntry(k, j))));
        }
        root.setEntry(i, j, entry.doubleValue());
      }
    }
    return new LinearFit(
        inner.names(),
        new ArrayRealVector(coefficients),
        root.multiply(root.transpose()),
        inner.residuals(),
        inner.freedom(),
        inner.deviation(),
        inner.share(),
        inner.weakest());
  }

  /** Row i holds what each power of t adds to the coefficient of x^i. */
  private static BigDecimal[][] expansion(int degree, double middle, double half) {
    BigDecimal a = BigDecimal.ONE.divide(new BigDecimal(half), DIGITS);
    BigDecimal b = new BigDecimal(-middle).multiply(a, DIGITS);
    BigDecimal[][] powers = new BigDecimal[degree + 1][degree + 1];
    for (BigDecimal[] row : powers) {
      java.util.Arrays.fill(row, BigDecimal.ZERO);
    }
    powers[0][0] = BigDecimal.ONE;
    for (int k = 1; k <= degree; k++) {
      for (int i = 0; i <= k; i++) {
        BigDecimal up = i == 0 ? BigDecimal.ZERO : powers[i - 1][k - 1].multiply(a);
        powers[i][k] = up.add(powers[i][k - 1].multiply(b)).round(DIGITS);
      }
    }
    return powers;
  }

  /** Lower triangular root of a positive definite matrix. */
  private static RealMatrix squareRoot(RealMatrix m) {
    int n = m.getRowDimension();
    RealMatrix root = MatrixUtils.createRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = m.getEntry(i, j);
        for (int k = 0; k < j; k++) {
          sum -= root.getEntry(i, k) * root.getEntry(j, k);
        }
        double entry =
            i == j
                ? Math.sqrt(Math.max(0, sum))
                : root.getEntry(j, j) > 0 ? sum / root.getEntry(j, j) : 0;
        root.setEntry(i, j, entry);
      }
    }
    return root;
  }

  private static RealMatrix inverse(RealMatrix upper) {
    int p = upper.getRowDimension();
    RealMatrix inverse = MatrixUtils.createRealMatrix(p, p);
    for (int column = 0; column < p; column++) {
      for (int i = column; i >= 0; i--) {
        double sum = i == column ? 1 : 0;
        for (int k = i + 1; k <= column; k++) {
          sum -= upper.getEntry(i, k) * inverse.getEntry(k, column);
        }
        inverse.setEntry(i, column, sum / upper.getEntry(i, i));
      }
    }
    return inverse;
  }

  /**
   * Counts the terms that a design can tell apart.
   *
   * @param rows design [any]
   */
  public static int rank(double[][] rows) {
    RealMatrix scaled = scaled(rows, rows[0].length).matrix;
    double[] singular = new SingularValueDecomposition(scaled).getSingularValues();
    int rank = 0;
    for (double value : singular) {
      if (value > CUT * singular[0]) {
        rank++;
      }
    }
    return rank;
  }

  private static double weakest(
      List<String> names, double[][] rows, Scaled scaled, RealMatrix upper) {
    SingularValueDecomposition svd = new SingularValueDecomposition(upper);
    double[] values = svd.getSingularValues();
    double ratio = values[values.length - 1] / values[0];
    if (!(ratio > CUT)) {
      throw new IllegalArgumentException(
          "readings: these places cannot tell apart "
              + String.join(", ", confounded(names, rows, scaled, svd))
              + "; add readings at other places (not a whole number of periods apart)");
    }
    return ratio;
  }

  /** Names the terms that take part in a combination which the readings cannot see. */
  private static List<String> confounded(
      List<String> names, double[][] rows, Scaled scaled, SingularValueDecomposition svd) {
    double[] values = svd.getSingularValues();
    List<String> confounded = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      double norm = new ArrayRealVector(Require.column(rows, i)).getNorm();
      for (int k = 0; k < values.length; k++) {
        RealVector lost = scaled.back.operate(svd.getV().getColumnVector(k));
        boolean takesPart = Math.abs(lost.getEntry(i)) * norm > 0.05 || norm == 0;
        if (!(values[k] > CUT * values[0]) && takesPart && !confounded.contains(names.get(i))) {
          confounded.add(names.get(i));
        }
      }
    }
    return confounded;
  }

  private record Scaled(RealMatrix matrix, RealMatrix back, int constant) {}

  private static Scaled scaled(double[][] rows, int p) {
    int n = rows.length;
    RealMatrix matrix = MatrixUtils.createRealMatrix(n, p);
    RealMatrix back = MatrixUtils.createRealMatrix(p, p);
    int constant = constant(rows, p);
    for (int j = 0; j < p; j++) {
      double[] column = Require.column(rows, j);
      double norm = new ArrayRealVector(column).getNorm();
      double mean = constant < 0 || j == constant ? 0 : Sample.of(column).mean();
      RealVector moved = new ArrayRealVector(column).mapSubtract(mean);
      double size = moved.getNorm();
      boolean nothing = !(size > 1e-12 * norm);
      double scale = nothing ? 1 : size;
      matrix.setColumnVector(j, nothing ? moved.mapMultiply(0) : moved.mapDivide(scale));
      back.setEntry(j, j, 1 / scale);
      if (constant >= 0 && j != constant) {
        back.setEntry(constant, j, -mean / scale / rows[0][constant]);
      }
    }
    return new Scaled(matrix, back, constant);
  }

  private static int constant(double[][] rows, int p) {
    for (int j = 0; j < p; j++) {
      boolean same = rows[0][j] != 0;
      for (double[] row : rows) {
        same &= row[j] == rows[0][j];
      }
      if (same) {
        return j;
      }
    }
    return -1;
  }
}
