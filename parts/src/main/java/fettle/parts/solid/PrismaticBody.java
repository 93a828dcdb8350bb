package fettle.parts.solid;

import fettle.parts.recipe.Edge;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Outline;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import java.util.List;

/** The body of a part made from a block or plate. */
final class PrismaticBody {

  private static final double OVER = 1;

  private final Prismatic part;
  private Body body = new Body(List.of());

  private PrismaticBody(Prismatic part) {
    this.part = part;
  }

  static Body of(Prismatic part) {
    PrismaticBody b = new PrismaticBody(part);
    Outline o = part.outline();
    Profile.Draft draft = Profile.start(o.start().x(), o.start().y());
    for (Outline.Piece p : o.pieces()) {
      draft.bulge(p.to().x(), p.to().y(), p.bulge(), "outline");
    }
    b.body =
        b.body.with(
            Body.Act.ADD,
            new Primitive.Push(Frame.WORLD, draft.close("outline"), part.height().nominal()),
            "outline");
    part.operations().forEach(b::make);
    return b.body;
  }

  private void cut(Primitive solid, String name) {
    body = body.with(Body.Act.CUT, solid, name);
  }

  private void make(Prismatic.Operation operation) {
    String name = operation.name();
    Face face = operation.face();
    if (operation instanceof Prismatic.Holes holes) {
      Profile p =
          Bodies.hole(holes.hole(), part.extent(face.axis()) + highest(face) + OVER, OVER, name);
      for (Pattern.At at : holes.pattern().places()) {
        Vec start = on(face, at.u(), at.v()).minus(inward(face).times(raised(face, at)));
        Frame frame = Frame.of(start, inward(face), Vec.axis(face.u()));
        cut(new Primitive.Turn(frame, p), name);
      }
    } else if (operation instanceof Prismatic.Pocket pocket) {
      cut(sunk(face, pocket(pocket), pocket.depth()), name);
    } else if (operation instanceof Prismatic.Slot slot) {
      Profile p =
          Bodies.stadium(
              slot.from().u(),
              slot.from().v(),
              slot.to().u(),
              slot.to().v(),
              slot.width().nominal(),
              name);
      cut(sunk(face, p, slot.depth()), name);
    } else if (operation instanceof Prismatic.Channel c) {
      double half = c.width().half();
      double deep = c.depth().nominal();
      double[] side = outside(face, c.along(), c.at() - half, c.at() + half);
      cut(run(face, c.along(), Profile.rectangle(side[0], -OVER, side[1], deep, name)), name);
    } else if (operation instanceof Prismatic.TSlot t) {
      cut(run(face, t.along(), teeSlot(t)), name);
    } else if (operation instanceof Prismatic.Dovetail d) {
      dovetail(d);
    } else if (operation instanceof Prismatic.EdgeBreak e) {
      edge(e);
    } else if (operation instanceof Prismatic.Boss boss) {
      Frame frame =
          Frame.of(on(face, boss.u(), boss.v()), inward(face).times(-1), Vec.axis(face.u()));
      Profile p =
          Profile.rectangle(
              -0.5 * part.extent(face.axis()), 0, boss.height(), boss.diameter().half(), name);
      body = body.with(Body.Act.ADD, new Primitive.Turn(frame, p), name);
    }
  }

  /** Returns the height of the boss a place on a face stands on. */
  private double raised(Face face, Pattern.At at) {
    double high = 0;
    for (Prismatic.Operation o : part.operations()) {
      if (o instanceof Prismatic.Boss b
          && b.face() == face
          && Math.hypot(at.u() - b.u(), at.v() - b.v()) < b.diameter().half()) {
        high = Math.max(high, b.height());
      }
    }
    return high;
  }

  private double highest(Face face) {
    return part.operations().stream()
        .mapToDouble(o -> o instanceof Prismatic.Boss b && b.face() == face ? b.height() : 0)
        .max()
        .orElse(0);
  }

  /** Carries a groove at the rim past the side of the block. */
  private double[] outside(Face face, Prismatic.Along along, double from, double to) {
    double extent = part.extent(along == Prismatic.Along.U ? face.v() : face.u());
    return new double[] {
      from < 1e-9 ? Math.min(from, 0) - OVER : from,
      to > extent - 1e-9 ? Math.max(to, extent) + OVER : to
    };
  }

  private Vec inward(Face face) {
    return Vec.axis(face.axis()).times(-face.sign());
  }

  private Vec on(Face face, double u, double v) {
    double depth = face.sign() > 0 ? part.extent(face.axis()) : 0;
    return Vec.axis(face.u())
        .times(u)
        .plus(Vec.axis(face.v()).times(v))
        .plus(Vec.axis(face.axis()).times(depth));
  }

  /** Pushes an outline drawn on a face into the block. */
  private Primitive sunk(Face face, Profile p, double depth) {
    double extent = part.extent(face.axis());
    double deep = Math.min(depth, extent + OVER);
    double low = face.sign() < 0 ? -OVER : extent - deep;
    double high = face.sign() < 0 ? deep : extent + OVER;
    Vec u = Vec.axis(face.u());
    Vec v = Vec.axis(face.v());
    Vec n = u.cross(v);
    boolean up = n.dot(Vec.axis(face.axis())) > 0;
    Vec origin = Vec.axis(face.axis()).times(up ? low : high);
    return new Primitive.Push(new Frame(origin, u, v, n), p, high - low);
  }

