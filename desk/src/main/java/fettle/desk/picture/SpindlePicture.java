package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.machine.topics.SpindlePortrait;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.shafts.SpindleModel;
import java.util.List;

/** Draws the spindle cut open, with the line it bends to under a force, and the span curve. */
public final class SpindlePicture {

  private static final int PARTS = 12;
  private static final int CURVE = 32;

  private final SpindlePortrait spindle;

  private SpindlePicture(SpindlePortrait spindle) {
    this.spindle = spindle;
  }

  /**
   * A drawn spindle.
   *
   * @param drawing the picture
   * @param deflection give under the force, at the force [mm]
   * @param factor by how much the bent line is exaggerated [-]
   */
  public record Drawn(Drawing drawing, double deflection, double factor) {}

  /**
   * Draws a spindle under a force across its nose.
   *
   * @param spindle the spindle
   * @param force force at the face of the nose [N]
   */
  public static Drawn of(SpindlePortrait spindle, double force) {
    return new SpindlePicture(spindle).drawn(force);
  }

  private double end() {
    return spindle.span() + spindle.overhang();
  }

  private Drawn drawn(double force) {
    SpindleModel.Deflected bent = SpindleModel.under(spindle.finely(PARTS), end(), force);
    double tallest = Math.max(Math.max(spindle.front().outside(), 56), spindle.chuckDiameter());
    double factor = round(0.28 * tallest / Math.max(1e-9, Math.abs(bent.deflection())));
    double left = -0.14 * end() - 20;
    double width = end() + spindle.chuckLength() - left + 60;
    Pen pen = Pen.of(width, 0);
    chuck(pen);
    body(pen);
    bearing(pen, spindle.rear(), 0);
    bearing(pen, spindle.front(), spindle.span());
    pen.line("centre", left + 8, 0, end() + spindle.chuckLength() + 12, 0);
    line(pen, bent.line(), factor);
    arrow(pen, force, bent.deflection() * factor);
    double low = tallest / 2 + 14;
    pen.dimension(0, low, spindle.span(), low, mm(spindle.span()));
    pen.dimension(spindle.span(), low, end(), low, mm(spindle.overhang()));
    Drawing drawing =
        pen.done(
            "The spindle cut open, to scale, with its bent line drawn "
                + Numbers.significant(factor, 2)
                + " times as large",
            left,
            -tallest / 2 - 26,
            width,
            tallest + 26 + 34);
    return new Drawn(drawing, bent.deflection(), factor);
  }

  private static String mm(double value) {
    return Numbers.significant(value, 4) + " mm";
  }

  /** Rounds down to 1, 2 or 5 of a power of ten. */
  private static double round(double value) {
    double ten = Math.pow(10, Math.floor(Math.log10(value)));
    double lead = value / ten;
    return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * ten;
  }

  private void body(Pen pen) {
    double tail = 0.12 * spindle.span();
    pen.box("body", -tail, -spindle.body() / 2, tail + spindle.span(), spindle.body());
    pen.box("body", spindle.span(), -spindle.nose() / 2, spindle.overhang(), spindle.nose());
    pen.box("bore", -tail, -spindle.bore() / 2, tail + end(), spindle.bore());
  }

  private void chuck(Pen pen) {
    if (spindle.chuckLength() > 0) {
      pen.box(
          "arm",
          end(),
          -spindle.chuckDiameter() / 2,
          spindle.chuckLength(),
          spindle.chuckDiameter());
    }
  }

  private static void bearing(Pen pen, SpindlePortrait.Bearing bearing, double middle) {
    double r = bearing.bore() / 2;
    if (bearing.outside() <= 0) {
      double wall = 4;
      pen.box("body bronze", middle - bearing.width() / 2, -r - wall, bearing.width(), wall);
      pen.box("body bronze", middle - bearing.width() / 2, r, bearing.width(), wall);
      return;
    }
    double ring = bearing.outside() / 2 - r;
    double from = middle - bearing.count() * bearing.width() / 2;
    for (int i = 0; i < bearing.count(); i++) {
      double x = from + i * bearing.width();
      for (int side : new int[] {-1, 1}) {
        double y = side < 0 ? -bearing.outside() / 2 : r;
        pen.box("body", x, y, bearing.width(), ring);
        pen.circle("body", x + bearing.width() / 2, y + ring / 2, 0.3 * ring);
        double lean = (i % 2 == 0 ? 1 : -1) * side * 0.36 * ring;
        double c = x + bearing.width() / 2;
        pen.line("thin", c - lean, y, c + lean, y + ring);
      }
    }
  }

  private static void line(Pen pen, List<Double> line, double factor) {
    double[] points = new double[line.size()];
    for (int i = 0; i + 1 < points.length; i += 2) {
      points[i] = line.get(i);
      points[i + 1] = line.get(i + 1) * factor;
    }
    pen.trace("blue", points, false);
  }

  private void arrow(Pen pen, double force, double to) {
    double x = end();
    double top = -spindle.nose() / 2 - 22;
    pen.line("red", x, top, x, -spindle.nose() / 2);
    pen.trace(
        "ink",
        new double[] {
          x - 3, -spindle.nose() / 2 - 7, x, -spindle.nose() / 2, x + 3, -spindle.nose() / 2 - 7
        },
        false);
    pen.words("halo", x - 4, top + 6, "end", Numbers.significant(force, 4) + " N");
    pen.circle("solidblue", x, to, 1.6);
  }

  /**
   * Draws the stiffness at the nose over the distance of the bearings.
   *
   * @param spindle the spindle
   * @param best distance at which it is greatest [mm]
   */
  public static Drawing spanCurve(SpindlePortrait spindle, double best) {
    double low = Math.min(spindle.span(), best) * 0.5;
    double high = Math.max(spindle.span(), best) * 1.7;
    double[] xs = new double[CURVE];
    double[] ks = new double[CURVE];
    double most = 0;
    for (int i = 0; i < CURVE; i++) {
      xs[i] = low + (high - low) * i / (CURVE - 1);
      ks[i] = stiffness(spindle, xs[i]);
      most = Math.max(most, ks[i]);
    }
    Chart chart =
        new Chart(low, high, 0, most * 1.15, "distance of the bearings, mm", "N/µm at the nose");
    chart.axes(5, 4);
    chart.curve("blue", xs, ks);
    chart.point("solidblue", spindle.span(), stiffness(spindle, spindle.span()), "as it is");
    chart.upright("brass", best, "best " + Numbers.significant(best, 3));
    return chart.done("Stiffness at the nose over the distance of the bearings");
  }

  private static double stiffness(SpindlePortrait spindle, double span) {
    return 1
        / SpindleModel.under(spindle.withSpan(span), span + spindle.overhang(), 1).deflection()
        / 1000;
  }
}
