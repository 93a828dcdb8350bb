package fettle.mechanics.bearings;

import fettle.mechanics.base.Rows;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Outside of a rolling bearing as the standards fix it: bore, outside diameter, width (of a thrust
 * bearing its height, of a tapered bearing its overall width).
 *
 * @param series series code, e.g. {@code 62}
 * @param type what kind of bearing the series is
 * @param bore d [mm]
 * @param outside D [mm]
 * @param width B, H or T [mm]
 * @see Sources#BOUNDARY
 */
public record BoundaryDimensions(
    String series, BearingType type, double bore, double outside, double width) {

  private static final Map<String, List<BoundaryDimensions>> SERIES = tabulated();

  private static Map<String, List<BoundaryDimensions>> tabulated() {
    Map<String, List<BoundaryDimensions>> series = new LinkedHashMap<>();
    for (Map<String, String> row : Rows.read(BoundaryDimensions.class, "boundary.csv")) {
      for (String column : List.of("series", "also")) {
        String code = row.getOrDefault(column, "");
        if (!code.isEmpty()) {
          series.computeIfAbsent(code, c -> new ArrayList<>()).add(of(code, row));
        }
      }
    }
    series.replaceAll((code, rows) -> List.copyOf(rows));
    return Collections.unmodifiableMap(series);
  }

  private static BoundaryDimensions of(String code, Map<String, String> row) {
    double[] sizes =
        Stream.of("d", "D", "width").map(row::get).mapToDouble(Double::parseDouble).toArray();
    return new BoundaryDimensions(code, BearingType.ofSeries(code), sizes[0], sizes[1], sizes[2]);
  }

  /** Returns the series that are tabulated. */
  public static List<String> seriesCodes() {
    return List.copyOf(SERIES.keySet());
  }

  /** Returns all rows of a series, smallest bore first; none if it is not tabulated. */
  public static List<BoundaryDimensions> series(String code) {
    return SERIES.getOrDefault(code, List.of());
  }

  /**
   * Returns the bearing of a series with a bore, if it is tabulated.
   *
   * @param code series code
   * @param bore d [mm]
   */
  public static Optional<BoundaryDimensions> of(String code, double bore) {
    return series(code).stream().filter(b -> b.bore == bore).findFirst();
  }

  /**
   * Returns every tabulated bearing that goes over a shaft and into a bore.
   *
   * @param shaft least bore [mm]
   * @param housing greatest outside diameter [mm]
   */
  public static List<BoundaryDimensions> fitting(double shaft, double housing) {
    Need.positive("shaft", shaft);
    Need.positive("housing", housing);
    List<BoundaryDimensions> list = new ArrayList<>();
    for (String code : SERIES.keySet()) {
      for (BoundaryDimensions b : series(code)) {
        if (b.bore >= shaft && b.outside <= housing) {
          list.add(b);
        }
      }
    }
    return List.copyOf(list);
  }

  /** Returns the bearing in one line. */
  public String text() {
    return series
        + " "
        + fettle.mechanics.base.Numbers.significant(bore, 6)
        + " x "
        + fettle.mechanics.base.Numbers.significant(outside, 6)
        + " x "
        + fettle.mechanics.base.Numbers.significant(width, 6);
  }
}
