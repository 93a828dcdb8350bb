package fettle.sheets.draw;

import fettle.parts.recipe.End;
import fettle.parts.recipe.Turned;
import fettle.parts.solid.Looking;
import fettle.parts.solid.Marks;
import fettle.parts.solid.Vec;
import fettle.sheets.dimension.Values;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.List;

/** What is made on a turned part besides its steps. */
final class TurnedOperations {

  private final Board board;
  private final TurnedSections sections;
  private final TurnedEnd end;

  TurnedOperations(Board board, TurnedSections sections, TurnedEnd end) {
    this.board = board;
    this.sections = sections;
    this.end = end;
  }

  /** Writes what one operation is. */
  void operation(Turned.Operation o) {
    if (o instanceof Turned.Groove g) {
      double a = board.part.place(g.from(), g.at());
      double b = board.part.place(g.from(), g.at() + g.width().nominal());
      List<String> lines = new ArrayList<>(List.of(Values.size("⌀", g.bottom())));
      board.scheme.printed(g.name() + " bottom");
      if (g.flank() > 0) {
        lines.add("flanks " + Values.degrees(g.flank()));
        board.scheme.printed(g.name() + " flank");
      }
      board.plan.note(board.between(a, b, g.bottom().nominal() / 2), 0, lines);
    } else if (o instanceof Turned.CrossHole h) {
      crossHole(h);
    } else if (o instanceof Turned.AxialHoles h) {
      axialHoles(h);
    } else if (o instanceof Turned.CentreHole c) {
      double x = c.end() == End.LEFT ? 0 : board.part.length();
      String stay =
          switch (c.stay()) {
            case REQUIRED -> "required";
            case ALLOWED -> "may stay";
            case FORBIDDEN -> "must not remain";
          };
      board.scheme.printed(c.name() + " centre hole");
      board.note(
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
                  w.bottom()
                      + board.radiusAt(
                          board.part.place(w.from(), w.at() + w.length().nominal() / 2))),
          board.part.place(w.from(), w.at() + w.length().nominal() / 2),
          w.bottom(),
          w.angle());
    } else if (o instanceof Turned.Flats f) {
      flats(f);
    } else {
      end.operation(o);
    }
  }

  private void crossHole(Turned.CrossHole h) {
    double x = board.part.place(h.from(), h.at());
    List<String> lines = Holes.callout(h, h.hole(), 1, board.scheme);
    if (Math.abs(h.angle()) > 1e-9) {
      lines.add("at " + Values.degrees(h.angle()) + " from top");
      board.scheme.printed(h.name() + " angle");
      slanted(h, x, lines);
      return;
    }
    board.plan.note(List.of(new Point(x, board.radiusAt(x))), 0, lines, board.asked.all(h.name()));
  }

  /** A cross hole out of the plane of the main view is shown in a section across the axis. */
  private void slanted(Turned.CrossHole h, double x, List<String> lines) {
    Plan p = sections.at(x);
    Vec out = new Vec(0, -Math.sin(h.angle()), Math.cos(h.angle())).times(entry(h, x));
    p.marks(
        new Marks(
            List.of(),
            board.marks.threads().stream().filter(t -> t.feature().equals(h.name())).toList()),
        v -> Board.seen(v, Looking.LEFT),
        Looking.LEFT.along(),
        Plan.Hidden.LEFT_OUT);
    p.note(List.of(Board.seen(out, Looking.LEFT)), 0, lines, board.asked.all(h.name()));
  }

  /** Returns how far from the axis a cross hole enters: at the outline, or at a flat. */
  private double entry(Turned.CrossHole h, double x) {
    double r = board.radiusAt(x);
    for (Turned.Operation o : board.part.operations()) {
      if (o instanceof Turned.Flats f) {
        double a = board.part.place(f.from(), f.at());
        double b = board.part.place(f.from(), f.at() + f.length().nominal());
        double off = Math.IEEEremainder(h.angle() - f.start(), 2 * Math.PI / f.count());
        if (x > Math.min(a, b) && x < Math.max(a, b) && Math.abs(off) < 1e-6) {
          r = Math.min(r, f.distance());
        }
      }
    }
    return r;
  }

  /** The axis of holes along the axis, where one of them lies in the plane of the section. */
  private void axes(Turned.AxialHoles h) {
    double x = board.part.place(h.from(), h.sunk());
    int way = h.from() == End.LEFT ? 1 : -1;
    double reach = 0;
    double most = h.hole().isThrough() ? board.part.length() : h.hole().depth();
    while (reach < most && board.radiusAt(x + way * (reach + 0.05)) > h.circle() / 2) {
      reach += 0.1;
    }
    for (int i = 0; i < h.count() && h.circle() > 0; i++) {
      double a = h.start() + 2 * Math.PI * i / h.count();
      if (Math.abs(Math.sin(a)) < 1e-6) {
        double z = h.circle() / 2 * Math.cos(a) * board.k;
        board.plan.add(
            Mark.Stroke.line(
                "axis:main",
                Pen.CENTRE,
                x * board.k - way * 3,
                z,
                (x + way * reach) * board.k + way * 3,
                z));
      }
    }
  }

  private void axialHoles(Turned.AxialHoles h) {
    List<String> lines = Holes.callout(h, h.hole(), h.count(), board.scheme);
    Plan view = h.circle() > 0 ? end.plan() : null;
    if (h.circle() <= 0) {
      double x = board.part.place(h.from(), h.sunk());
      double in = h.hole().isThrough() ? board.part.length() / 2 : h.hole().depth() / 2;
      double at = h.from() == End.LEFT ? x + in : x - in;
      board.plan.note(
          List.of(
              new Point(at, h.hole().cutDiameter() / 2), new Point(x, h.hole().cutDiameter() / 2)),
          0,
          lines,
          board.asked.all(h.name()));
      return;
    }
    axes(h);
    lines.add(Holes.circle(h.circle(), h.start(), board.asked.isPlaced(h.name())));
    board.scheme.printed(h.name() + " circle");
    board.scheme.printed(h.name() + " angle");
    if (view == null) {
      return;
    }
    view.add(new Mark.Arc("axis:end", Pen.CENTRE, 0, 0, h.circle() / 2 * board.k, 0, 2 * Math.PI));
    List<Point> anchors = new ArrayList<>();
    for (int i = 0; i < h.count(); i++) {
      double a = h.start() + 2 * Math.PI * i / h.count();
      Vec p = new Vec(0, -Math.sin(a), Math.cos(a)).times(h.circle() / 2);
      Point s = Board.seen(p, end.looking());
      anchors.add(s);
      double l = Math.hypot(s.x(), s.y());
      double reach = h.hole().cutDiameter() / 2 * board.k + 2;
      view.add(
          Mark.Stroke.line(
              "axis:end",
              Pen.CENTRE,
              s.x() * board.k - s.x() / l * reach,
              s.y() * board.k - s.y() / l * reach,
              s.x() * board.k + s.x() / l * reach,
              s.y() * board.k + s.y() / l * reach));
    }
    anchors.sort(java.util.Comparator.comparingDouble(p -> -p.y()));
    view.note(anchors, h.hole().cutDiameter() / 2, lines, board.asked.all(h.name()));
  }

  private void flats(Turned.Flats f) {
    double x = board.part.place(f.from(), f.at() + f.length().nominal() / 2);
    boolean pairs = f.count() % 2 == 0;
    String text =
        pairs
            ? (f.count() == 2 ? "" : f.count() == 4 ? "□" : "hexagon ")
                + Values.number(2 * f.distance())
                + (f.count() == 2 ? " across flats" : "")
            : "flat " + Values.number(f.distance() + board.radiusAt(x)) + " from opposite side";
    board.scheme.printed(f.name() + " distance");
    Plan p = sections.at(x);
    Vec v = new Vec(0, -Math.sin(f.start()), Math.cos(f.start())).times(f.distance());
    p.note(List.of(Board.seen(v, Looking.LEFT)), 0, List.of(text), board.asked.all(f.name()));
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
    board.scheme.printed(name + " " + what);
    board.scheme.printed(name + " " + second);
    Plan p = sections.at(x);
    Vec v = new Vec(0, -Math.sin(angle), Math.cos(angle)).times(r);
    p.note(List.of(Board.seen(v, Looking.LEFT)), 0, List.of(text, more), board.asked.all(name));
  }

  private void graduations(Turned.Graduations g) {
    board.scheme.printed(g.name() + " graduations");
    double x = board.part.place(g.from(), g.at());
    board.plan.note(
        List.of(new Point(x, board.radiusAt(x))),
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
