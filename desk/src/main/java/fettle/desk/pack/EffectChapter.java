package fettle.desk.pack;

import fettle.desk.page.Amount;
import fettle.desk.page.Bar;
import fettle.desk.page.ForecastPage;
import fettle.desk.page.Measure;
import fettle.machine.forecast.Row;
import fettle.machine.forecast.Verdict;
import fettle.machine.state.State;
import fettle.machine.topics.Figure;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a change does: figures before and after with their uncertainty, and what the forecast says.
 */
final class EffectChapter {

  private static final int EACH = 2;
  private static final double LEAST = 0.01;

  private EffectChapter() {}

  static Chapter of(PackSource source) {
    ForecastPage page =
        ForecastPage.of(
            source.book(), source.forecast(), ForecastPage.Extent.MOVED, source.measure());
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Prose(
            "Foreseen from the description of the lathe. Before: "
                + state(source, source.forecast().before())
                + ". After: the same with this change. The number behind the sign ± is half the width in which the value lies with"
                + " about 95 % confidence."));
    List<Block.Ticks> telling = telling(source, EACH);
    if (!telling.isEmpty()) {
      blocks.add(new Block.Heading("What moves most, measured by its doubt"));
      blocks.addAll(telling);
      blocks.add(
          new Block.Prose(
              "Hollow tick: before. Filled tick: after. A tick is as wide as its doubt."));
    }
    if (page.sections().isEmpty()) {
      blocks.add(new Block.Prose("No figure of the lathe moves."));
    } else {
      blocks.add(new Block.Heading("Every figure that moves"));
      blocks.add(figures(page));
    }
    if (page.hidden() > 0) {
      blocks.add(new Block.Prose(page.hidden() + " other figures stay as they are."));
    }
    findings(blocks, "What is new to watch", page.news());
    findings(blocks, "What is settled by it", page.gone());
    return Chapter.of("What it does", blocks);
  }

  private static String state(PackSource source, State state) {
    List<String> titles =
        state.changes().stream()
            .map(k -> source.book().changes().get(k))
            .filter(c -> c != null)
            .map(c -> c.title())
            .toList();
    return titles.isEmpty()
        ? "the lathe as bought"
        : "the lathe with these on it: " + String.join("; ", titles);
  }

  private static Block.Grid figures(ForecastPage page) {
    List<List<String>> rows = new ArrayList<>();
    for (ForecastPage.Section section : page.sections()) {
      String subject = "";
      for (ForecastPage.Line line : section.lines()) {
        if (!line.subject().equals(subject)) {
          subject = line.subject();
          rows.add(List.of(title(section.title()) + ": " + subject));
        }
        rows.add(
            List.of(line.name(), line.before(), line.after(), line.difference(), line.verdict()));
      }
    }
    return new Block.Grid(
        List.of(
            Block.Column.left("figure", 56),
            Block.Column.right("before", 34),
            Block.Column.right("after", 34),
            Block.Column.right("difference", 34),
            Block.Column.left("", 22)),
        rows);
  }

  private static String title(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  private static void findings(
      List<Block> blocks, String heading, List<ForecastPage.FindingLine> findings) {
    if (findings.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(heading));
    for (ForecastPage.FindingLine f : findings) {
      String words =
          f.rank().toUpperCase(Locale.ROOT)
              + ": "
              + f.sentence()
              + (f.limit().isEmpty() ? "" : " Limit: " + f.limit() + " (" + f.source() + ").");
      blocks.add(
          f.rank().equals("note") || heading.contains("settled")
              ? new Block.Point(words)
              : new Block.Caution(words));
    }
  }

  /** Returns the figures of each topic that are surest to be better or worse. */
  static List<Block.Ticks> telling(PackSource source, int each) {
    Map<String, List<Row>> byTopic = new LinkedHashMap<>();
    source.forecast().rows().stream()
        .filter(r -> r.verdict() == Verdict.BETTER || r.verdict() == Verdict.WORSE)
        .filter(r -> sureness(r) > 0)
        .sorted(Comparator.comparingDouble((Row r) -> -sureness(r)))
        .forEach(r -> byTopic.computeIfAbsent(r.figure().topic(), t -> new ArrayList<>()).add(r));
    return byTopic.values().stream()
        .flatMap(rows -> rows.stream().limit(each))
        .map(r -> ticks(r, source.measure()))
        .toList();
  }

  private static double sureness(Row row) {
    double doubt = row.doubt() > 0 ? row.doubt() : 1e-3 * Math.abs(row.difference());
    double size = Math.max(value(row.before().orElseThrow()), value(row.after().orElseThrow()));
    double share = size > 0 ? Math.abs(row.difference()) / size : 0;
    return share < LEAST ? 0 : share * Math.min(20, Math.abs(row.difference()) / doubt);
  }

  private static double value(Figure figure) {
    return Math.abs(figure.working().orElseThrow().value());
  }

  private static Block.Ticks ticks(Row row, Measure measure) {
    Figure old = row.before().orElseThrow();
    Figure now = row.after().orElseThrow();
    Working a = old.working().orElseThrow();
    Working b = now.working().orElseThrow();
    return new Block.Ticks(
        now.subject() + ": " + now.name(),
        Amount.of(a.value(), a.doubt(), a.unit(), measure).text(),
        Amount.of(b.value(), b.doubt(), b.unit(), measure).text(),
        row.verdict().words(),
        Bar.of(a, b, measure));
  }
}
