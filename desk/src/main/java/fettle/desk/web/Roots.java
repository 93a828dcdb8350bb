package fettle.desk.web;

import fettle.machine.dictionary.Row;
import fettle.machine.lathe.Dial;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.MachineReader;
import fettle.machine.lathe.Train;
import fettle.machine.text.Node;
import fettle.machine.text.Place;
import fettle.machine.text.Quantity;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Topics;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Working;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds where the inputs of a figure stand in the book. A value is taken for an input only if the
 * figure moves when it is altered, so that no link is a guess.
 */
final class Roots {

  private static final int MOST_TRIES = 60;

  private final Visit visit;
  private final Figure figure;
  private final Node tree;
  private int tries;

  /** A value of the book that a figure depends on, with what one step of it does. */
  record Root(Spot spot, String effect) {}

  Roots(Visit visit, Chosen chosen, Figure figure) {
    this.visit = visit;
    this.figure = figure;
    this.tree = ValueLines.tree(visit, chosen.state());
  }

  /** Returns the values behind one term of the figure's working. */
  Map<Term, List<Root>> byTerm() {
    Map<Term, List<Root>> roots = new LinkedHashMap<>();
    List<Spot> spots = visit.opened().spots().under(tree);
    for (Term term : figure.working().map(Working::terms).orElse(List.of())) {
      roots.put(
          term,
          spots.stream().filter(s -> equal(s, term)).flatMap(s -> moved(s).stream()).toList());
    }
    return roots;
  }

  /** Returns the designations (of threads and bearings) the figure depends on. */
  List<Root> designations() {
    return visit.opened().spots().under(tree).stream()
        .filter(
            s -> s.row().map(Row::type).filter(Set.of("thread", "bearing")::contains).isPresent())
        .flatMap(s -> moved(s).stream())
        .toList();
  }

  private static boolean equal(Spot spot, Term term) {
    Optional<Row> row = spot.row();
    String type = row.map(Row::type).orElse("");
    if (type.equals("count") || type.equals("list:count")) {
      return spot.scalar().text().strip().equals(Numbers.significant(term.value(), 10));
    }
    Optional<Quantity> quantity = quantity(spot);
    return quantity.isPresent()
        && near(quantity.get().value(), term.value())
        && near(quantity.get().doubt(), term.doubt());
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));
  }

  /** Reads the value as the quantity the dictionary says it is, if it is one. */
  static Optional<Quantity> quantity(Spot spot) {
    if (spot.row().isEmpty()) {
      return Optional.empty();
    }
    Row row = spot.row().get();
    String name = row.type().toUpperCase(Locale.ROOT);
    for (Dimension dimension : Dimension.values()) {
      if (dimension.name().equals(name)) {
        try {
          return Optional.of(Quantity.parse(spot.scalar().text(), dimension, row.unit()));
        } catch (Quantity.NotOne e) {
          return Optional.empty();
        }
      }
    }
    return Optional.empty();
  }

  /** Alters the value by a step; returns it as a root if the figure follows. */
  private Optional<Root> moved(Spot spot) {
    if (++tries > MOST_TRIES || figure.working().isEmpty()) {
      return Optional.empty();
    }
    String next = next(spot);
    Node altered = replaced(tree, spot.scalar().at(), next);
    Optional<Double> value =
        Optional.ofNullable(MachineReader.read(altered).value()).flatMap(this::value);
    double old = figure.working().get().value();
    return value
        .filter(v -> Math.abs(v - old) > 1e-12 * Math.abs(old))
        .map(v -> new Root(spot, effect(spot, next, old, v)));
  }

  private Optional<Double> value(Machine machine) {
    return Topics.study(machine, visit.book().shop()).figures().stream()
        .filter(f -> f.id().equals(figure.id()))
        .findFirst()
        .flatMap(Figure::working)
        .map(Working::value);
  }

  private static String next(Spot spot) {
    String text = spot.scalar().text().strip();
    String type = spot.row().map(Row::type).orElse("");
    if (type.equals("thread")) {
      return text.startsWith("Tr 20x4")
          ? "Tr 18x4"
          : "Tr 20x4" + (text.contains("LH") ? " LH" : "");
    } else if (type.equals("bearing")) {
      return text.equals("7210B") ? "7209B" : "7210B";
    } else if (text.matches("\\d{1,6}")) {
      return String.valueOf(Integer.parseInt(text) + 1);
    }
    return quantity(spot)
        .map(
            q ->
                Numbers.significant(q.unit().fromCoherent(q.value()) * 1.01, 12)
                    + " "
                    + q.unit().symbol())
        .orElse(text);
  }

  private static String effect(Spot spot, String next, double old, double now) {
    String type = spot.row().map(Row::type).orElse("");
    if (type.equals("thread") || type.equals("bearing")) {
      return "";
    }
    String step = type.endsWith("count") ? next + " instead" : "1 % more";
    double percent = (now / old - 1) * 100;
    return Double.isFinite(percent)
        ? step + ": " + (percent > 0 ? "+" : "") + Numbers.significant(percent, 3) + " %"
        : "";
  }

  /** Returns a tree with another text at one place. */
  static Node replaced(Node node, Place at, String text) {
    if (node instanceof Node.Mapping mapping) {
      Map<String, Node.Entry> entries = new LinkedHashMap<>();
      mapping
          .entries()
          .forEach(
              (k, e) -> entries.put(k, new Node.Entry(e.keyAt(), replaced(e.value(), at, text))));
      return new Node.Mapping(entries, mapping.at());
    } else if (node instanceof Node.Listing listing) {
      return new Node.Listing(
          listing.items().stream().map(i -> replaced(i, at, text)).toList(), listing.at());
    }
    return node.at().equals(at) ? new Node.Scalar(text, false, at) : node;
  }

  /**
   * Returns what figures may be about when they speak of a member: itself, its trains, its dials.
   */
  static Set<String> subjects(Machine machine, String member) {
    Set<String> subjects = new LinkedHashSet<>(Set.of(member));
    for (Train train : machine.trains().values()) {
      if (train.from().equals(member) || train.to().equals(member)) {
        subjects.add(train.name());
      }
    }
    for (Dial dial : machine.dials().values()) {
      if (dial.on().equals(member)) {
        subjects.add(dial.name());
      }
    }
    return subjects;
  }
}
