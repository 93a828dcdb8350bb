package fettle.parts.solid;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.End;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The body of a turned part. */
public final class TurnedBody {

  private static final double OVER = 1;
  private static final Frame AXIS = Frame.of(Vec.ZERO, Vec.X, Vec.Z);

  private final Turned part;
  private Body body = new Body(List.of());

  private TurnedBody(Turned part) {
    this.part = part;
  }

  static Body of(Turned part) {
    TurnedBody b = new TurnedBody(part);
    b.body = b.body.with(Body.Act.ADD, new Primitive.Turn(AXIS, outline(part)), "outline");
    b.bore(part.left(), End.LEFT);
    b.bore(part.right(), End.RIGHT);
    part.operations().forEach(b::make);
    return b.body;
  }

  /** Returns the outline: along the axis, and the distance from it. */
  public static Profile outline(Turned part) {
    Corners corners = new Corners();
    corners.add(0, 0, 0, Edge.SHARP, true, part.outside().get(0).name());
    double x = 0;
    for (Step s : part.outside()) {
      x = step(corners, s, x, 1, s.diameter().nominal() / 2, s.endDiameter() / 2);
    }
    String last = part.outside().get(part.outside().size() - 1).name();
    corners.add(x, 0, 0, Edge.SHARP, false, last);
    return corners.closed();
  }

  private static double step(Corners corners, Step s, double x, int way, double r0, double r1) {
    double end = x + way * s.length().nominal();
    double bulge = 0;
    if (s.form() == Step.Form.ARC) {
      double chord = Math.hypot(s.length().nominal(), r1 - r0);
      double half = Math.asin(Math.min(1, chord / 2 / Math.abs(s.bulge())));
      bulge = -way * Math.signum(s.bulge()) * Math.tan(half / 2);
    }
    corners.add(x, r0, bulge, s.start(), true, s.name());
    corners.add(end, r1, 0, s.end(), false, s.name());
    return end;
  }

  /** Returns what a bore removes: along the axis from the left end, and the distance from it. */
  static @Nullable Profile bore(Turned part, End end) {
    Bore bore = end == End.LEFT ? part.left() : part.right();
    if (bore.steps().isEmpty()) {
      return null;
    }
    int way = end == End.LEFT ? 1 : -1;
    double mouth = part.place(end, 0);
    Corners corners = new Corners();
    Step first = bore.steps().get(0);
    corners.add(mouth, 0, 0, Edge.SHARP, true, first.name());
    double x = mouth;
    double r = 0;
    for (int i = 0; i < bore.steps().size(); i++) {
      Step s = bore.steps().get(i);
      double r0 = s.thread() == null ? s.diameter().nominal() / 2 : s.thread().rootInside() / 2;
      r = s.thread() == null ? s.endDiameter() / 2 : r0;
      if (i == 0) {
        mouth(corners, s, mouth, way, r0);
        s = s.edges(Edge.SHARP, s.end());
      }
      x = step(corners, s, x, way, r0, r);
      if (i == 0 && !(first.start() instanceof Edge.Sharp)) {
        corners.drop(mouth, r0);
      }
    }
    String name = bore.steps().get(bore.steps().size() - 1).name();
    boolean open = bore.depth() > part.length() - 1e-9;
    double deep =
        bore.bottom() == HoleForm.Bottom.DRILL_POINT && !open ? x + way * r / Math.sqrt(3) : x;
    corners.add(deep, 0, 0, Edge.SHARP, false, name);
    return corners.closed();
  }

  /** Breaks the mouth of a bore, which widens it. */
  private static void mouth(Corners corners, Step s, double x, int way, double r) {
    if (s.start() instanceof Edge.Chamfer c) {
      corners.add(x, r + c.width() * Math.tan(c.angle()), 0, Edge.SHARP, true, s.name());
      corners.add(x + way * c.width(), r, 0, Edge.SHARP, true, s.name());
    } else if (s.start() instanceof Edge.Round round) {
      double bulge = way * Math.tan(Math.PI / 8);
      corners.add(x, r + round.radius(), bulge, Edge.SHARP, true, s.name());
      corners.add(x + way * round.radius(), r, 0, Edge.SHARP, true, s.name());
    }
  }

