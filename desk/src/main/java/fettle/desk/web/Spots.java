package fettle.desk.web;

import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Row;
import fettle.machine.text.Node;
import fettle.machine.text.Place;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every single value of a book, by its place and by its path. */
final class Spots {

  private static final List<String> SEVERAL = List.of("map:", "list:", "shape:", "either:", "tree");

  private final Map<Place, Spot> byPlace = new LinkedHashMap<>();
  private final Map<String, Spot> byPath = new LinkedHashMap<>();
  private final Map<String, Spot> leftOut = new LinkedHashMap<>();
  private final Map<String, Node> trees;

  private Spots(Map<String, Node> trees) {
    this.trees = trees;
  }

  /** Lists the values of all files. */
  static Spots of(Map<String, Node> trees) {
    Spots spots = new Spots(trees);
    trees.forEach((file, tree) -> spots.walk(file, "", shape(file), tree, Optional.empty()));
    return spots;
  }

  /** Returns the values in the order of the files. */
  List<Spot> all() {
    return List.copyOf(byPath.values());
  }

  /** Returns the values of one file, in the order of its text. */
  List<Spot> in(String file) {
    return byPath.values().stream().filter(s -> s.file().equals(file)).toList();
  }

  /** Returns the value that is written at a place. */
  Optional<Spot> at(Place place) {
    return Optional.ofNullable(byPlace.get(place));
  }

  /** Returns the value that a path leads to, be it written or left out. */
  Optional<Spot> at(String file, String path) {
    String name = file + "\n" + path;
    return Optional.ofNullable(byPath.get(name)).or(() -> Optional.ofNullable(leftOut.get(name)));
  }

  /** Returns the single values that a block of a file, and the blocks within it, leave out. */
  List<Spot> leftOut(String file, String block) {
    String name = file + "\n" + (block.isEmpty() ? "" : block + ".");
    return leftOut.entrySet().stream()
        .filter(e -> e.getKey().startsWith(name))
        .map(Map.Entry::getValue)
        .toList();
  }

  /** Returns every value under a node, in order. */
  List<Spot> under(Node node) {
    List<Spot> found = new ArrayList<>();
    collect(node, found);
    return Collections.unmodifiableList(found);
  }

  private void collect(Node node, List<Spot> found) {
    if (node instanceof Node.Mapping mapping) {
      mapping.entries().values().forEach(e -> collect(e.value(), found));
    } else if (node instanceof Node.Listing listing) {
      listing.items().forEach(i -> collect(i, found));
    } else {
      at(node.at()).ifPresent(found::add);
    }
  }

  private static String shape(String file) {
    return switch (file.substring(0, Math.max(file.indexOf('/'), 0))) {
      case "changes" -> "change";
      case "trials" -> "trial";
      case "parts" -> "";
      default -> file.equals("shop.yaml") ? "shop" : "machine";
    };
  }

  private void walk(String file, String path, String shape, Node node, Optional<Row> row) {
    if (node instanceof Node.Scalar scalar) {
      Spot spot = new Spot(file, path, scalar, row, Spot.Kind.WRITTEN);
      byPlace.put(scalar.at(), spot);
      byPath.put(file + "\n" + path, spot);
    } else if (node instanceof Node.Listing listing) {
      for (int i = 0; i < listing.items().size(); i++) {
        walk(file, path + "[" + (i + 1) + "]", shape, listing.items().get(i), row);
      }
    } else if (node instanceof Node.Mapping mapping) {
      mapping.entries().forEach((key, entry) -> entry(file, path, shape, key, entry.value()));
      gaps(file, path, shape, mapping);
    }
  }

  private void entry(String file, String path, String shape, String key, Node value) {
    String inner = path.isEmpty() ? key : path + "." + key;
    if (shape.startsWith("entries of ")) {
      walk(file, inner, block(shape.substring(11), inner, value), value, Optional.empty());
      return;
    }
    Optional<Row> row = row(shape, key);
    String type = row.map(Row::type).orElse("");
    String below =
        type.equals("tree")
            ? "machine"
            : type.startsWith("map:")
                ? "entries of " + type.substring(4)
                : block(type, inner, value);
    walk(file, inner, below, value, row);
  }

  private void gaps(String file, String path, String shape, Node.Mapping block) {
    Dictionary.standard()
        .shapes()
        .getOrDefault(shape, Map.of())
        .forEach(
            (key, row) -> {
              if (!block.entries().containsKey(key) && single(row)) {
                String inner = path.isEmpty() ? key : path + "." + key;
                leftOut.put(file + "\n" + inner, Spot.leftOut(file, inner, block, row));
              }
            });
  }

  private static boolean single(Row row) {
    return SEVERAL.stream().noneMatch(row.type()::startsWith);
  }

  private static Optional<Row> row(String shape, String key) {
    Map<String, Row> rows = Dictionary.standard().shapes().getOrDefault(shape, Map.of());
    return Optional.ofNullable(rows.get(key));
  }

  /** Returns the shape of a block; where a change does not repeat the kind, the lathe's holds. */
  private String block(String type, String path, Node node) {
    if (!type.startsWith("either:")) {
      return type.startsWith("shape:") ? type.substring(6) : "";
    }
    String family = type.substring(7);
    Optional<String> kind = kind(node);
    if (kind.isEmpty()) {
      String within = path.startsWith("differs.") ? path.substring(8) : path;
      kind = kind(follow(trees.get("machine.yaml"), within));
    }
    return kind.map(k -> family + "/" + k).orElse("");
  }

  private static Optional<String> kind(@org.jspecify.annotations.Nullable Node node) {
    Node.Entry entry = node instanceof Node.Mapping m ? m.entries().get("kind") : null;
    return entry != null && entry.value() instanceof Node.Scalar scalar
        ? Optional.of(scalar.text())
        : Optional.empty();
  }

  /** Returns the node a path leads to, or null. */
  static @org.jspecify.annotations.Nullable Node follow(
      @org.jspecify.annotations.Nullable Node from, String path) {
    Node node = from;
    for (String key : path.split("\\.")) {
      Node.Entry entry = node instanceof Node.Mapping m ? m.entries().get(key) : null;
      node = entry == null ? null : entry.value();
    }
    return node;
  }
}
