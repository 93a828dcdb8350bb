package fettle.sheets.draw;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Edge;
import fettle.parts.recipe.End;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Toothing;
import fettle.parts.recipe.Turned;
import fettle.parts.solid.Bodies;
import fettle.parts.solid.Body;
import fettle.parts.solid.Brep;
import fettle.parts.solid.Looking;
import fettle.parts.solid.Marks;
import fettle.parts.solid.Vec;
import fettle.parts.solid.View;
import fettle.sheets.dimension.Callout;
import fettle.sheets.dimension.Linear;
import fettle.sheets.dimension.Scheme;
import fettle.sheets.dimension.Side;
import fettle.sheets.dimension.Values;
import fettle.sheets.dimension.Wanted;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Draws a turned part: axis level, in section when it is bored, dimensions from the end faces. */
final class TurnedDraught {

  private static final String AXIS = "the axis";

  private final Turned part;
  private final Marks marks;
  private final View main;
  private final @Nullable View end;
  private final Looking endLooking;
  private final Map<Double, View> sections = new LinkedHashMap<>();
  private final boolean bored;

  TurnedDraught(Turned part) {
    this.part = part;
    Body body = Bodies.of(part);
    this.marks = Marks.of(part);
    this.bored = isBored(part);
    Brep solid = Brep.of(body);
    this.main =
        bored ? View.section(body, Looking.FRONT, Vec.ZERO) : View.of(body, solid, Looking.FRONT);
    End needed = endView(part);
    this.endLooking = needed == End.RIGHT ? Looking.RIGHT : Looking.LEFT;
    this.end = needed == null ? null : View.of(body, solid, endLooking);
    for (double x : sectionPlanes(part)) {
      sections.put(x, View.section(body, Looking.LEFT, new Vec(x, 0, 0)));
    }
  }

  private static boolean isBored(Turned t) {
    return !t.left().steps().isEmpty()
        || !t.right().steps().isEmpty()
        || t.operations().stream()
            .anyMatch(o -> o instanceof Turned.AxialHoles || o instanceof Turned.Socket);
  }

  private static @Nullable End endView(Turned t) {
    for (Turned.Operation o : t.operations()) {
      if (o instanceof Turned.AxialHoles h && h.circle() > 0) {
        return h.from();
      } else if (o instanceof Turned.EndSlot s) {
        return s.end();
      } else if (o instanceof Turned.Socket s) {
        return s.end();
      } else if (o instanceof Turned.BoreKeyway) {
        return End.LEFT;
      }
    }
    return null;
  }

  private static List<Double> sectionPlanes(Turned t) {
    List<Double> planes = new ArrayList<>();
    for (Turned.Operation o : t.operations()) {
      double x = Double.NaN;
      if (o instanceof Turned.Keyway k) {
        x = t.place(k.from(), k.at() + k.length().nominal() * 0.5);
      } else if (o instanceof Turned.Flats f) {
        x = t.place(f.from(), f.at() + f.length().nominal() * 0.5);
      } else if (o instanceof Turned.CrossHole h && Math.abs(h.angle()) > 1e-9) {
        x = t.place(h.from(), h.at());
      }
      double at = x;
      if (!Double.isNaN(x) && planes.stream().noneMatch(p -> Math.abs(p - at) < 1)) {
        planes.add(x);
      }
    }
    return planes;
  }

  /** Returns the drawing at a scale. */
  Draft at(double factor) {
    return new Drawing(factor).draft();
  }

  private static Point seen(Vec p, Looking l) {
    return new Point(p.dot(l.right()), p.dot(l.up()));
  }

  /** One drawing at one scale. */
  private final class Drawing {
    private final double k;
    private final Plan plan;
    private final Scheme scheme = new Scheme();
    private final Map<Linear, Callout> instead = new LinkedHashMap<>();
    private final Map<List<String>, Group> edges = new LinkedHashMap<>();
    private final List<Draft.Placed> placed = new ArrayList<>();
    private final List<Table> tables = new ArrayList<>();
    private final Map<String, Diameter> diameters = new LinkedHashMap<>();

    /** Equal notes to be printed once with their number. */
    private record Group(List<Point> anchors) {}

    private record Diameter(
        String text,
        double d,
        double from,
        double to,
        boolean inside,
        List<Point> anchors,
        List<String> features) {}

    Drawing(double factor) {
      this.k = factor;
      this.plan = new Plan("main", factor);
      placed.add(new Draft.Placed(plan, Draft.Where.MAIN));
    }

