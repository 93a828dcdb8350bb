package fettle.desk.cli;

import fettle.desk.page.ForecastPage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A forecast as text: a table on a wide terminal, blocks on a narrow one. */
final class TextForecast {

  private static final int NARROW = 78;
  private static final int WIDEST_CELL = 34;
  private static final int LEAST_NAME = 12;
  private static final int BESIDE = 28;
  private final Terminal terminal;
  private final boolean workings;

  private TextForecast(Terminal terminal, boolean workings) {
    this.terminal = terminal;
    this.workings = workings;
  }

  /** What stands under each figure. */
  enum Detail {
    BRIEF,
    WORKINGS
  }

  static void print(ForecastPage page, Detail detail, Terminal terminal) {
    new TextForecast(terminal, detail == Detail.WORKINGS).print(page);
  }

  private void print(ForecastPage page) {
    line(terminal.ink(Terminal.Ink.GRAPHITE, page.lathe()));
    if (page.alone()) {
      wrapped("state   ", page.after());
    } else {
      wrapped("before  ", page.before());
      wrapped("after   ", page.after());
    }
    page.changes().forEach(this::change);
    if (page.sections().isEmpty()) {
      line("");
      line("No figure moves.");
    }
    page.sections().forEach(s -> section(s, page.alone()));
    if (page.hidden() > 0) {
      line("");
      line(
          terminal.ink(
              Terminal.Ink.FAINT, page.hidden() + " figures stay as they are (--all shows them)."));
    }
    findings(page.alone() ? "Findings" : "New findings", page.news());
    findings("Settled by the change", page.gone());
    findings(page.alone() ? "Findings" : "Findings that stay", page.staying());
    if (!page.cautions().isEmpty()) {
      line("");
      line(terminal.ink(Terminal.Ink.GRAPHITE, "Take care"));
      page.cautions().forEach(c -> wrapped("  ! ", c));
    }
    line("");
    wrapped("", "Figures are for planning; they are no promise of safety. Local codes hold.");
  }

  private void change(ForecastPage.ChangeLine change) {
    List<String> parts = new ArrayList<>(List.of(change.title(), change.stage()));
    parts.addAll(
        List.of(change.hours(), change.cost()).stream().filter(p -> !p.isEmpty()).toList());
    wrapped(
        "change  ",
        terminal.ink(Terminal.Ink.BLUE, change.key()) + ": " + String.join(", ", parts));
  }

  private void section(ForecastPage.Section section, boolean alone) {
    line("");
    line(terminal.ink(Terminal.Ink.GRAPHITE, capital(section.title())));
    boolean narrow = terminal.width() < NARROW;
    int[] widths = widths(section.lines(), alone);
    int room = terminal.width() - widths[1] - widths[2] - widths[3] - BESIDE;
    boolean wide = !narrow && room >= Math.min(widths[0], LEAST_NAME);
    widths[0] = Math.min(widths[0], room);
    String subject = "";
    for (ForecastPage.Line l : section.lines()) {
      if (!l.subject().equals(subject)) {
        subject = l.subject();
        line("  " + subject);
      }
      if (alone) {
        wrapped("    " + pad(l.name(), wide ? widths[0] : 0) + "  ", l.after());
      } else if (wide && fits(l)) {
        row(l, widths);
      } else {
        block(l);
      }
      if (workings) {
        l.workings().forEach(w -> wrapped("        ", terminal.ink(Terminal.Ink.FAINT, w)));
        wrapped("        ", terminal.ink(Terminal.Ink.FAINT, "source: " + l.source()));
      }
    }
  }

  private void row(ForecastPage.Line l, int[] widths) {
    boolean fitting = l.name().length() <= widths[0];
    if (!fitting) {
      line("    " + l.name());
    }
    line(
        "    "
            + pad(fitting ? l.name() : "", widths[0])
            + "  "
            + pad(value(l.before()), widths[1])
            + "  "
            + terminal.ink(Terminal.Ink.BLUE, pad(value(l.after()), widths[2]))
            + "  "
            + pad(l.difference(), widths[3])
            + "  "
            + verdict(l.verdict()));
    note(note(l.before()), note(l.after()));
  }

