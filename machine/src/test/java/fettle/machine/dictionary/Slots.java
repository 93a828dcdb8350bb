package fettle.machine.dictionary;

import fettle.machine.text.Node;
import fettle.machine.text.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Finds every value of a text that the dictionary has a row for, with its place. */
public final class Slots {

  /**
   * A value that stands in a text.
   *
   * @param row its row of the dictionary
   * @param path path of its key
   * @param keyAt where its key stands
   * @param node the value
   */
  public record Slot(Row row, String path, Place keyAt, Node node) {

    /** Tells whether the value is a single word or phrase without quotes. */
    public boolean plain() {
      return node instanceof Node.Scalar scalar && !scalar.quoted();
    }
  }

  private final List<Slot> slots = new ArrayList<>();

  private Slots() {}

  /** Returns the slots of a sound text. */
  public static List<Slot> of(String shape, Node root) {
    Slots slots = new Slots();
    slots.block(shape, root, "");
    return List.copyOf(slots.slots);
  }

  private void block(String shape, Node node, String path) {
    Map<String, Row> rows = Dictionary.standard().shape(shape);
    if (node instanceof Node.Mapping mapping) {
      mapping
          .entries()
          .forEach(
              (key, entry) -> {
                Row row = rows.get(key);
                if (row != null) {
                  String here = path.isEmpty() ? key : path + "." + key;
                  slots.add(new Slot(row, here, entry.keyAt(), entry.value()));
                  inside(row.type(), entry.value(), here);
                }
              });
    }
  }

  private void inside(String type, Node node, String path) {
    if (type.startsWith("shape:")) {
      block(type.substring(6), node, path);
    } else if (type.startsWith("either:") && node instanceof Node.Mapping mapping) {
      Node.Entry kind = mapping.entries().get("kind");
      if (kind != null && kind.value() instanceof Node.Scalar word) {
        block(type.substring(7) + "/" + word.text(), node, path);
      }
    } else if (type.startsWith("map:") && node instanceof Node.Mapping mapping) {
      mapping
          .entries()
          .forEach((name, entry) -> inside(type.substring(4), entry.value(), path + "." + name));
    }
  }
}