    Draft draft() {
      Wanted.of(part).forEach(scheme::required);
      plan.view(main, bored ? Plan.Hidden.LEFT_OUT : Plan.Hidden.DRAWN);
      plan.through(Holes.threadedThrough(part));
      List<String> own =
          part.operations().stream()
              .filter(o -> o instanceof Turned.AxialHoles)
              .map(Turned.Operation::name)
              .toList();
      plan.marks(
          new Marks(
              marks.axes().stream().filter(a -> !own.contains(a.feature())).toList(),
              marks.threads().stream().filter(this::inPlane).toList()),
          p -> seen(p, Looking.FRONT),
          Looking.FRONT.along(),
          bored ? Plan.Hidden.LEFT_OUT : Plan.Hidden.DRAWN);
      places();
      cuttingPlanes();
      lengths();
      steps(part.outside(), 0, 1, false);
      steps(part.left().steps(), 0, 1, true);
      steps(part.right().steps(), part.length(), -1, true);
      part.operations().forEach(this::operation);
      printDiameters();
      edges.forEach(
          (lines, g) -> {
            List<String> text = new ArrayList<>(lines);
            if (g.anchors.size() > 1) {
              text.set(0, g.anchors.size() + "× " + text.get(0));
            }
            plan.note(g.anchors, 0, text);
          });
      List<String> faults = new ArrayList<>(plan.compose(instead::get));
      for (Draft.Placed p : placed.subList(1, placed.size())) {
        faults.addAll(p.plan().compose(d -> null));
      }
      return new Draft(placed, tables, scheme, faults);
    }

    private double radiusAt(double x) {
      double at = 0;
      double r = 0;
      for (Step s : part.outside()) {
        double to = at + s.length().nominal();
        if (x >= at - 1e-9 && x <= to + 1e-9) {
          double share = Math.min(1, Math.max(0, (x - at) / s.length().nominal()));
          double e = s.form() == Step.Form.CYLINDER ? s.diameter().nominal() : s.endDiameter();
          r = Math.max(r, (s.diameter().nominal() + share * (e - s.diameter().nominal())) / 2);
        }
        at = to;
      }
      return r;
    }

    // ---- places along the axis

    private void places() {
      scheme.place(AXIS, 0);
      scheme.place(AXIS, part.length());
      along(part.outside(), 0, 1);
      along(part.left().steps(), 0, 1);
      along(part.right().steps(), part.length(), -1);
      for (Turned.Operation o : part.operations()) {
        if (o instanceof Turned.Groove g) {
          scheme.place(AXIS, part.place(g.from(), g.at()));
          scheme.place(AXIS, part.place(g.from(), g.at() + g.width().nominal()));
        } else if (o instanceof Turned.CrossHole h) {
          scheme.place(AXIS, part.place(h.from(), h.at()));
        } else if (o instanceof Turned.AxialHoles h && h.sunk() > 0) {
          scheme.place(AXIS, part.place(h.from(), h.sunk()));
        } else if (o instanceof Turned.Keyway w) {
          scheme.place(AXIS, part.place(w.from(), w.at()));
          scheme.place(AXIS, part.place(w.from(), w.at() + w.length().nominal()));
        } else if (o instanceof Turned.Flats f) {
          scheme.place(AXIS, part.place(f.from(), f.at()));
          scheme.place(AXIS, part.place(f.from(), f.at() + f.length().nominal()));
        } else if (o instanceof Turned.Graduations g) {
          scheme.place(AXIS, part.place(g.from(), g.at()));
        }
      }
    }

    private void along(List<Step> steps, double from, int way) {
      double x = from;
      for (Step s : steps) {
        double to = x + way * s.length().nominal();
        scheme.place(AXIS, to);
        double full = threadEnd(s, x, to);
        if (!Double.isNaN(full)) {
          scheme.place(AXIS, full);
        }
        x = to;
      }
    }

    private double threadEnd(Step s, double x, double to) {
      if (s.thread() == null
          || !(s.threadLength() > 0)
          || s.threadLength() >= s.length().nominal() - 1e-6) {
        return Double.NaN;
      }
      return s.threadFrom() == End.LEFT
          ? Math.min(x, to) + s.threadLength()
          : Math.max(x, to) - s.threadLength();
    }

