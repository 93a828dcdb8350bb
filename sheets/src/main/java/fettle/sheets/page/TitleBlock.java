package fettle.sheets.page;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import java.util.ArrayList;
import java.util.List;

/**
 * Title block after ISO 7200, 180 wide, in the lower right corner of the drawing space; above it a
 * strip with what ISO 7200 leaves outside: scale, projection, tolerances, texture, edges.
 */
public final class TitleBlock {

  static final Source FIELDS =
      Source.page("ISO 7200:2004", "Table 2, data fields; clause 6, width 180");
  static final Source SYMBOL =
      Source.derived("frustum and circles seen from its narrow end, ISO 5456-2; sizes from memory");

  public static final double WIDTH = 180;
  public static final double ROW = 10;
  public static final double STRIP = 12;
  public static final double HEIGHT = 3 * ROW + STRIP;

  /**
   * What changes from sheet to sheet.
   *
   * @param title title
   * @param supplement supplementary title
   * @param number drawing number
   * @param kind document type
   * @param material material, empty on an assembly
   * @param mass mass as text, empty if unknown
   * @param tolerance general tolerance note
   * @param texture general surface texture, as {@code Ra 3,2}, empty for none
   * @param scale main scale
   * @param sheet sheet number and number of sheets
   */
  public record Fields(
      String title,
      String supplement,
      String number,
      String kind,
      String material,
      String mass,
      String tolerance,
      String texture,
      String scale,
      String sheet) {}

  private final List<Mark> marks = new ArrayList<>();
  private final double x0;
  private final double y0;

  private TitleBlock(Format format) {
    this.x0 = format.space().x1() - WIDTH;
    this.y0 = format.space().y0();
  }

  /** Returns the place of the block with its strip. */
  public static Box place(Format format) {
    Box s = format.space();
    return new Box(s.x1() - WIDTH, s.y0(), s.x1(), s.y0() + HEIGHT);
  }

  /** Returns the marks of the block. */
  public static List<Mark> of(Format format, Heads heads, Fields f) {
    TitleBlock b = new TitleBlock(format);
    b.strip(heads, f);
    b.block(heads, f);
    return b.marks;
  }

  private void strip(Heads heads, Fields f) {
    double y = 3 * ROW;
    field(0, y, 52, STRIP, "General tolerances", f.tolerance());
    field(
        52,
        y,
        33,
        STRIP,
        "Texture ISO 21920",
        f.texture().isEmpty() ? "-" : Lettering.TEXTURE + " " + f.texture());
    field(85, y, 39, STRIP, "Edges ISO 13715", "⌲ -0,3 / +0,3");
    field(124, y, 16, STRIP, "Scale", f.scale());
    field(140, y, 40, STRIP, "mm", "");
    symbol(x0 + 163, y0 + y + STRIP / 2, heads.angle());
  }

  private void block(Heads heads, Fields f) {
    double top = 2 * ROW;
    field(0, top, 34, ROW, "Department", heads.department());
    field(34, top, 34, ROW, "Technical reference", heads.reference());
    field(68, top, 36, ROW, "Document type", f.kind());
    field(104, top, 26, ROW, "Status", heads.status());
    field(130, top, 27, ROW, "Material", f.material());
    field(157, top, 23, ROW, "Mass", f.mass());
    field(0, 0, 34, top, "Legal owner", heads.owner());
    field(34, ROW, 28, ROW, "Created by", heads.creator());
    field(34, 0, 28, ROW, "Approved by", heads.approval());
    titles(f);
    field(126, ROW, 54, ROW, "Drawing number", f.number());
    field(126, 0, 9, ROW, "Rev", heads.revision());
    field(135, 0, 27, ROW, "Date of issue", heads.date());
    field(162, 0, 8, ROW, "Lan", heads.language());
    field(170, 0, 10, ROW, "Sheet", f.sheet());
    marks.add(Mark.Stroke.box("block", Pen.FRAME, new Box(x0, y0, x0 + WIDTH, y0 + HEIGHT)));
  }

