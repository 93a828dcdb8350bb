package fettle.sheets.draw;

import fettle.parts.recipe.Cut;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Held;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Outline;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Size;
import fettle.parts.solid.Looking;
import fettle.parts.solid.Vec;
import fettle.sheets.dimension.Attached;
import fettle.sheets.dimension.Scheme;
import fettle.sheets.dimension.Side;
import fettle.sheets.dimension.Values;
import fettle.sheets.dimension.Wanted;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Draws a block or plate: its views with what stands on each side. */
final class PrismaticDraught {

  private static final String[] NAMES = {"x", "y", "z"};

  private final Prismatic part;
  private final PrismaticViews views;

  PrismaticDraught(Prismatic part) {
    this.part = part;
    this.views = new PrismaticViews(part);
  }

  Draft at(double factor) {
    return new Drawing(factor).draft();
  }

  /** One drawing at one scale. */
  private final class Drawing {
    private final double k;
    private final Scheme scheme = new Scheme();
    private final Map<Looking, Plan> plans;
    private final Map<String, Grouped> grouped = new LinkedHashMap<>();
    private final AskedGeometry asked = new AskedGeometry(part, scheme);
    private final HoleTables tables = new HoleTables(part, scheme);

    private record Grouped(Looking looking, List<String> lines, List<Point> anchors) {}

    Drawing(double factor) {
      this.k = factor;
      this.plans = views.plans(factor);
    }

    Draft draft() {
      Wanted.of(part).forEach(scheme::required);
      overall();
      part.operations().forEach(this::operation);
      faces();
      grouped
          .values()
          .forEach(
              g -> {
                List<String> lines = new ArrayList<>(g.lines);
                if (g.anchors.size() > 1) {
                  lines.set(0, g.anchors.size() + "× " + lines.get(0));
                }
                plan(g.looking).note(g.anchors, 0, lines);
              });
      cuttingPlane();
      List<Draft.Placed> placed = new ArrayList<>();
      List<String> faults = new ArrayList<>();
      plans.forEach(
          (l, p) -> {
            faults.addAll(p.compose(d -> null));
            placed.add(new Draft.Placed(p, PrismaticViews.where(l)));
          });
      placed.sort(Comparator.comparing(Draft.Placed::where));
      return new Draft(placed, tables.tables(), scheme, faults);
    }

    private void cuttingPlane() {
      Cut cut = views.cut();
      if (cut != null) {
        Looking l = PrismaticViews.looking(cut.carrier());
        Vec seen = PrismaticViews.looking(cut.seen()).along();
        double sign = component(l.right(), cut.normal());
        Plan p = plan(l);
        new CuttingPlane(p, "A", sign * cut.at() * k, (int) Math.signum(seen.dot(l.right())))
            .draw(p::clearBelow);
      }
    }

    private Plan plan(Looking l) {
      Plan p = plans.get(l);
      if (p == null) {
        throw new IllegalStateException("view " + l + " is not drawn");
      }
      return p;
    }

    private Vec onFace(Face f, double u, double v) {
      double[] c = new double[3];
      c[f.u()] = u;
      c[f.v()] = v;
      c[f.axis()] = f.sign() > 0 ? part.extent(f.axis()) : 0;
      return new Vec(c[0], c[1], c[2]);
    }

    private void overall() {
      if (part.isBlock()) {
        size(Looking.FRONT, 0, part.length(), Side.BELOW);
        Looking l = views.width();
        boolean level = Math.abs(component(l.right(), 1)) > 0.5;
        size(l, 1, part.width(), level ? Side.BELOW : Side.LEFT);
      } else {
        outline();
      }
      size(Looking.FRONT, 2, part.height(), Side.RIGHT);
    }

    private void size(Looking l, int axis, Size s, Side side) {
      scheme.place(NAMES[axis], 0);
      scheme.place(NAMES[axis], s.nominal());
      span(l, NAMES[axis], axis, 0, s.nominal(), Values.size("", s), side);
    }

    /** Puts a dimension along an axis of the part beside a view if the books say it is due. */
    private void span(
        Looking l, String books, int axis, double a, double b, String text, Side side) {
      span(l, books, axis, a, b, text, side, Attached.NOTHING);
    }

