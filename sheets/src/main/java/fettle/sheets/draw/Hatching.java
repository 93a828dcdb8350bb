package fettle.sheets.draw;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Hatching of cut material: narrow lines at an even pitch. */
public final class Hatching {

  static final Source RULE =
      Source.memory("ISO 128-3:2022", "hatching at 45 degrees, pitch by area");

  private Hatching() {}

  /** Returns hatching inside rims; what lies inside an even number of rims stays free. */
  public static List<Mark> of(String group, List<List<Point>> rims, double angle) {
    Box b = Box.NOTHING;
    for (List<Point> rim : rims) {
      for (Point p : rim) {
        b = b.with(p.x(), p.y());
      }
    }
    double pitch = Math.max(1.5, Math.min(4, Math.sqrt(b.width() * b.height()) / 20));
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (List<Point> rim : rims) {
      for (Point p : rim) {
        double v = -p.x() * s + p.y() * c;
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
    }
    List<Mark> out = new ArrayList<>();
    for (long i = (long) Math.ceil(low / pitch); i * pitch < high && out.size() < 5000; i++) {
      row(group, rims, i * pitch + 1e-5, c, s, out);
    }
    return out;
  }

  private static void row(
      String group, List<List<Point>> rims, double v, double c, double s, List<Mark> out) {
    List<Double> at = new ArrayList<>();
    for (List<Point> rim : rims) {
      for (int i = 0; i < rim.size(); i++) {
        Point p = rim.get(i);
        Point q = rim.get((i + 1) % rim.size());
        double a = -p.x() * s + p.y() * c - v;
        double b = -q.x() * s + q.y() * c - v;
        if (a < 0 != b < 0) {
          double t = a / (a - b);
          at.add((p.x() + t * (q.x() - p.x())) * c + (p.y() + t * (q.y() - p.y())) * s);
        }
      }
    }
    Collections.sort(at);
    for (int i = 0; i + 1 < at.size(); i += 2) {
      double u0 = at.get(i);
      double u1 = at.get(i + 1);
      if (u1 - u0 > 0.3) {
        out.add(
            Mark.Stroke.line(
                group, Pen.HATCH, u0 * c - v * s, u0 * s + v * c, u1 * c - v * s, u1 * s + v * c));
      }
    }
  }
}
