package fettle.sheets.judge;

import fettle.sheets.draw.Inked;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import fettle.sheets.page.Format;
import fettle.sheets.page.Sheet;
import fettle.sheets.page.TitleBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Looks a sheet over: text over text or line, ink outside the frame, heights, widths. */
public final class Judge {

  private static final double LEAST = 2.5;
  private static final Set<Double> WIDTHS = Set.of(0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0);

  private final Sheet sheet;
  private final List<String> faults = new ArrayList<>();

  private Judge(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Returns what is wrong with a sheet, in words; empty if nothing is. */
  public static List<String> faults(Sheet sheet) {
    Judge j = new Judge(sheet);
    j.texts();
    j.inside();
    j.dimensionLines();
    j.frames();
    j.pens();
    return List.copyOf(j.faults);
  }

  /** Tells whether lettering stays legible when a sheet is printed on another size of paper. */
  public static double printedHeight(double height, Format drawn, Format paper) {
    double a = Math.max(drawn.width(), drawn.height());
    double b = Math.max(paper.width(), paper.height());
    return height * Math.min(1, b / a);
  }

  private void texts() {
    List<Mark.Text> texts = new ArrayList<>();
    for (Mark m : sheet.marks()) {
      if (m instanceof Mark.Text t) {
        texts.add(t);
      }
    }
    for (int i = 0; i < texts.size(); i++) {
      Mark.Text t = texts.get(i);
      if (t.height() < LEAST - 1e-9) {
        faults.add("'" + t.text() + "' is only " + t.height() + " mm high");
      }
      for (int j = i + 1; j < texts.size(); j++) {
        if (t.box().grown(0.2).meets(texts.get(j).box())) {
          faults.add("'" + t.text() + "' lies over '" + texts.get(j).text() + "'");
        }
      }
      Box b = t.box().grown(0.2);
      for (Mark m : sheet.marks()) {
        if (!(m instanceof Mark.Text) && Inked.meets(m, b)) {
          faults.add("'" + t.text() + "' (" + t.group() + ") is crossed by a line of " + m.group());
        }
      }
    }
  }

  private void inside() {
    Box space = sheet.format().space();
    Box block = TitleBlock.place(sheet.format());
    for (Mark m : sheet.marks()) {
      if (m.group().equals("frame") || m.group().equals("block")) {
        continue;
      }
      Box b = Inked.box(m);
      if (!space.holds(b)) {
        faults.add(m.group() + " leaves the drawing space");
      }
      if (b.meets(block)) {
        faults.add(m.group() + " runs into the title block");
      }
    }
  }

  private void dimensionLines() {
    List<Mark.Stroke> lines = new ArrayList<>();
    for (Mark m : sheet.marks()) {
      if (m instanceof Mark.Stroke s
          && (s.group().endsWith(":line")
              || s.group().endsWith(":frame")
              || s.group().contains(":note"))) {
        lines.add(s);
      }
    }
    for (int i = 0; i < lines.size(); i++) {
      for (int j = i + 1; j < lines.size(); j++) {
        if (cross(lines.get(i), lines.get(j))) {
          faults.add(lines.get(i).group() + " crosses " + lines.get(j).group());
        }
      }
    }
  }

  private static boolean cross(Mark.Stroke a, Mark.Stroke b) {
    for (int i = 1; i < a.points().size(); i++) {
      for (int j = 1; j < b.points().size(); j++) {
        Point p = a.points().get(i - 1);
        Point q = a.points().get(i);
        Point r = b.points().get(j - 1);
        Point s = b.points().get(j);
        if (turn(p, q, r) * turn(p, q, s) < 0 && turn(r, s, p) * turn(r, s, q) < 0) {
          return true;
        }
      }
    }
    return false;
  }

  private static double turn(Point a, Point b, Point c) {
    double t = (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    return Math.abs(t) < 1e-9 ? 0 : t;
  }

  /** No line runs through a tolerance frame or the frame of a datum letter. */
  private void frames() {
    for (Mark m : sheet.marks()) {
      if (m instanceof Mark.Stroke s && s.group().endsWith(":frame") && s.points().size() == 5) {
        Box inner = Inked.box(s).grown(-0.2);
        for (Mark other : sheet.marks()) {
          if (!other.group().equals(s.group()) && Inked.meets(other, inner)) {
            faults.add(s.group() + " is crossed by " + other.group());
          }
        }
      }
    }
  }

  private void pens() {
    for (Pen pen : Pen.values()) {
      if (!WIDTHS.contains(pen.width())) {
        faults.add(pen + " is " + pen.width() + " wide, no width of ISO 128-2");
      }
    }
    if (Math.abs(Pen.OUTLINE.width() / Pen.NARROW.width() - 2) > 0.1) {
      faults.add("wide to narrow lines are not 2 to 1");
    }
  }
}
