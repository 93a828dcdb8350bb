package fettle.sheets.draw;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.page.Format;
import fettle.sheets.page.TitleBlock;
import java.util.ArrayList;
import java.util.List;

/** A parts list on the drawing (ISO 7573): above the title block, read upward from its heading. */
final class PartsList {

  static final Source ORDER =
      Source.page("ISO 7573:2008", "list on the drawing: heading at the bottom, read upward");

  private static final double H = 2.5;
  private static final double LINE = 4;
  private static final double[] WIDTHS = {9, 9, 47, 26, 25, 27, 15, 14, 8};
  private static final List<String> HEADING =
      List.of("Item", "Qty", "Designation", "Number", "Material", "Stock", "Mass", "Cost", "");

  private static final double MARK = 0.8;

  /** A row that begins just below the centring mark is raised by its own height. */
  private static final double HIGHEST_RAISE = 4 * LINE + 2 * MARK;

  private final List<Mark> marks = new ArrayList<>();
  private final double x0;
  private final double middle;
  private double y;

  private PartsList(Format format) {
    Box block = TitleBlock.place(format);
    this.x0 = block.x0();
    this.middle = format.height() / 2;
    this.y = block.y1();
  }

  /**
   * Returns the marks of a list.
   *
   * @param format sheet
   * @param items the lines, item 1 first
   */
  static List<Mark> of(Format format, List<Item> items) {
    PartsList list = new PartsList(format);
    double bottom = list.y;
    list.row(HEADING);
    double above = list.y;
    double mass = 0;
    double cost = 0;
    for (int i = 0; i < items.size(); i++) {
      Item item = items.get(i);
      double one = item.recipe() == null ? 0 : Draughtsman.mass(item.recipe()) * 1e6;
      mass += item.quantity() * one;
      cost += item.quantity() * item.cost();
      list.row(
          List.of(
              Integer.toString(i + 1),
              Integer.toString(item.quantity()),
              item.designation(),
              item.number(),
              item.material(),
              item.stock(),
              one > 0 ? grams(one) : "",
              item.cost() > 0 ? money(item.cost()) : "",
              item.from() == Item.From.BUY ? "buy" : "make"));
    }
    list.row(
        List.of(
            "",
            "",
            "Together, made parts by mass",
            "",
            "",
            "",
            grams(mass),
            cost > 0 ? money(cost) : "",
            ""));
    list.rules(bottom, above);
    return list.marks;
  }

  /** Returns how high a list of so many items is at most. */
  static double height(List<Item> items) {
    double lines = 0;
    for (Item item : items) {
      int most = 1;
      most = Math.max(most, wrapped(item.designation(), 2).size());
      most = Math.max(most, wrapped(item.number(), 3).size());
      most = Math.max(most, wrapped(item.material(), 4).size());
      most = Math.max(most, wrapped(item.stock(), 5).size());
      lines += most * LINE + 2;
    }
    return lines + 2 * (LINE + 2) + HIGHEST_RAISE;
  }

  private static String grams(double grams) {
    return grams < 1000
        ? Numbers.fixed(grams, 0) + " g"
        : Numbers.fixed(grams / 1000, 2).replace('.', ',') + " kg";
  }

  private static String money(double amount) {
    return Numbers.fixed(amount, 2).replace('.', ',');
  }

  private static List<String> wrapped(String text, int column) {
    return TitleBlock.wrapped(text, H, WIDTHS[column] - 2, 4, HEADING.get(column));
  }

  private void row(List<String> cells) {
    List<List<String>> all = new ArrayList<>();
    int most = 1;
    for (int i = 0; i < cells.size(); i++) {
      List<String> lines = wrapped(cells.get(i), i);
      all.add(lines);
      most = Math.max(most, lines.size());
    }
    double under = y + 1.6;
    double clear = clear(under, most * LINE);
    double x = x0;
    for (int i = 0; i < cells.size(); i++) {
      for (int j = 0; j < all.get(i).size(); j++) {
        String text = all.get(i).get(j);
        if (!text.isEmpty()) {
          boolean right = i == 6 || i == 7;
          double at = right ? x + WIDTHS[i] - 1 - Lettering.width(text, H) : x + 1;
          double base = under + clear + (most - 1 - j) * LINE;
          marks.add(new Mark.Text("list", text, at, base, H, Mark.Reading.FROM_BELOW));
        }
      }
      x += WIDTHS[i];
    }
    y += most * LINE + 2 + clear;
    marks.add(Mark.Stroke.line("list", Pen.BLOCK, x0, y, x0 + TitleBlock.WIDTH, y));
  }

  /** How far text is raised so that the centring mark of the frame does not run through it. */
  private double clear(double under, double height) {
    boolean crossed = under - MARK < middle && middle < under + height + MARK;
    return crossed ? middle + MARK - under : 0;
  }

  private void rules(double bottom, double above) {
    double x = x0;
    for (int i = 0; i < WIDTHS.length - 1; i++) {
      x += WIDTHS[i];
      marks.add(Mark.Stroke.line("list", Pen.BLOCK, x, bottom, x, y));
    }
    marks.add(Mark.Stroke.box("list", Pen.OUTLINE, new Box(x0, bottom, x0 + TitleBlock.WIDTH, y)));
    marks.add(Mark.Stroke.line("list", Pen.OUTLINE, x0, above, x0 + TitleBlock.WIDTH, above));
  }
}
