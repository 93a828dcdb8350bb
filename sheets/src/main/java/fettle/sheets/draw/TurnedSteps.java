package fettle.sheets.draw;

import fettle.parts.recipe.Edge;
import fettle.parts.recipe.Step;
import fettle.sheets.dimension.Attached;
import fettle.sheets.dimension.Values;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Point;
import java.util.List;

/** What the steps of outline and bores carry: diameters, threads, edges, knurls, teeth. */
final class TurnedSteps {

  private final Board board;
  private final TurnedDiameters diameters;
  private final GearTable gears;

  TurnedSteps(Board board, TurnedDiameters diameters, GearTable gears) {
    this.board = board;
    this.diameters = diameters;
    this.gears = gears;
  }

  /** Writes what stands on every step. */
  void all() {
    steps(board.part.outside(), 0, 1, false);
    steps(board.part.left().steps(), 0, 1, true);
    steps(board.part.right().steps(), board.part.length(), -1, true);
  }

  private void steps(List<Step> steps, double from, int way, boolean inside) {
    String prefix = inside ? "bore " : "";
    double x = from;
    for (int i = 0; i < steps.size(); i++) {
      Step s = steps.get(i);
      double to = x + way * s.length().nominal();
      step(steps, i, x, to, prefix, inside);
      edge(s, s.start(), x, s.diameter().nominal(), prefix + "start", inside);
      edge(s, s.end(), to, Board.end(s), prefix + "end", inside);
      x = to;
    }
  }

  private void step(List<Step> steps, int i, double x, double to, String prefix, boolean inside) {
    Step s = steps.get(i);
    String suffix = "";
    Attached median = board.asked.median(s.name());
    if (s.finish().roughness() > 0) {
      suffix = "  " + Lettering.TEXTURE + Values.roughness(s.finish().roughness());
      board.scheme.printed(s.name() + " " + prefix + "finish");
    }
    boolean startMeets =
        i > 0
            && s.form() != Step.Form.CYLINDER
            && Math.abs(Board.end(steps.get(i - 1)) - s.diameter().nominal()) < 1e-6;
    boolean endMeets =
        i + 1 < steps.size()
            && steps.get(i + 1).form() == Step.Form.CYLINDER
            && Math.abs(steps.get(i + 1).diameter().nominal() - s.endDiameter()) < 1e-6;
    if (s.thread() != null) {
      String text = Holes.thread(s.thread().designation()) + suffix;
      suffix = "";
      diameters.add(
          text,
          s.thread().major(),
          s.diameter().nominal(),
          x,
          to,
          inside,
          s.name() + " " + prefix + "thread",
          median);
      median = Attached.NOTHING;
    } else if (!startMeets && s.diameter().nominal() > 0) {
      String text = Values.size("⌀", s.diameter()) + suffix;
      suffix = "";
      double upTo = s.form() == Step.Form.CYLINDER ? to : x;
      diameters.add(
          text,
          s.diameter().nominal(),
          s.diameter().nominal(),
          x,
          upTo,
          inside,
          s.name() + " " + prefix + "diameter",
          median);
      median = Attached.NOTHING;
    }
    if (s.form() != Step.Form.CYLINDER && !endMeets && s.endDiameter() > 0) {
      String text = "⌀" + Values.number(s.endDiameter()) + suffix;
      suffix = "";
      diameters.add(
          text,
          s.endDiameter(),
          s.endDiameter(),
          to,
          to,
          inside,
          s.name() + " " + prefix + "end diameter",
          median);
      median = Attached.NOTHING;
    }
    double middle = (x + to) / 2;
    double r = (s.diameter().nominal() + Board.end(s)) / 4;
    if (s.form() == Step.Form.ARC) {
      double sagitta =
          Math.abs(s.bulge())
              - Math.sqrt(Math.max(0, s.bulge() * s.bulge() - Math.pow((to - x) / 2, 2)));
      board.note(
          List.of("R" + Values.number(Math.abs(s.bulge()))),
          new Point(middle, r + Math.signum(s.bulge()) * sagitta));
      board.scheme.printed(s.name() + " " + prefix + "radius");
    }
    if (s.knurl() != null) {
      board.plan.note(
          board.between(x, to, r),
          0,
          List.of(
              "knurl ISO 13444 - " + s.knurl().form() + " " + Values.number(s.knurl().pitch())));
      board.scheme.printed(s.name() + " " + prefix + "knurl");
    }
    if (s.teeth() != null) {
      gears.add(s, s.teeth(), x, to);
    }
    if (!suffix.isEmpty()) {
      board.plan.note(board.between(x, to, r), 0, List.of(suffix.trim()));
    }
    frames(board.between(x, to, r), median.median());
    frames(board.between(x, to, r), board.asked.surface(s.name()));
  }

  private void frames(List<Point> anchors, Attached attached) {
    if (!attached.isEmpty()) {
      board.plan.note(anchors, 0, List.of(), attached);
    }
  }

  private void edge(Step s, Edge e, double x, double d, String books, boolean inside) {
    if (e instanceof Edge.Sharp) {
      return;
    }
    board.scheme.printed(s.name() + " " + books);
    if (e instanceof Edge.Chamfer c) {
      boolean half = Math.abs(c.angle() - Math.PI / 4) < 1e-6;
      String text = Values.number(c.width()) + " × " + (half ? "45°" : Values.degrees(c.angle()));
      double into = x < board.part.length() / 2 ? c.width() / 2 : -c.width() / 2;
      double drop = Math.tan(c.angle()) * c.width() / 2;
      board.note(List.of(text), new Point(x + into, d / 2 + (inside ? drop : -drop)));
    } else if (e instanceof Edge.Round r) {
      board.note(List.of("R" + Values.number(r.radius())), new Point(x, d / 2));
    } else if (e instanceof Edge.Undercut u) {
      board.note(
          List.of("undercut " + Values.number(u.width()) + " × " + Values.number(u.depth())),
          new Point(x, d / 2));
    }
  }
}
