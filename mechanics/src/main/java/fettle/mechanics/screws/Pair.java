package fettle.mechanics.screws;

import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Rows;
import java.util.List;
import java.util.Map;

/** Screw and nut materials that run together, with what is known of them. */
public enum Pair {
  STEEL_BRONZE("steel-bronze"),
  STEEL_BRASS("steel-brass"),
  STEEL_CAST_IRON("steel-cast_iron"),
  STEEL_STEEL("steel-steel"),
  STEEL_POM("steel-pom");

  private static final List<Map<String, String>> FRICTION = Rows.read(Pair.class, "friction.csv");
  private static final List<Map<String, String>> NUTS = Rows.read(Pair.class, "nuts.csv");

  private static final double HAND_FEED = 5;
  private static final double SLOW = 50;

  private final String words;

  Pair(String words) {
    this.words = words;
  }

  /** State of the flanks. */
  public enum Lubrication {
    OILED,
    DRY
  }

  /** Returns the name of the pair. */
  public String words() {
    return words;
  }

  /** Returns the pair of that name. */
  public static Pair of(String words) {
    for (Pair pair : values()) {
      if (pair.words.equals(words)) {
        return pair;
      }
    }
    throw new IllegalArgumentException(
        "pair: found '" + words + "', expected " + List.of(values()));
  }

  /** Returns the names of all pairs. */
  static String[] names() {
    return List.of(values()).stream().map(Pair::words).toArray(String[]::new);
  }

  /** Returns the range of the coefficient of friction. */
  public Interval friction(Lubrication state) {
    Map<String, String> row = row(FRICTION);
    return state == Lubrication.OILED
        ? interval(row, "oiledLow", "oiledHigh")
        : interval(row, "dryLow", "dryHigh");
  }

  /**
   * Returns the range of nut pressure that does not seize, MPa.
   *
   * @param speed sliding speed of the flanks [mm/s]
   */
  public Interval pressure(double speed) {
    Map<String, String> row = row(NUTS);
    if (speed <= HAND_FEED) {
      return interval(row, "handLow", "handHigh");
    }
    return speed <= SLOW
        ? interval(row, "slowLow", "slowHigh")
        : interval(row, "fastLow", "fastHigh");
  }

  /**
   * Returns the pressure below which a slide keeps its setting for years.
   *
   * @return pressure [MPa]
   */
  public double keepingPressure() {
    return Double.parseDouble(row(NUTS).getOrDefault("keep", ""));
  }

  /** Returns the range of the wear coefficient, mm2/N. */
  public Interval wear() {
    Interval squareMetres = interval(row(NUTS), "wearLow", "wearHigh");
    return new Interval(1e6 * squareMetres.low(), 1e6 * squareMetres.high());
  }

  private Map<String, String> row(List<Map<String, String>> rows) {
    return rows.stream()
        .filter(r -> words.equals(r.get("pair")))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no row for " + words));
  }

  private static Interval interval(Map<String, String> row, String low, String high) {
    return new Interval(
        Double.parseDouble(row.getOrDefault(low, "")),
        Double.parseDouble(row.getOrDefault(high, "")));
  }
}
