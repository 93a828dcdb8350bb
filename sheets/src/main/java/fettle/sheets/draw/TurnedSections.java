package fettle.sheets.draw;

import fettle.parts.solid.View;
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

  /** Draws the cutting planes in the main view. */
  void cuttingPlanes() {
    int n = 0;
    for (double x : sections.keySet()) {
      String letter = String.valueOf((char) ('A' + n++));
      double k = board.k;
      new CuttingPlane(board.plan, letter, x * k, 1)
          .draw((low, high) -> board.scheme.clear(Board.AXIS, low / k, high / k));
    }
  }
}
