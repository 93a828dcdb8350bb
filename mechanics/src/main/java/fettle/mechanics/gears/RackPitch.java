package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What a rack may be, judged by its pitch measured over many teeth. */
public final class RackPitch {

  /**
   * A standard rack near a measured pitch.
   *
   * @param name module, diametral pitch or circular pitch
   * @param pitch its pitch
   * @param deviation measured pitch over its pitch, less 1 [-]
   */
  public record Candidate(String name, Ratio pitch, double deviation) {}

  private static final String[] MODULES = {
    "0.5", "0.6", "0.7", "0.8", "1", "1.125", "1.25", "1.375", "1.5", "1.6", "1.75", "2", "2.25",
    "2.5", "2.75", "3", "3.5", "4"
  };
  private static final int[] DIAMETRAL = {6, 8, 10, 12, 14, 16, 18, 20, 24, 28, 32, 48};
  private static final String[] CIRCULAR = {"2", "2.5", "3", "4", "5", "6", "8", "10"};
  private static final int[] INCH_PARTS = {8, 10, 5, 4};

  private RackPitch() {}

  /** Returns the standard racks that are offered, with exact pitches. */
  public static List<Candidate> standard() {
    List<Candidate> all = new ArrayList<>();
    for (String m : MODULES) {
      all.add(
          new Candidate("module " + m, Ratio.of(new java.math.BigDecimal(m)).times(Ratio.PI), 0));
    }
    for (int dp : DIAMETRAL) {
      all.add(new Candidate(dp + " DP", Ratio.INCH.over(dp).times(Ratio.PI), 0));
    }
    for (String p : CIRCULAR) {
      all.add(
          new Candidate("circular pitch " + p + " mm", Ratio.of(new java.math.BigDecimal(p)), 0));
    }
    for (int part : INCH_PARTS) {
      all.add(new Candidate("circular pitch 1/" + part + " in", Ratio.INCH.over(part), 0));
    }
    return List.copyOf(all);
  }

  /**
   * Returns the standard racks in the order of their nearness to a measured pitch.
   *
   * @param length length measured [mm]
   * @param pitches number of pitches in that length
   */
  public static List<Candidate> near(double length, int pitches) {
    Teeth.positive("length", "mm", length);
    if (pitches < 1 || pitches > Teeth.MOST) {
      throw new IllegalArgumentException(
          "pitches [-] must be 1 to " + Teeth.MOST + ", found " + pitches);
    }
    double pitch = length / pitches;
    return standard().stream()
        .map(c -> new Candidate(c.name, c.pitch, pitch / c.pitch.toDouble() - 1))
        .sorted(Comparator.comparingDouble(c -> Math.abs(c.deviation())))
        .toList();
  }
}
