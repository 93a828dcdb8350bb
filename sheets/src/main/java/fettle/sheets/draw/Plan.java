package fettle.sheets.draw;

import fettle.parts.solid.Marks;
import fettle.parts.solid.Vec;
import fettle.parts.solid.View;
import fettle.sheets.dimension.Attached;
import fettle.sheets.dimension.Callout;
import fettle.sheets.dimension.Linear;
import fettle.sheets.dimension.Rack;
import fettle.sheets.dimension.Side;
import fettle.sheets.dimension.Stairs;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** One view with its dimensions and notes, in sheet millimetres from the origin of the part. */
final class Plan {

  private static final double AXIS_BEYOND = 3;
  private static final int ROUNDS = 24;
  private static final int TIERS = 24;

  final String name;
  final double k;
  private final List<Mark> ink = new ArrayList<>();
  private final List<Linear> linear = new ArrayList<>();
  private final List<Callout> notes = new ArrayList<>();
  private final List<Box> avoid = new ArrayList<>();
  private final List<String> crowded = new ArrayList<>();
  private Box outline = Box.NOTHING;
  private Box drawn = Box.NOTHING;
  private double extra;
  private List<String> open = List.of();
  private @Nullable String title;
  private List<Mark> done = List.of();
  private Box bounds = Box.NOTHING;

  Plan(String name, double factor) {
    this.name = name;
    this.k = factor;
  }

  /** Draws the lines of a view; hidden lines only where they are wanted. */
  void view(View v, Hidden hidden) {
    for (View.Stroke s : v.strokes()) {
      boolean unseen = s.kind() == View.Kind.HIDDEN && hidden == Hidden.LEFT_OUT;
      if (unseen || s.kind() == View.Kind.SMOOTH) {
        continue;
      }
      Pen pen =
          switch (s.kind()) {
            case VISIBLE -> Pen.OUTLINE;
            case SMOOTH -> Pen.NARROW;
            case HIDDEN -> Pen.HIDDEN;
          };
      Mark m = shape("view:" + name, pen, s.shape());
      ink.add(m);
      outline = outline.with(Inked.box(m));
    }
    if (!v.cuts().isEmpty()) {
      List<List<Point>> rims = new ArrayList<>();
      for (View.Region r : v.cuts()) {
        for (List<View.Shape> rim : r.rims()) {
          rims.add(flat(rim));
        }
      }
      ink.addAll(0, Hatching.of("hatch:" + name, rims, Math.PI / 4));
    }
    drawn = outline;
  }

  /**
   * Cuts a part of the view open.
   *
   * @param v the section
   * @param rim the part of the view that is cut open, in sheet millimetres
   * @param limit the freehand line that bounds it, drawn where it runs over the part
   */
  void local(View v, List<Point> rim, List<Point> limit) {
    Clip open = new Clip(rim);
    String g = "view:" + name;
    List<Mark> kept = new ArrayList<>();
    for (Mark m : ink) {
      kept.addAll(m.group().equals(g) ? open.keep(m, Clip.Side.OUTSIDE) : List.of(m));
    }
    ink.clear();
    List<List<Point>> cuts = new ArrayList<>();
    for (View.Region r : v.cuts()) {
      r.rims().forEach(shapes -> cuts.add(flat(shapes)));
    }
    for (Mark m : Hatching.of("hatch:" + name, cuts, Math.PI / 4)) {
      ink.addAll(open.keep(m, Clip.Side.INSIDE));
    }
    for (View.Stroke s : v.strokes()) {
      if (s.kind() == View.Kind.VISIBLE) {
        ink.addAll(open.keep(shape(g, Pen.OUTLINE, s.shape()), Clip.Side.INSIDE));
      }
    }
    ink.addAll(kept);
    Mark line = new Mark.Stroke("limit:" + name, Pen.NARROW, limit);
    for (List<Point> cut : cuts) {
      ink.addAll(new Clip(cut).keep(line, Clip.Side.INSIDE));
    }
  }

  /** Whether hidden lines are drawn. */
  enum Hidden {
    DRAWN,
    LEFT_OUT
  }

  private Mark shape(String g, Pen pen, View.Shape s) {
    if (s instanceof View.Straight l) {
      return Mark.Stroke.line(g, pen, l.x0() * k, l.y0() * k, l.x1() * k, l.y1() * k);
    } else if (s instanceof View.Arc a) {
      return new Mark.Arc(g, pen, a.x() * k, a.y() * k, a.radius() * k, a.start(), a.sweep());
    }
    return new Mark.Stroke(
        g,
        pen,
        ((View.Path) s).points().stream().map(p -> new Point(p.x() * k, p.y() * k)).toList());
  }

