package fettle.mechanics.joints;

import java.util.List;

/** Usual figures of hexagon bolts, for inputs that are left out. */
final class BoltStandard {

  /** d, coarse pitch, bearing face dw, medium hole dh [mm]. */
  private static final double[][] SIZES = {
    {3, 0.5, 4.57, 3.4},
    {4, 0.7, 5.88, 4.5},
    {5, 0.8, 6.88, 5.5},
    {6, 1, 8.88, 6.6},
    {8, 1.25, 11.63, 9},
    {10, 1.5, 14.63, 11},
    {12, 1.75, 16.63, 13.5},
    {14, 2, 19.64, 15.5},
    {16, 2, 22.49, 17.5},
    {20, 2.5, 28.19, 22}
  };

  static final List<String> CLASSES =
      List.of("8.8", "4.6", "5.6", "5.8", "6.8", "10.9", "12.9", "A2-50", "A2-70", "A2-80");

  private BoltStandard() {}

  /**
   * Coarse pitch.
   *
   * @param diameter nominal diameter [mm]
   * @return pitch [mm]
   */
  static double coarsePitch(double diameter) {
    return of(diameter, 1, "P");
  }

  /**
   * Outside diameter of the bearing face of a hexagon head.
   *
   * @param diameter nominal diameter [mm]
   * @return dw [mm]
   */
  static double face(double diameter) {
    return of(diameter, 2, "dw");
  }

  /**
   * Medium clearance hole.
   *
   * @param diameter nominal diameter [mm]
   * @return dh [mm]
   */
  static double hole(double diameter) {
    return of(diameter, 3, "dh");
  }

  private static double of(double diameter, int column, String name) {
    for (double[] size : SIZES) {
      if (size[0] == diameter) {
        return size[column];
      }
    }
    throw new IllegalArgumentException(
        "M" + diameter + " is not in the small table of bolts (M3 to M20); give " + name);
  }

  /**
   * Yield strength of a property class.
   *
   * @param diameter nominal diameter [mm]
   * @return Rp0.2 or ReL [MPa]
   */
  static double yieldStrength(String property, double diameter) {
    return switch (property) {
      case "4.6" -> 240;
      case "5.6" -> 300;
      case "5.8" -> 400;
      case "6.8" -> 480;
      case "8.8" -> diameter <= 16 ? 640 : 660;
      case "10.9" -> 940;
      case "12.9" -> 1100;
      case "A2-50" -> 210;
      case "A2-70" -> 450;
      case "A2-80" -> 600;
      default -> throw new IllegalArgumentException("class: found " + property);
    };
  }
}
