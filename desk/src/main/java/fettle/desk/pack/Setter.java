package fettle.desk.pack;

import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets the blocks of one chapter on upright A4 pages: a column of text with the filing margin on
 * its left, lettering of 2.5 mm, nothing smaller.
 */
final class Setter {

  static final double LEFT = 25;
  static final double RIGHT = 195;
  static final double TOP = 270;
  static final double FOOT = 24;
  static final double TEXT = 2.5;
  private static final double PITCH = 4.6;
  private static final double PROSE = 150;
  private static final double HEAD = 3.5;
  private static final double TITLE = 7;
  private static final double PAD = 1.8;
  private static final double INDENT = 7;
  private static final int MOST_LINES = 40;

  private final List<List<Mark>> pages = new ArrayList<>();
  private double y;

  private Setter(double top) {
    pages.add(new ArrayList<>());
    y = top;
  }

  /**
   * Returns the marks of a few blocks on a page of their own.
   *
   * @param top where they start [mm]
   * @param blocks the blocks; what finds no room on the page is left out
   */
  static List<Mark> at(double top, List<Block> blocks) {
    Setter setter = new Setter(top);
    blocks.forEach(setter::block);
    return setter.pages.get(0);
  }

  /** Returns the marks of each page of a chapter. */
  static List<List<Mark>> pages(Chapter chapter) {
    Setter setter = new Setter(TOP);
    setter.title(chapter.title());
    chapter.blocks().forEach(setter::block);
    return setter.pages;
  }

  private List<Mark> page() {
    return pages.get(pages.size() - 1);
  }

  private void room(double needed) {
    if (y - needed < FOOT) {
      pages.add(new ArrayList<>());
      y = TOP;
    }
  }

  private void text(double x, double base, double height, String words) {
    if (!words.isEmpty()) {
      page().add(new Mark.Text("pack", words, x, base, height, Mark.Reading.FROM_BELOW));
    }
  }

  private void line(Pen pen, double x0, double y0, double x1, double y1) {
    page().add(Mark.Stroke.line("rule", pen, x0, y0, x1, y1));
  }

  private void title(String words) {
    for (String l : Lines.of(words, TITLE, RIGHT - LEFT)) {
      text(LEFT, y - TITLE, TITLE, l);
      y -= TITLE * 1.5;
    }
    line(Pen.FRAME, LEFT, y - 0.5, LEFT + 40, y - 0.5);
    y -= 8;
  }

  private void block(Block block) {
    if (block instanceof Block.Heading h) {
      heading(h.words());
    } else if (block instanceof Block.Prose p) {
      lines(Lines.of(p.words(), TEXT, PROSE), LEFT);
      y -= 2.2;
    } else if (block instanceof Block.Point p) {
      point(p.words());
    } else if (block instanceof Block.Step s) {
      step(s);
    } else if (block instanceof Block.Caution c) {
      caution(c.words());
    } else if (block instanceof Block.Ticks t) {
      ticks(t);
    } else if (block instanceof Block.Grid g) {
      grid(g);
    } else if (block instanceof Block.Form f) {
      form(f);
    }
  }

  private void lines(List<String> lines, double x) {
    for (String l : lines) {
      room(PITCH);
      text(x, y - TEXT, TEXT, l);
      y -= PITCH;
    }
  }

  private void heading(String words) {
    List<String> all = Lines.of(words, HEAD, RIGHT - LEFT);
    room(all.size() * 6 + 18);
    y -= y < TOP ? 3.5 : 0;
    for (String l : all) {
      text(LEFT, y - HEAD, HEAD, l);
      y -= 6;
    }
    y -= 0.8;
  }

  private void point(String words) {
    List<String> all = Lines.of(words, TEXT, PROSE - INDENT);
    room(Math.min(all.size(), 3) * PITCH);
    page().add(Mark.Fill.dot("rule", LEFT + 2, y - TEXT / 2, 0.6));
    lines(all, LEFT + INDENT);
    y -= 1;
  }

  private void step(Block.Step step) {
    List<String> first = Lines.of(step.words(), TEXT, PROSE - 10);
    room((Math.min(first.size(), 3) + Math.min(step.more().size(), 2)) * PITCH + 2);
    double side = 3.6;
    page()
        .add(
            Mark.Stroke.box(
                "rule", Pen.SYMBOL, new Box(LEFT, y - side + 0.4, LEFT + side, y + 0.4)));
    text(LEFT + 6, y - TEXT, TEXT, step.number());
    lines(first, LEFT + 14);
    for (String more : step.more()) {
      lines(Lines.of(more, TEXT, PROSE - 14), LEFT + 18);
    }
    y -= 1.8;
  }

