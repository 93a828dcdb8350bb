package fettle.mechanics.metrology;

/**
 * One reading of a positioning test.
 *
 * @param target target position [mm]
 * @param direction +1 if the target was approached going up, -1 going down
 * @param run number of the run
 * @param deviation actual position less target [mm]
 */
public record PositioningReading(double target, int direction, int run, double deviation) {

  /** Refuses directions other than up and down. */
  public PositioningReading {
    if (direction != 1 && direction != -1) {
      throw new IllegalArgumentException(
          "direction: found " + direction + ", expected 1 (going up) or -1 (going down)");
    }
    if (!Double.isFinite(target) || !Double.isFinite(deviation)) {
      throw new IllegalArgumentException("position: found no number, expected millimetres");
    }
  }
}
