package fettle.desk.page;

import java.util.List;

/**
 * A room that is not furnished yet, an error, or a page of plain words.
 *
 * @param frame what frames it
 * @param heading heading
 * @param words what is the matter
 * @param why why it matters
 * @param next the one next step
 * @param problems lines that are wrong
 * @param things what is known already
 */
public record RoomPage(
    Shell frame,
    String heading,
    String words,
    String why,
    Shell.Link next,
    List<Line> problems,
    List<Known> things) {

  /** One problem: where, what, and where to edit it. */
  public record Line(String place, String text, String href) {}

  /** Something known already, by what it belongs to. */
  public record Known(String title, String href, List<ChangePage.Thing> things) {}
}
