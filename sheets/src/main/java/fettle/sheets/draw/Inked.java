package fettle.sheets.draw;

import fettle.sheets.marks.Box;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.List;

/** Where marks lie on paper. */
public final class Inked {

  private Inked() {}

  /** Returns the box of a mark. */
  public static Box box(Mark m) {
    if (m instanceof Mark.Text t) {
      return t.box();
    }
    Box b = Box.NOTHING;
    for (Point p : flat(m)) {
      b = b.with(p.x(), p.y());
    }
    return b;
  }

  /** Returns a mark as points in order. */
  public static List<Point> flat(Mark m) {
    if (m instanceof Mark.Stroke s) {
      return s.points();
    } else if (m instanceof Mark.Fill f) {
      return f.points();
    } else if (m instanceof Mark.Arc a) {
      List<Point> out = new ArrayList<>();
      int n = Math.max(4, (int) Math.ceil(Math.abs(a.sweep()) / (Math.PI / 24)));
      for (int i = 0; i <= n; i++) {
        out.add(a.at((double) i / n));
      }
      return out;
    }
    return List.of();
  }

  /** Tells whether a mark touches a box. */
  public static boolean meets(Mark m, Box b) {
    if (m instanceof Mark.Text t) {
      return t.box().meets(b);
    }
    List<Point> points = flat(m);
    for (int i = 1; i < points.size(); i++) {
      if (b.crossed(points.get(i - 1), points.get(i))) {
        return true;
      }
    }
    return false;
  }
}
