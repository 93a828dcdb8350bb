package fettle.mechanics.solids;

import fettle.mechanics.base.Unit;

/** Torsion constants of bar sections. */
public final class Torsion {

  private Torsion() {}

  /**
   * Torsion constant of a rectangle, {@code J = k1 a b^3}. Saint-Venant: {@code k1 = 1/3 (1 -
   * 192/pi^5 b/a sum tanh(n pi a/(2b))/n^5)}, n odd.
   *
   * @param a longer side [mm]
   * @param b shorter side [mm]
   * @return torsion constant [mm4]
   * @throws IllegalArgumentException if a side is not above 0
   */
  public static double rectangle(double a, double b) {
    double longer = Math.max(a, b);
    double shorter = Math.min(a, b);
    return k1(longer / shorter) * longer * shorter * shorter * shorter;
  }

  /**
   * Coefficient k1 of a rectangle.
   *
   * @param ratio longer over shorter side, at least 1 [-]
   * @return k1 in {@code J = k1 a b^3} [-]
   */
  public static double k1(double ratio) {
    Limits.within("a/b", ratio, 1, 1e12, Unit.ONE);
    double sum = 0;
    for (int n = 199; n >= 1; n -= 2) {
      sum += Math.tanh(n * Math.PI * ratio / 2) / Math.pow(n, 5);
    }
    return (1 - 192 / Math.pow(Math.PI, 5) / ratio * sum) / 3;
  }

  /**
   * Coefficient k2 of a rectangle: greatest shear stress {@code T/(k2 a b^2)}, at the middle of the
   * longer side.
   *
   * @param ratio longer over shorter side, at least 1 [-]
   * @return k2 [-]
   */
  public static double k2(double ratio) {
    double sum = 0;
    for (int n = 199; n >= 1; n -= 2) {
      sum += 1 / (n * (double) n * Math.cosh(Math.min(700, n * Math.PI * ratio / 2)));
    }
    return k1(ratio) / (1 - 8 / (Math.PI * Math.PI) * sum);
  }
}