  private List<Point> flat(List<View.Shape> rim) {
    List<Point> out = new ArrayList<>();
    for (View.Shape s : rim) {
      out.addAll(Inked.flat(shape("", Pen.HATCH, s)));
    }
    return out;
  }

  /** Names holes whose thread goes right through, so that no end of it is drawn. */
  void through(List<String> features) {
    open = List.copyOf(features);
  }

  /** Draws axes and threads as they are seen from the given side. */
  void marks(Marks m, Function<Vec, Point> seen, Vec along, Hidden hidden) {
    for (Marks.Axis a : m.axes()) {
      Point p = seen.apply(a.from());
      Point q = seen.apply(a.to());
      if (p.to(q) * k < 0.01) {
        cross(p.x() * k, p.y() * k, a.radius() * k);
      } else if (p.to(q) * k > 1) {
        centre(p, q);
      }
    }
    for (Marks.Threaded t : m.threads()) {
      thread(t, seen, along, hidden);
    }
  }

  /** Draws the axis cross of a circle. */
  void cross(double x, double y, double r) {
    double reach = r + AXIS_BEYOND;
    axis(x - reach, y, x + reach, y);
    axis(x, y - reach, x, y + reach);
  }

  private void centre(Point p, Point q) {
    double l = p.to(q) * k;
    double dx = (q.x() - p.x()) * k / l * AXIS_BEYOND;
    double dy = (q.y() - p.y()) * k / l * AXIS_BEYOND;
    axis(p.x() * k - dx, p.y() * k - dy, q.x() * k + dx, q.y() * k + dy);
  }

  private void axis(double x0, double y0, double x1, double y1) {
    Mark m = Mark.Stroke.line("axis:" + name, Pen.CENTRE, x0, y0, x1, y1);
    Box b = Inked.box(m);
    boolean there =
        ink.stream()
            .anyMatch(
                o ->
                    o instanceof Mark.Stroke s
                        && s.pen() == Pen.CENTRE
                        && Inked.box(o).grown(1e-6).holds(b));
    if (!there) {
      ink.removeIf(
          o ->
              o instanceof Mark.Stroke s
                  && s.pen() == Pen.CENTRE
                  && b.grown(1e-6).holds(Inked.box(o)));
      ink.add(m);
      drawn = drawn.with(b);
    }
  }

  private void thread(Marks.Threaded t, Function<Vec, Point> seen, Vec along, Hidden hidden) {
    boolean internal = t.inside() == Marks.Inside.INTERNAL;
    double crest = t.thread().major() / 2 * k;
    double root = (internal ? t.thread().rootInside() : t.thread().rootOutside()) / 2 * k;
    double narrow = internal ? Math.max(crest, root + 1) : Math.min(root, crest - 1);
    Point p = seen.apply(t.from());
    Point q = seen.apply(t.to());
    Vec way = t.to().minus(t.from());
    String g = "thread:" + name;
    if (p.to(q) * k < 0.01) {
      boolean facing = way.dot(along) > 0;
      if (narrow > 0 && facing == internal) {
        ink.add(
            new Mark.Arc(
                g,
                Pen.NARROW,
                p.x() * k,
                p.y() * k,
                narrow,
                Math.toRadians(100),
                Math.toRadians(265)));
      }
      return;
    }
    double l = p.to(q);
    double nx = -(q.y() - p.y()) / l;
    double ny = (q.x() - p.x()) / l;
    Pen pen = internal && hidden == Hidden.DRAWN ? Pen.HIDDEN : Pen.NARROW;
    for (int sign : new int[] {1, -1}) {
      if (narrow > 0) {
        ink.add(
            Mark.Stroke.line(
                g,
                pen,
                p.x() * k + sign * nx * narrow,
                p.y() * k + sign * ny * narrow,
                q.x() * k + sign * nx * narrow,
                q.y() * k + sign * ny * narrow));
      }
    }
    if (open.contains(t.feature())) {
      return;
    }
    Pen end = internal && hidden == Hidden.DRAWN ? Pen.HIDDEN : Pen.OUTLINE;
    double wide = Math.max(crest, narrow);
    ink.add(
        Mark.Stroke.line(
            g,
            end,
            q.x() * k - nx * wide,
            q.y() * k - ny * wide,
            q.x() * k + nx * wide,
            q.y() * k + ny * wide));
  }

