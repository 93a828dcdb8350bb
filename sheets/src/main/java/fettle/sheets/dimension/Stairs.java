package fettle.sheets.dimension;

import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Notes above a view, arranged as two flights of stairs that fall away to the left and to the
 * right. All leaders of a flight are parallel and a note starts on its own leader, above the notes
 * that stand further out: so leaders cross neither each other nor any text.
 */
public final class Stairs {

  private static final double H = 3.5;
  private static final double LINE = 5.6;
  private static final double OVER = 1.2;
  private static final double COT = Math.tan(Math.toRadians(15));
  private static final double APART = 3;
  private static final double CLOSER = 2.2;
  private static final int REACH = 24;

  private record Step(
      Callout note, Point anchor, Point knee, double s, double width, double height) {}

  private final List<Mark> marks = new ArrayList<>();
  private final List<Callout> failed = new ArrayList<>();

  /**
   * Places notes.
   *
   * @param group name of the group
   * @param notes the notes
   * @param outline outline of the view
   * @param avoid boxes that leaders must not cross
   * @param above least height of the first note above the outline [mm]
   */
  public Stairs(String group, List<Callout> notes, Box outline, List<Box> avoid, double above) {
    double middle = (outline.x0() + outline.x1()) / 2;
    List<Step> left = new ArrayList<>();
    List<Step> right = new ArrayList<>();
    List<Callout> order = new ArrayList<>(notes);
    order.sort(Comparator.comparingInt((Callout c) -> c.anchors().size()));
    double top = outline.y1() + above;
    for (Callout c : order) {
      if (!add(c, middle, left, right, top, avoid, 0, APART)
          && !add(c, middle, left, right, top, avoid, 2 * REACH, APART)
          && !add(c, middle, left, right, top, avoid, 2 * REACH, CLOSER)) {
        failed.add(c);
      }
    }
    flight(group + ":note", right, 1, top);
    flight(group + ":noteleft", left, -1, top);
  }

  private static boolean add(
      Callout c,
      double middle,
      List<Step> left,
      List<Step> right,
      double top,
      List<Box> avoid,
      int reach,
      double apart) {
    for (Point p : c.anchors()) {
      int way = p.x() >= middle ? 1 : -1;
      List<Step> flight = way > 0 ? right : left;
      Point tip =
          c.radius() == 0
              ? p
              : p.moved(
                  way * c.radius() * Math.sin(Math.toRadians(15)),
                  c.radius() * Math.cos(Math.toRadians(15)));
      double own = way * tip.x() - tip.y() * COT;
      for (int j = 0; j <= 2 * reach; j++) {
        int i = j % (reach + 1);
        double rise = j <= reach ? 1 : 0.2;
        double s = own + (i % 2 == 0 ? -1 : 1) * ((i + 1) / 2) * 0.75;
        double foot = way * (s + top * COT);
        Point knee = knee(tip, own, s, way, top - 1.5, rise);
        boolean free =
            flight.stream().noneMatch(q -> Math.abs(q.s - s) < apart || between(q.s, own, s))
                && knee.y() < top - 1
                && avoid.stream()
                    .noneMatch(
                        b ->
                            b.grown(1).crossed(tip, knee)
                                || b.grown(1).crossed(knee, new Point(foot, top)))
                && (way > 0 ? foot > middle - 40 : foot < middle + 40);
        if (free) {
          flight.add(new Step(c, tip, knee, s, width(c), height(c)));
          return true;
        }
      }
    }
    return false;
  }

  /** How high the last line of text stands above the foot of a note. */
  private static double lift(Callout c) {
    double text = Math.max(0, c.lines().size() - 1) * LINE;
    double frames = c.attached().height();
    return frames == 0 ? text : c.lines().isEmpty() ? frames - H : frames + OVER + text;
  }

