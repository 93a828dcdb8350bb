package fettle.desk.pack;

import fettle.machine.text.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What is set on the lathe: every value of its description that the change alters. */
final class SettingsChapter {

  /** Outlines serve the picture and the wires have a list of their own. */
  private static final Set<String> ELSEWHERE = Set.of("envelope", "wires", "seat");

  private final List<List<String>> rows = new ArrayList<>();
  private String group = "";

  private SettingsChapter() {}

  static Chapter of(PackSource source) {
    SettingsChapter chapter = new SettingsChapter();
    Node before = source.book().tree(source.forecast().before().changes());
    chapter.take(source.change().differs(), Optional.of(before), List.of());
    List<Block> blocks = new ArrayList<>();
    if (chapter.rows.isEmpty()) {
      blocks.add(new Block.Prose("Nothing on the lathe is set differently."));
    } else {
      blocks.add(
          new Block.Prose("Teeth, threads, play, preload, divisions and all else that differs."));
      blocks.add(
          new Block.Grid(
              List.of(
                  Block.Column.left("value", 70),
                  Block.Column.left("before", 50),
                  Block.Column.left("after", 50)),
              chapter.rows));
    }
    return Chapter.of("Settings", blocks);
  }

  private void take(Node patch, Optional<Node> before, List<String> path) {
    if (patch instanceof Node.Mapping mapping) {
      mapping
          .entries()
          .forEach(
              (key, entry) -> {
                if (!ELSEWHERE.contains(key)) {
                  List<String> longer = new ArrayList<>(path);
                  longer.add(key);
                  take(entry.value(), before.flatMap(b -> at(b, key)), longer);
                }
              });
      return;
    }
    String now = words(patch);
    String old = before.map(SettingsChapter::words).orElse("–");
    if (!now.equals(old)) {
      row(path, old, now);
    }
  }

  private void row(List<String> path, String old, String now) {
    int named = Math.min(2, path.size() - 1);
    String over = String.join(" / ", path.subList(0, named));
    if (!over.equals(group)) {
      group = over;
      rows.add(List.of(over));
    }
    List<String> rest = new ArrayList<>(path.subList(named, path.size()));
    rest.removeIf(Set.of("elements", "links")::contains);
    rows.add(List.of(String.join(", ", rest), old, now));
  }

  private static Optional<Node> at(Node node, String key) {
    return node instanceof Node.Mapping m
        ? Optional.ofNullable(m.entries().get(key)).map(Node.Entry::value)
        : Optional.empty();
  }

  private static String words(Node node) {
    if (node instanceof Node.Scalar s) {
      return s.text();
    } else if (node instanceof Node.Listing l) {
      return l.items().stream().map(SettingsChapter::words).collect(Collectors.joining(", "));
    } else if (node instanceof Node.Mapping m) {
      return m.entries().entrySet().stream()
          .filter((Map.Entry<String, Node.Entry> e) -> !ELSEWHERE.contains(e.getKey()))
          .map(e -> e.getKey() + " " + words(e.getValue().value()))
          .collect(Collectors.joining(", "));
    }
    return "none";
  }
}
