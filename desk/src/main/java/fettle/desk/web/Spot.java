package fettle.desk.web;

import fettle.machine.dictionary.Row;
import fettle.machine.text.Node;
import java.util.Optional;

/**
 * One value in the owner's files.
 *
 * @param file file within the book
 * @param path keys that lead to it, joined by dots, such as {@code members.saddle.mass}
 * @param scalar what is written there, and where
 * @param row what the dictionary says of it; empty if it does not know the key
 */
record Spot(String file, String path, Node.Scalar scalar, Optional<Row> row) {

  /** Returns the path within the lathe, without the change's own key in front. */
  String within() {
    return path.startsWith("differs.") ? path.substring("differs.".length()) : path;
  }

  /** Returns the last key of the path. */
  String key() {
    return path.substring(path.lastIndexOf('.') + 1);
  }
}
