package fettle.sheets.dimension;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;

/**
 * Dimension lines stacked beside a view, the shorter nearer to it. No text lies over a line; an
 * extension line crosses a dimension line only where there is no other way.
 */
public final class Rack {

  static final Source SPACING =
      Source.page("ISO 129-1:2018 and office rules", "first line 10 from the outline, next 8");

  static final double FIRST = 10;
  static final double NEXT = 8;
  static final double TEXT = 3.5;
  static final double OVER = 1.2;
  static final double BEYOND = 2;
  private static final double ARROW = 3.5;
  private static final double CLEAR = 0.8;
  private static final double STUB = 3;

  /** A place found for a dimension; its tail is what is attached to its line. */
  private record Spot(
      Linear dim,
      int tier,
      double textLow,
      double textHigh,
      double lineLow,
      double lineHigh,
      Arrows arrows,
      double cost,
      Tail tail) {

    /** Tells whether an extension line of the dimension itself stands at a place. */
    boolean owns(double u) {
      return Math.abs(u - dim.low()) < 1e-6 || Math.abs(u - dim.high()) < 1e-6;
    }

    /** Tells whether a place along the side lies in the text or in the tail. */
    boolean taken(double u) {
      return (u > textLow - CLEAR && u < textHigh + CLEAR)
          || (u > tail.low() - CLEAR && u < tail.high() + CLEAR);
    }
  }

  /**
   * What hangs on a dimension line.
   *
   * @param low where it begins along the side [mm]
   * @param high where it ends [mm]
   * @param way +1 if it runs to higher places, -1 if to lower, 0 if there is none
   */
  private record Tail(double low, double high, int way) {
    static final Tail NONE = new Tail(0, -2 * CLEAR, 0);
  }

  /** What stands beside the view of one dimension. */
  public record Drawn(Linear dimension, List<Mark> marks) {
    /** Keeps its own copy. */
    public Drawn {
      marks = List.copyOf(marks);
    }
  }

  private enum Arrows {
    INSIDE,
    OUTSIDE
  }

  private final Side side;
  private final Predicate<Linear> yields;
  private final ToIntFunction<Linear> ways;
  private final List<Spot> spots = new ArrayList<>();

  /**
   * A rack on a side of a view.
   *
   * @param yields dimensions that would rather become a note than stand aside
   * @param ways +1 or -1: to which end of a dimension what is attached to it would rather go
   */
  public Rack(Side side, Predicate<Linear> yields, ToIntFunction<Linear> ways) {
    this.side = side;
    this.yields = yields;
    this.ways = ways;
  }

  /**
   * Places dimensions, shortest first; returns those for which there is no room.
   *
   * @param tiers how many tiers there may be
   * @param base edge of the view on this side [mm]
   * @param blocked tells whether marks meet something else on the sheet
   */
  public List<Linear> place(
      List<Linear> dims, int tiers, double base, Predicate<List<Mark>> blocked) {
    List<Linear> left = new ArrayList<>();
    List<Linear> order = new ArrayList<>(dims);
    order.sort(
        Comparator.comparing(Linear::isFace)
            .thenComparingDouble((Linear d) -> d.high() - d.low())
            .thenComparingDouble(Linear::low)
            .thenComparing(Linear::text));
    for (int i = 0; i < order.size(); i++) {
      Linear d = order.get(i);
      List<Linear> later = order.subList(i + 1, order.size());
      Predicate<Spot> open = s -> !blocked.test(drawn("", s, base, depths()));
      if (!place(d, later, tiers, 0, open)
          && !place(d, later, tiers, 1, open)
          && !place(d, List.of(), tiers, 1, open)) {
        left.add(d);
      }
    }
    return left;
  }

  private boolean place(
      Linear d, List<Linear> later, int tiers, int patience, Predicate<Spot> open) {
    List<Spot> all = new ArrayList<>();
    for (int tier = 0; tier < tiers; tier++) {
      all.addAll(options(d, tier));
    }
    all.sort(Comparator.comparingDouble(Spot::cost));
    for (Spot s : all) {
      if (free(s, patience) && spares(s, later)) {
        spots.add(s);
        if (open.test(s)) {
          return true;
        }
        spots.remove(spots.size() - 1);
      }
    }
    return false;
  }

  /** Whether the text leaves a way for the extension lines still to come. */
  private static boolean spares(Spot s, List<Linear> later) {
    for (Linear d : later) {
      for (double u : new double[] {d.low(), d.high()}) {
        if (s.taken(u) && !s.owns(u)) {
          return false;
        }
      }
    }
    return true;
  }

