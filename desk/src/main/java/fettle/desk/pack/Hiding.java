package fettle.desk.pack;

import java.util.ArrayList;
import java.util.List;

/** Which parts of an edge are hidden by flat convex faces before it. */
final class Hiding {

  private static final double NEARER = 0.05;
  private static final double SHORTEST = 1e-9;

  private Hiding() {}

  /** Returns a point of an edge. */
  static double[] at(double[][] edge, double share) {
    double[] p = new double[3];
    for (int i = 0; i < 3; i++) {
      p[i] = edge[0][i] + share * (edge[1][i] - edge[0][i]);
    }
    return p;
  }

  /** Returns what is seen of an edge, as shares of its length from and to. */
  static List<double[]> visible(double[][] edge, List<double[][]> covers) {
    List<double[]> seen = new ArrayList<>();
    seen.add(new double[] {0, 1});
    for (double[][] cover : covers) {
      double[] hidden = hidden(edge, cover);
      if (hidden.length == 2) {
        seen = without(seen, hidden[0], hidden[1]);
        if (seen.isEmpty()) {
          return seen;
        }
      }
    }
    return seen;
  }

  private static List<double[]> without(List<double[]> seen, double from, double to) {
    List<double[]> left = new ArrayList<>();
    for (double[] s : seen) {
      if (to <= s[0] || from >= s[1]) {
        left.add(s);
        continue;
      }
      if (from - s[0] > SHORTEST) {
        left.add(new double[] {s[0], from});
      }
      if (s[1] - to > SHORTEST) {
        left.add(new double[] {to, s[1]});
      }
    }
    return left;
  }

  /** Returns the piece of an edge that lies within a face and behind it; empty if none does. */
  private static double[] hidden(double[][] edge, double[][] face) {
    double[] span = {0, 1};
    double turn = area(face) > 0 ? 1 : -1;
    for (int i = 0; i < face.length; i++) {
      double[] a = face[i];
      double[] b = face[(i + 1) % face.length];
      double from = turn * side(a, b, edge[0]);
      double to = turn * side(a, b, edge[1]);
      if (!cut(span, from, to)) {
        return new double[0];
      }
    }
    double[] n = normal(face);
    double before = depth(n, face[0], edge[0]) - edge[0][2] - NEARER;
    double after = depth(n, face[0], edge[1]) - edge[1][2] - NEARER;
    return cut(span, before, after) ? span : new double[0];
  }

  /** Keeps the part of a span on which something that runs evenly from one value on is above 0. */
  private static boolean cut(double[] span, double from, double to) {
    if (from <= 0 && to <= 0) {
      return false;
    }
    if (from < 0 || to < 0) {
      double share = from / (from - to);
      if (from < 0) {
        span[0] = Math.max(span[0], share);
      } else {
        span[1] = Math.min(span[1], share);
      }
    }
    return span[1] - span[0] > SHORTEST;
  }

  private static double side(double[] a, double[] b, double[] p) {
    return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
  }

  private static double depth(double[] n, double[] on, double[] p) {
    return on[2] - (n[0] * (p[0] - on[0]) + n[1] * (p[1] - on[1])) / n[2];
  }

  private static double area(double[][] face) {
    double sum = 0;
    for (int i = 0; i < face.length; i++) {
      double[] a = face[i];
      double[] b = face[(i + 1) % face.length];
      sum += a[0] * b[1] - b[0] * a[1];
    }
    return sum;
  }

  /** Returns the normal of a flat face, as long as twice its area. */
  static double[] normal(double[][] face) {
    double[] n = new double[3];
    for (int i = 0; i < face.length; i++) {
      double[] a = face[i];
      double[] b = face[(i + 1) % face.length];
      n[0] += (a[1] - b[1]) * (a[2] + b[2]);
      n[1] += (a[2] - b[2]) * (a[0] + b[0]);
      n[2] += (a[0] - b[0]) * (a[1] + b[1]);
    }
    return n;
  }
}
