package fettle.desk.web;

import fettle.machine.lathe.MachineReader;
import fettle.machine.state.Book;
import fettle.machine.text.Node;
import fettle.machine.text.Quantity;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Topics;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which of the values that are not well known matters most: each is moved by the whole of its
 * doubt, and what the figures do is added up, each figure by its own share and none counted above
 * one.
 */
final class Unknowns {

  /** Doubt from which on a value counts as not well known, as a share of it. */
  static final double VAGUE = 0.1;

  private static final int MOST = 60;

  private Unknowns() {}

  /**
   * A value that is not well known.
   *
   * @param spot the value
   * @param figures how many figures it moves by more than a hundredth
   * @param most the figure it moves most, in words
   * @param share by how much it moves that one [-]
   * @param sum by how much it moves all of them together [-]
   */
  record Unknown(Spot spot, int figures, String most, double share, double sum) {}

  /** Returns the values that are not well known, the one that matters most first. */
  static List<Unknown> of(Opened opened, List<Spot> spots) {
    Book book = opened.book();
    Node tree = book.machine();
    Map<String, Double> now = figures(book, tree);
    List<Unknown> unknowns = new ArrayList<>();
    for (Spot spot : spots) {
      Optional<Quantity> quantity = Roots.quantity(spot).filter(q -> vague(q));
      if (quantity.isPresent() && unknowns.size() < MOST) {
        Quantity q = quantity.get();
        String moved =
            java.math.BigDecimal.valueOf(q.unit().fromCoherent(q.value() + q.doubt()))
                    .round(new java.math.MathContext(12))
                    .toPlainString()
                + " "
                + q.unit().symbol();
        unknowns.add(of(spot, now, figures(book, Roots.replaced(tree, spot.scalar().at(), moved))));
      }
    }
    unknowns.sort(Comparator.comparingDouble(Unknown::sum).reversed());
    return List.copyOf(unknowns);
  }

  static boolean vague(Quantity quantity) {
    return quantity.doubt() >= VAGUE * Math.abs(quantity.value());
  }

  private static Unknown of(Spot spot, Map<String, Double> now, Map<String, Double> then) {
    int figures = 0;
    double sum = 0;
    double share = 0;
    String most = "";
    for (Map.Entry<String, Double> one : now.entrySet()) {
      double moved = then.getOrDefault(one.getKey(), one.getValue());
      double by = Math.min(1, Math.abs(moved - one.getValue()) / Math.abs(one.getValue()));
      if (by > 0.01) {
        figures++;
        sum += by;
        if (by > share) {
          share = by;
          most = one.getKey();
        }
      }
    }
    return new Unknown(spot, figures, most, share, sum);
  }

  /** Returns the figures that are numbers other than 0, by what they are called. */
  private static Map<String, Double> figures(Book book, Node tree) {
    Map<String, Double> figures = new LinkedHashMap<>();
    Optional.ofNullable(MachineReader.read(tree).value())
        .ifPresent(
            machine -> {
              for (Figure figure : Topics.study(machine, book.shop()).figures()) {
                double value = figure.working().map(Working::value).orElse(0.0);
                if (value != 0 && Double.isFinite(value)) {
                  figures.put(figure.subject() + ": " + figure.name(), value);
                }
              }
            });
    return figures;
  }
}
