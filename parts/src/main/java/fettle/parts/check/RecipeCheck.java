package fettle.parts.check;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Cut;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.End;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Feature;
import fettle.parts.recipe.Finish;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Pattern;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import fettle.parts.solid.Bodies;
import fettle.parts.solid.Brep;
import fettle.parts.solid.FoldedBody;
import fettle.parts.solid.SolidException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Holds a recipe to what can be made. */
public final class RecipeCheck {

  private final Recipe recipe;
  private final Limits limits;
  private final List<Doubt> doubts = new ArrayList<>();

  private RecipeCheck(Recipe recipe, Limits limits) {
    this.recipe = recipe;
    this.limits = limits;
  }

  /** Returns all doubts about a recipe, gravest first. */
  public static List<Doubt> of(Recipe recipe, Limits limits) {
    RecipeCheck check = new RecipeCheck(recipe, limits);
    check.names();
    if (recipe instanceof Turned turned) {
      check.turned(turned);
    } else if (recipe instanceof Prismatic prismatic) {
      check.prismatic(prismatic);
    } else {
      check.folded((Folded) recipe);
    }
    check.doubts.addAll(GeometryCheck.of(recipe));
    check.solid();
    check.doubts.sort((a, b) -> a.rank().compareTo(b.rank()));
    return List.copyOf(check.doubts);
  }

  private void stop(String feature, String what, double value, double limit) {
    doubts.add(new Doubt(Doubt.Rank.STOP, feature, what, value, limit, Limits.GEOMETRY));
  }

  private void caution(String feature, String what, double value, double limit, Source source) {
    doubts.add(new Doubt(Doubt.Rank.CAUTION, feature, what, value, limit, source));
  }

  private static String mm(double value) {
    return Numbers.significant(value, 5) + " mm";
  }

  private void names() {
    Set<String> seen = new HashSet<>();
    for (Feature f : recipe.features()) {
      if (!seen.add(f.name())) {
        stop(f.name(), "two features have this name; each needs its own", Double.NaN, Double.NaN);
      }
    }
  }

  private void solid() {
    try {
      Brep solid = Brep.of(Bodies.of(recipe));
      if (solid.shells() > 1) {
        stop(
            recipe.heading().name(),
            "the part falls into " + solid.shells() + " pieces or has a closed hollow",
            solid.shells(),
            1);
      }
    } catch (SolidException | IllegalArgumentException e) {
      String message = e.getMessage() == null ? "no solid can be made" : e.getMessage();
      stop(recipe.heading().name(), message, Double.NaN, Double.NaN);
    }
  }

  // Holes of all parts.

  private void hole(String name, HoleForm hole, double room) {
    if (!hole.isThrough() && !(hole.depth() < room)) {
      stop(
          name,
          "the hole is "
              + mm(hole.depth())
              + " deep where there are "
              + mm(room)
              + "; call it through or make it shallower",
          hole.depth(),
          room);
    } else if (!hole.isThrough()) {
      double point =
          hole.bottom() == HoleForm.Bottom.DRILL_POINT ? hole.cutDiameter() / 2 / Math.sqrt(3) : 0;
      double floor = room - hole.depth() - point;
      if (floor < limits.wall()) {
        caution(
            name,
            "only " + mm(floor) + " are left under the hole",
            floor,
            limits.wall(),
            Limits.WALL);
      }
    }
    if (hole.mouth() == HoleForm.Mouth.COUNTERBORE
        && hole.mouthDepth() >= Math.min(room, hole.depth())) {
      stop(
          name,
          "the counterbore is as deep as the hole",
          hole.mouthDepth(),
          Math.min(room, hole.depth()));
    }
    if (hole.thread() != null) {
      tapped(name, hole);
    }
    fit(name, hole.diameter(), hole.finish());
  }

  private void tapped(String name, HoleForm hole) {
    double pitch = hole.thread() == null ? 0 : hole.thread().pitch();
    if (hole.isThrough()) {
      return;
    }
    if (hole.threadDepth() > hole.depth()) {
      stop(
          name,
          "the thread is " + mm(hole.threadDepth()) + " deep, its drill only " + mm(hole.depth()),
          hole.threadDepth(),
          hole.depth());
    } else if (hole.depth() - hole.threadDepth() < limits.tapRoom() * pitch - 1e-9) {
      caution(
          name,
          "the tap has " + mm(hole.depth() - hole.threadDepth()) + " under the full thread",
          hole.depth() - hole.threadDepth(),
          limits.tapRoom() * pitch,
          Limits.TAP);
    }
  }

