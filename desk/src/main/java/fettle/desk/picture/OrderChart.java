package fettle.desk.picture;

import fettle.desk.page.Drawing;
import java.util.List;

/**
 * Draws a plan of work: a line for each change, bars along the time in the shop. What the bench
 * does is low, what the lathe makes is high, a stripped lathe is hatched, a proof is a diamond.
 */
public final class OrderChart {

  private static final double WIDE = 1000;
  private static final double NAMES = 210;
  private static final double ROW = 44;
  private static final double TOP = 40;

  private OrderChart() {}

  /** How a piece of work is drawn. */
  public enum Kind {
    BENCH,
    LATHE,
    DOWN,
    PROVE
  }

  /**
   * A piece of work.
   *
   * @param from where it starts, as a share of the whole time [-]
   * @param to where it ends [-]
   * @param kind how it is drawn
   */
  public record Bar(double from, double to, Kind kind) {}

  /** The work on one change. */
  public record Line(String name, List<Bar> bars) {
    /** Keeps its own copy. */
    public Line {
      bars = List.copyOf(bars);
    }
  }

  /**
   * A mark on the scale of time.
   *
   * @param at where, as a share of the whole time [-]
   * @param words what it says
   */
  public record Tick(double at, String words) {}

  /** Draws a plan. */
  public static Drawing of(List<Line> lines, List<Tick> ticks) {
    Pen pen = Pen.of(WIDE, 0);
    double foot = TOP + lines.size() * ROW;
    for (Tick tick : ticks) {
      double x = x(tick.at());
      pen.line("grid", x, TOP - 8, x, foot);
      pen.words("", x + 3, TOP - 16, "start", tick.words());
    }
    for (int i = 0; i < lines.size(); i++) {
      double y = TOP + i * ROW;
      pen.line("grid", 0, y, WIDE, y);
      pen.words("", 0, y + 28, "start", lines.get(i).name());
      lines.get(i).bars().forEach(b -> bar(pen, b, y));
    }
    pen.line("ink", 0, foot, WIDE, foot);
    return pen.done("The plan of work along the time in the shop", -4, 0, WIDE + 8, foot + 4);
  }

  private static double x(double share) {
    return NAMES + share * (WIDE - NAMES);
  }

  private static void bar(Pen pen, Bar bar, double y) {
    double from = x(bar.from());
    double wide = Math.max(3, x(bar.to()) - from);
    switch (bar.kind()) {
      case BENCH -> pen.box("bench-work", from, y + 24, wide, 12);
      case LATHE -> pen.box("lathe-work", from, y + 8, wide, 28);
      case DOWN -> {
        pen.box("down-work", from, y + 8, wide, 28);
        for (double h = 7; h < wide; h += 7) {
          pen.line("down-work", from + h, y + 8, from + Math.max(0, h - 14), y + 36);
        }
      }
      case PROVE -> {
        double middle = from + wide / 2;
        pen.trace(
            "prove-work",
            new double[] {middle - 8, y + 22, middle, y + 12, middle + 8, y + 22, middle, y + 32},
            true);
      }
    }
  }
}
