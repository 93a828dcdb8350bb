package fettle.parts.solid;

import java.util.List;

/**
 * Volume, area and moments of a solid, by the divergence theorem over its exact faces, each reduced
 * to integrals along its edges.
 *
 * @param volume volume [mm3]
 * @param area surface area [mm2]
 * @param centre centre of volume
 * @param second moments of volume about axes through the origin: integrals of xx, yy, zz, xy, yz,
 *     zx [mm5]
 */
public record Moments(double volume, double area, Vec centre, List<Double> second) {

  private static final double[] NODE = {
    0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
  };
  private static final double[] WEIGHT = {
    0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
  };

  /** Keeps its own copy. */
  public Moments {
    second = List.copyOf(second);
  }

  /** Returns the moments of a solid. */
  public static Moments of(Brep solid) {
    double[] sum = new double[11];
    for (Brep.Face face : solid.faces()) {
      face(solid, face, sum);
    }
    Vec centre = new Vec(sum[1], sum[2], sum[3]).times(1 / sum[0]);
    return new Moments(
        sum[0], sum[10], centre, List.of(sum[4], sum[5], sum[6], sum[7], sum[8], sum[9]));
  }

  private static void face(Brep solid, Brep.Face face, double[] sum) {
    Surface s = face.surface();
    double base = base(solid, face);
    for (Brep.Loop loop : face.loops()) {
      for (Brep.Use use : loop.uses()) {
        Brep.Edge e = solid.edges().get(use.edge());
        boolean straight = !s.round() && e.curve() instanceof Curve.Line;
        double[] breaks = straight ? new double[] {0, 1} : e.breaks();
        for (int i = 1; i < breaks.length; i++) {
          double part = breaks[i] - breaks[i - 1];
          for (int k = 0; k < 8; k++) {
            double x = k < 4 ? NODE[k] : -NODE[k - 4];
            double w = WEIGHT[k % 4];
            double share = breaks[i - 1] + part * (1 + x) / 2;
            Vec p = e.at(share);
            double u = s.u(p);
            double v = s.v(p);
            Vec du = s.du(u, v);
            double length2 = du.dot(du);
            if (length2 > 1e-18) {
              double turn = e.tangent(share).dot(du) / length2;
              double dt = (use.forward() ? -1 : 1) * turn * w * part / 2;
              column(s, u, base, v, dt, face.outward() ? 1 : -1, sum);
            }
          }
        }
      }
    }
  }

  /** Where columns start: at the tip if the face may reach it. */
  private static double base(Brep solid, Brep.Face face) {
    for (Brep.Loop loop : face.loops()) {
      for (Brep.Use use : loop.uses()) {
        Brep.Edge e = solid.edges().get(use.edge());
        for (int v : new int[] {e.start(), e.end()}) {
          Vec q = face.surface().frame().local(solid.vertices().get(v));
          if (Math.hypot(q.x(), q.y()) < 1e-7) {
            if (face.surface() instanceof Surface.Cone c) {
              return c.tip();
            } else if (face.surface() instanceof Surface.Torus t) {
              double half = Math.acos(-t.major() / t.minor());
              return q.z() > 0 ? half : -half;
            }
          }
        }
      }
    }
    Brep.Edge e = solid.edges().get(face.loops().get(0).uses().get(0).edge());
    return face.surface().v(e.at(0));
  }

  /** Adds the integral over a column of the face from its base to a height. */
  private static void column(
      Surface s, double u, double base, double v, double dt, int side, double[] sum) {
    double half = (v - base) / 2;
    for (int k = 0; k < 8; k++) {
      double x = k < 4 ? NODE[k] : -NODE[k - 4];
      double at = base + half * (1 + x);
      double w = WEIGHT[k % 4] * half * dt;
      Vec p = s.at(u, at);
      Vec n = s.du(u, at).cross(s.dv(u, at)).times(w);
      sum[0] += (p.x() * n.x() + p.y() * n.y() + p.z() * n.z()) / 3;
      sum[1] += p.x() * p.x() * n.x() / 2;
      sum[2] += p.y() * p.y() * n.y() / 2;
      sum[3] += p.z() * p.z() * n.z() / 2;
      sum[4] += p.x() * p.x() * p.x() * n.x() / 3;
      sum[5] += p.y() * p.y() * p.y() * n.y() / 3;
      sum[6] += p.z() * p.z() * p.z() * n.z() / 3;
      sum[7] += p.x() * p.x() * p.y() * n.x() / 2;
      sum[8] += p.y() * p.y() * p.z() * n.y() / 2;
      sum[9] += p.z() * p.z() * p.x() * n.z() / 2;
      double length = s.du(u, at).cross(s.dv(u, at)).length();
      sum[10] += side * length * w;
    }
  }

  /**
   * Returns the mass.
   *
   * @param density density [t/mm3]
   * @return mass [t]
   */
  public double mass(double density) {
    return volume * density;
  }

  /**
   * Returns the moment of inertia about an axis through the centre.
   *
   * @param axis 0, 1, 2 for an axis along x, y, z
   * @param density density [t/mm3]
   * @return moment of inertia [t mm2]
   */
  public double inertia(int axis, double density) {
    double a = second.get((axis + 1) % 3);
    double b = second.get((axis + 2) % 3);
    double y = centre.get((axis + 1) % 3);
    double z = centre.get((axis + 2) % 3);
    return density * (a + b - volume * (y * y + z * z));
  }
}
