package fettle.desk.page;

import java.util.List;

/**
 * What frames every page of the desk.
 *
 * @param title title of the page
 * @param lathe name of the lathe
 * @param rooms the rooms, in the order of the job
 * @param state the state looked at, in words
 * @param word the state looked at, as forms send it
 * @param query the state looked at, as it stands in links
 * @param here address of this page, to come back to
 * @param inch true if inches are shown
 * @param token proves that a form comes from one of our pages
 * @param mark mark of the book as this page shows it
 */
public record Shell(
    String title,
    String lathe,
    List<Room> rooms,
    String state,
    String word,
    String query,
    String here,
    boolean inch,
    String token,
    String mark) {

  /** One room of the desk. */
  public record Room(String key, String title, String href, boolean here) {}

  /** A link with its words. */
  public record Link(String href, String words) {}
}