    private void span(
        Looking l,
        String books,
        int axis,
        double a,
        double b,
        String text,
        Side side,
        Attached attached) {
      Plan p = plan(l);
      double sign = sign(l, axis, side);
      double edge = edge(p, side);
      if (Math.abs(a - b) < 1e-6 || !scheme.join(books, a, b)) {
        if (!attached.isEmpty()) {
          p.face(side, sign * b, edge, 1, attached);
        }
        return;
      }
      p.dimension(side, sign * a, sign * b, edge, edge, text, attached);
    }

    private static double sign(Looking l, int axis, Side side) {
      return side == Side.BELOW ? component(l.right(), axis) : component(l.up(), axis);
    }

    private double edge(Plan p, Side side) {
      return switch (side) {
        case BELOW -> p.outline().y0() / k;
        case LEFT -> p.outline().x0() / k;
        case RIGHT -> p.outline().x1() / k;
      };
    }

    /** What is asked of the faces of the block, each in a view in which it is seen as a line. */
    private void faces() {
      for (Held face : asked.faces()) {
        Attached attached = asked.surface(face.name());
        if (!attached.isEmpty()) {
          face(face, attached);
        }
      }
    }

    private void face(Held face, Attached attached) {
      for (Looking l : plans.keySet()) {
        if (Math.abs(component(l.right(), face.axis())) > 0.5) {
          onSide(l, face, Side.BELOW, attached);
          return;
        }
      }
      Looking l = face.axis() == 1 ? views.width() : Looking.FRONT;
      if (component(l.up(), face.axis()) * face.at() > 1e-9) {
        List<Point> along = new ArrayList<>();
        for (double share : new double[] {0.8, 0.2, 0.9, 0.1, 0.65, 0.35}) {
          along.add(new Point(share * part.extent(0), component(l.up(), face.axis()) * face.at()));
        }
        plan(l).note(along, 0, List.of(), attached);
      } else {
        onSide(l, face, Side.RIGHT, attached);
      }
    }

    private void onSide(Looking l, Held face, Side side, Attached attached) {
      Plan p = plan(l);
      double sign = sign(l, face.axis(), side);
      int outward = (int) Math.signum(sign * face.outward());
      p.face(side, sign * face.at(), edge(p, side), outward, attached);
    }

    private static double component(Vec v, int axis) {
      return axis == 0 ? v.x() : axis == 1 ? v.y() : v.z();
    }

    private void outline() {
      Outline.Point at = part.outline().start();
      List<Outline.Piece> pieces = part.outline().pieces();
      double lowX = Double.POSITIVE_INFINITY;
      double lowY = Double.POSITIVE_INFINITY;
      List<double[]> nodes = new ArrayList<>();
      for (int i = 0; i < pieces.size(); i++) {
        Outline.Piece piece = pieces.get(i);
        Outline.Piece next = pieces.get((i + 1) % pieces.size());
        if (Math.abs(piece.bulge()) > 1e-9) {
          double[] c = centre(at, piece);
          nodes.add(c);
          Point on =
              new Point(
                  (at.x() + piece.to().x()) / 2 + (at.y() - piece.to().y()) / 2 * -piece.bulge(),
                  (at.y() + piece.to().y()) / 2 + (at.x() - piece.to().x()) / 2 * piece.bulge());
          note(Looking.TOP, List.of("R" + Values.number(c[2])), on);
        } else if (Math.abs(next.bulge()) < 1e-9) {
          nodes.add(new double[] {piece.to().x(), piece.to().y()});
        }
        at = piece.to();
      }
      for (double[] n : nodes) {
        lowX = Math.min(lowX, n[0]);
        lowY = Math.min(lowY, n[1]);
        scheme.place("x on TOP", n[0]);
        scheme.place("y on TOP", n[1]);
      }
      for (double[] n : nodes) {
        span(Looking.TOP, "x on TOP", 0, lowX, n[0], Values.number(n[0] - lowX), Side.BELOW);
        span(Looking.TOP, "y on TOP", 1, lowY, n[1], Values.number(n[1] - lowY), Side.LEFT);
      }
    }

