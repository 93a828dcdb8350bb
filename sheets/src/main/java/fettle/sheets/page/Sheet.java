package fettle.sheets.page;

import fettle.sheets.marks.Mark;
import java.util.List;

/**
 * A finished sheet.
 *
 * @param format size
 * @param number drawing number
 * @param title title
 * @param scale main scale
 * @param marks everything on it
 */
public record Sheet(Format format, String number, String title, Scale scale, List<Mark> marks) {
  /** Keeps its own copy. */
  public Sheet {
    marks = List.copyOf(marks);
  }
}
