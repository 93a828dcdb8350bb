package fettle.mechanics.threads;

import fettle.mechanics.base.Ratio;

/** Dividing a lead into starts. */
public final class Starts {

  private Starts() {}

  /**
   * Number of starts of a lead; {@code z = Ph/P}.
   *
   * @throws IllegalArgumentException if the lead is no whole multiple of the pitch
   */
  public static int of(Ratio lead, Ratio pitch) {
    if (pitch.signum() <= 0 || lead.signum() <= 0) {
      throw new IllegalArgumentException("Ph and P: expected more than 0");
    }
    Ratio starts = lead.over(pitch).folded();
    if (!starts.isWhole() || starts.numerator().bitLength() > 8) {
      throw new IllegalArgumentException(
          "Ph = "
              + lead.toDouble()
              + " mm is no whole multiple of P = "
              + pitch.toDouble()
              + " mm; expected lead = starts times pitch");
    }
    return starts.numerator().intValueExact();
  }

  /**
   * Axial error of a start that comes from a wrong angle, {@code Ph delta/(2 pi)}.
   *
   * @param lead lead [mm]
   * @param error angle by which the work was turned wrongly [rad]
   * @return error along the axis [mm]
   */
  public static double axialError(double lead, double error) {
    return lead * error / (2 * Math.PI);
  }
}
