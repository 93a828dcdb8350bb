package fettle.parts.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * Cuts faces into triangles. Edges are divided once, for both faces; round faces are cut into
 * strips no wider than the deviation allows, so that all corners of triangles lie on edges or on
 * the surface.
 */
final class Meshing {

  private static final GeometryFactory PLANE = new GeometryFactory();

  private final Brep solid;
  private final double deviation;
  private final List<Vec> points;
  private final List<Mesh.Triangle> triangles = new ArrayList<>();
  private final List<List<Integer>> divided = new ArrayList<>();

  Meshing(Brep solid, double deviation) {
    this.solid = solid;
    this.deviation = deviation;
    this.points = new ArrayList<>(solid.vertices());
  }

  Mesh mesh() {
    int[][] sides = solid.facesAtEdges();
    for (int i = 0; i < solid.edges().size(); i++) {
      divided.add(divide(solid.edges().get(i), sides[i]));
    }
    for (int i = 0; i < solid.faces().size(); i++) {
      try {
        face(i);
      } catch (TopologyException | IllegalStateException | IllegalArgumentException e) {
        throw new SolidException(
            solid.faces().get(i).feature() + ": a face of it cannot be cut into triangles");
      }
    }
    return new Mesh(points, triangles);
  }

  /** Returns the step of a circle that keeps the deviation, a whole part of a turn. */
  private double step(double radius) {
    int n = 8;
    while (n < 4096 && radius * (1 - Math.cos(Math.PI / n)) > deviation) {
      n *= 2;
    }
    return 2 * Math.PI / n;
  }

  /** Returns the steps of a round surface in its two parameters; 0 if straight. */
  private double[] steps(Brep.Face face) {
    Surface s = face.surface();
    if (s instanceof Surface.Cylinder c) {
      return new double[] {step(c.radius()), 0};
    } else if (s instanceof Surface.Torus t) {
      return new double[] {step(Math.abs(t.major()) + t.minor()), step(t.minor())};
    } else if (s instanceof Surface.Cone c) {
      double most = 0;
      for (Brep.Loop loop : face.loops()) {
        for (Brep.Use use : loop.uses()) {
          Brep.Edge e = solid.edges().get(use.edge());
          most = Math.max(most, c.radius() + c.slope() * c.v(e.at(0)));
          most = Math.max(most, c.radius() + c.slope() * c.v(e.at(0.5)));
        }
      }
      return new double[] {step(most), 0};
    }
    return new double[] {0, 0};
  }

  private List<Integer> divide(Brep.Edge e, int[] sides) {
    List<Double> shares = new ArrayList<>();
    if (e.curve() instanceof Curve.Oval o) {
      double step = step(Math.max(o.first(), o.second()));
      for (double k = Math.floor(e.from() / step) + 1; k * step < e.to(); k++) {
        shares.add((k * step - e.from()) / (e.to() - e.from()));
      }
    } else if (e.curve() instanceof Curve.Traced) {
      for (double share : e.breaks()) {
        shares.add(share);
      }
    }
    for (int side : sides) {
      Brep.Face face = solid.faces().get(side);
      double[] steps = steps(face);
      if (steps[0] > 0) {
        crossings(e, p -> face.surface().u(p), steps[0], 2 * Math.PI, shares);
      }
      if (steps[1] > 0) {
        crossings(e, p -> face.surface().v(p), steps[1], 2 * Math.PI, shares);
      }
    }
    shares.sort(null);
    List<Integer> numbers = new ArrayList<>(List.of(e.start()));
    Vec last = solid.vertices().get(e.start());
    Vec end = solid.vertices().get(e.end());
    for (double share : shares) {
      Vec p = e.at(share);
      boolean apart = share > 0 && share < 1 && p.to(last) > 5e-6 && p.to(end) > 5e-6;
      if (apart) {
        numbers.add(points.size());
        points.add(p);
        last = p;
      }
    }
    numbers.add(e.end());
    return numbers;
  }