    private static double[] centre(Outline.Point a, Outline.Piece piece) {
      Outline.Point b = piece.to();
      double chord = Math.hypot(b.x() - a.x(), b.y() - a.y());
      double g = piece.bulge();
      double r = chord * (1 + g * g) / (4 * Math.abs(g));
      double h = (1 - g * g) / (4 * g);
      return new double[] {
        (a.x() + b.x()) / 2 - (b.y() - a.y()) * h, (a.y() + b.y()) / 2 + (b.x() - a.x()) * h, r
      };
    }

    private void note(Looking l, List<String> lines, Point at) {
      grouped
          .computeIfAbsent(l + " " + lines, key -> new Grouped(l, lines, new ArrayList<>()))
          .anchors
          .add(at);
    }

    // ---- places on a face

    private void locate(Face f, int axis, double at) {
      String books = NAMES[axis] + " on " + f;
      scheme.place(books, 0);
      scheme.place(books, at);
      put(f, axis, 0, at, placed(f, axis, at, Values.number(Math.abs(at))), Attached.NOTHING);
    }

    /** A place that a position tolerance holds is theoretically exact. */
    private String placed(Face f, int axis, double at, String text) {
      boolean exact =
          part.operations().stream()
              .filter(o -> o.face() == f && asked.isPlaced(o.name()))
              .filter(
                  o -> o instanceof Prismatic.Holes h && !(h.pattern() instanceof Pattern.Circle))
              .flatMap(o -> ((Prismatic.Holes) o).pattern().places().stream())
              .anyMatch(p -> Math.abs((axis == f.u() ? p.u() : p.v()) - at) < 1e-6);
      return exact ? Values.exact(text) : text;
    }

    private void put(Face f, int axis, double a, double b, String text, Attached attached) {
      Looking l = PrismaticViews.looking(f);
      boolean across = Math.abs(component(l.right(), axis)) > 0.5;
      Side side = across ? Side.BELOW : Side.LEFT;
      span(l, NAMES[axis] + " on " + f, axis, a, b, text, side, attached);
    }

    /** A width between two planes: the width itself, then one plane from the datum. */
    private void width(Face f, int axis, double middle, Size size) {
      width(f, axis, middle, size, Attached.NOTHING);
    }

    private void width(Face f, int axis, double middle, Size size, Attached attached) {
      double low = Math.max(0, middle - size.half());
      double high = Math.min(part.extent(axis), middle + size.half());
      boolean whole = high - low > size.nominal() - 1e-6;
      scheme.place(NAMES[axis] + " on " + f, low);
      scheme.place(NAMES[axis] + " on " + f, high);
      scheme.place(NAMES[axis] + " on " + f, 0);
      String text = whole ? Values.size("", size) : Values.number(high - low);
      put(f, axis, low, high, text, attached);
      locate(f, axis, low);
    }