  private List<Spot> options(Linear d, int tier) {
    List<Spot> out = new ArrayList<>();
    if (d.isFace()) {
      for (int way : new int[] {1, -1}) {
        Tail tail = tail(d, Arrows.INSIDE, way);
        double cost = 9 * tier + (way == ways.applyAsInt(d) ? 0 : 8);
        out.add(spot(d, tier, d.low(), d.low() - 2 * CLEAR, d.low(), d.high(), tail, cost));
      }
    } else if (d.attached().isEmpty()) {
      texts(d, tier, Tail.NONE, 0, out);
    } else {
      int rather = ways.applyAsInt(d);
      texts(d, tier, tail(d, arrows(d), rather), 0, out);
      texts(d, tier, tail(d, arrows(d), -rather), 20, out);
    }
    return out;
  }

  private static Arrows arrows(Linear d) {
    return d.high() - d.low() >= 2.5 * ARROW ? Arrows.INSIDE : Arrows.OUTSIDE;
  }

  /** What is attached begins after the arrow; a datum alone stands on the extension line. */
  private static Tail tail(Linear d, Arrows arrows, int way) {
    boolean alone = d.attached().frames().isEmpty();
    double stub = alone ? 0 : d.isFace() ? ARROW + 1 : arrows == Arrows.INSIDE ? STUB : 2 * ARROW;
    double near = (way > 0 ? d.high() : d.low()) + way * stub;
    double far = near + way * d.attached().length();
    return new Tail(Math.min(near, far), Math.max(near, far), way);
  }

  private static Spot spot(
      Linear d,
      int tier,
      double textLow,
      double textHigh,
      double lineLow,
      double lineHigh,
      Tail tail,
      double cost) {
    boolean none = tail.way() == 0;
    return new Spot(
        d,
        tier,
        textLow,
        textHigh,
        none ? lineLow : Math.min(lineLow, tail.low()),
        none ? lineHigh : Math.max(lineHigh, tail.high()),
        d.isFace() ? Arrows.OUTSIDE : arrows(d),
        cost,
        tail);
  }

  private void texts(Linear d, int tier, Tail tail, double dear, List<Spot> out) {
    double w = Lettering.width(d.text(), TEXT);
    double span = d.high() - d.low();
    Arrows arrows = arrows(d);
    double out1 = arrows == Arrows.OUTSIDE ? 2 * ARROW : 0;
    double low = d.low() - (tail.way() < 0 ? 0 : out1);
    double high = d.high() + (tail.way() > 0 ? 0 : out1);
    double base = 9 * tier + dear;
    if (span >= w + 2) {
      double middle = (d.low() + d.high()) / 2;
      double slack = (span - w - 2) / 2;
      for (double shift : new double[] {0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1, -1}) {
        double m = middle + shift * slack;
        double cost = base + Math.abs(shift);
        out.add(spot(d, tier, m - w / 2, m + w / 2, low, high, tail, cost));
      }
    }
    if (!yields.test(d)) {
      for (double more = 0; more <= 60; more += 4) {
        double start = (arrows == Arrows.OUTSIDE ? ARROW + 0.5 : 1.5) + more;
        double high1 = d.high() + start;
        double low1 = d.low() - start;
        if (tail.way() <= 0) {
          out.add(spot(d, tier, high1, high1 + w, low, high1 + w, tail, base + 3 + more));
        }
        if (tail.way() >= 0) {
          out.add(spot(d, tier, low1 - w, low1, low1 - w, high, tail, base + 4 + more));
        }
      }
    }
  }

  private boolean free(Spot s, int patience) {
    for (Spot p : spots) {
      if (p.tier == s.tier && s.lineLow < p.lineHigh - 1e-6 && p.lineLow < s.lineHigh - 1e-6) {
        return false;
      }
      Spot outer = p.tier >= s.tier ? p : s;
      Spot inner = p.tier >= s.tier ? s : p;
      if (clash(outer, inner, patience) || (p.tier == s.tier && clash(inner, outer, patience))) {
        return false;
      }
    }
    for (double u : new double[] {s.dim.low(), s.dim.high()}) {
      if (u > s.textLow - CLEAR && u < s.textHigh + CLEAR) {
        return false;
      }
    }
    return true;
  }

  /** Whether an extension line of the outer dimension runs through text or line of the inner. */
  private static boolean clash(Spot outer, Spot inner, int patience) {
    for (double u : new double[] {outer.dim.low(), outer.dim.high()}) {
      if (inner.owns(u)) {
        continue;
      }
      boolean within = u > inner.lineLow + 1e-6 && u < inner.lineHigh - 1e-6;
      if (inner.taken(u) || (patience == 0 && within)) {
        return true;
      }
    }
    return false;
  }

  /** Returns how many tiers are used. */
  public int tiers() {
    return spots.stream().mapToInt(s -> s.tier + 1).max().orElse(0);
  }

  /**
   * Returns what is drawn of each dimension placed.
   *
   * @param group name of the group
   * @param base edge of the view on this side [mm]
   */
  public List<Drawn> drawn(String group, double base) {
    List<Drawn> out = new ArrayList<>();
    double[] depths = depths();
    int n = 0;
    for (Spot s : spots) {
      String g = group + ":" + side.name().toLowerCase(Locale.ROOT) + n++;
      out.add(new Drawn(s.dim, drawn(g, s, base, depths)));
    }
    return out;
  }

