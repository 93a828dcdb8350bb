package fettle.sheets.draw;

import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import java.util.ArrayList;
import java.util.List;

/**
 * A table on a sheet, its upper left corner at the origin.
 *
 * @param name name of the table
 * @param rows rows of cells, all of one length; the first is the heading
 */
public record Table(String name, List<List<String>> rows) {

  private static final double H = 3.5;
  private static final double ROW = 7;
  private static final double SIDE = 2;

  /** Keeps its own copies. */
  public Table {
    rows = rows.stream().map(List::copyOf).toList();
  }

  private double[] columns() {
    double[] w = new double[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < w.length; i++) {
        w[i] = Math.max(w[i], Lettering.width(row.get(i), H) + 2 * SIDE);
      }
    }
    return w;
  }

  /** Returns the room it takes. */
  public Box bounds() {
    double width = 0;
    for (double w : columns()) {
      width += w;
    }
    return new Box(0, -rows.size() * ROW, width, 0);
  }

  /** Returns its marks. */
  public List<Mark> marks() {
    List<Mark> out = new ArrayList<>();
    String g = "table:" + name;
    Box b = bounds();
    double[] w = columns();
    out.add(Mark.Stroke.box(g, Pen.OUTLINE, b));
    double x = 0;
    for (int i = 0; i < w.length; i++) {
      if (i > 0) {
        out.add(Mark.Stroke.line(g, Pen.NARROW, x, b.y0(), x, 0));
      }
      for (int j = 0; j < rows.size(); j++) {
        String text = rows.get(j).get(i);
        if (!text.isEmpty()) {
          out.add(
              new Mark.Text(g, text, x + SIDE, -(j + 1) * ROW + 1.8, H, Mark.Reading.FROM_BELOW));
        }
      }
      x += w[i];
    }
    for (int j = 1; j < rows.size(); j++) {
      out.add(
          Mark.Stroke.line(g, j == 1 ? Pen.OUTLINE : Pen.NARROW, 0, -j * ROW, b.x1(), -j * ROW));
    }
    return out;
  }
}
