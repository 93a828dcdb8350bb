package fettle.parts.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A solid by its boundary: faces on exact surfaces, edges on exact curves, vertices.
 *
 * @param vertices the vertices
 * @param edges the edges
 * @param faces the faces
 */
public record Brep(List<Vec> vertices, List<Edge> edges, List<Face> faces) {

  /**
   * An edge.
   *
   * @param curve the curve it lies on
   * @param from parameter at its start [-]
   * @param to parameter at its end, greater [-]
   * @param start vertex at its start; -1 for a ring without a vertex
   * @param end vertex at its end; -1 for a ring without a vertex
   */
  public record Edge(Curve curve, double from, double to, int start, int end) {

    /**
     * Returns a point by its share of the parameter range.
     *
     * @param share 0 at the start, 1 at the end [-]
     */
    public Vec at(double share) {
      return curve.at(from + share * (to - from));
    }

    /**
     * Returns the derivative by the share of the parameter range.
     *
     * @param share 0 at the start, 1 at the end [-]
     */
    public Vec tangent(double share) {
      return curve.tangent(from + share * (to - from)).times(to - from);
    }

    /** Tells whether it is a ring without a vertex. */
    public boolean isRing() {
      return start < 0;
    }

    /**
     * Returns shares from 0 to 1 between which it is smooth and bends little.
     *
     * @return shares in order, first 0, last 1 [-]
     */
    public double[] breaks() {
      if (!(curve instanceof Curve.Traced)) {
        int n = parts();
        double[] shares = new double[n + 1];
        for (int i = 0; i <= n; i++) {
          shares[i] = (double) i / n;
        }
        return shares;
      }
      List<Double> shares = new ArrayList<>(List.of(0.0));
      for (double t = Math.floor(from) + 1; t < to; t++) {
        double share = (t - from) / (to - from);
        if (share > 1e-9 && share < 1 - 1e-9) {
          shares.add(share);
        }
      }
      shares.add(1.0);
      return shares.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Returns how many parts to look at it in. */
    int parts() {
      double share = (to - from) / (curve.to() - curve.from());
      return Math.max(4, (int) Math.ceil(curve.parts() * Math.min(1, share)));
    }
  }

  /**
   * An edge as a face runs along it.
   *
   * @param edge number of the edge
   * @param forward true if it is run from its start to its end
   */
  public record Use(int edge, boolean forward) {}

  /**
   * A loop, run with the face on the left for a viewer outside.
   *
   * @param uses its edges in order
   */
  public record Loop(List<Use> uses) {
    /** Keeps its own copy. */
    public Loop {
      uses = List.copyOf(uses);
    }
  }

  /**
   * A face.
   *
   * @param surface the surface it lies on
   * @param outward true if the surface's normal points out of the material
   * @param loops its loops; if it has an outer one, that is the first
   * @param feature the feature it belongs to
   */
  public record Face(Surface surface, boolean outward, List<Loop> loops, String feature) {
    /** Keeps its own copy. */
    public Face {
      loops = List.copyOf(loops);
    }

    /** Returns the direction out of the material. */
    public Vec normal(Vec p) {
      Vec n = surface.normal(p);
      return outward ? n : n.times(-1);
    }
  }

  /** Keeps its own copies. */
  public Brep {
    vertices = List.copyOf(vertices);
    edges = List.copyOf(edges);
    faces = List.copyOf(faces);
  }

  /** Evaluates the boundary of a body and gives full round faces a seam. */
  public static Brep of(Body body) {
    return Seams.sewn(Boundary.of(body));
  }

  /** Returns the number of loops. */
  public int loops() {
    return faces.stream().mapToInt(f -> f.loops().size()).sum();
  }

  /** Returns the number of connected shells. */
  public int shells() {
    int[] group = new int[faces.size()];
    int[] first = new int[edges.size()];
    Arrays.fill(first, -1);
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    for (int i = 0; i < group.length; i++) {
      for (Loop loop : faces.get(i).loops()) {
        for (Use use : loop.uses()) {
          if (first[use.edge()] < 0) {
            first[use.edge()] = i;
          } else {
            group[root(group, i)] = root(group, first[use.edge()]);
          }
        }
      }
    }
    int count = 0;
    for (int i = 0; i < group.length; i++) {
      count += root(group, i) == i ? 1 : 0;
    }
    return count;
  }

  private static int root(int[] group, int i) {
    int r = i;
    while (group[r] != r) {
      r = group[r];
    }
    return r;
  }

  /**
   * Returns the genus, the number of through holes, from the Euler formula V - E + 2F - L - 2(S -
   * G) = 0 (ISO 10303-42).
   */
  public int genus() {
    int v = vertices.size();
    return shells() - (v - edges.size() + 2 * faces.size() - loops()) / 2;
  }

  /** Returns the two faces at each edge; a seam has the same face twice. */
  public int[][] facesAtEdges() {
    int[][] at = new int[edges.size()][];
    for (int i = 0; i < at.length; i++) {
      at[i] = new int[] {-1, -1};
    }
    for (int i = 0; i < faces.size(); i++) {
      for (Loop loop : faces.get(i).loops()) {
        for (Use use : loop.uses()) {
          int[] pair = at[use.edge()];
          pair[pair[0] < 0 ? 0 : 1] = i;
        }
      }
    }
    return at;
  }
}
