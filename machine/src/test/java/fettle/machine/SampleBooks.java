package fettle.machine;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.MachineReader;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.text.YamlReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** The books that tests begin from: the demo, the starter, and pieces of machines. */
public final class SampleBooks {

  /** Folder of the demo book. */
  public static final Path DEMO = Path.of("../examples/dunlin-85");

  /** Folder of the book that a newcomer starts from. */
  public static final Path STARTER =
      Path.of("../desk/src/main/resources/fettle/desk/starter/bench");

  private SampleBooks() {}

  /** Reads a book that must be sound. */
  public static Book sound(Path folder) {
    BookFiles files = Objects.requireNonNull(BookFiles.read(folder).value());
    return sound(files.texts());
  }

  /** Reads a book that must be sound. */
  public static Book sound(Map<String, String> texts) {
    Parsed<Book> book = Book.checked(new BookFiles(texts));
    Book value = book.value();
    if (value == null) {
      throw new AssertionError("the book has problems: " + book.problems());
    }
    return value;
  }

  /** Returns the texts of a book. */
  public static Map<String, String> texts(Path folder) {
    return new TreeMap<>(Objects.requireNonNull(BookFiles.read(folder).value()).texts());
  }

  /** Returns one file of a book. */
  public static String text(Path folder, String file) {
    try {
      return Files.readString(folder.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads a text that must be YAML. */
  public static Node tree(String text) {
    Parsed<Node> parsed = YamlReader.read("machine.yaml", text);
    Node node = parsed.value();
    if (node == null) {
      throw new AssertionError("no YAML: " + parsed.problems());
    }
    return node;
  }

  /** Reads a machine that must be sound. */
  public static Machine machine(String text) {
    Parsed<Machine> parsed = MachineReader.read(tree(text));
    Machine machine = parsed.value();
    if (machine == null) {
      throw new AssertionError("the machine has problems: " + parsed.problems());
    }
    return machine;
  }

  /** Returns a small machine with one slide, driven through these elements by a wheel. */
  public static String slide(String elements) {
    return slide(elements, "");
  }

  /** Returns a small machine with one slide driven through these elements, and more blocks. */
  public static String slide(String elements, String more) {
    return """
    fettle: 1
    name: Bench
    lathe: {centre height: 90 mm, between centres: 300 mm}
    members:
      bed: {seat: {kind: fixed}}
      slide: {seat: {kind: sliding, on: bed, axis: Z, travel: 100 mm}}
      wheel: {seat: {kind: turning, on: slide, axis: X}, handle diameter: 80 mm}
    trains:
      drive:
        from: wheel
        to: slide
        elements: {%s}
    %s
    """
        .formatted(elements, more);
  }
}
