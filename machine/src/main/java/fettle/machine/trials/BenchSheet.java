package fettle.machine.trials;

import fettle.machine.text.Node;
import fettle.machine.text.YamlReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The text of a trial's readings while they are taken: rows whose reading is still empty are the
 * plan, and each reading is put into its place without touching anything else.
 *
 * @param kind kind of the trial
 * @param text the CSV text
 * @param heads heading of each column, with its unit
 * @param rows the rows of readings
 */
public record BenchSheet(Kind kind, String text, List<String> heads, List<Row> rows) {

  /** Keeps its own copies. */
  public BenchSheet {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }

  /**
   * A row.
   *
   * @param line its line in the file, from 1
   * @param place the cells that say where the reading is taken
   * @param reading the reading as written; empty while it is missing
   */
  public record Row(int line, List<String> place, String reading) {
    /** Keeps its own copy. */
    public Row {
      place = List.copyOf(place);
    }
  }

  /** Returns the kind that a trial's description states, if it states one. */
  public static Optional<Kind> kind(String yaml) {
    Node tree = YamlReader.read("trial.yaml", yaml).value();
    return tree instanceof Node.Mapping mapping
            && mapping.entries().get("kind") != null
            && mapping.entries().get("kind").value() instanceof Node.Scalar word
        ? Arrays.stream(Kind.values()).filter(k -> k.word().equals(word.text())).findFirst()
        : Optional.empty();
  }

  /** Reads the rows of a text; rows of another number of columns are left alone. */
  public static BenchSheet of(Kind kind, String text) {
    int width = kind.columns().size();
    List<String> heads = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    String[] lines = text.split("\\R", -1);
    for (int i = 0; i < lines.length; i++) {
      String line = lines[i].strip();
      List<String> cells = Arrays.stream(line.split(",", -1)).map(String::strip).toList();
      if (!line.isEmpty() && !line.startsWith("#") && cells.size() == width) {
        if (heads.isEmpty()) {
          heads.addAll(cells);
        } else {
          rows.add(new Row(i + 1, cells.subList(0, width - 1), cells.get(width - 1)));
        }
      }
    }
    return new BenchSheet(kind, text, heads, rows);
  }

  /** Returns the first row without a reading. */
  public Optional<Row> next() {
    return rows.stream().filter(r -> r.reading().isEmpty()).findFirst();
  }

  /** Returns the row of a line. */
  public Optional<Row> at(int line) {
    return rows.stream().filter(r -> r.line() == line).findFirst();
  }

  /** Returns what a reading should be; empty if this one is so. */
  public String expected(String reading) {
    Column last = kind.columns().get(kind.columns().size() - 1);
    return Double.isNaN(last.value(reading.strip(), 1)) ? last.cell() : "";
  }

  /**
   * Returns the text with a reading in its place.
   *
   * @throws IllegalArgumentException if there is no such row, or this is no reading
   */
  public String filled(int line, String reading) {
    String expected = expected(reading);
    if (!expected.isEmpty()) {
      throw new IllegalArgumentException(
          "reading: found '" + reading + "', expected " + expected + ", without its unit");
    }
    Row row =
        at(line)
            .orElseThrow(
                () -> new IllegalArgumentException("line " + line + " holds no reading now"));
    String[] parts = text.split("(?<=\\n)", -1);
    String old = parts[line - 1];
    String end = old.endsWith("\r\n") ? "\r\n" : old.endsWith("\n") ? "\n" : "";
    parts[line - 1] = String.join(",", row.place()) + "," + reading.strip() + end;
    return String.join("", parts);
  }

  /**
   * Returns the text with the places of the last run once more, numbered on, their readings empty;
   * empty if the kind knows no runs.
   */
  public Optional<String> another() {
    int count = -1;
    for (int c = 0; c < kind.columns().size() - 1; c++) {
      Column column = kind.columns().get(c);
      count = count < 0 && column.whole() && !column.signOnly() ? c : count;
    }
    if (count < 0 || rows.isEmpty()) {
      return Optional.empty();
    }
    String last = rows.get(rows.size() - 1).place().get(count);
    StringBuilder more = new StringBuilder(text);
    if (!text.endsWith("\n")) {
      more.append('\n');
    }
    for (Row row : rows) {
      if (row.place().get(count).equals(last)) {
        List<String> place = new ArrayList<>(row.place());
        place.set(count, String.valueOf(Integer.parseInt(last) + 1));
        more.append(String.join(",", place)).append(",\n");
      }
    }
    return Optional.of(more.toString());
  }
}
