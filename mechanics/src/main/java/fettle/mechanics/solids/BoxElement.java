package fettle.mechanics.solids;

/**
 * The 8-node box with incompatible modes (Taylor, Beresford, Wilson): it bends exactly with one
 * cell through the thickness. Node {@code n} sits at the high side of axis {@code a} if bit {@code
 * a} of {@code n} is set; unknown {@code 3 n + c}.
 *
 * @see Sources#TAYLOR
 */
public final class BoxElement {

  private BoxElement() {}

  /**
   * Stiffness of a box cell.
   *
   * @param h sizes along x, y, z [mm]
   * @param material the material
   * @return 24 by 24, by rows [N/mm]
   */
  public static double[] stiffness(double[] h, Elastic material) {
    return condensed(h, material, true);
  }

  /**
   * Stiffness of the plain cell without incompatible modes: too stiff in bending, a bound from the
   * stiff side.
   *
   * @param h sizes along x, y, z [mm]
   * @param material the material
   * @return 24 by 24, by rows [N/mm]
   */
  public static double[] plainStiffness(double[] h, Elastic material) {
    return condensed(h, material, false);
  }

  private static double[] condensed(double[] h, Elastic material, boolean modes) {
    int size = modes ? 33 : 24;
    double[][] k = new double[size][size];
    double g = 1 / Math.sqrt(3);
    double volume = h[0] * h[1] * h[2] / 8;
    for (int point = 0; point < 8; point++) {
      double[] xi = new double[3];
      for (int a = 0; a < 3; a++) {
        xi[a] = (point >> a & 1) == 1 ? g : -g;
      }
      double[][] grad = gradients(xi, h, size / 3);
      addPoint(k, grad, material, volume);
    }
    for (int m = size - 1; m >= 24; m--) {
      for (int i = 0; i < m; i++) {
        double f = k[i][m] / k[m][m];
        for (int j = 0; j < m; j++) {
          k[i][j] -= f * k[m][j];
        }
      }
    }
    double[] flat = new double[576];
    for (int i = 0; i < 24; i++) {
      for (int j = 0; j < 24; j++) {
        flat[24 * i + j] = (k[i][j] + k[j][i]) / 2;
      }
    }
    return flat;
  }

  private static double[][] gradients(double[] xi, double[] h, int functions) {
    double[][] grad = new double[functions][3];
    for (int n = 0; n < 8; n++) {
      for (int a = 0; a < 3; a++) {
        double v = 1;
        for (int b = 0; b < 3; b++) {
          double s = (n >> b & 1) == 1 ? 1 : -1;
          v *= b == a ? s / h[a] : (1 + s * xi[b]) / 2;
        }
        grad[n][a] = v;
      }
    }
    for (int m = 8; m < functions; m++) {
      grad[m][m - 8] = -2 * xi[m - 8] * 2 / h[m - 8];
    }
    return grad;
  }

  private static void addPoint(double[][] k, double[][] grad, Elastic material, double weight) {
    double mu = material.shear() * weight;
    double lambda = material.lame() * weight;
    for (int m = 0; m < grad.length; m++) {
      for (int n = 0; n < grad.length; n++) {
        double dot = grad[m][0] * grad[n][0] + grad[m][1] * grad[n][1] + grad[m][2] * grad[n][2];
        for (int i = 0; i < 3; i++) {
          for (int j = 0; j < 3; j++) {
            k[3 * m + i][3 * n + j] +=
                lambda * grad[m][i] * grad[n][j]
                    + mu * grad[m][j] * grad[n][i]
                    + (i == j ? mu * dot : 0);
          }
        }
      }
    }
  }

  /**
   * The same stiffness by symmetry: with sums and differences over the corners it falls into eight
   * blocks of three. Block {@code r} couples component {@code c} of mode {@code r xor 2^c}; its six
   * numbers are xx, yy, zz, xy, xz, yz.
   *
   * @param stiffness 24 by 24, by rows [N/mm]
   * @return 48 numbers, block by block [N/mm]
   */
  static double[] blocks(double[] stiffness) {
    double[] blocks = new double[48];
    int[][] pair = {{0, 0}, {1, 1}, {2, 2}, {0, 1}, {0, 2}, {1, 2}};
    for (int r = 0; r < 8; r++) {
      for (int e = 0; e < 6; e++) {
        int c = pair[e][0];
        int d = pair[e][1];
        blocks[6 * r + e] = modal(stiffness, c, r ^ (1 << c), d, r ^ (1 << d));
      }
    }
    return blocks;
  }

  /**
   * One entry of the stiffness between two modes.
   *
   * @param stiffness 24 by 24, by rows [N/mm]
   * @param c component of the one mode
   * @param m the one mode, a bit for each axis along which it changes sign
   * @param d component of the other mode
   * @param n the other mode
   * @return the entry [N/mm]
   */
  static double modal(double[] stiffness, int c, int m, int d, int n) {
    double sum = 0;
    for (int i = 0; i < 8; i++) {
      for (int j = 0; j < 8; j++) {
        sum += sign(m, i) * sign(n, j) * stiffness[24 * (3 * i + c) + 3 * j + d];
      }
    }
    return sum / 64;
  }

  /**
   * Sign of a mode at a corner.
   *
   * @param mode bit a set: changes sign along axis a
   * @param node corner
   * @return 1 or -1 [-]
   */
  static int sign(int mode, int node) {
    return (Integer.bitCount(mode & ~node & 7) & 1) == 0 ? 1 : -1;
  }

  /**
   * Greatest eigenvalue of a cell's stiffness scaled by its diagonal.
   *
   * @param stiffness 24 by 24, by rows [N/mm]
   * @return the eigenvalue [-]
   */
  static double greatest(double[] stiffness) {
    double[] blocks = blocks(stiffness);
    double most = 0;
    for (int r = 0; r < 8; r++) {
      double[] s = new double[3];
      for (int c = 0; c < 3; c++) {
        s[c] = 1 / Math.sqrt(stiffness[24 * c + c] / 8);
      }
      double a = blocks[6 * r] * s[0] * s[0];
      double b = blocks[6 * r + 1] * s[1] * s[1];
      double c = blocks[6 * r + 2] * s[2] * s[2];
      double d = blocks[6 * r + 3] * s[0] * s[1];
      double e = blocks[6 * r + 4] * s[0] * s[2];
      double f = blocks[6 * r + 5] * s[1] * s[2];
      double x = 1;
      double y = 0.9;
      double z = 1.1;
      double value = 0;
      for (int i = 0; i < 200; i++) {
        double nx = a * x + d * y + e * z;
        double ny = d * x + b * y + f * z;
        double nz = e * x + f * y + c * z;
        double norm = Math.sqrt(nx * nx + ny * ny + nz * nz);
        if (!(norm > 0)) {
          break;
        }
        value = norm;
        x = nx / norm;
        y = ny / norm;
        z = nz / norm;
      }
      most = Math.max(most, value);
    }
    return most;
  }
}
