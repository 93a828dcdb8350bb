package fettle.machine.trials;

import fettle.machine.text.Parsed;
import fettle.machine.text.Place;
import fettle.machine.text.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings of a trial as written at the bench.
 *
 * @param kind kind of the trial, which says what the columns are
 * @param lines the readings, in the order taken
 * @param gaps lines with an empty reading, in words
 */
public record Readings(Kind kind, List<Line> lines, List<String> gaps) {

  /** Keeps its own copies. */
  public Readings {
    lines = List.copyOf(lines);
    gaps = List.copyOf(gaps);
  }

  /**
   * One reading.
   *
   * @param number line of the file
   * @param values value of each column, the reading last [coherent]
   */
  public record Line(int number, List<Double> values) {
    /** Keeps its own copy. */
    public Line {
      values = List.copyOf(values);
    }

    /**
     * Returns the value of a column.
     *
     * @return value [coherent]
     */
    public double at(int column) {
      return values.get(column);
    }

    /** Returns a column as a whole number. */
    public int whole(int column) {
      return (int) Math.round(values.get(column));
    }

    /**
     * Returns the reading itself.
     *
     * @return value of the last column [coherent]
     */
    public double reading() {
      return values.get(values.size() - 1);
    }
  }

  private static final int MOST_LINES = 20_000;
  private static final int MOST_PROBLEMS = 50;

  /** Returns the values of a column. */
  double[] column(int index) {
    return lines.stream().mapToDouble(l -> l.at(index)).toArray();
  }

  /**
   * Reads a CSV text: lines that start with # are remarks, the first other line names the columns,
   * each with its unit. Anything that is not a reading is a problem with its line; an empty reading
   * is a gap that is kept and shown.
   */
  public static Parsed<Readings> read(String file, String text, Kind kind) {
    List<Problem> problems = new ArrayList<>();
    List<Column> columns = kind.columns();
    List<Line> lines = new ArrayList<>();
    List<String> gaps = new ArrayList<>();
    double[] factors = new double[0];
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    String[] rows = plain.split("\\R", MOST_LINES + 2);
    if (rows.length > MOST_LINES) {
      return Parsed.bad(
          List.of(
              new Problem(
                  Place.file(file),
                  "",
                  "more than " + MOST_LINES + " lines",
                  "a shorter file",
                  "")));
    }
    for (int i = 0; i < rows.length && problems.size() < MOST_PROBLEMS; i++) {
      String row = rows[i].strip();
      if (row.isEmpty() || row.startsWith("#")) {
        continue;
      }
      String[] cells = row.split(",", -1);
      Place at = new Place(file, i + 1, 1);
      if (cells.length != columns.size()) {
        String found = cells.length + " columns";
        problems.add(new Problem(at, "", found, header(columns), "Cells are divided by commas."));
        if (factors.length == 0) {
          break;
        }
      } else if (factors.length == 0) {
        factors = header(columns, cells, at, problems);
        if (!problems.isEmpty()) {
          break;
        }
      } else {
        line(columns, cells, factors, at, lines, gaps, problems);
      }
    }
    if (problems.isEmpty() && lines.isEmpty() && gaps.isEmpty()) {
      problems.add(new Problem(Place.file(file), "", "no readings", header(columns), ""));
    }
    return problems.isEmpty() ? Parsed.good(new Readings(kind, lines, gaps)) : Parsed.bad(problems);
  }

  private static double[] header(
      List<Column> columns, String[] cells, Place at, List<Problem> problems) {
    double[] factors = new double[cells.length];
    for (int c = 0; c < cells.length; c++) {
      factors[c] = columns.get(c).factor(cells[c].strip());
      if (Double.isNaN(factors[c])) {
        String expected = columns.get(c).expectation();
        problems.add(new Problem(at, "column " + (c + 1), "'" + cells[c] + "'", expected, ""));
      }
    }
    return factors;
  }

  private static void line(
      List<Column> columns,
      String[] cells,
      double[] factors,
      Place at,
      List<Line> lines,
      List<String> gaps,
      List<Problem> problems) {
    List<Double> values = new ArrayList<>();
    boolean gap = false;
    int before = problems.size();
    for (int c = 0; c < cells.length; c++) {
      Column column = columns.get(c);
      String cell = cells[c].strip();
      if (cell.isEmpty() && c == cells.length - 1) {
        gap = true;
        continue;
      }
      double value = column.value(cell, factors[c]);
      if (Double.isNaN(value)) {
        String found = cell.isEmpty() ? "nothing" : "'" + cell + "'";
        problems.add(new Problem(at, column.name(), found, column.cell(), ""));
      }
      values.add(value);
    }
    if (gap && problems.size() == before) {
      gaps.add(
          "line "
              + at.line()
              + ": no "
              + columns.get(cells.length - 1).name()
              + " ("
              + String.join(",", cells)
              + ")");
    } else if (problems.size() == before) {
      lines.add(new Line(at.line(), values));
    }
  }

  private static String header(List<Column> columns) {
    return "the columns " + String.join(", ", columns.stream().map(Column::expectation).toList());
  }
}
