package fettle.desk.page;

import java.util.List;

/**
 * All published changes, by stage.
 *
 * @param frame what frames it
 * @param stages changes of each stage
 */
public record SiteChangesPage(SiteFrame frame, List<Stage> stages) {

  /** Changes of one stage. */
  public record Stage(String word, String meaning, List<Entry> entries) {}

  /** One change in the list. */
  public record Entry(String title, String benefit, String facts, String href) {}
}
