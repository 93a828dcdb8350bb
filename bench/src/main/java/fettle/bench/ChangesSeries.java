package fettle.bench;

import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.text.BookFiles;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.Warmup;

/** The state of a lathe after so many changes, each altering one value. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@org.openjdk.jmh.annotations.State(Scope.Benchmark)
public class ChangesSeries {

  /** Number of changes. */
  @Param({"10", "100", "1000"})
  public int changes = 10;

  private Book book = DemoBook.read(files(10));

  /** Writes the changes. */
  @Setup
  public void make() {
    book = DemoBook.read(files(changes));
  }

  private static BookFiles files(int changes) {
    Map<String, String> texts = new TreeMap<>();
    DemoBook.files()
        .texts()
        .forEach(
            (name, text) -> {
              if (!name.startsWith("changes/") && !name.startsWith("trials/")) {
                texts.put(name, text);
              }
            });
    for (int i = 0; i < changes; i++) {
      texts.put(
          String.format(java.util.Locale.ROOT, "changes/heavier-%04d.yaml", i),
          "title: Weight\nreason: Trial.\nstage: planned\ndiffers:\n  members:\n    tailstock:\n"
              + "      mass: "
              + (6000 + i)
              + " g\n");
    }
    return new BookFiles(texts);
  }

  /** All changes at once, in order. */
  @Benchmark
  public State state() {
    return State.of(book, "after", List.copyOf(book.changes().keySet()));
  }

  /** The lathe as bought, read from its tree: what any program must do at least. */
  @Benchmark
  public State none() {
    return State.of(book, "bought", List.of());
  }

  /** Refuses to measure states that are not sound. */
  static void agree() {
    ChangesSeries series = new ChangesSeries();
    if (series.state().machine().isEmpty() || series.none().machine().isEmpty()) {
      throw new IllegalStateException("the lathe cannot be read after the changes");
    }
  }
}