  /** Says what stands behind the values in words, once if it is the same before and after. */
  private void note(String before, String after) {
    if (before.equals(after) || before.isEmpty()) {
      if (!after.isEmpty()) {
        wrapped("        ", terminal.ink(Terminal.Ink.FAINT, after));
      }
      return;
    }
    String rest = after.isEmpty() ? "" : "; after: " + after;
    wrapped("        ", terminal.ink(Terminal.Ink.FAINT, "before: " + before + rest));
  }

  /** Returns a cell without the words in brackets behind its number. */
  private static String value(String cell) {
    int at = cell.indexOf(" (");
    return at > 0 && cell.endsWith(")") ? cell.substring(0, at) : cell;
  }

  private static String note(String cell) {
    int at = cell.indexOf(" (");
    return at > 0 && cell.endsWith(")") ? cell.substring(at + 2, cell.length() - 1) : "";
  }

  private void block(ForecastPage.Line l) {
    wrapped("    ", l.name() + "  " + verdict(l.verdict()));
    wrapped("      before  ", l.before());
    wrapped("      after   ", l.after());
    if (!l.difference().isEmpty()) {
      wrapped("      moved   ", l.difference());
    }
  }

  private String verdict(String verdict) {
    return switch (verdict) {
      case "better" -> "+ better";
      case "worse" -> terminal.ink(Terminal.Ink.BRASS, "- worse");
      case "same" -> terminal.ink(Terminal.Ink.FAINT, "= same");
      case "new" -> "* new";
      case "gone" -> "x gone";
      default -> "~ " + verdict;
    };
  }

  private void findings(String title, List<ForecastPage.FindingLine> findings) {
    if (findings.isEmpty()) {
      return;
    }
    line("");
    line(terminal.ink(Terminal.Ink.GRAPHITE, title));
    for (ForecastPage.FindingLine f : findings) {
      String mark = f.rank().toUpperCase(Locale.ROOT);
      Terminal.Ink ink =
          f.rank().equals("stop")
              ? Terminal.Ink.RED
              : f.rank().equals("caution") ? Terminal.Ink.BRASS : Terminal.Ink.FAINT;
      wrapped("  " + terminal.ink(ink, pad(mark, 7)) + "  ", f.sentence());
      if (!f.limit().isEmpty()) {
        wrapped(
            "           ",
            terminal.ink(Terminal.Ink.FAINT, "limit: " + f.limit() + "; " + f.source()));
      }
    }
  }

  private static int[] widths(List<ForecastPage.Line> lines, boolean alone) {
    int[] widths = new int[4];
    for (ForecastPage.Line l : lines) {
      widths[0] = Math.max(widths[0], l.name().length());
      if (!alone && fits(l)) {
        widths[1] = Math.max(widths[1], value(l.before()).length());
        widths[2] = Math.max(widths[2], value(l.after()).length());
        widths[3] = Math.max(widths[3], l.difference().length());
      }
    }
    return widths;
  }

  /** Tells whether a line's values are short enough for a cell of a table. */
  private static boolean fits(ForecastPage.Line l) {
    return value(l.before()).length() <= WIDEST_CELL && value(l.after()).length() <= WIDEST_CELL;
  }

  /** Writes a text behind a heading, broken at spaces to the width of the terminal. */
  private void wrapped(String head, String text) {
    int indent = seen(head);
    StringBuilder current = new StringBuilder(head);
    int length = indent;
    boolean fresh = true;
    for (String word : text.split(" ")) {
      int size = seen(word);
      if (!fresh && length + 1 + size > terminal.width()) {
        line(current.toString());
        current = new StringBuilder(" ".repeat(indent));
        length = indent;
        fresh = true;
      }
      if (!fresh) {
        current.append(' ');
        length++;
      }
      current.append(word);
      length += size;
      fresh = false;
    }
    line(current.toString());
  }

  private static int seen(String text) {
    return text.replaceAll("\u001b\\[[0-9;]*m", "").length();
  }

  private static String pad(String text, int width) {
    return text.length() >= width ? text : text + " ".repeat(width - text.length());
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private void line(String text) {
    terminal.out().println(text.stripTrailing());
  }
}
