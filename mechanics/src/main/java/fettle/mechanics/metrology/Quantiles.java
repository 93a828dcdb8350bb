package fettle.mechanics.metrology;

import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Quantiles and probabilities of the normal, t, chi-square and F distributions. */
public final class Quantiles {

  private static final NormalDistribution NORMAL = new NormalDistribution();
  private static final double MANY = 1e6;

  private Quantiles() {}

  /**
   * Returns the standard normal quantile.
   *
   * @param p probability, 0 to 1 without the ends [-]
   * @return the quantile [-]
   */
  public static double normal(double p) {
    return NORMAL.inverseCumulativeProbability(Require.between("probability", p, 0, 1));
  }

  /**
   * Returns the probability of a standard normal value up to {@code z}.
   *
   * @param z the value [-]
   * @return probability [-]
   */
  public static double normalProbability(double z) {
    return NORMAL.cumulativeProbability(z);
  }

  /**
   * Returns the quantile of Student's t.
   *
   * @param p probability, 0 to 1 without the ends [-]
   * @param nu degrees of freedom, above 0; may be infinite [-]
   * @return the quantile [-]
   */
  public static double student(double p, double nu) {
    Require.between("probability", p, 0, 1);
    freedom(nu);
    if (nu > MANY) {
      double z = normal(p);
      return z + (z * z * z + z) / (4 * nu);
    }
    return polished(new TDistribution(nu, 1e-13), p);
  }

  /**
   * Returns the probability that |t| exceeds a value.
   *
   * @param t the value [-]
   * @param nu degrees of freedom [-]
   * @return two-sided tail probability [-]
   */
  public static double studentTails(double t, double nu) {
    freedom(nu);
    double lower =
        nu > MANY
            ? normalProbability(-Math.abs(t))
            : new TDistribution(nu).cumulativeProbability(-Math.abs(t));
    return 2 * lower;
  }

  /**
   * Returns the quantile of chi-square.
   *
   * @param p probability, 0 to 1 without the ends [-]
   * @param nu degrees of freedom, above 0 [-]
   * @return the quantile [-]
   */
  public static double chiSquared(double p, double nu) {
    Require.between("probability", p, 0, 1);
    Require.positive("degrees of freedom", nu);
    return polished(new ChiSquaredDistribution(nu, 1e-13), p);
  }

  /**
   * Returns the probability that chi-square exceeds a value.
   *
   * @param x the value [-]
   * @param nu degrees of freedom [-]
   * @return upper tail probability [-]
   */
  public static double chiSquaredTail(double x, double nu) {
    Require.positive("degrees of freedom", nu);
    return x <= 0 ? 1 : org.hipparchus.special.Gamma.regularizedGammaQ(nu / 2, x / 2);
  }

  /**
   * Returns the quantile of F.
   *
   * @param p probability, 0 to 1 without the ends [-]
   * @param above degrees of freedom of the numerator [-]
   * @param below degrees of freedom of the denominator [-]
   * @return the quantile [-]
   */
  public static double fisher(double p, double above, double below) {
    Require.between("probability", p, 0, 1);
    return polished(
        new FDistribution(
            Require.positive("degrees of freedom", above),
            Require.positive("degrees of freedom", below),
            1e-13),
        p);
  }

  /**
   * Returns the probability that F exceeds a value.
   *
   * @param f the value [-]
   * @param above degrees of freedom of the numerator [-]
   * @param below degrees of freedom of the denominator [-]
   * @return upper tail probability [-]
   */
  public static double fisherTail(double f, double above, double below) {
    if (f <= 0) {
      return 1;
    }
    return org.hipparchus.special.Beta.regularizedBeta(
        below / (below + above * f), below / 2, above / 2);
  }

  /**
   * Returns the upper confidence bound of a size e of which a noisy vector of two equally uncertain
   * components was observed: the e for which a size up to the observed one has probability 1 - p.
   *
   * @param observed observed size of the vector [any]
   * @param u standard uncertainty of each component [same]
   * @param p confidence, 0.5 to 1 [-]
   * @return the bound [same]
   */
  public static double sizeBound(double observed, double u, double p) {
    Require.notNegative("observed size", observed);
    Require.between("confidence", p, 0.5, 1);
    if (!(u > 0)) {
      return observed;
    }
    double x = observed / u;
    if (x > 30) {
      return observed + normal(p) * u;
    }
    double low = 0;
    double high = x + 10;
    if (riceProbability(x, 0) < 1 - p) {
      return 0;
    }
    for (int i = 0; i < 80; i++) {
      double mid = (low + high) / 2;
      if (riceProbability(x, mid) > 1 - p) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return u * (low + high) / 2;
  }

  /** Probability that a Rice variable of true size e (unit scatter) is at most x. */
  private static double riceProbability(double x, double e) {
    double half = e * e / 2;
    double sum = 0;
    int top = (int) (half + 12 * Math.sqrt(half + 1) + 40);
    for (int k = 0; k <= top; k++) {
      double weight =
          half == 0
              ? (k == 0 ? 1 : 0)
              : Math.exp(
                  -half + k * Math.log(half) - org.hipparchus.special.Gamma.logGamma(k + 1.0));
      if (weight > 1e-18) {
        sum += weight * (1 - chiSquaredTail(x * x, 2.0 + 2 * k));
      }
    }
    return sum;
  }

  private static void freedom(double nu) {
    if (!(nu > 0)) {
      throw new IllegalArgumentException(
          "degrees of freedom: found " + nu + ", expected above 0; take one more reading");
    }
  }

  private static double polished(RealDistribution distribution, double p) {
    double x = distribution.inverseCumulativeProbability(p);
    for (int i = 0; i < 3; i++) {
      double density = distribution.density(x);
      double step = (distribution.cumulativeProbability(x) - p) / density;
      if (density > 0 && Double.isFinite(step) && Math.abs(step) < 1e-3 * (1 + Math.abs(x))) {
        x -= step;
      }
    }
    return x;
  }
}
