package fettle.desk.page;

import java.util.List;

/**
 * What frames every page of a published book.
 *
 * @param title title of the page
 * @param lathe name of the lathe
 * @param owner whose book it is; empty if not said
 * @param licence licence line; empty if none is stated
 * @param rooms the pages, in the order of the job
 */
public record SiteFrame(
    String title, String lathe, String owner, String licence, List<Shell.Room> rooms) {
  /** Keeps its own copy. */
  public SiteFrame {
    rooms = List.copyOf(rooms);
  }
}
