package fettle.sheets.draw;

import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;

/**
 * An upright cutting plane in a view: wide ends, arrows in the direction of view, letters (ISO
 * 128-3).
 */
final class CuttingPlane {

  private static final double H = 5;

  private final Plan plan;
  private final String letter;
  private final double x;
  private final int way;

  /**
   * A cutting plane.
   *
   * @param x where it stands on the sheet [mm]
   * @param way +1 if the section is seen to the right, -1 if to the left
   */
  CuttingPlane(Plan plan, String letter, double x, int way) {
    this.plan = plan;
    this.letter = letter;
    this.x = x;
    this.way = way;
  }

  /** Tells whether no extension line stands below a stretch of the view. */
  interface Clear {
    boolean between(double low, double high);
  }

  /** Draws it; its letters stand where lines leave room. */
  void draw(Clear below) {
    String g = "cut:" + letter;
    double top = plan.outline().y1();
    double bottom = plan.outline().y0();
    for (int sign : new int[] {1, -1}) {
      double from = sign > 0 ? top + 2 : bottom - 2;
      double to = from + sign * 6;
      plan.add(Mark.Stroke.line(g, Pen.CUTTING, x, from, x, to));
      double arrowAt = to - sign * 1.5;
      plan.add(Mark.Stroke.line(g, Pen.NARROW, x - way * 9, arrowAt, x - way * 3, arrowAt));
      plan.add(Mark.Fill.arrow(g, x - way * 0.3, arrowAt, way > 0 ? 0 : Math.PI));
      double w = Lettering.width(letter, H);
      double at = sign > 0 ? x - w / 2 : letterAt(w, below);
      double y = sign > 0 ? to + 1.5 : to - 6.5;
      plan.add(new Mark.Text(g, letter, at, y, H, Mark.Reading.FROM_BELOW));
      double left = Math.min(x - (way > 0 ? 9.5 : 2.5), at - 0.5);
      double right = Math.max(x + (way > 0 ? 2.5 : 9.5), at + w + 0.5);
      plan.keepClear(
          sign > 0
              ? new Box(left, from - 0.5, right, y + 5.5)
              : new Box(left, y - 0.5, right, from + 0.5));
    }
  }

  /** Returns where a letter below the view stands so that no extension line runs through it. */
  private double letterAt(double w, Clear below) {
    for (double shift : new double[] {0, -5, 5, -9, 9, -13, 13}) {
      double low = x + shift - w / 2;
      if (below.between(low - 1, low + w + 1)) {
        return low;
      }
    }
    return x - w / 2;
  }
}
