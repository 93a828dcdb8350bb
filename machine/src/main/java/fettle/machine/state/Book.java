package fettle.machine.state;

import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Reading;
import fettle.machine.dictionary.Values;
import fettle.machine.text.BookFiles;
import fettle.machine.text.MergePatch;
import fettle.machine.text.Nearest;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.text.Place;
import fettle.machine.text.Problem;
import fettle.machine.text.YamlReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One lathe's book, read whole.
 *
 * @param machine text of the lathe as bought
 * @param changes the changes by key, each after those it needs
 * @param shop what the workshop has
 * @param recipes text of each part's recipe by the name of its file
 */
public record Book(
    Node machine, Map<String, Change> changes, Optional<Values> shop, Map<String, Node> recipes) {

  /**
   * Makes a book of its texts, or says everything that is wrong with the texts by themselves; what
   * the states they give lack is said by {@link #problems()}.
   */
  public static Parsed<Book> read(BookFiles files) {
    List<Problem> problems = new ArrayList<>();
    Map<String, Change> changes = new LinkedHashMap<>();
    Map<String, Node> recipes = new LinkedHashMap<>();
    Node machine = null;
    Values shop = null;
    for (Map.Entry<String, String> file : files.texts().entrySet()) {
      String name = file.getKey();
      if (name.startsWith("trials/")) {
        continue;
      }
      Parsed<Node> tree = YamlReader.read(name, file.getValue());
      problems.addAll(tree.problems());
      Node node = tree.value();
      if (node == null) {
        continue;
      }
      if (name.equals("machine.yaml")) {
        machine = node;
      } else if (name.equals("shop.yaml")) {
        shop = checked("shop", node, problems);
      } else if (name.startsWith("parts/")) {
        recipes.put(name.substring("parts/".length(), name.length() - ".yaml".length()), node);
      } else {
        change(name, node, problems).ifPresent(c -> changes.put(c.key(), c));
      }
    }
    needs(changes, problems);
    if (machine == null || !problems.isEmpty()) {
      if (machine != null) {
        problems.addAll(fettle.machine.lathe.MachineReader.read(machine).problems());
      }
      return Parsed.bad(problems);
    }
    Book book =
        new Book(
            machine,
            Collections.unmodifiableMap(ordered(changes)),
            Optional.ofNullable(shop),
            Collections.unmodifiableMap(recipes));
    return Parsed.good(book);
  }

  /** Makes a book of its texts and refuses it, too, for what {@link #problems()} says. */
  public static Parsed<Book> checked(BookFiles files) {
    Parsed<Book> book = read(files);
    List<Problem> problems = book.value() == null ? List.of() : book.value().problems();
    return problems.isEmpty() ? book : Parsed.bad(problems);
  }

  /** Returns the changes that are at least at these stages, in order. */
  public List<String> keys(java.util.function.Predicate<Stage> stage) {
    return changes.values().stream().filter(c -> stage.test(c.stage())).map(Change::key).toList();
  }

  /**
   * Returns what is wrong with the lathe as bought, with each change and what it needs, and as it
   * stands.
   */
  public List<Problem> problems() {
    Set<Problem> all = new LinkedHashSet<>(State.of(this, "as bought", List.of()).problems());
    if (all.isEmpty()) {
      for (String key : changes.keySet()) {
        State.of(this, key, withNeeds(key)).problems().forEach(p -> all.add(with(key, p)));
      }
      all.addAll(State.of(this, "as it stands", keys(Stage::done)).problems());
    }
    return List.copyOf(all);
  }

  private static Problem with(String change, Problem p) {
    String remedy = "This shows with the change '" + change + "' applied.";
    return new Problem(
        p.at(),
        p.key(),
        p.found(),
        p.expected(),
        p.remedy().isEmpty() ? remedy : p.remedy() + " " + remedy);
  }

  /** Returns the lathe's text with changes laid over it, in the book's order. */
  public Node tree(List<String> keys) {
    Node tree = machine;
    for (Change change : changes.values()) {
      tree = keys.contains(change.key()) ? MergePatch.apply(tree, change.differs()) : tree;
    }
    return tree;
  }

  /** Returns a change and all that it needs, in order. */
  public List<String> withNeeds(String key) {
    Set<String> wanted = new LinkedHashSet<>();
    collect(key, wanted);
    return changes.keySet().stream().filter(wanted::contains).toList();
  }

  private void collect(String key, Set<String> wanted) {
    if (wanted.add(key)) {
      Change change = changes.get(key);
      if (change != null) {
        change.needs().forEach(n -> collect(n, wanted));
      }
    }
  }

  private static Optional<Change> change(String name, Node node, List<Problem> problems) {
    Values values = checked("change", node, problems);
    String key = name.substring("changes/".length(), name.length() - ".yaml".length());
    if (!key.matches("[a-z0-9][a-z0-9-]{0,59}")) {
      problems.add(
          new Problem(
              Place.file(name),
              "",
              "the file name",
              "small letters, digits and hyphens, such as saddle-dial.yaml",
              "Rename the file."));
      return Optional.empty();
    }
    if (values == null) {
      return Optional.empty();
    }
    nothingUnwritten(values.tree("differs").orElseThrow(), "differs", problems);
    return Optional.of(Change.of(key, values));
  }

  /** In a patch, leaving a value out would remove the key; that must be said with {@code null}. */
  private static void nothingUnwritten(Node node, String path, List<Problem> problems) {
    if (node instanceof Node.Mapping mapping) {
      mapping.entries().forEach((k, e) -> nothingUnwritten(e.value(), path + "." + k, problems));
    } else if (node instanceof Node.Nothing nothing && !nothing.written()) {
      problems.add(
          new Problem(nothing.at(), path, "nothing", "a value, or null to remove the key", ""));
    }
  }

  private static @org.jspecify.annotations.Nullable Values checked(
      String shape, Node node, List<Problem> problems) {
    Reading reading = new Reading(Dictionary.standard());
    Values values = reading.read(shape, node);
    problems.addAll(reading.problems());
    return reading.problems().isEmpty() ? values : null;
  }

  private static void needs(Map<String, Change> changes, List<Problem> problems) {
    for (Change change : changes.values()) {
      for (String need : change.needs()) {
        if (!changes.containsKey(need)) {
          problems.add(
              new Problem(
                  change.values().place("needs"),
                  "needs",
                  "'" + need + "'",
                  "the key of another change",
                  Nearest.hint(need, changes.keySet())));
        }
      }
    }
    for (Change change : changes.values()) {
      if (reaches(changes, change.key(), change.key(), new LinkedHashSet<>())) {
        problems.add(
            new Problem(
                change.values().place("needs"),
                "needs",
                "a circle: '" + change.key() + "' needs itself through others",
                "changes that can be made one after the other",
                ""));
      }
    }
  }

  private static boolean reaches(
      Map<String, Change> changes, String from, String target, Set<String> seen) {
    Change change = changes.get(from);
    if (change == null) {
      return false;
    }
    for (String need : change.needs()) {
      if (need.equals(target) || (seen.add(need) && reaches(changes, need, target, seen))) {
        return true;
      }
    }
    return false;
  }

  private static Map<String, Change> ordered(Map<String, Change> changes) {
    Map<String, Change> order = new LinkedHashMap<>();
    changes.keySet().forEach(key -> place(key, changes, order));
    return order;
  }

  private static void place(String key, Map<String, Change> changes, Map<String, Change> order) {
    Change change = changes.get(key);
    if (change != null && !order.containsKey(key)) {
      change.needs().forEach(need -> place(need, changes, order));
      order.put(key, change);
    }
  }
}
