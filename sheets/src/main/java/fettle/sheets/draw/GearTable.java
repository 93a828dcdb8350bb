package fettle.sheets.draw;

import fettle.parts.recipe.Step;
import fettle.parts.recipe.Toothing;
import fettle.sheets.dimension.Values;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import java.util.ArrayList;
import java.util.List;

/** Teeth on a step: pitch line, root line and the table of data (ISO 2203). */
final class GearTable {

  private final Board board;
  private final boolean bored;

  GearTable(Board board, boolean bored) {
    this.board = board;
    this.bored = bored;
  }

  /** Draws the pitch line of a gear on both sides of its axis. */
  static void pitchLines(Plan plan, Toothing t, double x, double to) {
    double p = t.referenceDiameter() / 2 * plan.k;
    for (int sign : new int[] {1, -1}) {
      plan.add(pitchLine(plan.k, x, to, sign * p));
    }
  }

  private static Mark pitchLine(double k, double x, double to, double y) {
    return Mark.Stroke.line("gear", Pen.CENTRE, x * k - 2, y, to * k + 2, y);
  }

  /** Draws the teeth and adds their table. */
  void add(Step s, Toothing t, double x, double to) {
    board.scheme.printed(s.name() + " teeth");
    double k = board.k;
    double root = t.rootDiameter() / 2;
    for (int sign : new int[] {1, -1}) {
      board.plan.add(pitchLine(k, x, to, sign * t.referenceDiameter() / 2 * k));
      if (bored) {
        root(x * k, to * k, sign * root * k, sign * s.diameter().nominal() / 2 * k);
      }
    }
    table(s, t);
  }

  /** Teeth are not hatched; the root line bounds the section. */
  private void root(double x, double to, double root, double tip) {
    board.plan.unhatched(
        new Box(Math.min(x, to), Math.min(root, tip), Math.max(x, to), Math.max(root, tip)));
    board.plan.add(Mark.Stroke.line("gear", Pen.OUTLINE, x, root, to, root));
  }

  private void table(Step s, Toothing t) {
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
                  line.substring(0, cut).trim(), line.substring(cut + 1).trim().replace('.', ',')));
    }
    board.tables.add(new Table("gear " + s.name(), rows));
  }
}
