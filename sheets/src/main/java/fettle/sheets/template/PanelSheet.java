package fettle.sheets.template;

import fettle.machine.topics.Panel;
import fettle.mechanics.base.Source;
import fettle.mechanics.electrics.ElectricsReckoners;
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
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the devices of a control box sit: the plate beside the front, both seen from the front, and
 * a list with the place of each device.
 */
public final class PanelSheet {

  static final Source RULES =
      Source.practice("places from the plate's lower left corner; designations after IEC 81346-2");

  private static final List<Scale> SCALES =
      List.of(new Scale(2, 1), new Scale(1, 1), new Scale(1, 2), new Scale(1, 5), new Scale(1, 10));

  /** What it shows. */
  public static final String TITLE = "Layout of the control box";

  private static final double TEXT = 3.5;
  private static final double GAP = 12;
  private static final double MARGIN = 6;
  private static final double FIRST = 10;
  private static final double PITCH = 7;
  private static final double HEADING = 9;
  private static final double NOTES = TitleBlock.HEIGHT + 4;

  private final Panel panel;
  private final Front front;
  private final double factor;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Box> bodies = new ArrayList<>();

  private PanelSheet(Panel panel, Front front, double factor) {
    this.panel = panel;
    this.front = front;
    this.factor = factor;
  }

  /**
   * The front of the box.
   *
   * @param width width [mm]
   * @param height height [mm]
   * @param openings its openings by name
   */
  public record Front(double width, double height, Map<String, Panel.Opening> openings) {
    /** Keeps its own copy. */
    public Front {
      openings = Collections.unmodifiableMap(new LinkedHashMap<>(openings));
    }
  }

