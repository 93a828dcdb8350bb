package fettle.desk.page;

import java.util.List;

/**
 * A drawing of readings: bands, lines, marks and words in units of a 640 by 360 sheet.
 *
 * @param title what it shows
 * @param words the same in a sentence, for those who do not see it
 * @param height height of the sheet [sheet unit]
 * @param bands what is allowed, or how sure a line is
 * @param lines axes, ticks and curves
 * @param marks readings
 * @param texts words on the sheet
 */
public record Plot(
    String title,
    String words,
    int height,
    List<Band> bands,
    List<Line> lines,
    List<Mark> marks,
    List<Words> texts) {

  /** Keeps its own copies. */
  public Plot {
    bands = List.copyOf(bands);
    lines = List.copyOf(lines);
    marks = List.copyOf(marks);
    texts = List.copyOf(texts);
  }

  /** A filled shape; {@code path} are the points of its outline. */
  public record Band(String path, String style) {}

  /** A line through points. */
  public record Line(String path, String style) {}

  /** A reading; {@code style} says which direction or plane it belongs to. */
  public record Mark(double x, double y, String style) {}

  /** Words; {@code anchor} is start, middle or end. */
  public record Words(double x, double y, String anchor, String text) {}
}
