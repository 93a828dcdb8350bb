package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Draws marks at a scale: what is given in millimetres becomes units of the picture. */
final class Pen {

  private static final double WIDTH = 1000;
  private static final double TURN = 360;

  private final double scale;
  private final double turned;
  private final List<Drawing.Mark> marks = new ArrayList<>();

  private Pen(double scale, double turned) {
    this.scale = scale;
    this.turned = turned;
  }

  /**
   * Returns a pen for a picture of some width.
   *
   * @param width width of what is drawn [mm]
   * @param turned how far the input is turned [-]
   */
  static Pen of(double width, double turned) {
    return new Pen(WIDTH / width, turned);
  }

  private static String n(double value) {
    double tidy = Math.abs(value) < 5e-4 ? 0 : value;
    return Numbers.fixed(tidy, 2).replaceFirst("\\.?0+$", "");
  }

  /**
   * Returns millimetres for one unit of the picture.
   *
   * @return size of a unit [mm]
   */
  double unit() {
    return 1 / scale;
  }

  Pen line(String style, double x1, double y1, double x2, double y2) {
    return trace(style, new double[] {x1, y1, x2, y2}, false);
  }

  /**
   * Draws through points.
   *
   * @param style kind of line
   * @param points x1, y1, x2, y2 ... [mm]
   * @param closed true for an outline
   */
  Pen trace(String style, double[] points, Boolean closed) {
    StringBuilder d = new StringBuilder("M");
    for (int i = 0; i + 1 < points.length; i += 2) {
      d.append(i == 0 ? "" : "L").append(n(points[i] * scale)).append(' ');
      d.append(n(points[i + 1] * scale));
    }
    marks.add(new Drawing.Outline(style, d.append(closed ? "Z" : "").toString()));
    return this;
  }

  /** Adds an outline or a line as SVG writes paths. */
  Pen path(String style, String d) {
    if (!d.isEmpty()) {
      marks.add(new Drawing.Outline(style, d));
    }
    return this;
  }

  /** Writes a rectangle on the end of a path. */
  void rectangle(StringBuilder d, double left, double top, double right, double foot) {
    d.append('M').append(n(left * scale)).append(' ').append(n(top * scale));
    d.append('H').append(n(right * scale)).append('V').append(n(foot * scale));
    d.append('H').append(n(left * scale)).append('Z');
  }

  /** Writes a line on the end of a path. */
  void segment(StringBuilder d, double x1, double y1, double x2, double y2) {
    d.append('M').append(n(x1 * scale)).append(' ').append(n(y1 * scale));
    d.append('L').append(n(x2 * scale)).append(' ').append(n(y2 * scale));
  }

  Pen circle(String style, double x, double y, double radius) {
    String r = n(radius * scale);
    String d =
        String.format(
            Locale.ROOT,
            "M%s %sa%s %s 0 1 0 %s 0a%s %s 0 1 0 -%s 0Z",
            n((x - radius) * scale),
            n(y * scale),
            r,
            r,
            n(2 * radius * scale),
            r,
            r,
            n(2 * radius * scale));
    marks.add(new Drawing.Outline(style, d));
    return this;
  }

  Pen box(String style, double x, double y, double width, double height) {
    return trace(
        style, new double[] {x, y, x + width, y, x + width, y + height, x, y + height}, true);
  }

  Pen words(String style, double x, double y, String anchor, String words) {
    marks.add(new Drawing.Words(style, round(x * scale), round(y * scale), anchor, words));
    return this;
  }

  private static double round(double value) {
    return Math.rint(value * 100) / 100;
  }

  /**
   * Draws what turns.
   *
   * @param x its middle [mm]
   * @param y its middle [mm]
   * @param turns turns for each turn of the input [-]
   * @param inner draws it
   */
  Pen turning(double x, double y, double turns, Consumer<Pen> inner) {
    Pen pen = new Pen(scale, turned);
    inner.accept(pen);
    String about = n(x * scale) + " " + n(y * scale);
    String now = "rotate(" + n(TURN * turns * turned % TURN) + " " + about + ")";
    marks.add(new Drawing.Moving(about, Numbers.significant(turns, 9), "0", now, pen.marks));
    return this;
  }

  /**
   * Draws what slides to the right.
   *
   * @param way way for each turn of the input [mm]
   * @param inner draws it
   */
  Pen sliding(double way, Consumer<Pen> inner) {
    Pen pen = new Pen(scale, turned);
    inner.accept(pen);
    String now = "translate(" + n(way * scale * turned) + " 0)";
    String slide = Numbers.significant(way * scale, 9);
    marks.add(new Drawing.Moving("0 0", "0", slide, now, pen.marks));
    return this;
  }

  Pen touch(String href, String label, Boolean chosen, Consumer<Pen> inner) {
    Pen pen = new Pen(scale, turned);
    inner.accept(pen);
    marks.add(new Drawing.Touch(href, label, chosen, pen.marks));
    return this;
  }

  /**
   * Draws a dimension line with its words above it, or to its left if it stands upright.
   *
   * @param x1 start [mm]
   * @param y1 start [mm]
   * @param x2 end [mm]
   * @param y2 end [mm]
   * @param words what it says
   */
  Pen dimension(double x1, double y1, double x2, double y2, String words) {
    double tick = 6 * unit();
    line("dim", x1, y1, x2, y2);
    line("ink", x1 - tick, y1 + tick, x1 + tick, y1 - tick);
    line("ink", x2 - tick, y2 + tick, x2 + tick, y2 - tick);
    boolean level = Math.abs(y2 - y1) <= Math.abs(x2 - x1);
    return words(
        "",
        (x1 + x2) / 2 - (level ? 0 : 12 * unit()),
        (y1 + y2) / 2 - (level ? 9 * unit() : 0),
        level ? "middle" : "end",
        words);
  }

  /**
   * Ends the picture.
   *
   * @param label what it shows
   * @param x left edge [mm]
   * @param y upper edge [mm]
   * @param width width [mm]
   * @param height height [mm]
   */
  Drawing done(String label, double x, double y, double width, double height) {
    String box =
        n(x * scale) + " " + n(y * scale) + " " + n(width * scale) + " " + n(height * scale);
    return new Drawing(label, box, marks);
  }
}