  /**
   * Draws the layout.
   *
   * @param title the change that the box belongs to
   * @param number drawing number
   * @param heads who draws
   * @param panel the layout
   * @param front the front, of no width if there is none
   * @throws IllegalArgumentException if it finds no room on A1
   */
  public static Sheet of(String title, String number, Heads heads, Panel panel, Front front) {
    Table list = new Table("devices", rows(panel));
    Page page =
        pages(panel, front, list).stream()
            .filter(p -> new PanelSheet(panel, front, p.scale.factor()).isLegible())
            .findFirst()
            .or(() -> pages(panel, front, list).stream().findFirst())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "the layout of the control box finds no room on A1"));
    return new PanelSheet(panel, front, page.scale.factor())
        .drawn(page.format, page.scale, list, title, number, heads);
  }

  /** A size of paper and a scale. */
  private record Page(Format format, Scale scale) {}

  /** Returns where the layout finds room, the smallest sheet and the largest scale first. */
  private static List<Page> pages(Panel panel, Front front, Table list) {
    List<Page> pages = new ArrayList<>();
    for (Format format : List.of(Format.A3, Format.A2, Format.A1)) {
      for (Scale scale : SCALES) {
        if (new PanelSheet(panel, front, scale.factor()).fits(format, list.bounds())) {
          pages.add(new Page(format, scale));
        }
      }
    }
    return pages;
  }

  private static List<List<String>> rows(Panel panel) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "Device", "Ratings", "Sits on", "Across", "Up", "W × H × D", "Air"));
    for (Panel.Device d : panel.devices()) {
      if (d.isInside()) {
        rows.add(
            List.of(
                d.designation(),
                d.what(),
                d.rated(),
                d.sits(),
                Values.number(d.left()),
                Values.number(d.low()),
                Values.number(d.width())
                    + " × "
                    + Values.number(d.height())
                    + " × "
                    + Values.number(d.depth()),
                d.air() > 0 ? Values.number(d.air()) : ""));
      }
    }
    return rows;
  }

  private boolean fits(Format format, Box list) {
    Box s = format.space();
    double wide = 2 * MARGIN + beside() + factor * (panel.plate().width() + front.width()) + GAP;
    double high =
        MARGIN
            + HEADING
            + factor * Math.max(panel.plate().height(), front.height())
            + FIRST
            + MARGIN
            + (list.y1() - list.y0())
            + NOTES;
    return wide <= s.x1() - s.x0()
        && high <= s.y1() - s.y0()
        && list.x1() - list.x0() + 2 * MARGIN <= s.x1() - s.x0();
  }

  /** Room for the dimensions beside the plate. */
  private double beside() {
    return FIRST + PITCH * panel.rails().size() + TEXT;
  }

  /** Whether every device on the plate is large enough to hold its designation. */
  private boolean isLegible() {
    return panel.devices().stream()
        .filter(Panel.Device::onPlate)
        .allMatch(
            d -> {
              double text = Lettering.width(d.designation(), TEXT) + 1;
              double w = factor * d.width();
              double h = factor * d.height();
              return Math.max(w, h) >= text && Math.min(w, h) >= TEXT + 1;
            });
  }

  private Sheet drawn(
      Format format, Scale scale, Table list, String title, String number, Heads heads) {
    marks.addAll(Frame.of(format));
    marks.addAll(
        TitleBlock.of(
            format,
            heads,
            new TitleBlock.Fields(
                title, TITLE, number, "Layout drawing", "", "", "-", "", scale.toString(), "1/1")));
    Box s = format.space();
    double height = factor * Math.max(panel.plate().height(), front.height());
    double y = s.y1() - MARGIN - HEADING - height;
    double x = s.x0() + MARGIN + beside();
    plate(x, y);
    if (front.width() > 0) {
      front(x + factor * panel.plate().width() + GAP, y);
    }
    Box b = list.bounds();
    double under = s.y0() + NOTES + (b.y1() - b.y0());
    list.marks().forEach(m -> marks.add(m.moved(s.x0() + MARGIN, under)));
    notes(s);
    return new Sheet(format, number, TITLE, scale, marks);
  }

  private void plate(double x, double y) {
    String g = "view:plate";
    double w = factor * panel.plate().width();
    double h = factor * panel.plate().height();
    marks.add(Mark.Stroke.box(g, Pen.OUTLINE, new Box(x, y, x + w, y + h)));
    text(g, "Plate, seen from the front", x, y + h + 3);
    for (Panel.Device d : panel.devices()) {
      if (d.onPlate()) {
        Box body = body(d, x, y, 0, 0);
        bodies.add(body);
        marks.add(Mark.Stroke.box(g, Pen.OUTLINE, body));
        inside(g, d.designation(), body);
      }
    }
    panel.rails().values().forEach(up -> rail(x, y + factor * up, w));
    across(x, x + w, y - FIRST, y, Values.number(panel.plate().width()));
    List<Double> ups = new ArrayList<>(panel.rails().values());
    ups.add(panel.plate().height());
    ups.sort(Double::compare);
    for (int i = 0; i < ups.size(); i++) {
      upright(y, y + factor * ups.get(i), x - FIRST - PITCH * i, x, Values.number(ups.get(i)));
    }
  }

  /** The rail shows only where no device stands on it. */
  private void rail(double x, double y, double w) {
    double half = factor * Panel.RAIL_WIDTH / 2;
    piece(Pen.CENTRE, x, y, w);
    piece(Pen.NARROW, x, y - half, w);
    piece(Pen.NARROW, x, y + half, w);
  }

  private void piece(Pen pen, double x, double y, double w) {
    double from = x;
    for (Box body : hiding(y)) {
      if (body.x0() > from) {
        marks.add(Mark.Stroke.line("rail", pen, from, y, Math.min(body.x0(), x + w), y));
      }
      from = Math.max(from, body.x1());
    }
    if (from < x + w) {
      marks.add(Mark.Stroke.line("rail", pen, from, y, x + w, y));
    }
  }

  private List<Box> hiding(double y) {
    return bodies.stream()
        .filter(b -> b.y0() < y && y < b.y1())
        .sorted(Comparator.comparingDouble(Box::x0))
        .toList();
  }

  private void front(double x, double y) {
    String g = "view:front";
    double w = factor * front.width();
    double h = factor * front.height();
    marks.add(Mark.Stroke.box(g, Pen.OUTLINE, new Box(x, y, x + w, y + h)));
    text(g, "Front, from outside", x, y + h + 3);
    for (Panel.Opening o : front.openings().values()) {
      double cx = x + factor * o.across();
      double cy = y + factor * o.up();
      double r = factor * o.diameter() / 2;
      marks.add(new Mark.Arc(g, Pen.OUTLINE, cx, cy, r, 0, 2 * Math.PI));
      marks.add(Mark.Stroke.line(g, Pen.CENTRE, cx - r - 2, cy, cx + r + 2, cy));
      marks.add(Mark.Stroke.line(g, Pen.CENTRE, cx, cy - r - 2, cx, cy + r + 2));
    }
    for (Panel.Device d : panel.devices()) {
      if (d.seat() == Panel.Seat.FRONT) {
        Box body = body(d, x, y, panel.plate().across(), panel.plate().up());
        marks.add(Mark.Stroke.box(g, Pen.HIDDEN, body));
        double at = (body.x0() + body.x1() - Lettering.width(d.designation(), TEXT)) / 2;
        text(g, d.designation(), at, body.y0() - TEXT - 2);
      }
    }
    across(x, x + w, y - FIRST, y, Values.number(front.width()));
  }

  private Box body(Panel.Device d, double x, double y, double across, double up) {
    double x0 = x + factor * (d.left() + across);
    double y0 = y + factor * (d.low() + up);
    return new Box(x0, y0, x0 + factor * d.width(), y0 + factor * d.height());
  }

  /** Writes into the middle of a body, upright if it is too narrow. */
  private void inside(String g, String text, Box body) {
    double w = Lettering.width(text, TEXT);
    double cx = (body.x0() + body.x1()) / 2;
    double cy = (body.y0() + body.y1()) / 2;
    boolean lying = w + 1 <= body.x1() - body.x0();
    marks.add(
        lying
            ? new Mark.Text(g, text, cx - w / 2, cy - TEXT / 2, TEXT, Mark.Reading.FROM_BELOW)
            : new Mark.Text(g, text, cx + TEXT / 2, cy - w / 2, TEXT, Mark.Reading.FROM_RIGHT));
  }

  private void across(double x0, double x1, double y, double from, String text) {
    String g = "dimension";
    marks.add(Mark.Stroke.line(g, Pen.NARROW, x0, from - 1, x0, y - 1.5));
    marks.add(Mark.Stroke.line(g, Pen.NARROW, x1, from - 1, x1, y - 1.5));
    marks.add(Mark.Stroke.line(g + ":line", Pen.NARROW, x0, y, x1, y));
    marks.add(Mark.Fill.arrow(g, x0, y, Math.PI));
    marks.add(Mark.Fill.arrow(g, x1, y, 0));
    text(g, text, (x0 + x1 - Lettering.width(text, TEXT)) / 2, y + 1);
  }

  private void upright(double y0, double y1, double x, double from, String text) {
    String g = "dimension";
    marks.add(Mark.Stroke.line(g, Pen.NARROW, from - 1, y1, x - 1.5, y1));
    marks.add(Mark.Stroke.line(g, Pen.NARROW, from - 1, y0, x - 1.5, y0));
    marks.add(Mark.Stroke.line(g + ":line", Pen.NARROW, x, y0, x, y1));
    marks.add(Mark.Fill.arrow(g, x, y0, -Math.PI / 2));
    marks.add(Mark.Fill.arrow(g, x, y1, Math.PI / 2));
    double at = y1 - 5 - Lettering.width(text, TEXT);
    marks.add(new Mark.Text(g, text, x - 1, Math.max(y0 + 5, at), TEXT, Mark.Reading.FROM_RIGHT));
  }

  private void notes(Box s) {
    List<String> lines = new ArrayList<>();
    double room = s.x1() - s.x0() - TitleBlock.WIDTH - 2 * MARGIN;
    lines.addAll(wrapped(ElectricsReckoners.DEFERENCE, room));
    lines.addAll(
        wrapped(
            "Places count from the lower left corner of the plate to that of the device; rails are"
                + " 35 wide, and dimensions go to their middle.",
            room));
    double y = s.y0() + NOTES - 8;
    for (String line : lines) {
      text("note", line, s.x0() + MARGIN, y);
      y -= 6;
    }
  }

  private static List<String> wrapped(String text, double room) {
    return TitleBlock.wrapped(text, TEXT, room, 6, "note");
  }

  private void text(String g, String text, double x, double y) {
    marks.add(new Mark.Text(g, text, x, y, TEXT, Mark.Reading.FROM_BELOW));
  }
}
