package fettle.sheets.draw;

import fettle.mechanics.base.Source;
import fettle.parts.recipe.Face;
import fettle.parts.recipe.Folded;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import fettle.parts.solid.Bodies;
import fettle.parts.solid.Body;
import fettle.parts.solid.Brep;
import fettle.parts.solid.Looking;
import fettle.parts.solid.Marks;
import fettle.parts.solid.View;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import fettle.sheets.page.Format;
import fettle.sheets.page.Frame;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Scale;
import fettle.sheets.page.Sheet;
import fettle.sheets.page.TitleBlock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Draws an assembly pulled apart along its axis: parts in the order they go together, item numbers
 * in a row above them (ISO 6433), the parts list above the title block.
 */
public final class AssemblyDraught {

  static final Source NUMBERS =
      Source.page("ISO 6433:2012", "item numbers outside the outlines, in rows, one leader each");

  private static final double GAP = 14;
  private static final double NUMBER = 5;
  private static final double ABOVE = 12;
  private static final double CLEAR = 8;
  private static final double READABLE = 0.5;

  private final List<Item> items;
  private final List<Integer> order;
  private final double factor;

  private AssemblyDraught(List<Item> items, List<Integer> order, double factor) {
    this.items = items;
    this.order = order;
    this.factor = factor;
  }

  /**
   * Draws the sheet of an assembly.
   *
   * @param title title
   * @param number drawing number
   * @param items lines of the parts list, item 1 first
   * @param order items in the order drawn, counted from 0
   * @param heads what stands in the title block
   */
  public static Sheet sheet(
      String title, String number, List<Item> items, List<Integer> order, Heads heads) {
    for (Page page : pages()) {
      List<Mark> body = new AssemblyDraught(items, order, page.scale.factor()).laid(page.format);
      if (body != null) {
        TitleBlock.Fields f =
            new TitleBlock.Fields(
                title,
                "",
                number,
                "Assembly drawing",
                "",
                "",
                "-",
                "",
                page.scale.toString(),
                "1/1");
        List<Mark> all = new ArrayList<>(Frame.of(page.format));
        all.addAll(TitleBlock.of(page.format, heads, f));
        all.addAll(PartsList.of(page.format, items));
        all.addAll(body);
        return new Sheet(page.format, number, title, page.scale, all);
      }
    }
    throw new IllegalArgumentException(title + ": the assembly finds no room on A1 at 1:50");
  }

  /** A size of paper and a scale. */
  private record Page(Format format, Scale scale) {}

  /** Returns what is tried in turn: a larger sheet before parts too small to be told apart. */
  private static List<Page> pages() {
    List<Format> formats = List.of(Format.A3, Format.A2, Format.A1);
    List<Page> pages = new ArrayList<>();
    for (Format format : formats) {
      Scale.ALL.stream()
          .filter(s -> s.factor() <= 1 && s.factor() >= READABLE)
          .forEach(s -> pages.add(new Page(format, s)));
    }
    Scale.ALL.stream()
        .filter(s -> s.factor() < READABLE)
        .forEach(s -> formats.forEach(f -> pages.add(new Page(f, s))));
    return pages;
  }

  /** One part as drawn, the axis of the assembly at height 0. */
  private record Shown(int item, List<Mark> marks, Box box) {}

  private @Nullable List<Mark> laid(Format format) {
    List<Shown> shown = new ArrayList<>();
    for (int i : order) {
      shown(i).ifPresent(shown::add);
    }
    Box space = format.space();
    double width = space.width() - 2 * CLEAR;
    List<List<Shown>> rows = rows(shown, width);
    Box block = TitleBlock.place(format);
    double listTop = block.y1() + PartsList.height(items) + CLEAR;
    double least = heights(rows) + 10 * (rows.size() - 1.0);
    for (double floor : new double[] {listTop, space.y0() + CLEAR}) {
      double slack = (space.y1() - CLEAR - floor - least) / (rows.size() + 1);
      if (slack >= 0) {
        List<Mark> all =
            stacked(rows, new Box(space.x0(), floor, space.x1(), space.y1()), slack, block);
        if (all != null) {
          return all;
        }
      }
    }
    return null;
  }

  private static double heights(List<List<Shown>> rows) {
    double sum = 0;
    for (List<Shown> row : rows) {
      sum += high(row) - low(row) + ABOVE + NUMBER;
    }
    return sum;
  }

  private static double high(List<Shown> row) {
    return row.stream().mapToDouble(s -> s.box.y1()).max().orElse(0);
  }

  private static double low(List<Shown> row) {
    return row.stream().mapToDouble(s -> s.box.y0()).min().orElse(0);
  }

