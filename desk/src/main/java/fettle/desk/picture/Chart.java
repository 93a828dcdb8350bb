package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.mechanics.base.Numbers;
import java.util.Arrays;
import java.util.List;

/** A diagram: two scales with their lines, curves and points on it. */
final class Chart {

  private static final double WIDTH = 1000;
  private static final double HEIGHT = 460;
  private static final double LEFT = 90;
  private static final double FOOT = 70;
  private static final double TOP = 46;
  private static final double HATCH = 14;

  private final double low;
  private final double high;
  private final double least;
  private final double most;
  private final String across;
  private final String up;
  private final Pen pen = Pen.of(WIDTH, 0);
  private boolean logarithmic;

  /**
   * Starts a diagram.
   *
   * @param low least value across [any]
   * @param high greatest value across [any]
   * @param least least value up [any]
   * @param most greatest value up [any]
   * @param across what is across
   * @param up what is up
   */
  Chart(double low, double high, double least, double most, String across, String up) {
    this.low = low;
    this.high = high;
    this.least = least;
    this.most = most > least ? most : least + 1;
    this.across = across;
    this.up = up;
  }

  /** Makes the scale across logarithmic. */
  Chart logarithmic() {
    logarithmic = true;
    return this;
  }

  /**
   * Returns the place of a value across.
   *
   * @param value value [any]
   * @return place [unit]
   */
  double x(double value) {
    double share =
        logarithmic ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
    return LEFT + share * (WIDTH - LEFT - 30);
  }

  /**
   * Returns the place of a value up.
   *
   * @param value value [any]
   * @return place [unit]
   */
  double y(double value) {
    double share = (value - least) / (most - least);
    return HEIGHT - FOOT - Math.min(1, Math.max(0, share)) * (HEIGHT - FOOT - TOP);
  }

  /** Draws both scales with about so many lines. */
  Chart axes(int lines, int rows) {
    double step = round((most - least) / rows);
    for (double v = Math.ceil(least / step) * step; v <= most * (1 + 1e-9); v += step) {
      pen.line("grid", LEFT, y(v), WIDTH - 30, y(v));
      pen.words("small", LEFT - 10, y(v) + 6, "end", Numbers.significant(v, 3));
    }
    if (logarithmic) {
      for (double ten = 1; ten < high; ten *= 10) {
        for (double lead : new double[] {1, 2, 5}) {
          tick(lead * ten);
        }
      }
    } else {
      double stride = round((high - low) / lines);
      for (double v = Math.ceil(low / stride) * stride; v <= high * (1 + 1e-9); v += stride) {
        tick(v);
      }
    }
    pen.line("ink", LEFT, HEIGHT - FOOT, WIDTH - 30, HEIGHT - FOOT);
    pen.line("ink", LEFT, HEIGHT - FOOT, LEFT, TOP);
    pen.words("", WIDTH - 30, HEIGHT - 12, "end", across);
    pen.words("", 6, 26, "start", up);
    return this;
  }

  private void tick(double value) {
    if (value >= low && value <= high) {
      pen.line("grid", x(value), HEIGHT - FOOT, x(value), TOP);
      pen.words("small", x(value), HEIGHT - FOOT + 26, "middle", Numbers.significant(value, 4));
    }
  }

  private static double round(double value) {
    double ten = Math.pow(10, Math.floor(Math.log10(Math.max(1e-12, value))));
    double lead = value / ten;
    return (lead > 5 ? 10 : lead > 2 ? 5 : lead > 1 ? 2 : 1) * ten;
  }

  /**
   * Draws a curve as far as it lies within the scales.
   *
   * @param style kind of line
   * @param xs values across [any]
   * @param ys values up [any]
   */
  Chart curve(String style, double[] xs, double[] ys) {
    double[] points = new double[2 * xs.length];
    int drawn = 0;
    for (int i = 0; i < xs.length; i++) {
      if (ys[i] <= most && ys[i] >= least) {
        points[drawn] = x(xs[i]);
        points[drawn + 1] = y(ys[i]);
        drawn += 2;
      }
    }
    pen.trace(style, Arrays.copyOf(points, drawn), false);
    return this;
  }

  /**
   * Draws a point with its words.
   *
   * @param style kind of point
   * @param px value across [any]
   * @param py value up [any]
   * @param words what it is
   */
  Chart point(String style, double px, double py, String words) {
    pen.circle(style, x(px), y(py), 8);
    boolean right = x(px) > 0.75 * WIDTH;
    pen.words("halo", x(px) + (right ? -14 : 14), y(py) - 12, right ? "end" : "start", words);
    return this;
  }

  /**
   * Draws an upright line with its words.
   *
   * @param style kind of line
   * @param at value across [any]
   * @param words what it is
   */
  Chart upright(String style, double at, String words) {
    if (at >= low && at <= high) {
      pen.line(style, x(at), HEIGHT - FOOT, x(at), TOP);
      boolean right = x(at) > 0.75 * WIDTH;
      pen.words("halo", x(at) + (right ? -8 : 8), TOP + 16, right ? "end" : "start", words);
    }
    return this;
  }

  /**
   * Draws a level line with its words.
   *
   * @param style kind of line
   * @param at value up [any]
   * @param words what it is
   */
  Chart level(String style, double at, String words) {
    if (at >= least && at <= most) {
      pen.line(style, LEFT, y(at), WIDTH - 30, y(at));
      pen.words("halo", WIDTH - 36, y(at) - 8, "end", words);
    }
    return this;
  }

  /**
   * Fills rectangles as one region.
   *
   * @param style kind of region
   * @param rectangles left, right, low and high of each [any]
   */
  Chart region(String style, List<double[]> rectangles) {
    StringBuilder d = new StringBuilder();
    for (double[] r : rectangles) {
      pen.rectangle(d, x(r[0]), y(r[3]), x(r[1]), y(r[2]));
    }
    pen.path(style, d.toString());
    return this;
  }

  /**
   * Hatches rectangles with lines that run on from one to the next.
   *
   * @param style kind of line
   * @param rectangles left, right, low and high of each [any]
   */
  Chart hatch(String style, List<double[]> rectangles) {
    StringBuilder d = new StringBuilder();
    for (double[] r : rectangles) {
      double left = x(r[0]);
      double right = x(r[1]);
      double top = y(r[3]);
      double foot = y(r[2]);
      for (double c = Math.ceil((left + top) / HATCH) * HATCH; c <= right + foot; c += HATCH) {
        double from = Math.max(left, c - foot);
        double to = Math.min(right, c - top);
        if (to > from) {
          pen.segment(d, from, c - from, to, c - to);
        }
      }
    }
    pen.path(style, d.toString());
    return this;
  }

  Drawing done(String label) {
    return pen.done(label, 0, 0, WIDTH, HEIGHT);
  }
}
