package fettle.proof;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a table of published values: {@code id,topic,inputs,result,expected,unit,tolerance,source,
 * obtained}. {@code inputs} are {@code name=value} parts separated by {@code " | "}. {@code
 * expected} may hold several numbers separated by {@code " | "}, or text. {@code tolerance} is
 * absolute in the row's unit unless it starts with {@code rel}; 0 means exact.
 */
public final class PublishedTable {

  /**
   * One published value.
   *
   * @param id number of the row
   * @param topic reckoner that computes it
   * @param inputs inputs by name
   * @param result names of the results, as many as expected values
   * @param expected the published values
   * @param unit unit of the expected values
   * @param tolerance allowed difference, from the source's rounding
   * @param relative true if the tolerance is a share of the expected value
   * @param source standard, book or paper
   * @param obtained how the value was obtained
   */
  public record Row(
      String id,
      String topic,
      Map<String, String> inputs,
      List<String> result,
      List<String> expected,
      String unit,
      double tolerance,
      boolean relative,
      String source,
      String obtained) {

    /**
     * Tells whether a computed value agrees with the published one.
     *
     * @param index which of the expected values
     * @param computed the computed value [unit of the row]
     */
    public boolean agrees(int index, double computed) {
      double value = number(expected.get(index));
      double allowed = relative ? tolerance * Math.abs(value) : tolerance;
      double rounding = 1e-12 * Math.max(1, Math.abs(value));
      return Math.abs(computed - value) <= allowed + rounding;
    }
  }

  private PublishedTable() {}

  /** Reads a table from the class path of the caller. */
  public static List<Row> read(Class<?> near, String resource) {
    try (InputStream in = near.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalArgumentException("no table " + resource);
      }
      return rows(resource, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads a table from a file. */
  public static List<Row> read(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return rows(file.toString(), in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Row> rows(String name, InputStream in) throws IOException {
    List<List<String>> lines =
        csv(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
    List<Row> rows = new ArrayList<>();
    for (List<String> cells : lines.subList(1, lines.size())) {
      rows.add(row(name, cells));
    }
    return List.copyOf(rows);
  }

  private static Row row(String resource, List<String> cells) {
    if (cells.size() != 9) {
      throw new IllegalArgumentException(resource + ": a row needs 9 cells, found " + cells);
    }
    Map<String, String> inputs = new LinkedHashMap<>();
    for (String part : cells.get(2).split(" \\| ", -1)) {
      if (!part.isBlank()) {
        String[] pair = part.split("=", 2);
        inputs.put(pair[0].trim(), pair[1].trim());
      }
    }
    String tolerance = cells.get(6).trim();
    boolean relative = tolerance.startsWith("rel");
    double allowed = Double.parseDouble(relative ? tolerance.substring(3).trim() : tolerance);
    return new Row(
        cells.get(0),
        cells.get(1),
        inputs,
        List.of(cells.get(3).split(" \\| ", -1)),
        List.of(cells.get(4).split(" \\| ", -1)),
        cells.get(5),
        allowed,
        relative,
        cells.get(7),
        cells.get(8));
  }

  /**
   * Reads a number or a fraction.
   *
   * @param text the number as printed
   * @return its value [as printed]
   */
  public static double number(String text) {
    int slash = text.indexOf('/');
    return slash < 0
        ? Double.parseDouble(text.trim())
        : Double.parseDouble(text.substring(0, slash))
            / Double.parseDouble(text.substring(slash + 1));
  }

  private static List<List<String>> csv(BufferedReader reader) throws IOException {
    List<List<String>> lines = new ArrayList<>();
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      List<String> cells = new ArrayList<>();
      StringBuilder cell = new StringBuilder();
      boolean quoted = false;
      for (int i = 0; i < line.length(); i++) {
        char c = line.charAt(i);
        if (c == '"') {
          boolean doubled = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
          if (doubled) {
            cell.append('"');
            i++;
          } else {
            quoted = !quoted;
          }
        } else if (c == ',' && !quoted) {
          cells.add(cell.toString());
          cell.setLength(0);
        } else {
          cell.append(c);
        }
      }
      cells.add(cell.toString());
      lines.add(cells);
    }
    return lines;
  }
}
