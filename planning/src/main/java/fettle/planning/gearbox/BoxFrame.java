package fettle.planning.gearbox;

import fettle.machine.gearing.ScrewCutting;
import fettle.mechanics.gears.BasicRack;
import java.util.OptionalDouble;

/**
 * What a box is built round.
 *
 * @param module module of all wheels [mm]
 * @param rack basic rack of all wheels
 * @param lead lead cut when the box and its links turn 1:1 [mm]
 * @param thrust force along the lead screw that wheels and shafts are made for [N]
 * @param centres distance of the multiplier's shafts [mm]; empty to take the reference distance
 */
public record BoxFrame(
    double module, BasicRack rack, double lead, double thrust, OptionalDouble centres) {

  /** Feed force of a small lathe, upper end (common practice). */
  public static final double USUAL_THRUST = 1000;

  private static final double USUAL_ANGLE = Math.toRadians(20);

  /** Refuses sizes that are none. */
  public BoxFrame {
    if (!(module > 0 && lead > 0 && thrust >= 0 && thrust <= 1e5)) {
      throw new IllegalArgumentException(
          "module and lead [mm] must be above 0, thrust [N] 0 to 100000; found "
              + module
              + ", "
              + lead
              + ", "
              + thrust);
    }
    if (centres.isPresent() && !(centres.getAsDouble() > 0 && centres.getAsDouble() <= 1000)) {
      throw new IllegalArgumentException(
          "shaft centres [mm] must be above 0 and at most 1000, found " + centres.getAsDouble());
    }
  }

  /** Returns the frame for a lathe's change gears: their module, 20 degrees, the usual thrust. */
  public static BoxFrame of(ScrewCutting cutting) {
    return new BoxFrame(
        cutting.module(),
        BasicRack.of(USUAL_ANGLE),
        cutting.fixed().toDouble(),
        USUAL_THRUST,
        OptionalDouble.empty());
  }

  /**
   * Returns the same frame with the multiplier's shafts so far apart.
   *
   * @param distance distance of the shafts [mm]
   */
  public BoxFrame onCentres(double distance) {
    return new BoxFrame(module, rack, lead, thrust, OptionalDouble.of(distance));
  }
}
