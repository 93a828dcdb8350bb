package fettle.desk.page;

import java.util.List;

/**
 * All changes, by stage.
 *
 * @param frame what frames it
 * @param stages changes of each stage
 * @param begin where a new change begins: values to drag and to keep
 * @param joint forecast of the ticked changes; null if none is ticked
 */
public record ChangesPage(
    Shell frame,
    List<Stage> stages,
    List<Shell.Link> begin,
    @org.jspecify.annotations.Nullable JointPage joint) {

  /** Changes of one stage. */
  public record Stage(String word, String meaning, List<Entry> entries) {}

  /** One change in the list. */
  public record Entry(
      String key,
      String title,
      String benefit,
      String hours,
      String cost,
      List<Shell.Link> needs,
      List<String> enables,
      String href,
      boolean ticked) {}
}
