package fettle.mechanics.loop;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * A 6 by 6 compliance at a point: displacements and rotations (ux, uy, uz, rx, ry, rz) that forces
 * and moments (Fx, Fy, Fz, Mx, My, Mz) at the same point cause. In mm/N, 1/N and rad/(N mm).
 */
public final class Compliance {

  private final double[] entries;

  private Compliance(double[] entries) {
    this.entries = entries;
  }

  /** Returns the compliance of a rigid body: none. */
  public static Compliance none() {
    return new Compliance(new double[36]);
  }

  /**
   * Returns a compliance by its rows; it must be symmetric to 1e-6 and have no negative diagonal.
   *
   * @param rows six rows of six, order ux uy uz rx ry rz by Fx Fy Fz Mx My Mz [mm/N, 1/N, rad/(N
   *     mm)]
   */
  public static Compliance of(double[][] rows) {
    if (rows.length != 6 || Arrays.stream(rows).anyMatch(r -> r.length != 6)) {
      throw new IllegalArgumentException("a compliance needs six rows of six numbers");
    }
    double[] e = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        double size = Math.sqrt(Math.abs(rows[i][i] * rows[j][j]));
        if (!(Math.abs(rows[i][j] - rows[j][i]) <= 1e-6 * size + 1e-300)
            || !Double.isFinite(rows[i][j])) {
          throw new IllegalArgumentException(
              "a compliance is symmetric (Maxwell); row "
                  + (i + 1)
                  + " and column "
                  + (j + 1)
                  + " differ");
        }
        e[6 * i + j] = (rows[i][j] + rows[j][i]) / 2;
      }
      if (!(rows[i][i] >= 0)) {
        throw new IllegalArgumentException("a compliance has no negative diagonal");
      }
    }
    return new Compliance(e);
  }

  /**
   * Returns springs that do not influence each other.
   *
   * @param diagonal compliance in each of the six directions, 0 for rigid [mm/N and rad/(N mm)]
   */
  public static Compliance diagonal(double... diagonal) {
    double[][] rows = new double[6][6];
    for (int i = 0; i < 6; i++) {
      rows[i][i] = diagonal[i];
    }
    return of(rows);
  }

  /**
   * Returns the compliance at the tip of a straight bar along x, clamped at the other end.
   *
   * @param bar the bar
   */
  public static Compliance of(BarMember bar) {
    double l = bar.length();
    double ey = bar.modulus() * bar.secondMomentY();
    double ez = bar.modulus() * bar.secondMomentZ();
    double[] e = new double[36];
    e[0] = l / (bar.modulus() * bar.area());
    e[7] = l * l * l / (3 * ez) + l * bar.shearFlexibility();
    e[14] = l * l * l / (3 * ey) + l * bar.shearFlexibility();
    e[21] = l / (bar.shearModulus() * bar.torsionConstant());
    e[28] = l / ey;
    e[35] = l / ez;
    e[11] = l * l / (2 * ez);
    e[31] = e[11];
    e[16] = -l * l / (2 * ey);
    e[26] = e[16];
    return new Compliance(e);
  }

  /**
   * Returns one entry.
   *
   * @param row 0 to 5 for ux uy uz rx ry rz
   * @param column 0 to 5 for Fx Fy Fz Mx My Mz
   * @return the entry [mm/N, 1/N or rad/(N mm)]
   */
  public double entry(int row, int column) {
    return entries[6 * row + column];
  }

  /**
   * Returns the compliance at another point of the same rigid end: {@code C_P = T C_O T^T}, {@code
   * u_P = u_O + theta x r}.
   *
   * @param x offset of the new point along x [mm]
   * @param y offset of the new point along y [mm]
   * @param z offset of the new point along z [mm]
   */
  public Compliance movedBy(double x, double y, double z) {
    double[] t = shift(x, y, z);
    return new Compliance(symmetric(times(times(t, entries), transposed(t))));
  }

  /**
   * Returns the same compliance in other axes: {@code C' = Q C Q^T}.
   *
   * @param axes rows are the new axes' unit vectors in the old axes, 3 by 3 [-]
   */
  public Compliance turned(double[][] axes) {
    double[] q = new double[36];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        q[6 * i + j] = axes[i][j];
        q[6 * (i + 3) + j + 3] = axes[i][j];
      }
    }
    return new Compliance(symmetric(times(times(q, entries), transposed(q))));
  }

  /** Returns the sum of two compliances at the same point: bodies one after the other. */
  public Compliance plus(Compliance other) {
    double[] sum = new double[36];
    Arrays.setAll(sum, i -> entries[i] + other.entries[i]);
    return new Compliance(sum);
  }

  /**
   * Returns this compliance times a factor.
   *
   * @param factor the factor, not negative [-]
   */
  public Compliance times(double factor) {
    return new Compliance(Arrays.stream(entries).map(v -> v * factor).toArray());
  }

  /**
   * Displacement along a direction under a unit force along it.
   *
   * @param direction six components of the unit wrench [-]
   * @return {@code d^T C d} [mm/N]
   */
  public double along(double[] direction) {
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        sum += direction[i] * entries[6 * i + j] * direction[j];
      }
    }
    return sum;
  }

  /**
   * Returns the stiffness, the inverse; refuses a compliance that is rigid in some direction.
   *
   * @return 36 entries by rows [N/mm, N, N mm/rad]
   */
  public double[] stiffness() {
    DMatrixRMaj scaled = new DMatrixRMaj(6, 6);
    double[] s = new double[6];
    for (int i = 0; i < 6; i++) {
      s[i] = entries[7 * i] > 0 ? 1 / Math.sqrt(entries[7 * i]) : 0;
    }
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        scaled.set(i, j, s[i] * entries[6 * i + j] * s[j]);
      }
    }
    if (!CommonOps_DDRM.invert(scaled) || !Double.isFinite(CommonOps_DDRM.elementMaxAbs(scaled))) {
      throw new IllegalArgumentException(
          "this compliance is rigid in some direction and has no stiffness matrix");
    }
    double[] k = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        k[6 * i + j] = s[i] * scaled.get(i, j) * s[j];
      }
    }
    return symmetric(k);
  }

  /** Returns the 36 entries by rows. */
  public double[] entries() {
    return entries.clone();
  }

  /**
   * Rigid transfer T of a twist to a point offset by r.
   *
   * @param x offset along x [mm]
   * @param y offset along y [mm]
   * @param z offset along z [mm]
   * @return 36 entries by rows [- and mm]
   */
  static double[] shift(double x, double y, double z) {
    double[] t = new double[36];
    for (int i = 0; i < 6; i++) {
      t[7 * i] = 1;
    }
    t[4] = z;
    t[5] = -y;
    t[9] = -z;
    t[11] = x;
    t[15] = y;
    t[16] = -x;
    return t;
  }

  static double[] times(double[] a, double[] b) {
    double[] c = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int k = 0; k < 6; k++) {
        for (int j = 0; j < 6; j++) {
          c[6 * i + j] += a[6 * i + k] * b[6 * k + j];
        }
      }
    }
    return c;
  }

  static double[] transposed(double[] a) {
    double[] t = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        t[6 * j + i] = a[6 * i + j];
      }
    }
    return t;
  }

  private static double[] symmetric(double[] a) {
    double[] s = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        s[6 * i + j] = (a[6 * i + j] + a[6 * j + i]) / 2;
      }
    }
    return s;
  }
}