  /** Lays rows one under the other; null if one runs into the list. */
  private static @Nullable List<Mark> stacked(
      List<List<Shown>> rows, Box space, double slack, Box block) {
    List<Mark> all = new ArrayList<>();
    double width = space.width() - 2 * CLEAR;
    double top = space.y1() - CLEAR - slack;
    for (List<Shown> row : rows) {
      double wide = row.stream().mapToDouble(s -> s.box.width() + GAP).sum() - GAP;
      double axis = Math.round((top - ABOVE - NUMBER - high(row)) * 2) / 2.0;
      boolean beside = space.x0() + CLEAR + wide < block.x0() - CLEAR;
      boolean above = space.y0() > block.y1();
      if (wide > width || (!beside && !above)) {
        return null;
      }
      double left = space.x0() + CLEAR + (above ? (width - wide) / 2 : 4);
      row(row, left, axis, axis + high(row) + ABOVE, all);
      top = axis + low(row) - 10 - slack;
    }
    return all;
  }

  private static List<List<Shown>> rows(List<Shown> shown, double width) {
    List<List<Shown>> rows = new ArrayList<>();
    double used = Double.POSITIVE_INFINITY;
    for (Shown s : shown) {
      if (used + GAP + s.box.width() > width) {
        rows.add(new ArrayList<>());
        used = -GAP;
      }
      rows.get(rows.size() - 1).add(s);
      used += GAP + s.box.width();
    }
    return rows;
  }

  private static void row(List<Shown> row, double left, double axis, double above, List<Mark> all) {
    double x = left;
    for (Shown s : row) {
      double dx = Math.round((x - s.box.x0()) * 2) / 2.0;
      s.marks.forEach(m -> all.add(m.moved(dx, axis)));
      number(s, dx, axis, above, all);
      x += s.box.width() + GAP;
    }
    all.add(Mark.Stroke.line("axis", Pen.CENTRE, left - 5, axis, x - GAP + 5, axis));
  }

  private static void number(Shown s, double dx, double axis, double above, List<Mark> all) {
    String text = Integer.toString(s.item + 1);
    double middle = (s.box.x0() + s.box.x1()) / 2 + dx;
    double w = Lettering.width(text, NUMBER);
    double dot = axis + within(s, middle - 1 - dx);
    String g = "item" + text + ":note";
    all.add(
        new Mark.Text(
            "item", text, middle - w / 2 + 3, above + 1.2, NUMBER, Mark.Reading.FROM_BELOW));
    all.add(
        new Mark.Stroke(
            g,
            Pen.NARROW,
            List.of(
                new Point(middle - 1, dot),
                new Point(middle + 3 - w / 2 - 1, above),
                new Point(middle + 3 + w / 2 + 1, above))));
    all.add(Mark.Fill.dot("item" + text, middle - 1, dot, 0.6));
  }

  /** Returns a height within the upper part of an outline, above the axis. */
  private static double within(Shown s, double x) {
    List<Double> crossings = new ArrayList<>();
    for (Mark m : s.marks) {
      List<Point> points = Inked.flat(m);
      for (int i = 1; i < points.size(); i++) {
        Point p = points.get(i - 1);
        Point q = points.get(i);
        if (p.x() <= x != q.x() <= x) {
          crossings.add(p.y() + (q.y() - p.y()) * (x - p.x()) / (q.x() - p.x()));
        }
      }
    }
    double top = crossings.stream().mapToDouble(y -> y).max().orElse(s.box.y1());
    double next = crossings.stream().mapToDouble(y -> y).filter(y -> y < top - 1.6).max().orElse(0);
    return (top + Math.max(0, next)) / 2;
  }

  private Optional<Shown> shown(int i) {
    Item item = items.get(i);
    Recipe recipe = item.recipe();
    if (recipe != null) {
      return Optional.of(made(i, recipe));
    } else if (item.bearing() == null) {
      return Optional.empty();
    }
    double half = item.bearing().outside() / 2 * factor;
    double width = item.bearing().width() * factor;
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    for (int n = 0; n < Math.min(4, item.quantity()); n++) {
      bearing(marks, x, width, half, item.bearing().bore() / 2 * factor);
      x += width;
    }
    return Optional.of(new Shown(i, marks, new Box(0, -half, x, half)));
  }