    /** Lengths: what carries a tolerance first, then over all, then each from its end face. */
    private void lengths() {
      tolerancedLengths(part.outside(), 0, 1, false);
      tolerancedLengths(part.left().steps(), 0, 1, true);
      tolerancedLengths(part.right().steps(), part.length(), -1, true);
      for (Turned.Operation o : part.operations()) {
        if (o instanceof Turned.Groove g) {
          double a = part.place(g.from(), g.at());
          double b = part.place(g.from(), g.at() + g.width().nominal());
          length(a, b, Values.size("", g.width()), g.bottom().nominal() / 2);
          double face = part.place(g.from(), 0);
          length(face, a, Values.number(g.at()), g.bottom().nominal() / 2);
        } else if (o instanceof Turned.Keyway w) {
          double a = part.place(w.from(), w.at());
          length(
              a,
              part.place(w.from(), w.at() + w.length().nominal()),
              Values.size("", w.length()),
              0);
          length(part.place(w.from(), 0), a, Values.number(w.at()), 0);
        } else if (o instanceof Turned.Flats f) {
          double a = part.place(f.from(), f.at());
          length(
              a,
              part.place(f.from(), f.at() + f.length().nominal()),
              Values.size("", f.length()),
              0);
          length(part.place(f.from(), 0), a, Values.number(f.at()), 0);
        } else if (o instanceof Turned.CrossHole h) {
          length(part.place(h.from(), 0), part.place(h.from(), h.at()), Values.number(h.at()), 0);
        } else if (o instanceof Turned.AxialHoles h) {
          length(
              part.place(h.from(), 0), part.place(h.from(), h.sunk()), Values.number(h.sunk()), 0);
        } else if (o instanceof Turned.Graduations g) {
          length(part.place(g.from(), 0), part.place(g.from(), g.at()), Values.number(g.at()), 0);
        }
      }
      length(0, part.length(), Values.number(part.length()), Double.NaN);
      boreDepths(part.left(), 0, 1);
      boreDepths(part.right(), part.length(), -1);
      boolean fromRight = datum() == End.RIGHT;
      double x = 0;
      for (Step s : part.outside()) {
        double to = x + s.length().nominal();
        double full = threadEnd(s, x, to);
        if (!Double.isNaN(full)) {
          double start = s.threadFrom() == End.LEFT ? x : to;
          length(start, full, Values.number(s.threadLength()), s.diameter().nominal() / 2);
        }
        x = to;
      }
      x = 0;
      for (Step s : part.outside()) {
        x += s.length().nominal();
        double face = fromRight ? part.length() : 0;
        length(face, x, Values.number(Math.abs(face - x)), Double.NaN);
      }
    }

    /** The end face nearer to the largest collar is the datum. */
    private End datum() {
      double x = 0;
      double at = 0;
      double largest = 0;
      for (Step s : part.outside()) {
        double d = Math.max(s.diameter().nominal(), s.endDiameter());
        if (d > largest) {
          largest = d;
          at = x + s.length().nominal() / 2;
        }
        x += s.length().nominal();
      }
      return at <= part.length() / 2 ? End.LEFT : End.RIGHT;
    }

    private void tolerancedLengths(List<Step> steps, double from, int way, boolean inside) {
      double x = from;
      for (Step s : steps) {
        double to = x + way * s.length().nominal();
        if (s.length().tolerance().isFit()) {
          length(
              x, to, Values.size("", s.length()), inside ? s.diameter().nominal() / 2 : Double.NaN);
        }
        x = to;
      }
    }

    private void boreDepths(Bore bore, double face, int way) {
      double x = face;
      for (Step s : bore.steps()) {
        double to = x + way * s.length().nominal();
        double full = threadEnd(s, x, to);
        double r = s.diameter().nominal() / 2;
        if (!Double.isNaN(full)) {
          double start = (s.threadFrom() == End.LEFT) == (way > 0) ? x : to;
          length(start, full, Values.number(s.threadLength()), r);
        }
        length(face, to, Values.number(Math.abs(to - face)), r);
        x = to;
      }
    }

    /** Puts a length below the view if the books say it is due. */
    private void length(double a, double b, String text, double radius) {
      if (Math.abs(a - b) > 1e-6 && scheme.join(AXIS, a, b)) {
        plan.dimension(Side.BELOW, a, b, foot(a, radius), foot(b, radius), text);
      }
    }

    private double foot(double x, double radius) {
      boolean face = x < 1e-6 || x > part.length() - 1e-6;
      return -(Double.isNaN(radius) || face ? radiusAt(x) : radius);
    }

    // ---- diameters, threads, edges of steps

    private void steps(List<Step> steps, double from, int way, boolean inside) {
      String prefix = inside ? "bore " : "";
      double x = from;
      for (int i = 0; i < steps.size(); i++) {
        Step s = steps.get(i);
        double to = x + way * s.length().nominal();
        step(steps, i, x, to, prefix, inside);
        edge(s, s.start(), x, s.diameter().nominal(), prefix + "start", inside);
        edge(s, s.end(), to, end(s), prefix + "end", inside);
        x = to;
      }
    }

    private static double end(Step s) {
      return s.form() == Step.Form.CYLINDER ? s.diameter().nominal() : s.endDiameter();
    }

