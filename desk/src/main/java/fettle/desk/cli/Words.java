package fettle.desk.cli;

import fettle.planning.order.Worklist;
import java.util.Locale;

/** Numbers of plans as they are read. */
final class Words {

  private Words() {}

  /**
   * Returns a number without needless digits.
   *
   * @param value the number [any]
   */
  static String number(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.2f", value).replaceFirst("0+$", "");
  }

  /** Returns a count with its noun, as '1 change' or '2 changes'. */
  static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  static String points(long cost) {
    return String.format(Locale.ROOT, "%.1f", (double) cost / Worklist.POINT);
  }

  static String hours(int ticks) {
    return number((double) ticks / Worklist.HOUR) + " h";
  }

  /**
   * Returns a text in lines of at most so many characters, each after the first behind a margin.
   */
  static String wrapped(String text, int width, String margin) {
    StringBuilder out = new StringBuilder();
    int column = margin.length();
    for (String word : text.split(" ")) {
      if (column + word.length() + 1 > width && column > margin.length()) {
        out.append('\n').append(margin);
        column = margin.length();
      } else if (out.length() > 0) {
        out.append(' ');
        column++;
      }
      out.append(word);
      column += word.length();
    }
    return out.toString();
  }
}
