package fettle.desk.web;

import fettle.desk.page.Plot;
import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.List;

/** A plot in the making: a frame with two scales on a sheet 640 wide, drawn in values. */
final class Drawing {

  static final double WIDTH = 640;
  static final double LEFT = 74;
  static final double RIGHT = 620;
  static final double TOP = 26;
  private static final int TICKS = 5;

  private final int height;
  private final double low;
  private final double high;
  private final double bottom;
  private final double start;
  private final double end;
  private final List<Plot.Band> bands = new ArrayList<>();
  private final List<Plot.Line> lines = new ArrayList<>();
  private final List<Plot.Mark> marks = new ArrayList<>();
  private final List<Plot.Words> texts = new ArrayList<>();

  /**
   * Opens a sheet.
   *
   * @param height its height [sheet unit]
   * @param across first and last value of the scale across
   * @param up lowest and highest value of the scale upwards; a twelfth is added at both ends
   */
  Drawing(int height, double[] across, double[] up) {
    this.height = height;
    double pad = Math.max((up[1] - up[0]) / 12, 1e-9 * Math.max(1, Math.abs(up[1])));
    low = up[0] - pad;
    high = up[1] + pad;
    bottom = height - 46;
    start = across[0];
    end = across[1] > across[0] ? across[1] : across[0] + 1;
  }

  double x(double value) {
    return round(LEFT + (RIGHT - LEFT) * (value - start) / (end - start));
  }

  double y(double value) {
    return round(bottom - (bottom - TOP) * (value - low) / (high - low));
  }

  private static double round(double v) {
    return Math.rint(v * 10) / 10;
  }

  /** Draws the scales with round ticks and their names. */
  Drawing scales(String across, String up) {
    for (double t : ticks(low, high)) {
      straight(start, t, end, t, Math.abs(t) < 1e-12 ? "zero" : "grid");
      texts.add(new Plot.Words(LEFT - 8, y(t) + 5, "end", shown(t)));
    }
    for (double t : ticks(start, end)) {
      lines.add(new Plot.Line(x(t) + "," + bottom + " " + x(t) + "," + (bottom + 6), "axis"));
      texts.add(new Plot.Words(x(t), bottom + 23, "middle", shown(t)));
    }
    straight(start, low, end, low, "axis");
    return named(across, up);
  }

  Drawing named(String across, String up) {
    texts.add(new Plot.Words(RIGHT, height - 4, "end", across));
    texts.add(new Plot.Words(4, 15, "start", up));
    return this;
  }

  static List<Double> ticks(double from, double to) {
    double raw = (to - from) / TICKS;
    double power = Math.pow(10, Math.floor(Math.log10(raw)));
    double step = power * (raw / power > 5 ? 10 : raw / power > 2 ? 5 : raw / power > 1 ? 2 : 1);
    List<Double> ticks = new ArrayList<>();
    for (double t = Math.ceil(from / step - 1e-9) * step;
        t <= to + 1e-9 * step && ticks.size() < 20;
        t += step) {
      ticks.add(Math.rint(t / step) * step);
    }
    return ticks;
  }

  static String shown(double value) {
    String digits = Numbers.significant(value, 4);
    return digits.startsWith("-") ? "−" + digits.substring(1) : digits;
  }

  void straight(double x1, double y1, double x2, double y2, String style) {
    lines.add(new Plot.Line(x(x1) + "," + y(y1) + " " + x(x2) + "," + y(y2), style));
  }

  void curve(double[] xs, double[] ys, String style) {
    lines.add(new Plot.Line(points(xs, ys), style));
  }

  private String points(double[] xs, double[] ys) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < xs.length; i++) {
      path.append(i == 0 ? "" : " ").append(x(xs[i])).append(',').append(y(ys[i]));
    }
    return path.toString();
  }

  /** Fills what lies between two values from end to end, cut to the sheet. */
  void band(double from, double to, String style) {
    double a = Math.max(low, Math.min(high, from));
    double b = Math.max(low, Math.min(high, to));
    bands.add(
        new Plot.Band(
            points(new double[] {start, end, end, start}, new double[] {a, a, b, b}), style));
  }

  /** Fills what lies within a half-width of a curve. */
  void sleeve(double[] xs, double[] ys, double[] half, String style) {
    int n = xs.length;
    double[] px = new double[2 * n];
    double[] py = new double[2 * n];
    for (int i = 0; i < n; i++) {
      px[i] = xs[i];
      py[i] = ys[i] + half[i];
      px[2 * n - 1 - i] = xs[i];
      py[2 * n - 1 - i] = ys[i] - half[i];
    }
    bands.add(new Plot.Band(points(px, py), style));
  }

  void mark(double x, double y, String style) {
    marks.add(new Plot.Mark(x(x), y(y), style));
  }

  void words(double x, double y, String anchor, String text) {
    texts.add(new Plot.Words(x(x), y(y), anchor, text));
  }

  Plot plot(String title, String words) {
    return new Plot(title, words, height, bands, lines, marks, texts);
  }
}