  /** Pushes a section, drawn across and inwards, right along a face. */
  private Primitive run(Face face, Prismatic.Along along, Profile p) {
    int d = along == Prismatic.Along.U ? face.u() : face.v();
    int s = along == Prismatic.Along.U ? face.v() : face.u();
    Vec across = Vec.axis(s);
    Vec in = inward(face);
    Vec n = across.cross(in);
    double length = part.extent(d) + 2 * OVER;
    boolean up = n.dot(Vec.axis(d)) > 0;
    Vec origin = on(face, 0, 0).plus(Vec.axis(d).times(up ? -OVER : part.extent(d) + OVER));
    return new Primitive.Push(new Frame(origin, across, in, n), p, length);
  }

  private static Profile pocket(Prismatic.Pocket p) {
    double a = p.sizeU().half();
    double b = p.sizeV().half();
    double r = p.corner();
    if (!(r <= Math.min(a, b) + 1e-9)) {
      throw new SolidException(p.name() + ": the corners are rounder than the pocket is wide");
    }
    double k = r > 0 ? Math.tan(Math.PI / 8) : 0;
    double x0 = p.u() - a;
    double x1 = p.u() + a;
    double y0 = p.v() - b;
    double y1 = p.v() + b;
    return Profile.start(x0 + r, y0)
        .line(x1 - r, y0, p.name())
        .bulge(x1, y0 + r, k, p.name())
        .line(x1, y1 - r, p.name())
        .bulge(x1 - r, y1, k, p.name())
        .line(x0 + r, y1, p.name())
        .bulge(x0, y1 - r, k, p.name())
        .line(x0, y0 + r, p.name())
        .bulge(x0 + r, y0, k, p.name())
        .close(p.name());
  }

  private static Profile teeSlot(Prismatic.TSlot t) {
    double a = t.throat().half();
    double b = t.head() / 2;
    double d = t.throatDepth();
    double e = d + t.headHeight();
    if (!(b > a)) {
      throw new SolidException(t.name() + ": the head of the T-slot is not wider than its throat");
    }
    return Profile.start(t.at() - a, -OVER)
        .line(t.at() + a, -OVER, t.name())
        .line(t.at() + a, d, t.name())
        .line(t.at() + b, d, t.name())
        .line(t.at() + b, e, t.name())
        .line(t.at() - b, e, t.name())
        .line(t.at() - b, d, t.name())
        .line(t.at() - a, d, t.name())
        .close(t.name());
  }

  private void dovetail(Prismatic.Dovetail d) {
    double wide = d.wide().half();
    double narrow = wide - d.depth() / Math.tan(d.flank());
    String name = d.name();
    if (!(narrow > 0)) {
      throw new SolidException(name + ": the flanks of the dovetail meet");
    }
    if (d.kind() == Prismatic.DovetailKind.SLOT) {
      Profile p =
          Profile.start(d.at() - narrow, -OVER)
              .line(d.at() + narrow, -OVER, name)
              .line(d.at() + narrow, 0, name)
              .line(d.at() + wide, d.depth(), name)
              .line(d.at() - wide, d.depth(), name)
              .line(d.at() - narrow, 0, name)
              .close(name);
      cut(run(d.face(), d.along(), p), name);
      return;
    }
    double extent =
        part.extent(d.along() == Prismatic.Along.U ? d.face().v() : d.face().u()) + OVER;
    double lean = OVER / Math.tan(d.flank());
    Profile right =
        Profile.start(d.at() + wide + lean, -OVER)
            .line(d.at() + narrow, d.depth(), name)
            .line(extent, d.depth(), name)
            .line(extent, -OVER, name)
            .close(name);
    Profile left =
        Profile.start(d.at() - wide - lean, -OVER)
            .line(d.at() - narrow, d.depth(), name)
            .line(-OVER, d.depth(), name)
            .line(-OVER, -OVER, name)
            .close(name);
    cut(run(d.face(), d.along(), right), name);
    cut(run(d.face(), d.along(), left), name);
  }

  private void edge(Prismatic.EdgeBreak e) {
    Face a = e.face();
    Face b = e.other();
    if (a.axis() == b.axis()) {
      throw new SolidException(e.name() + ": these two faces have no edge in common");
    }
    int d = 3 - a.axis() - b.axis();
    Vec alongA = inward(b);
    Vec alongB = inward(a);
    Vec n = alongA.cross(alongB);
    boolean up = n.dot(Vec.axis(d)) > 0;
    Vec corner =
        Vec.axis(a.axis())
            .times(a.sign() > 0 ? part.extent(a.axis()) : 0)
            .plus(Vec.axis(b.axis()).times(b.sign() > 0 ? part.extent(b.axis()) : 0));
    Vec origin = corner.plus(Vec.axis(d).times(up ? -OVER : part.extent(d) + OVER));
    double w;
    double h;
    double bulge = 0;
    if (e.edge() instanceof Edge.Chamfer c) {
      w = c.width();
      h = c.width() * Math.tan(c.angle());
    } else if (e.edge() instanceof Edge.Round r) {
      w = r.radius();
      h = r.radius();
      bulge = -Math.tan(Math.PI / 8);
    } else {
      return;
    }
    Profile p =
        Profile.start(w, 0)
            .bulge(0, h, bulge, e.name())
            .line(-OVER, h, e.name())
            .line(-OVER, -OVER, e.name())
            .line(w, -OVER, e.name())
            .close(e.name());
    cut(
        new Primitive.Push(new Frame(origin, alongA, alongB, n), p, part.extent(d) + 2 * OVER),
        e.name());
  }
}
