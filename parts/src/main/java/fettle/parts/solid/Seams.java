package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;

/** Gives every face that runs right round its axis a seam, so that it has one outer loop. */
final class Seams {

  private final List<Vec> vertices;
  private final List<Brep.Edge> edges;
  private final List<Brep.Face> faces;

  private Seams(Brep plain) {
    this.vertices = new ArrayList<>(plain.vertices());
    this.edges = new ArrayList<>(plain.edges());
    this.faces = new ArrayList<>(plain.faces());
  }

  static Brep sewn(Brep plain) {
    Seams s = new Seams(plain);
    for (int i = 0; i < s.faces.size(); i++) {
      s.sew(i);
    }
    for (int i = 0; i < s.edges.size(); i++) {
      if (s.edges.get(i).isRing()) {
        s.split(i, 0);
      }
    }
    return new Brep(s.vertices, s.edges, s.faces);
  }

  private void sew(int face) {
    Brep.Face f = faces.get(face);
    if (!f.surface().round()) {
      return;
    }
    List<Integer> round = new ArrayList<>();
    for (int i = 0; i < f.loops().size(); i++) {
      if (winding(f, f.loops().get(i)) != 0) {
        round.add(i);
      }
    }
    if (round.isEmpty()) {
      return;
    }
    double u = place(f, round);
    int[] ends = new int[2];
    Brep.Loop lower = null;
    Brep.Loop upper = null;
    for (int i : round) {
      Brep.Loop loop = f.loops().get(i);
      boolean isLower = winding(f, loop) > 0 == f.outward();
      int v = vertexAt(f.surface(), loop, u, isLower ? 1 : -1);
      Brep.Loop now = started(faces.get(face).loops().get(i), v);
      if (isLower) {
        ends[0] = v;
        lower = now;
      } else {
        ends[1] = v;
        upper = now;
      }
    }
    if (lower == null) {
      ends[0] = tip(f.surface(), u, vertices.get(ends[1]));
    } else if (upper == null) {
      ends[1] = tip(f.surface(), u, vertices.get(ends[0]));
    }
    int seam = seam(f.surface(), u, ends[0], ends[1]);
    List<Brep.Use> uses = new ArrayList<>();
    if (lower != null) {
      uses.addAll(lower.uses());
    }
    uses.add(new Brep.Use(seam, true));
    if (upper != null) {
      uses.addAll(upper.uses());
    }
    uses.add(new Brep.Use(seam, false));
    List<Brep.Loop> loops = new ArrayList<>();
    loops.add(new Brep.Loop(uses));
    for (int i = 0; i < f.loops().size(); i++) {
      if (!round.contains(i)) {
        loops.add(faces.get(face).loops().get(i));
      }
    }
    faces.set(face, new Brep.Face(f.surface(), f.outward(), loops, f.feature()));
  }

  private double winding(Brep.Face f, Brep.Loop loop) {
    double turned = 0;
    for (Brep.Use use : loop.uses()) {
      Brep.Edge e = edges.get(use.edge());
      int n = 4 * e.parts();
      double last = f.surface().u(e.at(use.forward() ? 0 : 1));
      for (int i = 1; i <= n; i++) {
        double share = (double) i / n;
        double u = f.surface().u(e.at(use.forward() ? share : 1 - share));
        turned += Math.IEEEremainder(u - last, 2 * Math.PI);
        last = u;
      }
    }
    return Math.rint(turned / (2 * Math.PI));
  }

  /** Finds an angle for the seam: at vertices of both loops, clear of all openings. */
  private double place(Brep.Face f, List<Integer> round) {
    List<double[]> blocked = new ArrayList<>();
    for (int i = 0; i < f.loops().size(); i++) {
      if (!round.contains(i)) {
        blocked.add(span(f.surface(), f.loops().get(i)));
      }
    }
    List<Double> at = new ArrayList<>();
    for (int i : round) {
      for (Brep.Use use : f.loops().get(i).uses()) {
        Brep.Edge e = edges.get(use.edge());
        if (!e.isRing()) {
          at.add(f.surface().u(vertices.get(e.start())));
          at.add(f.surface().u(vertices.get(e.end())));
        }
      }
    }
    double best = Double.NaN;
    int most = -1;
    for (double u : at) {
      int hits = (int) at.stream().filter(w -> apart(u, w) < 1e-7).count();
      if (hits > most && free(u, blocked) && once(f, round, u)) {
        most = hits;
        best = u;
      }
    }
    for (int k = 0; k < 64 && Double.isNaN(best); k++) {
      double u = 2 * Math.PI * k / 64;
      best = free(u, blocked) && once(f, round, u) ? u : best;
    }
    if (Double.isNaN(best)) {
      throw new SolidException("openings leave no room for a seam on " + f.feature());
    }
    return best;
  }

