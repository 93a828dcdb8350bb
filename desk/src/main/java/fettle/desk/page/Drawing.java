package fettle.desk.page;

import java.util.List;

/**
 * A picture made of marks, in units of which a thousand make its usual width.
 *
 * @param label what it shows, for those who cannot see it
 * @param box its view box
 * @param marks what is drawn, the lowest first
 */
public record Drawing(String label, String box, List<Mark> marks) {

  /** Keeps its own copy. */
  public Drawing {
    marks = List.copyOf(marks);
  }

  /** One mark; its style names its kind of line. */
  public sealed interface Mark {}

  /** A line or an outline, as SVG writes paths. */
  public record Outline(String style, String path) implements Mark {}

  /** A word; the anchor is start, middle or end. */
  public record Words(String style, double x, double y, String anchor, String words)
      implements Mark {}

  /**
   * What turns or slides when the picture is set going.
   *
   * @param about the middle it turns about, "x y"
   * @param turns turns for each turn of the input, signed
   * @param slide way for each turn of the input, to the right
   * @param now how it stands, as SVG writes it
   * @param marks what moves
   */
  public record Moving(String about, String turns, String slide, String now, List<Mark> marks)
      implements Mark {}

  /** What leads somewhere when touched. */
  public record Touch(String href, String label, boolean chosen, List<Mark> marks)
      implements Mark {}
}