  private void titles(Fields f) {
    double width = 64;
    cell(62, 0, width, 2 * ROW);
    label(62, 2 * ROW, "Title, supplementary title");
    double room = width - 3;
    double h = Lettering.width(f.title(), 5) <= room ? 5 : 3.5;
    List<String> lines = wrapped(f.title(), h, room, 2, "title");
    double y = y0 + 2 * ROW - 5 - h;
    for (String line : lines) {
      text(x0 + 63.5, y, h, line);
      y -= h * 1.4;
    }
    if (!f.supplement().isEmpty() && lines.size() == 1) {
      double s = Lettering.width(f.supplement(), 3.5) <= room ? 3.5 : 2.5;
      text(x0 + 63.5, y0 + 2, s, wrapped(f.supplement(), s, room, 1, "supplementary title").get(0));
    }
  }

  private void field(double x, double y, double w, double h, String label, String value) {
    cell(x, y, w, h);
    label(x, y + h, label);
    double room = w - 3;
    double lower = y0 + y + 1.4;
    if (Lettering.width(value, 3.5) <= room) {
      text(x0 + x + 1.5, lower, 3.5, value);
      return;
    }
    int lines = h >= 2 * ROW ? 3 : 1;
    List<String> all = wrapped(value, 2.5, room, lines, label);
    for (int i = 0; i < all.size(); i++) {
      text(x0 + x + 1.5, lower + (all.size() - 1 - i) * 4.2, 2.5, all.get(i));
    }
  }

  /**
   * Breaks a text into lines that fit; refuses one that does not.
   *
   * @param text the text
   * @param h height of the lettering [mm]
   * @param room width of the field [mm]
   * @param most most lines
   * @param field what the field is called
   */
  public static List<String> wrapped(String text, double h, double room, int most, String field) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.trim().split(" +")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (Lettering.width(longer, h) <= room) {
        line.setLength(0);
        line.append(longer);
      } else {
        if (!line.isEmpty()) {
          lines.add(line.toString());
        }
        line.setLength(0);
        line.append(word);
      }
    }
    lines.add(line.toString());
    if (lines.size() > most || lines.stream().anyMatch(l -> Lettering.width(l, h) > room)) {
      throw new IllegalArgumentException(
          "title block, field '"
              + field
              + "': '"
              + text
              + "' is too long for its field at the least height of lettering; shorten it");
    }
    return lines;
  }

  private void cell(double x, double y, double w, double h) {
    marks.add(Mark.Stroke.box("block", Pen.BLOCK, new Box(x0 + x, y0 + y, x0 + x + w, y0 + y + h)));
  }

  private void label(double x, double top, String label) {
    text(x0 + x + 1.2, y0 + top - 3.5, 2.5, label);
  }

  private void text(double x, double y, double h, String text) {
    if (!text.isEmpty()) {
      marks.add(new Mark.Text("block", text, x, y, h, Mark.Reading.FROM_BELOW));
    }
  }

  /** Frustum and circles; first angle has the circles to the right of the frustum. */
  private void symbol(double cx, double cy, Heads.Projection angle) {
    marks.addAll(projection(cx, cy, angle));
  }

  /** Returns the projection symbol round a place. */
  public static List<Mark> projection(double cx, double cy, Heads.Projection angle) {
    double h = 3.5;
    int side = angle == Heads.Projection.FIRST ? 1 : -1;
    double circles = cx + side * 6.5;
    double near = cx - side * 3;
    double far = cx - side * 10;
    String g = "block";
    List<Mark> out = new ArrayList<>();
    out.add(new Mark.Arc(g, Pen.SYMBOL, circles, cy, h, 0, 2 * Math.PI));
    out.add(new Mark.Arc(g, Pen.SYMBOL, circles, cy, h / 2, 0, 2 * Math.PI));
    out.add(
        new Mark.Stroke(
            g,
            Pen.SYMBOL,
            List.of(
                new fettle.sheets.marks.Point(far, cy - h / 2),
                new fettle.sheets.marks.Point(near, cy - h),
                new fettle.sheets.marks.Point(near, cy + h),
                new fettle.sheets.marks.Point(far, cy + h / 2),
                new fettle.sheets.marks.Point(far, cy - h / 2))));
    out.add(
        Mark.Stroke.line(
            g, Pen.CENTRE, Math.min(far, near) - 1.5, cy, Math.max(far, near) + 1.5, cy));
    out.add(Mark.Stroke.line(g, Pen.CENTRE, circles - 5, cy, circles + 5, cy));
    out.add(Mark.Stroke.line(g, Pen.CENTRE, circles, cy - 5, circles, cy + 5));
    return out;
  }
}
