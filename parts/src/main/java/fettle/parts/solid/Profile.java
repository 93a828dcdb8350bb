package fettle.parts.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed region of the plane bounded by straight lines and arcs, run anticlockwise.
 *
 * @param pieces pieces of its boundary
 * @param monotone the same, cut so that each only rises or only falls
 */
public record Profile(List<Piece> pieces, List<Piece> monotone) {

  /**
   * A straight line or an arc.
   *
   * @param x0 start [mm]
   * @param y0 start [mm]
   * @param x1 end [mm]
   * @param y1 end [mm]
   * @param cx centre of the arc [mm]
   * @param cy centre of the arc [mm]
   * @param radius radius of the arc; 0 for a straight line [mm]
   * @param sweep angle turned, positive anticlockwise [rad]
   * @param name the feature it belongs to
   */
  public record Piece(
      double x0,
      double y0,
      double x1,
      double y1,
      double cx,
      double cy,
      double radius,
      double sweep,
      String name) {

    boolean isArc() {
      return radius > 0;
    }

    double startAngle() {
      return Math.atan2(y0 - cy, x0 - cx);
    }

    /**
     * Returns a point on it.
     *
     * @param share 0 at the start, 1 at the end [-]
     * @return the two coordinates [mm]
     */
    public double[] at(double share) {
      if (!isArc()) {
        return new double[] {x0 + share * (x1 - x0), y0 + share * (y1 - y0)};
      }
      double a = startAngle() + share * sweep;
      return new double[] {cx + radius * Math.cos(a), cy + radius * Math.sin(a)};
    }

    double length() {
      return isArc() ? radius * Math.abs(sweep) : Math.hypot(x1 - x0, y1 - y0);
    }

    /** Returns pieces that each only rise or only fall. */
    List<Piece> monotone() {
      if (!isArc()) {
        return List.of(this);
      }
      List<Double> cuts = new ArrayList<>(List.of(0.0));
      double a = startAngle();
      for (int k = -5; k <= 5; k++) {
        double share = (Math.PI / 2 + k * Math.PI - a) / sweep;
        if (share > 1e-12 && share < 1 - 1e-12) {
          cuts.add(share);
        }
      }
      cuts.add(1.0);
      cuts.sort(null);
      List<Piece> parts = new ArrayList<>();
      for (int i = 1; i < cuts.size(); i++) {
        double[] p = i == 1 ? new double[] {x0, y0} : at(cuts.get(i - 1));
        double[] q = i == cuts.size() - 1 ? new double[] {x1, y1} : at(cuts.get(i));
        double turn = sweep * (cuts.get(i) - cuts.get(i - 1));
        parts.add(new Piece(p[0], p[1], q[0], q[1], cx, cy, radius, turn, name));
      }
      return parts;
    }

    private double crossing(double y) {
      if (!isArc()) {
        return x0 + (y - y0) / (y1 - y0) * (x1 - x0);
      }
      double dy = y - cy;
      double dx = Math.sqrt(Math.max(0, radius * radius - dy * dy));
      return sweep > 0 == y1 > y0 ? cx + dx : cx - dx;
    }
  }

  /** Drops pieces without length. */
  public Profile {
    pieces = pieces.stream().filter(p -> p.length() > 1e-9).toList();
    if (pieces.size() < 2) {
      throw new IllegalArgumentException("an outline without area");
    }
    if (area(pieces) < 0) {
      List<Piece> turned = new ArrayList<>();
      for (int i = pieces.size() - 1; i >= 0; i--) {
        Piece p = pieces.get(i);
        turned.add(new Piece(p.x1, p.y1, p.x0, p.y0, p.cx, p.cy, p.radius, -p.sweep, p.name));
      }
      pieces = List.copyOf(turned);
    }
    monotone = pieces.stream().flatMap(p -> p.monotone().stream()).toList();
  }

  /** Closes a region by the pieces of its boundary. */
  public Profile(List<Piece> pieces) {
    this(pieces, List.of());
  }

  /**
   * Starts an outline.
   *
   * @param x first coordinate [mm]
   * @param y second coordinate [mm]
   */
  public static Draft start(double x, double y) {
    return new Draft(x, y);
  }