  /** Tells whether a meridian meets each of the loops that run round once only. */
  private boolean once(Brep.Face f, List<Integer> round, double at) {
    for (int i : round) {
      for (double u : new double[] {at - 1e-6, at + 1e-6}) {
        int crossings = 0;
        for (Brep.Use use : f.loops().get(i).uses()) {
          crossings += crossings(f.surface(), edges.get(use.edge()), u);
        }
        if (crossings != 1) {
          return false;
        }
      }
    }
    return true;
  }

  private static int crossings(Surface s, Brep.Edge e, double u) {
    int found = 0;
    int n = 4 * e.parts();
    double before = Math.IEEEremainder(s.u(e.at(0)) - u, 2 * Math.PI);
    for (int i = 1; i <= n; i++) {
      double now = Math.IEEEremainder(s.u(e.at((double) i / n)) - u, 2 * Math.PI);
      found += before < 0 != now < 0 && Math.abs(before) + Math.abs(now) < Math.PI ? 1 : 0;
      before = now;
    }
    return found;
  }

  private static double apart(double a, double b) {
    return Math.abs(Math.IEEEremainder(a - b, 2 * Math.PI));
  }

  private double[] span(Surface s, Brep.Loop loop) {
    double middle = s.u(edges.get(loop.uses().get(0).edge()).at(0));
    double low = 0;
    double high = 0;
    double now = 0;
    for (Brep.Use use : loop.uses()) {
      Brep.Edge e = edges.get(use.edge());
      int n = 4 * e.parts();
      for (int i = 0; i <= n; i++) {
        double share = (double) i / n;
        double u = s.u(e.at(use.forward() ? share : 1 - share));
        now += Math.IEEEremainder(u - middle - now, 2 * Math.PI);
        low = Math.min(low, now);
        high = Math.max(high, now);
      }
    }
    return new double[] {middle + (low + high) / 2, (high - low) / 2 + 0.02};
  }

  private static boolean free(double u, List<double[]> blocked) {
    return blocked.stream().noneMatch(b -> apart(u, b[0]) < b[1]);
  }

