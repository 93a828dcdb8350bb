package fettle.desk.web;

import fettle.desk.page.Amount;
import fettle.desk.page.Bar;
import fettle.desk.page.ForecastPage;
import fettle.desk.page.JointPage;
import fettle.desk.page.LathePage;
import fettle.desk.page.Measure;
import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.forecast.Verdict;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Finding;
import fettle.mechanics.base.Working;
import java.util.List;
import java.util.Optional;

/** Makes pages of forecasts: figures that moved, each with its bar. */
final class Joints {

  private Joints() {}

  /**
   * Makes the page of a forecast.
   *
   * @param forecast the two states
   * @param after the second state as it stands in links
   * @param measure units preferred
   */
  static JointPage of(Forecast forecast, Chosen after, Measure measure) {
    List<Row> moved = forecast.moved();
    long better = moved.stream().filter(r -> r.verdict() == Verdict.BETTER).count();
    long worse = moved.stream().filter(r -> r.verdict() == Verdict.WORSE).count();
    return new JointPage(
        Chosen.words(forecast.before()),
        Chosen.words(forecast.after()),
        moved.stream().map(r -> line(r, after, measure)).toList(),
        openings(forecast.news(), after),
        openings(forecast.gone(), after),
        forecast.staying().size(),
        forecast.rows().size() - moved.size(),
        moved.isEmpty()
            ? "No figure moves."
            : moved.size()
                + (moved.size() == 1 ? " figure moves: " : " figures move: ")
                + better
                + " for the better, "
                + worse
                + " for the worse, "
                + (moved.size() - better - worse)
                + " otherwise.");
  }

  static List<LathePage.Opening> openings(List<Finding> findings, Chosen chosen) {
    return findings.stream().map(f -> Visit.opening(f, chosen)).toList();
  }

  private static JointPage.Line line(Row row, Chosen after, Measure measure) {
    Figure figure = row.figure();
    Optional<Working> old = row.before().flatMap(Figure::working);
    Optional<Working> now = row.after().flatMap(Figure::working);
    boolean numbers = old.isPresent() && now.isPresent();
    String difference =
        numbers && !now.get().unit().reciprocal()
            ? Amount.of(row.difference(), row.doubt(), now.get().unit(), measure).signed().text()
            : "";
    return new JointPage.Line(
        figure.topic(),
        figure.subject(),
        figure.name(),
        row.before().map(f -> ForecastPage.value(f, measure)).orElse("–"),
        row.after().map(f -> ForecastPage.value(f, measure)).orElse("–"),
        difference,
        row.verdict().words(),
        numbers ? Bar.of(old.get(), now.get(), measure) : Bar.NONE,
        Visit.figure(figure.id(), after));
  }
}
