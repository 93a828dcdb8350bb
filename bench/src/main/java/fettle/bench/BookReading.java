package fettle.bench;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Reading the book of the demo lathe. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class BookReading {

  private final BookFiles files = DemoBook.files();

  /** Texts to a book, every key looked up, every place kept. */
  @Benchmark
  public Parsed<Book> book() {
    return Book.read(files);
  }

  /** The same with everything the states lack. */
  @Benchmark
  public Parsed<Book> checked() {
    return Book.checked(files);
  }

  /** A general library turns the same texts into maps and lists: no places, no checks. */
  @Benchmark
  public List<Object> plainMaps() {
    List<Object> all = new ArrayList<>();
    files
        .texts()
        .forEach(
            (name, text) -> {
              if (name.endsWith(".yaml")) {
                all.add(new Load(LoadSettings.builder().build()).loadFromString(text));
              }
            });
    return all;
  }

  /** Refuses to measure a book that cannot be read. */
  static void agree() {
    BookReading reading = new BookReading();
    if (reading.book().value() == null || reading.plainMaps().isEmpty()) {
      throw new IllegalStateException("the demo book cannot be read");
    }
  }
}
