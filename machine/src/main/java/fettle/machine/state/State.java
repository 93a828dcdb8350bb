package fettle.machine.state;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.MachineReader;
import fettle.machine.text.MergePatch;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    Map<String, Touch> touched = new LinkedHashMap<>();
    List<Conflict> conflicts = new ArrayList<>();
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
        name, order, Optional.ofNullable(machine.value()), conflicts, machine.problems());
  }

  private record Touch(String change, String text) {}

  private static void touch(
      Node patch,
      String path,
      String change,
      Map<String, Touch> touched,
      List<Conflict> conflicts) {
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
    Touch before = touched.put(path, new Touch(change, patch.words()));
    if (before != null && !before.text.equals(patch.words())) {
      conflicts.add(new Conflict(path, before.change, change));
    }
    for (Map.Entry<String, Touch> other : touched.entrySet()) {
      boolean within =
          other.getKey().startsWith(path + ".") || path.startsWith(other.getKey() + ".");
      if (within && !other.getValue().change.equals(change)) {
        conflicts.add(new Conflict(path, other.getValue().change, change));
      }
    }
  }
}
