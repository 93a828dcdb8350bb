package fettle.mechanics.solids;

/** The weights of a Chebyshev smoother over the upper part of a spectrum. */
final class Chebyshev {

  final int degree;
  final float[] keep;
  final float[] step;

  /**
   * Smoother of a degree.
   *
   * @param degree number of steps
   * @param greatest estimate of the greatest eigenvalue [-]
   * @param share greatest over least eigenvalue that is damped [-]
   */
  Chebyshev(int degree, double greatest, double share) {
    this.degree = degree;
    keep = new float[degree];
    step = new float[degree];
    double high = 1.1 * greatest;
    double low = high / share;
    double theta = (high + low) / 2;
    double delta = (high - low) / 2;
    double sigma = theta / delta;
    double rho = 1 / sigma;
    step[0] = (float) (1 / theta);
    for (int i = 1; i < degree; i++) {
      double next = 1 / (2 * sigma - rho);
      keep[i] = (float) (next * rho);
      step[i] = (float) (2 * next / delta);
      rho = next;
    }
  }
}
