package fettle.parts.solid;

import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Evaluates the boundary of a body: candidate curves are where surfaces of its primitives meet; cut
 * at all other surfaces, a piece is an edge of the solid if the material round it does not look the
 * same along one surface (set membership classification, Requicha and Voelcker 1985).
 */
final class Boundary {

  private static final double MERGE = 2e-6;

  private final Body body;
  private final List<Sheet> sheets = new ArrayList<>();
  private final List<Curve> curves = new ArrayList<>();
  private final List<Vec> corners = new ArrayList<>();
  private final List<Vec> vertices = new ArrayList<>();
  private final List<Segment> segments = new ArrayList<>();

  /** A surface with the primitives that have a face on it. */
  private static final class Sheet {
    final Surface surface;
    final List<Bounds> boxes = new ArrayList<>();
    final List<String> names = new ArrayList<>();

    Sheet(Surface surface) {
      this.surface = surface;
    }
  }

  private record Side(int sheet, boolean outward, boolean forward) {}

  private static final class Segment {
    final Curve curve;
    double from;
    double to;
    int start;
    int end;
    final Set<Side> sides;
    boolean dead;

    Segment(Curve curve, double from, double to, int start, int end, Set<Side> sides) {
      this.curve = curve;
      this.from = from;
      this.to = to;
      this.start = start;
      this.end = end;
      this.sides = sides;
    }
  }

  private Boundary(Body body) {
    this.body = body;
  }

  /** Returns the boundary; rings have no vertices yet and full round faces no seams. */
  static Brep of(Body body) {
    Boundary b = new Boundary(body);
    b.collect();
    for (Curve curve : b.curves) {
      b.cut(curve);
    }
    b.join();
    return b.faces();
  }

  // Surfaces and candidate curves.

