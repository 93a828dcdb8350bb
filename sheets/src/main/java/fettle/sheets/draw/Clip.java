package fettle.sheets.draw;

import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Takes marks apart along a closed line. */
final class Clip {

  private static final double LEAST = 0.05;

  private final List<Point> rim;

  /** A closed line; its last point joins its first. */
  Clip(List<Point> rim) {
    this.rim = List.copyOf(rim);
  }

  /** Which side is kept. */
  enum Side {
    INSIDE,
    OUTSIDE
  }

  /** Returns what is left of a mark on one side; a mark that lies there wholly stays as it is. */
  List<Mark> keep(Mark m, Side side) {
    List<Point> points = Inked.flat(m);
    if (points.size() < 2) {
      return List.of(m);
    }
    List<List<Point>> kept = new ArrayList<>();
    List<Point> run = new ArrayList<>();
    boolean whole = true;
    for (int i = 1; i < points.size(); i++) {
      Point p = points.get(i - 1);
      Point q = points.get(i);
      List<Double> shares = shares(p, q);
      for (int j = 1; j < shares.size(); j++) {
        Point a = between(p, q, shares.get(j - 1));
        Point b = between(p, q, shares.get(j));
        boolean in = holds(between(p, q, (shares.get(j - 1) + shares.get(j)) / 2));
        if (in == (side == Side.INSIDE)) {
          if (run.isEmpty()) {
            run.add(a);
          }
          run.add(b);
        } else {
          whole = false;
          end(run, kept);
          run = new ArrayList<>();
        }
      }
    }
    end(run, kept);
    return whole ? List.of(m) : strokes(m, kept);
  }

  private static void end(List<Point> run, List<List<Point>> kept) {
    double length = 0;
    for (int i = 1; i < run.size(); i++) {
      length += run.get(i).to(run.get(i - 1));
    }
    if (length > LEAST) {
      kept.add(run);
    }
  }

  private static List<Mark> strokes(Mark m, List<List<Point>> kept) {
    if (m instanceof Mark.Stroke s) {
      return kept.stream().map(run -> (Mark) new Mark.Stroke(s.group(), s.pen(), run)).toList();
    } else if (m instanceof Mark.Arc a) {
      return kept.stream().map(run -> (Mark) new Mark.Stroke(a.group(), a.pen(), run)).toList();
    }
    return List.of();
  }

  private static Point between(Point p, Point q, double share) {
    return new Point(p.x() + share * (q.x() - p.x()), p.y() + share * (q.y() - p.y()));
  }

  /** Returns where a straight line meets the rim, as shares of its length, with both its ends. */
  private List<Double> shares(Point p, Point q) {
    List<Double> all = new ArrayList<>(List.of(0.0, 1.0));
    for (int i = 0; i < rim.size(); i++) {
      Point a = rim.get(i);
      Point b = rim.get((i + 1) % rim.size());
      double dx = q.x() - p.x();
      double dy = q.y() - p.y();
      double ex = b.x() - a.x();
      double ey = b.y() - a.y();
      double det = dx * ey - dy * ex;
      if (Math.abs(det) > 1e-12) {
        double t = ((a.x() - p.x()) * ey - (a.y() - p.y()) * ex) / det;
        double u = ((a.x() - p.x()) * dy - (a.y() - p.y()) * dx) / det;
        if (t > 1e-9 && t < 1 - 1e-9 && u >= 0 && u <= 1) {
          all.add(t);
        }
      }
    }
    Collections.sort(all);
    return all;
  }

  /** Tells whether a point lies inside the rim. */
  boolean holds(Point p) {
    boolean in = false;
    for (int i = 0; i < rim.size(); i++) {
      Point a = rim.get(i);
      Point b = rim.get((i + 1) % rim.size());
      boolean spans = a.y() > p.y() != b.y() > p.y();
      if (spans && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        in = !in;
      }
    }
    return in;
  }
}
