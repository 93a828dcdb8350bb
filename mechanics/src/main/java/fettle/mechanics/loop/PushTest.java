package fettle.mechanics.loop;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Unit;
import fettle.mechanics.solids.Limits;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Corrects assumed values by readings: least squares with a prior. The unknowns are free; for
 * springs they are the logarithms of compliances, so that none turns negative.
 *
 * @see Sources#LEAST_SQUARES
 */
public final class PushTest {

  private static final int PASSES = 30;

  private final DMatrixRMaj mean;
  private final DMatrixRMaj covariance;
  private final double misfit;

  private PushTest(DMatrixRMaj mean, DMatrixRMaj covariance, double misfit) {
    this.mean = mean;
    this.covariance = covariance;
    this.misfit = misfit;
  }

  /**
   * Returns what is known before any reading, unknowns independent.
   *
   * @param mean assumed values [any]
   * @param deviation one standard deviation of each, above 0 [same]
   */
  public static PushTest before(double[] mean, double[] deviation) {
    DMatrixRMaj p = new DMatrixRMaj(mean.length, mean.length);
    for (int i = 0; i < mean.length; i++) {
      Limits.positive("sd", deviation[i], Unit.ONE);
      p.set(i, i, deviation[i] * deviation[i]);
    }
    return new PushTest(column(mean), p, 0);
  }

  /**
   * A reading: what a model says it should be, and how that depends on the unknowns.
   *
   * @param expected the reading the model expects [reading]
   * @param slope derivative by each unknown [reading per unknown]
   */
  public record Expected(double expected, List<Double> slope) {}

  /**
   * Takes readings in; the model may be curved, it is linearised anew until nothing moves.
   *
   * @param readings the values read [any]
   * @param deviations standard deviation of each reading, above 0 [same]
   * @param model what the unknowns say each reading should be
   */
  public PushTest with(
      double[] readings, double[] deviations, Function<double[], List<Expected>> model) {
    int n = mean.numRows;
    int m = readings.length;
    DMatrixRMaj at = mean.copy();
    DMatrixRMaj gain = new DMatrixRMaj(n, m);
    DMatrixRMaj h = new DMatrixRMaj(m, n);
    for (int pass = 0; pass < PASSES; pass++) {
      List<Expected> expected = model.apply(at.data.clone());
      DMatrixRMaj residual = new DMatrixRMaj(m, 1);
      for (int i = 0; i < m; i++) {
        double r = readings[i] - expected.get(i).expected();
        for (int j = 0; j < n; j++) {
          double slope = expected.get(i).slope().get(j);
          h.set(i, j, slope);
          r -= slope * (mean.get(j) - at.get(j));
        }
        residual.set(i, r);
      }
      gain = gain(h, deviations);
      DMatrixRMaj step = new DMatrixRMaj(n, 1);
      CommonOps_DDRM.mult(gain, residual, step);
      double moved = 0;
      for (int j = 0; j < n; j++) {
        double next = mean.get(j) + step.get(j);
        moved = Math.max(moved, Math.abs(next - at.get(j)));
        at.set(j, next);
      }
      if (moved < 1e-13) {
        break;
      }
    }
    DMatrixRMaj kh = new DMatrixRMaj(n, n);
    CommonOps_DDRM.mult(gain, h, kh);
    DMatrixRMaj left = CommonOps_DDRM.identity(n);
    CommonOps_DDRM.subtractEquals(left, kh);
    DMatrixRMaj p = new DMatrixRMaj(n, n);
    CommonOps_DDRM.mult(left, covariance, p);
    double chi = 0;
    List<Expected> fitted = model.apply(at.data.clone());
    for (int i = 0; i < m; i++) {
      double e = (readings[i] - fitted.get(i).expected()) / deviations[i];
      chi += e * e;
    }
    return new PushTest(at, symmetric(p), chi);
  }