  private List<Mark> drawn(String g, Spot s, double base, double[] depths) {
    int way = side == Side.RIGHT ? 1 : -1;
    double at = base + way * depths[s.tier];
    return s.dim.isFace() ? face(g, s, at, way) : dimension(g, s, at, way);
  }

  /** How far the tiers stand from the view: further apart where frames hang on a line. */
  private double[] depths() {
    double[] depths = new double[tiers() + 1];
    depths[0] = FIRST;
    for (int t = 1; t < depths.length; t++) {
      double between = 1 + outward(t - 1) + inward(t);
      depths[t] = depths[t - 1] + Math.max(NEXT, between);
    }
    return depths;
  }

  private double outward(int tier) {
    double most = 0;
    for (Spot s : spots) {
      if (s.tier == tier && s.tail.way() != 0) {
        most = Math.max(most, Math.max(1, s.dim.attached().frames().size()) * 2 * TEXT - TEXT);
      }
      if (s.tier == tier && side == Side.LEFT) {
        most = Math.max(most, over(s) + TEXT);
      }
    }
    return most;
  }

  private double inward(int tier) {
    double most = 0;
    for (Spot s : spots) {
      if (s.tier == tier && s.tail.way() != 0) {
        most = Math.max(most, TEXT);
      }
      if (s.tier == tier && side != Side.LEFT && !s.dim.isFace()) {
        most = Math.max(most, over(s) + TEXT);
      }
    }
    return most;
  }

  private static double over(Spot s) {
    return Framed.has(s.dim.text()) ? OVER + 0.9 : OVER;
  }

  private List<Mark> dimension(String g, Spot s, double at, int way) {
    List<Mark> out = new ArrayList<>();
    double end = at + way * BEYOND;
    out.add(line(g, s.dim.low(), s.dim.lowFrom(), s.dim.low(), end));
    out.add(line(g, s.dim.high(), s.dim.highFrom(), s.dim.high(), end));
    boolean alone = s.dim.attached().frames().isEmpty();
    double low = s.tail.way() < 0 ? (alone ? s.dim.low() : s.tail.high()) : s.lineLow;
    double high = s.tail.way() > 0 ? (alone ? s.dim.high() : s.tail.low()) : s.lineHigh;
    out.add(line(g + ":line", low, at, high, at));
    boolean inside = s.arrows == Arrows.INSIDE;
    if (inside || !alone || s.tail.way() >= 0) {
      out.add(arrow(g, s.dim.low(), at, inside ? -1 : 1));
    }
    if (inside || !alone || s.tail.way() <= 0) {
      out.add(arrow(g, s.dim.high(), at, inside ? 1 : -1));
    }
    double over = over(s);
    out.addAll(
        Framed.marks(
            side == Side.BELOW
                ? new Mark.Text(
                    g, s.dim.text(), s.textLow, at + over, TEXT, Mark.Reading.FROM_BELOW)
                : new Mark.Text(
                    g, s.dim.text(), at - over, s.textLow, TEXT, Mark.Reading.FROM_RIGHT)));
    attached(g, s, at, way, out);
    return out;
  }

  /** One extension line, and what is asked of the face it comes from. */
  private List<Mark> face(String g, Spot s, double at, int way) {
    List<Mark> out = new ArrayList<>();
    double u = s.dim.low();
    out.add(line(g, u, s.dim.lowFrom(), u, at + way * BEYOND));
    if (!s.dim.attached().frames().isEmpty()) {
      out.add(line(g + ":line", u, at, s.tail.way() > 0 ? s.tail.low() : s.tail.high(), at));
      out.add(arrow(g, u, at, -s.tail.way()));
    }
    attached(g, s, at, way, out);
    return out;
  }

  private void attached(String g, Spot s, double at, int way, List<Mark> out) {
    if (s.tail.way() != 0) {
      FrameMarks m =
          new FrameMarks(g, side == Side.BELOW ? Mark.Reading.FROM_BELOW : Mark.Reading.FROM_RIGHT);
      double near = s.tail.way() > 0 ? s.tail.low() : s.tail.high();
      m.draw(s.dim.attached(), near, s.tail.way(), at, way);
      out.addAll(m.marks());
    }
  }

  private Mark line(String g, double u0, double v0, double u1, double v1) {
    return side == Side.BELOW
        ? Mark.Stroke.line(g, Pen.NARROW, u0, v0, u1, v1)
        : Mark.Stroke.line(g, Pen.NARROW, v0, u0, v1, u1);
  }

  private Mark arrow(String g, double u, double v, int way) {
    double angle = way > 0 ? 0 : Math.PI;
    return side == Side.BELOW
        ? Mark.Fill.arrow(g, u, v, angle)
        : Mark.Fill.arrow(g, v, u, angle + Math.PI / 2);
  }
}