  private void fit(String name, Size size, Finish finish) {
    boolean rough =
        finish.making() == Finish.Making.STOCK
            || finish.making() == Finish.Making.DRILLED
            || finish.roughness() > 0.0033;
    if (size.tolerance().isFit() && rough) {
      caution(
          name,
          "a fit stands on an unfinished surface; bore, ream, turn or grind it",
          finish.roughness(),
          0.0016,
          Limits.FIT);
    }
  }

  // Turned parts.

  private void turned(Turned t) {
    double length = t.length();
    for (Step s : t.outside()) {
      step(s);
    }
    bore(t, End.LEFT);
    bore(t, End.RIGHT);
    if (t.left().depth() + t.right().depth() > length + 1e-9
        && !t.left().steps().isEmpty()
        && !t.right().steps().isEmpty()) {
      caution(
          t.right().steps().get(0).name(),
          "the bores from both ends overlap; the wider one wins where they do",
          t.left().depth() + t.right().depth(),
          length,
          Limits.GEOMETRY);
    }
    for (Turned.Operation o : t.operations()) {
      operation(t, o);
    }
  }

  private void step(Step s) {
    fit(s.name(), s.diameter(), s.finish());
    if (s.thread() != null && s.threadLength() > s.length().nominal() + 1e-9) {
      stop(
          s.name(),
          "the thread is longer than its seat of " + mm(s.length().nominal()),
          s.threadLength(),
          s.length().nominal());
    }
    if (s.thread() != null && Math.abs(s.thread().major() - s.diameter().nominal()) > 1e-9) {
      stop(
          s.name(),
          s.thread().designation()
              + " does not stand on a diameter of "
              + mm(s.diameter().nominal()),
          s.diameter().nominal(),
          s.thread().major());
    }
    double corners = extent(s.start()) + extent(s.end());
    if (corners > s.length().nominal() + 1e-9) {
      stop(
          s.name(),
          "its chamfers and radii are longer than the step",
          corners,
          s.length().nominal());
    }
    if (s.knurl() != null) {
      double teeth = Math.PI * s.diameter().nominal() / s.knurl().pitch();
      double blank = Math.rint(teeth) * s.knurl().pitch() / Math.PI;
      if (Math.abs(blank - s.diameter().nominal()) > 0.01) {
        doubts.add(
            new Doubt(
                Doubt.Rank.NOTE,
                s.name(),
                "turn the blank to "
                    + Numbers.fixed(blank, 2)
                    + " mm before knurling, for "
                    + Math.round(teeth)
                    + " teeth",
                s.diameter().nominal(),
                blank,
                Limits.BLANK));
      }
    }
  }

  private static double extent(Edge edge) {
    if (edge instanceof Edge.Chamfer c) {
      return c.width();
    } else if (edge instanceof Edge.Round r) {
      return r.radius();
    } else if (edge instanceof Edge.Undercut u) {
      return u.width();
    }
    return 0;
  }

  private void bore(Turned t, End end) {
    Bore bore = end == End.LEFT ? t.left() : t.right();
    if (bore.depth() > t.length() + 1e-9) {
      stop(
          bore.steps().get(0).name(),
          "the bore is deeper than the part is long",
          bore.depth(),
          t.length());
    }
    double at = 0;
    for (Step s : bore.steps()) {
      step(s);
      double widest = Math.max(s.diameter().nominal(), s.endDiameter());
      double a = t.place(end, at);
      double b = t.place(end, at + s.length().nominal());
      double wall = thinnest(t, Math.min(a, b), Math.max(a, b)) - widest / 2;
      if (wall <= 0) {
        stop(s.name(), "the bore breaks through the outline", wall, 0);
      } else if (wall < limits.wall()) {
        caution(
            s.name(), "the wall round the bore is " + mm(wall), wall, limits.wall(), Limits.WALL);
      }
      at += s.length().nominal();
    }
  }

  /** Returns the least outer radius between two places. */
  private static double thinnest(Turned t, double from, double to) {
    double least = Double.POSITIVE_INFINITY;
    double x = 0;
    for (Step s : t.outside()) {
      double end = x + s.length().nominal();
      if (end > from + 1e-9 && x < to - 1e-9) {
        least = Math.min(least, Math.min(s.diameter().nominal(), s.endDiameter()) / 2);
      }
      x = end;
    }
    return least;
  }