  private void bore(Bore bore, End end) {
    Profile profile = bore(part, end);
    if (profile != null) {
      cut(new Primitive.Turn(AXIS, profile), bore.steps().get(0).name());
    }
  }

  private void cut(Primitive solid, String name) {
    body = body.with(Body.Act.CUT, solid, name);
  }

  private void make(Turned.Operation operation) {
    if (operation instanceof Turned.Groove groove) {
      cut(new Primitive.Turn(AXIS, groove(groove)), groove.name());
    } else if (operation instanceof Turned.CrossHole hole) {
      crossHole(hole);
    } else if (operation instanceof Turned.AxialHoles holes) {
      axialHoles(holes);
    } else if (operation instanceof Turned.Keyway keyway) {
      keyway(keyway);
    } else if (operation instanceof Turned.BoreKeyway keyway) {
      double half = keyway.width().half();
      Profile p = Profile.rectangle(0, -half, keyway.bottom(), half, keyway.name());
      Vec up = radial(keyway.angle());
      cut(
          new Primitive.Push(
              Frame.of(new Vec(-OVER, 0, 0), Vec.X, up), p, part.length() + 2 * OVER),
          keyway.name());
    } else if (operation instanceof Turned.Flats flats) {
      flats(flats);
    } else if (operation instanceof Turned.EndSlot slot) {
      double half = slot.width().half();
      double reach = part.largest();
      Profile p = Profile.rectangle(-reach, -half, reach, half, slot.name());
      atEnd(slot.end(), p, slot.depth(), slot.angle(), slot.name());
    } else if (operation instanceof Turned.Socket socket) {
      Profile p = Bodies.polygon(socket.sides(), socket.across().nominal(), 0, socket.name());
      atEnd(socket.end(), p, socket.depth(), 0, socket.name());
    }
  }

  /**
   * Returns the direction from the axis at an angle.
   *
   * @param angle angle from the top, towards the front [rad]
   */
  public static Vec radial(double angle) {
    return new Vec(0, -Math.sin(angle), Math.cos(angle));
  }

  /**
   * Returns the largest radius of the outline between two places.
   *
   * @param part the part
   * @param from lower place [mm]
   * @param to higher place [mm]
   * @return radius [mm]
   */
  static double outerRadius(Turned part, double from, double to) {
    double most = 0;
    double x = 0;
    for (Step s : part.outside()) {
      double end = x + s.length().nominal();
      if (end > from - 1e-9 && x < to + 1e-9) {
        most = Math.max(most, Math.max(s.diameter().nominal(), s.endDiameter()) / 2);
        if (s.form() == Step.Form.ARC) {
          most = Math.max(most, part.largest() / 2 + Math.abs(s.bulge()));
        }
      }
      x = end;
    }
    return most;
  }

  private Profile groove(Turned.Groove g) {
    double a = part.place(g.from(), g.at());
    double b = part.place(g.from(), g.at() + g.width().nominal());
    double low = Math.min(a, b);
    double high = Math.max(a, b);
    double bottom = g.bottom().half();
    boolean outside = g.where() == Turned.Side.OUTSIDE;
    double top =
        outside ? outerRadius(part, low + 1e-6, high - 1e-6) + OVER : boreRadius(low, high) - 0.5;
    double lean = Math.abs(top - bottom) * Math.tan(g.flank());
    return Profile.start(low, bottom)
        .line(low - lean, top, g.name())
        .line(high + lean, top, g.name())
        .line(high, bottom, g.name())
        .close(g.name());
  }

  private double boreRadius(double low, double high) {
    double least = Double.POSITIVE_INFINITY;
    for (End end : End.values()) {
      Bore bore = end == End.LEFT ? part.left() : part.right();
      double at = 0;
      for (Step s : bore.steps()) {
        double a = part.place(end, at);
        double b = part.place(end, at + s.length().nominal());
        if (Math.max(a, b) > low + 1e-9 && Math.min(a, b) < high - 1e-9) {
          least = Math.min(least, Math.min(s.diameter().nominal(), s.endDiameter()) / 2);
        }
        at += s.length().nominal();
      }
    }
    if (Double.isInfinite(least) || least <= 0.5) {
      throw new SolidException("an inside groove lies in no bore");
    }
    return least;
  }

