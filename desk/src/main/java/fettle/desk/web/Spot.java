package fettle.desk.web;

import fettle.machine.dictionary.Row;
import fettle.machine.text.Node;
import fettle.machine.text.TextEdit;
import java.util.Optional;

/**
 * One value in the owner's files.
 *
 * @param file file within the book
 * @param path keys that lead to it, joined by dots, such as {@code members.saddle.mass}
 * @param scalar what is written there, and where; of one left out the standard, and its block's
 *     place
 * @param row what the dictionary says of it; empty if it does not know the key
 * @param kind whether it is written at all
 */
record Spot(String file, String path, Node.Scalar scalar, Optional<Row> row, Kind kind) {

  /** Whether a value is written in the book. */
  enum Kind {
    /** It stands in the file. */
    WRITTEN,
    /** It is left out, so that the standard holds or nothing is known. */
    LEFT_OUT
  }

  /** Returns what a key of the dictionary that a block leaves out could be. */
  static Spot leftOut(String file, String path, Node block, Row row) {
    Node.Scalar standard = new Node.Scalar(row.standard(), true, block.at());
    return new Spot(file, path, standard, Optional.of(row), Kind.LEFT_OUT);
  }

  /** Returns the file's text with another value here; empty if it cannot be written. */
  Optional<String> edited(String text, String value) {
    return kind == Kind.WRITTEN
        ? TextEdit.replace(text, scalar.at(), value)
        : TextEdit.add(text, scalar.at(), key(), value);
  }

  /** Returns the path within the lathe, without the change's own key in front. */
  String within() {
    return path.startsWith("differs.") ? path.substring("differs.".length()) : path;
  }

  /** Returns the last key of the path. */
  String key() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  /** Returns the path of the block it stands in; empty for the whole file. */
  String block() {
    return path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : "";
  }
}
