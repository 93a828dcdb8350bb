package fettle.parts.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Follows the curve in which two surfaces meet, point by point. */
final class Tracing {

  private static final int AROUND = 48;
  private static final int ALONG = 24;
  private static final int MOST = 4000;

  private Tracing() {}

  static List<Curve> of(Primitive.Patch first, Primitive.Patch second, Bounds zone) {
    boolean swap = size(second.surface()) < size(first.surface());
    Primitive.Patch a = swap ? second : first;
    Primitive.Patch b = swap ? first : second;
    double step =
        Math.min(
            0.06 * Math.min(size(a.surface()), size(b.surface())), 0.02 * zone.diagonal() + 0.01);
    List<Curve> found = new ArrayList<>();
    for (Vec seed : seeds(a, b, zone)) {
      if (found.stream().noneMatch(c -> near(c, seed, 2 * step))) {
        Curve curve = follow(seed, a.surface(), b.surface(), step, zone);
        if (curve != null) {
          found.add(curve);
        }
      }
    }
    return found;
  }

  private static double size(Surface s) {
    if (s instanceof Surface.Cylinder c) {
      return c.radius();
    } else if (s instanceof Surface.Cone c) {
      return Math.max(0.5, Math.abs(c.radius()));
    } else if (s instanceof Surface.Torus t) {
      return t.minor();
    }
    return Double.MAX_VALUE;
  }

  /** Returns points on both surfaces, found along lines of either parameter of the first. */
  private static List<Vec> seeds(Primitive.Patch a, Primitive.Patch b, Bounds zone) {
    List<Vec> seeds = new ArrayList<>();
    Surface s = a.surface();
    Surface t = b.surface();
    double low = a.low() - 1e-3;
    double high = a.high() + 1e-3;
    double[][] value = new double[AROUND + 1][ALONG + 1];
    for (int i = 0; i <= AROUND; i++) {
      for (int j = 0; j <= ALONG; j++) {
        value[i][j] = t.value(s.at(u(i), low + (high - low) * j / ALONG));
      }
    }
    for (int i = 0; i < AROUND; i++) {
      for (int j = 0; j <= ALONG; j++) {
        double v0 = low + (high - low) * j / ALONG;
        double v1 = low + (high - low) * (j + 1) / ALONG;
        if (j < ALONG && value[i][j] <= 0 != value[i][j + 1] <= 0) {
          add(seeds, s, t, new double[] {u(i), v0, u(i), v1}, zone);
        }
        if (value[i][j] <= 0 != value[i + 1][j] <= 0) {
          add(seeds, s, t, new double[] {u(i), v0, u(i + 1), v0}, zone);
        }
      }
    }
    return seeds;
  }

  private static double u(int i) {
    return 2 * Math.PI * (i + 0.37) / AROUND;
  }

  private static void add(List<Vec> seeds, Surface s, Surface t, double[] ends, Bounds zone) {
    double low = 0;
    double high = 1;
    boolean atStart = t.value(s.at(ends[0], ends[1])) <= 0;
    for (int k = 0; k < 60; k++) {
      double middle = (low + high) / 2;
      if (t.value(between(s, ends, middle)) <= 0 == atStart) {
        low = middle;
      } else {
        high = middle;
      }
    }
    Vec p = between(s, ends, (low + high) / 2);
    if (zone.holds(p)) {
      seeds.add(p);
    }
  }

  private static Vec between(Surface s, double[] ends, double share) {
    return s.at(ends[0] + share * (ends[2] - ends[0]), ends[1] + share * (ends[3] - ends[1]));
  }

  private static boolean near(Curve curve, Vec p, double step) {
    List<Vec> points = ((Curve.Traced) curve).points();
    for (int i = 0; i < points.size() - 1; i++) {
      Vec a = points.get(i);
      Vec chord = points.get(i + 1).minus(a);
      double share = Math.max(0, Math.min(1, p.minus(a).dot(chord) / chord.dot(chord)));
      if (a.plus(chord.times(share)).to(p) < Math.max(1e-6, 0.1 * step)) {
        return true;
      }
    }
    return false;
  }

  private static @Nullable Curve follow(Vec seed, Surface a, Surface b, double step, Bounds zone) {
    List<Vec> ahead = new ArrayList<>();
    ahead.add(seed);
    boolean closed = run(ahead, a, b, step, zone);
    if (closed) {
      ahead.add(seed);
      return ahead.size() < 5 ? null : new Curve.Traced(ahead, a, b, true);
    }
    List<Vec> behind = new ArrayList<>();
    behind.add(seed);
    run(behind, a, b, -step, zone);
    Collections.reverse(behind);
    behind.addAll(ahead.subList(1, ahead.size()));
    return behind.size() < 2 ? null : new Curve.Traced(behind, a, b, false);
  }

  /** Adds points until the curve closes (true) or leaves the zone. */
  private static boolean run(List<Vec> points, Surface a, Surface b, double step, Bounds zone) {
    Vec start = points.get(0);
    double h = Math.abs(step);
    Vec heading = a.normal(start).cross(b.normal(start)).times(Math.signum(step));
    if (heading.length() < 1e-5) {
      return false;
    }
    heading = heading.unit();
    for (int i = 0; i < MOST; i++) {
      Vec p = points.get(points.size() - 1);
      Vec d = a.normal(p).cross(b.normal(p));
      if (d.length() < 1e-5) {
        return false;
      }
      d = d.unit();
      d = d.dot(heading) < 0 ? d.times(-1) : d;
      Vec next = Curve.Traced.onBoth(p.plus(d.times(h)), d, a, b);
      if (!(next.to(p) < 3 * h)
          || !(next.to(p) > 0.2 * h)
          || Math.abs(a.value(next)) + Math.abs(b.value(next)) > 1e-9) {
        return false;
      }
      if (i > 2 && start.minus(p).dot(d) > 0 && start.to(p) < 1.6 * h) {
        return true;
      }
      points.add(next);
      if (!zone.holds(next)) {
        return false;
      }
      heading = d;
    }
    return false;
  }
}
