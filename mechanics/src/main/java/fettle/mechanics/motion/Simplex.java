package fettle.mechanics.motion;

/**
 * Up to four points of a convex set and the point of their hull that lies nearest to the origin.
 * After {@link #reduce} only the points that carry the nearest point are left, each with its share.
 */
final class Simplex {

  /** A point of the set, and what made it. */
  record Vertex(Vector w, Vector a, Vector b, int bits) {}

  private final Vertex[] points = new Vertex[4];
  private final double[] shares = new double[4];
  private final Vertex[] kept = new Vertex[4];
  private final double[] best = new double[4];
  private int size;
  private int bestSize;
  private double bestDistance;
  private Vector nearest = Vector.ZERO;

  int size() {
    return size;
  }

  Vertex vertex(int i) {
    return points[i];
  }

  double share(int i) {
    return shares[i];
  }

  /** Takes over what another holds, so that the other can go on. */
  void take(Simplex other) {
    size = other.size;
    System.arraycopy(other.points, 0, points, 0, size);
    System.arraycopy(other.shares, 0, shares, 0, size);
  }

  void add(Vertex vertex) {
    points[size++] = vertex;
  }

  boolean has(Vector w) {
    for (int i = 0; i < size; i++) {
      if (points[i].w.equals(w)) {
        return true;
      }
    }
    return false;
  }

  /** Returns the nearest point and drops what does not carry it. */
  Vector reduce() {
    bestDistance = Double.POSITIVE_INFINITY;
    bestSize = 0;
    if (size == 4 && inside()) {
      return Vector.ZERO;
    }
    for (int i = 0; i < size; i++) {
      keep(points[i].w, points[i], 1, null, 0, null, 0);
      for (int j = i + 1; j < size; j++) {
        edge(points[i], points[j]);
        for (int k = j + 1; k < size; k++) {
          face(points[i], points[j], points[k]);
        }
      }
    }
    size = bestSize;
    System.arraycopy(kept, 0, points, 0, size);
    System.arraycopy(best, 0, shares, 0, size);
    return nearest;
  }

  private void edge(Vertex p, Vertex q) {
    Vector d = q.w.minus(p.w);
    double length = d.dot(d);
    double t = -p.w.dot(d) / length;
    if (t > 0 && t < 1) {
      keep(p.w.plus(t, d), p, 1 - t, q, t, null, 0);
    }
  }

  private void face(Vertex p, Vertex q, Vertex r) {
    Vector u = q.w.minus(p.w);
    Vector v = r.w.minus(p.w);
    Vector n = u.cross(v);
    double area = n.dot(n);
    if (!(area > 1e-24 * u.dot(u) * v.dot(v))) {
      return;
    }
    double s = p.w.times(-1).cross(v).dot(n) / area;
    double t = u.cross(p.w.times(-1)).dot(n) / area;
    if (s > 0 && t > 0 && s + t < 1) {
      Vector at = p.w.times(1 - s - t).plus(s, q.w).plus(t, r.w);
      keep(at, p, 1 - s - t, q, s, r, t);
    }
  }

  private void keep(
      Vector at,
      Vertex p,
      double sp,
      @org.jspecify.annotations.Nullable Vertex q,
      double sq,
      @org.jspecify.annotations.Nullable Vertex r,
      double sr) {
    double distance = at.dot(at);
    if (distance < bestDistance) {
      bestDistance = distance;
      nearest = at;
      kept[0] = p;
      best[0] = sp;
      bestSize = 1;
      if (q != null) {
        kept[1] = q;
        best[1] = sq;
        bestSize = 2;
      }
      if (r != null) {
        kept[2] = r;
        best[2] = sr;
        bestSize = 3;
      }
    }
  }

  private boolean inside() {
    Vector a = points[0].w;
    Vector u = points[1].w.minus(a);
    Vector v = points[2].w.minus(a);
    Vector w = points[3].w.minus(a);
    Vector o = a.times(-1);
    double volume = u.dot(v.cross(w));
    if (!(Math.abs(volume) > 1e-14 * u.norm() * v.norm() * w.norm())) {
      return false;
    }
    double s = o.dot(v.cross(w)) / volume;
    double t = u.dot(o.cross(w)) / volume;
    double r = u.dot(v.cross(o)) / volume;
    Vector at = a.plus(s, u).plus(t, v).plus(r, w);
    if (s >= 0 && t >= 0 && r >= 0 && s + t + r <= 1 && at.norm() < Poses.ROUNDING) {
      shares[0] = 1 - s - t - r;
      shares[1] = s;
      shares[2] = t;
      shares[3] = r;
      return true;
    }
    return false;
  }
}
