package fettle.mechanics.motion;

import java.util.List;

/**
 * Two solids at given angles of their turning seats, each slide that no train couples still free
 * over its whole travel. The set of differences of their points is convex, and a free slide only
 * lengthens it by a segment; so the least distance over all positions of the slides is one distance
 * of convex sets, with nothing lost.
 */
final class Poses {

  private static final int MOST = 80;

  /** What rounding may do to a distance of bodies of workshop size. */
  static final double ROUNDING = 1e-9;

  private final Pair pair;
  private final Domain domain;
  private final int[] free;
  private final int[] slot;
  private final double[][] rotationA = new double[3][3];
  private final double[][] rotationB = new double[3][3];
  private final Vector[] travel;
  private final Vector[] travelA;
  private final Vector[] travelB;
  private Vector placeA = Vector.ZERO;
  private Vector placeB = Vector.ZERO;
  private double[] position;

  private double lower;
  private double upper;
  private Vector normal = new Vector(1, 0, 0);

  /** The points that carry the nearest point found. */
  private final Simplex carrier = new Simplex();

  Poses(Pair pair, Domain domain, int[] free) {
    this.pair = pair;
    this.domain = domain;
    this.free = free;
    this.slot = new int[domain.size()];
    java.util.Arrays.fill(slot, -1);
    for (int i = 0; i < free.length; i++) {
      slot[free[i]] = i;
    }
    travel = new Vector[free.length];
    travelA = new Vector[free.length];
    travelB = new Vector[free.length];
    position = domain.middle();
  }

  double lower() {
    return lower;
  }

  double upper() {
    return upper;
  }

  /** Returns the direction from the second solid to the first where they are nearest. */
  Vector normal() {
    return normal;
  }

  /**
   * Computes the least distance over the free slides.
   *
   * @param at positions of all other axes [mm or rad]
   * @param start a direction to begin with
   */
  void solve(double[] at, Vector start) {
    position = at.clone();
    java.util.Arrays.fill(travelA, Vector.ZERO);
    java.util.Arrays.fill(travelB, Vector.ZERO);
    placeA = set(pair.a().steps(), rotationA, travelA);
    placeB = set(pair.b().steps(), rotationB, travelB);
    for (int i = 0; i < free.length; i++) {
      travel[i] = travelA[i].minus(travelB[i]);
    }
    nearest(start);
  }

  private Vector set(List<Step> steps, double[][] r, Vector[] slides) {
    Vector ex = new Vector(1, 0, 0);
    Vector ey = new Vector(0, 1, 0);
    Vector ez = new Vector(0, 0, 1);
    Vector place = Vector.ZERO;
    for (Step step : steps) {
      if (step instanceof Step.Shift s) {
        place = place.plus(in(s.by(), ex, ey, ez));
      } else if (step instanceof Step.Slide s) {
        Vector along = in(s.along(), ex, ey, ez).times(s.factor());
        if (slot[s.axis()] >= 0) {
          slides[slot[s.axis()]] = slides[slot[s.axis()]].plus(along);
        } else {
          place = place.plus(position[s.axis()], along);
        }
      } else {
        Vector axis = step instanceof Step.Turn t ? t.about() : ((Step.Tilt) step).axis();
        double angle =
            step instanceof Step.Turn t
                ? t.factor() * position[t.axis()]
                : ((Step.Tilt) step).angle();
        Vector about = in(axis, ex, ey, ez);
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        ex = ex.turned(about, c, s);
        ey = ey.turned(about, c, s);
        ez = ez.turned(about, c, s);
      }
    }
    column(r, 0, ex);
    column(r, 1, ey);
    column(r, 2, ez);
    return place;
  }

  private static Vector in(Vector v, Vector ex, Vector ey, Vector ez) {
    return ex.times(v.x()).plus(v.y(), ey).plus(v.z(), ez);
  }

