package fettle.desk.cli;

import fettle.machine.made.MadePart;
import fettle.machine.state.Book;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Nearest;
import fettle.machine.text.Parsed;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Opens books and names their states on the command line. */
final class Books {

  private Books() {}

  static Path folder(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw Failure.input("'" + name + "' is no name of a folder");
    }
  }

  static Book open(String name) {
    return book(files(name));
  }

  static BookFiles files(String name) {
    Parsed<BookFiles> files = BookFiles.read(folder(name));
    return files.orThrow(() -> Failure.input(files.problems()));
  }

  static Book book(BookFiles files) {
    Parsed<Book> book = Book.read(files);
    return book.orThrow(() -> Failure.input(book.problems()));
  }

  /** Returns a state by its word, or by change keys joined with plus signs. */
  static State state(Book book, String word) {
    return switch (word) {
      case "as-bought", "none" -> State.of(book, "as bought", List.of());
      case "as-it-stands" -> State.of(book, "as it stands", book.keys(Stage::done));
      case "as-planned" -> State.of(book, "as planned", book.keys(Stage::meant));
      case "everything" -> State.of(book, "with every change", book.keys(s -> s != Stage.DROPPED));
      default -> State.of(book, "", keys(book, words(word)));
    };
  }

  /** Returns the keys of changes that were joined with plus signs. */
  static List<String> words(String joined) {
    return List.of(joined.split("[+,]", -1));
  }

  /** Checks the keys of changes and adds what they need. */
  static List<String> keys(Book book, List<String> words) {
    List<String> keys = new ArrayList<>();
    for (String word : words) {
      if (!book.changes().containsKey(word)) {
        String hint = Nearest.hint(word, book.changes().keySet());
        throw Failure.input(
            "there is no change '"
                + word
                + "' in this book; it has: "
                + String.join(", ", book.changes().keySet())
                + (hint.isEmpty() ? "" : ". " + hint));
      }
      keys.addAll(book.withNeeds(word));
    }
    return keys.stream().distinct().toList();
  }

  /** Refuses a state whose changes do not fit together. */
  static State sound(State state) {
    if (state.machine().isEmpty()) {
      throw Failure.input(state.problems());
    }
    return state;
  }

  /** Returns the part of a name or key, or all if none is named; refuses if there is none. */
  static List<MadePart> parts(List<MadePart> parts, String name) {
    List<MadePart> chosen =
        parts.stream()
            .filter(p -> name.isEmpty() || p.name().equals(name) || p.key().equals(name))
            .toList();
    if (chosen.isEmpty()) {
      List<String> known = parts.stream().map(MadePart::name).toList();
      throw Failure.input(
          name.isEmpty()
              ? "no part asked for has a recipe; write 'recipe: NAME' beside a part and the recipe"
                  + " in parts/NAME.yaml"
              : "there is no part '" + name + "' with a recipe. " + Nearest.hint(name, known));
    }
    return chosen;
  }
}