  private void along(Turned t, String name, double at, double length) {
    if (!(at >= -1e-9) || !(at + length <= t.length() + 1e-9)) {
      stop(name, "it reaches past the end of the part", at + length, t.length());
    }
  }

  private void operation(Turned t, Turned.Operation o) {
    if (o instanceof Turned.Groove g) {
      along(t, g.name(), g.at(), g.width().nominal());
      double a = t.place(g.from(), g.at());
      double b = t.place(g.from(), g.at() + g.width().nominal());
      double r = thinnest(t, Math.min(a, b), Math.max(a, b));
      if (g.where() == Turned.Side.OUTSIDE && !(g.bottom().half() < r)) {
        stop(g.name(), "the bottom of the groove lies outside the outline", g.bottom().half(), r);
      }
    } else if (o instanceof Turned.CrossHole h) {
      double half = h.hole().diameter().half();
      along(t, h.name(), h.at() - half, 2 * half);
      double x = t.place(h.from(), h.at());
      hole(h.name(), h.hole(), 2 * thinnest(t, x - half, x + half));
    } else if (o instanceof Turned.AxialHoles h) {
      double half = Math.max(h.hole().diameter().nominal(), h.hole().mouthDiameter()) / 2;
      double room = t.largest() / 2 - h.circle() / 2 - half;
      if (room < 0) {
        stop(h.name(), "the holes reach outside the stock", h.circle() / 2 + half, t.largest() / 2);
      } else if (room < limits.wall()) {
        caution(
            h.name(),
            "the wall outside the holes is " + mm(room),
            room,
            limits.wall(),
            Limits.WALL);
      }
      hole(h.name(), h.hole(), t.length() - h.sunk());
      crowded(h.name(), h.circle(), h.count(), 2 * half);
    } else if (o instanceof Turned.Keyway k) {
      along(t, k.name(), k.at(), k.length().nominal());
      double a = t.place(k.from(), k.at());
      double b = t.place(k.from(), k.at() + k.length().nominal());
      double r = thinnest(t, Math.min(a, b), Math.max(a, b));
      if (!(k.bottom() < r) || !(k.width().half() < r)) {
        stop(k.name(), "the keyway does not reach into the shaft", k.bottom(), r);
      }
    } else if (o instanceof Turned.Flats f) {
      along(t, f.name(), f.at(), f.length().nominal());
      double a = t.place(f.from(), f.at());
      double b = t.place(f.from(), f.at() + f.length().nominal());
      double r = thinnest(t, Math.min(a, b), Math.max(a, b));
      if (!(f.distance() < r)) {
        stop(f.name(), "the flats lie outside the outline", f.distance(), r);
      }
    } else if (o instanceof Turned.Graduations g) {
      along(t, g.name(), g.at(), g.minorLength());
      double x = t.place(g.from(), g.at());
      double pitch = 2 * Math.PI * thinnest(t, x - 1e-6, x + 1e-6) / g.divisions();
      if (pitch < 0.7) {
        caution(
            g.name(),
            "the lines stand " + mm(pitch) + " apart; the eye wants 0.7 mm or more",
            pitch,
            0.7,
            Source.practice("readable graduations"));
      }
    }
  }

  private void crowded(String name, double circle, int count, double wide) {
    if (count > 1) {
      double web = circle * Math.sin(Math.PI / count) - wide;
      if (web <= 0) {
        stop(name, "the holes run into each other", web, 0);
      } else if (web < limits.wall()) {
        caution(name, "the web between the holes is " + mm(web), web, limits.wall(), Limits.WALL);
      }
    }
  }

  // Blocks and plates.

  private record Spot(String name, Face face, double u, double v, double radius, double depth) {}

