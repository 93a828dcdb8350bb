package fettle.machine.forecast;

import fettle.machine.state.Book;
import fettle.machine.state.Conflict;
import fettle.machine.state.State;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Finding;
import fettle.machine.topics.RigidityStudy;
import fettle.machine.topics.Study;
import fettle.machine.topics.Topics;
import fettle.mechanics.base.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * Figures and findings of one state beside another.
 *
 * @param before the first state
 * @param after the second state
 * @param rows every figure of either, in the order of the topics
 * @param news findings the second state has and the first has not, worst first
 * @param gone findings the first state has and the second has not
 * @param staying findings both have, worst first
 */
public record Forecast(
    State before,
    State after,
    List<Row> rows,
    List<Finding> news,
    List<Finding> gone,
    List<Finding> staying) {

  private static final Source ORDER =
      Source.derived(
          "the changes are applied in the book's order; the later one has the last word");

  /** Keeps its own copies. */
  public Forecast {
    rows = List.copyOf(rows);
    news = List.copyOf(news);
    gone = List.copyOf(gone);
    staying = List.copyOf(staying);
  }

  /** Studies both states, which must be sound, and lays them side by side. */
  public static Forecast of(Book book, State before, State after) {
    CompletableFuture<Study> first = CompletableFuture.supplyAsync(() -> study(book, before));
    Study now = study(book, after);
    List<Finding> altered =
        RigidityStudy.atOnce(before.machine().orElseThrow(), after.machine().orElseThrow());
    return of(before, after, first.join(), now.and(new Study(List.of(), altered)));
  }

  /** Lays studies of two states side by side. */
  public static Forecast of(State before, State after, Study old, Study now) {
    List<Finding> news = new ArrayList<>(now.findings());
    news.removeAll(old.findings());
    List<Finding> gone = new ArrayList<>(old.findings());
    gone.removeAll(now.findings());
    List<Finding> staying = new ArrayList<>(now.findings());
    staying.retainAll(old.findings());
    return new Forecast(
        before,
        after,
        rows(old.figures(), now.figures()),
        worstFirst(news),
        gone,
        worstFirst(staying));
  }

  /** Returns the figures that are not what they were. */
  public List<Row> moved() {
    return rows.stream().filter(Row::moved).toList();
  }

  /** Tells whether a finding of the second state says stop. */
  public boolean stops() {
    return news.stream().anyMatch(f -> f.rank() == Finding.Rank.STOP)
        || staying.stream().anyMatch(f -> f.rank() == Finding.Rank.STOP);
  }

  private static Study study(Book book, State state) {
    Study study = Topics.study(state.machine().orElseThrow(), book.shop());
    List<Finding> conflicts = new ArrayList<>();
    for (Conflict c : state.conflicts()) {
      conflicts.add(
          new Finding(
              Finding.Rank.CAUTION,
              "",
              "'"
                  + c.first()
                  + "' and '"
                  + c.second()
                  + "' both alter "
                  + c.path()
                  + "; what '"
                  + c.second()
                  + "' says holds. Settle which is meant.",
              "",
              ORDER));
    }
    return study.and(new Study(List.of(), conflicts));
  }

  private static List<Row> rows(List<Figure> old, List<Figure> now) {
    Map<String, Figure> before = byId(old);
    Map<String, Figure> after = byId(now);
    List<String> topics = Topics.names();
    List<Figure> all = new ArrayList<>(old);
    all.addAll(now);
    return all.stream()
        .sorted(Comparator.comparingInt(f -> topics.indexOf(f.topic())))
        .map(Figure::id)
        .distinct()
        .map(id -> Row.of(Optional.ofNullable(before.get(id)), Optional.ofNullable(after.get(id))))
        .toList();
  }

  private static Map<String, Figure> byId(List<Figure> figures) {
    Map<String, Figure> byId = new LinkedHashMap<>();
    for (Figure figure : figures) {
      if (byId.put(figure.id(), figure) != null) {
        throw new IllegalStateException("two figures are called " + figure.id());
      }
    }
    return byId;
  }

  private static List<Finding> worstFirst(List<Finding> findings) {
    return findings.stream().sorted(Comparator.comparing(Finding::rank)).toList();
  }
}
