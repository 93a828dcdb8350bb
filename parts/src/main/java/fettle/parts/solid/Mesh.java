package fettle.parts.solid;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Triangles on the boundary of a solid, closed, seen anticlockwise from outside.
 *
 * @param points the points
 * @param triangles three numbers of points each
 */
public record Mesh(List<Vec> points, List<Triangle> triangles) {

  /**
   * A triangle.
   *
   * @param a first point
   * @param b second point
   * @param c third point
   * @param face number of the face of the solid
   */
  public record Triangle(int a, int b, int c, int face) {}

  /** Keeps its own copies. */
  public Mesh {
    points = List.copyOf(points);
    triangles = List.copyOf(triangles);
  }

  /**
   * Returns triangles on the boundary of a solid.
   *
   * @param solid the solid
   * @param deviation greatest distance of an arc from its chord [mm]
   */
  public static Mesh of(Brep solid, double deviation) {
    if (!(deviation > 0)) {
      throw new IllegalArgumentException(
          "the deviation of a mesh must lie above 0 mm, found " + deviation);
    }
    return new Meshing(solid, deviation).mesh();
  }

  /**
   * Returns the volume inside.
   *
   * @return volume [mm3]
   */
  public double volume() {
    double six = 0;
    for (Triangle t : triangles) {
      six += points.get(t.a).dot(points.get(t.b).cross(points.get(t.c)));
    }
    return six / 6;
  }

  /** Tells whether every side of a triangle is shared by exactly one other, run the other way. */
  public boolean isClosed() {
    Set<Long> sides = new HashSet<>();
    for (Triangle t : triangles) {
      if (!sides.add(key(t.a, t.b)) || !sides.add(key(t.b, t.c)) || !sides.add(key(t.c, t.a))) {
        return false;
      }
    }
    return sides.stream().allMatch(s -> sides.contains(Long.rotateLeft(s, 32)));
  }

  private static long key(int from, int to) {
    return ((long) from << 32) | to;
  }
}