  /** Takes hatching away inside a box. */
  void unhatched(Box b) {
    List<Mark> kept = new ArrayList<>();
    for (Mark m : ink) {
      if (m instanceof Mark.Stroke s && s.pen() == Pen.HATCH && Inked.meets(s, b)) {
        Point p = s.points().get(0);
        Point q = s.points().get(1);
        double[] range = b.inside(p, q);
        rest(s, p, q, 0, range[0], kept);
        rest(s, p, q, range[1], 1, kept);
      } else {
        kept.add(m);
      }
    }
    ink.clear();
    ink.addAll(kept);
  }

  private static void rest(
      Mark.Stroke s, Point p, Point q, double from, double to, List<Mark> kept) {
    if ((to - from) * p.to(q) > 0.3) {
      double dx = q.x() - p.x();
      double dy = q.y() - p.y();
      kept.add(
          Mark.Stroke.line(
              s.group(),
              Pen.HATCH,
              p.x() + from * dx,
              p.y() + from * dy,
              p.x() + to * dx,
              p.y() + to * dy));
    }
  }

  /** Draws a rectangle in millimetres of the part as the outline of the view. */
  void rectangle(double x0, double y0, double x1, double y1) {
    Box b = new Box(x0 * k, y0 * k, x1 * k, y1 * k);
    ink.add(Mark.Stroke.box("view:" + name, Pen.OUTLINE, b));
    outline = outline.with(b);
    drawn = drawn.with(b);
  }

  /** Writes a label beside a circle, where it stands clear of all lines drawn so far. */
  void label(Point centre, double radius, String text) {
    double h = 3.5;
    double w = Lettering.width(text, h);
    double out = radius * k * Math.sqrt(0.5) + 1;
    for (double more = 0; more < 8; more += 1) {
      for (int[] way : new int[][] {{1, 1}, {-1, 1}, {1, -1}, {-1, -1}}) {
        double x = centre.x() * k + way[0] * (out + more) - (way[0] < 0 ? w : 0);
        double y = centre.y() * k + way[1] * (out + more) - (way[1] < 0 ? h : 0);
        Mark.Text t = new Mark.Text("label:" + name, text, x, y, h, Mark.Reading.FROM_BELOW);
        Box b = t.box().grown(0.6);
        if (ink.stream().noneMatch(m -> Inked.meets(m, b))) {
          add(t);
          avoid.add(t.box());
          return;
        }
      }
    }
    crowded.add("no room for label " + text);
  }

  /** Adds marks in sheet millimetres. */
  void add(Mark m) {
    ink.add(m);
    drawn = drawn.with(Inked.box(m));
  }

  /** Keeps leaders away from a box and dimensions below it. */
  void keepClear(Box b) {
    avoid.add(b);
    extra = Math.max(extra, Math.max(b.y1() - outline.y1(), outline.y0() - b.y0()) + 1);
    drawn = drawn.with(b);
  }

  /** Tells whether no extension line of a dimension below stands in a stretch of the view. */
  boolean clearBelow(double low, double high) {
    return linear.stream()
        .filter(d -> d.side() == Side.BELOW)
        .noneMatch(d -> d.low() > low && d.low() < high || (d.high() > low && d.high() < high));
  }

  /** Puts a heading over the view. */
  void titled(String text) {
    title = text;
  }

  /** Adds a dimension, places in millimetres of the part. */
  void dimension(Side side, double a, double b, double fromA, double fromB, String text) {
    dimension(side, a, b, fromA, fromB, text, Attached.NOTHING);
  }

  /** Adds a dimension with what is asked of the axis or middle plane it measures. */
  void dimension(
      Side side, double a, double b, double fromA, double fromB, String text, Attached attached) {
    boolean up = a <= b;
    linear.add(
        new Linear(
            side,
            (up ? a : b) * k,
            (up ? b : a) * k,
            (up ? fromA : fromB) * k,
            (up ? fromB : fromA) * k,
            text,
            Math.abs(b - a),
            attached));
  }

  /**
   * Adds what is asked of a face that is seen as a line; it stands on an extension line of it.
   *
   * @param outward +1 if the face looks to higher places along the side, -1 if to lower
   */
  void face(Side side, double at, double from, int outward, Attached attached) {
    double u = at * k;
    linear.add(new Linear(side, u, u, from * k, from * k, "", outward, attached));
  }

