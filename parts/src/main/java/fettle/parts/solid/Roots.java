package fettle.parts.solid;

import java.util.List;

/** Where a curve passes through a surface or touches it. */
final class Roots {

  private static final double ZERO = 1e-9;

  private Roots() {}

  /** Adds the parameters at which a curve, sampled at equal steps, meets a surface. */
  static void along(Curve curve, Vec[] points, Surface s, List<Double> into) {
    int n = points.length - 1;
    double[] f = new double[n + 1];
    double most = 0;
    for (int i = 0; i <= n; i++) {
      f[i] = s.value(points[i]);
      most = Math.max(most, Math.abs(f[i]));
    }
    if (most < Surface.NEAR) {
      return;
    }
    double step = (curve.to() - curve.from()) / n;
    for (int i = 0; i < n; i++) {
      double t0 = curve.from() + i * step;
      if (Math.abs(f[i]) < ZERO) {
        into.add(touched(curve, s, f, i));
      } else if (Math.abs(f[i + 1]) >= ZERO && f[i] < 0 != f[i + 1] < 0) {
        into.add(zero(curve, s, t0, t0 + step, f[i] < 0));
      }
      touch(curve, s, f, i, into);
    }
    if (Math.abs(f[n]) < ZERO && !curve.closed()) {
      into.add(curve.to());
    }
  }

  private static double zero(Curve curve, Surface s, double from, double to, boolean negative) {
    double low = from;
    double high = to;
    for (int k = 0; k < 56; k++) {
      double middle = (low + high) / 2;
      if (s.value(curve.at(middle)) < 0 == negative) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Between samples of one sign the curve may dip through the surface or touch it. */
  private static void touch(Curve curve, Surface s, double[] f, int i, List<Double> into) {
    int n = f.length - 1;
    int before = i > 0 ? i - 1 : curve.closed() ? n - 1 : -1;
    if (before < 0 || Math.abs(f[i]) < ZERO) {
      return;
    }
    double sign = Math.signum(f[i]);
    double a = f[before] * sign;
    double b = f[i] * sign;
    double c = f[i + 1] * sign;
    if (!(a >= b && c >= b && a > 0 && c > 0) || b > 4 * (Math.max(a, c) - b) + 1e-12) {
      return;
    }
    double step = (curve.to() - curve.from()) / n;
    double t = curve.from() + i * step;
    double lowest = lowest(curve, s, t, step, sign);
    double value = sign * s.value(curve.at(wrap(curve, lowest)));
    if (Math.abs(value) < 1e-8) {
      into.add(wrap(curve, lowest));
    } else if (value < 0) {
      into.add(wrap(curve, zero(curve, s, t - step, lowest, sign < 0)));
      into.add(wrap(curve, zero(curve, s, lowest, t + step, sign > 0)));
    }
  }

  /**
   * Returns where the curve meets the surface near a sample that lies on it: the sample itself if
   * it passes through, the point of touching if it stays on one side, which a sample near it meets
   * within the square of its distance only.
   */
  private static double touched(Curve curve, Surface s, double[] f, int i) {
    int n = f.length - 1;
    double step = (curve.to() - curve.from()) / n;
    double t = curve.from() + i * step;
    int before = i > 0 ? i - 1 : curve.closed() ? n - 1 : -1;
    boolean oneSide =
        before >= 0
            && Math.abs(f[before]) > ZERO
            && Math.abs(f[i + 1]) > ZERO
            && f[before] < 0 == f[i + 1] < 0;
    return oneSide ? wrap(curve, lowest(curve, s, t, step, Math.signum(f[i + 1]))) : t;
  }

  /** Returns where the distance from a surface, counted on one side of it, is least. */
  private static double lowest(Curve curve, Surface s, double t, double step, double sign) {
    double low = t - step;
    double high = t + step;
    double golden = (Math.sqrt(5) - 1) / 2;
    for (int k = 0; k < 70; k++) {
      double p = high - golden * (high - low);
      double q = low + golden * (high - low);
      if (sign * s.value(curve.at(wrap(curve, p))) < sign * s.value(curve.at(wrap(curve, q)))) {
        high = q;
      } else {
        low = p;
      }
    }
    return (low + high) / 2;
  }

  private static double wrap(Curve curve, double t) {
    if (!curve.closed()) {
      return Math.max(curve.from(), Math.min(curve.to(), t));
    }
    double period = curve.to() - curve.from();
    return t < curve.from() ? t + period : t >= curve.to() ? t - period : t;
  }
}
