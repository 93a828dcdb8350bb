package fettle.desk.picture;

import fettle.desk.page.Drawing;
import java.util.List;

/** Draws which positions of two axes are forbidden. */
public final class ClearancePicture {

  private static final int LINES = 8;
  private static final int ROWS = 5;

  private ClearancePicture() {}

  /**
   * One axis of the map.
   *
   * @param name what moves, with its unit
   * @param low least position [shown unit]
   * @param high greatest position [shown unit]
   * @param at where the picture above shows it [shown unit]
   */
  public record Scale(String name, double low, double high, double at) {}

  /**
   * Draws the map.
   *
   * @param across the axis across
   * @param up the axis upwards
   * @param anywhere where the two can meet: left, right, low and high of rectangles [shown unit]
   * @param here where they meet with every other axis as shown [shown unit]
   * @param open where it could not be settled [shown unit]
   * @param label what the map shows
   */
  public static Drawing map(
      Scale across,
      Scale up,
      List<double[]> anywhere,
      List<double[]> here,
      List<double[]> open,
      String label) {
    Chart chart =
        new Chart(across.low(), across.high(), up.low(), up.high(), across.name(), up.name());
    chart.region("forbidden", anywhere).hatch("hatch", here).region("unsettled", open);
    chart.axes(LINES, ROWS);
    chart.point("solidblue", across.at(), up.at(), "as shown above");
    return chart.done(label);
  }
}