    private void step(List<Step> steps, int i, double x, double to, String prefix, boolean inside) {
      Step s = steps.get(i);
      String suffix = "";
      if (s.finish().roughness() > 0) {
        suffix = "  " + Lettering.TEXTURE + Values.roughness(s.finish().roughness());
        scheme.printed(s.name() + " " + prefix + "finish");
      }
      boolean startMeets =
          i > 0
              && s.form() != Step.Form.CYLINDER
              && Math.abs(end(steps.get(i - 1)) - s.diameter().nominal()) < 1e-6;
      boolean endMeets =
          i + 1 < steps.size()
              && steps.get(i + 1).form() == Step.Form.CYLINDER
              && Math.abs(steps.get(i + 1).diameter().nominal() - s.endDiameter()) < 1e-6;
      if (s.thread() != null) {
        String text = Holes.thread(s.thread().designation()) + suffix;
        suffix = "";
        diameter(
            text,
            s.thread().major(),
            s.diameter().nominal(),
            x,
            to,
            inside,
            s.name() + " " + prefix + "thread");
      } else if (!startMeets && s.diameter().nominal() > 0) {
        String text = Values.size("⌀", s.diameter()) + suffix;
        suffix = "";
        double upTo = s.form() == Step.Form.CYLINDER ? to : x;
        diameter(
            text,
            s.diameter().nominal(),
            s.diameter().nominal(),
            x,
            upTo,
            inside,
            s.name() + " " + prefix + "diameter");
      }
      if (s.form() != Step.Form.CYLINDER && !endMeets && s.endDiameter() > 0) {
        String text = "⌀" + Values.number(s.endDiameter()) + suffix;
        suffix = "";
        diameter(
            text,
            s.endDiameter(),
            s.endDiameter(),
            to,
            to,
            inside,
            s.name() + " " + prefix + "end diameter");
      }
      double middle = (x + to) / 2;
      double r = (s.diameter().nominal() + end(s)) / 4;
      if (s.form() == Step.Form.ARC) {
        double sagitta =
            Math.abs(s.bulge())
                - Math.sqrt(Math.max(0, s.bulge() * s.bulge() - Math.pow((to - x) / 2, 2)));
        note(
            List.of("R" + Values.number(Math.abs(s.bulge()))),
            new Point(middle, r + Math.signum(s.bulge()) * sagitta));
        scheme.printed(s.name() + " " + prefix + "radius");
      }
      if (s.knurl() != null) {
        plan.note(
            between(x, to, r),
            0,
            List.of(
                "knurl ISO 13444 - " + s.knurl().form() + " " + Values.number(s.knurl().pitch())));
        scheme.printed(s.name() + " " + prefix + "knurl");
      }
      if (s.teeth() != null) {
        gear(s, s.teeth(), x, to);
      }
      if (!suffix.isEmpty()) {
        plan.note(between(x, to, r), 0, List.of(suffix.trim()));
      }
    }

    private List<Point> between(double x, double to, double r) {
      List<Point> out = new ArrayList<>();
      for (double share :
          new double[] {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9, 0.05, 0.95, 0.27, 0.43, 0.57, 0.73}) {
        out.add(new Point(x + share * (to - x), r));
      }
      return out;
    }

    private void diameter(
        String text, double d, double shown, double x, double to, boolean inside, String books) {
      scheme.printed(books);
      double r = shown / 2;
      List<Point> anchors = Math.abs(to - x) < 1e-9 ? List.of(new Point(x, r)) : between(x, to, r);
      String key = (inside ? "in " : "out ") + text;
      Diameter old = diameters.get(key);
      if (old != null) {
        old.features.add(books);
        old.anchors.addAll(anchors);
        return;
      }
      diameters.put(
          key,
          new Diameter(
              text, d, x, to, inside, new ArrayList<>(anchors), new ArrayList<>(List.of(books))));
    }

    private void printDiameters() {
      for (Diameter d : diameters.values()) {
        String text = (d.features.size() > 1 ? d.features.size() + "× " : "") + d.text;
        Side side = side(d);
        Callout note =
            new Callout(
                d.anchors.stream().map(p -> new Point(p.x() * k, p.y() * k)).toList(),
                0,
                List.of(text));
        if (side == null) {
          plan.note(d.anchors, 0, List.of(text));
          continue;
        }
        double edge = side == Side.LEFT ? Math.min(d.from, d.to) : Math.max(d.from, d.to);
        double r = d.d / 2;
        plan.dimension(side, -r, r, edge, edge, text);
        instead.put(new Linear(side, -r * k, r * k, edge * k, edge * k, text, 2 * r), note);
      }
    }

