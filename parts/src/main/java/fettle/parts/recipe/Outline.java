package fettle.parts.recipe;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed outline of straight lines and arcs.
 *
 * @param start where it starts
 * @param pieces pieces in order; the last ends where the first starts
 */
public record Outline(Point start, List<Piece> pieces) {

  /**
   * A point of the outline.
   *
   * @param x first coordinate [mm]
   * @param y second coordinate [mm]
   */
  public record Point(double x, double y) {}

  /**
   * A piece of the outline.
   *
   * @param to where it ends
   * @param bulge tangent of a quarter of the arc's angle, positive when the arc turns
   *     anticlockwise; 0 for a straight line [-]
   */
  public record Piece(Point to, double bulge) {}

  /** Keeps its own copy; refuses an open outline. */
  public Outline {
    pieces = List.copyOf(pieces);
    Point last = pieces.isEmpty() ? new Point(Double.NaN, 0) : pieces.get(pieces.size() - 1).to();
    if (pieces.size() < 2 || !(Math.hypot(last.x() - start.x(), last.y() - start.y()) < 1e-9)) {
      throw new IllegalArgumentException("an outline must end where it starts");
    }
  }

  /**
   * Returns the extent along x and along y, arcs included.
   *
   * @return extent along x, extent along y [mm]
   */
  public double[] extent() {
    double[] box = {start.x(), start.y(), start.x(), start.y()};
    Point from = start;
    for (Piece piece : pieces) {
      for (int i = 0; i <= 64; i++) {
        Point p = on(from, piece, i / 64.0);
        box[0] = Math.min(box[0], p.x());
        box[1] = Math.min(box[1], p.y());
        box[2] = Math.max(box[2], p.x());
        box[3] = Math.max(box[3], p.y());
      }
      from = piece.to();
    }
    return new double[] {box[2] - box[0], box[3] - box[1]};
  }

  private static Point on(Point from, Piece piece, double share) {
    double dx = piece.to().x() - from.x();
    double dy = piece.to().y() - from.y();
    double sweep = 4 * Math.atan(piece.bulge());
    if (Math.abs(sweep) < 1e-12) {
      return new Point(from.x() + share * dx, from.y() + share * dy);
    }
    double off = 0.5 / Math.tan(sweep / 2);
    double cx = from.x() + dx / 2 - dy * off;
    double cy = from.y() + dy / 2 + dx * off;
    double c = Math.cos(share * sweep);
    double s = Math.sin(share * sweep);
    double ax = from.x() - cx;
    double ay = from.y() - cy;
    return new Point(cx + c * ax - s * ay, cy + s * ax + c * ay);
  }

  /** Returns the outline through these corners, closed. */
  public static Outline polygon(List<Point> corners) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 1; i <= corners.size(); i++) {
      pieces.add(new Piece(corners.get(i % corners.size()), 0));
    }
    return new Outline(corners.get(0), pieces);
  }

  /**
   * Returns a rectangle from 0,0.
   *
   * @param length extent along x [mm]
   * @param width extent along y [mm]
   */
  public static Outline rectangle(double length, double width) {
    return polygon(
        List.of(
            new Point(0, 0), new Point(length, 0), new Point(length, width), new Point(0, width)));
  }

  /**
   * Returns a lever: two round ends of different size joined by their common tangents; the first
   * end's centre lies at 0,0.
   *
   * @param distance distance of the centres [mm]
   * @param first radius of the first end [mm]
   * @param second radius of the second end [mm]
   */
  public static Outline lever(double distance, double first, double second) {
    if (!(distance > Math.abs(first - second)) || !(first > 0) || !(second > 0)) {
      throw new IllegalArgumentException(
          "a lever's ends must stand further apart than their radii differ");
    }
    double lean = Math.asin((first - second) / distance);
    double c = Math.cos(lean);
    double s = Math.sin(lean);
    Point a = new Point(first * s, -first * c);
    Point b = new Point(distance + second * s, -second * c);
    Point d = new Point(distance + second * s, second * c);
    Point e = new Point(first * s, first * c);
    return new Outline(
        a,
        List.of(
            new Piece(b, 0),
            new Piece(d, Math.tan((Math.PI - 2 * lean) / 4)),
            new Piece(e, 0),
            new Piece(a, Math.tan((Math.PI + 2 * lean) / 4))));
  }
}
