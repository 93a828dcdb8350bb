package fettle.desk.page;

import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.machine.state.State;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Finding;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A forecast ready to be shown.
 *
 * @param lathe name of the lathe
 * @param before the first state, in words
 * @param after the second state, in words
 * @param alone true if only one state is shown
 * @param changes the changes that the second state has and the first has not
 * @param sections figures by topic
 * @param news new findings, worst first
 * @param gone findings that are settled
 * @param staying findings that were there before
 * @param cautions cautions of the changes
 * @param hidden how many figures are the same and not shown
 */
public record ForecastPage(
    String lathe,
    String before,
    String after,
    boolean alone,
    List<ChangeLine> changes,
    List<Section> sections,
    List<FindingLine> news,
    List<FindingLine> gone,
    List<FindingLine> staying,
    List<String> cautions,
    int hidden) {

  /** A change in one line. */
  public record ChangeLine(String key, String title, String stage, String hours, String cost) {}

  /** Figures of one topic. */
  public record Section(String title, List<Line> lines) {}

  /** One figure: before, after, difference, verdict, and what opens when it is asked for. */
  public record Line(
      String id,
      String subject,
      String name,
      String before,
      String after,
      String difference,
      String verdict,
      List<String> workings,
      String source) {}

  /** A finding: its rank as a word, its sentence, its limit and the limit's source. */
  public record FindingLine(String rank, String sentence, String limit, String source) {
    /** Returns the line of a finding, its lengths in the units preferred. */
    public static FindingLine of(Finding f, Measure measure) {
      return new FindingLine(
          f.rank().word(), measure.told(f.sentence()), f.limit(), f.source().text());
    }
  }

  /** What is shown. */
  public enum Extent {
    /** Only figures that moved. */
    MOVED,
    /** Every figure. */
    ALL
  }

  /** Makes the page of a forecast. */
  public static ForecastPage of(Book book, Forecast forecast, Extent extent, Measure measure) {
    boolean alone = forecast.before().changes().equals(forecast.after().changes());
    boolean all = extent == Extent.ALL || alone;
    Map<String, List<Line>> byTopic = new LinkedHashMap<>();
    int hidden = 0;
    for (Row row : forecast.rows()) {
      if (all || row.moved()) {
        byTopic
            .computeIfAbsent(row.figure().topic(), t -> new ArrayList<>())
            .add(line(row, alone, measure));
      } else {
        hidden++;
      }
    }
    List<Change> added =
        forecast.after().changes().stream()
            .filter(k -> !forecast.before().changes().contains(k))
            .map(k -> book.changes().get(k))
            .filter(c -> c != null)
            .toList();
    return new ForecastPage(
        forecast.after().machine().map(m -> m.name()).orElse(""),
        words(forecast.before()),
        words(forecast.after()),
        alone,
        added.stream().map(c -> change(c, measure)).toList(),
        byTopic.entrySet().stream().map(e -> new Section(e.getKey(), e.getValue())).toList(),
        findings(forecast.news(), measure),
        findings(forecast.gone(), measure),
        findings(forecast.staying(), measure),
        added.stream().flatMap(c -> c.values().texts("caution").stream()).distinct().toList(),
        hidden);
  }

  private static String words(State state) {
    String list = state.changes().isEmpty() ? "no changes" : String.join(", ", state.changes());
    return state.name().isEmpty() ? list : state.name() + " (" + list + ")";
  }

  private static ChangeLine change(Change c, Measure measure) {
    return new ChangeLine(
        c.key(),
        c.title(),
        c.stage().word(),
        amount(c, "hours", measure),
        amount(c, "cost", measure));
  }

  private static String amount(Change c, String key, Measure measure) {
    return c.values()
        .quantity(key)
        .map(q -> Amount.of(q.value(), q.doubt(), q.unit(), measure).text())
        .orElse("");
  }

  private static List<FindingLine> findings(List<Finding> findings, Measure measure) {
    return findings.stream().map(f -> FindingLine.of(f, measure)).toList();
  }

  private static Line line(Row row, boolean alone, Measure measure) {
    Figure figure = row.figure();
    boolean numbers =
        row.before().flatMap(Figure::working).isPresent()
            && row.after().flatMap(Figure::working).isPresent();
    String difference =
        numbers && row.moved() && figure.working().isPresent()
            ? Amount.of(row.difference(), row.doubt(), figure.working().get().unit(), measure)
                .signed()
                .text()
            : "";
    List<String> workings = new ArrayList<>();
    if (!alone) {
      row.before().flatMap(Figure::working).ifPresent(w -> workings.add("before: " + working(w)));
    }
    row.after()
        .flatMap(Figure::working)
        .ifPresent(w -> workings.add(alone ? working(w) : "after: " + working(w)));
    return new Line(
        figure.id(),
        figure.subject(),
        figure.name(),
        row.before().map(f -> value(f, measure)).orElse("–"),
        row.after().map(f -> value(f, measure)).orElse("–"),
        difference,
        alone ? "" : row.verdict().words(),
        workings,
        figure.source().text());
  }

  /** Returns the value of a figure, its exact value behind it. */
  public static String value(Figure figure, Measure measure) {
    Optional<Working> working = figure.working();
    if (working.isEmpty()) {
      return figure.words();
    }
    Working w = working.get();
    String number = Amount.of(w.value(), w.doubt(), w.unit(), measure).text();
    return figure.words().isEmpty() ? number : number + " (" + figure.words() + ")";
  }

  /** Returns a working with the doubts of its terms. */
  public static String working(Working w) {
    List<String> doubts = new ArrayList<>();
    for (Term term : w.terms()) {
      if (term.doubt() > 0) {
        doubts.add(
            term.symbol()
                + " ± "
                + Amount.of(
                        term.doubt(),
                        0,
                        term.unit().reciprocal() ? fettle.mechanics.base.Unit.MM : term.unit(),
                        Measure.METRIC)
                    .text());
      }
    }
    return w.text() + (doubts.isEmpty() ? "" : "  [" + String.join(", ", doubts) + "]");
  }
}
