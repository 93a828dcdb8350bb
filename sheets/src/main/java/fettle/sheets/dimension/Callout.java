package fettle.sheets.dimension;

import fettle.sheets.marks.Point;
import java.util.List;

/**
 * A note on a leader, in sheet millimetres of the view.
 *
 * @param anchors places its arrow may point to, best first
 * @param radius radius of the circle round the anchor on which the arrow ends, 0 for a point [mm]
 * @param lines lines of text; may be empty where frames say all
 * @param attached tolerance frames and datum that go with it
 */
public record Callout(List<Point> anchors, double radius, List<String> lines, Attached attached) {
  /** Keeps its own copies. */
  public Callout {
    anchors = List.copyOf(anchors);
    lines = List.copyOf(lines);
  }

  /**
   * A note without tolerances.
   *
   * @param anchors places its arrow may point to, best first
   * @param radius radius of the circle round the anchor on which the arrow ends [mm]
   * @param lines lines of text
   */
  public Callout(List<Point> anchors, double radius, List<String> lines) {
    this(anchors, radius, lines, Attached.NOTHING);
  }
}