    /** The side on which extension lines reach the free without passing through the part. */
    private @Nullable Side side(Diameter d) {
      double low = Math.min(d.from, d.to);
      double high = Math.max(d.from, d.to);
      double clear = 1.2 / k;
      boolean right = true;
      boolean left = true;
      double x = 0;
      if (!d.inside) {
        for (Step s : part.outside()) {
          double to = x + s.length().nominal();
          double big = Math.max(s.diameter().nominal(), end(s));
          boolean narrower = big < d.d - clear;
          right &= !(x > high - 1e-6) || narrower;
          left &= !(to < low + 1e-6) || narrower;
          if (Math.abs(d.from - d.to) < 1e-9) {
            boolean starts = Math.abs(x - d.from) < 1e-6;
            boolean ends = Math.abs(to - d.from) < 1e-6;
            right &= !starts || end(s) <= d.d + 1e-6;
            left &= !ends || s.diameter().nominal() <= d.d + 1e-6;
          }
          x = to;
        }
      } else {
        boolean fromLeft = part.left().steps().stream().anyMatch(s -> matches(s, d));
        left = fromLeft && clearBore(part.left().steps(), 0, 1, d);
        right = !fromLeft && clearBore(part.right().steps(), part.length(), -1, d);
      }
      return right ? Side.RIGHT : left ? Side.LEFT : null;
    }

    private boolean matches(Step s, Diameter d) {
      return Math.abs(s.diameter().nominal() - d.d) < 1e-6 || Math.abs(end(s) - d.d) < 1e-6;
    }

    private boolean clearBore(List<Step> steps, double face, int way, Diameter d) {
      double x = face;
      double inner = way > 0 ? Math.min(d.from, d.to) : Math.max(d.from, d.to);
      for (Step s : steps) {
        double to = x + way * s.length().nominal();
        boolean before = way * (to - inner) < 1e-6;
        if (before && Math.min(s.diameter().nominal(), end(s)) < d.d + 1.2 / k) {
          return false;
        }
        x = to;
      }
      return true;
    }

    private void edge(Step s, Edge e, double x, double d, String books, boolean inside) {
      if (e instanceof Edge.Sharp) {
        return;
      }
      scheme.printed(s.name() + " " + books);
      if (e instanceof Edge.Chamfer c) {
        boolean half = Math.abs(c.angle() - Math.PI / 4) < 1e-6;
        String text = Values.number(c.width()) + " × " + (half ? "45°" : Values.degrees(c.angle()));
        double into = x < part.length() / 2 ? c.width() / 2 : -c.width() / 2;
        double drop = Math.tan(c.angle()) * c.width() / 2;
        note(List.of(text), new Point(x + into, d / 2 + (inside ? drop : -drop)));
      } else if (e instanceof Edge.Round r) {
        note(List.of("R" + Values.number(r.radius())), new Point(x, d / 2));
      } else if (e instanceof Edge.Undercut u) {
        note(
            List.of("undercut " + Values.number(u.width()) + " × " + Values.number(u.depth())),
            new Point(x, d / 2));
      }
    }

    private void note(List<String> lines, Point at) {
      edges.computeIfAbsent(lines, l -> new Group(new ArrayList<>())).anchors.add(at);
    }

    private void gear(Step s, Toothing t, double x, double to) {
      scheme.printed(s.name() + " teeth");
      double p = t.referenceDiameter() / 2;
      double root = t.rootDiameter() / 2;
      for (int sign : new int[] {1, -1}) {
        plan.add(
            Mark.Stroke.line(
                "gear", Pen.CENTRE, x * k - 2, sign * p * k, to * k + 2, sign * p * k));
        if (bored) {
          double inner = sign * root * k;
          double outer = sign * s.diameter().nominal() / 2 * k;
          plan.unhatched(
              new Box(
                  Math.min(x, to) * k,
                  Math.min(inner, outer),
                  Math.max(x, to) * k,
                  Math.max(inner, outer)));
          plan.add(
              Mark.Stroke.line(
                  "gear", Pen.OUTLINE, x * k, sign * root * k, to * k, sign * root * k));
        }
      }
      List<List<String>> rows = new ArrayList<>();
      rows.add(List.of("Gear " + s.name(), ""));
      rows.add(List.of("Module m", Values.number(t.module())));
      rows.add(List.of("Number of teeth z", Integer.toString(t.teeth())));
      rows.add(List.of("Basic rack", "ISO 53"));
      rows.add(List.of("Pressure angle", Values.degrees(t.pressureAngle())));
      rows.add(
          List.of(
              "Helix angle, hand",
              t.helix() == 0
                  ? "0°, spur"
                  : Values.degrees(Math.abs(t.helix())) + (t.helix() > 0 ? " right" : " left")));
      rows.add(List.of("Profile shift x", Values.number(t.shift())));
      rows.add(List.of("Reference diameter", Values.number(t.referenceDiameter())));
      if (!t.mate().isEmpty()) {
        rows.add(List.of("Mate", t.mate()));
      }
      for (String line : t.further()) {
        int cut = Math.max(line.indexOf(':'), line.indexOf('='));
        rows.add(
            cut < 0
                ? List.of(line, "")
                : List.of(
                    line.substring(0, cut).trim(),
                    line.substring(cut + 1).trim().replace('.', ',')));
      }
      tables.add(new Table("gear " + s.name(), rows));
    }

