package fettle.desk.publish;

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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a change does, each figure leading to its working on the same page. */
record Effects(Forecast forecast, Measure measure) {

  /**
   * Returns the page of a forecast; a figure leads to its number behind a prefix, if there is one.
   */
  JointPage joint(String prefix) {
    List<Row> moved = forecast.moved();
    List<JointPage.Line> lines = new ArrayList<>();
    for (int i = 0; i < moved.size(); i++) {
      lines.add(line(moved.get(i), prefix.isEmpty() ? "#main" : "#" + prefix + (i + 1)));
    }
    return new JointPage(
        "without it",
        "with it",
        lines,
        openings(forecast.news()),
        openings(forecast.gone()),
        forecast.staying().size(),
        forecast.rows().size() - moved.size(),
        summary(moved));
  }

  private static String summary(List<Row> moved) {
    long better = moved.stream().filter(r -> r.verdict() == Verdict.BETTER).count();
    long worse = moved.stream().filter(r -> r.verdict() == Verdict.WORSE).count();
    return moved.isEmpty()
        ? "No figure moves."
        : "Figures that move: "
            + better
            + " for the better, "
            + worse
            + " for the worse, "
            + (moved.size() - better - worse)
            + " otherwise.";
  }

  private static List<LathePage.Opening> openings(List<Finding> findings) {
    return findings.stream()
        .map(
            f ->
                new LathePage.Opening(
                    new ForecastPage.FindingLine(
                        f.rank().word(), f.sentence(), f.limit(), f.source().text()),
                    ""))
        .toList();
  }

  private JointPage.Line line(Row row, String href) {
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
        href);
  }
}
