package fettle.mechanics.base;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a table that lies beside a class on the class path: comma-separated, names in the first
 * line, {@code #} starts a remark, no quoting, and a cell may be empty.
 */
public final class Rows {

  private Rows() {}

  /** Returns the rows as cells by column name, in file order. */
  public static List<Map<String, String>> read(Class<?> near, String resource) {
    InputStream in = near.getResourceAsStream(resource);
    if (in == null) {
      throw new IllegalStateException("the table " + resource + " is missing from the program");
    }
    List<Map<String, String>> rows = new ArrayList<>();
    List<String> names = List.of();
    for (String line : lines(in, resource)) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      List<String> cells = cells(line);
      if (names.isEmpty()) {
        names = cells;
      } else {
        rows.add(row(resource, names, cells));
      }
    }
    return List.copyOf(rows);
  }

  private static List<String> lines(InputStream in, String resource) {
    try (in) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the table " + resource + " cannot be read", e);
    }
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    int from = 0;
    for (int comma = line.indexOf(','); comma >= 0; comma = line.indexOf(',', from)) {
      cells.add(line.substring(from, comma).trim());
      from = comma + 1;
    }
    cells.add(line.substring(from).trim());
    return cells;
  }

  private static Map<String, String> row(String resource, List<String> names, List<String> cells) {
    if (cells.size() != names.size()) {
      throw new IllegalStateException(
          resource + ": a row needs " + names.size() + " cells, found " + cells);
    }
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      row.put(names.get(i), cells.get(i));
    }
    return row;
  }
}
