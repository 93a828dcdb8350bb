package fettle.machine.dictionary;

import fettle.machine.text.Nearest;
import fettle.machine.text.Node;
import fettle.machine.text.Place;
import fettle.machine.text.Problem;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a tree by the dictionary and collects everything that is wrong, in one pass. Names that
 * refer to other blocks are checked at the end, when all blocks are known.
 */
public final class Reading {

  private record Mention(String collection, String name, Place at, String path) {}

  static final int MOST_ENTRIES = 400;
  static final int LONGEST_NAME = 60;
  static final String NAME = "^(?=.*\\S)[\\p{L}\\p{N} '()/+-]+$";

  private static final int MOST_PROBLEMS = 1_000;
  private static final int MOST_HINTS = 30;
  private static final double ABSURD = 1e15;

  private final Dictionary dictionary;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Mention> mentions = new ArrayList<>();
  private final Map<String, Set<String>> names = new LinkedHashMap<>();

  /** Starts a reading by a dictionary. */
  public Reading(Dictionary dictionary) {
    this.dictionary = dictionary;
  }

  /** Reads one block; what is wrong is added to {@link #problems()}. */
  public Values read(String shape, Node node) {
    return block(shape, node, "");
  }

  /** Returns all problems found so far, unknown references included, in the order of the text. */
  public List<Problem> problems() {
    List<Problem> all = new ArrayList<>(problems);
    for (Mention mention : mentions) {
      Set<String> known = names.getOrDefault(mention.collection, Set.of());
      if (!known.contains(mention.name) && all.size() < MOST_PROBLEMS) {
        String one = mention.collection.substring(0, mention.collection.length() - 1);
        all.add(
            new Problem(
                mention.at,
                mention.path,
                "'" + mention.name + "'",
                known.isEmpty() ? "one of the " + mention.collection : "a " + one + " of this book",
                all.size() < MOST_HINTS ? Nearest.hint(mention.name, known) : ""));
      }
    }
    return List.copyOf(all);
  }

  private Values block(String shape, Node node, String path) {
    if (!(node instanceof Node.Mapping mapping)) {
      add(node.at(), path, node.words(), "a block with the keys of a " + shape, "");
      return new Values(shape, node.at(), Map.of(), Map.of());
    }
    Map<String, Row> rows = dictionary.shape(shape);
    Map<String, Object> held = new LinkedHashMap<>();
    Map<String, Place> places = new LinkedHashMap<>();
    for (Map.Entry<String, Node.Entry> entry : mapping.entries().entrySet()) {
      String key = entry.getKey();
      Row row = rows.get(key);
      Place keyAt = entry.getValue().keyAt();
      if (row == null) {
        add(
            keyAt,
            join(path, key),
            "a key that is not known here",
            keysOf(shape),
            unknown(shape, key));
        continue;
      }
      Node value = entry.getValue().value();
      places.put(key, value.at());
      if (value instanceof Node.Nothing && row.required()) {
        add(keyAt, join(path, key), value.words(), row.meaning(), example(row));
      } else if (!(value instanceof Node.Nothing)) {
        value(row, value, join(path, key)).ifPresent(v -> held.put(key, v));
      }
    }
    for (Row row : rows.values()) {
      if (!places.containsKey(row.key())) {
        absent(row, mapping.at(), path, held);
      }
    }
    return new Values(shape, mapping.at(), held, places);
  }

  private void absent(Row row, Place at, String path, Map<String, Object> held) {
    if (row.required()) {
      add(at, join(path, row.key()), "no " + row.key(), row.meaning(), example(row));
    } else if (!row.standard().isEmpty()) {
      Node standard = new Node.Scalar(row.standard(), false, at);
      value(row, standard, join(path, row.key())).ifPresent(v -> held.put(row.key(), v));
    }
  }

  private Optional<Object> value(Row row, Node node, String path) {
    String type = row.type();
    if (type.equals("tree")) {
      if (!(node instanceof Node.Mapping)) {
        add(node.at(), path, node.words(), "the keys of machine.yaml that differ", "");
      }
      return Optional.of(node);
    } else if (type.startsWith("shape:")) {
      return Optional.of(block(row.inner(), node, path));
    } else if (type.startsWith("either:")) {
      return either(row.inner(), node, path);
    } else if (type.startsWith("map:")) {
      return map(row.key(), row.inner(), node, path);
    } else if (type.startsWith("list:")) {
      return list(row, node, path);
    }
    if (!(node instanceof Node.Scalar scalar)) {
      add(node.at(), path, node.words(), row.meaning(), example(row));
      return Optional.empty();
    }
    return scalar(row, type, scalar, path);
  }

