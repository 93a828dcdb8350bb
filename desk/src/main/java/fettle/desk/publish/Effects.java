package fettle.desk.publish;

import fettle.desk.page.ForecastPage;
import fettle.desk.page.JointPage;
import fettle.desk.page.LathePage;
import fettle.desk.page.Measure;
import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import java.util.List;

/** What a change does, each figure leading to its working on the same page. */
record Effects(Forecast forecast, Measure measure) {

  /**
   * Returns the page of a forecast; a figure leads to its number behind a prefix, if there is one.
   */
  JointPage joint(String prefix) {
    List<Row> moved = forecast.moved();
    return JointPage.of(
        forecast,
        "without it",
        "with it",
        measure,
        row -> prefix.isEmpty() ? "#main" : "#" + prefix + (moved.indexOf(row) + 1),
        f -> new LathePage.Opening(ForecastPage.FindingLine.of(f, measure), ""));
  }
}
