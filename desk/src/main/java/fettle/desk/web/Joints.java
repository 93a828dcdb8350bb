package fettle.desk.web;

import fettle.desk.page.JointPage;
import fettle.desk.page.LathePage;
import fettle.desk.page.Measure;
import fettle.machine.forecast.Forecast;
import fettle.machine.topics.Finding;
import java.util.List;

/** Makes pages of forecasts whose figures and findings open on the desk. */
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
    return JointPage.of(
        forecast,
        Chosen.words(forecast.before()),
        Chosen.words(forecast.after()),
        measure,
        row -> Visit.figure(row.figure().id(), after),
        f -> Visit.opening(f, after, measure));
  }

  static List<LathePage.Opening> openings(List<Finding> findings, Chosen chosen, Measure measure) {
    return findings.stream().map(f -> Visit.opening(f, chosen, measure)).toList();
  }
}
