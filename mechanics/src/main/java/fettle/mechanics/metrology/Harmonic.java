package fettle.mechanics.metrology;

/**
 * One periodic part of an error, {@code A cos(2 pi x/P - phase)}.
 *
 * @param cosine cosine coefficient a [any]
 * @param sine sine coefficient b [same]
 * @param uncertainty standard uncertainty of the amplitude [same]
 * @param significance F of the pair: it counts as found above the 5 % point of F(2, nu) [-]
 */
public record Harmonic(double cosine, double sine, double uncertainty, double significance) {

  /** Reads the pair number {@code k} (from 1) of a fit with terms {@code ak}, {@code bk}. */
  static Harmonic of(LinearFit fit, int k) {
    String one = "a" + k;
    String other = "b" + k;
    double a = fit.value(one);
    double b = fit.value(other);
    double aa = fit.uncertainty(one) * fit.uncertainty(one);
    double bb = fit.uncertainty(other) * fit.uncertainty(other);
    double ab = fit.covariance(one, other);
    double size = Math.hypot(a, b);
    double u =
        size > 0
            ? Math.sqrt(Math.max(0, (a * a * aa + b * b * bb + 2 * a * b * ab)) / (size * size))
            : Math.sqrt((aa + bb) / 2);
    double determinant = aa * bb - ab * ab;
    double f =
        determinant > 0
            ? (a * a * bb - 2 * a * b * ab + b * b * aa) / determinant / 2
            : size > 0 ? 1e12 : 0;
    return new Harmonic(a, b, u, f);
  }

  /**
   * Returns the amplitude.
   *
   * @return {@code sqrt(a^2+b^2)} [any]
   */
  public double amplitude() {
    return Math.hypot(cosine, sine);
  }

  /**
   * Returns the phase.
   *
   * @return {@code atan2(b, a)} [rad]
   */
  public double phase() {
    return Math.atan2(sine, cosine);
  }
}