    private void operation(Prismatic.Operation o) {
      Face f = o.face();
      if (o instanceof Prismatic.Holes h) {
        holes(h);
      } else if (o instanceof Prismatic.Pocket p) {
        width(f, f.u(), p.u(), p.sizeU());
        width(f, f.v(), p.v(), p.sizeV());
        scheme.printed(p.name() + " corner");
        String depth = depth(p.name(), p.depth());
        String corner = p.corner() > 0 ? "corners R" + Values.number(p.corner()) : "corners sharp";
        Vec at = onFace(f, p.u(), p.v() + p.sizeV().half());
        leader(f, List.of(corner + depth), at);
      } else if (o instanceof Prismatic.Slot s) {
        slot(s);
      } else if (o instanceof Prismatic.Channel c) {
        across(f, c.along(), c.at(), c.width(), c.name());
        scheme.printed(c.name() + " depth");
        leader(
            f,
            List.of("channel ↧" + Values.size("", c.depth())),
            edge(f, c.along(), c.at(), c.width()));
      } else if (o instanceof Prismatic.TSlot t) {
        across(f, t.along(), t.at(), t.throat(), t.name());
        scheme.printed(t.name() + " throat depth");
        scheme.printed(t.name() + " head");
        scheme.printed(t.name() + " head height");
        leader(
            f,
            List.of(
                "T-slot, throat ↧" + Values.number(t.throatDepth()),
                "head " + Values.number(t.head()) + " × " + Values.number(t.headHeight())),
            edge(f, t.along(), t.at(), t.throat()));
      } else if (o instanceof Prismatic.Dovetail d) {
        across(f, d.along(), d.at(), d.wide(), d.name());
        scheme.printed(d.name() + " depth");
        scheme.printed(d.name() + " flank");
        boolean slot = d.kind() == Prismatic.DovetailKind.SLOT;
        leader(
            f,
            List.of(
                "dovetail "
                    + Values.degrees(d.flank())
                    + (slot ? " ↧" : " height ")
                    + Values.number(d.depth())),
            edge(f, d.along(), d.at(), d.wide()));
      } else if (o instanceof Prismatic.Boss b) {
        locate(f, f.u(), b.u());
        locate(f, f.v(), b.v());
        scheme.printed(b.name() + " diameter");
        scheme.printed(b.name() + " height");
        plan(PrismaticViews.looking(f))
            .note(
                List.of(PrismaticViews.seen(onFace(f, b.u(), b.v()), PrismaticViews.looking(f))),
                b.diameter().half(),
                List.of(Values.size("⌀", b.diameter()) + " height " + Values.number(b.height())),
                asked.all(b.name()));
      } else if (o instanceof Prismatic.EdgeBreak e) {
        edgeBreak(e);
      }
    }

    private String depth(String name, double depth) {
      if (Double.isInfinite(depth)) {
        return ", through";
      }
      scheme.printed(name + " depth");
      return " ↧" + Values.number(depth);
    }

    private void leader(Face f, List<String> lines, Vec at) {
      Looking l = PrismaticViews.looking(f);
      plan(l).note(List.of(PrismaticViews.seen(at, l)), 0, lines);
    }

    private void across(Face f, Prismatic.Along along, double at, Size width, String name) {
      width(f, along == Prismatic.Along.U ? f.v() : f.u(), at, width, asked.all(name));
    }

    private Vec edge(Face f, Prismatic.Along along, double at, Size width) {
      double u = part.extent(f.u());
      double v = part.extent(f.v());
      return along == Prismatic.Along.U
          ? onFace(f, u * 0.7, Math.min(v, at + width.half()))
          : onFace(f, Math.min(u, at + width.half()), v * 0.7);
    }

    private void slot(Prismatic.Slot s) {
      Face f = s.face();
      for (Pattern.At p : List.of(s.from(), s.to())) {
        locate(f, f.u(), p.u());
        locate(f, f.v(), p.v());
      }
      scheme.printed(s.name() + " width");
      double du = s.to().u() - s.from().u();
      double dv = s.to().v() - s.from().v();
      double l = Math.hypot(du, dv);
      double r = s.width().half();
      double nu = l < 1e-9 ? 0 : -dv / l * r;
      double nv = l < 1e-9 ? r : du / l * r;
      leader(
          f,
          List.of("slot " + Values.size("", s.width()) + depth(s.name(), s.depth())),
          onFace(f, (s.from().u() + s.to().u()) / 2 + nu, (s.from().v() + s.to().v()) / 2 + nv));
      for (Pattern.At p : List.of(s.from(), s.to())) {
        Point c = PrismaticViews.seen(onFace(f, p.u(), p.v()), PrismaticViews.looking(f));
        plan(PrismaticViews.looking(f)).cross(c.x() * k, c.y() * k, r * k);
      }
    }

