package fettle.machine.trials;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A column of readings.
 *
 * @param name its name, without unit
 * @param units the units it may be written in, and the factor to the coherent unit; empty if none
 * @param words the words it may hold; empty if it holds numbers
 * @param whole true if it holds whole numbers
 * @param signOnly true if it holds 1 or -1 only
 */
public record Column(
    String name, Map<String, Double> units, List<String> words, boolean whole, boolean signOnly) {

  private static final String DATE = "a date such as 2026-03-15";
  private static final List<String> BENCH = List.of("mm", "deg", "N", "um_per_m", "s", "degC");
  private static final Map<String, Double> LENGTHS = Map.of("mm", 1.0, "um", 1e-3, "in", 25.4);
  private static final Map<String, Double> ANGLES =
      Map.of("deg", Math.PI / 180, "turns", 2 * Math.PI);
  private static final Map<String, Double> FORCES = Map.of("N", 1.0, "kN", 1000.0);

  private static final Map<String, Double> SLOPES = Map.of("mm_per_m", 1e-3, "um_per_m", 1e-6);
  private static final Map<String, Double> TIMES = Map.of("s", 1.0, "min", 60.0, "h", 3600.0);
  private static final Map<String, Double> TEMPERATURES = Map.of("degC", 1.0);

  static Column slope(String name) {
    return new Column(name, SLOPES, List.of(), false, false);
  }

  static Column time(String name) {
    return new Column(name, TIMES, List.of(), false, false);
  }

  static Column temperature(String name) {
    return new Column(name, TEMPERATURES, List.of(), false, false);
  }

  static Column date(String name) {
    return new Column(name, Map.of(), List.of(DATE), false, false);
  }

  static Column count(String name) {
    return new Column(name, Map.of(), List.of(), true, false);
  }

  static Column direction(String name) {
    return new Column(name, Map.of(), List.of(), true, true);
  }

  static Column number(String name) {
    return new Column(name, Map.of(), List.of(), false, false);
  }

  static Column length(String name) {
    return new Column(name, LENGTHS, List.of(), false, false);
  }

  static Column angle(String name) {
    return new Column(name, ANGLES, List.of(), false, false);
  }

  static Column force(String name) {
    return new Column(name, FORCES, List.of(), false, false);
  }

  static Column word(String name, String... words) {
    return new Column(name, Map.of(), List.of(words), false, false);
  }

  /**
   * Returns its heading in the unit that is usual at the bench.
   *
   * @param preferred units the owner prefers, if the column may be written in them
   */
  public String heading(List<String> preferred) {
    return Stream.concat(preferred.stream(), BENCH.stream())
        .filter(units::containsKey)
        .findFirst()
        .map(u -> name + "_" + u)
        .orElse(name);
  }

  /** Tells whether somebody has to say where it is read; ways and words are all gone through. */
  boolean isAsked() {
    return !signOnly && (words.isEmpty() || words.contains(DATE));
  }

  /** Returns how the header may name it. */
  String expectation() {
    return units.isEmpty()
        ? name
        : String.join(" or ", units.keySet().stream().sorted().map(u -> name + "_" + u).toList());
  }

  /**
   * Returns the factor to the coherent unit for a header cell, NaN if the cell does not name this
   * column.
   *
   * @return factor [coherent/unit]
   */
  double factor(String header) {
    if (units.isEmpty()) {
      return header.toLowerCase(Locale.ROOT).equals(name) ? 1 : Double.NaN;
    }
    for (Map.Entry<String, Double> unit : units.entrySet()) {
      if (header.equals(name + "_" + unit.getKey())) {
        return unit.getValue();
      }
    }
    return Double.NaN;
  }

  /** Returns what a cell of this column should hold. */
  String cell() {
    return words.contains(DATE)
        ? DATE
        : !words.isEmpty()
            ? "one of: " + String.join(", ", words)
            : signOnly ? "1 or -1" : whole ? "a whole number from 0 to 9999" : "a number";
  }

  /**
   * Returns the value of a cell, NaN if it holds something else.
   *
   * @param text the cell
   * @param factor factor to the coherent unit [coherent/unit]
   * @return value, or the place of the word in the list [coherent]
   */
  double value(String text, double factor) {
    if (words.contains(DATE)) {
      return day(text);
    }
    if (!words.isEmpty()) {
      int at = words.indexOf(text);
      return at < 0 ? Double.NaN : at;
    }
    if (!text.matches(
        whole
            ? "[+-]?\\d{1,4}"
            : "[+-]?(\\d{1,12}(\\.\\d{0,12})?|\\.\\d{1,12})([eE][+-]?\\d{1,2})?")) {
      return Double.NaN;
    }
    double value = Double.parseDouble(text);
    boolean wrong = signOnly ? Math.abs(value) != 1 : whole ? value < 0 : !(Math.abs(value) <= 1e9);
    return wrong ? Double.NaN : value * factor;
  }

  /** Returns the days since 1970 of a date, NaN if it is none. */
  private static double day(String text) {
    try {
      return LocalDate.parse(text).toEpochDay();
    } catch (DateTimeParseException e) {
      return Double.NaN;
    }
  }
}