  /**
   * Returns the vertex of a loop at an angle, the one nearest to the other loop, splitting an edge
   * there if need be.
   */
  private int vertexAt(Surface s, Brep.Loop loop, double u, int way) {
    int best = -1;
    for (Brep.Use use : loop.uses()) {
      Brep.Edge e = edges.get(use.edge());
      if (!e.isRing()) {
        for (int v : new int[] {e.start(), e.end()}) {
          boolean nearer = best < 0 || way * s.v(vertices.get(v)) > way * s.v(vertices.get(best));
          if (apart(s.u(vertices.get(v)), u) < 1e-7 && nearer) {
            best = v;
          }
        }
      }
    }
    if (best >= 0) {
      return best;
    }
    for (Brep.Use use : loop.uses()) {
      Brep.Edge e = edges.get(use.edge());
      int n = 4 * e.parts();
      double before = Math.IEEEremainder(s.u(e.at(0)) - u, 2 * Math.PI);
      if (Math.abs(before) < 1e-12 && e.isRing()) {
        return split(use.edge(), 0);
      }
      for (int i = 1; i <= n; i++) {
        double now = Math.IEEEremainder(s.u(e.at((double) i / n)) - u, 2 * Math.PI);
        if (before <= 0 != now <= 0 && Math.abs(before) + Math.abs(now) < Math.PI) {
          double low = (double) (i - 1) / n;
          double high = (double) i / n;
          for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            double w = Math.IEEEremainder(s.u(e.at(middle)) - u, 2 * Math.PI);
            if (w <= 0 == before <= 0) {
              low = middle;
            } else {
              high = middle;
            }
          }
          return split(use.edge(), (low + high) / 2);
        }
        before = now;
      }
    }
    throw new SolidException("a loop does not run right round its axis");
  }

  /** Splits an edge, or gives a ring its vertex; all loops follow. */
  private int split(int edge, double share) {
    Brep.Edge e = edges.get(edge);
    double t = e.from() + share * (e.to() - e.from());
    int v = vertices.size();
    vertices.add(e.curve().at(t));
    if (e.isRing()) {
      double period = e.curve().to() - e.curve().from();
      edges.set(edge, new Brep.Edge(e.curve(), t, t + period, v, v));
      return v;
    }
    edges.set(edge, new Brep.Edge(e.curve(), e.from(), t, e.start(), v));
    int rest = edges.size();
    edges.add(new Brep.Edge(e.curve(), t, e.to(), v, e.end()));
    for (int i = 0; i < faces.size(); i++) {
      Brep.Face f = faces.get(i);
      List<Brep.Loop> loops = new ArrayList<>();
      for (Brep.Loop loop : f.loops()) {
        List<Brep.Use> uses = new ArrayList<>();
        for (Brep.Use use : loop.uses()) {
          if (use.edge() != edge) {
            uses.add(use);
          } else if (use.forward()) {
            uses.add(use);
            uses.add(new Brep.Use(rest, true));
          } else {
            uses.add(new Brep.Use(rest, false));
            uses.add(use);
          }
        }
        loops.add(new Brep.Loop(uses));
      }
      faces.set(i, new Brep.Face(f.surface(), f.outward(), loops, f.feature()));
    }
    return v;
  }

  /** Returns the loop begun at a vertex. */
  private Brep.Loop started(Brep.Loop loop, int vertex) {
    List<Brep.Use> uses = loop.uses();
    for (int i = 0; i < uses.size(); i++) {
      Brep.Use use = uses.get(i);
      Brep.Edge e = edges.get(use.edge());
      if ((use.forward() ? e.start() : e.end()) == vertex) {
        List<Brep.Use> turned = new ArrayList<>(uses.subList(i, uses.size()));
        turned.addAll(uses.subList(0, i));
        return new Brep.Loop(turned);
      }
    }
    throw new SolidException("a seam starts at a vertex its loop does not have");
  }

  private int tip(Surface s, double u, Vec near) {
    double v;
    if (s instanceof Surface.Cone c) {
      v = c.tip();
    } else if (s instanceof Surface.Torus t && Math.abs(t.major()) <= t.minor()) {
      double half = Math.acos(-t.major() / t.minor());
      double at = s.v(near);
      v = Math.sin(t.middle()) * Math.sin(half) >= 0 && t.middle() != 0 ? half : -half;
      if (Math.abs(at - v) < 1e-9) {
        v = -v;
      }
    } else {
      throw new SolidException("a round face has one rim only");
    }
    vertices.add(s.at(u, v));
    return vertices.size() - 1;
  }

  private int seam(Surface s, double u, int from, int to) {
    double v0 = s.v(vertices.get(from));
    double v1 = s.v(vertices.get(to));
    Curve curve;
    double t0 = 0;
    double t1;
    if (s instanceof Surface.Torus t) {
      Frame f = t.frame();
      Vec side = f.direction(new Vec(Math.cos(u), Math.sin(u), 0));
      Vec centre = f.origin().plus(side.times(t.major()));
      if (s.du(0, v0).length() < 1e-7) {
        v0 = v1 + Math.IEEEremainder(v0 - v1, 2 * Math.PI);
      }
      boolean up = v1 > v0;
      Frame frame = Frame.of(centre, up ? side.cross(f.z()) : f.z().cross(side), side);
      curve = Curve.circle(frame, t.minor());
      t0 = up ? v0 : -v0;
      t1 = up ? v1 : -v1;
    } else {
      Vec a = vertices.get(from);
      Vec d = vertices.get(to).minus(a);
      curve = new Curve.Line(a, d.unit(), 0, d.length());
      t1 = d.length();
    }
    edges.add(new Brep.Edge(curve, t0, t1, from, to));
    return edges.size() - 1;
  }
}