  /** General form of a rolling bearing: an outline with an upright cross (ISO 8826-1). */
  private static void bearing(List<Mark> marks, double x, double width, double out, double in) {
    for (int sign : new int[] {1, -1}) {
      double low = Math.min(sign * out, sign * in);
      double high = Math.max(sign * out, sign * in);
      marks.add(Mark.Stroke.box("bearing", Pen.OUTLINE, new Box(x, low, x + width, high)));
      double arm = Math.min(width, high - low) * 0.3;
      double cx = x + width / 2;
      double cy = (low + high) / 2;
      marks.add(Mark.Stroke.line("bearing", Pen.OUTLINE, cx - arm, cy, cx + arm, cy));
      marks.add(Mark.Stroke.line("bearing", Pen.OUTLINE, cx, cy - arm, cx, cy + arm));
    }
  }

  private Shown made(int i, Recipe recipe) {
    Body body = Bodies.of(recipe);
    Looking looking = looking(recipe);
    View view = View.of(body, Brep.of(body), looking);
    Plan plan = new Plan("item" + i, factor);
    plan.view(view, Plan.Hidden.LEFT_OUT);
    plan.through(Holes.threadedThrough(recipe));
    Marks threads = new Marks(List.of(), outside(Marks.of(recipe)));
    plan.marks(
        threads,
        p -> new Point(p.dot(looking.right()), p.dot(looking.up())),
        looking.along(),
        Plan.Hidden.LEFT_OUT);
    if (recipe instanceof Turned turned) {
      gears(turned, plan);
    }
    plan.compose(d -> null);
    boolean upright = upright(recipe);
    Box outline = plan.outline();
    double axis = axis(recipe, outline, upright);
    List<Mark> marks = new ArrayList<>();
    for (Mark m : plan.done()) {
      marks.add((upright ? laidDown(m) : m).moved(0, -axis));
    }
    Box box = upright ? new Box(outline.y0(), -outline.x1(), outline.y1(), -outline.x0()) : outline;
    return new Shown(i, marks, box.moved(0, -axis));
  }

  /** Gears are drawn as their tip cylinder with the pitch line (ISO 2203). */
  private static void gears(Turned part, Plan plan) {
    double x = 0;
    for (Step s : part.outside()) {
      double to = x + s.length().nominal();
      if (s.teeth() != null) {
        GearTable.pitchLines(plan, s.teeth(), x, to);
      }
      x = to;
    }
  }

  private static List<Marks.Threaded> outside(Marks marks) {
    return marks.threads().stream().filter(t -> t.inside() == Marks.Inside.EXTERNAL).toList();
  }

  /** Turns a mark through a right angle, clockwise. */
  private static Mark laidDown(Mark m) {
    if (m instanceof Mark.Stroke s) {
      return new Mark.Stroke(
          s.group(), s.pen(), s.points().stream().map(p -> new Point(p.y(), -p.x())).toList());
    } else if (m instanceof Mark.Arc a) {
      return new Mark.Arc(
          a.group(), a.pen(), a.y(), -a.x(), a.radius(), a.start() - Math.PI / 2, a.sweep());
    } else if (m instanceof Mark.Fill f) {
      return new Mark.Fill(
          f.group(), f.points().stream().map(p -> new Point(p.y(), -p.x())).toList());
    }
    return m;
  }

  /** The hole that the others of the assembly go through or into: the widest. */
  private static Optional<Prismatic.Holes> main(Recipe recipe) {
    return recipe instanceof Prismatic p
        ? p.operations().stream()
            .filter(o -> o instanceof Prismatic.Holes h && h.pattern().places().size() == 1)
            .map(o -> (Prismatic.Holes) o)
            .max(Comparator.comparingDouble(h -> h.hole().diameter().nominal()))
        : Optional.empty();
  }

  private static Looking looking(Recipe recipe) {
    int axis = main(recipe).map(h -> h.face().axis()).orElse(recipe instanceof Prismatic ? 2 : 0);
    return axis == 1 ? Looking.LEFT : Looking.FRONT;
  }

  private static boolean upright(Recipe recipe) {
    return recipe instanceof Folded
        || (recipe instanceof Prismatic && main(recipe).map(h -> h.face().axis()).orElse(2) == 2);
  }

  /** Returns the height of the assembly's axis in the view as it is laid. */
  private double axis(Recipe recipe, Box outline, boolean upright) {
    Optional<Prismatic.Holes> hole = main(recipe);
    if (hole.isEmpty()) {
      return recipe instanceof Prismatic || recipe instanceof Folded
          ? upright ? -(outline.x0() + outline.x1()) / 2 : (outline.y0() + outline.y1()) / 2
          : 0;
    }
    Face face = hole.get().face();
    var at = hole.get().pattern().places().get(0);
    return (upright ? -at.u() : face.axis() == 2 ? 0 : at.v()) * factor;
  }
}
