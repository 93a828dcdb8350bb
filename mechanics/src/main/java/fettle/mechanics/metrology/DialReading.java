package fettle.mechanics.metrology;

/**
 * One reading of a dial test.
 *
 * @param run number of the run
 * @param direction +1 if the dial was turned up to the target, -1 if down
 * @param turns dial position [turns]
 * @param position indicator, counted along the travel [mm]
 */
public record DialReading(int run, int direction, double turns, double position) {

  /** Refuses directions other than up and down. */
  public DialReading {
    if (direction != 1 && direction != -1) {
      throw new IllegalArgumentException(
          "dir: found " + direction + ", expected 1 (turned up) or -1 (turned down)");
    }
    if (!Double.isFinite(turns) || !Double.isFinite(position)) {
      throw new IllegalArgumentException("reading: found no number, expected turns and mm");
    }
  }
}