  private static double width(Callout c) {
    double w = 0;
    for (String line : c.lines()) {
      w = Math.max(w, Lettering.width(line, H));
    }
    Attached a = c.attached();
    if (a.frames().isEmpty() && !a.datum().isEmpty()) {
      w += ToleranceFrame.HEIGHT + 3;
    } else {
      w = Math.max(w, a.length());
    }
    return w + 2 + lift(c) * COT;
  }

  private static double height(Callout c) {
    double text = lift(c) + H + (c.lines().isEmpty() ? 0 : 3);
    boolean standing = c.attached().frames().isEmpty() && !c.attached().datum().isEmpty();
    return standing ? Math.max(text, FrameMarks.DATUM + 1) : text;
  }

  /** Where a leader that has to step aside joins its own course. */
  private static Point knee(Point tip, double own, double s, int way, double most, double rise) {
    double aside = Math.abs(s - own);
    double y = tip.y() + Math.min(rise * aside, Math.max(0.2 * aside, most - tip.y()));
    return new Point(way * (s + y * COT), y);
  }

  private static boolean between(double q, double a, double b) {
    return q > Math.min(a, b) && q < Math.max(a, b);
  }

  private void flight(String group, List<Step> steps, int way, double top) {
    steps.sort(Comparator.comparingDouble((Step s) -> -s.s));
    double[] level = new double[steps.size()];
    for (int k = 0; k < steps.size(); k++) {
      Step a = steps.get(k);
      level[k] = top;
      for (int j = 0; j < k; j++) {
        Step b = steps.get(j);
        if (b.s < a.s + a.width + 6) {
          level[k] = Math.max(level[k], level[j] + b.height + 1.5);
        }
      }
      draw(group + k, a, way, level[k]);
    }
  }

  private void draw(String group, Step a, int way, double level) {
    Attached more = a.note.attached();
    double shelf = level + (more.frames().isEmpty() ? 0 : ToleranceFrame.HEIGHT / 2);
    double lead = 1 + lift(a.note) * COT;
    double reach = more.frames().isEmpty() ? a.width + 1 : lead;
    leader(group, a, way, shelf, reach);
    double x = way * (a.s + shelf * COT);
    double first = level + (more.frames().isEmpty() ? 0 : more.height()) + OVER;
    List<String> lines = a.note.lines();
    for (int i = 0; i < lines.size(); i++) {
      double start = way > 0 ? x + lead : x - lead - Lettering.width(lines.get(i), H);
      double y = first + (lines.size() - 1 - i) * LINE;
      marks.addAll(
          Framed.marks(new Mark.Text(group, lines.get(i), start, y, H, Mark.Reading.FROM_BELOW)));
    }
    if (!more.frames().isEmpty()) {
      FrameMarks m = new FrameMarks(group, Mark.Reading.FROM_BELOW);
      m.draw(more, x + way * lead, way, shelf, 1);
      marks.addAll(m.marks());
    } else if (!more.datum().isEmpty()) {
      double at = x + way * (a.width + 1 - ToleranceFrame.HEIGHT / 2 - 0.5);
      marks.addAll(FrameMarks.standing(group, more.datum(), at, level));
    }
  }

  private void leader(String group, Step a, int way, double shelf, double reach) {
    double x = way * (a.s + shelf * COT);
    boolean straight = a.knee.to(a.anchor) < 1e-6;
    Point next = straight ? new Point(x, shelf) : a.knee;
    double slope = Math.atan2(a.anchor.y() - next.y(), a.anchor.x() - next.x());
    marks.add(
        new Mark.Stroke(
            group,
            Pen.NARROW,
            List.of(a.anchor, a.knee, new Point(x, shelf), new Point(x + way * reach, shelf))));
    marks.add(Mark.Fill.arrow(group, a.anchor.x(), a.anchor.y(), slope));
  }

  /** Returns the marks. */
  public List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** Returns notes for which there was no room. */
  public List<Callout> failed() {
    return List.copyOf(failed);
  }
}
