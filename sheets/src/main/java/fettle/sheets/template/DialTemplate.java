package fettle.sheets.template;

import fettle.mechanics.base.Source;
import fettle.parts.recipe.Heading;
import fettle.mechanics.stock.Stock;
import fettle.parts.recipe.Turned;
import fettle.sheets.dimension.Values;
import fettle.sheets.draw.Table;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.page.Format;
import fettle.sheets.page.Frame;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Scale;
import fettle.sheets.page.Sheet;
import fettle.sheets.page.TitleBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The graduations of a rim laid flat at full size. */
public final class DialTemplate {

  static final Source RULES =
      Source.practice(
          "lines 1 : 1.4 : 1.8; numbers at the longest; print checked on bars of 100 mm");

  private static final String G = "template";
  private static final double ABOVE_TABLE = 46;
  private static final int MOST_ROWS = 10;

  private DialTemplate() {}

  /**
   * Returns the template of graduations.
   *
   * @param heading heading of the part
   * @param heads who draws
   * @param g the graduations
   * @param diameter diameter of the rim [mm]
   * @param strip thickness of what is glued round it, 0 for engraving from the template [mm]
   * @param head the shop's dividing head
   */
  public static Sheet of(
      Heading heading,
      Heads heads,
      Turned.Graduations g,
      double diameter,
      double strip,
      DividingHead head) {
    double length = Math.PI * (diameter + strip);
    double pitch = length / g.divisions();
    if (!(pitch >= 0.7)) {
      throw new IllegalArgumentException(
          g.name()
              + ": divisions stand "
              + Values.number(pitch)
              + " mm apart, under the 0,7 mm that can be told apart; take a larger dial or fewer"
              + " divisions");
    }
    Format format = length <= 160 ? Format.A4 : length <= 370 ? Format.A3 : Format.A2;
    if (length > 540) {
      throw new IllegalArgumentException(
          g.name() + ": the strip of " + Values.number(length) + " mm is longer than an A2 sheet");
    }
    List<Mark> marks = new ArrayList<>(Frame.of(format));
    marks.addAll(TitleBlock.of(format, heads, fields(heading)));
    Box s = format.space();
    double x0 = (s.x0() + s.x1() - length) / 2;
    double y0 = s.y1() - 60;
    strip(marks, g, x0, y0, length, pitch);
    bars(marks, s, y0 - 30, length, g);
    dividing(marks, s, y0 - 30 - ABOVE_TABLE, g, head);
    return new Sheet(format, heading.number(), heading.title(), new Scale(1, 1), marks);
  }

  /** The shop's own dividing head, where a line is set by turns of the crank. */
  private static void dividing(
      List<Mark> marks, Box s, double y, Turned.Graduations g, DividingHead head) {
    double x = s.x0() + 27;
    Optional<Stock.Indexing> step = head.step(g.divisions());
    if (step.isEmpty()) {
      text(marks, "No hole circle of the dividing head gives these divisions exactly.", x, y);
      return;
    }
    Stock.Indexing one = step.get();
    text(
        marks,
        "Dividing head "
            + Values.number(head.ratio())
            + " : 1, circle of "
            + Values.number(one.circle())
            + " holes. From line to line "
            + count(one.turns(), "turn")
            + " + "
            + count(one.holes(), "hole")
            + ".",
        x,
        y);
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Line", "Turns from line 0", "Holes further"));
    int block = g.major() * MOST_ROWS;
    int every = g.major() * ((g.divisions() + block - 1) / block);
    for (int line = 0; line < g.divisions(); line += every) {
      long holes = (long) line * head.ratio() * one.circle() / g.divisions();
      rows.add(
          List.of(
              Values.number(line),
              Values.number(holes / one.circle()),
              Values.number(holes % one.circle())));
    }
    new Table("dividing", rows).marks().forEach(m -> marks.add(m.moved(x, y - 4)));
  }

  private static String count(int count, String what) {
    return Values.number(count) + " " + what + (count == 1 ? "" : "s");
  }

  private static void text(List<Mark> marks, String text, double x, double y) {
    marks.add(new Mark.Text(G, text, x, y, 3.5, Mark.Reading.FROM_BELOW));
  }

  private static TitleBlock.Fields fields(Heading h) {
    return new TitleBlock.Fields(
        h.title(),
        "Dial template",
        h.number(),
        "Template",
        h.material(),
        "",
        "-",
        "",
        "1:1",
        "1/1");
  }

  private static void strip(
      List<Mark> marks, Turned.Graduations g, double x0, double y0, double length, double pitch) {
    double longest = g.minorLength() * 1.8;
    Box edge = new Box(x0, y0, x0 + length, y0 + longest + 9);
    marks.add(Mark.Stroke.box(G, Pen.NARROW, edge));
    boolean left = g.sense() == Turned.Sense.LEFT;
    for (int i = 0; i < g.divisions(); i++) {
      double x = left ? x0 + length - i * pitch : x0 + i * pitch;
      boolean major = i % g.major() == 0;
      double l = major ? longest : i % g.middle() == 0 ? g.minorLength() * 1.4 : g.minorLength();
      marks.add(Mark.Stroke.line(G, Pen.NARROW, x, y0, x, y0 + l));
      if (major) {
        number(marks, Values.number(i / g.major() * g.label()), x, y0 + longest + 2, edge);
      }
    }
  }

  /** The number of the line at the joint stands beside it, all others over their lines. */
  private static void number(List<Mark> marks, String text, double x, double y, Box edge) {
    double h = 2.5;
    double w = Lettering.width(text, h);
    double at = Math.max(edge.x0() + 1, Math.min(edge.x1() - 1 - w, x - w / 2));
    marks.add(new Mark.Text(G, text, at, y, h, Mark.Reading.FROM_BELOW));
  }

  private static void bars(List<Mark> marks, Box s, double y, double length, Turned.Graduations g) {
    double x = s.x0() + 15;
    tick(marks, x, y, 100, 0);
    tick(marks, x, y - 115, 0, 100);
    List<String> notes =
        List.of(
            "Both bars must measure 100 mm ± 0,3. Measured: across ....... up .......",
            "Print at 100 %, never fitted to the page.",
            "Strip "
                + Values.number(Math.round(length * 100) / 100.0)
                + " long, "
                + g.divisions()
                + " divisions.",
            "Butt joint at line 0; foot of the numbers to the lines.");
    for (int i = 0; i < notes.size(); i++) {
      text(marks, notes.get(i), x + 12, y - 12 - 7 * i);
    }
  }

  private static void tick(List<Mark> marks, double x, double y, double dx, double dy) {
    double ox = dy > 0 ? 2 : 0;
    double oy = dx > 0 ? 2 : 0;
    marks.add(Mark.Stroke.line(G, Pen.NARROW, x, y, x + dx, y + dy));
    marks.add(Mark.Stroke.line(G, Pen.NARROW, x - ox, y - oy, x + ox, y + oy));
    marks.add(Mark.Stroke.line(G, Pen.NARROW, x + dx - ox, y + dy - oy, x + dx + ox, y + dy + oy));
  }
}
