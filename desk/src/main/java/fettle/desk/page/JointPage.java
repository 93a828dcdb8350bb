package fettle.desk.page;

import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.forecast.Verdict;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Finding;
import fettle.mechanics.base.Working;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A forecast with bars.
 *
 * @param before the first state, in words
 * @param after the second state, in words
 * @param lines figures that moved
 * @param news new findings, worst first
 * @param gone findings that are settled
 * @param staying how many findings stay
 * @param hidden how many figures stay as they are
 * @param summary one line for those who listen
 */
public record JointPage(
    String before,
    String after,
    List<Line> lines,
    List<LathePage.Opening> news,
    List<LathePage.Opening> gone,
    int staying,
    int hidden,
    String summary) {

  /**
   * Makes the page of a forecast.
   *
   * @param forecast the two states
   * @param before the first of them, in words
   * @param after the second, in words
   * @param measure units preferred
   * @param href where a figure that moved leads
   * @param opening how a finding is shown
   */
  public static JointPage of(
      Forecast forecast,
      String before,
      String after,
      Measure measure,
      Function<Row, String> href,
      Function<Finding, LathePage.Opening> opening) {
    List<Row> moved = forecast.moved();
    return new JointPage(
        before,
        after,
        moved.stream().map(r -> Line.of(r, measure, href.apply(r))).toList(),
        forecast.news().stream().map(opening).toList(),
        forecast.gone().stream().map(opening).toList(),
        forecast.staying().size(),
        forecast.rows().size() - moved.size(),
        summary(moved));
  }

  private static String summary(List<Row> moved) {
    long better = moved.stream().filter(r -> r.verdict() == Verdict.BETTER).count();
    long worse = moved.stream().filter(r -> r.verdict() == Verdict.WORSE).count();
    return moved.isEmpty()
        ? "No figure moves."
        : moved.size()
            + (moved.size() == 1 ? " figure moves: " : " figures move: ")
            + better
            + " for the better, "
            + worse
            + " for the worse, "
            + (moved.size() - better - worse)
            + " otherwise.";
  }

  /** A figure that moved. */
  public record Line(
      String topic,
      String subject,
      String name,
      String before,
      String after,
      String difference,
      String verdict,
      Bar bar,
      String href) {

    private static Line of(Row row, Measure measure, String href) {
      Figure figure = row.figure();
      Optional<Working> old = row.before().flatMap(Figure::working);
      Optional<Working> now = row.after().flatMap(Figure::working);
      boolean numbers = old.isPresent() && now.isPresent();
      String difference =
          numbers && !now.get().unit().reciprocal()
              ? Amount.of(row.difference(), row.doubt(), now.get().unit(), measure).signed().text()
              : "";
      return new Line(
          figure.topic(),
          figure.subject(),
          figure.name(),
          row.before().map(f -> ForecastPage.value(f, measure)).orElse("–"),
          row.after().map(f -> ForecastPage.value(f, measure)).orElse("–"),
          difference,
          row.verdict().words(),
          numbers ? Bar.of(old.get(), now.get(), measure) : Bar.NONE,
          href);
    }
  }
}
