package fettle.parts.solid;

import fettle.mechanics.base.Numbers;
import fettle.parts.recipe.Edge;
import java.util.ArrayList;
import java.util.List;

/** A polyline with arcs whose corners can be broken, rounded or undercut. */
final class Corners {

  private record Corner(
      double x, double y, double bulge, Edge edge, boolean sideAfter, String name) {}

  private final List<Corner> corners = new ArrayList<>();

  /**
   * Adds a corner.
   *
   * @param x first coordinate [mm]
   * @param y second coordinate [mm]
   * @param bulge bulge of the piece that follows [-]
   * @param edge what becomes of the corner
   * @param sideAfter true if the step the corner belongs to follows it
   * @param name name of the piece that follows
   */
  void add(double x, double y, double bulge, Edge edge, boolean sideAfter, String name) {
    int last = corners.size() - 1;
    if (last >= 0 && Math.hypot(corners.get(last).x - x, corners.get(last).y - y) < 1e-9) {
      Corner c = corners.get(last);
      Edge kept = c.edge instanceof Edge.Sharp ? edge : c.edge;
      corners.set(last, new Corner(x, y, bulge, kept, sideAfter, name));
    } else {
      corners.add(new Corner(x, y, bulge, edge, sideAfter, name));
    }
  }

  /** Takes a corner away again. */
  void drop(double x, double y) {
    corners.removeIf(c -> Math.hypot(c.x - x, c.y - y) < 1e-12);
  }

  /** Returns the closed region. */
  Profile closed() {
    int n = corners.size();
    List<double[]> points = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Corner c = corners.get(i);
      Corner before = corners.get((i + n - 1) % n);
      Corner after = corners.get((i + 1) % n);
      int start = points.size();
      broken(before, c, after, points);
      for (int k = start; k < points.size(); k++) {
        names.add(c.name);
      }
    }
    List<Profile.Piece> pieces = new ArrayList<>();
    int m = points.size();
    for (int i = 0; i < m; i++) {
      double[] p = points.get(i);
      double[] q = points.get((i + 1) % m);
      Profile.Draft draft = Profile.start(p[0], p[1]);
      pieces.add(draft.bulge(q[0], q[1], p[2], names.get(i)).last());
    }
    return new Profile(pieces);
  }

  private static void broken(Corner before, Corner c, Corner after, List<double[]> into) {
    double ax = before.x - c.x;
    double ay = before.y - c.y;
    double bx = after.x - c.x;
    double by = after.y - c.y;
    double a = Math.hypot(ax, ay);
    double b = Math.hypot(bx, by);
    if (c.edge instanceof Edge.Sharp) {
      into.add(new double[] {c.x, c.y, c.bulge});
      return;
    }
    if (before.bulge != 0 || c.bulge != 0) {
      throw new SolidException(
          c.name + ": a corner beside an arc can be left sharp only; shape it with a step");
    }
    if (c.edge instanceof Edge.Chamfer chamfer) {
      double side = chamfer.width();
      double face = chamfer.width() * Math.tan(chamfer.angle());
      double onA = c.sideAfter ? face : side;
      double onB = c.sideAfter ? side : face;
      room(c, onA, a, onB, b);
      into.add(new double[] {c.x + ax / a * onA, c.y + ay / a * onA, 0});
      into.add(new double[] {c.x + bx / b * onB, c.y + by / b * onB, 0});
    } else if (c.edge instanceof Edge.Round round) {
      double turn = Math.PI - Math.acos(Math.max(-1, Math.min(1, (ax * bx + ay * by) / a / b)));
      double set = round.radius() * Math.tan(turn / 2);
      room(c, set, a, set, b);
      double sign = Math.signum(-ax * by + ay * bx);
      into.add(new double[] {c.x + ax / a * set, c.y + ay / a * set, sign * Math.tan(turn / 4)});
      into.add(new double[] {c.x + bx / b * set, c.y + by / b * set, 0});
    } else if (c.edge instanceof Edge.Undercut under) {
      double side = c.sideAfter ? bx : ax;
      room(c, c.sideAfter ? 0 : under.width(), a, c.sideAfter ? under.width() : 0, b);
      double far = c.x + Math.signum(side) * under.width();
      double deep = c.y - under.depth();
      List<double[]> notch =
          List.of(
              new double[] {c.x, deep, 0}, new double[] {far, deep, 0}, new double[] {far, c.y, 0});
      for (int i = 0; i < 3; i++) {
        into.add(notch.get(c.sideAfter ? i : 2 - i));
      }
    }
  }

  private static void room(Corner c, double onA, double a, double onB, double b) {
    if (!(onA < a + 1e-9) || !(onB < b + 1e-9) || !(onA >= 0) || !(onB >= 0)) {
      throw new SolidException(
          c.name
              + ": there is no room for the chamfer, radius or undercut at "
              + Numbers.fixed(c.x, 2)
              + " mm");
    }
  }
}
