package fettle.sheets.page;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import java.util.ArrayList;
import java.util.List;

/** Frame, centring marks and grid reference of a sheet. */
public final class Frame {

  static final Source GRID =
      Source.page("ISO 5457:1999", "fields of 50 mm counted from the centring marks");
  static final Source MARKS =
      Source.memory("ISO 5457:1999", "centring marks and grid border of 5 mm");

  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
  private static final double GRID_BORDER = 5;

  private Frame() {}

  /**
   * Returns the number of grid fields along a side.
   *
   * @param side length of the side [mm]
   */
  public static int fields(double side) {
    return (int) (2 * Math.round(side / 100));
  }

  /** Returns the marks of the frame. */
  public static List<Mark> of(Format format) {
    List<Mark> marks = new ArrayList<>();
    Box space = format.space();
    marks.add(Mark.Stroke.box("frame", Pen.FRAME, space));
    Box grid = space.grown(GRID_BORDER);
    double cx = format.width() / 2;
    double cy = format.height() / 2;
    marks.add(Mark.Stroke.line("frame", Pen.FRAME, cx, grid.y1(), cx, space.y1() - 5));
    marks.add(
        Mark.Stroke.line(
            "frame", Pen.FRAME, cx, grid.y0(), cx, space.y0() + (format == Format.A4 ? 0 : 5)));
    marks.add(Mark.Stroke.line("frame", Pen.FRAME, grid.x0(), cy, space.x0() + 5, cy));
    marks.add(Mark.Stroke.line("frame", Pen.FRAME, grid.x1(), cy, space.x1() - 5, cy));
    boolean small = format == Format.A4;
    across(marks, format, space.y1(), grid.y1());
    if (!small) {
      across(marks, format, grid.y0(), space.y0());
      upright(marks, format, grid.x0(), space.x0());
      marks.add(Mark.Stroke.box("frame", Pen.GRID, grid));
    } else {
      marks.add(
          new Mark.Stroke(
              "frame",
              Pen.GRID,
              List.of(
                  new fettle.sheets.marks.Point(space.x0(), grid.y1()),
                  new fettle.sheets.marks.Point(grid.x1(), grid.y1()),
                  new fettle.sheets.marks.Point(grid.x1(), space.y0()))));
    }
    upright(marks, format, space.x1(), grid.x1());
    return marks;
  }

  private static void across(List<Mark> marks, Format f, double low, double high) {
    int n = fields(f.width());
    Box s = f.space();
    for (int i = 0; i < n; i++) {
      double left = Math.max(f.width() / 2 + (i - n / 2) * 50.0, s.x0());
      double right = Math.min(f.width() / 2 + (i + 1 - n / 2) * 50.0, s.x1());
      left = i == 0 ? s.x0() : left;
      right = i == n - 1 ? s.x1() : right;
      if (i > 0 && i != n / 2) {
        marks.add(Mark.Stroke.line("frame", Pen.GRID, left, low, left, high));
      }
      label(marks, Integer.toString(i + 1), (left + right) / 2, (low + high) / 2);
    }
  }

  private static void upright(List<Mark> marks, Format f, double low, double high) {
    int n = fields(f.height());
    Box s = f.space();
    for (int i = 0; i < n; i++) {
      double top = i == 0 ? s.y1() : f.height() / 2 + (n / 2 - i) * 50.0;
      double bottom = i == n - 1 ? s.y0() : f.height() / 2 + (n / 2 - i - 1) * 50.0;
      if (i > 0 && i != n / 2) {
        marks.add(Mark.Stroke.line("frame", Pen.GRID, low, top, high, top));
      }
      label(marks, LETTERS.substring(i, i + 1), (low + high) / 2, (top + bottom) / 2);
    }
  }

  private static void label(List<Mark> marks, String text, double x, double y) {
    double h = 3.5;
    marks.add(
        new Mark.Text(
            "frame",
            text,
            x - Lettering.width(text, h) / 2,
            y - h / 2,
            h,
            Mark.Reading.FROM_BELOW));
  }
}