  private static void crossings(
      Brep.Edge e, ToDoubleFunction<Vec> angle, double step, double period, List<Double> into) {
    double[] breaks = e.breaks();
    double before = angle.applyAsDouble(e.at(0));
    for (int i = 1; i < breaks.length; i++) {
      double now =
          before + Math.IEEEremainder(angle.applyAsDouble(e.at(breaks[i])) - before, period);
      double low = Math.min(before, now);
      double high = Math.max(before, now);
      if (high - low < 1e-9) {
        continue;
      }
      for (double k = Math.ceil(low / step); k * step <= high; k++) {
        double from = breaks[i - 1];
        double to = breaks[i];
        boolean rising = now > before;
        for (int j = 0; j < 55; j++) {
          double middle = (from + to) / 2;
          double off = Math.IEEEremainder(angle.applyAsDouble(e.at(middle)) - k * step, period);
          if (off < 0 == rising) {
            from = middle;
          } else {
            to = middle;
          }
        }
        into.add((from + to) / 2);
      }
      before = now;
    }
  }

  // Faces.

  /** Numbers of points by their place in the parameters of one face. */
  private static final class Places {
    final Map<Coordinate, Integer> exact = new HashMap<>();
    final Map<Long, List<Coordinate>> near = new HashMap<>();

    void put(Coordinate c, int number) {
      exact.put(c, number);
      near.computeIfAbsent(Math.round(c.x * 1e4), k -> new ArrayList<>()).add(c);
    }

    @Nullable Integer get(Coordinate c) {
      Integer number = exact.get(c);
      long key = Math.round(c.x * 1e4);
      for (long k = key - 1; number == null && k <= key + 1; k++) {
        for (Coordinate d : near.getOrDefault(k, List.of())) {
          if (Math.abs(d.x - c.x) < 1e-8 && Math.abs(d.y - c.y) < 1e-7) {
            return exact.get(d);
          }
        }
      }
      return number;
    }
  }

  private void face(int number) {
    Brep.Face f = solid.faces().get(number);
    double[] steps = steps(f);
    Places places = new Places();
    LinearRing[] rings = new LinearRing[f.loops().size()];
    double[] range = new double[2];
    for (int i = 0; i < rings.length; i++) {
      List<Coordinate> ring = unrolled(f, f.loops().get(i), steps, i == 0 ? null : range, places);
      if (i == 0) {
        range[0] = ring.stream().mapToDouble(c -> c.x).min().orElse(0);
        range[1] = ring.stream().mapToDouble(c -> c.x).max().orElse(0);
      }
      rings[i] = PLANE.createLinearRing(ring.toArray(new Coordinate[0]));
    }
    LinearRing[] holes = Arrays.copyOfRange(rings, 1, rings.length);
    Polygon region = PLANE.createPolygon(rings[0], holes);
    if (steps[0] == 0) {
      triangulate(region, f, number, places);
      return;
    }
    Envelope box = region.getEnvelopeInternal();
    for (double i = Math.floor(box.getMinX() / steps[0]); i * steps[0] < box.getMaxX(); i++) {
      if (steps[1] == 0) {
        cell(
            region,
            i * steps[0],
            box.getMinY() - 1,
            (i + 1) * steps[0],
            box.getMaxY() + 1,
            f,
            number,
            places);
      } else {
        for (double j = Math.floor(box.getMinY() / steps[1]); j * steps[1] < box.getMaxY(); j++) {
          cell(
              region,
              i * steps[0],
              j * steps[1],
              (i + 1) * steps[0],
              (j + 1) * steps[1],
              f,
              number,
              places);
        }
      }
    }
  }

  private List<Coordinate> unrolled(
      Brep.Face f, Brep.Loop loop, double[] steps, double @Nullable [] range, Places places) {
    List<Coordinate> ring = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    Surface s = f.surface();
    double turned = 0;
    for (Brep.Use use : loop.uses()) {
      List<Integer> along = new ArrayList<>(divided.get(use.edge()));
      if (!use.forward()) {
        Collections.reverse(along);
      }
      boolean fromTip = tip(s, points.get(along.get(0)));
      for (int i = 0; i < along.size() - 1; i++) {
        Vec p = points.get(along.get(i));
        double u = s.u(p);
        if (i == 0 && fromTip) {
          tipRow(ring, numbers, s, steps[0], turned, along.get(0), points.get(along.get(1)));
          continue;
        }
        if (s.round() && !ring.isEmpty()) {
          double last = ring.get(ring.size() - 1).x;
          double du = Math.IEEEremainder(u - last, 2 * Math.PI);
          turned += du;
          u = last + du;
        }
        ring.add(new Coordinate(snapped(u, steps[0]), snapped(s.v(p), steps[1])));
        numbers.add(along.get(i));
      }
    }
    shift(ring, range);
    for (int i = 0; i < ring.size(); i++) {
      places.put(ring.get(i), numbers.get(i));
    }
    ring.add(ring.get(0));
    return ring;
  }

