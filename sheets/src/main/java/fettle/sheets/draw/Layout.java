package fettle.sheets.draw;

import fettle.mechanics.base.Source;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.page.Format;
import fettle.sheets.page.Frame;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Scale;
import fettle.sheets.page.Sheet;
import fettle.sheets.page.TitleBlock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Chooses sheet and scale and lays views, tables and notes on the sheet. */
final class Layout {

  static final Source ORDER =
      Source.practice(
          "A4 full size first, then A3, then half size; larger sheets last; enlarged when small");

  private static final double CLEAR = 7;
  private static final double APART = 20;
  private static final double HALF = 0.5;
  private static final double FURTHEST = 60;
  private static final double STEP = 4;

  private final Heads heads;
  private final List<String> notes;

  Layout(Heads heads, List<String> notes) {
    this.heads = heads;
    this.notes = notes;
  }

  /** A sheet with what is wrong with its dimensions. */
  record Laid(Sheet sheet, List<String> faults) {}

  /**
   * Returns the first sheet on which everything finds room.
   *
   * @param extent largest extent of the part [mm]
   * @param draw draws the part at a scale
   * @param fields fields of the title block for a scale
   */
  Laid best(double extent, Function<Scale, Draft> draw, Function<Scale, TitleBlock.Fields> fields) {
    List<String> why = new ArrayList<>();
    Map<Scale, Draft> drafts = new HashMap<>();
    for (Reach reach : Reach.values()) {
      for (Scale scale : scales(extent)) {
        if (scale.factor() < reach.least) {
          continue;
        }
        Draft draft = drafts.computeIfAbsent(scale, draw);
        if (!draft.faults().isEmpty()) {
          why.addAll(draft.faults());
          continue;
        }
        for (Format format : reach.formats) {
          List<Mark> body = arrange(format, draft);
          if (body != null) {
            return laid(format, scale, body, draft, fields.apply(scale));
          }
        }
      }
    }
    throw new IllegalArgumentException(
        "the part finds no room on sheets up to A1 at any scale of ISO 5455"
            + (why.isEmpty() ? "" : ": " + why.get(0))
            + "; divide it, or leave out features that stand too close to be drawn");
  }

  /** Sheets that a printer at home takes, down to half size; then the larger ones. */
  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of enums
  private enum Reach {
    PRINTED(HALF, Format.A4, Format.A3),
    LARGE(HALF, Format.A2),
    LARGEST(HALF, Format.A1),
    ANY(0, Format.A3, Format.A2, Format.A1);

    private final double least;
    private final List<Format> formats;

    Reach(double least, Format... formats) {
      this.least = least;
      this.formats = List.of(formats);
    }
  }

  private Laid laid(Format format, Scale scale, List<Mark> body, Draft draft, TitleBlock.Fields f) {
    List<Mark> all = new ArrayList<>(Frame.of(format));
    all.addAll(TitleBlock.of(format, heads, f));
    all.addAll(body);
    all.addAll(noteMarks(format));
    Sheet sheet = new Sheet(format, f.number(), f.title(), scale, all);
    return new Laid(sheet, draft.scheme().faults());
  }

  private static List<Scale> scales(double extent) {
    double most = extent < 12 ? 5 : extent < 45 ? 2 : 1;
    List<Scale> out = new ArrayList<>();
    for (Scale s : Scale.ALL) {
      if (s.factor() <= most) {
        out.add(s);
      }
    }
    return out;
  }

  private double notesHeight() {
    return notes.isEmpty() ? 0 : notes.size() * 5.6 + 6;
  }

  private List<Mark> noteMarks(Format format) {
    List<Mark> out = new ArrayList<>();
    Box s = format.space();
    double y = format == Format.A4 ? TitleBlock.place(format).y1() + 4 : s.y0() + 9;
    double x = s.x0() + CLEAR;
    for (int i = 0; i < notes.size(); i++) {
      out.add(
          new Mark.Text(
              "notes",
              notes.get(i),
              x,
              y + (notes.size() - 1 - i) * 5.6,
              3.5,
              Mark.Reading.FROM_BELOW));
    }
    return out;
  }

