package fettle.desk.fuzz;

import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.text.BookFiles;
import fettle.machine.topics.Topics;
import fettle.machine.trials.Evaluations;
import fettle.machine.trials.Trials;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A whole book in one input, its files divided by a control character in a fixed order. */
final class BookTarget {

  /** What stands between two files of a book. */
  static final String BETWEEN = "\u001c";

  private static final List<String> NAMES =
      List.of(
          "machine.yaml",
          "changes/one.yaml",
          "parts/one.yaml",
          "trials/one.yaml",
          "trials/one.csv",
          "shop.yaml");

  private BookTarget() {}

  /** Reads a book; a sound one is reckoned, too. */
  public static void fuzzerTestOneInput(byte[] input) {
    BookFiles files = files(new String(input, StandardCharsets.UTF_8));
    Book book = Book.checked(files).value();
    if (book == null) {
      return;
    }
    MadeParts.of(book);
    Map<String, fettle.machine.trials.Trial> trials = Trials.read(files, book).value();
    if (trials != null) {
      trials.values().forEach(t -> Evaluations.of(t, book));
    }
    State.of(book, "all", new ArrayList<>(book.changes().keySet()))
        .machine()
        .ifPresent(m -> Topics.study(m, book.shop()));
  }

  private static BookFiles files(String all) {
    String[] texts = all.split(BETWEEN, NAMES.size());
    Map<String, String> files = new TreeMap<>();
    for (int i = 0; i < texts.length; i++) {
      if (!texts[i].isEmpty()) {
        files.put(NAMES.get(i), texts[i]);
      }
    }
    return new BookFiles(files);
  }
}
