package fettle.desk.pack;

import fettle.desk.picture.Stand;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Solid;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The whole lathe as seen from above the operator's right shoulder, in parallel projection, hidden
 * edges left out; what a change alters is drawn with wide lines.
 */
final class MachinePicture {

  private static final double YAW = Math.toRadians(32);
  private static final double PITCH = Math.toRadians(24);
  private static final int SIDES = 32;

  private record Shape(String member, List<Facet> facets) {
    Shape {
      facets = List.copyOf(facets);
    }
  }

  /** A flat face as the eye has it, its corners with their depth towards the eye. */
  private static final class Facet {
    private final double[][] corners;
    private final boolean[] smooth;
    private final boolean seen;

    Facet(double[][] corners, boolean[] smooth, boolean seen) {
      this.corners = corners;
      this.smooth = smooth;
      this.seen = seen;
    }
  }

  private final List<Shape> shapes = new ArrayList<>();

  private MachinePicture() {}

  /** Returns the marks of a lathe that fill a box. */
  static List<Mark> marks(Machine machine, Set<String> wide, Box room) {
    MachinePicture picture = new MachinePicture();
    Map<String, Point> zeros = Stand.of(machine, Map.of()).zeros();
    for (Member member : machine.members().values()) {
      Point zero = Objects.requireNonNull(zeros.get(member.name()));
      for (Solid solid : member.envelope().values()) {
        picture.shapes.add(new Shape(member.name(), facets(solid, zero)));
      }
    }
    return picture.drawn(wide, room);
  }

  private List<Mark> drawn(Set<String> wide, Box room) {
    Box box = Box.NOTHING;
    for (Shape shape : shapes) {
      for (Facet facet : shape.facets()) {
        for (double[] c : facet.corners) {
          box = box.with(c[0], c[1]);
        }
      }
    }
    List<Mark> marks = new ArrayList<>();
    if (!(box.x1() > box.x0()) || !(box.y1() > box.y0())) {
      return marks;
    }
    double k =
        Math.min(
            (room.x1() - room.x0()) / (box.x1() - box.x0()),
            (room.y1() - room.y0()) / (box.y1() - box.y0()));
    double dx = (room.x0() + room.x1() - k * (box.x0() + box.x1())) / 2;
    double dy = (room.y0() + room.y1() - k * (box.y0() + box.y1())) / 2;
    for (int i = 0; i < shapes.size(); i++) {
      Shape shape = shapes.get(i);
      Pen pen = wide.contains(shape.member()) ? Pen.OUTLINE : Pen.NARROW;
      List<double[][]> covers = covers(i);
      for (double[][] edge : edges(shape)) {
        for (double[] part : Hiding.visible(edge, covers)) {
          double[] a = Hiding.at(edge, part[0]);
          double[] b = Hiding.at(edge, part[1]);
          if (Math.hypot(a[0] - b[0], a[1] - b[1]) * k > 0.05) {
            marks.add(
                Mark.Stroke.line(
                    "machine", pen, k * a[0] + dx, k * a[1] + dy, k * b[0] + dx, k * b[1] + dy));
          }
        }
      }
    }
    return marks;
  }