    // ---- operations

    private void operation(Turned.Operation o) {
      if (o instanceof Turned.Groove g) {
        double a = part.place(g.from(), g.at());
        double b = part.place(g.from(), g.at() + g.width().nominal());
        List<String> lines = new ArrayList<>(List.of(Values.size("⌀", g.bottom())));
        scheme.printed(g.name() + " bottom");
        if (g.flank() > 0) {
          lines.add("flanks " + Values.degrees(g.flank()));
          scheme.printed(g.name() + " flank");
        }
        plan.note(between(a, b, g.bottom().nominal() / 2), 0, lines);
      } else if (o instanceof Turned.CrossHole h) {
        crossHole(h);
      } else if (o instanceof Turned.AxialHoles h) {
        axialHoles(h);
      } else if (o instanceof Turned.CentreHole c) {
        double x = c.end() == End.LEFT ? 0 : part.length();
        String stay =
            switch (c.stay()) {
              case REQUIRED -> "required";
              case ALLOWED -> "may stay";
              case FORBIDDEN -> "must not remain";
            };
        scheme.printed(c.name() + " centre hole");
        note(
            List.of("ISO 6411 - " + c.type() + " " + Values.number(c.pilot()), stay),
            new Point(x, 0));
      } else if (o instanceof Turned.Graduations g) {
        graduations(g);
      } else if (o instanceof Turned.Keyway w) {
        sectioned(
            w.name(),
            "width",
            "keyway " + Values.size("", w.width()),
            "bottom",
            "depth from opposite side "
                + Values.number(
                    w.bottom() + radiusAt(part.place(w.from(), w.at() + w.length().nominal() / 2))),
            part.place(w.from(), w.at() + w.length().nominal() / 2),
            w.bottom(),
            w.angle());
      } else if (o instanceof Turned.Flats f) {
        flats(f);
      } else {
        onEnd(o);
      }
    }

    private void crossHole(Turned.CrossHole h) {
      double x = part.place(h.from(), h.at());
      List<String> lines = Holes.callout(h, h.hole(), 1, scheme);
      if (Math.abs(h.angle()) > 1e-9) {
        lines.add("at " + Values.degrees(h.angle()) + " from top");
        scheme.printed(h.name() + " angle");
        slanted(h, x, lines);
        return;
      }
      plan.note(List.of(new Point(x, radiusAt(x))), 0, lines);
    }

    /** A cross hole out of the plane of the main view is shown in a section across the axis. */
    private void slanted(Turned.CrossHole h, double x, List<String> lines) {
      Plan p = sectionPlan(x);
      Vec out = new Vec(0, -Math.sin(h.angle()), Math.cos(h.angle())).times(entry(h, x));
      p.marks(
          new Marks(
              List.of(),
              marks.threads().stream().filter(t -> t.feature().equals(h.name())).toList()),
          v -> seen(v, Looking.LEFT),
          Looking.LEFT.along(),
          Plan.Hidden.LEFT_OUT);
      p.note(List.of(seen(out, Looking.LEFT)), 0, lines);
    }

    /** Returns how far from the axis a cross hole enters: at the outline, or at a flat. */
    private double entry(Turned.CrossHole h, double x) {
      double r = radiusAt(x);
      for (Turned.Operation o : part.operations()) {
        if (o instanceof Turned.Flats f) {
          double a = part.place(f.from(), f.at());
          double b = part.place(f.from(), f.at() + f.length().nominal());
          double off = Math.IEEEremainder(h.angle() - f.start(), 2 * Math.PI / f.count());
          if (x > Math.min(a, b) && x < Math.max(a, b) && Math.abs(off) < 1e-6) {
            r = Math.min(r, f.distance());
          }
        }
      }
      return r;
    }

    private boolean inPlane(Marks.Threaded t) {
      return Math.abs(t.from().y()) < 1e-6;
    }

