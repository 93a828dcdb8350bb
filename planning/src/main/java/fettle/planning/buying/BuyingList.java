package fettle.planning.buying;

import fettle.machine.dictionary.Values;
import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.machine.text.Quantity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The buying list of changes.
 *
 * @param lines what is to be bought
 * @param costs what each change costs
 */
public record BuyingList(List<Line> lines, List<Cost> costs) {

  private static final double DAY = 86400;
  private static final double HOUR = 3600;

  /** What a line is for. */
  public enum Kind {
    /** Bought ready. */
    PURCHASE,
    /** Stock that a part is made from. */
    STOCK
  }

  /**
   * One thing to buy.
   *
   * @param kind what it is for
   * @param change the change
   * @param name its name in the book
   * @param what what it is
   * @param designation standard designation, or stock and its material; may be empty
   * @param quantity how many
   * @param price price of one, if the owner says one [money]
   * @param days days to arrival, if the owner says so [d]
   * @param inHand whether it is there already
   */
  public record Line(
      Kind kind,
      String change,
      String name,
      String what,
      String designation,
      int quantity,
      Optional<Double> price,
      Optional<Double> days,
      boolean inHand) {

    /** Returns what the line costs; empty if the owner gives no price. */
    public Optional<Double> sum() {
      return inHand ? Optional.of(0.0) : price.map(p -> p * quantity);
    }
  }

  /**
   * What a change costs; money and hours are kept apart.
   *
   * @param change the change
   * @param listed sum of the lines that have a price [money]
   * @param unpriced lines without a price
   * @param said what the owner says that it costs, if so [money]
   * @param hours the owner's own hours [h]
   */
  public record Cost(
      String change, double listed, int unpriced, Optional<Double> said, double hours) {}

  /** Keeps its own copies. */
  public BuyingList {
    lines = List.copyOf(lines);
    costs = List.copyOf(costs);
  }

  /** Makes the list of some changes. */
  public static BuyingList of(Book book, Collection<String> keys) {
    List<Line> lines = new ArrayList<>();
    List<Cost> costs = new ArrayList<>();
    for (Change change : book.changes().values()) {
      if (keys.contains(change.key())) {
        List<Line> own = lines(change);
        lines.addAll(own);
        costs.add(cost(change, own));
      }
    }
    return new BuyingList(lines, costs);
  }

  private static List<Line> lines(Change change) {
    List<Line> lines = new ArrayList<>();
    change
        .values()
        .map("purchases")
        .forEach(
            (name, p) ->
                lines.add(
                    new Line(
                        Kind.PURCHASE,
                        change.key(),
                        name,
                        p.needText("what"),
                        p.text("designation").orElse(""),
                        p.needCount("quantity"),
                        p.quantity("price").map(Quantity::value),
                        p.quantity("lead time").map(q -> q.value() / DAY),
                        p.flag("in hand"))));
    change.values().map("parts").forEach((name, p) -> lines.add(stock(change, name, p)));
    return lines;
  }

  private static Line stock(Change change, String name, Values part) {
    String stock = part.text("stock").orElse("");
    String material = part.text("material").orElse("");
    String designation = (material + " " + stock).strip();
    return new Line(
        Kind.STOCK,
        change.key(),
        name,
        "Stock for: " + part.needText("what"),
        designation,
        part.needCount("quantity"),
        part.quantity("price").map(Quantity::value),
        Optional.empty(),
        false);
  }

  private static Cost cost(Change change, List<Line> lines) {
    double listed = lines.stream().mapToDouble(l -> l.sum().orElse(0.0)).sum();
    int unpriced = (int) lines.stream().filter(l -> l.sum().isEmpty()).count();
    double steps =
        change.values().map("steps").values().stream()
            .mapToDouble(s -> s.quantity("hours").map(Quantity::value).orElse(0.0))
            .sum();
    double hours =
        steps > 0 ? steps : change.values().quantity("hours").map(Quantity::value).orElse(0.0);
    return new Cost(
        change.key(),
        listed,
        unpriced,
        change.values().quantity("cost").map(Quantity::value),
        hours / HOUR);
  }
}