  private DMatrixRMaj gain(DMatrixRMaj h, double[] deviations) {
    int m = h.numRows;
    DMatrixRMaj ph = new DMatrixRMaj(covariance.numRows, m);
    CommonOps_DDRM.multTransB(covariance, h, ph);
    DMatrixRMaj s = new DMatrixRMaj(m, m);
    CommonOps_DDRM.mult(h, ph, s);
    for (int i = 0; i < m; i++) {
      s.add(i, i, deviations[i] * deviations[i]);
    }
    if (!CommonOps_DDRM.invert(s)) {
      throw new IllegalArgumentException("the readings cannot be weighed; give each a deviation");
    }
    DMatrixRMaj k = new DMatrixRMaj(covariance.numRows, m);
    CommonOps_DDRM.mult(ph, s, k);
    return k;
  }

  /**
   * Returns the value of each unknown.
   *
   * @return corrected values [as the unknowns]
   */
  public double[] values() {
    return mean.data.clone();
  }

  /**
   * Returns the standard deviation of each unknown.
   *
   * @return deviations [as the unknowns]
   */
  public double[] deviations() {
    double[] s = new double[mean.numRows];
    Arrays.setAll(s, i -> Math.sqrt(Math.max(0, covariance.get(i, i))));
    return s;
  }

  /**
   * Returns the correlation of two unknowns; beyond ±0.8 these readings do not separate them.
   *
   * @param i number of one unknown
   * @param j number of the other
   * @return correlation, -1 to 1 [-]
   */
  public double correlation(int i, int j) {
    double[] s = deviations();
    return s[i] * s[j] > 0 ? covariance.get(i, j) / (s[i] * s[j]) : i == j ? 1 : 0;
  }

  /**
   * Returns the misfit after the update: sum of squared residuals over variances.
   *
   * @return misfit, near the number of readings if the model holds [-]
   */
  public double misfit() {
    return misfit;
  }

  /**
   * Variance of a target that one more reading would take away.
   *
   * @param target derivative of the target by the unknowns [target per unknown]
   * @param reading derivative of the reading by the unknowns [reading per unknown]
   * @param deviation standard deviation of that reading [reading]
   * @return variance taken away [target squared]
   */
  public double lesson(double[] target, double[] reading, double deviation) {
    double cross = form(target, reading);
    return cross * cross / (form(reading, reading) + deviation * deviation);
  }

