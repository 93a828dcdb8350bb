package fettle.desk.web;

import fettle.desk.page.ValuePage;
import fettle.machine.dictionary.Row;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Numbers;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Makes the field of a form for a value, by what the dictionary says of it. */
final class Fields {

  private static final Pattern NUMBER = Pattern.compile("(-?\\d+(?:\\.\\d+)?)(\\s*\\D.*)?");
  private static final Pattern TRAPEZOIDAL = Pattern.compile("(Tr \\d+x)(\\d+)( LH)?");
  private static final double ROOM = 2;

  private Fields() {}

  static ValuePage.Field of(Visit visit, Spot spot, String name, String typed) {
    return new ValuePage.Field(
        name,
        spot.file(),
        spot.path(),
        spot.within().replace(".", " · "),
        spot.scalar().text(),
        typed,
        spot.row().map(Row::meaning).orElse(""),
        spot.row().map(Fields::expects).orElse("a text"),
        stands(spot),
        visit.opened().mark(spot.file()),
        spot.row().map(Fields::words).orElse(List.of()),
        slide(spot.row(), typed));
  }

  private static String stands(Spot spot) {
    String text = spot.scalar().text();
    if (spot.kind() == Spot.Kind.WRITTEN) {
      return "Stands now: " + text + ", in " + spot.scalar().at().text();
    }
    return text.isEmpty()
        ? "Not written in the book yet"
        : "Not written in the book, so that the standard holds: " + text;
  }

  private static List<String> words(Row row) {
    return row.type().startsWith("word:")
        ? row.words()
        : row.type().equals("flag") ? List.of("yes", "no") : List.of();
  }

  /** Says what the dictionary expects: kind, unit, bounds. */
  static String expects(Row row) {
    String type = row.type();
    String unit = row.unit().symbol().isEmpty() ? "" : " " + row.unit().symbol();
    String low = row.low().map(v -> Numbers.significant(v, 10)).orElse("");
    String high = row.high().map(v -> Numbers.significant(v, 10)).orElse("");
    String range = low.isEmpty() || high.isEmpty() ? "" : ", from " + low + " to " + high + unit;
    if (type.endsWith("count")) {
      return "a whole number" + range;
    } else if (number(type)) {
      return unit.isEmpty()
          ? "a number" + range
          : "a " + type + " with its unit, such as '2" + unit + "'" + range;
    } else if (type.startsWith("word:")) {
      return "one of " + String.join(", ", row.words());
    }
    return switch (type) {
      case "flag" -> "yes or no";
      case "thread", "fit", "bearing", "material" -> "the designation of a " + type;
      default -> "a text";
    };
  }

  private static boolean number(String type) {
    String name = type.toUpperCase(Locale.ROOT);
    return java.util.Arrays.stream(Dimension.values()).anyMatch(d -> d.name().equals(name));
  }

  static ValuePage.@Nullable Slide slide(Spot spot) {
    return slide(spot.row(), spot.scalar().text());
  }

  /** Returns a slider from half to twice the value, within the bounds of the dictionary. */
  private static ValuePage.@Nullable Slide slide(Optional<Row> row, String text) {
    if (row.isEmpty()) {
      return null;
    }
    String type = row.get().type();
    Matcher screw = TRAPEZOIDAL.matcher(text);
    if (type.equals("thread") && screw.matches()) {
      String hand = Optional.ofNullable(screw.group(3)).orElse("");
      return new ValuePage.Slide("1", "8", "1", screw.group(2), screw.group(1) + "#" + hand);
    }
    Matcher m = NUMBER.matcher(text.strip());
    boolean count = type.endsWith("count");
    if (!(count || number(type)) || !m.matches()) {
      return null;
    }
    double at = Double.parseDouble(m.group(1));
    if (at == 0) {
      return null;
    }
    String rest = Optional.ofNullable(m.group(2)).orElse("");
    double low = Math.min(at / ROOM, at * ROOM);
    double high = Math.max(at / ROOM, at * ROOM);
    if (count) {
      low = Math.max(Math.floor(low), row.get().low().orElse(0.0));
      high = Math.min(Math.ceil(high), row.get().high().orElse(1e6));
      return slide(low, high, 1, at, rest);
    }
    double step = Math.pow(10, Math.floor(Math.log10(Math.abs(at))) - 2);
    return slide(Math.floor(low / step) * step, Math.ceil(high / step) * step, step, at, rest);
  }

  private static ValuePage.Slide slide(
      double low, double high, double step, double at, String rest) {
    return new ValuePage.Slide(
        Numbers.significant(low, 8),
        Numbers.significant(high, 8),
        Numbers.significant(step, 6),
        Numbers.significant(at, 8),
        "#" + rest);
  }
}
