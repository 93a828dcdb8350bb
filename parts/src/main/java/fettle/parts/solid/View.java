package fettle.parts.solid;

import java.util.List;

/**
 * What is seen of a solid from one side, in millimetres of the part: first coordinate to the right,
 * second up.
 *
 * @param looking from where
 * @param strokes lines, visible ones first
 * @param cuts regions of material in the cutting plane; empty if nothing is cut
 */
public record View(Looking looking, List<Stroke> strokes, List<Region> cuts) {

  /** What a line is. */
  public enum Kind {
    /** A visible edge or outline. */
    VISIBLE,
    /** A visible edge between faces that run smoothly into each other. */
    SMOOTH,
    /** A hidden edge or outline. */
    HIDDEN
  }

  /** A line on the sheet. */
  public sealed interface Shape {}

  /**
   * A straight line.
   *
   * @param x0 start [mm]
   * @param y0 start [mm]
   * @param x1 end [mm]
   * @param y1 end [mm]
   */
  public record Straight(double x0, double y0, double x1, double y1) implements Shape {}

  /**
   * An arc or a circle.
   *
   * @param x centre [mm]
   * @param y centre [mm]
   * @param radius radius [mm]
   * @param start angle of its start from the right [rad]
   * @param sweep angle turned, positive anticlockwise [rad]
   */
  public record Arc(double x, double y, double radius, double start, double sweep)
      implements Shape {}

  /**
   * Any other line, as points.
   *
   * @param points pairs of coordinates in order
   */
  public record Path(List<Point> points) implements Shape {
    /** Keeps its own copy. */
    public Path {
      points = List.copyOf(points);
    }
  }

  /**
   * A point on the sheet.
   *
   * @param x to the right [mm]
   * @param y up [mm]
   */
  public record Point(double x, double y) {}

  /**
   * A line of the view.
   *
   * @param kind what it is
   * @param shape its shape
   * @param feature the feature it belongs to
   */
  public record Stroke(Kind kind, Shape shape, String feature) {}

  /**
   * Material in the cutting plane.
   *
   * @param rims closed rims, the outer one first
   */
  public record Region(List<List<Shape>> rims) {
    /** Keeps its own copy. */
    public Region {
      rims = rims.stream().map(List::copyOf).toList();
    }
  }

  /** Keeps its own copies. */
  public View {
    strokes = List.copyOf(strokes);
    cuts = List.copyOf(cuts);
  }

  /** Returns a view of a solid from outside. */
  public static View of(Body body, Brep solid, Looking looking) {
    return new Viewing(body, solid, looking).view(null);
  }

  /**
   * Returns a section: the part nearer to the viewer than a plane is taken away.
   *
   * @param body the body
   * @param looking from where; the plane lies across this direction
   * @param through a point of the plane
   */
  public static View section(Body body, Looking looking, Vec through) {
    Vec up = looking.up();
    Frame frame = new Frame(through, looking.right(), up, looking.right().cross(up));
    Surface.Plane plane = new Surface.Plane(frame);
    Body rest = body.cutBy(plane, "section");
    return new Viewing(rest, Brep.of(rest), looking).view(plane);
  }
}
