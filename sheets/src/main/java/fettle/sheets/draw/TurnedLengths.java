package fettle.sheets.draw;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.End;
import fettle.parts.recipe.Held;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import fettle.sheets.dimension.Attached;
import fettle.sheets.dimension.Side;
import fettle.sheets.dimension.Values;
import java.util.List;

/** Lengths along the axis of a turned part: which are due, and where they stand. */
final class TurnedLengths {

  private final Board board;

  TurnedLengths(Board board) {
    this.board = board;
  }

  /** Notes every place along the axis that must be dimensioned. */
  void places() {
    board.scheme.place(Board.AXIS, 0);
    board.scheme.place(Board.AXIS, board.part.length());
    along(board.part.outside(), 0, 1);
    along(board.part.left().steps(), 0, 1);
    along(board.part.right().steps(), board.part.length(), -1);
    for (Turned.Operation o : board.part.operations()) {
      if (o instanceof Turned.Groove g) {
        board.scheme.place(Board.AXIS, board.part.place(g.from(), g.at()));
        board.scheme.place(Board.AXIS, board.part.place(g.from(), g.at() + g.width().nominal()));
      } else if (o instanceof Turned.CrossHole h) {
        board.scheme.place(Board.AXIS, board.part.place(h.from(), h.at()));
      } else if (o instanceof Turned.AxialHoles h && h.sunk() > 0) {
        board.scheme.place(Board.AXIS, board.part.place(h.from(), h.sunk()));
      } else if (o instanceof Turned.Keyway w) {
        board.scheme.place(Board.AXIS, board.part.place(w.from(), w.at()));
        board.scheme.place(Board.AXIS, board.part.place(w.from(), w.at() + w.length().nominal()));
      } else if (o instanceof Turned.Flats f) {
        board.scheme.place(Board.AXIS, board.part.place(f.from(), f.at()));
        board.scheme.place(Board.AXIS, board.part.place(f.from(), f.at() + f.length().nominal()));
      } else if (o instanceof Turned.Graduations g) {
        board.scheme.place(Board.AXIS, board.part.place(g.from(), g.at()));
      }
    }
  }

  private void along(List<Step> steps, double from, int way) {
    double x = from;
    for (Step s : steps) {
      double to = x + way * s.length().nominal();
      board.scheme.place(Board.AXIS, to);
      double full = threadEnd(s, x, to);
      if (!Double.isNaN(full)) {
        board.scheme.place(Board.AXIS, full);
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
  void lengths() {
    tolerancedLengths(board.part.outside(), 0, 1, false);
    tolerancedLengths(board.part.left().steps(), 0, 1, true);
    tolerancedLengths(board.part.right().steps(), board.part.length(), -1, true);
    for (Turned.Operation o : board.part.operations()) {
      if (o instanceof Turned.Groove g) {
        double a = board.part.place(g.from(), g.at());
        double b = board.part.place(g.from(), g.at() + g.width().nominal());
        length(a, b, Values.size("", g.width()), g.bottom().nominal() / 2);
        double face = board.part.place(g.from(), 0);
        length(face, a, Values.number(g.at()), g.bottom().nominal() / 2);
      } else if (o instanceof Turned.Keyway w) {
        double a = board.part.place(w.from(), w.at());
        length(
            a,
            board.part.place(w.from(), w.at() + w.length().nominal()),
            Values.size("", w.length()),
            0);
        length(board.part.place(w.from(), 0), a, Values.number(w.at()), 0);
      } else if (o instanceof Turned.Flats f) {
        double a = board.part.place(f.from(), f.at());
        length(
            a,
            board.part.place(f.from(), f.at() + f.length().nominal()),
            Values.size("", f.length()),
            0);
        length(board.part.place(f.from(), 0), a, Values.number(f.at()), 0);
      } else if (o instanceof Turned.CrossHole h) {
        length(
            board.part.place(h.from(), 0),
            board.part.place(h.from(), h.at()),
            board.asked.isPlaced(h.name())
                ? Values.exact(Values.number(h.at()))
                : Values.number(h.at()),
            0);
      } else if (o instanceof Turned.AxialHoles h) {
        length(
            board.part.place(h.from(), 0),
            board.part.place(h.from(), h.sunk()),
            Values.number(h.sunk()),
            0);
      } else if (o instanceof Turned.Graduations g) {
        length(
            board.part.place(g.from(), 0),
            board.part.place(g.from(), g.at()),
            Values.number(g.at()),
            0);
      }
    }
    length(0, board.part.length(), Values.number(board.part.length()), Double.NaN);
    boreDepths(board.part.left(), 0, 1);
    boreDepths(board.part.right(), board.part.length(), -1);
    boolean fromRight = datum() == End.RIGHT;
    double x = 0;
    for (Step s : board.part.outside()) {
      double to = x + s.length().nominal();
      double full = threadEnd(s, x, to);
      if (!Double.isNaN(full)) {
        double start = s.threadFrom() == End.LEFT ? x : to;
        length(start, full, Values.number(s.threadLength()), s.diameter().nominal() / 2);
      }
      x = to;
    }
    x = 0;
    for (Step s : board.part.outside()) {
      x += s.length().nominal();
      double face = fromRight ? board.part.length() : 0;
      length(face, x, Values.number(Math.abs(face - x)), Double.NaN);
    }
  }

  /** The end face nearer to the largest collar is the datum. */
  private End datum() {
    double x = 0;
    double at = 0;
    double largest = 0;
    for (Step s : board.part.outside()) {
      double d = Math.max(s.diameter().nominal(), s.endDiameter());
      if (d > largest) {
        largest = d;
        at = x + s.length().nominal() / 2;
      }
      x += s.length().nominal();
    }
    return at <= board.part.length() / 2 ? End.LEFT : End.RIGHT;
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
    if (Math.abs(a - b) > 1e-6 && board.scheme.join(Board.AXIS, a, b)) {
      board.plan.dimension(Side.BELOW, a, b, foot(a, radius), foot(b, radius), text);
    }
  }

  /** Puts what is asked of end faces, shoulders and floors on their extension lines. */
  void faces() {
    for (Held face : board.asked.faces()) {
      Attached attached = board.asked.surface(face.name());
      if (!attached.isEmpty()) {
        board.plan.face(
            Side.BELOW, face.at(), foot(face.at(), Double.NaN), face.outward(), attached);
      }
    }
  }

  private double foot(double x, double radius) {
    boolean face = x < 1e-6 || x > board.part.length() - 1e-6;
    return -(Double.isNaN(radius) || face ? board.radiusAt(x) : radius);
  }
}
