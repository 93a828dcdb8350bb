package fettle.sheets.draw;

import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import fettle.parts.solid.Looking;
import fettle.parts.solid.Marks;
import fettle.parts.solid.Vec;
import fettle.sheets.dimension.Scheme;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The drawing board of a turned part at one scale: its main view, its books, its other views. */
final class Board {

  static final String AXIS = "the axis";

  private static final double[] SHARES = {
    0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9, 0.05, 0.95, 0.27, 0.43, 0.57, 0.73
  };

  final Turned part;
  final Marks marks;
  final double k;
  final Plan plan;
  final Scheme scheme = new Scheme();
  final AskedGeometry asked;
  final List<Draft.Placed> placed = new ArrayList<>();
  final List<Table> tables = new ArrayList<>();
  private final Map<List<String>, List<Point>> edges = new LinkedHashMap<>();

  Board(Turned part, Marks marks, double factor) {
    this.part = part;
    this.marks = marks;
    this.k = factor;
    this.plan = new Plan("main", factor);
    this.asked = new AskedGeometry(part, scheme);
    placed.add(new Draft.Placed(plan, Draft.Where.MAIN));
  }

  static Point seen(Vec p, Looking l) {
    return new Point(p.dot(l.right()), p.dot(l.up()));
  }

  /** Returns the diameter where a step ends. */
  static double end(Step s) {
    return s.form() == Step.Form.CYLINDER ? s.diameter().nominal() : s.endDiameter();
  }

  /** Returns the largest outer radius at a place along the axis. */
  double radiusAt(double x) {
    double at = 0;
    double r = 0;
    for (Step s : part.outside()) {
      double to = at + s.length().nominal();
      if (x >= at - 1e-9 && x <= to + 1e-9) {
        double share = Math.min(1, Math.max(0, (x - at) / s.length().nominal()));
        r = Math.max(r, (s.diameter().nominal() + share * (end(s) - s.diameter().nominal())) / 2);
      }
      at = to;
    }
    return r;
  }

  /** Returns places on a line along the axis where a leader may end, best first. */
  List<Point> between(double x, double to, double r) {
    List<Point> out = new ArrayList<>();
    for (double share : SHARES) {
      out.add(new Point(x + share * (to - x), r));
    }
    out.sort(Comparator.comparing(p -> isOpen(p.x(), r)));
    return out;
  }

  /** Tells whether a keyway or hole takes the outline away at the top. */
  private boolean isOpen(double x, double r) {
    return r > radiusAt(x) - 1e-6 && part.operations().stream().anyMatch(o -> isOpen(o, x));
  }

  private boolean isOpen(Turned.Operation o, double x) {
    if (o instanceof Turned.Keyway w && Math.abs(w.angle()) < 1e-9) {
      double a = part.place(w.from(), w.at());
      double b = part.place(w.from(), w.at() + w.length().nominal());
      return x > Math.min(a, b) - 0.5 && x < Math.max(a, b) + 0.5;
    } else if (o instanceof Turned.CrossHole h && Math.abs(h.angle()) < 1e-9) {
      double half = Math.max(h.hole().cutDiameter(), h.hole().mouthDiameter()) / 2;
      return Math.abs(x - part.place(h.from(), h.at())) < half + 0.5;
    }
    return false;
  }

  /** Adds a note to be printed once with the number of its places. */
  void note(List<String> lines, Point at) {
    edges.computeIfAbsent(lines, l -> new ArrayList<>()).add(at);
  }

  /** Prints the notes gathered. */
  void printEdges() {
    edges.forEach(
        (lines, anchors) -> {
          List<String> text = new ArrayList<>(lines);
          if (anchors.size() > 1) {
            text.set(0, anchors.size() + "× " + text.get(0));
          }
          plan.note(anchors, 0, text);
        });
  }
}
