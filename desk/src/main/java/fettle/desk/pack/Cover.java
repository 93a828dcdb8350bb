package fettle.desk.pack;

import fettle.desk.page.Amount;
import fettle.desk.picture.Elevations;
import fettle.machine.state.Change;
import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.page.Format;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The first page: what the pack is of, the lathe with what changes, and the figures that tell most.
 */
final class Cover {

  private static final double LEFT = 25;
  private static final double RIGHT = 195;
  private static final double CELL = 13;
  private static final int TELLING = 4;

  private final PackSource source;
  private final Issue issue;
  private final List<Mark> marks = new ArrayList<>();

  private Cover(PackSource source, Issue issue) {
    this.source = source;
    this.issue = issue;
  }

  /**
   * Returns the marks of the cover.
   *
   * @param source what the pack is made from
   * @param issue its issue
   * @param drawings how many drawings it has
   * @param pages how many pages it has
   */
  static List<Mark> marks(PackSource source, Issue issue, int drawings, int pages) {
    Cover cover = new Cover(source, issue);
    cover.marks.add(Mark.Stroke.box("cover", Pen.FRAME, Format.A4.space()));
    double y = cover.title();
    double foot = cover.cells(drawings, pages);
    foot = cover.telling(foot);
    cover.picture(new Box(LEFT, foot + 10, RIGHT, y - 4), foot + 4);
    return cover.marks;
  }

  private void text(double x, double y, double h, String words) {
    if (!words.isEmpty()) {
      marks.add(new Mark.Text("cover", words, x, y, h, Mark.Reading.FROM_BELOW));
    }
  }

  private double title() {
    Change change = source.change();
    text(LEFT, 276, 3.5, Lines.of(source.after().name(), 3.5, 120).get(0));
    String kind = "PLAN PACK";
    text(RIGHT - Lettering.width(kind, 3.5), 276, 3.5, kind);
    double h = Lines.of(change.title(), 10, RIGHT - LEFT).size() <= 2 ? 10 : 7;
    double y = 268;
    for (String line : first(Lines.of(change.title(), h, RIGHT - LEFT), 3)) {
      y -= h;
      text(LEFT, y, h, line);
      y -= h * 0.5;
    }
    y -= 4;
    for (String key : List.of("reason", "benefit")) {
      String words = change.values().text(key).orElse("");
      double size = key.equals("benefit") ? 3.5 : 2.5;
      if (!words.isEmpty()) {
        for (String line : first(Lines.of(words, size, 160), 3)) {
          text(LEFT, y, size, line);
          y -= size * 1.85;
        }
        y -= 2;
      }
    }
    return y;
  }

  private static List<String> first(List<String> lines, int most) {
    return lines.subList(0, Math.min(most, lines.size()));
  }

  /** Boxed cells as in a title block; returns their upper edge. */
  private double cells(int drawings, int pages) {
    double y = Format.A4.space().y0();
    double x = Format.A4.space().x0();
    cell(x, y, 60, "Legal owner", source.heads().owner());
    cell(x + 60, y, 60, "Change", source.change().key());
    cell(x + 120, y, 20, "Revision", issue.index());
    cell(x + 140, y, 40, "Date of issue", issue.date());
    y += CELL;
    cell(x, y, 36, "Stage", source.change().stage().word());
    cell(x + 36, y, 36, "Own hours", source.shows(Held.HOURS) ? amount("hours") : "–");
    cell(x + 72, y, 36, "Lathe stripped", amount("down"));
    cell(x + 108, y, 36, "Cost", source.shows(Held.PRICES) ? amount("cost") : "–");
    cell(x + 144, y, 18, "Drawings", String.valueOf(drawings));
    cell(x + 162, y, 18, "Pages", String.valueOf(pages));
    return y + CELL;
  }

  private String amount(String key) {
    return source
        .change()
        .values()
        .quantity(key)
        .map(q -> Amount.of(q.value(), q.doubt(), q.unit(), source.measure()).text())
        .orElse("–");
  }

  private void cell(double x, double y, double w, String label, String value) {
    marks.add(Mark.Stroke.box("cover", Pen.BLOCK, new Box(x, y, x + w, y + CELL)));
    text(x + 2, y + CELL - 4, 2.5, label);
    double size = Lettering.width(Lines.plain(value), 3.5) <= w - 4 ? 3.5 : 2.5;
    text(x + 2, y + 2.6, size, Lines.of(value, size, w - 4).get(0));
  }

  private double telling(double foot) {
    List<Block> blocks = new ArrayList<>();
    List<Block.Ticks> telling = EffectChapter.telling(source, 1);
    blocks.addAll(telling.subList(0, Math.min(TELLING, telling.size())));
    blocks.add(new Block.Caution(CautionChapter.YIELDS));
    List<Mark> set = Setter.at(Setter.TOP, blocks);
    double low = set.stream().mapToDouble(Cover::low).min().orElse(Setter.TOP);
    double down = low - (foot + 4);
    set.forEach(m -> marks.add(m.moved(0, -down)));
    return Setter.TOP - down;
  }

  private static double low(Mark m) {
    if (m instanceof Mark.Stroke s) {
      return s.points().stream().mapToDouble(p -> p.y()).min().orElse(0);
    }
    return m instanceof Mark.Text t ? t.y() : Setter.TOP;
  }

  private void picture(Box room, double caption) {
    Set<String> changed = Elevations.differing(source.before(), source.after());
    marks.addAll(MachinePicture.marks(source.after(), changed, room));
    String words =
        changed.isEmpty()
            ? "The lathe with this change. No member changes its outline."
            : "The lathe with this change. Drawn wide: " + String.join(", ", changed) + ".";
    List<String> lines = first(Lines.of(words, 2.5, RIGHT - LEFT), 2);
    for (int i = 0; i < lines.size(); i++) {
      text(LEFT, caption + (lines.size() - 1 - i) * 4.6, 2.5, lines.get(i));
    }
  }
}
