package fettle.desk.pack;

import fettle.mechanics.base.Numbers;
import fettle.planning.buying.BuyingList;
import fettle.sheets.Assembly;
import fettle.sheets.draw.Draughtsman;
import fettle.sheets.draw.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Parts list after ISO 7573, read downwards, and the buying list. */
final class ListChapters {

  private ListChapters() {}

  static Chapter parts(PackSource source) {
    List<List<String>> rows = new ArrayList<>();
    double mass = 0;
    int number = 0;
    for (Map.Entry<String, Item> line :
        Assembly.lines(source.change(), source.parts()).entrySet()) {
      Item item = line.getValue();
      number++;
      double one = item.recipe() == null ? 0 : Draughtsman.mass(item.recipe()) * 1e6;
      mass += item.quantity() * one;
      rows.add(
          List.of(
              String.valueOf(number),
              String.valueOf(item.quantity()),
              item.designation(),
              item.number(),
              item.material(),
              item.stock(),
              one > 0 ? grams(one) : "",
              item.from() == Item.From.BUY ? "buy" : "make"));
    }
    List<Block> blocks = new ArrayList<>();
    if (rows.isEmpty()) {
      blocks.add(new Block.Prose("The change makes and buys nothing."));
      return Chapter.of("Parts list", blocks);
    }
    rows.add(List.of("Made parts together: " + grams(mass)));
    blocks.add(
        new Block.Grid(
            List.of(
                Block.Column.right("item", 10),
                Block.Column.right("qty", 10),
                Block.Column.left("designation", 48),
                Block.Column.left("drawing or standard", 34),
                Block.Column.left("material", 26),
                Block.Column.left("stock", 32),
                Block.Column.right("mass", 16),
                Block.Column.left("", 11)),
            rows));
    return Chapter.of("Parts list", blocks);
  }

  private static String grams(double grams) {
    return grams < 1000 ? Numbers.fixed(grams, 0) + " g" : Numbers.fixed(grams / 1000, 2) + " kg";
  }

  static Chapter buying(PackSource source) {
    BuyingList buying = BuyingList.of(source.book(), List.of(source.change().key()));
    boolean prices = source.shows(Held.PRICES);
    List<Block.Column> columns =
        new ArrayList<>(
            List.of(
                Block.Column.right("qty", 10),
                Block.Column.left("what", 66),
                Block.Column.left("designation", 60),
                Block.Column.right("days", 12)));
    if (prices) {
      columns.add(Block.Column.right("each", 18));
      columns.add(Block.Column.right("sum", 18));
    }
    List<List<String>> rows = new ArrayList<>();
    for (BuyingList.Line line : buying.lines()) {
      List<String> row =
          new ArrayList<>(
              List.of(
                  String.valueOf(line.quantity()),
                  line.what(),
                  line.designation(),
                  line.days().map(d -> Numbers.significant(d, 4)).orElse("")));
      if (prices) {
        row.add(line.price().map(ListChapters::money).orElse("?"));
        row.add(line.inHand() ? "in hand" : line.sum().map(ListChapters::money).orElse("?"));
      }
      rows.add(row);
    }
    List<Block> blocks = new ArrayList<>();
    if (rows.isEmpty()) {
      blocks.add(new Block.Prose("Nothing is to be bought."));
    } else {
      blocks.add(new Block.Grid(columns, rows));
    }
    buying.costs().forEach(c -> blocks.addAll(costs(source, c)));
    return Chapter.of("Buying list", blocks);
  }

  private static List<Block> costs(PackSource source, BuyingList.Cost cost) {
    List<Block> blocks = new ArrayList<>();
    if (source.shows(Held.PRICES)) {
      String open = cost.unpriced() > 0 ? "; " + cost.unpriced() + " lines have no price yet" : "";
      blocks.add(
          new Block.Prose(
              "The list comes to "
                  + money(cost.listed())
                  + " EUR at the owner's prices"
                  + open
                  + cost.said()
                      .map(s -> "; the owner reckons with " + money(s) + " EUR in all")
                      .orElse("")
                  + ". Own hours are not counted as money."));
    }
    if (source.shows(Held.HOURS)) {
      blocks.add(new Block.Prose("Own hours: " + Numbers.significant(cost.hours(), 4) + " h."));
    }
    return blocks;
  }

  private static String money(double amount) {
    return Numbers.fixed(amount, 2);
  }
}