  private static boolean tip(Surface s, Vec p) {
    Vec q = s.frame().local(p);
    return s.round() && Math.hypot(q.x(), q.y()) < 1e-7;
  }

  /** The tip of a cone or a pole is a whole row in the parameters. */
  private static void tipRow(
      List<Coordinate> ring,
      List<Integer> numbers,
      Surface s,
      double step,
      double turned,
      int number,
      Vec next) {
    double v = snapped(tipHeight(s, next), 0);
    double last = ring.isEmpty() ? s.u(next) : ring.get(ring.size() - 1).x;
    double way = turned > 0 ? -1 : 1;
    double end = last + way * 2 * Math.PI;
    ring.add(new Coordinate(last, v));
    numbers.add(number);
    double k = way > 0 ? Math.floor(last / step + 1e-9) + 1 : Math.ceil(last / step - 1e-9) - 1;
    while (way * (end - k * step) > 1e-9) {
      ring.add(new Coordinate(k * step, v));
      numbers.add(number);
      k += way;
    }
    ring.add(new Coordinate(end, v));
    numbers.add(number);
  }

  private static double tipHeight(Surface s, Vec near) {
    if (s instanceof Surface.Cone c) {
      return c.tip();
    }
    Surface.Torus t = (Surface.Torus) s;
    double half = Math.acos(-t.major() / t.minor());
    double v = t.v(near);
    return Math.abs(v - half) < Math.abs(v + half) ? half : -half;
  }

  private static double snapped(double value, double step) {
    if (step > 0) {
      double grid = Math.rint(value / step) * step;
      return Math.abs(grid - value) < 1e-6 * step ? grid : value;
    }
    return value;
  }

  private static void shift(List<Coordinate> ring, double @Nullable [] range) {
    if (range == null) {
      return;
    }
    double low = ring.stream().mapToDouble(c -> c.x).min().orElse(0);
    double by = 0;
    while (low + by < range[0] - 1e-9 && by < 20) {
      by += 2 * Math.PI;
    }
    while (low + by > range[1] && by > -20) {
      by -= 2 * Math.PI;
    }
    if (by != 0) {
      for (Coordinate c : ring) {
        c.x += by;
      }
    }
  }

  private void cell(
      Polygon region,
      double x0,
      double y0,
      double x1,
      double y1,
      Brep.Face f,
      int number,
      Places places) {
    Geometry box = PLANE.toGeometry(new Envelope(x0, x1, y0, y1));
    Geometry part = OverlayNGRobust.overlay(region, box, OverlayNG.INTERSECTION);
    for (int i = 0; i < part.getNumGeometries(); i++) {
      if (part.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        triangulate(p, f, number, places);
      }
    }
  }

  private void triangulate(Polygon region, Brep.Face f, int number, Places places) {
    Geometry all = ConstrainedDelaunayTriangulator.triangulate(region);
    for (int i = 0; i < all.getNumGeometries(); i++) {
      Coordinate[] c = all.getGeometryN(i).getCoordinates();
      int[] n = new int[3];
      for (int k = 0; k < 3; k++) {
        n[k] = number(c[k], f, places);
      }
      double twice = (c[1].x - c[0].x) * (c[2].y - c[0].y) - (c[2].x - c[0].x) * (c[1].y - c[0].y);
      if (n[0] != n[1] && n[1] != n[2] && n[2] != n[0]) {
        triangles.add(
            twice > 0 == f.outward()
                ? new Mesh.Triangle(n[0], n[1], n[2], number)
                : new Mesh.Triangle(n[0], n[2], n[1], number));
      }
    }
  }

  private int number(Coordinate c, Brep.Face f, Places places) {
    Integer known = places.get(c);
    if (known != null) {
      return known;
    }
    points.add(f.surface().at(c.x, c.y));
    places.put(new Coordinate(c.x, c.y), points.size() - 1);
    return points.size() - 1;
  }
}
