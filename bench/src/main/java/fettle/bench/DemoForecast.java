package fettle.bench;

import fettle.machine.forecast.Forecast;
import fettle.machine.state.Book;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.text.BookFiles;
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
import org.openjdk.jmh.annotations.Warmup;

/** Foreseeing the ball headstock of the demo lathe, in a process that is warm. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@org.openjdk.jmh.annotations.State(Scope.Benchmark)
public class DemoForecast {

  private final BookFiles files = DemoBook.files();
  private final Book book = DemoBook.read(files);

  /** Both states studied, the book at hand. */
  @Benchmark
  public Forecast forecast() {
    return forecast(book);
  }

  /** Text to forecast, the whole book read and checked again. */
  @Benchmark
  public Forecast fromText() {
    return forecast(DemoBook.read(files));
  }

  private static Forecast forecast(Book book) {
    List<String> before = book.keys(Stage::done);
    List<String> after = new ArrayList<>(before);
    book.withNeeds("ball-headstock").stream().filter(k -> !before.contains(k)).forEach(after::add);
    return Forecast.of(book, State.of(book, "before", before), State.of(book, "after", after));
  }

  /** Refuses to measure two forecasts that do not agree. */
  static void agree() {
    DemoForecast both = new DemoForecast();
    if (!both.forecast().rows().equals(both.fromText().rows())) {
      throw new IllegalStateException("two forecasts of one book differ");
    }
  }
}