    /** The axis of holes along the axis, where one of them lies in the plane of the section. */
    private void axes(Turned.AxialHoles h) {
      double x = part.place(h.from(), h.sunk());
      int way = h.from() == End.LEFT ? 1 : -1;
      double reach = 0;
      double most = h.hole().isThrough() ? part.length() : h.hole().depth();
      while (reach < most && radiusAt(x + way * (reach + 0.05)) > h.circle() / 2) {
        reach += 0.1;
      }
      for (int i = 0; i < h.count() && h.circle() > 0; i++) {
        double a = h.start() + 2 * Math.PI * i / h.count();
        if (Math.abs(Math.sin(a)) < 1e-6) {
          double z = h.circle() / 2 * Math.cos(a) * k;
          plan.add(
              Mark.Stroke.line(
                  "axis:main", Pen.CENTRE, x * k - way * 3, z, (x + way * reach) * k + way * 3, z));
        }
      }
    }

    private void axialHoles(Turned.AxialHoles h) {
      List<String> lines = Holes.callout(h, h.hole(), h.count(), scheme);
      Placed view = h.circle() > 0 ? endPlan() : null;
      if (h.circle() <= 0) {
        double x = part.place(h.from(), h.sunk());
        double in = h.hole().isThrough() ? part.length() / 2 : h.hole().depth() / 2;
        double at = h.from() == End.LEFT ? x + in : x - in;
        plan.note(
            List.of(
                new Point(at, h.hole().cutDiameter() / 2),
                new Point(x, h.hole().cutDiameter() / 2)),
            0,
            lines);
        return;
      }
      axes(h);
      lines.add("on ⌀" + Values.number(h.circle()) + ", first at " + Values.degrees(h.start()));
      scheme.printed(h.name() + " circle");
      scheme.printed(h.name() + " angle");
      if (view == null) {
        return;
      }
      view.plan.add(new Mark.Arc("axis:end", Pen.CENTRE, 0, 0, h.circle() / 2 * k, 0, 2 * Math.PI));
      List<Point> anchors = new ArrayList<>();
      for (int i = 0; i < h.count(); i++) {
        double a = h.start() + 2 * Math.PI * i / h.count();
        Vec p = new Vec(0, -Math.sin(a), Math.cos(a)).times(h.circle() / 2);
        Point s = seen(p, endLooking);
        anchors.add(s);
        double l = Math.hypot(s.x(), s.y());
        double reach = h.hole().cutDiameter() / 2 * k + 2;
        view.plan.add(
            Mark.Stroke.line(
                "axis:end",
                Pen.CENTRE,
                s.x() * k - s.x() / l * reach,
                s.y() * k - s.y() / l * reach,
                s.x() * k + s.x() / l * reach,
                s.y() * k + s.y() / l * reach));
      }
      anchors.sort(java.util.Comparator.comparingDouble(p -> -p.y()));
      view.plan.note(anchors, h.hole().cutDiameter() / 2, lines);
    }

    private record Placed(Plan plan) {}

    private @Nullable Plan endView;

    private Placed endPlan() {
      Plan p = endView;
      if (p == null) {
        p = new Plan("end", k);
        if (end != null) {
          p.view(end, Plan.Hidden.LEFT_OUT);
        }
        Looking l = endLooking;
        p.cross(0, 0, part.largest() / 2 * k);
        List<Marks.Threaded> ends = marks.threads();
        p.marks(
            new Marks(List.of(), ends.stream().filter(t -> isEnd(t, l)).toList()),
            v -> seen(v, l),
            l.along(),
            Plan.Hidden.LEFT_OUT);
        endView = p;
        placed.add(
            new Draft.Placed(p, endLooking == Looking.LEFT ? Draft.Where.RIGHT : Draft.Where.LEFT));
      }
      return new Placed(p);
    }

    private boolean isEnd(Marks.Threaded t, Looking l) {
      return t.inside() == Marks.Inside.INTERNAL && t.to().minus(t.from()).dot(l.along()) > 0;
    }

    private void onEnd(Turned.Operation o) {
      Plan p = endPlan().plan;
      if (o instanceof Turned.EndSlot s) {
        scheme.printed(s.name() + " width");
        scheme.printed(s.name() + " depth");
        p.note(
            List.of(new Point(s.width().nominal() / 2, part.largest() / 4), new Point(0, 0)),
            0,
            List.of("slot " + Values.size("", s.width()) + " ↧" + Values.number(s.depth())));
      } else if (o instanceof Turned.Socket s) {
        scheme.printed(s.name() + " across");
        scheme.printed(s.name() + " depth");
        p.note(
            List.of(new Point(s.across().nominal() / 4, s.across().nominal() / 2)),
            0,
            List.of(
                (s.sides() == 4 ? "□" : "hexagon ")
                    + Values.size("", s.across())
                    + " ↧"
                    + Values.number(s.depth())));
      } else if (o instanceof Turned.BoreKeyway w) {
        scheme.printed(w.name() + " width");
        scheme.printed(w.name() + " bottom");
        Vec v = new Vec(0, -Math.sin(w.angle()), Math.cos(w.angle())).times(w.bottom());
        p.note(
            List.of(seen(v, endLooking)),
            0,
            List.of(
                "keyway " + Values.size("", w.width()),
                "bottom " + Values.number(w.bottom()) + " from axis"));
      }
    }

