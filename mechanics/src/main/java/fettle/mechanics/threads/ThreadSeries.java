package fettle.mechanics.threads;

import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Rows;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which pitches the standards list for which diameters. */
public final class ThreadSeries {

  private record Entry(String form, String series, String name, Ratio diameter, Ratio pitch) {}

  private static final List<Entry> ENTRIES = entries();

  private ThreadSeries() {}

  /** Returns the pitch of a diameter in a series, if it is listed once. */
  static Optional<Ratio> pitch(String form, String series, Ratio diameter) {
    return ENTRIES.stream()
        .filter(e -> e.form.equals(form) && e.series.equals(series))
        .filter(e -> e.diameter.sameAs(diameter))
        .map(Entry::pitch)
        .findFirst();
  }

  /** Returns the pitches listed for a diameter, coarsest series first. */
  public static List<Ratio> pitches(ThreadForm form, Ratio diameter) {
    return ENTRIES.stream()
        .filter(e -> e.form.equals(form.symbol()) && e.diameter.sameAs(diameter))
        .map(Entry::pitch)
        .toList();
  }

  /** Tells whether the general plan lists this pitch for this diameter. */
  static boolean lists(ThreadForm form, Ratio diameter, Ratio pitch) {
    return pitches(form, diameter).stream().anyMatch(p -> p.sameAs(pitch));
  }

  /** Returns the Unified series that lists diameter and pitch, if one does. */
  static Optional<String> unifiedSeries(Ratio diameter, Ratio pitch) {
    return ENTRIES.stream()
        .filter(e -> e.form.equals("UN"))
        .filter(e -> e.diameter.sameAs(diameter) && e.pitch.sameAs(pitch))
        .map(Entry::series)
        .findFirst();
  }

  /** Tells whether a whole number with so many threads per inch is a numbered size. */
  static boolean isNumberedSize(String number, Ratio pitch) {
    return ENTRIES.stream().anyMatch(e -> e.name.equals("#" + number) && e.pitch.sameAs(pitch));
  }

  private static List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    for (Map<String, String> row : Rows.read(ThreadSeries.class, "series.csv")) {
      String form = row.getOrDefault("form", "");
      String size = row.getOrDefault("diameter", "");
      Ratio pitch = Ratio.of(new BigDecimal(row.getOrDefault("pitch", "")));
      boolean metric = form.equals("M") || form.equals("Tr");
      entries.add(
          new Entry(
              form,
              row.getOrDefault("series", ""),
              size,
              metric ? Ratio.of(new BigDecimal(size)) : inches(size),
              metric ? pitch : Ratio.INCH.over(pitch)));
    }
    return List.copyOf(entries);
  }

  /** Reads {@code 7/16}, {@code 1 3/4}, {@code 0.4375} or {@code #10} as inches. */
  static Ratio inches(String size) {
    if (size.startsWith("#")) {
      return Ratio.of(60 + 13 * Long.parseLong(size.substring(1)), 1000).times(Ratio.INCH);
    }
    String[] parts = size.trim().split("[ -]+", -1);
    java.math.BigDecimal whole = BigDecimal.ZERO;
    String part = parts[parts.length - 1];
    if (parts.length == 2) {
      whole = new BigDecimal(parts[0]);
    }
    String[] fraction = part.split("/", -1);
    Ratio value =
        fraction.length == 2
            ? Ratio.of(
                Long.parseLong(fraction[0]) + whole.longValueExact() * Long.parseLong(fraction[1]),
                Long.parseLong(fraction[1]))
            : Ratio.of(new BigDecimal(part));
    return value.times(Ratio.INCH);
  }
}
