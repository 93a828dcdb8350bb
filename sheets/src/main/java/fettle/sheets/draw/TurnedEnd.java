package fettle.sheets.draw;

import fettle.parts.recipe.Turned;
import fettle.parts.solid.Looking;
import fettle.parts.solid.Marks;
import fettle.parts.solid.Vec;
import fettle.parts.solid.View;
import fettle.sheets.dimension.Values;
import fettle.sheets.marks.Point;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The view on an end of a turned part. */
final class TurnedEnd {

  private final Board board;
  private final @Nullable View view;
  private final Looking looking;
  private @Nullable Plan endView;

  TurnedEnd(Board board, @Nullable View view, Looking looking) {
    this.board = board;
    this.view = view;
    this.looking = looking;
  }

  Looking looking() {
    return looking;
  }

  /** Returns the view, drawn when it is first asked for. */
  Plan plan() {
    Plan p = endView;
    if (p == null) {
      p = new Plan("end", board.k);
      if (view != null) {
        p.view(view, Plan.Hidden.LEFT_OUT);
      }
      Looking l = looking;
      p.cross(0, 0, board.part.largest() / 2 * board.k);
      List<Marks.Threaded> ends = board.marks.threads();
      p.marks(
          new Marks(List.of(), ends.stream().filter(t -> isEnd(t, l)).toList()),
          v -> Board.seen(v, l),
          l.along(),
          Plan.Hidden.LEFT_OUT);
      endView = p;
      board.placed.add(
          new Draft.Placed(p, looking == Looking.LEFT ? Draft.Where.RIGHT : Draft.Where.LEFT));
    }
    return p;
  }

  private boolean isEnd(Marks.Threaded t, Looking l) {
    return t.inside() == Marks.Inside.INTERNAL && t.to().minus(t.from()).dot(l.along()) > 0;
  }

  /** Writes what is made into the view. */
  void operation(Turned.Operation o) {
    Plan p = plan();
    if (o instanceof Turned.EndSlot s) {
      board.scheme.printed(s.name() + " width");
      board.scheme.printed(s.name() + " depth");
      p.note(
          List.of(new Point(s.width().nominal() / 2, board.part.largest() / 4), new Point(0, 0)),
          0,
          List.of("slot " + Values.size("", s.width()) + " ↧" + Values.number(s.depth())),
          board.asked.all(s.name()));
    } else if (o instanceof Turned.Socket s) {
      board.scheme.printed(s.name() + " across");
      board.scheme.printed(s.name() + " depth");
      p.note(
          List.of(new Point(s.across().nominal() / 4, s.across().nominal() / 2)),
          0,
          List.of(
              (s.sides() == 4 ? "□" : "hexagon ")
                  + Values.size("", s.across())
                  + " ↧"
                  + Values.number(s.depth())));
    } else if (o instanceof Turned.BoreKeyway w) {
      board.scheme.printed(w.name() + " width");
      board.scheme.printed(w.name() + " bottom");
      Vec v = new Vec(0, -Math.sin(w.angle()), Math.cos(w.angle())).times(w.bottom());
      p.note(
          List.of(Board.seen(v, looking)),
          0,
          List.of(
              "keyway " + Values.size("", w.width()),
              "bottom " + Values.number(w.bottom()) + " from axis"),
          board.asked.all(w.name()));
    }
  }
}
