package fettle.desk.cli;

import fettle.planning.buying.BuyingList;
import java.util.Locale;

/** The buying list as text and as JSON. */
final class TextBuying {

  private TextBuying() {}

  static String text(BuyingList buying) {
    StringBuilder out =
        new StringBuilder("TO BUY (prices are the owner's; '?' where none is given)\n");
    String row = "  [ ] %4d x %-" + widest(buying) + "s  %-24s %10s%s%n";
    String change = "";
    for (BuyingList.Line line : buying.lines()) {
      if (!line.change().equals(change)) {
        change = line.change();
        out.append('\n').append(change).append('\n');
      }
      String sum = line.sum().map(TextBuying::money).orElse("?");
      out.append(
          String.format(
              Locale.ROOT,
              row,
              line.quantity(),
              wanted(line),
              line.name(),
              sum,
              line.inHand()
                  ? "  in hand"
                  : line.days().map(d -> "  " + Words.number(d) + " d").orElse("")));
    }
    out.append("\nCOST BY CHANGE (money and own hours are kept apart)\n");
    out.append(
        String.format(
            Locale.ROOT,
            "  %-20s %12s %14s %14s %10s%n",
            "change",
            "listed",
            "without price",
            "owner says",
            "own hours"));
    for (BuyingList.Cost cost : buying.costs()) {
      out.append(
          String.format(
              Locale.ROOT,
              "  %-20s %12s %14s %14s %10s%n",
              cost.change(),
              money(cost.listed()),
              cost.unpriced() + " lines",
              cost.said().map(TextBuying::money).orElse("-"),
              Words.number(cost.hours())));
    }
    out.append(
        String.format(
            Locale.ROOT,
            "  %-20s %12s%n",
            "together",
            money(buying.costs().stream().mapToDouble(BuyingList.Cost::listed).sum())));
    return out.toString().stripTrailing();
  }

  private static String wanted(BuyingList.Line line) {
    return line.designation().isEmpty() ? line.what() : line.designation();
  }

  private static int widest(BuyingList buying) {
    return Math.max(1, buying.lines().stream().mapToInt(l -> wanted(l).length()).max().orElse(1));
  }

  private static String money(double amount) {
    return String.format(Locale.ROOT, "%.2f", amount);
  }

  static String json(BuyingList buying) {
    return Json.object(
        json -> {
          json.writeStringField("format", "fettle buying 1");
          json.writeArrayFieldStart("lines");
          for (BuyingList.Line line : buying.lines()) {
            json.writeStartObject();
            json.writeStringField("kind", line.kind().name().toLowerCase(Locale.ROOT));
            json.writeStringField("change", line.change());
            json.writeStringField("name", line.name());
            json.writeStringField("what", line.what());
            json.writeStringField("designation", line.designation());
            json.writeNumberField("quantity", line.quantity());
            Json.number(json, "price", line.price().orElse(Double.NaN));
            Json.number(json, "sum", line.sum().orElse(Double.NaN));
            Json.number(json, "days", line.days().orElse(Double.NaN));
            json.writeBooleanField("inHand", line.inHand());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeArrayFieldStart("changes");
          for (BuyingList.Cost cost : buying.costs()) {
            json.writeStartObject();
            json.writeStringField("change", cost.change());
            Json.number(json, "listed", cost.listed());
            json.writeNumberField("linesWithoutPrice", cost.unpriced());
            Json.number(json, "ownerSays", cost.said().orElse(Double.NaN));
            Json.number(json, "ownHours", cost.hours());
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }
}