  private Optional<Object> scalar(Row row, String type, Node.Scalar scalar, String path) {
    String text = scalar.text().strip();
    if (type.equals("text")) {
      return text.isEmpty() ? wrong(scalar, path, row.meaning(), "") : Optional.of(text);
    } else if (type.equals("count")) {
      return count(row, scalar, path);
    } else if (type.equals("flag")) {
      return text.equals("yes") || text.equals("no")
          ? Optional.of(text.equals("yes"))
          : wrong(scalar, path, "yes or no", "");
    } else if (type.startsWith("word:")) {
      return row.words().contains(text)
          ? Optional.of(text)
          : wrong(
              scalar, path, "one of: " + String.join(", ", row.words()), hint(text, row.words()));
    } else if (type.startsWith("ref:")) {
      mentions.add(new Mention(row.inner(), text, scalar.at(), path));
      return Optional.of(text);
    }
    Optional<String> wish = Designations.expectation(type);
    if (wish.isPresent()) {
      Optional<String> problem = Designations.problem(type, text);
      return problem.isEmpty() ? Optional.of(text) : wrong(scalar, path, wish.get(), problem.get());
    }
    return quantity(row, Dimension.valueOf(type.toUpperCase(Locale.ROOT)), scalar, path);
  }

  private Optional<Object> quantity(Row row, Dimension dimension, Node.Scalar scalar, String path) {
    try {
      Quantity quantity = Quantity.parse(scalar.text(), dimension, row.unit());
      double number = row.unit().fromCoherent(quantity.value());
      double low = Math.min(row.low().orElse(-ABSURD), row.high().orElse(ABSURD));
      double high = row.high().orElse(ABSURD);
      boolean fits =
          number >= low
              && number <= high
              && quantity.doubt() <= Math.abs(row.unit().toCoherent(high));
      return fits
          ? Optional.of(quantity)
          : wrong(scalar, path, bounds(row), "Check the number and its unit.");
    } catch (Quantity.NotOne e) {
      return wrong(scalar, path, e.expected(), unitHint(scalar.text(), dimension));
    }
  }

  /** Suggests a unit if only the spelling of the unit is off. */
  private String unitHint(String text, Dimension dimension) {
    String symbol = text.strip().replaceFirst("^[-+0-9./ ]+", "");
    List<String> known =
        Unit.all().entrySet().stream()
            .filter(e -> e.getValue().dimension() == dimension)
            .map(Map.Entry::getKey)
            .sorted()
            .toList();
    return symbol.isEmpty() ? "" : hint(symbol, known);
  }

  /**
   * Suggests a name; after very many problems no more, so that a hopeless text is soon answered.
   */
  private String hint(String found, java.util.Collection<String> known) {
    return problems.size() < MOST_HINTS ? Nearest.hint(found, known) : "";
  }

  private Optional<Object> count(Row row, Node.Scalar scalar, String path) {
    String text = scalar.text().strip();
    if (!text.matches("[+-]?\\d{1,9}")) {
      return wrong(scalar, path, "a whole number, " + row.meaning(), "");
    }
    int value = Integer.parseInt(text);
    boolean fits = value >= row.low().orElse(-1e9) && value <= row.high().orElse(1e9);
    return fits ? Optional.of(value) : wrong(scalar, path, bounds(row), "");
  }

  private Optional<Object> either(String family, Node node, String path) {
    List<String> kinds = dictionary.kinds(family);
    String wish = "a block with a kind: " + String.join(", ", kinds);
    if (!(node instanceof Node.Mapping mapping)) {
      add(node.at(), path, node.words(), wish, "");
      return Optional.empty();
    }
    Node.Entry kind = mapping.entries().get("kind");
    if (kind == null) {
      add(node.at(), join(path, "kind"), "no kind", wish, "");
      return Optional.empty();
    }
    String word = kind.value() instanceof Node.Scalar s ? s.text().strip() : kind.value().words();
    if (!kinds.contains(word)) {
      add(
          kind.value().at(),
          join(path, "kind"),
          "'" + word + "'",
          "one of: " + String.join(", ", kinds),
          hint(word, kinds));
      return Optional.empty();
    }
    return Optional.of(block(family + "/" + word, node, path));
  }

