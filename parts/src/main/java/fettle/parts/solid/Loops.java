package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;

/** Chains the edges on one side of a surface into loops and groups the loops into faces. */
final class Loops {

  private final Surface surface;
  private final boolean outward;
  private final List<Brep.Edge> edges;
  private final List<Vec> vertices;

  Loops(Surface surface, boolean outward, List<Brep.Edge> edges, List<Vec> vertices) {
    this.surface = surface;
    this.outward = outward;
    this.edges = edges;
    this.vertices = vertices;
  }

  private Vec normal(Vec p) {
    Vec n = surface.normal(p);
    return outward ? n : n.times(-1);
  }

  /** Returns the faces, each by its loops, the outer one first if there is one. */
  List<List<Brep.Loop>> faces(List<Brep.Use> uses) {
    List<Chart> charts = new ArrayList<>();
    for (Brep.Loop loop : chained(uses)) {
      charts.add(new Chart(loop));
    }
    List<List<Chart>> groups = new ArrayList<>();
    bands(charts, groups);
    for (Chart c : charts) {
      if (c.winding == 0 && c.area > 0) {
        groups.add(new ArrayList<>(List.of(c)));
      }
    }
    for (Chart c : charts) {
      if (c.winding == 0 && c.area <= 0) {
        home(c, groups).add(c);
      }
    }
    return groups.stream().map(g -> g.stream().map(c -> c.loop).toList()).toList();
  }

  private List<Brep.Loop> chained(List<Brep.Use> uses) {
    List<Brep.Loop> loops = new ArrayList<>();
    List<Brep.Use> left = new ArrayList<>();
    for (Brep.Use use : uses) {
      if (edges.get(use.edge()).isRing()) {
        loops.add(new Brep.Loop(List.of(use)));
      } else {
        left.add(use);
      }
    }
    while (!left.isEmpty()) {
      List<Brep.Use> chain = new ArrayList<>();
      Brep.Use now = left.remove(0);
      int home = start(now);
      chain.add(now);
      while (end(now) != home) {
        now = next(now, left);
        left.remove(now);
        chain.add(now);
      }
      loops.add(new Brep.Loop(chain));
    }
    return loops;
  }

  private int start(Brep.Use use) {
    Brep.Edge e = edges.get(use.edge());
    return use.forward() ? e.start() : e.end();
  }

  private int end(Brep.Use use) {
    Brep.Edge e = edges.get(use.edge());
    return use.forward() ? e.end() : e.start();
  }

  private Brep.Use next(Brep.Use now, List<Brep.Use> left) {
    Vec p = vertices.get(end(now));
    Vec back = heading(now, 1).times(-1);
    Vec n = normal(p);
    Brep.Use best = null;
    double most = -1;
    for (Brep.Use use : left) {
      if (start(use) == end(now)) {
        Vec d = heading(use, 0);
        double turn = Math.atan2(n.dot(back.cross(d)), back.dot(d));
        turn = turn <= 1e-9 ? turn + 2 * Math.PI : turn;
        if (turn > most) {
          most = turn;
          best = use;
        }
      }
    }
    if (best == null) {
      throw new SolidException("the boundary of a face is not closed near " + Boundary.text(p));
    }
    return best;
  }

  private Vec heading(Brep.Use use, double share) {
    Brep.Edge e = edges.get(use.edge());
    Vec d = e.tangent(use.forward() ? share : 1 - share);
    return (use.forward() ? d : d.times(-1)).unit();
  }

  /** A loop unrolled into the two parameters of the surface. */
  private final class Chart {
    final Brep.Loop loop;
    final List<double[]> points = new ArrayList<>();
    final int winding;
    final double area;
    final double height;

    Chart(Brep.Loop loop) {
      this.loop = loop;
      double turned = 0;
      double twice = 0;
      double sum = 0;
      double period = surface.round() ? 2 * Math.PI : 0;
      for (Brep.Use use : loop.uses()) {
        Brep.Edge e = edges.get(use.edge());
        int n = 4 * e.parts();
        for (int i = 0; i < n; i++) {
          double share = (i + 0.5) / n;
          Vec p = e.at(use.forward() ? share : 1 - share);
          double u = surface.u(p);
          if (period > 0 && !points.isEmpty()) {
            double last = points.get(points.size() - 1)[0];
            u = last + Math.IEEEremainder(u - last, period);
          }
          points.add(new double[] {u, surface.v(p)});
        }
      }
      int n = points.size();
      for (int i = 0; i < n; i++) {
        double[] a = points.get(i);
        double[] b = points.get((i + 1) % n);
        double du = period > 0 ? Math.IEEEremainder(b[0] - a[0], period) : b[0] - a[0];
        turned += du;
        twice += a[0] * b[1] - b[0] * a[1];
        sum += a[1];
      }
      this.winding = period > 0 ? (int) Math.rint(turned / period) * (outward ? 1 : -1) : 0;
      this.area = outward ? twice : -twice;
      this.height = sum / n;
    }

    /** Tells whether a parameter point lies inside the closed loop, or above a winding one. */
    boolean encloses(double u, double v) {
      boolean inside = false;
      int n = points.size();
      double period = 2 * Math.PI;
      for (int i = 0; i < n; i++) {
        double[] a = points.get(i);
        double[] b = points.get((i + 1) % n);
        double au = a[0];
        double bu = b[0];
        if (surface.round()) {
          au = u + Math.IEEEremainder(au - u, period);
          bu = au + Math.IEEEremainder(bu - au, period);
        }
        boolean spans = au <= u != bu <= u;
        if (spans && a[1] + (u - au) / (bu - au) * (b[1] - a[1]) < v) {
          inside = !inside;
        }
      }
      return inside;
    }
  }

  /** Pairs loops that run round the axis: the face lies between, or reaches the tip. */
  private void bands(List<Chart> charts, List<List<Chart>> groups) {
    List<Chart> round = new ArrayList<>();
    for (Chart c : charts) {
      if (c.winding != 0) {
        round.add(c);
      }
    }
    round.sort((a, b) -> Double.compare(a.height, b.height));
    for (int i = 0; i < round.size(); i++) {
      Chart c = round.get(i);
      if (c.winding > 0 && i + 1 < round.size() && round.get(i + 1).winding < 0) {
        groups.add(new ArrayList<>(List.of(c, round.get(++i))));
      } else {
        groups.add(new ArrayList<>(List.of(c)));
      }
    }
  }

  private List<Chart> home(Chart hole, List<List<Chart>> groups) {
    double[] p = hole.points.get(0);
    List<Chart> best = null;
    double least = Double.POSITIVE_INFINITY;
    for (List<Chart> group : groups) {
      Chart outer = group.get(0);
      boolean within;
      double size;
      if (outer.winding == 0) {
        within = outer.encloses(p[0], p[1]);
        size = outer.area;
      } else {
        within = outer.encloses(p[0], p[1]) == outer.winding > 0;
        for (int i = 1; i < group.size() && group.get(i).winding != 0; i++) {
          within &= group.get(i).encloses(p[0], p[1]) == group.get(i).winding > 0;
        }
        size = Double.MAX_VALUE;
      }
      if (within && size < least) {
        least = size;
        best = group;
      }
    }
    if (best == null) {
      throw new SolidException(
          "an opening lies in no face near " + Boundary.text(surface.at(p[0], p[1])));
    }
    return best;
  }
}
