package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;

/** Curves in which two surfaces meet: closed forms where there are any, traced otherwise. */
final class Meeting {

  private static final double PARALLEL = 1e-10;

  private Meeting() {}

  /** Returns the curves of two faces of primitives within a zone that holds both. */
  static List<Curve> of(Primitive.Patch a, Primitive.Patch b, Bounds zone) {
    Surface s = a.surface();
    Surface t = b.surface();
    if (s instanceof Surface.Plane p && t instanceof Surface.Plane q) {
      return planes(p, q, zone);
    }
    if (t instanceof Surface.Plane && s.round()) {
      return of(b, a, zone);
    }
    if (s instanceof Surface.Plane p) {
      return withPlane(p, b, zone, a);
    }
    if (Surface.oneAxis(s, t)) {
      return coaxial(s, t);
    }
    if (s instanceof Surface.Cylinder c
        && t instanceof Surface.Cylinder d
        && c.frame().z().cross(d.frame().z()).length() < PARALLEL) {
      return parallel(c, d, zone);
    }
    return Tracing.of(a, b, zone);
  }

  private static List<Curve> planes(Surface.Plane p, Surface.Plane q, Bounds zone) {
    Vec d = p.frame().z().cross(q.frame().z());
    if (d.length() < PARALLEL) {
      return List.of();
    }
    Vec n = p.frame().z();
    Vec m = q.frame().z();
    double c = n.dot(m);
    double h = n.dot(p.frame().origin());
    double k = m.dot(q.frame().origin());
    Vec point = n.times((h - c * k) / (1 - c * c)).plus(m.times((k - c * h) / (1 - c * c)));
    return line(point, d.unit(), zone);
  }

  private static List<Curve> line(Vec point, Vec direction, Bounds zone) {
    double[] range = zone.clip(point, direction);
    if (!(range[0] < range[1])) {
      return List.of();
    }
    Vec start = point.plus(direction.times(range[0]));
    return List.of(new Curve.Line(start, direction, 0, range[1] - range[0]));
  }

  private static List<Curve> withPlane(
      Surface.Plane p, Primitive.Patch b, Bounds zone, Primitive.Patch a) {
    Surface s = b.surface();
    Frame f = s.frame();
    Vec n = p.frame().z();
    double along = f.z().dot(n);
    double height = p.value(f.origin());
    if (1 - Math.abs(along) < PARALLEL) {
      return across(s, -height / along);
    }
    if (s instanceof Surface.Cylinder c) {
      return Math.abs(along) < PARALLEL
          ? rulings(c, n, height, zone)
          : List.of(oblique(p, c, along, height));
    }
    if (Math.abs(along) < PARALLEL && Math.abs(height) < Surface.NEAR) {
      List<Curve> both = new ArrayList<>();
      Vec side = f.z().cross(n);
      for (double sign : new double[] {1, -1}) {
        both.addAll(meridian(b, side.times(sign), zone));
      }
      return both;
    }
    return Tracing.of(b, a, zone);
  }

  /** Circles in a plane across the axis at a height. */
  private static List<Curve> across(Surface s, double z) {
    List<Curve> found = new ArrayList<>();
    for (double rho : radii(s, z)) {
      if (rho > 1e-9) {
        found.add(Curve.circle(s.frame().shifted(z), rho));
      }
    }
    return found;
  }

  private static double[] radii(Surface s, double z) {
    if (s instanceof Surface.Cylinder c) {
      return new double[] {c.radius()};
    } else if (s instanceof Surface.Cone c) {
      return new double[] {c.radius() + c.slope() * z};
    } else if (s instanceof Surface.Torus t) {
      double under = t.minor() * t.minor() - z * z;
      if (under < -1e-9 * t.minor()) {
        return new double[0];
      }
      double w = Math.sqrt(Math.max(0, under));
      return w < 1e-6 ? new double[] {t.major()} : new double[] {t.major() - w, t.major() + w};
    }
    return new double[0];
  }

  private static List<Curve> rulings(Surface.Cylinder c, Vec normal, double height, Bounds zone) {
    Frame f = c.frame();
    double under = c.radius() * c.radius() - height * height;
    if (under < -1e-7 * c.radius()) {
      return List.of();
    }
    Vec foot = f.origin().minus(normal.times(height));
    Vec side = f.z().cross(normal);
    double w = Math.sqrt(Math.max(0, under));
    if (w < 1e-3 && Math.abs(c.radius() - Math.abs(height)) < 1e-8) {
      return line(foot, f.z(), zone);
    }
    List<Curve> both = new ArrayList<>(line(foot.plus(side.times(w)), f.z(), zone));
    both.addAll(line(foot.minus(side.times(w)), f.z(), zone));
    return both;
  }

  private static Curve oblique(Surface.Plane p, Surface.Cylinder c, double along, double height) {
    Frame f = c.frame();
    Vec centre = f.origin().minus(f.z().times(height / along));
    Vec minor = f.z().cross(p.frame().z()).unit();
    Vec major = minor.cross(p.frame().z()).unit();
    Frame frame = new Frame(centre, major, p.frame().z().cross(major), p.frame().z());
    return new Curve.Oval(frame, c.radius() / Math.abs(along), c.radius());
  }

