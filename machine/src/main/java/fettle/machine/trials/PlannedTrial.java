package fettle.machine.trials;

import fettle.machine.text.TextEdit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A trial laid out before it is made: its description, and a row for every reading that is to be
 * taken, in the order one takes them.
 *
 * @param kind how it is tested
 * @param values what the description says beside the kind, by key
 * @param places what was typed for each column that has to be asked for: how many runs, or numbers
 *     one after another, or {@code 0 to 300 by 25}
 * @param preferred units the owner prefers, where a column may be written in them
 */
public record PlannedTrial(
    Kind kind, Map<String, String> values, Map<String, String> places, List<String> preferred) {

  private static final int MOST_ROWS = 2_000;
  private static final int MOST_RUNS = 100;
  private static final Pattern RANGE = Pattern.compile("(-?[\\d.]+) to (-?[\\d.]+) by ([\\d.]+)");
  private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\d][\\p{L}\\d .,/µ°%±+()-]*");

  /** Keeps its own copies. */
  public PlannedTrial {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    places = Map.copyOf(places);
    preferred = List.copyOf(preferred);
  }

  /** Returns the columns of a kind that have to be asked for. */
  public static List<Column> asked(Kind kind) {
    List<Column> places = kind.columns().subList(0, kind.columns().size() - 1);
    return places.stream().filter(Column::isAsked).toList();
  }

  /** Returns the text of its description. */
  public String description() {
    StringBuilder text = new StringBuilder();
    Map<String, String> all = new LinkedHashMap<>(values);
    all.put("kind", kind.word());
    all.forEach(
        (key, value) -> {
          if (!value.isBlank()) {
            String written = value.strip();
            boolean plain = PLAIN.matcher(written).matches();
            text.append(key).append(": ");
            text.append(plain ? written : TextEdit.quoted(written)).append('\n');
          }
        });
    return text.toString();
  }

  /**
   * Returns the text of its readings, all of them still empty.
   *
   * @throws IllegalArgumentException if a place cannot be read, or there are too many
   */
  public String readings() {
    List<String> rows = new ArrayList<>();
    rows.add(String.join(",", kind.columns().stream().map(c -> c.heading(preferred)).toList()));
    lay(0, List.of(), rows);
    return String.join("\n", rows) + "\n";
  }

  private void lay(int column, List<String> before, List<String> rows) {
    if (column == kind.columns().size() - 1) {
      if (rows.size() > MOST_ROWS) {
        throw new IllegalArgumentException(
            "readings: more than " + MOST_ROWS + ", expected fewer runs or places");
      }
      rows.add(String.join(",", before) + ",");
      return;
    }
    for (String place : places(kind.columns().get(column), before)) {
      List<String> more = new ArrayList<>(before);
      more.add(place);
      lay(column + 1, more, rows);
    }
  }

  /** Returns the cells of a column; on the way back the places are met in the opposite order. */
  private List<String> places(Column column, List<String> before) {
    if (column.signOnly()) {
      return List.of("1", "-1");
    } else if (!column.isAsked()) {
      return column.words();
    }
    List<String> cells = cells(column, places.getOrDefault(column.name(), "").strip());
    if (kind == Kind.AXIAL_FLOAT && before.get(0).startsWith("pu")) {
      return cells.subList(0, 1);
    }
    if (comesBack(before)) {
      List<String> back = new ArrayList<>(cells);
      Collections.reverse(back);
      return back;
    }
    return cells;
  }

  private boolean comesBack(List<String> before) {
    for (int i = 0; i < before.size(); i++) {
      if (kind.columns().get(i).signOnly()) {
        return before.get(i).equals("-1");
      }
    }
    return false;
  }

  private static List<String> cells(Column column, String typed) {
    List<String> cells = new ArrayList<>();
    Matcher range = RANGE.matcher(typed);
    if (column.whole() && typed.matches("\\d{1,3}")) {
      int runs = Integer.parseInt(typed);
      if (runs < 1 || runs > MOST_RUNS) {
        throw wrong(column, typed);
      }
      for (int i = 1; i <= runs; i++) {
        cells.add(String.valueOf(i));
      }
    } else if (range.matches()) {
      cells.addAll(range(column, typed, range));
    } else {
      cells.addAll(List.of(typed.split("[\\s;]+", -1)));
    }
    if (cells.size() > MOST_ROWS
        || cells.stream().anyMatch(c -> Double.isNaN(column.value(c, 1)))) {
      throw wrong(column, typed);
    }
    return cells;
  }

  private static List<String> range(Column column, String typed, Matcher range) {
    try {
      java.math.BigDecimal at = new java.math.BigDecimal(range.group(1));
      java.math.BigDecimal end = new java.math.BigDecimal(range.group(2));
      java.math.BigDecimal step = new java.math.BigDecimal(range.group(3));
      List<String> cells = new ArrayList<>();
      while (step.signum() > 0 && at.compareTo(end) <= 0 && cells.size() <= MOST_ROWS) {
        cells.add(at.toPlainString());
        at = at.add(step);
      }
      if (cells.isEmpty()) {
        throw wrong(column, typed);
      }
      return cells;
    } catch (NumberFormatException e) {
      throw wrong(column, typed);
    }
  }

  private static IllegalArgumentException wrong(Column column, String typed) {
    String expected =
        column.whole()
            ? "how many, from 1 to " + MOST_RUNS
            : column.words().isEmpty()
                ? "numbers one after another such as '0 25 50', or '0 to 300 by 25'"
                : column.cell();
    String shown = typed.length() > 60 ? typed.substring(0, 60) + "…" : typed;
    return new IllegalArgumentException(
        column.name() + ": found '" + shown + "', expected " + expected);
  }
}
