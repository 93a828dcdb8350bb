package fettle.parts.recipe;

import java.util.List;

/**
 * Gear teeth on a cylinder, data for the table on the sheet (ISO 2203).
 *
 * @param teeth number of teeth
 * @param module module [mm]
 * @param pressureAngle pressure angle [rad]
 * @param helix helix angle, positive for right hand [rad]
 * @param shift profile shift factor [-]
 * @param referenceDiameter reference diameter [mm]
 * @param rootDiameter root diameter [mm]
 * @param mate the gear it runs with, empty if not stated
 * @param further further lines of the table: quantity, value
 */
public record Toothing(
    int teeth,
    double module,
    double pressureAngle,
    double helix,
    double shift,
    double referenceDiameter,
    double rootDiameter,
    String mate,
    List<String> further) {

  /** Keeps its own copy; refuses what is no gear. */
  public Toothing {
    further = List.copyOf(further);
    if (teeth < 4 || teeth > 2000 || !(module > 0) || module > 100) {
      throw new IllegalArgumentException(
          "teeth must be 4 to 2000 and the module above 0 mm, found z = "
              + teeth
              + ", m = "
              + module);
    }
  }
}
