package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleToIntFunction;
import org.jspecify.annotations.Nullable;

/** Finds the lines of a view: edges and outlines of round faces, seen or hidden. */
final class Viewing {

  private static final double OFF = 2e-4;

  private final Body body;
  private final Brep solid;
  private final Looking looking;
  private final Ray ray;
  private final Vec toViewer;
  private final List<View.Stroke> strokes = new ArrayList<>();

  Viewing(Body body, Brep solid, Looking looking) {
    this.body = body;
    this.solid = solid;
    this.looking = looking;
    this.ray = new Ray(body);
    this.toViewer = looking.along().times(-1);
  }

  View view(Surface.@Nullable Plane cut) {
    int[][] sides = solid.facesAtEdges();
    for (int i = 0; i < solid.edges().size(); i++) {
      if (sides[i][0] != sides[i][1]) {
        edge(solid.edges().get(i), solid.faces().get(sides[i][0]), solid.faces().get(sides[i][1]));
      }
    }
    for (Brep.Face face : solid.faces()) {
      outlines(face);
    }
    List<View.Region> regions = new ArrayList<>();
    for (Brep.Face face : solid.faces()) {
      if (cut != null && face.surface().same(cut)) {
        regions.add(region(face));
      }
    }
    return new View(looking, Overlaps.cleared(strokes), regions);
  }

  private View.Point seen(Vec p) {
    return new View.Point(p.dot(looking.right()), p.dot(looking.up()));
  }

  private void edge(Brep.Edge e, Brep.Face a, Brep.Face b) {
    Vec middle = e.at(0.47);
    boolean smooth = a.normal(middle).dot(b.normal(middle)) > 1 - 1e-6 && !rim(e, a);
    String feature = a.feature().equals("outline") ? b.feature() : a.feature();
    double[] breaks = e.curve() instanceof Curve.Line ? equal(12) : e.breaks();
    runs(
        breaks,
        share -> {
          Vec p = e.at(share);
          Vec off = a.normal(p).plus(b.normal(p));
          Vec away = off.length() > 0.05 ? off.unit() : toViewer;
          return ray.blocked(p.plus(away.times(OFF)), toViewer) ? 2 : 1;
        },
        (state, from, to) -> {
          View.Kind kind =
              state == 2 ? View.Kind.HIDDEN : smooth ? View.Kind.SMOOTH : View.Kind.VISIBLE;
          View.Shape shape = shape(e.curve(), parameter(e, from), parameter(e, to));
          if (shape != null && !(state == 2 && smooth)) {
            strokes.add(new View.Stroke(kind, shape, feature));
          }
        });
  }

  /** Tells whether a smooth edge bounds what is seen, as where a rounding runs into an end face. */
  private boolean rim(Brep.Edge e, Brep.Face face) {
    for (double share : equal(6)) {
      if (Math.abs(face.normal(e.at(share)).dot(toViewer)) > 1e-6) {
        return false;
      }
    }
    return true;
  }

  private static double parameter(Brep.Edge e, double share) {
    return e.from() + share * (e.to() - e.from());
  }

