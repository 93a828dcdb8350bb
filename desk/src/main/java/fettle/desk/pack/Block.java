package fettle.desk.pack;

import fettle.desk.page.Bar;
import java.util.List;

/** A piece of a chapter. */
public sealed interface Block {

  /** A heading within a chapter. */
  record Heading(String words) implements Block {}

  /** A paragraph. */
  record Prose(String words) implements Block {}

  /** One point of a list. */
  record Point(String words) implements Block {}

  /** One step to tick off: its number, what it is, and what belongs to it. */
  record Step(String number, String words, List<String> more) implements Block {
    /** Keeps its own copy. */
    public Step {
      more = List.copyOf(more);
    }
  }

  /** What can hurt somebody. */
  record Caution(String words) implements Block {}

  /** A figure before and after, as two ticks on one scale. */
  record Ticks(String name, String before, String after, String verdict, Bar bar)
      implements Block {}

  /**
   * A table.
   *
   * @param columns its columns
   * @param rows its rows; a row of one cell is a heading across
   */
  record Grid(List<Column> columns, List<List<String>> rows) implements Block {
    /** Keeps its own copies. */
    public Grid {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != 1 && row.size() != columns.size()) {
          throw new IllegalArgumentException(
              "a row of " + row.size() + " cells in a table of " + columns.size() + " columns");
        }
      }
    }
  }

  /**
   * A column of a table.
   *
   * @param head its heading
   * @param share its share of the width [-]
   * @param side where its text stands
   */
  record Column(String head, double share, Side side) {
    static Column left(String head, double share) {
      return new Column(head, share, Side.LEFT);
    }

    static Column right(String head, double share) {
      return new Column(head, share, Side.RIGHT);
    }
  }

  /** Where text stands in its column. */
  enum Side {
    LEFT,
    RIGHT
  }

  /**
   * A form to be filled in by hand.
   *
   * @param heads headings; the last column is left empty
   * @param rows what is printed in the columns before the last
   */
  record Form(List<String> heads, List<List<String>> rows) implements Block {
    /** Keeps its own copies. */
    public Form {
      heads = List.copyOf(heads);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }
}
