package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;

/** Takes away what lies under another line: visible before smooth before hidden. */
final class Overlaps {

  private static final double NEAR = 1e-5;

  private Overlaps() {}

  static List<View.Stroke> cleared(List<View.Stroke> strokes) {
    List<View.Stroke> kept = new ArrayList<>();
    for (View.Kind kind : View.Kind.values()) {
      for (View.Stroke s : strokes) {
        if (s.kind() == kind) {
          add(s, kept);
        }
      }
    }
    return kept;
  }

  private static void add(View.Stroke stroke, List<View.Stroke> kept) {
    if (stroke.shape() instanceof View.Straight line) {
      for (double[] piece : straight(line, kept)) {
        double dx = line.x1() - line.x0();
        double dy = line.y1() - line.y0();
        kept.add(
            new View.Stroke(
                stroke.kind(),
                new View.Straight(
                    line.x0() + piece[0] * dx,
                    line.y0() + piece[0] * dy,
                    line.x0() + piece[1] * dx,
                    line.y0() + piece[1] * dy),
                stroke.feature()));
      }
    } else if (stroke.shape() instanceof View.Arc arc) {
      for (double[] piece : round(arc, kept)) {
        kept.add(
            new View.Stroke(
                stroke.kind(),
                new View.Arc(
                    arc.x(),
                    arc.y(),
                    arc.radius(),
                    arc.start() + piece[0] * arc.sweep(),
                    (piece[1] - piece[0]) * arc.sweep()),
                stroke.feature()));
      }
    } else {
      View.Path path = (View.Path) stroke.shape();
      if (kept.stream().noneMatch(k -> k.shape() instanceof View.Path q && same(path, q))) {
        kept.add(stroke);
      }
    }
  }

  private static boolean same(View.Path a, View.Path b) {
    View.Point m = a.points().get(a.points().size() / 2);
    View.Point n = b.points().get(b.points().size() / 2);
    return Math.hypot(m.x() - n.x(), m.y() - n.y()) < 1e-4
        && (ends(a, b, 0, b.points().size() - 1) || ends(a, b, b.points().size() - 1, 0));
  }

  private static boolean ends(View.Path a, View.Path b, int first, int last) {
    View.Point p = a.points().get(0);
    View.Point q = a.points().get(a.points().size() - 1);
    View.Point r = b.points().get(first);
    View.Point s = b.points().get(last);
    return Math.hypot(p.x() - r.x(), p.y() - r.y()) < 1e-4
        && Math.hypot(q.x() - s.x(), q.y() - s.y()) < 1e-4;
  }

  private static List<double[]> straight(View.Straight a, List<View.Stroke> kept) {
    double dx = a.x1() - a.x0();
    double dy = a.y1() - a.y0();
    double l2 = dx * dx + dy * dy;
    List<double[]> free = new ArrayList<>(List.of(new double[] {0, 1}));
    for (View.Stroke k : kept) {
      if (k.shape() instanceof View.Straight b) {
        double off0 = Math.abs((b.x0() - a.x0()) * dy - (b.y0() - a.y0()) * dx) / Math.sqrt(l2);
        double off1 = Math.abs((b.x1() - a.x0()) * dy - (b.y1() - a.y0()) * dx) / Math.sqrt(l2);
        if (off0 < NEAR && off1 < NEAR) {
          double s = ((b.x0() - a.x0()) * dx + (b.y0() - a.y0()) * dy) / l2;
          double e = ((b.x1() - a.x0()) * dx + (b.y1() - a.y0()) * dy) / l2;
          free = without(free, Math.min(s, e), Math.max(s, e), 1e-4 / Math.sqrt(l2));
        }
      }
    }
    return free;
  }

  private static List<double[]> round(View.Arc a, List<View.Stroke> kept) {
    List<double[]> free = new ArrayList<>(List.of(new double[] {0, 1}));
    for (View.Stroke k : kept) {
      if (k.shape() instanceof View.Arc b
          && Math.hypot(a.x() - b.x(), a.y() - b.y()) < NEAR
          && Math.abs(a.radius() - b.radius()) < NEAR) {
        double sign = Math.signum(a.sweep());
        double low = Math.min(b.start() * sign, (b.start() + b.sweep()) * sign);
        double wide = Math.abs(b.sweep());
        double full = Math.abs(a.sweep());
        for (int turn = -3; turn <= 3; turn++) {
          double s = low + turn * 2 * Math.PI - a.start() * sign;
          free = without(free, s / full, (s + wide) / full, 1e-4 / (full * a.radius()));
        }
      }
    }
    return free;
  }

  private static List<double[]> without(List<double[]> free, double from, double to, double least) {
    List<double[]> rest = new ArrayList<>();
    for (double[] f : free) {
      if (to <= f[0] || from >= f[1]) {
        rest.add(f);
      } else {
        if (from - f[0] > least) {
          rest.add(new double[] {f[0], from});
        }
        if (f[1] - to > least) {
          rest.add(new double[] {to, f[1]});
        }
      }
    }
    return rest;
  }
}
