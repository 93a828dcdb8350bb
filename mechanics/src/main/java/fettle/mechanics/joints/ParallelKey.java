package fettle.mechanics.joints;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * Section of a parallel key and its keyways.
 *
 * @param width b [mm]
 * @param height h [mm]
 * @param shaftDepth t1 [mm]
 * @param hubDepth t2 [mm]
 */
public record ParallelKey(double width, double height, double shaftDepth, double hubDepth) {

  private static final List<double[]> TABLE = read();

  /**
   * The key of DIN 6885-1 for a shaft; a diameter on the border takes the smaller key.
   *
   * @param diameter shaft diameter, over 6 to 110 [mm]
   */
  public static ParallelKey of(double diameter) {
    return TABLE.stream()
        .filter(row -> diameter > row[0] && diameter <= row[1])
        .findFirst()
        .map(row -> new ParallelKey(row[2], row[3], row[4], row[5]))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "shaft " + diameter + " mm: the table of keys goes over 6 to 110 mm"));
  }

  /**
   * Pressure on the side of the key in the hub: 2 T/(d (h - t1) l).
   *
   * @param torque torque T [N mm]
   * @param diameter shaft diameter d [mm]
   * @param bearing length that bears; of a key with round ends its length less b [mm]
   * @return side pressure [MPa]
   */
  public double sidePressure(double torque, double diameter, double bearing) {
    return 2 * torque / (diameter * (height - shaftDepth) * bearing);
  }

  /**
   * Shear of the key: 2 T/(d b l).
   *
   * @param torque torque T [N mm]
   * @param diameter shaft diameter d [mm]
   * @param bearing length that bears [mm]
   * @return shear stress [MPa]
   */
  public double shear(double torque, double diameter, double bearing) {
    return 2 * torque / (diameter * width * bearing);
  }

  private static List<double[]> read() {
    try (InputStream in = ParallelKey.class.getResourceAsStream("parallel-keys.csv")) {
      if (in == null) {
        throw new IllegalStateException("the table parallel-keys.csv is missing from the program");
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.startsWith("#") && !line.startsWith("over"))
          .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
