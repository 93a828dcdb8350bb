package fettle.mechanics.shafts;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/** Natural frequencies of symmetric matrices by Cholesky reduction. */
final class Modes {

  private Modes() {}

  /**
   * Returns the circular frequencies of {@code K u = w^2 M u}, lowest first; rigid motions give 0.
   *
   * @param stiffness K
   * @param mass M, positive definite
   * @return w [rad/s]
   */
  static double[] frequencies(DMatrixRMaj stiffness, DMatrixRMaj mass) {
    int n = stiffness.numRows;
    double shift = 0;
    for (int i = 0; i < n; i++) {
      shift = Math.max(shift, stiffness.get(i, i) / mass.get(i, i));
    }
    shift *= 1e-9;
    DMatrixRMaj held = stiffness.copy();
    CommonOps_DDRM.add(held, shift, mass, held);
    double[] inverse = reduced(mass, held);
    double[] w = new double[n];
    for (int i = 0; i < n; i++) {
      double square = 1 / inverse[n - 1 - i] - shift;
      w[i] = square > 0 ? Math.sqrt(square) : 0;
    }
    return w;
  }

  /**
   * Returns the whirl frequencies of {@code M u'' - i W G u' + K u = 0}, rising; forward positive,
   * backward negative.
   *
   * @param stiffness K, positive definite
   * @param mass M, positive definite
   * @param gyroscopic G
   * @param speed W [rad/s]
   * @return w [rad/s]
   */
  static double[] whirl(
      DMatrixRMaj stiffness, DMatrixRMaj mass, DMatrixRMaj gyroscopic, double speed) {
    int n = stiffness.numRows;
    DMatrixRMaj left = new DMatrixRMaj(2 * n, 2 * n);
    DMatrixRMaj right = new DMatrixRMaj(2 * n, 2 * n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        left.set(i, n + j, stiffness.get(i, j));
        left.set(n + i, j, stiffness.get(i, j));
        left.set(n + i, n + j, speed * gyroscopic.get(i, j));
        right.set(i, j, stiffness.get(i, j));
        right.set(n + i, n + j, mass.get(i, j));
      }
    }
    return reduced(left, right);
  }

  /** Returns the eigenvalues of A z = w B z, rising; B positive definite. */
  private static double[] reduced(DMatrixRMaj a, DMatrixRMaj b) {
    int n = a.numRows;
    CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(n, true);
    if (!cholesky.decompose(b.copy())) {
      throw new IllegalArgumentException(
          "the shaft is not held, or has parts without mass; it has no natural frequencies");
    }
    DMatrixRMaj l = cholesky.getT(null);
    double[][] c = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        c[i][j] = a.get(i, j);
      }
    }
    forward(l, c);
    double[][] t = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        t[i][j] = c[j][i];
      }
    }
    forward(l, t);
    DMatrixRMaj symmetric = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        symmetric.set(i, j, 0.5 * (t[i][j] + t[j][i]));
      }
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, false, true);
    if (!eigen.decompose(symmetric)) {
      throw new IllegalArgumentException(
          "the sizes, masses and springs lie too far apart for natural frequencies to be found");
    }
    double[] values = new double[n];
    for (int i = 0; i < n; i++) {
      values[i] = eigen.getEigenvalue(i).getReal();
    }
    Arrays.sort(values);
    return values;
  }

  private static void forward(DMatrixRMaj l, double[][] c) {
    int n = c.length;
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < i; k++) {
        double f = l.get(i, k);
        if (f != 0) {
          for (int j = 0; j < n; j++) {
            c[i][j] -= f * c[k][j];
          }
        }
      }
      double d = l.get(i, i);
      for (int j = 0; j < n; j++) {
        c[i][j] /= d;
      }
    }
  }
}
