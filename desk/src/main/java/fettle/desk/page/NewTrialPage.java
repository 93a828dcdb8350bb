package fettle.desk.page;

import java.util.List;

/**
 * A trial being laid out.
 *
 * @param frame what frames it
 * @param kinds the kinds of trial, each with the page where it is laid out
 * @param kind the kind chosen; empty before one is
 * @param fields what has to be said
 * @param problems what is wrong with what was typed
 */
public record NewTrialPage(
    Shell frame, List<Shell.Link> kinds, String kind, List<Field> fields, List<String> problems) {

  /**
   * One thing to say.
   *
   * @param name its name in the form
   * @param label what it is called
   * @param note what is expected
   * @param text what is typed
   * @param choices what to choose from; empty for free text
   */
  public record Field(String name, String label, String note, String text, List<String> choices) {}
}
