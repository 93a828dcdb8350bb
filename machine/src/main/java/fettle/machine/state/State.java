package fettle.machine.state;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.MachineReader;
import fettle.machine.text.MergePatch;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The lathe with a set of changes applied.
 *
 * @param name what the state is called
 * @param changes keys of the changes, in the order applied
 * @param machine the lathe; empty if the changes do not fit together
 * @param conflicts things that two of the changes alter differently
 * @param problems what is wrong with the lathe's text in this state
 */
public record State(
    String name,
    List<String> changes,
    Optional<Machine> machine,
    List<Conflict> conflicts,
    List<Problem> problems) {

  /** Keeps its own copies. */
  public State {
    changes = List.copyOf(changes);
    conflicts = List.copyOf(conflicts);
    problems = List.copyOf(problems);
  }

  /** Applies changes in the book's order. */
  public static State of(Book book, String name, List<String> keys) {
    Node tree = book.machine();
    NavigableMap<String, Touch> touched = new TreeMap<>();
    Set<Conflict> conflicts = new LinkedHashSet<>();
    List<String> order = book.changes().keySet().stream().filter(keys::contains).toList();
    for (String key : order) {
      Change change = book.changes().get(key);
      if (change != null) {
        touch(change.differs(), "", key, touched, conflicts);
        tree = MergePatch.apply(tree, change.differs());
      }
    }
    Parsed<Machine> machine = MachineReader.read(tree);
    return new State(
        name,
        order,
        Optional.ofNullable(machine.value()),
        List.copyOf(conflicts),
        machine.problems());
  }

  private record Touch(String change, String text) {}

  private static void touch(
      Node patch,
      String path,
      String change,
      NavigableMap<String, Touch> touched,
      Set<Conflict> conflicts) {
    if (patch instanceof Node.Mapping mapping) {
      mapping
          .entries()
          .forEach(
              (key, entry) ->
                  touch(
                      entry.value(),
                      path.isEmpty() ? key : path + "." + key,
                      change,
                      touched,
                      conflicts));
      return;
    }
    Touch before = touched.put(path, new Touch(change, content(patch)));
    if (before != null && !before.text.equals(content(patch))) {
      clash(path, before, change, conflicts);
    }
    touched
        .subMap(path + ".", path + "/")
        .forEach((inner, touch) -> clash(path, touch, change, conflicts));
    for (int dot = path.lastIndexOf('.'); dot > 0; dot = path.lastIndexOf('.', dot - 1)) {
      Touch around = touched.get(path.substring(0, dot));
      if (around != null) {
        clash(path, around, change, conflicts);
      }
    }
  }

  private static void clash(String path, Touch other, String change, Set<Conflict> conflicts) {
    if (!other.change.equals(change)) {
      conflicts.add(new Conflict(path, other.change, change));
    }
  }

  /** Returns what a patch puts there, so that two patches can be compared. */
  private static String content(Node node) {
    if (node instanceof Node.Listing listing) {
      return listing.items().stream()
          .map(State::content)
          .collect(java.util.stream.Collectors.joining(", ", "[", "]"));
    }
    return node.words();
  }
}