  private void prismatic(Prismatic p) {
    if (!p.section().isEmpty() && Cut.hole(p).isEmpty()) {
      stop("section", "there is no hole '" + p.section() + "' to cut along", Double.NaN, 0);
    } else if (!p.section().isEmpty() && Cut.of(p).isEmpty()) {
      caution(
          "section",
          "both sides that could show the section carry work; it is drawn uncut",
          Double.NaN,
          0,
          Limits.GEOMETRY);
    }
    List<Spot> spots = new ArrayList<>();
    for (Prismatic.Operation o : p.operations()) {
      if (o instanceof Prismatic.Holes h) {
        hole(h.name(), h.hole(), p.extent(h.face().axis()) + 0.0);
        if (h.hole().diameter().tolerance().isFit() && !p.finished().contains(h.face())) {
          caution(
              h.name(),
              "a fit starts on an unfinished face; machine "
                  + h.face().name().toLowerCase(java.util.Locale.ROOT)
                  + " first",
              0,
              0,
              Limits.FIT);
        }
        for (Pattern.At at : h.pattern().places()) {
          double r = Math.max(h.hole().diameter().nominal(), h.hole().mouthDiameter()) / 2;
          double depth = Math.min(h.hole().depth(), p.extent(h.face().axis()));
          spots.add(new Spot(h.name(), h.face(), at.u(), at.v(), r, depth));
        }
      } else if (o instanceof Prismatic.Pocket k) {
        inside(p, k.name(), k.face(), k.u(), k.v(), k.sizeU().half(), k.sizeV().half());
        floor(p, k.name(), k.face(), k.depth());
      } else if (o instanceof Prismatic.Slot s) {
        floor(p, s.name(), s.face(), s.depth());
      } else if (o instanceof Prismatic.Channel c) {
        floor(p, c.name(), c.face(), c.depth().nominal());
      } else if (o instanceof Prismatic.TSlot t) {
        floor(p, t.name(), t.face(), t.throatDepth() + t.headHeight());
      } else if (o instanceof Prismatic.Dovetail d) {
        floor(p, d.name(), d.face(), d.depth());
      }
    }
    if (p.isBlock()) {
      spots.forEach(s -> inside(p, s.name, s.face, s.u, s.v, s.radius, s.radius));
    }
    for (int i = 0; i < spots.size(); i++) {
      for (int j = 0; j < i; j++) {
        webs(spots.get(j), spots.get(i));
      }
    }
  }

  private void webs(Spot a, Spot b) {
    if (a.face == b.face) {
      double web = Math.hypot(a.u - b.u, a.v - b.v) - a.radius - b.radius;
      boolean nested = Math.hypot(a.u - b.u, a.v - b.v) < 1e-9 && !a.name.equals(b.name);
      if (web <= 0 && !nested) {
        caution(b.name, "it runs into " + a.name, web, 0, Limits.GEOMETRY);
      } else if (web < limits.wall() && !nested) {
        caution(b.name, "the web to " + a.name + " is " + mm(web), web, limits.wall(), Limits.WALL);
      }
    }
  }

  private void inside(
      Prismatic p, String name, Face face, double u, double v, double halfU, double halfV) {
    double room =
        Math.min(
            Math.min(u - halfU, p.extent(face.u()) - u - halfU),
            Math.min(v - halfV, p.extent(face.v()) - v - halfV));
    if (room < 0) {
      stop(name, "it reaches outside the stock", room, 0);
    } else if (room < limits.wall()) {
      caution(name, "the wall to the edge is " + mm(room), room, limits.wall(), Limits.WALL);
    }
  }

  private void floor(Prismatic p, String name, Face face, double depth) {
    double extent = p.extent(face.axis());
    if (!Double.isInfinite(depth) && depth >= extent) {
      stop(name, "it is deeper than the block", depth, extent);
    } else if (extent - depth < limits.wall() && !Double.isInfinite(depth)) {
      caution(
          name, "the floor is " + mm(extent - depth), extent - depth, limits.wall(), Limits.WALL);
    }
  }

  // Bent sheet.

  private void folded(Folded f) {
    if (f.legs().size() > 1 && f.radius() < f.thickness() - 1e-9) {
      caution(
          f.heading().name(),
          "the inside radius is smaller than the sheet is thick",
          f.radius(),
          f.thickness(),
          Limits.BEND);
    }
    FoldedBody.Flat flat;
    try {
      flat = FoldedBody.flat(f);
    } catch (SolidException e) {
      return;
    }
    double clear = 2 * f.thickness() + f.radius();
    for (FoldedBody.Round h : flat.holes()) {
      double r = h.diameter() / 2;
      if (h.x() - r < 0 || h.x() + r > flat.length() || h.y() - r < 0 || h.y() + r > flat.width()) {
        stop(h.name(), "the hole reaches outside the sheet", h.x(), flat.length());
      }
      for (FoldedBody.Zone z : flat.bends()) {
        double gap = Math.max(z.from() - h.x() - r, h.x() - r - z.to());
        if (gap < clear) {
          caution(
              h.name(),
              "the hole stands " + mm(gap) + " from a bend and will be drawn oval",
              gap,
              clear,
              Limits.BEND);
        }
      }
    }
  }
}