  private void crossHole(Turned.CrossHole h) {
    double x = part.place(h.from(), h.at());
    double half = h.hole().cutDiameter() / 2;
    double r = outerRadius(part, x - half, x + half);
    Vec up = radial(h.angle());
    Frame frame = Frame.of(new Vec(x, 0, 0).plus(up.times(r)), up.times(-1), Vec.X);
    cut(new Primitive.Turn(frame, Bodies.hole(h.hole(), 2 * r + OVER, OVER, h.name())), h.name());
  }

  private void axialHoles(Turned.AxialHoles h) {
    Vec way = h.from() == End.LEFT ? Vec.X : new Vec(-1, 0, 0);
    double x = part.place(h.from(), h.sunk());
    Profile profile = Bodies.hole(h.hole(), part.length() + OVER, OVER, h.name());
    for (int i = 0; i < h.count(); i++) {
      Vec out = radial(h.start() + 2 * Math.PI * i / h.count());
      Vec at = new Vec(x, 0, 0).plus(out.times(h.circle() / 2));
      cut(new Primitive.Turn(Frame.of(at, way, out), profile), h.name());
    }
  }

  private void keyway(Turned.Keyway k) {
    double a = part.place(k.from(), k.at());
    double b = part.place(k.from(), k.at() + k.length().nominal());
    double low = Math.min(a, b);
    double high = Math.max(a, b);
    double half = k.width().half();
    boolean roundLow = k.ends() == Turned.KeywayEnds.ROUND && low > 1e-9;
    boolean roundHigh = k.ends() == Turned.KeywayEnds.ROUND && high < part.length() - 1e-9;
    double x0 = low < 1e-9 ? -OVER : roundLow ? low + half : low;
    double x1 = high > part.length() - 1e-9 ? part.length() + OVER : roundHigh ? high - half : high;
    if (!(x0 < x1)) {
      throw new SolidException(k.name() + ": the keyway is shorter than it is wide");
    }
    Profile p =
        Profile.start(x0, -half)
            .line(x1, -half, k.name())
            .bulge(x1, half, roundHigh ? 1 : 0, k.name())
            .line(x0, half, k.name())
            .bulge(x0, -half, roundLow ? 1 : 0, k.name())
            .close(k.name());
    Vec up = radial(k.angle());
    double top = outerRadius(part, low, high) + OVER;
    cut(
        new Primitive.Push(Frame.of(up.times(k.bottom()), up, Vec.X), p, top - k.bottom()),
        k.name());
  }

  private void flats(Turned.Flats f) {
    double a = part.place(f.from(), f.at());
    double b = part.place(f.from(), f.at() + f.length().nominal());
    double low = Math.min(a, b) < 1e-9 ? -OVER : Math.min(a, b);
    double high = Math.max(a, b) > part.length() - 1e-9 ? part.length() + OVER : Math.max(a, b);
    double r = outerRadius(part, Math.min(a, b) + 1e-6, Math.max(a, b) - 1e-6) + OVER;
    Profile p = Profile.rectangle(low, -r, high, r, f.name());
    for (int i = 0; i < f.count(); i++) {
      Vec up = radial(f.start() + 2 * Math.PI * i / f.count());
      cut(
          new Primitive.Push(Frame.of(up.times(f.distance()), up, Vec.X), p, r - f.distance()),
          f.name());
    }
  }

  private void atEnd(End end, Profile p, double depth, double angle, String name) {
    Vec way = end == End.LEFT ? Vec.X : new Vec(-1, 0, 0);
    Vec start = new Vec(part.place(end, -OVER), 0, 0);
    cut(new Primitive.Push(Frame.of(start, way, radial(angle)), p, depth + OVER), name);
  }
}