  /**
   * Covariance of two linear functions of the unknowns.
   *
   * @param a coefficients of one [a per unknown]
   * @param b coefficients of the other [b per unknown]
   * @return covariance [a times b]
   */
  public double form(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < b.length; j++) {
        sum += a[i] * covariance.get(i, j) * b[j];
      }
    }
    return sum;
  }

  /** Answers the reckoner for springs in series. */
  static Answer reckoned(Given g) {
    double[] k = g.numbers("k");
    double[] factor = spread(g.numbers("factor"), k.length, "factor");
    double[][] h = g.rows("H");
    double[] y = g.numbers("y");
    double[] sd = spread(g.numbers("sd"), y.length, "sd");
    if (k.length == 0 || h.length != y.length || h.length == 0) {
      throw new IllegalArgumentException("H needs one row for each reading in y");
    }
    double[] start = new double[k.length];
    double[] doubt = new double[k.length];
    for (int i = 0; i < k.length; i++) {
      start[i] = -Math.log(Limits.positive("k", k[i], Unit.N_PER_MM));
      if (!(factor[i] > 1)) {
        throw Limits.outside("factor", factor[i], Unit.ONE, "greater than 1");
      }
      doubt[i] = Math.log(factor[i]);
    }
    for (double[] row : h) {
      if (row.length != k.length) {
        throw new IllegalArgumentException("each row of H needs one number for each spring in k");
      }
    }
    for (int i = 0; i < y.length; i++) {
      Limits.positive("y", y[i], Unit.MICRON_PER_N);
      Limits.positive("sd", sd[i], Unit.MICRON_PER_N);
    }
    PushTest after = before(start, doubt).with(y, sd, theta -> series(h, theta));
    double[] rho = new double[k.length * k.length];
    for (int i = 0; i < rho.length; i++) {
      rho[i] = after.correlation(i / k.length, i % k.length);
    }
    Answer a =
        Answer.start()
            .with("k_new", Arrays.stream(after.values()).map(t -> Math.exp(-t)).toArray())
            .with("factor_new", Arrays.stream(after.deviations()).map(Math::exp).toArray())
            .with("rho", rho)
            .with("chi2", after.misfit());
    for (int i = 0; i < k.length; i++) {
      for (int j = 0; j < i; j++) {
        if (Math.abs(after.correlation(i, j)) > 0.8) {
          a =
              a.caution(
                  "Springs "
                      + (j + 1)
                      + " and "
                      + (i + 1)
                      + " are not separable by these readings: push at another height or offset.");
        }
      }
    }
    return after.misfit() > 2 * y.length
        ? a.caution("The readings do not fit: the model lacks a spring; do not force the fit.")
        : a;
  }

  /** Answers the reckoner for compliances that add. */
  static Answer reckonedLinear(Given g) {
    double[] c = g.numbers("c");
    double[] doubt = spread(g.numbers("sd_c"), c.length, "sd_c");
    double[][] h = g.rows("H");
    double[] y = g.numbers("y");
    double[] sd = spread(g.numbers("sd"), y.length, "sd");
    if (c.length == 0 || h.length != y.length || h.length == 0) {
      throw new IllegalArgumentException("H needs one row for each reading in y");
    }
    for (double[] row : h) {
      if (row.length != c.length) {
        throw new IllegalArgumentException("each row of H needs one number for each value in c");
      }
    }
    for (double s : sd) {
      Limits.positive("sd", s, Unit.MICRON_PER_N);
    }
    PushTest after = before(c, doubt).with(y, sd, theta -> sums(h, theta));
    double[] rho = new double[c.length * c.length];
    for (int i = 0; i < rho.length; i++) {
      rho[i] = after.correlation(i / c.length, i % c.length);
    }
    return Answer.start()
        .with("c_new", after.values())
        .with("sd_new", after.deviations())
        .with("rho", rho)
        .with("chi2", after.misfit());
  }

  private static List<Expected> sums(double[][] h, double[] theta) {
    return Arrays.stream(h)
        .map(
            row -> {
              double sum = 0;
              for (int j = 0; j < row.length; j++) {
                sum += row[j] * theta[j];
              }
              return new Expected(sum, Arrays.stream(row).boxed().toList());
            })
        .toList();
  }

  private static List<Expected> series(double[][] h, double[] theta) {
    return Arrays.stream(h)
        .map(
            row -> {
              double sum = 0;
              Double[] slope = new Double[row.length];
              for (int j = 0; j < row.length; j++) {
                slope[j] = row[j] * Math.exp(theta[j]);
                sum += slope[j];
              }
              return new Expected(sum, List.of(slope));
            })
        .toList();
  }

  /**
   * Returns one value for each of so many, from as many or from one.
   *
   * @param values the values given [any]
   * @param count how many are needed
   * @param name what they are
   * @return as many values [same]
   */
  static double[] spread(double[] values, int count, String name) {
    if (values.length == count) {
      return values;
    }
    if (values.length != 1) {
      throw new IllegalArgumentException(
          name + ": found " + values.length + " values, expected 1 or " + count);
    }
    double[] all = new double[count];
    Arrays.fill(all, values[0]);
    return all;
  }

  private static DMatrixRMaj column(double[] values) {
    return new DMatrixRMaj(values.length, 1, true, values.clone());
  }

  private static DMatrixRMaj symmetric(DMatrixRMaj p) {
    DMatrixRMaj s = new DMatrixRMaj(p.numRows, p.numCols);
    for (int i = 0; i < p.numRows; i++) {
      for (int j = 0; j < p.numCols; j++) {
        s.set(i, j, (p.get(i, j) + p.get(j, i)) / 2);
      }
    }
    return s;
  }
}
