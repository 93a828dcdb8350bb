package fettle.mechanics.metrology;

import java.util.List;

/**
 * Push-pull test: {@code d = c + F/k + sgn(F) G/2 - dir H/2} for forces of at least F0, with
 * stiffness k, lost motion G and width of the hysteresis H.
 *
 * @param fit the fit, with coefficients {@code c}, {@code b} = 1/k, {@code G}, {@code H}
 */
public record PushTest(LinearFit fit) {

  /**
   * Fits the loop.
   *
   * @param force forces, pushing positive [N]
   * @param direction +1 while the force grows, -1 while it falls [-]
   * @param movement movement of the part [mm]
   * @param least force from which the loop is straight [N]
   */
  public static PushTest of(double[] force, double[] direction, double[] movement, double least) {
    Require.sameLength("dir", direction.length, force.length);
    Require.sameLength("movement", movement.length, force.length);
    int n = 0;
    for (int i = 0; i < force.length; i++) {
      if (direction[i] != 1 && direction[i] != -1) {
        throw new IllegalArgumentException(
            "dir: found " + direction[i] + ", expected 1 (force grows) or -1 (force falls)");
      }
      n += used(force[i], least) ? 1 : 0;
    }
    double[][] rows = new double[n][];
    double[] y = new double[n];
    int at = 0;
    for (int i = 0; i < force.length; i++) {
      if (used(force[i], least)) {
        y[at] = movement[i];
        rows[at++] =
            new double[] {1, force[i], Math.signum(force[i]) / 2, -Math.signum(direction[i]) / 2};
      }
    }
    return new PushTest(LeastSquares.fit(List.of("c", "b", "G", "H"), rows, y));
  }

  private static boolean used(double force, double least) {
    return Math.abs(force) >= least * (1 - 1e-12) && force != 0;
  }

  /**
   * Returns the stiffness.
   *
   * @return stiffness k [N/mm]
   */
  public double stiffness() {
    double b = fit.value("b");
    if (!(b > 0)) {
      throw new IllegalArgumentException(
          "movement: does not grow with the force; check the signs and the units");
    }
    return 1 / b;
  }

  /**
   * Returns the standard uncertainty of the stiffness, {@code k^2 u(1/k)}.
   *
   * @return standard uncertainty [N/mm]
   */
  public double stiffnessUncertainty() {
    double k = stiffness();
    return k * k * fit.uncertainty("b");
  }

  /**
   * Returns the area of the closed loop, the work lost.
   *
   * @param force forces in the order taken [N]
   * @param movement movements [mm]
   * @return work of one loop [N mm]
   */
  public static double loopArea(double[] force, double[] movement) {
    Require.sameLength("movement", movement.length, force.length);
    double sum = 0;
    for (int i = 0; i < force.length; i++) {
      int j = (i + 1) % force.length;
      sum += force[i] * movement[j] - force[j] * movement[i];
    }
    return Math.abs(sum) / 2;
  }
}
