package fettle.sheets.draw;

import fettle.parts.recipe.Step;
import fettle.sheets.dimension.Attached;
import fettle.sheets.dimension.Callout;
import fettle.sheets.dimension.Linear;
import fettle.sheets.dimension.Side;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Diameters of a turned part, beside the view where that is clear, else on a leader. */
final class TurnedDiameters {

  private record Diameter(
      String text,
      double d,
      double from,
      double to,
      boolean inside,
      List<Point> anchors,
      List<String> features,
      Attached attached) {}

  private final Board board;
  private final Map<String, Diameter> diameters = new LinkedHashMap<>();
  private final Map<Linear, Callout> instead = new LinkedHashMap<>();

  TurnedDiameters(Board board) {
    this.board = board;
  }

  /** Returns the note that may stand for a dimension; null if none may. */
  @Nullable Callout instead(Linear dimension) {
    return instead.get(dimension);
  }

  /** Notes a diameter to be printed. */
  void add(
      String text,
      double d,
      double shown,
      double x,
      double to,
      boolean inside,
      String books,
      Attached attached) {
    board.scheme.printed(books);
    double r = shown / 2;
    List<Point> anchors =
        Math.abs(to - x) < 1e-9 ? List.of(new Point(x, r)) : board.between(x, to, r);
    String key = (inside ? "in " : "out ") + text + (attached.isEmpty() ? "" : books);
    Diameter old = diameters.get(key);
    if (old != null) {
      old.features.add(books);
      old.anchors.addAll(anchors);
      return;
    }
    diameters.put(
        key,
        new Diameter(
            text,
            d,
            x,
            to,
            inside,
            new ArrayList<>(anchors),
            new ArrayList<>(List.of(books)),
            attached));
  }

  /** Prints the diameters, equal ones once with their number. */
  void print() {
    for (Diameter d : diameters.values()) {
      String text = (d.features.size() > 1 ? d.features.size() + "× " : "") + d.text;
      Side side = side(d);
      if (side == null) {
        board.plan.note(d.anchors, 0, List.of(text), d.attached.median());
        continue;
      }
      double edge = side == Side.LEFT ? Math.min(d.from, d.to) : Math.max(d.from, d.to);
      double r = d.d / 2;
      board.plan.dimension(side, -r, r, edge, edge, text, d.attached);
      double k = board.k;
      instead.put(
          new Linear(side, -r * k, r * k, edge * k, edge * k, text, 2 * r, d.attached),
          new Callout(
              d.anchors.stream().map(p -> new Point(p.x() * k, p.y() * k)).toList(),
              0,
              List.of(text),
              d.attached.median()));
    }
  }

  /** The side on which extension lines reach the free without passing through the part. */
  private @Nullable Side side(Diameter d) {
    double low = Math.min(d.from, d.to);
    double high = Math.max(d.from, d.to);
    double clear = 1.2 / board.k;
    boolean right = true;
    boolean left = true;
    double x = 0;
    if (!d.inside) {
      for (Step s : board.part.outside()) {
        double to = x + s.length().nominal();
        double big = Math.max(s.diameter().nominal(), Board.end(s));
        boolean narrower = big < d.d - clear;
        right &= !(x > high - 1e-6) || narrower;
        left &= !(to < low + 1e-6) || narrower;
        if (Math.abs(d.from - d.to) < 1e-9) {
          boolean starts = Math.abs(x - d.from) < 1e-6;
          boolean ends = Math.abs(to - d.from) < 1e-6;
          right &= !starts || Board.end(s) <= d.d + 1e-6;
          left &= !ends || s.diameter().nominal() <= d.d + 1e-6;
        }
        x = to;
      }
    } else {
      boolean fromLeft = board.part.left().steps().stream().anyMatch(s -> matches(s, d));
      left = fromLeft && clearBore(board.part.left().steps(), 0, 1, d);
      right = !fromLeft && clearBore(board.part.right().steps(), board.part.length(), -1, d);
    }
    return right ? Side.RIGHT : left ? Side.LEFT : null;
  }

  private boolean matches(Step s, Diameter d) {
    return Math.abs(s.diameter().nominal() - d.d) < 1e-6 || Math.abs(Board.end(s) - d.d) < 1e-6;
  }

  private boolean clearBore(List<Step> steps, double face, int way, Diameter d) {
    double x = face;
    double inner = way > 0 ? Math.min(d.from, d.to) : Math.max(d.from, d.to);
    for (Step s : steps) {
      double to = x + way * s.length().nominal();
      boolean before = way * (to - inner) < 1e-6;
      if (before && Math.min(s.diameter().nominal(), Board.end(s)) < d.d + 1.2 / board.k) {
        return false;
      }
      x = to;
    }
    return true;
  }
}
