package fettle.sheets.draw;

import fettle.mechanics.base.Source;
import fettle.parts.recipe.HoleForm;
import fettle.parts.recipe.Turned;
import fettle.parts.solid.Body;
import fettle.parts.solid.Looking;
import fettle.parts.solid.Vec;
import fettle.parts.solid.View;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Local sections of a solid turned part: keyways and cross holes in the plane of the view are shown
 * cut open, bounded by a freehand line, in place of hidden lines.
 */
final class LocalSections {

  static final Source RULE =
      Source.memory("ISO 128-3:2022", "local sections of solid shafts, limited by a freehand line");

  private static final double MARGIN = 2.5;
  private static final double BEYOND = 2;
  private static final double WAVE = 0.35;
  private static final double ROUND = 0.4;
  private static final int POINTS = 72;

  private final Turned part;
  private final List<Turned.Operation> shown;
  private final @Nullable View section;

  LocalSections(Turned part, Body body) {
    this.part = part;
    this.shown = part.operations().stream().filter(LocalSections::isInPlane).toList();
    this.section = shown.isEmpty() ? null : View.section(body, Looking.FRONT, Vec.ZERO);
  }

  private static boolean isInPlane(Turned.Operation o) {
    return (o instanceof Turned.Keyway k && Math.abs(k.angle()) < 1e-9)
        || (o instanceof Turned.CrossHole h && Math.abs(h.angle()) < 1e-9);
  }

  /** Returns the names of the features that are cut open. */
  List<String> names() {
    return shown.stream().map(Turned.Operation::name).toList();
  }

  /** Draws them into the main view. */
  void draw(Board board) {
    if (section == null) {
      return;
    }
    List<Extent> done = new ArrayList<>();
    for (Turned.Operation o : shown) {
      Extent e = extent(o, MARGIN / board.k);
      if (done.stream().noneMatch(e::meets)) {
        done.add(e);
      }
    }
    for (Extent e : done) {
      board.plan.local(section, rim(board, e), limit(board, e));
    }
  }

  /**
   * How far a local section reaches.
   *
   * @param low where it begins along the axis [mm]
   * @param high where it ends [mm]
   * @param floor how deep it reaches, as a height above the axis [mm]
   */
  private record Extent(double low, double high, double floor) {
    boolean meets(Extent e) {
      return low < e.high && e.low < high;
    }
  }

  private Extent extent(Turned.Operation o, double margin) {
    if (o instanceof Turned.Keyway k) {
      double a = part.place(k.from(), k.at());
      double b = part.place(k.from(), k.at() + k.length().nominal());
      return new Extent(Math.min(a, b) - margin, Math.max(a, b) + margin, k.bottom() - margin);
    }
    Turned.CrossHole h = (Turned.CrossHole) o;
    double x = part.place(h.from(), h.at());
    HoleForm hole = h.hole();
    double half = Math.max(hole.cutDiameter(), hole.mouthDiameter()) / 2 + margin;
    double thread = hole.thread() == null ? 0 : hole.thread().major() / 2 + margin;
    double reach = Math.max(half, thread);
    double r = part.largest() / 2;
    double deep = hole.isThrough() ? 2 * r + 2 * BEYOND : hole.depth() + hole.cutDiameter() / 2;
    return new Extent(x - reach, x + reach, outside(x) - deep - margin);
  }

  private double outside(double x) {
    double at = 0;
    for (var s : part.outside()) {
      at += s.length().nominal();
      if (x <= at + 1e-9) {
        return Board.end(s) / 2;
      }
    }
    return part.largest() / 2;
  }

  /** The line that bounds the section, from the left rim of the outline to the right. */
  private List<Point> limit(Board board, Extent e) {
    double k = board.k;
    List<Point> out = new ArrayList<>();
    double left = board.radiusAt(e.low);
    double right = board.radiusAt(e.high);
    for (int i = 0; i <= POINTS; i++) {
      double t = (double) i / POINTS;
      double c = Math.cos(Math.PI * t);
      double s = Math.sin(Math.PI * t);
      double along = (1 - Math.signum(c) * Math.pow(Math.abs(c), ROUND)) / 2;
      double top = left + along * (right - left);
      double wave = WAVE * Math.sin(18 * Math.PI * t) * s;
      double x = e.low + along * (e.high - e.low);
      double depth = (top - e.floor) * Math.pow(Math.max(0, s), ROUND);
      out.add(new Point(x * k + wave, (top - depth) * k + wave));
    }
    return out;
  }

  /** The whole of what is cut open: the bounding line, closed above the outline. */
  private List<Point> rim(Board board, Extent e) {
    double k = board.k;
    double top = (part.largest() / 2) * k + BEYOND;
    List<Point> out = new ArrayList<>(limit(board, e));
    out.add(new Point(e.high * k, top));
    out.add(new Point(e.low * k, top));
    return out;
  }
}
