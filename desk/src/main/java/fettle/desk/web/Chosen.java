package fettle.desk.web;

import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.text.Nearest;
import java.util.ArrayList;
import java.util.List;

/**
 * A state of the lathe somebody chose.
 *
 * @param word how it stands in links
 * @param state the state
 */
record Chosen(String word, State state) {

  static final String STANDING = "as-it-stands";
  private static final int MOST = 4_000;

  /** Returns the state a word names: one of the four known ones, or change keys joined by plus. */
  static Chosen of(Opened book, String word) {
    return switch (word) {
      case "as-bought" -> new Chosen(word, book.state("as bought", List.of()));
      case "", STANDING ->
          new Chosen(STANDING, book.state("as it stands", book.book().keys(Stage::done)));
      case "as-planned" ->
          new Chosen(word, book.state("as planned", book.book().keys(Stage::meant)));
      case "everything" ->
          new Chosen(
              word, book.state("with every change", book.book().keys(s -> s != Stage.DROPPED)));
      default -> of(book, List.of(word.split("[+ ,]")));
    };
  }

  /** Returns the state with these changes and all they need. */
  static Chosen of(Opened book, List<String> words) {
    List<String> keys = new ArrayList<>();
    for (String word : words) {
      if (word.length() > MOST || !book.book().changes().containsKey(word)) {
        throw Refused.missing(
            "There is no change '" + shortened(word) + "' in this book.",
            Nearest.hint(word, book.book().changes().keySet()) + " Choose one from the list.");
      }
      keys.addAll(book.book().withNeeds(word));
    }
    State state = book.state("", ordered(book, keys));
    return new Chosen(String.join("+", state.changes()), state);
  }

  private static List<String> ordered(Opened book, List<String> keys) {
    return book.book().changes().keySet().stream().filter(keys::contains).toList();
  }

  /** Returns this state with some more changes and all they need. */
  Chosen with(Opened book, List<String> more) {
    List<String> all = new ArrayList<>(state.changes());
    more.forEach(k -> all.addAll(book.book().withNeeds(k)));
    List<String> keys = all.stream().distinct().toList();
    return keys.equals(state.changes()) ? this : of(book, keys);
  }

  /** Returns the state in words. */
  String words() {
    return words(state);
  }

  /** Returns a state in words. */
  static String words(State state) {
    if (!state.name().isEmpty()) {
      return state.name();
    }
    return state.changes().isEmpty() ? "as bought" : "with " + String.join(", ", state.changes());
  }

  private static String shortened(String word) {
    return word.length() > 60 ? word.substring(0, 60) + "…" : word;
  }
}