  private @Nullable List<Mark> arrange(Format format, Draft draft) {
    Box s = format.space();
    double room = s.x1() - TitleBlock.WIDTH - s.x0() - CLEAR - 3;
    double widest = notes.stream().mapToDouble(n -> Lettering.width(n, 3.5)).max().orElse(0);
    if (format == Format.A4 ? widest > s.width() - 2 * CLEAR : widest > room) {
      return null;
    }
    double bottom =
        format == Format.A4
            ? TitleBlock.place(format).y1() + notesHeight()
            : Math.max(TitleBlock.place(format).y1(), s.y0() + notesHeight());
    Box area = new Box(s.x0() + CLEAR, bottom + 4, s.x1() - CLEAR, s.y1() - CLEAR);
    for (Arrangement a : Arrangement.values()) {
      List<Mark> marks = together(draft, a, heads.angle());
      Box b = Box.NOTHING;
      for (Mark m : marks) {
        b = b.with(Inked.box(m));
      }
      if (b.width() <= area.width() && b.height() <= area.height()) {
        double dx = (area.x0() + area.x1()) / 2 - (b.x0() + b.x1()) / 2;
        double dy = (area.y0() + area.y1()) / 2 - (b.y0() + b.y1()) / 2;
        dx = Math.round(dx * 2) / 2.0;
        dy = Math.round(dy * 2) / 2.0;
        if (area.grown(0.5).holds(b.moved(dx, dy))) {
          double ddx = dx;
          double ddy = dy;
          return marks.stream().map(m -> m.moved(ddx, ddy)).toList();
        }
      }
    }
    return null;
  }

  /** Where tables and sections go. */
  private enum Arrangement {
    BESIDE,
    UNDER
  }

  private static List<Mark> together(Draft draft, Arrangement a, Heads.Projection angle) {
    Draft.Placed first = draft.placed().get(0);
    Box main = first.plan().bounds();
    List<Mark> marks = new ArrayList<>(first.plan().done());
    Box right = main;
    Box left = main;
    Box below = main;
    Box above = main;
    Box all = main;
    double row = main.x0();
    for (Draft.Placed p : draft.placed().subList(1, draft.placed().size())) {
      Box b = p.plan().bounds();
      double dx = 0;
      double dy = 0;
      Draft.Where where = angle == Heads.Projection.THIRD ? turned(p.where()) : p.where();
      if (a == Arrangement.UNDER && p.plan().name.startsWith("section")) {
        dx = row - b.x0();
        dy = below.y0() - APART / 2 - b.y1();
        row += b.width() + APART;
        double sx = dx;
        double sy = dy;
        p.plan().done().forEach(m -> marks.add(m.moved(sx, sy)));
        all = all.with(b.moved(dx, dy));
        continue;
      }
      switch (where) {
        case RIGHT, FAR_RIGHT, MAIN -> {
          dx = right.x1() + APART - b.x0();
          right = right.with(b.moved(dx, 0));
        }
        case LEFT -> {
          dx = left.x0() - APART - b.x1();
          left = left.with(b.moved(dx, 0));
        }
        case BELOW -> {
          dy = free(p, marks, below.y0() - APART + 8 - b.y1(), -1);
          below = below.with(b.moved(0, dy));
        }
        case ABOVE -> {
          dy = free(p, marks, above.y1() + APART - 8 - b.y0(), 1);
          above = above.with(b.moved(0, dy));
        }
      }
      double mx = dx;
      double my = dy;
      p.plan().done().forEach(m -> marks.add(m.moved(mx, my)));
      all = all.with(b.moved(dx, dy));
    }
    double x = a == Arrangement.BESIDE ? all.x1() + 10 : all.x0();
    double y = a == Arrangement.BESIDE ? all.y1() : all.y0() - 10;
    for (Table t : draft.tables()) {
      double mx = x;
      double my = y;
      t.marks().forEach(m -> marks.add(m.moved(mx, my)));
      if (a == Arrangement.BESIDE) {
        y -= t.bounds().height() + 8;
      } else {
        x += t.bounds().width() + 10;
      }
    }
    return marks;
  }

  /** Moves a view further up or down until no text of it or of the others is crossed. */
  private static double free(Draft.Placed view, List<Mark> others, double dy, int way) {
    for (double more = 0; more <= FURTHEST; more += STEP) {
      double at = dy + way * more;
      List<Mark> own = view.plan().done().stream().map(m -> m.moved(0, at)).toList();
      if (!crossed(own, others) && !crossed(others, own)) {
        return at;
      }
    }
    return dy;
  }

  private static boolean crossed(List<Mark> texts, List<Mark> others) {
    return texts.stream()
        .filter(m -> m instanceof Mark.Text)
        .map(m -> ((Mark.Text) m).box().grown(1))
        .anyMatch(b -> others.stream().anyMatch(o -> Inked.meets(o, b)));
  }

  private static Draft.Where turned(Draft.Where w) {
    return switch (w) {
      case RIGHT -> Draft.Where.LEFT;
      case LEFT -> Draft.Where.RIGHT;
      case BELOW -> Draft.Where.ABOVE;
      case ABOVE -> Draft.Where.BELOW;
      default -> w;
    };
  }
}