  private static double[] equal(int n) {
    double[] shares = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      shares[i] = (double) i / n;
    }
    return shares;
  }

  private interface Run {
    void add(int state, double from, double to);
  }

  /** Divides 0 to 1 into runs of one state; state 0 is left out. */
  private static void runs(double[] breaks, DoubleToIntFunction state, Run into) {
    int n = breaks.length - 1;
    double start = 0;
    double last = middle(breaks, 1);
    int now = state.applyAsInt(last);
    for (int i = 2; i <= n; i++) {
      double at = middle(breaks, i);
      int next = state.applyAsInt(at);
      if (next != now) {
        double low = last;
        double high = at;
        for (int k = 0; k < 26; k++) {
          double m = (low + high) / 2;
          if (state.applyAsInt(m) == now) {
            low = m;
          } else {
            high = m;
          }
        }
        if (now != 0) {
          into.add(now, start, (low + high) / 2);
        }
        start = (low + high) / 2;
        now = next;
      }
      last = at;
    }
    if (now != 0) {
      into.add(now, start, 1);
    }
  }

  private static double middle(double[] breaks, int i) {
    return breaks[i - 1] + 0.48 * (breaks[i] - breaks[i - 1]);
  }

  /** Outlines of a round face: where its normal lies across the line of sight. */
  private void outlines(Brep.Face face) {
    Surface s = face.surface();
    if (!s.round()) {
      return;
    }
    Frame f = s.frame();
    Vec w = f.local(f.origin().plus(toViewer));
    double across = Math.hypot(w.x(), w.y());
    double[] range = range(face);
    if (across < 1e-9) {
      if (s instanceof Surface.Torus t) {
        for (double v : new double[] {0, Math.PI}) {
          double r = t.major() + t.minor() * Math.cos(v);
          double at = t.middle() + Math.IEEEremainder(v - t.middle(), 2 * Math.PI);
          if (r > 1e-9 && at > range[0] + 1e-9 && at < range[1] - 1e-9) {
            outline(face, Curve.circle(f, r), 0, 2 * Math.PI);
          }
        }
      }
      return;
    }
    double facing = Math.atan2(w.y(), w.x());
    double slope = s instanceof Surface.Cone c ? c.slope() : 0;
    double cosine = slope * w.z() / across;
    if (Math.abs(cosine) > 1 || (s instanceof Surface.Torus && Math.abs(w.z()) > 1e-9)) {
      return;
    }
    for (double sign : new double[] {1, -1}) {
      double u = facing + sign * Math.acos(cosine);
      if (s instanceof Surface.Torus t) {
        Vec side = f.direction(new Vec(Math.cos(u), Math.sin(u), 0));
        Vec centre = f.origin().plus(side.times(t.major()));
        Curve circle = Curve.circle(Frame.of(centre, side.cross(f.z()), side), t.minor());
        outline(face, circle, range[0], range[1]);
      } else {
        Vec a = s.at(u, range[0]);
        Vec d = s.at(u, range[1]).minus(a);
        if (d.length() > 1e-9) {
          outline(face, new Curve.Line(a, d.unit(), 0, d.length()), 0, d.length());
        }
      }
    }
  }

  private double[] range(Brep.Face face) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Brep.Loop loop : face.loops()) {
      for (Brep.Use use : loop.uses()) {
        Brep.Edge e = solid.edges().get(use.edge());
        for (double share : e.breaks()) {
          double v = face.surface().v(e.at(share));
          low = Math.min(low, v);
          high = Math.max(high, v);
        }
      }
    }
    return new double[] {low, high};
  }

  private void outline(Brep.Face face, Curve curve, double from, double to) {
    runs(
        equal(32),
        share -> {
          Vec p = curve.at(from + share * (to - from));
          Vec n = face.normal(p).times(OFF);
          boolean skin = !body.contains(p.plus(n)) && body.contains(p.minus(n));
          return !skin ? 0 : ray.blocked(p.plus(n), toViewer) ? 2 : 1;
        },
        (state, a, b) -> {
          View.Shape shape = shape(curve, from + a * (to - from), from + b * (to - from));
          if (shape != null) {
            View.Kind kind = state == 2 ? View.Kind.HIDDEN : View.Kind.VISIBLE;
            strokes.add(new View.Stroke(kind, shape, face.feature()));
          }
        });
  }

  /** Returns how a piece of a curve looks; null if it is seen end on. */
  private View.@Nullable Shape shape(Curve curve, double from, double to) {
    View.Point p = seen(curve.at(from));
    View.Point q = seen(curve.at(to));
    if (curve instanceof Curve.Line) {
      return Math.hypot(q.x() - p.x(), q.y() - p.y()) < 1e-7
          ? null
          : new View.Straight(p.x(), p.y(), q.x(), q.y());
    }
    if (curve instanceof Curve.Oval o && o.isCircle()) {
      double turn = o.frame().z().dot(toViewer);
      View.Point c = seen(o.frame().origin());
      if (Math.abs(turn) > 1 - 1e-9) {
        double start = Math.atan2(p.y() - c.y(), p.x() - c.x());
        return new View.Arc(c.x(), c.y(), o.first(), start, (to - from) * Math.signum(turn));
      }
      if (Math.abs(turn) < 1e-9) {
        return flat(o, from, to, c);
      }
    }
    List<View.Point> points = new ArrayList<>();
    int n = 32;
    for (int i = 0; i <= n; i++) {
      points.add(seen(curve.at(from + (to - from) * i / n)));
    }
    return new View.Path(points);
  }

  /** A circle seen on its edge is a straight line between its extremes. */
  private View.@Nullable Shape flat(Curve.Oval o, double from, double to, View.Point c) {
    Vec line = o.frame().z().cross(toViewer).unit();
    View.Point d = seen(line);
    double first = Math.atan2(line.dot(o.frame().y()), line.dot(o.frame().x()));
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    List<Double> at = new ArrayList<>(List.of(from, to));
    for (int k = -4; k <= 6; k++) {
      double t = first + k * Math.PI;
      if (t > from && t < to) {
        at.add(t);
      }
    }
    for (double t : at) {
      double s = o.first() * Math.cos(t - first);
      low = Math.min(low, s);
      high = Math.max(high, s);
    }
    return high - low < 1e-7
        ? null
        : new View.Straight(
            c.x() + d.x() * low, c.y() + d.y() * low, c.x() + d.x() * high, c.y() + d.y() * high);
  }

  private View.Region region(Brep.Face face) {
    List<List<View.Shape>> rims = new ArrayList<>();
    for (Brep.Loop loop : face.loops()) {
      List<View.Shape> rim = new ArrayList<>();
      for (Brep.Use use : loop.uses()) {
        Brep.Edge e = solid.edges().get(use.edge());
        View.Shape s =
            use.forward() ? shape(e.curve(), e.from(), e.to()) : shape(e.curve(), e.to(), e.from());
        if (s != null) {
          rim.add(s);
        }
      }
      rims.add(rim);
    }
    return new View.Region(rims);
  }
}