  /** Returns a rectangle. */
  static Profile rectangle(double x0, double y0, double x1, double y1, String name) {
    return start(x0, y0).line(x1, y0, name).line(x1, y1, name).line(x0, y1, name).close(name);
  }

  /** Returns a full circle, in two arcs. */
  static Profile circle(double x, double y, double radius, String name) {
    return start(x + radius, y)
        .bulge(x - radius, y, 1, name)
        .bulge(x + radius, y, 1, name)
        .close(name);
  }

  /**
   * Tells whether a point lies inside.
   *
   * @param x first coordinate [mm]
   * @param y second coordinate [mm]
   */
  public boolean contains(double x, double y) {
    boolean inside = false;
    for (Piece piece : monotone) {
      inside ^= crosses(piece, x, y);
    }
    return inside;
  }

  private static boolean crosses(Piece p, double x, double y) {
    return p.y0 <= y != p.y1 <= y && p.crossing(y) > x;
  }

  /**
   * Returns its area.
   *
   * @return area [mm2]
   */
  public double area() {
    return area(pieces);
  }

  private static double area(List<Piece> pieces) {
    double twice = 0;
    for (Piece p : pieces) {
      twice += p.x0 * p.y1 - p.x1 * p.y0;
      if (p.isArc()) {
        twice += p.radius * p.radius * (p.sweep - Math.sin(p.sweep));
      }
    }
    return twice / 2;
  }

  /**
   * Returns the box around it.
   *
   * @return lowest x, lowest y, highest x, highest y [mm]
   */
  public double[] box() {
    double[] b = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (Piece p : monotone) {
      for (double[] q : new double[][] {{p.x0, p.y0}, {p.x1, p.y1}, extreme(p)}) {
        b[0] = Math.min(b[0], q[0]);
        b[1] = Math.min(b[1], q[1]);
        b[2] = Math.max(b[2], q[0]);
        b[3] = Math.max(b[3], q[1]);
      }
    }
    return b;
  }

  private static double[] extreme(Piece p) {
    if (p.isArc() && p.y0 < p.cy != p.y1 < p.cy) {
      return new double[] {p.at(0.5)[0] >= p.cx ? p.cx + p.radius : p.cx - p.radius, p.cy};
    }
    return new double[] {p.x0, p.y0};
  }

  /** An outline being drawn. */
  public static final class Draft {
    private final List<Piece> pieces = new ArrayList<>();
    private final double x0;
    private final double y0;
    private double x;
    private double y;

    private Draft(double x, double y) {
      this.x0 = x;
      this.y0 = y;
      this.x = x;
      this.y = y;
    }

    /**
     * Draws a straight line.
     *
     * @param toX end [mm]
     * @param toY end [mm]
     * @param name the feature it belongs to
     */
    public Draft line(double toX, double toY, String name) {
      pieces.add(new Piece(x, y, toX, toY, 0, 0, 0, 0, name));
      x = toX;
      y = toY;
      return this;
    }

    /**
     * Draws an arc.
     *
     * @param toX end [mm]
     * @param toY end [mm]
     * @param bulge tangent of a quarter of its angle, positive anticlockwise [-]
     * @param name the feature it belongs to
     */
    public Draft bulge(double toX, double toY, double bulge, String name) {
      double dx = toX - x;
      double dy = toY - y;
      double chord = Math.hypot(dx, dy);
      if (Math.abs(bulge) < 1e-12 || chord < 1e-12) {
        return line(toX, toY, name);
      }
      double sweep = 4 * Math.atan(bulge);
      double radius = chord / 2 / Math.abs(Math.sin(sweep / 2));
      double offset = chord / 2 / Math.tan(sweep / 2);
      double cx = (x + toX) / 2 - dy / chord * offset;
      double cy = (y + toY) / 2 + dx / chord * offset;
      pieces.add(new Piece(x, y, toX, toY, cx, cy, radius, sweep, name));
      x = toX;
      y = toY;
      return this;
    }

    Piece last() {
      return pieces.get(pieces.size() - 1);
    }

    /** Closes the outline with a straight line. */
    public Profile close(String name) {
      line(x0, y0, name);
      return new Profile(pieces);
    }
  }
}