  /** Returns every face that may hide an edge of a shape; a convex shape never hides its own. */
  private List<double[][]> covers(int own) {
    List<double[][]> covers = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      if (i != own) {
        shapes.get(i).facets().stream()
            .filter(f -> f.seen)
            .map(f -> f.corners)
            .forEach(covers::add);
      }
    }
    return covers;
  }

  /** Returns the edges of a shape that lie on a seen face; of a smooth one only its outline. */
  private static List<double[][]> edges(Shape shape) {
    List<double[][]> edges = new ArrayList<>();
    for (int f = 0; f < shape.facets().size(); f++) {
      Facet facet = shape.facets().get(f);
      int n = facet.seen ? facet.corners.length : 0;
      for (int i = 0; i < n; i++) {
        double[] a = facet.corners[i];
        double[] b = facet.corners[(i + 1) % n];
        boolean both = beyond(shape, f, a, b);
        boolean first = a[0] < b[0] || (a[0] == b[0] && a[1] < b[1]);
        if (facet.smooth[i] ? !both : !both || first) {
          edges.add(new double[][] {a, b});
        }
      }
    }
    return edges;
  }

  /** Tells whether the face on the other side of an edge is seen, too. */
  private static boolean beyond(Shape shape, int own, double[] a, double[] b) {
    for (int i = 0; i < shape.facets().size(); i++) {
      Facet other = shape.facets().get(i);
      if (i != own && other.seen && holds(other, a) && holds(other, b)) {
        return true;
      }
    }
    return false;
  }

  private static boolean holds(Facet facet, double[] corner) {
    for (double[] c : facet.corners) {
      if (Math.abs(c[0] - corner[0]) < 1e-6
          && Math.abs(c[1] - corner[1]) < 1e-6
          && Math.abs(c[2] - corner[2]) < 1e-6) {
        return true;
      }
    }
    return false;
  }

  private static List<Facet> facets(Solid solid, Point zero) {
    return solid instanceof Solid.Box box
        ? box(zero.plus(box.corner()), box.size())
        : cylinder((Solid.Cylinder) solid, zero);
  }

  private static List<Facet> box(Point c, Point s) {
    List<Facet> facets = new ArrayList<>();
    double[] middle = seen(c.x() + s.x() / 2, c.y() + s.y() / 2, c.z() + s.z() / 2);
    for (int axis = 0; axis < 3; axis++) {
      for (int end = 0; end < 2; end++) {
        double[][] corners = new double[4][];
        for (int i = 0; i < 4; i++) {
          int[] at = {0, 0, 0};
          at[axis] = end;
          at[(axis + 1) % 3] = i == 1 || i == 2 ? 1 : 0;
          at[(axis + 2) % 3] = i >= 2 ? 1 : 0;
          corners[i] = seen(c.x() + at[0] * s.x(), c.y() + at[1] * s.y(), c.z() + at[2] * s.z());
        }
        facets.add(facet(corners, new boolean[4], middle));
      }
    }
    return facets;
  }

  private static List<Facet> cylinder(Solid.Cylinder c, Point zero) {
    Point end = zero.plus(c.end());
    double[][][] rings = new double[2][SIDES][];
    for (int i = 0; i < SIDES; i++) {
      double a = 2 * Math.PI * i / SIDES;
      double u = c.diameter() / 2 * Math.cos(a);
      double v = c.diameter() / 2 * Math.sin(a);
      for (int e = 0; e < 2; e++) {
        double w = e * c.length();
        rings[e][i] =
            switch (c.axis()) {
              case X -> seen(end.x() + w, end.y() + u, end.z() + v);
              case Y -> seen(end.x() + u, end.y() + w, end.z() + v);
              case Z -> seen(end.x() + u, end.y() + v, end.z() + w);
            };
      }
    }
    double[] middle = new double[3];
    for (int i = 0; i < 3; i++) {
      middle[i] =
          (rings[0][0][i] + rings[0][SIDES / 2][i] + rings[1][0][i] + rings[1][SIDES / 2][i]) / 4;
    }
    List<Facet> facets = new ArrayList<>();
    facets.add(facet(rings[0], new boolean[SIDES], middle));
    facets.add(facet(rings[1], new boolean[SIDES], middle));
    boolean[] along = {false, true, false, true};
    for (int i = 0; i < SIDES; i++) {
      int j = (i + 1) % SIDES;
      double[][] side = {rings[0][i], rings[0][j], rings[1][j], rings[1][i]};
      facets.add(facet(side, along, middle));
    }
    return facets;
  }

  private static Facet facet(double[][] corners, boolean[] smooth, double[] middle) {
    double[] n = Hiding.normal(corners);
    double out = 0;
    for (int i = 0; i < 3; i++) {
      out += n[i] * (corners[0][i] - middle[i]);
    }
    return new Facet(corners, smooth, (out > 0 ? n[2] : -n[2]) > 1e-9 * Math.abs(out));
  }

  /** Returns a place as the eye has it: to the right, up, towards the eye. */
  private static double[] seen(double x, double y, double z) {
    double right = z * Math.cos(YAW) - x * Math.sin(YAW);
    double towards = z * Math.sin(YAW) + x * Math.cos(YAW);
    return new double[] {
      right,
      y * Math.cos(PITCH) - towards * Math.sin(PITCH),
      towards * Math.cos(PITCH) + y * Math.sin(PITCH)
    };
  }
}
