package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.machine.topics.RigidityPortrait;
import fettle.machine.topics.TravelMap;
import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws the lathe as it bends under the cut, exaggerated, and its stiffness over the travel. */
public final class LoopPicture {

  private static final int FREE = 14;
  private static final double SHOWN = 0.05;
  private static final double LEAST_WIDE = 1.7;
  private static final double LINE = 24;
  private static final double NAME = 5;

  /** From where the lathe is seen. */
  public enum View {
    /** From above: along to the right, towards the operator downwards. */
    ABOVE,
    /** From the tailstock: towards the operator to the right, up upwards. */
    END
  }

  private final RigidityPortrait portrait;
  private final View view;
  private final double factor;
  private double left = Double.POSITIVE_INFINITY;
  private double right = Double.NEGATIVE_INFINITY;
  private double top = Double.POSITIVE_INFINITY;
  private double foot = Double.NEGATIVE_INFINITY;

  private LoopPicture(RigidityPortrait portrait, View view) {
    this.portrait = portrait;
    this.view = view;
    double size = 1e-9;
    for (RigidityPortrait.Piece p : portrait.pieces()) {
      for (double[] c : corners(p)) {
        double[] rest = flat(c);
        left = Math.min(left, rest[0]);
        right = Math.max(right, rest[0]);
        top = Math.min(top, rest[1]);
        foot = Math.max(foot, rest[1]);
        size = Math.max(size, length(moved(c, p.motion(), 1), c));
      }
    }
    factor = round(SHOWN * Math.max(right - left, foot - top) / size);
  }

  /**
   * A drawn lathe.
   *
   * @param drawing the picture
   * @param factor by how much its motion is exaggerated [-]
   */
  public record Drawn(Drawing drawing, double factor) {}

  /** Draws a lathe at rest and, in blue, bent. */
  public static Drawn of(RigidityPortrait portrait, View view) {
    LoopPicture picture = new LoopPicture(portrait, view);
    return new Drawn(picture.drawn(), picture.factor);
  }

  private static double round(double value) {
    double ten = Math.pow(10, Math.floor(Math.log10(value)));
    double lead = value / ten;
    return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * ten;
  }