  private static void column(double[][] r, int i, Vector v) {
    r[0][i] = v.x();
    r[1][i] = v.y();
    r[2][i] = v.z();
  }

  private static Vector support(Convex solid, double[][] r, Vector place, Vector n, double sign) {
    double nx = n.x() * sign;
    double ny = n.y() * sign;
    double nz = n.z() * sign;
    Vector own =
        solid.support(
            new Vector(
                r[0][0] * nx + r[1][0] * ny + r[2][0] * nz,
                r[0][1] * nx + r[1][1] * ny + r[2][1] * nz,
                r[0][2] * nx + r[1][2] * ny + r[2][2] * nz));
    return new Vector(
        place.x() + r[0][0] * own.x() + r[0][1] * own.y() + r[0][2] * own.z(),
        place.y() + r[1][0] * own.x() + r[1][1] * own.y() + r[1][2] * own.z(),
        place.z() + r[2][0] * own.x() + r[2][1] * own.y() + r[2][2] * own.z());
  }

  /** The point of the set of differences that lies least far along a direction. */
  private Simplex.Vertex least(Vector n) {
    Vector a = support(pair.a().solid(), rotationA, placeA, n, -1);
    Vector b = support(pair.b().solid(), rotationB, placeB, n, 1);
    Vector w = a.minus(b);
    int bits = 0;
    for (int i = 0; i < free.length; i++) {
      boolean high = travel[i].dot(n) < 0;
      bits |= high ? 1 << i : 0;
      w = w.plus(high ? domain.high()[free[i]] : domain.low()[free[i]], travel[i]);
    }
    return new Simplex.Vertex(w, a, b, bits);
  }

  private void nearest(Vector start) {
    Simplex s = new Simplex();
    Vector n = start;
    lower = 0;
    s.add(least(n));
    Vector v = s.reduce();
    for (int i = 0; i < MOST; i++) {
      double length = v.norm();
      if (!(length > ROUNDING)) {
        settle(s, 0, v);
        lower = 0;
        return;
      }
      Simplex.Vertex next = least(v);
      double bound = v.dot(next.w()) / length - ROUNDING;
      if (bound > lower) {
        lower = bound;
      }
      settle(s, length, v);
      if (length - lower <= 1e-7 || s.has(next.w()) || s.size() == 4) {
        return;
      }
      s.add(next);
      Vector nearer = s.reduce();
      if (!(nearer.norm() < length)) {
        return;
      }
      v = nearer;
    }
    settle(s, v.norm(), v);
  }

  private void settle(Simplex s, double length, Vector v) {
    carrier.take(s);
    upper = length;
    if (length > 0) {
      normal = v.times(1 / length);
    }
  }

  /** Returns the position of every axis where the solids are as near as was found. */
  double[] witness() {
    double[] at = position.clone();
    for (int i = 0; i < free.length; i++) {
      double share = 0;
      for (int k = 0; k < carrier.size(); k++) {
        share += (carrier.vertex(k).bits() >> i & 1) * carrier.share(k);
      }
      double low = domain.low()[free[i]];
      double high = domain.high()[free[i]];
      at[free[i]] = Math.min(high, Math.max(low, low + share * (high - low)));
    }
    return at;
  }

  /** Returns the nearest point of the first solid at the witness position. */
  Vector onFirst() {
    return point(witness(), travelA, true);
  }

  /** Returns the nearest point of the second solid at the witness position. */
  Vector onSecond() {
    return point(witness(), travelB, false);
  }

  private Vector point(double[] at, Vector[] slides, Boolean first) {
    Vector sum = Vector.ZERO;
    for (int k = 0; k < carrier.size(); k++) {
      Simplex.Vertex vertex = carrier.vertex(k);
      sum = sum.plus(carrier.share(k), first ? vertex.a() : vertex.b());
    }
    for (int i = 0; i < free.length; i++) {
      sum = sum.plus(at[free[i]], slides[i]);
    }
    return sum;
  }
}
