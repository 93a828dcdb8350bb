package fettle.mechanics.bearings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

  private static final Map<String, String> ROWS =
      Map.ofEntries(
          Map.entry(
              "618", "10-19-5 12-21-5 15-24-5 17-26-5 20-32-7 25-37-7 30-42-7 35-47-7 40-52-7"),
          Map.entry(
              "619", "10-22-6 12-24-6 15-28-7 17-30-7 20-37-9 25-42-9 30-47-9 35-55-10 40-62-12"),
          Map.entry(
              "60",
              "7-19-6 8-22-7 9-24-7 10-26-8 12-28-8 15-32-9 17-35-10 20-42-12 25-47-12 30-55-13"
                  + " 35-62-14 40-68-15"),
          Map.entry(
              "62",
              "3-10-4 4-13-5 5-16-5 6-19-6 10-30-9 12-32-10 15-35-11 17-40-12 20-47-14 22-50-14"
                  + " 25-52-15 30-62-16 35-72-17 40-80-18"),
          Map.entry(
              "63",
              "10-35-11 12-37-12 15-42-13 17-47-14 20-52-15 25-62-17 30-72-19 35-80-21 40-90-23"),
          Map.entry("70", "=60"),
          Map.entry("72", "=62"),
          Map.entry("73", "=63"),
          Map.entry(
              "511",
              "10-24-9 12-26-9 15-28-9 17-30-9 20-35-10 25-42-11 30-47-11 35-52-12 40-60-13"),
          Map.entry(
              "302",
              "15-35-11.75 17-40-13.25 20-47-15.25 25-52-16.25 30-62-17.25 35-72-18.25"
                  + " 40-80-19.75"),
          Map.entry("320", "20-42-15 25-47-15 30-55-17 35-62-18 40-68-19"));

  private static final List<String> ORDER =
      List.of("618", "619", "60", "62", "63", "70", "72", "73", "511", "302", "320");

  /** Returns the series that are tabulated. */
  public static List<String> seriesCodes() {
    return ORDER;
  }

  /** Returns all rows of a series, smallest bore first; none if it is not tabulated. */
  public static List<BoundaryDimensions> series(String code) {
    String rows = ROWS.get(code);
    if (rows == null) {
      return List.of();
    }
    boolean shared = rows.startsWith("=");
    String text = shared ? ROWS.getOrDefault(rows.substring(1), "") : rows;
    List<BoundaryDimensions> list = new ArrayList<>();
    for (String row : List.of(text.split(" ", -1))) {
      List<String> cells = List.of(row.split("-", -1));
      double bore = Double.parseDouble(cells.get(0));
      if (!shared || (bore >= 10 && bore != 22)) {
        list.add(
            new BoundaryDimensions(
                code,
                BearingType.ofSeries(code),
                bore,
                Double.parseDouble(cells.get(1)),
                Double.parseDouble(cells.get(2))));
      }
    }
    return List.copyOf(list);
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
    for (String code : ORDER) {
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