  private static double length(double[] a, double[] b) {
    return Math.hypot(Math.hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]);
  }

  private Drawing drawn() {
    double pad = 0.07 * Math.max(right - left, foot - top);
    double across = Math.max(right - left + 2 * pad, LEAST_WIDE * (foot - top + 2 * pad));
    Pen pen = Pen.of(across, 0);
    portrait.pieces().forEach(p -> outline(pen, "grid", p, 0));
    bar(pen, "grid", 0);
    portrait.pieces().forEach(p -> outline(pen, "blue", p, factor));
    bar(pen, "red", factor);
    names(pen);
    double[] at = flat(array(portrait.cut()));
    pen.circle("red", at[0], at[1], 5 * pen.unit());
    return pen.done(
        (view == View.ABOVE ? "The lathe from above" : "The lathe from the tailstock")
            + ", at rest and bent under the cut, drawn "
            + Numbers.significant(factor, 2)
            + " times as large",
        (left + right - across) / 2,
        top - pad,
        across,
        foot - top + 2 * pad);
  }

  /** Names stand in the upper left corners; one that would cover another moves down. */
  private void names(Pen pen) {
    List<double[]> taken = new ArrayList<>();
    double line = LINE * pen.unit();
    for (RigidityPortrait.Piece p : portrait.pieces()) {
      double[] a = flat(moved(array(p.low()), p.motion(), factor));
      double[] b = flat(moved(array(p.high()), p.motion(), factor));
      double x = Math.min(a[0], b[0]) + line / 4;
      double y = Math.min(a[1], b[1]) + line;
      taken.sort(Comparator.comparingDouble(t -> t[1]));
      for (double[] t : taken) {
        if (Math.abs(t[1] - y) < line && Math.abs(t[0] - x) < NAME * line) {
          y = t[1] + line;
        }
      }
      taken.add(new double[] {x, y});
      pen.words("halo", x, y, "start", p.name());
    }
  }

  /** The middle outline of a box, as the view shows it. */
  private void outline(Pen pen, String style, RigidityPortrait.Piece p, double times) {
    double[] points = new double[8];
    int hidden = view == View.ABOVE ? 1 : 2;
    int u = view == View.ABOVE ? 2 : 0;
    int v = view == View.ABOVE ? 0 : 1;
    for (int i = 0; i < 4; i++) {
      double[] c = new double[3];
      c[hidden] = (p.low().get(hidden) + p.high().get(hidden)) / 2;
      c[u] = i == 0 || i == 3 ? p.low().get(u) : p.high().get(u);
      c[v] = i < 2 ? p.low().get(v) : p.high().get(v);
      double[] at = flat(moved(c, p.motion(), times));
      points[2 * i] = at[0];
      points[2 * i + 1] = at[1];
    }
    pen.trace(style, points, true);
  }

  /** The work: straight from the jaws, then bending to its free end. */
  private void bar(Pen pen, String style, double times) {
    RigidityPortrait.Work w = portrait.work();
    double axis = portrait.cut().get(0) - w.radius();
    if (view == View.END) {
      double[] tip = {axis, portrait.cut().get(1), w.to()};
      double[] at = flat(moved(tip, w.free(), times));
      pen.circle(style, at[0], at[1], w.radius());
      return;
    }
    double[] points = new double[4 * (FREE + 1)];
    for (int i = 0; i <= FREE; i++) {
      double t = i / (double) FREE;
      double share = t * t * (3 - t) / 2;
      for (int side = -1; side <= 1; side += 2) {
        double[] c = {
          axis + side * w.radius(), portrait.cut().get(1), w.from() + t * (w.to() - w.from())
        };
        double[] a = moved(c, w.held(), times);
        double[] b = moved(c, w.free(), times);
        double[] mixed = new double[3];
        for (int k = 0; k < 3; k++) {
          mixed[k] = a[k] + share * (b[k] - a[k]);
        }
        double[] at = flat(mixed);
        int place = side < 0 ? i : 2 * FREE + 1 - i;
        points[2 * place] = at[0];
        points[2 * place + 1] = at[1];
      }
    }
    pen.trace(style, points, true);
  }

  private static double[][] corners(RigidityPortrait.Piece p) {
    double[][] all = new double[8][3];
    for (int i = 0; i < 8; i++) {
      for (int a = 0; a < 3; a++) {
        all[i][a] = (i >> a & 1) == 1 ? p.high().get(a) : p.low().get(a);
      }
    }
    return all;
  }

  private double[] moved(double[] at, List<Double> motion, double times) {
    double[] r = new double[3];
    double[] to = new double[3];
    for (int i = 0; i < 3; i++) {
      r[i] = at[i] - portrait.cut().get(i);
    }
    for (int i = 0; i < 3; i++) {
      int j = (i + 1) % 3;
      int k = (i + 2) % 3;
      double turn = motion.get(3 + j) * r[k] - motion.get(3 + k) * r[j];
      to[i] = at[i] + times * (motion.get(i) + turn);
    }
    return to;
  }

  private double[] flat(double[] p) {
    return view == View.ABOVE ? new double[] {p[2], p[0]} : new double[] {p[0], -p[1]};
  }

  private static double[] array(List<Double> p) {
    return p.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * Draws what the stated force leaves on the diameter along the work.
   *
   * @param stations places of the tool
   * @param across what is across, in words
   */
  public static Drawing overTravel(List<TravelMap.Station> stations, String across) {
    double[] x = stations.stream().mapToDouble(TravelMap.Station::distance).toArray();
    double[] y = stations.stream().mapToDouble(s -> 1000 * s.diameter()).toArray();
    double most = java.util.Arrays.stream(y).max().orElse(1);
    double far = java.util.Arrays.stream(x).max().orElse(1);
    Chart chart = new Chart(0, far, 0, 1.1 * most, across, "diameter left too large, µm");
    chart.axes(6, 5).curve("blue", x, y);
    for (int i = 0; i < x.length; i++) {
      if (i == 0 || i == x.length - 1) {
        chart.point("blue", x[i], y[i], Numbers.significant(y[i], 2) + " µm");
      }
    }
    return chart.done("Diameter left too large: " + across);
  }
}