  /** Adds a note; anchors in millimetres of the part. */
  void note(List<Point> anchors, double radius, List<String> lines) {
    note(anchors, radius, lines, Attached.NOTHING);
  }

  /** Adds a note with tolerance frames; its lines may be empty. */
  void note(List<Point> anchors, double radius, List<String> lines, Attached attached) {
    notes.add(
        new Callout(
            anchors.stream().map(p -> new Point(p.x() * k, p.y() * k)).toList(),
            radius * k,
            lines,
            attached));
  }

  Box outline() {
    return outline;
  }

  Box bounds() {
    return bounds;
  }

  List<Mark> done() {
    return done;
  }

  /** Places everything; returns what found no room, in words. */
  List<String> compose(Function<Linear, @Nullable Callout> instead) {
    List<Linear> sides = new ArrayList<>(linear);
    List<Callout> all = new ArrayList<>(notes);
    Set<Linear> turned = new HashSet<>();
    boolean framed = linear.stream().anyMatch(d -> !d.attached().isEmpty());
    for (int round = 0; round < ROUNDS; round++) {
      Stairs stairs = new Stairs(name, all, outline, avoid, Math.max(7, extra + 2));
      if (!stairs.failed().isEmpty()) {
        return List.of("no room for note " + stairs.failed().get(0).lines());
      }
      List<Linear> homeless = new ArrayList<>();
      List<Mark> racks = new ArrayList<>();
      for (Side side : Side.values()) {
        List<Linear> own = sides.stream().filter(d -> d.side() == side).toList();
        Rack rack = new Rack(side, d -> instead.apply(d) != null, d -> way(d, turned));
        List<Mark> below = List.copyOf(racks);
        List<Mark> notes = stairs.marks();
        homeless.addAll(
            rack.place(
                own,
                TIERS,
                base(side),
                m -> framed && side != Side.BELOW && crosses(m, notes, below)));
        for (Rack.Drawn d : rack.drawn(name, base(side))) {
          racks.addAll(d.marks());
          if (side != Side.BELOW && homeless.isEmpty()) {
            if (crosses(d.marks(), notes, framed ? below : List.of())) {
              homeless.add(d.dimension());
            }
          }
        }
      }
      if (!crowded.isEmpty()) {
        return crowded;
      }
      if (homeless.isEmpty()) {
        finish(stairs.marks(), racks);
        return List.of();
      }
      Linear worst = homeless.get(0);
      if (worst.attached().isEmpty() || !turned.add(worst)) {
        Callout c = instead.apply(worst);
        sides.remove(worst);
        if (c == null) {
          return List.of("no room for dimension " + worst.text());
        }
        all.add(c);
      }
    }
    return List.of("no room for all dimensions of view " + name);
  }

  private double base(Side side) {
    return switch (side) {
      case BELOW -> outline.y0() - extra;
      case LEFT -> outline.x0();
      case RIGHT -> outline.x1();
    };
  }

  /** What is asked of a face stands outside it, of an axis below the view unless turned. */
  private int way(Linear d, Set<Linear> turned) {
    boolean high = d.real() > 0 && d.low() == d.high();
    return high == turned.contains(d) ? -1 : 1;
  }

  /** Tells whether lines or texts of a dimension meet a note, or what stands below the view. */
  private static boolean crosses(List<Mark> dimension, List<Mark> notes, List<Mark> below) {
    for (Mark m : dimension) {
      boolean line = m.group().endsWith(":line") || m.group().endsWith(":frame");
      if (line || m instanceof Mark.Text) {
        Box b = Inked.box(m).grown(0.8);
        if (notes.stream().anyMatch(n -> Inked.meets(n, b))
            || below.stream().anyMatch(n -> Inked.meets(n, b))) {
          return true;
        }
      }
    }
    return false;
  }

  private void finish(List<Mark> stairs, List<Mark> racks) {
    List<Mark> all = new ArrayList<>(ink);
    all.addAll(racks);
    all.addAll(stairs);
    Box b = drawn;
    for (Mark m : all) {
      b = b.with(Inked.box(m));
    }
    if (title != null) {
      double w = Lettering.width(title, 5);
      double x = (outline.x0() + outline.x1()) / 2 - w / 2;
      Mark.Text t =
          new Mark.Text("title:" + name, title, x, b.y1() + 4, 5, Mark.Reading.FROM_BELOW);
      all.add(t);
      b = b.with(t.box());
    }
    done = all;
    bounds = b;
  }
}
