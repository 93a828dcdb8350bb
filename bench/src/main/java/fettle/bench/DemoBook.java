package fettle.bench;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import java.nio.file.Path;

/** The book of the demo lathe, from the folder the benchmarks are started in. */
final class DemoBook {

  private static final Path FOLDER = Path.of("examples", "dunlin-85");

  private DemoBook() {}

  static BookFiles files() {
    BookFiles files = BookFiles.read(FOLDER).value();
    if (files == null) {
      throw new IllegalStateException("start the benchmarks where " + FOLDER + " lies");
    }
    return files;
  }

  static Book read(BookFiles files) {
    Book book = Book.checked(files).value();
    if (book == null) {
      throw new IllegalStateException("the book of the demo is not sound");
    }
    return book;
  }
}
