package fettle.machine.dictionary;

import fettle.mechanics.base.Unit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every key a book may hold, by the block it stands in. */
public final class Dictionary {

  private static final Dictionary STANDARD = load();

  private final Map<String, Map<String, Row>> shapes;

  private Dictionary(Map<String, Map<String, Row>> shapes) {
    this.shapes = shapes;
  }

  /** Returns the dictionary of this version. */
  public static Dictionary standard() {
    return STANDARD;
  }

  /** Returns all blocks, in the order of the table. */
  public Map<String, Map<String, Row>> shapes() {
    return shapes;
  }

  /** Returns the keys of one block. */
  public Map<String, Row> shape(String name) {
    Map<String, Row> rows = shapes.get(name);
    if (rows == null) {
      throw new IllegalArgumentException("the dictionary has no block " + name);
    }
    return rows;
  }

  /** Returns the kinds of a block that comes in several, such as seat: fixed, bolted, … */
  public List<String> kinds(String family) {
    return shapes.keySet().stream()
        .filter(s -> s.startsWith(family + "/"))
        .map(s -> s.substring(family.length() + 1))
        .toList();
  }

  private static Dictionary load() {
    Map<String, Map<String, Row>> shapes = new LinkedHashMap<>();
    try (InputStream in = Dictionary.class.getResourceAsStream("dictionary.csv")) {
      if (in == null) {
        throw new IllegalStateException("dictionary.csv is missing from the program");
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      reader.readLine();
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        Row row = row(cells(line));
        shapes.computeIfAbsent(row.shape(), s -> new LinkedHashMap<>()).put(row.key(), row);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    shapes.replaceAll((name, rows) -> Collections.unmodifiableMap(rows));
    return new Dictionary(Collections.unmodifiableMap(shapes));
  }

  private static Row row(List<String> c) {
    return new Row(
        c.get(0),
        c.get(1),
        c.get(2),
        Unit.parse(c.get(3)).orElseThrow(() -> new IllegalStateException("unknown unit " + c)),
        c.get(4),
        bound(c.get(5)),
        bound(c.get(6)),
        c.get(7).equals("yes"),
        c.get(8));
  }

  private static Optional<Double> bound(String cell) {
    return cell.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(cell));
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}
