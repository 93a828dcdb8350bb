package fettle.desk.pack;

import fettle.sheets.revision.Revision;
import java.util.ArrayList;
import java.util.List;

/**
 * One issue of a pack.
 *
 * @param index revision index
 * @param date date of issue, ISO 8601
 * @param note what changed against the issue before
 */
public record Issue(String index, String date, String note) {

  private static final String HEAD = "revision,date,what changed";

  /**
   * Reads the record of a pack's issues, oldest first.
   *
   * @throws IllegalArgumentException if a line is none of the record
   */
  public static List<Issue> parse(String text) {
    List<Issue> issues = new ArrayList<>();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      if (line.isBlank() || line.equals(HEAD)) {
        continue;
      }
      String[] cells = line.split(",", 3);
      if (cells.length != 3 || !cells[0].matches("[A-HJ-NP-Z]{1,4}")) {
        throw new IllegalArgumentException(
            "line " + number + ": expected " + HEAD + ", found '" + line + "'");
      }
      issues.add(new Issue(cells[0], cells[1], cells[2]));
    }
    return List.copyOf(issues);
  }

  /** Returns a record as text. */
  public static String text(List<Issue> issues) {
    StringBuilder out = new StringBuilder(HEAD).append('\n');
    for (Issue i : issues) {
      out.append(i.index()).append(',').append(i.date()).append(',').append(i.note()).append('\n');
    }
    return out.toString();
  }

  /** Returns the index that follows the last issue. */
  static String next(List<Issue> issues) {
    return issues.isEmpty()
        ? Revision.first()
        : Revision.after(issues.get(issues.size() - 1).index());
  }
}
