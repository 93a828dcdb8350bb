package fettle.sheets.dimension;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws tolerance frames and datum triangles along a line: level, or upright to be read from the
 * right. Along the line it is counted by u, across it by v.
 */
final class FrameMarks {

  static final Source TRIANGLE =
      Source.memory("ISO 5459:2011", "filled triangle on the feature, joined to its boxed letter");

  private static final double TALL = 3;
  private static final double JOIN = 1;

  /** Length of a datum: triangle, joining line, boxed letter. */
  static final double DATUM = TALL + JOIN + ToleranceFrame.HEIGHT;

  private final String group;
  private final Mark.Reading reading;
  private final List<Mark> marks = new ArrayList<>();

  FrameMarks(String group, Mark.Reading reading) {
    this.group = group + ":frame";
    this.reading = reading;
  }

  List<Mark> marks() {
    return marks;
  }

  private Point at(double u, double v) {
    return reading == Mark.Reading.FROM_BELOW ? new Point(u, v) : new Point(v, u);
  }

  private void line(double u0, double v0, double u1, double v1) {
    Point p = at(u0, v0);
    Point q = at(u1, v1);
    marks.add(Mark.Stroke.line(group, Pen.SYMBOL, p.x(), p.y(), q.x(), q.y()));
  }

  private void box(double u0, double v0, double u1, double v1) {
    Point p = at(u0, v0);
    Point q = at(u1, v1);
    marks.add(
        Mark.Stroke.box(
            group,
            Pen.SYMBOL,
            new Box(
                Math.min(p.x(), q.x()),
                Math.min(p.y(), q.y()),
                Math.max(p.x(), q.x()),
                Math.max(p.y(), q.y()))));
  }

  /** Letters are centred in their compartment. */
  private void text(String text, double u0, double u1, double v) {
    double u = (u0 + u1 - Lettering.width(text, ToleranceFrame.H)) / 2;
    double down = ToleranceFrame.H / 2;
    Point p = reading == Mark.Reading.FROM_BELOW ? at(u, v - down) : at(u, v + down);
    marks.add(new Mark.Text(group, text, p.x(), p.y(), ToleranceFrame.H, reading));
  }

  /**
   * Draws all that is attached, from its near end on.
   *
   * @param near where it begins along the line [mm]
   * @param way +1 if it runs on towards higher u, -1 towards lower
   * @param v middle of the first frame across the line [mm]
   * @param stack +1 or -1: side to which further frames follow
   */
  void draw(Attached a, double near, int way, double v, int stack) {
    double far = near;
    for (int i = 0; i < a.frames().size(); i++) {
      ToleranceFrame f = a.frames().get(i);
      double end = near + way * f.width();
      frame(f, Math.min(near, end), v + stack * i * ToleranceFrame.HEIGHT);
      far = i == 0 ? end : far;
    }
    if (!a.datum().isEmpty()) {
      datum(a.datum(), far, way, v);
    }
  }

  private void frame(ToleranceFrame f, double low, double v) {
    double half = ToleranceFrame.HEIGHT / 2;
    double u = low;
    box(low, v - half, low + f.width(), v + half);
    for (int i = 0; i < f.cells().size(); i++) {
      double next = u + f.width(i);
      text(f.cells().get(i), u, next, v);
      if (i > 0) {
        line(u, v - half, u, v + half);
      }
      u = next;
    }
  }

  /** A datum whose triangle stands on u. */
  private void datum(String letter, double u, int way, double v) {
    double base = TALL / Math.sqrt(3);
    double apex = u + way * TALL;
    double joined = apex + way * JOIN;
    double end = joined + way * ToleranceFrame.HEIGHT;
    marks.add(new Mark.Fill(group, List.of(at(u, v - base), at(u, v + base), at(apex, v))));
    line(apex, v, joined, v);
    double half = ToleranceFrame.HEIGHT / 2;
    box(joined, v - half, end, v + half);
    upright(letter, at((joined + end) / 2, v));
  }

  /** The letter of a datum is read from below, however its line runs. */
  private void upright(String letter, Point middle) {
    double x = middle.x() - Lettering.width(letter, ToleranceFrame.H) / 2;
    double y = middle.y() - ToleranceFrame.H / 2;
    marks.add(new Mark.Text(group, letter, x, y, ToleranceFrame.H, Mark.Reading.FROM_BELOW));
  }

  /**
   * Draws a datum that stands on a level line, its letter above.
   *
   * @param x middle of the triangle [mm]
   * @param y the line [mm]
   */
  static List<Mark> standing(String group, String letter, double x, double y) {
    FrameMarks m = new FrameMarks(group, Mark.Reading.FROM_BELOW);
    double base = TALL / Math.sqrt(3);
    double half = ToleranceFrame.HEIGHT / 2;
    double low = y + TALL + JOIN;
    m.marks.add(
        new Mark.Fill(
            m.group,
            List.of(new Point(x - base, y), new Point(x + base, y), new Point(x, y + TALL))));
    m.line(x, y + TALL, x, low);
    m.box(x - half, low, x + half, low + ToleranceFrame.HEIGHT);
    m.text(letter, x - half, x + half, low + half);
    return m.marks;
  }
}
