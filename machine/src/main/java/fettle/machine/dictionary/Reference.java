package fettle.machine.dictionary;

import java.util.Map;
import java.util.function.Function;

/** Writes the dictionary as a reference that people read: every key of every block of a book. */
public final class Reference {

  private Reference() {}

  /** Returns the reference as Markdown. */
  public static String of(Dictionary dictionary) {
    StringBuilder text = new StringBuilder();
    text.append("# The keys of a book\n\n");
    text.append("Made from the program's own table of keys; do not edit it by hand.\n\n");
    text.append(
        "A book is a folder: `machine.yaml` holds the lathe as bought (block *machine*),\n");
    text.append(
        "`changes/*.yaml` one change each (block *change*), `shop.yaml` the workshop (*shop*),\n");
    text.append("`parts/*.yaml` how each part is made ([recipe.md](recipe.md)).\n");
    text.append(
        "A quantity carries its unit: `2 mm`, `1 3/4 in`, `20 DP`, `8 tpi`; a doubt follows\n");
    text.append(
        "it (`0.2 mm ± 0.05 mm`), or a range is given (`0.2 to 0.3 mm`). Any unit of the\n");
    text.append(
        "same kind will do; the table shows the usual one, in which the bounds are given.\n");
    dictionary.shapes().forEach((shape, rows) -> block(text, shape, rows));
    return text.toString();
  }

  private static void block(StringBuilder text, String shape, Map<String, Row> rows) {
    text.append("\n## ").append(shape.replace("/", ", kind ")).append("\n\n");
    text.append("| key | holds | unit | bounds | if left out | meaning |\n");
    text.append("|---|---|---|---|---|---|\n");
    for (Row row : rows.values()) {
      String left = row.required() ? "*must be written*" : row.standard();
      text.append("| `").append(row.key()).append("` | ").append(Schema.said(row));
      text.append(" | ").append(row.unit().symbol()).append(" | ").append(bounds(row));
      text.append(" | ").append(left).append(" | ").append(row.meaning()).append(" |\n");
    }
  }

  private static String bounds(Row row) {
    Function<Double, String> plain = b -> fettle.mechanics.base.Numbers.significant(b, 10);
    String low = row.low().map(plain).orElse("");
    String high = row.high().map(plain).orElse("");
    return low.isEmpty() && high.isEmpty() ? "" : low + " to " + high;
  }
}
