package fettle.mechanics.fits;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A table by size: the first column is the upper end of the step, which itself belongs to the step.
 *
 * @param name name of the table, for messages
 * @param heads names of the columns after the first
 * @param steps rows in rising order
 */
record Table(String name, List<String> heads, List<Step> steps) {

  /**
   * One row.
   *
   * @param over lower end, outside the step [mm]
   * @param to upper end, inside the step [mm]
   * @param cells texts of the other columns; empty where the table gives nothing
   */
  record Step(double over, double to, List<String> cells) {}

  /** Reads a table that stands beside this class. */
  static Table read(String file) {
    try (InputStream in = Table.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the table " + file + " is missing from the program");
      }
      List<String> lines =
          new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
              .lines()
              .filter(line -> !line.isBlank() && !line.startsWith("#"))
              .toList();
      List<String> heads = List.of(lines.get(0).split(",", -1));
      List<Step> steps = new ArrayList<>();
      double over = 0;
      for (String line : lines.subList(1, lines.size())) {
        List<String> cells = List.of(line.split(",", -1));
        if (cells.size() != heads.size()) {
          throw new IllegalStateException(file + ": a row has " + cells.size() + " cells: " + line);
        }
        double to = Double.parseDouble(cells.get(0));
        steps.add(new Step(over, to, cells.subList(1, cells.size())));
        over = to;
      }
      return new Table(file, heads.subList(1, heads.size()), List.copyOf(steps));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Returns the step a size belongs to.
   *
   * @param size the size [mm]
   * @throws IllegalArgumentException unless 0 &lt; size &lt;= the last upper end
   */
  Step step(double size) {
    double last = steps.get(steps.size() - 1).to();
    if (!(size > 0) || !(size <= last)) {
      throw new IllegalArgumentException(
          "size " + size + " mm: the table goes over 0 up to and including " + last + " mm");
    }
    return steps.stream().filter(s -> size <= s.to()).findFirst().orElseThrow();
  }

  /**
   * Returns a number of the table, in the table's own unit.
   *
   * @param size the size [mm]
   * @param head name of the column
   * @return the number, nothing where the cell is empty [unit of the table]
   */
  OptionalDouble at(double size, String head) {
    int column = heads.indexOf(head);
    if (column < 0) {
      throw new IllegalArgumentException(name + " has no column " + head);
    }
    String cell = step(size).cells().get(column);
    return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
  }
}
