package fettle.mechanics.loop;

/** Real slideways, which are softer than small test faces. */
public final class Slideway {

  /** 1 kgf/cm2 in N/mm2, times 1000 µm a mm: turns the tables' units into N/mm3. */
  static final double PRESSURE_UNIT = 98.0665;

  private static final double[][] TABLE = {
    {50, 0.5, 0.7}, {100, 1.0, 1.0}, {200, 2.0, 2.5}, {300, 3.2, 3.2}, {400, 4.0, 4.0}
  };

  private Slideway() {}

  /**
   * Constant C0 of {@code lambda[µm] = C0 p[kgf/cm2]} for pressures below 0.3 MPa.
   *
   * @param width width of the slide [mm]
   * @return low and high end of the band, in µm per kgf/cm2 [-]
   * @see Sources#LEVINA
   */
  public static double[] constants(double width) {
    for (double[] row : TABLE) {
      if (width < row[0]) {
        return new double[] {row[1], row[2]};
      }
    }
    throw new IllegalArgumentException("w: found " + width + " mm, must be below 400 mm");
  }
}
