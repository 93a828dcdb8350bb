package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;

/** Tells whether material stands between a point and the viewer. */
final class Ray {

  private final List<Body.Step> steps;
  private final List<Bounds> boxes = new ArrayList<>();
  private final List<List<Surface>> surfaces = new ArrayList<>();
  private final Body body;

  Ray(Body body) {
    this.body = body;
    this.steps = body.steps();
    for (Body.Step step : steps) {
      boxes.add(step.solid().bounds().grown(1e-6));
      surfaces.add(step.solid().patches().stream().map(Primitive.Patch::surface).toList());
    }
  }

  /** Tells whether the ray from a point meets material. */
  boolean blocked(Vec p, Vec d) {
    List<Double> cuts = new ArrayList<>();
    cuts.add(0.0);
    for (int i = 0; i < steps.size(); i++) {
      double[] range = boxes.get(i).clip(p, d);
      if (range[0] <= range[1] && range[1] > 0) {
        cuts.add(range[0]);
        cuts.add(range[1]);
        for (Surface s : surfaces.get(i)) {
          meets(s, p, d, range, cuts);
        }
      }
    }
    cuts.sort(null);
    for (int i = 1; i < cuts.size(); i++) {
      double from = Math.max(0, cuts.get(i - 1));
      double to = cuts.get(i);
      if (to - from > 1e-5 && body.contains(p.plus(d.times((from + to) / 2)))) {
        return true;
      }
    }
    return false;
  }

  private static void meets(Surface s, Vec p, Vec d, double[] range, List<Double> cuts) {
    Vec q = s.frame().local(p);
    Vec e = s.frame().local(p.plus(d)).minus(q);
    if (s instanceof Surface.Plane) {
      if (Math.abs(e.z()) > 1e-12) {
        cuts.add(-q.z() / e.z());
      }
    } else if (s instanceof Surface.Torus) {
      for (int k = 1; k < 32; k++) {
        cuts.add(range[0] + (range[1] - range[0]) * k / 32);
      }
    } else {
      double r0 = s instanceof Surface.Cylinder c ? c.radius() : ((Surface.Cone) s).radius();
      double k = s instanceof Surface.Cone c ? c.slope() : 0;
      double r = r0 + k * q.z();
      double dr = k * e.z();
      double a = e.x() * e.x() + e.y() * e.y() - dr * dr;
      double b = q.x() * e.x() + q.y() * e.y() - r * dr;
      double c = q.x() * q.x() + q.y() * q.y() - r * r;
      double root = b * b - a * c;
      if (Math.abs(a) < 1e-14) {
        if (Math.abs(b) > 1e-14) {
          cuts.add(-c / (2 * b));
        }
      } else if (root >= 0) {
        cuts.add((-b - Math.sqrt(root)) / a);
        cuts.add((-b + Math.sqrt(root)) / a);
      }
    }
  }
}