  /** A caution stands in a frame behind the general warning triangle, drawn and not coloured. */
  private void caution(String words) {
    List<String> all = Lines.of(words, TEXT, RIGHT - LEFT - 16);
    for (int from = 0; from < all.size(); from += MOST_LINES) {
      framed(all.subList(from, Math.min(all.size(), from + MOST_LINES)));
    }
  }

  private void framed(List<String> all) {
    double indent = 12;
    double height = Math.max(9, all.size() * PITCH + 3.4);
    room(height + 2);
    page().add(Mark.Stroke.box("caution", Pen.OUTLINE, new Box(LEFT, y - height, RIGHT, y)));
    triangle(LEFT + 6, y - height / 2);
    double base = y - (height - (all.size() - 1) * PITCH - TEXT) / 2 - TEXT;
    for (String l : all) {
      text(LEFT + indent, base, TEXT, l);
      base -= PITCH;
    }
    y -= height + 2.2;
  }

  private void triangle(double x, double middle) {
    double h = 6;
    double half = h / Math.sqrt(3);
    double foot = middle - h / 2;
    page()
        .add(
            new Mark.Stroke(
                "caution",
                Pen.OUTLINE,
                List.of(
                    new Point(x - half, foot),
                    new Point(x + half, foot),
                    new Point(x, foot + h),
                    new Point(x - half, foot))));
    page().add(Mark.Stroke.line("caution", Pen.OUTLINE, x, foot + 2, x, foot + 3.8));
    page().add(Mark.Fill.dot("caution", x, foot + 1.1, 0.35));
  }

  private void ticks(Block.Ticks t) {
    double name = 62;
    double scale = 44;
    List<String> left = Lines.of(t.name(), TEXT, name - 3);
    List<String> before = Lines.of(t.before(), TEXT, 30);
    List<String> after = Lines.of(t.after(), TEXT, 30);
    int most = Math.max(left.size(), Math.max(before.size(), after.size()));
    double height = Math.max(most * PITCH, PITCH) + 2;
    room(height);
    y -= 1;
    column(left, LEFT, y);
    column(before, LEFT + name, y);
    Ticking.marks(t.bar(), LEFT + name + 33, y - height / 2 + 0.4, scale).forEach(page()::add);
    column(after, LEFT + name + 33 + scale + 3, y);
    y -= height;
    line(Pen.NARROW, LEFT, y + 0.6, RIGHT, y + 0.6);
  }

  private void column(List<String> lines, double x, double top) {
    double base = top - TEXT;
    for (String l : lines) {
      text(x, base, TEXT, l);
      base -= PITCH;
    }
  }

  private void grid(Block.Grid g) {
    double[] x = edges(g);
    head(g, x);
    for (List<String> row : g.rows()) {
      if (row.size() == 1) {
        across(g, x, row.get(0));
      } else {
        row(g, x, row);
      }
    }
    line(Pen.OUTLINE, LEFT, y, RIGHT, y);
    y -= 5;
  }

  private static double[] edges(Block.Grid g) {
    double sum = g.columns().stream().mapToDouble(Block.Column::share).sum();
    double[] x = new double[g.columns().size() + 1];
    x[0] = LEFT;
    for (int i = 0; i < g.columns().size(); i++) {
      x[i + 1] = x[i] + g.columns().get(i).share() / sum * (RIGHT - LEFT);
    }
    return x;
  }

  private void head(Block.Grid g, double[] x) {
    room(3 * PITCH + 6);
    line(Pen.OUTLINE, LEFT, y, RIGHT, y);
    set(g, x, broken(x, g.columns().stream().map(Block.Column::head).toList()));
    line(Pen.SYMBOL, LEFT, y, RIGHT, y);
  }

  private void across(Block.Grid g, double[] x, String words) {
    List<String> all = Lines.of(words, TEXT, RIGHT - LEFT - 2 * PAD);
    breakTable(g, x, all.size() * PITCH + 2 * PITCH + 6);
    y -= 2.4;
    for (String l : all) {
      text(LEFT + PAD, y - TEXT - 0.6, TEXT, l);
      y -= PITCH;
    }
    y -= 0.6;
    line(Pen.SYMBOL, LEFT, y, RIGHT, y);
  }

