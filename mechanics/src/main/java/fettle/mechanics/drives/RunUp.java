package fettle.mechanics.drives;

import java.util.function.DoubleUnaryOperator;

/**
 * Time to bring a spindle to speed.
 *
 * @see Sources#RUN_UP
 */
public final class RunUp {

  private static final int STEPS = 2000;

  private RunUp() {}

  /**
   * Returns the time under a steady torque: {@code J w/(Tm - Td)}.
   *
   * @param inertia J [t mm2]
   * @param speed w [rad/s]
   * @param motor Tm [N mm]
   * @param drag Td [N mm]
   * @return time [s]
   */
  public static double time(double inertia, double speed, double motor, double drag) {
    Need.positive("J", inertia);
    Need.positive("n", speed);
    if (!(motor > drag)) {
      throw new IllegalArgumentException(
          "T: found a motor torque of "
              + motor
              + " N mm against a drag of "
              + drag
              + " N mm; it does not start");
    }
    return inertia * speed / (motor - drag);
  }

  /**
   * Returns the time under a torque that changes with speed, drag taken off; infinity if it stalls
   * on the way.
   *
   * @param inertia J [t mm2]
   * @param speed w [rad/s]
   * @param torque net torque over speed [N mm over rad/s]
   * @return time [s]
   */
  public static double time(double inertia, double speed, DoubleUnaryOperator torque) {
    double sum = 0;
    for (int i = 0; i < STEPS; i++) {
      double t = torque.applyAsDouble(speed * (i + 0.5) / STEPS);
      if (!(t > 0)) {
        return Double.POSITIVE_INFINITY;
      }
      sum += speed / STEPS / t;
    }
    return inertia * sum;
  }
}
