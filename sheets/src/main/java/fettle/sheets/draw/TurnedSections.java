package fettle.sheets.draw;

import fettle.parts.solid.View;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;

/** Sections across the axis of a turned part, with their cutting planes in the main view. */
final class TurnedSections {

  private final Board board;
  private final Map<Double, View> sections;
  private final Map<Double, Plan> plans = new LinkedHashMap<>();

  TurnedSections(Board board, Map<Double, View> sections) {
    this.board = board;
    this.sections = sections;
  }

  /** Returns the section nearest to a place, drawn when it is first asked for. */
  Plan at(double x) {
    double key =
        sections.keySet().stream()
            .min(java.util.Comparator.comparingDouble(a -> Math.abs(a - x)))
            .orElse(x);
    return plans.computeIfAbsent(
        key,
        at -> {
          int n = new ArrayList<>(sections.keySet()).indexOf(at);
          Plan p = new Plan("section" + n, board.k);
          View v = sections.get(at);
          if (v != null) {
            p.view(v, Plan.Hidden.LEFT_OUT);
          }
          p.cross(0, 0, board.radiusAt(at) * board.k);
          String letter = String.valueOf((char) ('A' + n));
          p.titled(letter + "-" + letter);
          board.placed.add(new Draft.Placed(p, Draft.Where.RIGHT));
          return p;
        });
  }

  /** Cutting planes in the main view: wide ends, arrows in the direction of view, letters. */
  void cuttingPlanes() {
    int n = 0;
    for (double x : sections.keySet()) {
      String letter = String.valueOf((char) ('A' + n));
      String g = "cut:" + letter;
      double top = board.plan.outline().y1();
      double bottom = board.plan.outline().y0();
      for (int sign : new int[] {1, -1}) {
        double from = sign > 0 ? top + 2 : bottom - 2;
        double to = from + sign * 6;
        board.plan.add(Mark.Stroke.line(g, Pen.CUTTING, x * board.k, from, x * board.k, to));
        double arrowAt = to - sign * 1.5;
        board.plan.add(
            Mark.Stroke.line(g, Pen.NARROW, x * board.k - 9, arrowAt, x * board.k - 3, arrowAt));
        board.plan.add(Mark.Fill.arrow(g, x * board.k - 0.3, arrowAt, 0));
        double w = Lettering.width(letter, 5);
        double at = sign > 0 ? x * board.k - w / 2 : letterAt(x, w);
        double y = sign > 0 ? to + 1.5 : to - 6.5;
        board.plan.add(new Mark.Text(g, letter, at, y, 5, Mark.Reading.FROM_BELOW));
        double left = Math.min(x * board.k - 9.5, at - 0.5);
        double right = Math.max(x * board.k + 2.5, at + w + 0.5);
        board.plan.keepClear(
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
      double low = x * board.k + shift - w / 2;
      if (board.scheme.clear(Board.AXIS, (low - 1) / board.k, (low + w + 1) / board.k)) {
        return low;
      }
    }
    return x * board.k - w / 2;
  }
}
