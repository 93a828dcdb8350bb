package fettle.mechanics.gears;

import java.util.List;

/** Play of a train referred to its output, and errors that come back once a turn. */
public final class Play {

  /**
   * One mesh of a train.
   *
   * @param play play at the pitch line [mm]
   * @param driver pitch diameter of the driver [mm]
   * @param driven pitch diameter of the driven gear [mm]
   */
  public record Mesh(double play, double driver, double driven) {
    /** Refuses negative play and diameters that are not positive. */
    public Mesh {
      Teeth.notNegative("play", "mm", play);
      Teeth.positive("driver diameter", "mm", driver);
      Teeth.positive("driven diameter", "mm", driven);
    }
  }

  private Play() {}

  /**
   * Returns the play of several meshes as an angle of the last driven shaft: each mesh gives 2j/d
   * of its driven gear, and is passed on by the ratios after it.
   *
   * @param meshes meshes from the handwheel on
   * @return angle of the last shaft [rad]
   */
  public static double atLastShaft(List<Mesh> meshes) {
    double angle = 0;
    for (Mesh mesh : meshes) {
      angle = angle * mesh.driver / mesh.driven + 2 * mesh.play / mesh.driven;
    }
    return angle;
  }

  /**
   * Returns the play at the carriage of a train that ends in a rack pinion, the handwheel held.
   *
   * @param meshes meshes from the handwheel on, without the rack
   * @param pinion pitch diameter of the rack pinion [mm]
   * @param rackPlay play between rack and pinion [mm]
   * @return play at the carriage [mm]
   */
  public static double atRack(List<Mesh> meshes, double pinion, double rackPlay) {
    Teeth.positive("rack pinion diameter", "mm", pinion);
    return atLastShaft(meshes) * pinion / 2 + Teeth.notNegative("rack play", "mm", rackPlay);
  }

  /**
   * Returns the play at the slide of a train that ends in a screw.
   *
   * @param meshes meshes from the handwheel on, may be none
   * @param lead lead of the screw [mm]
   * @param nutPlay play of the nut and of the thrust faces [mm]
   * @return play at the slide [mm]
   */
  public static double atScrew(List<Mesh> meshes, double lead, double nutPlay) {
    Teeth.positive("lead", "mm", lead);
    return atLastShaft(meshes) * lead / (2 * Math.PI)
        + Teeth.notNegative("nut play", "mm", nutPlay);
  }

  /**
   * Returns the peak-to-peak error at the pitch line of a wheel that runs out: 2e/cos α_w.
   *
   * @param eccentricity eccentricity, half the run-out F_r [mm]
   * @param workingAngle working pressure angle [rad]
   * @return peak-to-peak pitch-line error [mm]
   */
  public static double onceAround(double eccentricity, double workingAngle) {
    Teeth.notNegative("eccentricity", "mm", eccentricity);
    if (!(workingAngle >= 0 && workingAngle < Math.toRadians(60))) {
      throw new IllegalArgumentException(
          "working pressure angle [rad] must be 0 to 60 degrees, found " + workingAngle);
    }
    return 2 * eccentricity / Math.cos(workingAngle);
  }

  /**
   * Returns the likely sum of errors of different periods: the root of the sum of squares.
   *
   * @param parts peak-to-peak errors at the carriage, any order [mm]
   * @return likely peak-to-peak error [mm]
   */
  public static double likely(double... parts) {
    double sum = 0;
    for (double part : parts) {
      sum += part * part;
    }
    return Math.sqrt(sum);
  }

  /**
   * Returns the error a rack accumulates: teeth passed times mean pitch deviation.
   *
   * @param travel travel [mm]
   * @param pitch pitch of the rack [mm]
   * @param bias mean deviation of one pitch [mm]
   * @return error over the travel [mm]
   */
  public static double rackError(double travel, double pitch, double bias) {
    return travel / Teeth.positive("rack pitch", "mm", pitch) * bias;
  }

  /**
   * Returns the force at the slide: F = F_hand 2πR/T η.
   *
   * @param hand force at the handle [N]
   * @param radius radius of the handle [mm]
   * @param travel travel per turn [mm]
   * @param efficiency efficiency of the whole chain [-]
   * @return force at the slide [N]
   */
  public static double slideForce(double hand, double radius, double travel, double efficiency) {
    Teeth.notNegative("hand force", "N", hand);
    Teeth.positive("handle radius", "mm", radius);
    Teeth.positive("travel per turn", "mm", travel);
    if (!(efficiency > 0 && efficiency <= 1)) {
      throw new IllegalArgumentException(
          "efficiency [-] must be above 0 and at most 1, found " + efficiency);
    }
    return hand * 2 * Math.PI * radius / travel * efficiency;
  }
}
