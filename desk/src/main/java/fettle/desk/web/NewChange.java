package fettle.desk.web;

import fettle.machine.state.Book;
import fettle.machine.state.Stage;
import fettle.machine.text.Node;
import fettle.machine.text.TextEdit;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Writes the text of a new change from the values that were tried. */
final class NewChange {

  private static final int LONGEST_KEY = 40;

  private NewChange() {}

  /** Returns a key that no change has yet, made of the title. */
  static String key(Book book, String title) {
    String key = plain(title, "what-if");
    String free = key;
    for (int n = 2; book.changes().containsKey(free); n++) {
      free = key + "-" + n;
    }
    return free;
  }

  /** Returns a title as the name of a file: small letters, digits and hyphens. */
  static String plain(String title, String otherwise) {
    String plain =
        Normalizer.normalize(title, Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    String key = plain.isEmpty() ? otherwise : plain;
    return key.length() > LONGEST_KEY ? key.substring(0, LONGEST_KEY).replaceAll("-+$", "") : key;
  }

  /**
   * Writes a change.
   *
   * @param title its title
   * @param reason why
   * @param values new text of each value
   * @param chosen the state it was tried on
   * @param book the book
   * @param tree the lathe's text in that state
   */
  static String text(
      String title, String reason, Map<Spot, String> values, Chosen chosen, Book book, Node tree) {
    StringBuilder text = new StringBuilder();
    text.append("title: ").append(TextEdit.quoted(title)).append('\n');
    text.append("reason: ").append(TextEdit.quoted(reason)).append('\n');
    text.append("stage: idea\n");
    Set<String> needs = needs(values, chosen, book);
    if (!needs.isEmpty()) {
      text.append("needs: [").append(String.join(", ", needs)).append("]\n");
    }
    text.append("differs:\n");
    write(nested(values, tree), 1, text);
    return text.toString();
  }

  /** It needs the changes its values stand in, and those of the state that are not made yet. */
  private static Set<String> needs(Map<Spot, String> values, Chosen chosen, Book book) {
    Set<String> needs = new LinkedHashSet<>();
    values.keySet().stream()
        .filter(s -> s.file().startsWith("changes/"))
        .forEach(s -> needs.add(ValuesRoom.change(s.file())));
    Set<String> standing = Set.copyOf(book.keys(Stage::done));
    chosen.state().changes().stream().filter(k -> !standing.contains(k)).forEach(needs::add);
    return needs;
  }

  private static Map<String, Object> nested(Map<Spot, String> values, Node tree) {
    Map<String, Object> root = new LinkedHashMap<>();
    values.forEach(
        (spot, text) -> {
          String path = spot.within().replaceFirst("\\[\\d+]$", "");
          boolean item = !path.equals(spot.within());
          put(root, List.of(path.split("\\.")), item ? listing(tree, path, values) : text);
        });
    return root;
  }

  /** A list is replaced as a whole, as a merge patch must. */
  private static List<String> listing(Node tree, String path, Map<Spot, String> values) {
    List<String> items = new ArrayList<>();
    if (Spots.follow(tree, path) instanceof Node.Listing listing) {
      for (Node item : listing.items()) {
        String text = item instanceof Node.Scalar scalar ? scalar.text() : "";
        for (Map.Entry<Spot, String> value : values.entrySet()) {
          text = value.getKey().scalar().at().equals(item.at()) ? value.getValue() : text;
        }
        items.add(text);
      }
    }
    return items;
  }

  @SuppressWarnings("unchecked")
  private static void put(Map<String, Object> root, List<String> path, Object value) {
    Map<String, Object> at = root;
    for (String key : path.subList(0, path.size() - 1)) {
      at = (Map<String, Object>) at.computeIfAbsent(key, k -> new LinkedHashMap<String, Object>());
    }
    at.put(path.get(path.size() - 1), value);
  }

  @SuppressWarnings("unchecked")
  private static void write(Map<String, Object> block, int depth, StringBuilder text) {
    block.forEach(
        (key, value) -> {
          text.append("  ".repeat(depth)).append(plain(key)).append(':');
          if (value instanceof Map<?, ?> inner) {
            text.append('\n');
            write((Map<String, Object>) inner, depth + 1, text);
          } else if (value instanceof List<?> items) {
            List<String> written = items.stream().map(i -> plain(String.valueOf(i))).toList();
            text.append(" [").append(String.join(", ", written)).append("]\n");
          } else {
            text.append(' ').append(plain(String.valueOf(value))).append('\n');
          }
        });
  }

  private static String plain(String word) {
    boolean safe = word.matches("[A-Za-z0-9][A-Za-z0-9 .±%°µ/()-]*") && !word.endsWith(" ");
    return safe ? word : TextEdit.quoted(word);
  }
}
