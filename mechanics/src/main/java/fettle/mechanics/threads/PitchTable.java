package fettle.mechanics.threads;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A table by pitch.
 *
 * @param rows cells by column; the column P holds the pitch in mm
 */
record PitchTable(List<Map<String, String>> rows) {

  /**
   * Returns the whole number in a cell, if the table has one there.
   *
   * @param p pitch [mm]
   * @param column name of the column
   */
  Optional<Integer> value(double p, String column) {
    return decimal(p, column).map(v -> (int) Math.round(v));
  }

  /**
   * Returns the number in a cell, if the table has one there.
   *
   * @param p pitch [mm]
   * @param column name of the column
   */
  Optional<Double> decimal(double p, String column) {
    return rows.stream()
        .filter(r -> matches(r, p))
        .map(r -> r.getOrDefault(column, ""))
        .filter(c -> !c.isEmpty())
        .map(Double::valueOf)
        .findFirst();
  }

  /**
   * Tells whether the table lists the pitch.
   *
   * @param p pitch [mm]
   */
  boolean lists(double p) {
    return rows.stream().anyMatch(r -> matches(r, p));
  }

  private static boolean matches(Map<String, String> row, double p) {
    return Math.abs(Double.parseDouble(row.getOrDefault("P", "0")) - p) < 1e-6;
  }
}
