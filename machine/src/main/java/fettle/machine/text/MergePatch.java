package fettle.machine.text;

import java.util.LinkedHashMap;
import java.util.Map;

/** The merge patch of RFC 7396: what a change differs in, laid over the text it changes. */
public final class MergePatch {

  private MergePatch() {}

  /**
   * Lays a patch over a tree: a block is merged key by key, {@code null} removes a key, anything
   * else takes the place of what stood there. Places stay those of the text a value came from.
   */
  public static Node apply(Node target, Node patch) {
    if (!(patch instanceof Node.Mapping changes)) {
      return patch;
    }
    Map<String, Node.Entry> merged =
        target instanceof Node.Mapping old
            ? new LinkedHashMap<>(old.entries())
            : new LinkedHashMap<>();
    changes.entries().forEach((key, entry) -> lay(merged, key, entry));
    return new Node.Mapping(merged, target instanceof Node.Mapping ? target.at() : patch.at());
  }

  private static void lay(Map<String, Node.Entry> merged, String key, Node.Entry entry) {
    if (entry.value() instanceof Node.Nothing) {
      merged.remove(key);
      return;
    }
    Node.Entry old = merged.get(key);
    Node under = old == null ? new Node.Nothing(false, entry.keyAt()) : old.value();
    merged.put(key, new Node.Entry(entry.keyAt(), apply(under, entry.value())));
  }
}