    private void holes(Prismatic.Holes h) {
      if (tables.takes(h)) {
        tables.add(h, plan(PrismaticViews.looking(h.face())));
        return;
      }
      Face f = h.face();
      Looking l = PrismaticViews.looking(f);
      List<Pattern.At> places = h.pattern().places();
      List<String> lines = Holes.callout(h, h.hole(), places.size(), scheme);
      if (h.pattern() instanceof Pattern.Grid g) {
        row(f, f.u(), g.u(), g.columns(), g.stepU());
        row(f, f.v(), g.v(), g.rows(), g.stepV());
      } else if (h.pattern() instanceof Pattern.Circle c) {
        locate(f, f.u(), c.u());
        locate(f, f.v(), c.v());
        scheme.printed(h.name() + " circle");
        scheme.printed(h.name() + " angle");
        lines.add(Holes.circle(c.diameter(), c.start(), asked.isPlaced(h.name())));
        Point m = PrismaticViews.seen(onFace(f, c.u(), c.v()), l);
        Plan p = plan(l);
        p.add(
            new Mark.Arc(
                "axis:" + h.name(),
                Pen.CENTRE,
                m.x() * k,
                m.y() * k,
                c.diameter() / 2 * k,
                0,
                2 * Math.PI));
        p.cross(m.x() * k, m.y() * k, 2);
      } else {
        for (Pattern.At at : places) {
          locate(f, f.u(), at.u());
          locate(f, f.v(), at.v());
        }
      }
      boolean plain = h.hole().mouth() == HoleForm.Mouth.PLAIN;
      double r = plain ? h.hole().cutDiameter() / 2 : h.hole().mouthDiameter() / 2;
      List<Point> anchors = new ArrayList<>();
      for (Pattern.At at : places) {
        anchors.add(PrismaticViews.seen(onFace(f, at.u(), at.v()), l));
      }
      anchors.sort(
          Comparator.comparingDouble((Point p) -> -p.y()).thenComparingDouble(p -> -p.x()));
      plan(l).note(anchors, r, lines, asked.median(h.name()));
      Attached surface = asked.surface(h.name());
      if (!surface.isEmpty()) {
        plan(l).note(anchors, h.hole().cutDiameter() / 2, List.of(), surface);
      }
    }

    private void row(Face f, int axis, double first, int count, double step) {
      locate(f, axis, first);
      if (count < 2) {
        return;
      }
      double last = first + (count - 1) * step;
      scheme.place(NAMES[axis] + " on " + f, last);
      String text =
          count == 2
              ? Values.number(Math.abs(step))
              : (count - 1)
                  + "× "
                  + Values.number(Math.abs(step))
                  + " (= "
                  + Values.number(Math.abs(last - first))
                  + ")";
      put(f, axis, first, last, placed(f, axis, first, text), Attached.NOTHING);
    }

    private void edgeBreak(Prismatic.EdgeBreak e) {
      scheme.printed(e.name() + " edge");
      String text =
          e.edge() instanceof Edge.Chamfer c
              ? Values.number(c.width())
                  + " × "
                  + (Math.abs(c.angle() - Math.PI / 4) < 1e-6 ? "45°" : Values.degrees(c.angle()))
              : e.edge() instanceof Edge.Round r ? "R" + Values.number(r.radius()) : "";
      int along = 3 - e.face().axis() - e.other().axis();
      double[] c = new double[3];
      c[e.face().axis()] = e.face().sign() > 0 ? part.extent(e.face().axis()) : 0;
      c[e.other().axis()] = e.other().sign() > 0 ? part.extent(e.other().axis()) : 0;
      double in = e.edge() instanceof Edge.Round r ? r.radius() * 0.293 : 0;
      in = e.edge() instanceof Edge.Chamfer h ? h.width() / 2 : in;
      c[e.face().axis()] -= e.face().sign() * in;
      c[e.other().axis()] -= e.other().sign() * in;
      c[along] = part.extent(along) * 0.6;
      Looking best = Looking.FRONT;
      int score = -1;
      for (Looking l : plans.keySet()) {
        boolean endOn = Math.abs(component(l.along(), along)) > 0.5;
        boolean facing =
            l == PrismaticViews.looking(e.face()) || l == PrismaticViews.looking(e.other());
        int s = endOn ? 2 : facing ? 1 : 0;
        if (s > score) {
          score = s;
          best = l;
        }
      }
      note(best, List.of(text), PrismaticViews.seen(new Vec(c[0], c[1], c[2]), best));
    }
  }
}
