package fettle.mechanics.cutting;

/**
 * Regenerative chatter of one mode: the chip width above which the cut sings by itself.
 *
 * @param stiffness k [N/mm]
 * @param damping zeta, share of critical [-]
 * @param frequency natural frequency [Hz]
 * @param cutting cutting stiffness of a unit width, {@code Ks u} [MPa]
 * @see Sources#CHATTER
 */
public record Chatter(double stiffness, double damping, double frequency, double cutting) {

  /** Refuses impossible modes. */
  public Chatter {
    Need.positive("k", stiffness);
    Need.within("zeta", damping, 0.0005, 0.5);
    Need.positive("fn", frequency);
    Need.positive("Kf", cutting);
  }

  /**
   * Returns the width that is stable at every speed: {@code 2 k zeta (1+zeta)/Kf}.
   *
   * @return b_lim [mm]
   */
  public double limitWidth() {
    return 2 * stiffness * damping * (1 + damping) / cutting;
  }

  /**
   * Returns the chatter frequency at the least width: {@code fn sqrt(1+2 zeta)}.
   *
   * @return frequency [Hz]
   */
  public double limitFrequency() {
    return frequency * Math.sqrt(1 + 2 * damping);
  }

  private double realPart(double r) {
    double a = 1 - r * r;
    return a / (stiffness * (a * a + 4 * damping * damping * r * r));
  }

  /**
   * Returns the limiting width at a chatter frequency above the natural one: {@code -1/(2 Kf Re
   * G)}.
   *
   * @param chatter chatter frequency [Hz]
   * @return b [mm]
   */
  public double width(double chatter) {
    double r = chatter / frequency;
    if (!(r > 1) || Double.isInfinite(r)) {
      throw new IllegalArgumentException(
          "chatter frequency: found " + chatter + " Hz, expected above fn = " + frequency + " Hz");
    }
    return -1 / (2 * cutting * realPart(r));
  }

  /**
   * Returns the spindle speed of a lobe at a chatter frequency: {@code w T = 2 pi j + ((2 arg G -
   * pi) mod 2 pi)}.
   *
   * @param lobe j, whole waves between passes, 0 or more
   * @param chatter chatter frequency [Hz]
   * @return speed [rad/s]
   */
  public double speed(int lobe, double chatter) {
    if (lobe < 0 || lobe > 100_000) {
      throw new IllegalArgumentException("j: found " + lobe + ", expected 0 to 100000");
    }
    double r = chatter / frequency;
    double phase = Math.atan2(-2 * damping * r, 1 - r * r);
    double rest = 2 * phase - Math.PI;
    rest -= 2 * Math.PI * Math.floor(rest / (2 * Math.PI));
    double period = (2 * Math.PI * lobe + rest) / (2 * Math.PI * chatter);
    return 2 * Math.PI / period;
  }

  /**
   * Returns how far a width, a chatter frequency and a speed are from the border: {@code |1 + Kf b
   * (1-exp(-i w T)) G|}, 0 on it.
   *
   * @param width b [mm]
   * @param chatter chatter frequency [Hz]
   * @param speed spindle speed [rad/s]
   * @return residual [-]
   */
  public double residual(double width, double chatter, double speed) {
    double r = chatter / frequency;
    double a = 1 - r * r;
    double c = 2 * damping * r;
    double size = stiffness * (a * a + c * c);
    double re = a / size;
    double im = -c / size;
    double turn = 2 * Math.PI * chatter * 2 * Math.PI / speed;
    double p = 1 - Math.cos(turn);
    double q = Math.sin(turn);
    return Math.hypot(1 + cutting * width * (p * re - q * im), cutting * width * (p * im + q * re));
  }

  /**
   * Returns the orientation factor: {@code cos(theta) cos(theta-beta)}.
   *
   * @param mode angle of the mode from the chip thickness theta [rad]
   * @param force angle of the force from the chip thickness beta [rad]
   * @return u [-]
   */
  public static double orientation(double mode, double force) {
    return Math.cos(mode) * Math.cos(mode - force);
  }
}
