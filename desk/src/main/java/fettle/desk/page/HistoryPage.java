package fettle.desk.page;

import java.util.List;

/**
 * The saved versions of the book.
 *
 * @param frame what frames it
 * @param versions newest first
 * @param chosen the version looked at; empty if none
 * @param differences what it differs in from the book as it is
 */
public record HistoryPage(
    Shell frame, List<Line> versions, String chosen, List<Difference> differences) {

  /** One version. */
  public record Line(String id, String when, String what, String href, boolean current) {}

  /** One file that differs: its lines with a sign in front. */
  public record Difference(String file, List<Row> rows) {}

  /** A line of a difference; {@code sign} is plus, minus or a space. */
  public record Row(String sign, String text) {}
}
