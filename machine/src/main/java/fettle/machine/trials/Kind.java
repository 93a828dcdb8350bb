package fettle.machine.trials;

import java.util.Arrays;
import java.util.List;

/** How a lathe is tested, with the columns its readings need; the last column is the reading. */
public enum Kind {
  /** A dial against an indicator or a scale, both ways, several runs. */
  DIAL(
      "dial",
      Column.count("run"),
      Column.direction("dir"),
      Column.number("turns"),
      Column.length("position")),
  /** A slide brought to the same places from both sides. */
  REVERSAL(
      "reversal",
      Column.count("run"),
      Column.direction("dir"),
      Column.length("target"),
      Column.length("position")),
  /** A bar in the spindle, read at two distances, re-seated at several angles. */
  TEST_BAR(
      "test bar",
      Column.word("plane", "h", "v"),
      Column.angle("seat"),
      Column.length("z"),
      Column.angle("spindle"),
      Column.length("reading")),
  /** Two collars turned without the tailstock. */
  TWO_COLLARS(
      "two collars",
      Column.count("cut"),
      Column.word("collar", "head", "free"),
      Column.length("diameter")),
  /** A bar between centres, read at both ends. */
  TAILSTOCK(
      "tailstock",
      Column.count("seating"),
      Column.word("plane", "h", "v"),
      Column.word("end", "head", "tail"),
      Column.length("reading")),
  /** Push and pull at the tool post. */
  PUSH(
      "push",
      Column.count("loop"),
      Column.direction("dir"),
      Column.force("force"),
      Column.length("movement"));

  private final String word;

  // Made by List.of of records that hold no more than that.
  @SuppressWarnings("ImmutableEnumChecker")
  private final List<Column> columns;

  Kind(String word, Column... columns) {
    this.word = word;
    this.columns = List.of(columns);
  }

  /** Returns the kind as a book writes it. */
  public String word() {
    return word;
  }

  /** Returns the columns of its readings, in order. */
  List<Column> columns() {
    return columns;
  }

  static Kind of(String word) {
    return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst().orElseThrow();
  }
}