    private void flats(Turned.Flats f) {
      double x = part.place(f.from(), f.at() + f.length().nominal() / 2);
      boolean pairs = f.count() % 2 == 0;
      String text =
          pairs
              ? (f.count() == 2 ? "" : f.count() == 4 ? "□" : "hexagon ")
                  + Values.number(2 * f.distance())
                  + (f.count() == 2 ? " across flats" : "")
              : "flat " + Values.number(f.distance() + radiusAt(x)) + " from opposite side";
      scheme.printed(f.name() + " distance");
      Plan p = sectionPlan(x);
      Vec v = new Vec(0, -Math.sin(f.start()), Math.cos(f.start())).times(f.distance());
      p.note(List.of(seen(v, Looking.LEFT)), 0, List.of(text));
    }

    private void sectioned(
        String name,
        String what,
        String text,
        String second,
        String more,
        double x,
        double r,
        double angle) {
      scheme.printed(name + " " + what);
      scheme.printed(name + " " + second);
      Plan p = sectionPlan(x);
      Vec v = new Vec(0, -Math.sin(angle), Math.cos(angle)).times(r);
      p.note(List.of(seen(v, Looking.LEFT)), 0, List.of(text, more));
    }

    private final Map<Double, Plan> sectionPlans = new LinkedHashMap<>();

    private Plan sectionPlan(double x) {
      double key =
          sections.keySet().stream()
              .min(java.util.Comparator.comparingDouble(a -> Math.abs(a - x)))
              .orElse(x);
      return sectionPlans.computeIfAbsent(
          key,
          at -> {
            int n = new ArrayList<>(sections.keySet()).indexOf(at);
            Plan p = new Plan("section" + n, k);
            View v = sections.get(at);
            if (v != null) {
              p.view(v, Plan.Hidden.LEFT_OUT);
            }
            p.cross(0, 0, radiusAt(at) * k);
            String letter = String.valueOf((char) ('A' + n));
            p.titled(letter + "-" + letter);
            placed.add(new Draft.Placed(p, Draft.Where.RIGHT));
            return p;
          });
    }

    /** Cutting planes in the main view: wide ends, arrows in the direction of view, letters. */
    private void cuttingPlanes() {
      int n = 0;
      for (double x : sections.keySet()) {
        String letter = String.valueOf((char) ('A' + n));
        String g = "cut:" + letter;
        double top = plan.outline().y1();
        double bottom = plan.outline().y0();
        for (int sign : new int[] {1, -1}) {
          double from = sign > 0 ? top + 2 : bottom - 2;
          double to = from + sign * 6;
          plan.add(Mark.Stroke.line(g, Pen.CUTTING, x * k, from, x * k, to));
          double arrowAt = to - sign * 1.5;
          plan.add(Mark.Stroke.line(g, Pen.NARROW, x * k - 9, arrowAt, x * k - 3, arrowAt));
          plan.add(Mark.Fill.arrow(g, x * k - 0.3, arrowAt, 0));
          double w = Lettering.width(letter, 5);
          double at = sign > 0 ? x * k - w / 2 : letterAt(x, w);
          double y = sign > 0 ? to + 1.5 : to - 6.5;
          plan.add(new Mark.Text(g, letter, at, y, 5, Mark.Reading.FROM_BELOW));
          double left = Math.min(x * k - 9.5, at - 0.5);
          double right = Math.max(x * k + 2.5, at + w + 0.5);
          plan.keepClear(
              sign > 0
                  ? new Box(left, from - 0.5, right, y + 5.5)
                  : new Box(left, y - 0.5, right, from + 0.5));
        }
        n++;
      }
    }

    /** Returns where a letter below the view stands so that no extension line runs through it. */
    private double letterAt(double x, double w) {
      for (double shift : new double[] {0, -5, 5, -9, 9, -13, 13}) {
        double low = x * k + shift - w / 2;
        if (scheme.clear(AXIS, (low - 1) / k, (low + w + 1) / k)) {
          return low;
        }
      }
      return x * k - w / 2;
    }

    private void graduations(Turned.Graduations g) {
      scheme.printed(g.name() + " graduations");
      double x = part.place(g.from(), g.at());
      plan.note(
          List.of(new Point(x, radiusAt(x))),
          0,
          List.of(
              g.divisions() + " divisions, see template",
              "lines "
                  + Values.number(g.minorLength())
                  + " / "
                  + Values.number(g.minorLength() * 1.4)
                  + " / "
                  + Values.number(g.minorLength() * 1.8)));
    }
  }
}
