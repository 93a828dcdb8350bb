package fettle.desk.page;

import java.util.List;

/**
 * The lathe seen from where the operator stands, in millimetres: right is towards the tailstock,
 * down is down.
 *
 * @param x left edge
 * @param y upper edge
 * @param width width
 * @param height height
 * @param axis height of the spindle axis on the picture
 * @param shapes outlines, the farthest first
 * @param dimensions dimension lines
 * @param notes places that are pointed at
 */
public record ElevationPage(
    double x,
    double y,
    double width,
    double height,
    double axis,
    List<Shape> shapes,
    List<Dimension> dimensions,
    List<Note> notes) {

  /**
   * One solid of a member.
   *
   * @param member name of the member
   * @param href where it leads
   * @param style {@code as-is}, {@code planned} or {@code chosen}
   * @param round true for a circle
   * @param first true for the shape by which the keyboard reaches the member
   */
  public record Shape(
      String member,
      String href,
      String style,
      boolean round,
      boolean first,
      double x,
      double y,
      double width,
      double height) {

    /** Returns this shape with or without a stop for the keyboard. */
    public Shape reached(Boolean yes) {
      return new Shape(member, href, style, round, yes, x, y, width, height);
    }

    /** Returns the radius of a circle. */
    public double radius() {
      return width / 2;
    }

    /** Returns the middle of a circle. */
    public double middleX() {
      return x + width / 2;
    }

    /** Returns the middle of a circle. */
    public double middleY() {
      return y + height / 2;
    }
  }

  /** A dimension line with its ends, its two witness lines and its words. */
  public record Dimension(
      double x1,
      double y1,
      double x2,
      double y2,
      double textX,
      double textY,
      String turn,
      String words) {}

  /** A place that is pointed at from above, with its words. */
  public record Note(double x, double y, String words) {}

  /** Returns this picture with one place pointed at. */
  public ElevationPage with(Note note) {
    return new ElevationPage(x, y, width, height, axis, shapes, dimensions, List.of(note));
  }

  /** Returns the height at which the words of a note stand. */
  public double head() {
    return y + 24;
  }

  /** Returns the view box of the picture. */
  public String box() {
    return text(x) + " " + text(y) + " " + text(width) + " " + text(height);
  }

  private static String text(double number) {
    return fettle.mechanics.base.Numbers.significant(number, 6);
  }
}
