package fettle.sheets.draw;

import fettle.parts.recipe.End;
import fettle.parts.recipe.Turned;
import fettle.parts.solid.Bodies;
import fettle.parts.solid.Body;
import fettle.parts.solid.Brep;
import fettle.parts.solid.Looking;
import fettle.parts.solid.Marks;
import fettle.parts.solid.Vec;
import fettle.parts.solid.View;
import fettle.sheets.dimension.Wanted;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Draws a turned part: axis level, in section when it is bored, dimensions from the end faces. */
final class TurnedDraught {

  private final Turned part;
  private final Marks marks;
  private final View main;
  private final @Nullable View end;
  private final Looking endLooking;
  private final Map<Double, View> sections = new LinkedHashMap<>();
  private final boolean bored;
  private final @Nullable LocalSections local;

  TurnedDraught(Turned part) {
    this.part = part;
    Body body = Bodies.of(part);
    this.marks = Marks.of(part);
    this.bored = isBored(part);
    Brep solid = Brep.of(body);
    this.local = bored ? null : new LocalSections(part, body);
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
    Board board = new Board(part, marks, factor);
    TurnedSections across = new TurnedSections(board, sections);
    TurnedEnd ends = new TurnedEnd(board, end, endLooking);
    TurnedDiameters diameters = new TurnedDiameters(board);
    TurnedSteps steps = new TurnedSteps(board, diameters, new GearTable(board, bored));
    TurnedOperations operations = new TurnedOperations(board, across, ends);
    TurnedLengths lengths = new TurnedLengths(board);
    Wanted.of(part).forEach(board.scheme::required);
    main(board);
    lengths.places();
    across.cuttingPlanes();
    lengths.lengths();
    lengths.faces();
    steps.all();
    part.operations().forEach(operations::operation);
    diameters.print();
    board.printEdges();
    List<String> faults = new ArrayList<>(board.plan.compose(diameters::instead));
    for (Draft.Placed p : board.placed.subList(1, board.placed.size())) {
      faults.addAll(p.plan().compose(d -> null));
    }
    return new Draft(board.placed, board.tables, board.scheme, faults);
  }

  private void main(Board board) {
    board.plan.view(main, bored ? Plan.Hidden.LEFT_OUT : Plan.Hidden.DRAWN);
    board.plan.through(Holes.threadedThrough(part));
    List<String> own =
        part.operations().stream()
            .filter(o -> o instanceof Turned.AxialHoles)
            .map(Turned.Operation::name)
            .toList();
    List<String> open = local == null ? List.of() : local.names();
    if (local != null) {
      local.draw(board);
    }
    Plan.Hidden hidden = bored ? Plan.Hidden.LEFT_OUT : Plan.Hidden.DRAWN;
    List<Marks.Axis> axes = marks.axes().stream().filter(a -> !own.contains(a.feature())).toList();
    threads(board, axes, t -> !open.contains(t.feature()), hidden);
    threads(board, List.of(), t -> open.contains(t.feature()), Plan.Hidden.LEFT_OUT);
  }

  private void threads(
      Board board, List<Marks.Axis> axes, Predicate<Marks.Threaded> which, Plan.Hidden hidden) {
    board.plan.marks(
        new Marks(
            axes,
            marks.threads().stream()
                .filter(t -> Math.abs(t.from().y()) < 1e-6)
                .filter(which)
                .toList()),
        p -> Board.seen(p, Looking.FRONT),
        Looking.FRONT.along(),
        hidden);
  }
}