  private Optional<Object> map(String collection, String inner, Node node, String path) {
    if (!(node instanceof Node.Mapping mapping)) {
      add(node.at(), path, node.words(), "entries by name", "");
      return Optional.empty();
    }
    if (mapping.entries().size() > MOST_ENTRIES) {
      add(node.at(), path, mapping.words(), "at most " + MOST_ENTRIES + " entries", "");
      return Optional.empty();
    }
    if (path.equals(collection)) {
      names
          .computeIfAbsent(collection, c -> new LinkedHashSet<>())
          .addAll(mapping.entries().keySet());
    }
    Map<String, Values> blocks = new LinkedHashMap<>();
    mapping.entries().forEach((name, entry) -> entry(inner, path, blocks, name, entry));
    return Optional.of(Collections.unmodifiableMap(blocks));
  }

  private void entry(
      String inner, String path, Map<String, Values> blocks, String name, Node.Entry entry) {
    boolean good = name.length() <= LONGEST_NAME && name.matches(NAME);
    if (!good) {
      add(
          entry.keyAt(),
          path,
          "the name '" + name + "'",
          "a short name of letters, digits and spaces",
          "");
      return;
    }
    String here = join(path, name);
    if (inner.startsWith("either:")) {
      either(inner.substring(7), entry.value(), here).ifPresent(v -> blocks.put(name, (Values) v));
    } else {
      blocks.put(name, block(inner.substring(6), entry.value(), here));
    }
  }

  private Optional<Object> list(Row row, Node node, String path) {
    if (!(node instanceof Node.Listing listing)) {
      add(node.at(), path, node.words(), "a list in square brackets or lines with dashes", "");
      return Optional.empty();
    }
    if (listing.items().size() > MOST_ENTRIES) {
      add(node.at(), path, listing.words(), "at most " + MOST_ENTRIES + " items", "");
      return Optional.empty();
    }
    List<Object> items = new ArrayList<>();
    for (int i = 0; i < listing.items().size(); i++) {
      Node item = listing.items().get(i);
      String here = path + "[" + (i + 1) + "]";
      if (item instanceof Node.Scalar scalar) {
        scalar(row, row.inner(), scalar, here).ifPresent(items::add);
      } else {
        add(item.at(), here, item.words(), "a single value", "");
      }
    }
    return Optional.of(List.copyOf(items));
  }

  private Optional<Object> wrong(Node.Scalar scalar, String path, String expected, String remedy) {
    add(scalar.at(), path, scalar.words(), expected, remedy);
    return Optional.empty();
  }

  private void add(Place at, String path, String found, String expected, String remedy) {
    if (problems.size() < MOST_PROBLEMS) {
      problems.add(new Problem(at, path, found, expected, remedy));
    }
  }

  /** Suggests the name that was meant, or how to drop a key when a change alters the kind. */
  private String unknown(String shape, String key) {
    if (problems.size() >= MOST_HINTS) {
      return "";
    }
    int slash = shape.indexOf('/');
    if (slash > 0) {
      for (String kind : dictionary.kinds(shape.substring(0, slash))) {
        if (dictionary.shape(shape.substring(0, slash) + "/" + kind).containsKey(key)) {
          return "It belongs to the kind '"
              + kind
              + "'; where a change alters the kind, write '"
              + key
              + ": null'.";
        }
      }
    }
    return Nearest.hint(key, dictionary.shape(shape).keySet());
  }

  private String keysOf(String shape) {
    if (problems.size() >= MOST_PROBLEMS) {
      return "";
    }
    List<String> keys = List.copyOf(dictionary.shape(shape).keySet());
    String shown = String.join(", ", keys.subList(0, Math.min(keys.size(), 12)));
    return "one of: " + shown + (keys.size() > 12 ? ", …" : "");
  }

  private static String bounds(Row row) {
    String unit = row.unit().symbol().isEmpty() ? "" : " " + row.unit().symbol();
    String low = row.low().map(Reading::plain).orElse("");
    String high = row.high().map(Reading::plain).orElse("");
    String range =
        low.isEmpty()
            ? "at most " + high
            : high.isEmpty() ? "at least " + low : low + " to " + high;
    return (range.equals("at most ") ? "a number of ordinary size" : range + unit)
        + ", "
        + row.meaning();
  }

  private static String plain(double bound) {
    return fettle.mechanics.base.Numbers.significant(bound, 10);
  }

  private static String example(Row row) {
    return row.unit().symbol().isEmpty() ? "" : "Write it like '2 " + row.unit().symbol() + "'.";
  }

  private static String join(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