  /** A row that is higher than a page is cut. */
  private void row(Block.Grid g, double[] x, List<String> cells) {
    List<List<String>> columns = broken(x, cells);
    int most = columns.stream().mapToInt(List::size).max().orElse(1);
    for (int from = 0; from < most; from += MOST_LINES) {
      int to = Math.min(most, from + MOST_LINES);
      int start = from;
      breakTable(g, x, (to - from) * PITCH + 2);
      set(
          g,
          x,
          columns.stream()
              .map(c -> c.subList(Math.min(start, c.size()), Math.min(to, c.size())))
              .toList());
    }
    line(Pen.NARROW, LEFT, y, RIGHT, y);
  }

  private void breakTable(Block.Grid g, double[] x, double needed) {
    if (y - needed < FOOT) {
      room(Double.POSITIVE_INFINITY);
      head(g, x);
    }
  }

  private static List<List<String>> broken(double[] x, List<String> cells) {
    List<List<String>> columns = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      columns.add(Lines.of(cells.get(i), TEXT, x[i + 1] - x[i] - 2 * PAD));
    }
    return columns;
  }

  private void set(Block.Grid g, double[] x, List<List<String>> columns) {
    for (int i = 0; i < columns.size(); i++) {
      double base = y - TEXT - 1.2;
      for (String l : columns.get(i)) {
        double at =
            g.columns().get(i).side() == Block.Side.RIGHT
                ? x[i + 1] - PAD - Lettering.width(l, TEXT)
                : x[i] + PAD;
        text(at, base, TEXT, l);
        base -= PITCH;
      }
    }
    y -= columns.stream().mapToInt(List::size).max().orElse(1) * PITCH + 1;
  }

  /** A form stands in as many columns beside each other as there is room for. */
  private void form(Block.Form f) {
    double[] widths = new double[f.heads().size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = Lettering.width(Lines.plain(f.heads().get(i)), TEXT) + 2 * PAD;
      for (List<String> row : f.rows()) {
        if (i < row.size()) {
          widths[i] = Math.max(widths[i], Lettering.width(Lines.plain(row.get(i)), TEXT) + 2 * PAD);
        }
      }
    }
    widths[widths.length - 1] = Math.max(24, widths[widths.length - 1]);
    double wide = java.util.Arrays.stream(widths).sum();
    int beside = (int) Math.max(1, Math.floor((RIGHT - LEFT + 6) / (wide + 6)));
    double tall = 6;
    int next = 0;
    while (next < f.rows().size()) {
      room(4 * tall);
      int deep = (int) Math.floor((y - FOOT) / tall) - 1;
      int left = f.rows().size() - next;
      int each = Math.min(deep, (left + beside - 1) / beside);
      double top = y;
      for (int c = 0; c < beside && next < f.rows().size(); c++) {
        int to = Math.min(f.rows().size(), next + each);
        filling(f, widths, LEFT + c * (wide + 6), top, f.rows().subList(next, to), tall);
        next = to;
      }
      y = top - (each + 1) * tall - 4;
    }
  }

  private void filling(
      Block.Form f,
      double[] widths,
      double left,
      double top,
      List<List<String>> rows,
      double tall) {
    double foot = top - (rows.size() + 1) * tall;
    double x = left;
    for (int i = 0; i < widths.length; i++) {
      text(x + PAD, top - tall + 1.8, TEXT, Lines.plain(f.heads().get(i)));
      for (int r = 0; r < rows.size(); r++) {
        if (i < rows.get(r).size()) {
          text(x + PAD, top - (r + 2) * tall + 1.8, TEXT, Lines.plain(rows.get(r).get(i)));
        }
      }
      x += widths[i];
      if (i < widths.length - 1) {
        line(Pen.NARROW, x, foot, x, top);
      }
    }
    for (int r = 1; r <= rows.size(); r++) {
      line(r == 1 ? Pen.OUTLINE : Pen.NARROW, left, top - r * tall, x, top - r * tall);
    }
    page().add(Mark.Stroke.box("rule", Pen.OUTLINE, new Box(left, foot, x, top)));
  }
}
