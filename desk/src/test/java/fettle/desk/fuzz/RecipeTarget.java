package fettle.desk.fuzz;

import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** The recipe of a part of a small sound book. */
final class RecipeTarget {

  private static final String CHANGE =
      """
      title: A part
      reason: It is made here.
      parts:
        the part:
          recipe: one
          number: F-001
          count: 1
      """;

  private RecipeTarget() {}

  /** Reads a recipe. */
  public static void fuzzerTestOneInput(byte[] input) {
    Map<String, String> files = new TreeMap<>();
    files.put("machine.yaml", SmallBook.LATHE);
    files.put("changes/one.yaml", CHANGE);
    files.put("parts/one.yaml", new String(input, StandardCharsets.UTF_8));
    Book book = Book.read(new BookFiles(files)).value();
    if (book != null) {
      MadeParts.of(book);
    }
  }
}