  private void collect() {
    List<List<Primitive.Patch>> patches = new ArrayList<>();
    List<Bounds> boxes = new ArrayList<>();
    for (Body.Step step : body.steps()) {
      List<Primitive.Patch> own = step.solid().patches();
      patches.add(own);
      boxes.add(step.solid().bounds());
      for (Primitive.Patch p : own) {
        Sheet sheet = sheets.get(sheetOf(p.surface()));
        sheet.boxes.add(step.solid().bounds().grown(1e-3));
        sheet.names.add(p.name());
      }
      step.solid().edges().forEach(this::add);
      if (step.solid() instanceof Primitive.Turn turn) {
        for (Profile.Piece p : turn.profile().pieces()) {
          if (p.y0() < 1e-9) {
            corners.add(turn.frame().at(0, 0, p.x0()));
          }
        }
      }
      if (step.solid() instanceof Primitive.Push push) {
        for (Profile.Piece p : push.profile().pieces()) {
          corners.add(push.frame().at(p.x0(), p.y0(), 0));
          corners.add(push.frame().at(p.x0(), p.y0(), push.height()));
        }
      }
    }
    for (int i = 0; i < patches.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (boxes.get(i).grown(1e-3).meets(boxes.get(j))) {
          cross(patches.get(i), patches.get(j), zone(boxes.get(i), boxes.get(j)));
        }
      }
    }
  }

  private static Bounds zone(Bounds a, Bounds b) {
    Vec low =
        new Vec(
            Math.max(a.low().x(), b.low().x()),
            Math.max(a.low().y(), b.low().y()),
            Math.max(a.low().z(), b.low().z()));
    Vec high =
        new Vec(
            Math.min(a.high().x(), b.high().x()),
            Math.min(a.high().y(), b.high().y()),
            Math.min(a.high().z(), b.high().z()));
    return new Bounds(low, high).grown(0.71);
  }

  private void cross(List<Primitive.Patch> a, List<Primitive.Patch> b, Bounds zone) {
    for (Primitive.Patch p : a) {
      for (Primitive.Patch q : b) {
        if (sheetOf(p.surface()) != sheetOf(q.surface())) {
          Meeting.of(p, q, zone).forEach(this::add);
        }
      }
    }
  }

  private int sheetOf(Surface s) {
    for (int i = 0; i < sheets.size(); i++) {
      if (sheets.get(i).surface.same(s)) {
        return i;
      }
    }
    sheets.add(new Sheet(s));
    return sheets.size() - 1;
  }

  private void add(Curve curve) {
    for (int i = 0; i < curves.size(); i++) {
      Curve joined = joined(curves.get(i), curve);
      if (joined != null) {
        curves.set(i, joined);
        return;
      }
    }
    curves.add(curve);
  }

  private static @Nullable Curve joined(Curve a, Curve b) {
    if (a instanceof Curve.Line l && b instanceof Curve.Line m) {
      if (l.direction().cross(m.direction()).length() > 1e-9
          || m.point().minus(l.point()).cross(l.direction()).length() > Surface.NEAR) {
        return null;
      }
      double s = m.at(m.from()).minus(l.point()).dot(l.direction());
      double e = m.at(m.to()).minus(l.point()).dot(l.direction());
      double from = Math.min(l.from(), Math.min(s, e));
      double to = Math.max(l.to(), Math.max(s, e));
      return new Curve.Line(l.point(), l.direction(), from, to);
    }
    if (a instanceof Curve.Oval o && b instanceof Curve.Oval p) {
      boolean same =
          o.frame().origin().to(p.frame().origin()) < Surface.NEAR
              && o.frame().z().cross(p.frame().z()).length() < 1e-9
              && Math.abs(o.first() - p.first()) < Surface.NEAR
              && Math.abs(o.second() - p.second()) < Surface.NEAR
              && (o.isCircle() || o.frame().x().cross(p.frame().x()).length() < 1e-9);
      return same ? o : null;
    }
    if (a instanceof Curve.Traced t && b instanceof Curve.Traced u) {
      boolean pair =
          (t.a().same(u.a()) && t.b().same(u.b())) || (t.a().same(u.b()) && t.b().same(u.a()));
      return pair && holds(t, u.at(u.to() * 0.31)) && holds(t, u.at(u.to() * 0.77)) ? t : null;
    }
    return null;
  }

  private static boolean holds(Curve.Traced t, Vec p) {
    double reach = 2 * t.points().get(0).to(t.points().get(1));
    for (int i = 0; i < t.points().size() - 1; i++) {
      if (t.points().get(i).to(p) < reach && t.at(parameterNear(t, p, i)).to(p) < 1e-6) {
        return true;
      }
    }
    return false;
  }

  private static double parameterNear(Curve.Traced t, Vec p, int i) {
    Vec a = t.points().get(i);
    Vec chord = t.points().get(i + 1).minus(a);
    return i + Math.max(0, Math.min(1, p.minus(a).dot(chord) / chord.dot(chord)));
  }

  // Pieces of curves.

  private void cut(Curve curve) {
    List<Sheet> others = new ArrayList<>();
    int n = curve.parts();
    Vec[] points = new Vec[n + 1];
    Bounds box = Bounds.NOTHING;
    for (int i = 0; i <= n; i++) {
      points[i] = curve.at(parameter(curve, (double) i / n));
      box = box.with(points[i]);
    }
    Bounds around = box.grown(0.05 * box.diagonal());
    for (Sheet sheet : sheets) {
      if (sheet.boxes.stream().anyMatch(around::meets)) {
        others.add(sheet);
      }
    }
    List<Double> cuts = new ArrayList<>();
    for (Vec corner : corners) {
      corner(curve, corner, cuts);
    }
    for (Sheet sheet : others) {
      Roots.along(curve, points, sheet.surface, cuts);
    }
    if (!curve.closed()) {
      cuts.add(curve.from());
      cuts.add(curve.to());
    }
    List<Double> apart = apart(curve, cuts);
    if (apart.isEmpty()) {
      classify(curve, curve.from(), curve.to(), true);
      return;
    }
    for (int i = 1; i < apart.size(); i++) {
      classify(curve, apart.get(i - 1), apart.get(i), false);
    }
    if (curve.closed()) {
      double period = curve.to() - curve.from();
      classify(curve, apart.get(apart.size() - 1), apart.get(0) + period, false);
    }
  }

  private static double parameter(Curve curve, double share) {
    return curve.from() + share * (curve.to() - curve.from());
  }

  private static void corner(Curve curve, Vec p, List<Double> cuts) {
    double t = Double.NaN;
    if (curve instanceof Curve.Line l) {
      t = p.minus(l.point()).dot(l.direction());
    } else if (curve instanceof Curve.Oval o && o.isCircle()) {
      Vec q = o.frame().local(p);
      t = Math.atan2(q.y(), q.x());
      t = t < 0 ? t + 2 * Math.PI : t;
    }
    if (t >= curve.from() && t <= curve.to() && curve.at(t).to(p) < Surface.NEAR) {
      cuts.add(t);
    }
  }

  /** Sorts cuts and drops those that fall on one point; earlier ones in the list are kept. */
  private static List<Double> apart(Curve curve, List<Double> cuts) {
    List<Double> kept = new ArrayList<>();
    List<Vec> at = new ArrayList<>();
    for (double t : cuts) {
      Vec p = curve.at(t);
      boolean fresh = true;
      for (Vec q : at) {
        fresh &= p.to(q) > MERGE;
      }
      if (fresh) {
        kept.add(t);
        at.add(p);
      }
    }
    kept.sort(null);
    return kept;
  }

  private void classify(Curve curve, double from, double to, boolean ring) {
    double middle = from + 0.49 * (to - from);
    Vec p = curve.at(middle);
    double length = curve.tangent(middle).length() * (to - from);
    if (length < MERGE) {
      return;
    }
    Set<Side> sides = new Sectors(curve, p, middle, length).sides();
    if (sides.size() < 2) {
      return;
    }
    if (sides.size() > 2) {
      throw new SolidException("the material touches itself along a line near " + text(p));
    }
    List<Side> pair = List.copyOf(sides);
    if (pair.get(0).sheet == pair.get(1).sheet && pair.get(0).outward == pair.get(1).outward) {
      return;
    }
    for (Segment s : segments) {
      if (s.curve != curve && on(s, p) && s.sides.equals(sides)) {
        return;
      }
    }
    int start = ring ? -1 : vertex(curve.at(from));
    int end = ring ? -1 : vertex(curve.at(to));
    segments.add(new Segment(curve, from, to, start, end, sides));
  }

  private static boolean on(Segment s, Vec p) {
    return s.curve.at(s.from + 0.49 * (s.to - s.from)).to(p) < MERGE;
  }

  static String text(Vec p) {
    return Numbers.fixed(p.x(), 2)
        + ", "
        + Numbers.fixed(p.y(), 2)
        + ", "
        + Numbers.fixed(p.z(), 2)
        + " mm";
  }

  private int vertex(Vec p) {
    for (int i = 0; i < vertices.size(); i++) {
      if (vertices.get(i).to(p) < 5 * MERGE) {
        return i;
      }
    }
    vertices.add(p);
    return vertices.size() - 1;
  }

  /** Looks at the material in the sectors round a point of a curve. */
  private final class Sectors {
    private final Vec p;
    private final Vec along;
    private final Vec e1;
    private final Vec e2;
    private final List<Integer> through = new ArrayList<>();
    private final double reach;

    private record Trace(double angle, int sheet) {}

    Sectors(Curve curve, Vec p, double t, double length) {
      this.p = p;
      this.along = curve.tangent(t).unit();
      this.e1 = along.across();
      this.e2 = along.cross(e1);
      double clear = Math.min(2e-3, 0.02 * length);
      for (int i = 0; i < sheets.size(); i++) {
        Sheet sheet = sheets.get(i);
        if (sheet.boxes.stream().noneMatch(b -> b.holds(p))) {
          continue;
        }
        double off = Math.abs(sheet.surface.value(p));
        if (off < 3e-8) {
          through.add(i);
        } else {
          clear = Math.min(clear, off / 3);
        }
      }
      this.reach = Math.max(clear, 1e-6);
    }

    private Vec around(double angle) {
      return p.plus(e1.times(reach * Math.cos(angle))).plus(e2.times(reach * Math.sin(angle)));
    }

    Set<Side> sides() {
      List<Trace> traces = new ArrayList<>();
      for (int i : through) {
        Surface s = sheets.get(i).surface;
        Vec n = s.normal(p);
        Vec side = along.cross(n);
        double angle = Math.atan2(side.dot(e2), side.dot(e1));
        trace(s, angle, i, traces);
        trace(s, angle + Math.PI, i, traces);
      }
      traces.sort((a, b) -> Double.compare(a.angle, b.angle));
      Set<Side> sides = new LinkedHashSet<>();
      int n = traces.size();
      boolean[] in = new boolean[n];
      for (int i = 0; i < n; i++) {
        double next = i + 1 < n ? traces.get(i + 1).angle : traces.get(0).angle + 2 * Math.PI;
        in[i] = body.contains(around((traces.get(i).angle + next) / 2));
      }
      for (int i = 0; i < n; i++) {
        boolean before = in[(i + n - 1) % n];
        if (before != in[i]) {
          sides.add(side(traces.get(i), before));
        }
      }
      return sides;
    }

    private void trace(Surface s, double guess, int sheet, List<Trace> traces) {
      double low = guess - 0.4;
      double high = guess + 0.4;
      boolean atLow = s.value(around(low)) <= 0;
      if (atLow == s.value(around(high)) <= 0) {
        return;
      }
      for (int k = 0; k < 50; k++) {
        double middle = (low + high) / 2;
        if (s.value(around(middle)) <= 0 == atLow) {
          low = middle;
        } else {
          high = middle;
        }
      }
      double angle = (low + high) / 2;
      traces.add(new Trace(angle - 2 * Math.PI * Math.floor(angle / (2 * Math.PI)), sheet));
    }

    private Side side(Trace trace, boolean materialBefore) {
      Vec w = e1.times(Math.cos(trace.angle)).plus(e2.times(Math.sin(trace.angle)));
      Vec turning = e1.times(-Math.sin(trace.angle)).plus(e2.times(Math.cos(trace.angle)));
      Vec out = materialBefore ? turning : turning.times(-1);
      boolean outward = out.dot(sheets.get(trace.sheet).surface.normal(p)) > 0;
      boolean forward = w.cross(out).dot(along) > 0;
      return new Side(trace.sheet, outward, forward);
    }
  }

  // Joining pieces across vertices that are none.

  private void join() {
    List<List<Segment>> at = new ArrayList<>();
    for (int i = 0; i < vertices.size(); i++) {
      at.add(new ArrayList<>());
    }
    for (Segment s : segments) {
      if (s.start >= 0) {
        at.get(s.start).add(s);
        at.get(s.end).add(s);
      }
    }
    for (int v = 0; v < at.size(); v++) {
      List<Segment> two = at.get(v);
      if (two.size() != 2 || two.get(0).curve != two.get(1).curve) {
        continue;
      }
      Segment a = two.get(0);
      Segment b = two.get(1);
      if (a == b) {
        a.start = -1;
        a.end = -1;
      } else if (a.sides.equals(b.sides)) {
        Segment first = a.end == v && b.start == v && follows(a, b) ? a : b;
        Segment second = first == a ? b : a;
        if (first.end == v && second.start == v && follows(first, second)) {
          double gap = second.from - first.to;
          first.to = second.to - gap;
          first.end = second.end;
          second.dead = true;
          List<Segment> far = at.get(second.end);
          far.replaceAll(s -> s == second ? first : s);
        }
      }
    }
    segments.removeIf(s -> s.dead);
  }

  private static boolean follows(Segment a, Segment b) {
    double period = a.curve.closed() ? a.curve.to() - a.curve.from() : 0;
    double gap = b.from - a.to;
    return Math.abs(gap) < 1e-6
        || (period > 0 && Math.abs(gap - period * Math.rint(gap / period)) < 1e-6);
  }

  // Faces.

  private Brep faces() {
    int[] number = new int[vertices.size()];
    Arrays.fill(number, -1);
    List<Vec> used = new ArrayList<>();
    List<Brep.Edge> edges = new ArrayList<>();
    Map<List<Integer>, List<Brep.Use>> bySheet =
        new TreeMap<>(
            (a, b) ->
                a.get(0).equals(b.get(0))
                    ? a.get(1).compareTo(b.get(1))
                    : a.get(0).compareTo(b.get(0)));
    for (Segment s : segments) {
      for (int v : new int[] {s.start, s.end}) {
        if (v >= 0 && number[v] < 0) {
          number[v] = used.size();
          used.add(vertices.get(v));
        }
      }
      edges.add(
          new Brep.Edge(
              s.curve,
              s.from,
              s.to,
              s.start < 0 ? -1 : number[s.start],
              s.end < 0 ? -1 : number[s.end]));
      for (Side side : s.sides) {
        bySheet
            .computeIfAbsent(List.of(side.sheet, side.outward ? 1 : 0), k -> new ArrayList<>())
            .add(new Brep.Use(edges.size() - 1, side.forward));
      }
    }
    List<Brep.Face> faces = new ArrayList<>();
    bySheet.forEach(
        (key, uses) -> {
          Sheet sheet = sheets.get(key.get(0));
          boolean outward = key.get(1) == 1;
          Loops loops = new Loops(sheet.surface, outward, edges, used);
          for (List<Brep.Loop> group : loops.faces(uses)) {
            Vec p = edges.get(group.get(0).uses().get(0).edge()).at(0.5);
            faces.add(new Brep.Face(sheet.surface, outward, group, name(sheet, p)));
          }
        });
    if (faces.isEmpty()) {
      throw new SolidException("nothing is left of the part");
    }
    return new Brep(used, edges, faces);
  }

  private static String name(Sheet sheet, Vec p) {
    String name = sheet.names.get(0);
    for (int i = 0; i < sheet.names.size(); i++) {
      if (sheet.boxes.get(i).holds(p)) {
        name = sheet.names.get(i);
      }
    }
    return name;
  }
}