  /** The generating line or circle of a cone or torus in one half plane through the axis. */
  private static List<Curve> meridian(Primitive.Patch b, Vec side, Bounds zone) {
    Frame f = b.surface().frame();
    if (b.surface() instanceof Surface.Cone c) {
      Vec from =
          f.origin().plus(side.times(c.radius() + c.slope() * b.low())).plus(f.z().times(b.low()));
      Vec to =
          f.origin()
              .plus(side.times(c.radius() + c.slope() * b.high()))
              .plus(f.z().times(b.high()));
      return List.of(new Curve.Line(from, to.minus(from).unit(), 0, to.minus(from).length()));
    }
    if (b.surface() instanceof Surface.Torus t) {
      Vec centre = f.origin().plus(side.times(t.major()));
      return List.of(Curve.circle(Frame.of(centre, side.cross(f.z()), side), t.minor()));
    }
    return line(f.origin(), f.z(), zone);
  }

  private static List<Curve> parallel(Surface.Cylinder a, Surface.Cylinder b, Bounds zone) {
    Frame f = a.frame();
    Vec q = f.local(b.frame().origin());
    double d = Math.hypot(q.x(), q.y());
    double x = (d * d + a.radius() * a.radius() - b.radius() * b.radius()) / (2 * d);
    double under = a.radius() * a.radius() - x * x;
    if (under < -1e-7 * a.radius()) {
      return List.of();
    }
    double w = Math.sqrt(Math.max(0, under));
    double c = q.x() / d;
    double s = q.y() / d;
    if (w < 1e-3 && Math.abs(Math.abs(x) - a.radius()) < 1e-8) {
      return line(f.at(x * c, x * s, 0), f.z(), zone);
    }
    List<Curve> both = new ArrayList<>(line(f.at(x * c - w * s, x * s + w * c, 0), f.z(), zone));
    both.addAll(line(f.at(x * c + w * s, x * s - w * c, 0), f.z(), zone));
    return both;
  }

  private static List<Curve> coaxial(Surface a, Surface b) {
    if (b instanceof Surface.Torus && !(a instanceof Surface.Torus)) {
      return coaxial(b, a);
    }
    Frame f = a.frame();
    double shift = b.frame().origin().minus(f.origin()).dot(f.z());
    double turn = Math.signum(f.z().dot(b.frame().z()));
    List<double[]> points =
        a instanceof Surface.Torus t && b instanceof Surface.Torus u
            ? twoCircles(t, u, shift)
            : a instanceof Surface.Torus t
                ? circleLine(t, line(b, shift, turn))
                : twoLines(line(a, 0, 1), line(b, shift, turn));
    List<Curve> found = new ArrayList<>();
    for (double[] p : points) {
      if (p[1] > 1e-9) {
        found.add(Curve.circle(f.shifted(p[0]), p[1]));
      }
    }
    return found;
  }

  /** The generating line as distance from the axis at height 0, and slope. */
  private static double[] line(Surface s, double shift, double turn) {
    if (s instanceof Surface.Cone c) {
      double slope = c.slope() * turn;
      return new double[] {c.radius() - slope * shift, slope};
    }
    return new double[] {((Surface.Cylinder) s).radius(), 0};
  }

  private static List<double[]> twoLines(double[] a, double[] b) {
    double slope = a[1] - b[1];
    if (Math.abs(slope) < 1e-12) {
      return List.of();
    }
    double z = (b[0] - a[0]) / slope;
    return List.of(new double[] {z, a[0] + a[1] * z});
  }

  private static List<double[]> circleLine(Surface.Torus t, double[] line) {
    double k = Math.sqrt(1 + line[1] * line[1]);
    double distance = (line[0] - t.major()) / k;
    double under = t.minor() * t.minor() - distance * distance;
    if (under < -1e-7 * t.minor()) {
      return List.of();
    }
    double w = Math.sqrt(Math.max(0, under));
    double footZ = -distance * line[1] / k;
    double footR = t.major() + distance / k;
    if (Math.abs(t.minor() - Math.abs(distance)) < 1e-8) {
      return List.of(new double[] {footZ, footR});
    }
    return List.of(
        new double[] {footZ + w / k, footR + w * line[1] / k},
        new double[] {footZ - w / k, footR - w * line[1] / k});
  }

  private static List<double[]> twoCircles(Surface.Torus a, Surface.Torus b, double shift) {
    double dr = b.major() - a.major();
    double d = Math.hypot(shift, dr);
    if (d < 1e-9) {
      return List.of();
    }
    double x = (d * d + a.minor() * a.minor() - b.minor() * b.minor()) / (2 * d);
    double under = a.minor() * a.minor() - x * x;
    if (under < -1e-7 * a.minor()) {
      return List.of();
    }
    double w = Math.sqrt(Math.max(0, under));
    double c = shift / d;
    double s = dr / d;
    if (Math.abs(Math.abs(x) - a.minor()) < 1e-8) {
      return List.of(new double[] {x * c, a.major() + x * s});
    }
    return List.of(
        new double[] {x * c - w * s, a.major() + x * s + w * c},
        new double[] {x * c + w * s, a.major() + x * s - w * c});
  }
}
