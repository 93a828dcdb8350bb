package fettle.mechanics.fits;

import java.util.List;

/** General tolerances of ISO 2768-1, for sizes without a tolerance of their own. */
public final class GeneralTolerance {

  /** The classes: fine, medium, coarse, very coarse. */
  public static final List<String> CLASSES = List.of("f", "m", "c", "v");

  private static final Table LINEAR = Table.read("general-linear.csv");
  private static final Table EDGES = Table.read("general-edges.csv");
  private static final Table ANGLES = Table.read("general-angles.csv");

  private GeneralTolerance() {}

  /**
   * Half tolerance of a linear size.
   *
   * @param size nominal size, 0.5 to 4000 [mm]
   * @param tolerance class f, m, c or v
   * @return half tolerance, plus and minus [mm]
   */
  public static double linear(double size, String tolerance) {
    return at(LINEAR, fromHalf(size), tolerance);
  }

  /**
   * Half tolerance of an external radius or a chamfer height.
   *
   * @param size nominal size, 0.5 or more [mm]
   * @param tolerance class f, m, c or v
   * @return half tolerance, plus and minus [mm]
   */
  public static double edge(double size, String tolerance) {
    return at(EDGES, fromHalf(size), tolerance);
  }

  /**
   * Half tolerance of an angle.
   *
   * @param leg length of the shorter leg [mm]
   * @param tolerance class f, m, c or v
   * @return half tolerance, plus and minus [rad]
   */
  public static double angle(double leg, String tolerance) {
    return Math.toRadians(at(ANGLES, leg, tolerance) / 60);
  }

  private static double fromHalf(double size) {
    if (!(size >= 0.5)) {
      throw new IllegalArgumentException(
          "size " + size + " mm: below 0.5 mm the tolerance must stand at the size itself");
    }
    return size;
  }

  private static double at(Table table, double size, String tolerance) {
    if (!CLASSES.contains(tolerance)) {
      throw new IllegalArgumentException("class '" + tolerance + "': expected f, m, c or v");
    }
    return table
        .at(size, tolerance)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "ISO 2768-1 gives nothing for class " + tolerance + " at " + size + " mm"));
  }
}
