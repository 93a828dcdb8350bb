package fettle.desk.pack;

import fettle.desk.page.Bar;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Before and after as two ticks on one scale: hollow before, filled after, as wide as the doubt.
 */
final class Ticking {

  private static final double HALF = 1.5;

  private Ticking() {}

  /**
   * Returns the marks of a scale.
   *
   * @param bar what is shown
   * @param x left end [mm]
   * @param y the line of the scale [mm]
   * @param width its length [mm]
   */
  static List<Mark> marks(Bar bar, double x, double y, double width) {
    List<Mark> marks = new ArrayList<>();
    if (!bar.drawn()) {
      return marks;
    }
    marks.add(Mark.Stroke.line("scale", Pen.NARROW, x, y, x + width, y));
    if (bar.zero() >= 0) {
      double at = x + bar.zero() / 100 * width;
      marks.add(Mark.Stroke.line("scale", Pen.NARROW, at, y - 1, at, y + 1));
    }
    Box before = box(bar.beforeLeft(), bar.beforeWidth(), x, width, y, y + HALF);
    Box after = box(bar.afterLeft(), bar.afterWidth(), x, width, y - HALF, y);
    marks.add(Mark.Stroke.box("scale", Pen.NARROW, before));
    marks.add(
        new Mark.Fill(
            "scale",
            List.of(
                new Point(after.x0(), after.y0()),
                new Point(after.x1(), after.y0()),
                new Point(after.x1(), after.y1()),
                new Point(after.x0(), after.y1()))));
    return marks;
  }

  private static Box box(
      double left, double wide, double x, double width, double low, double high) {
    double x0 = x + Math.max(0, Math.min(100, left)) / 100 * width;
    double x1 = x + Math.max(0, Math.min(100, left + wide)) / 100 * width;
    return new Box(x0, low, Math.max(x1, x0 + 0.3), high);
  }
}
