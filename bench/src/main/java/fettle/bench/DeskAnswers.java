package fettle.bench;

import fettle.desk.web.Desk;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Twenty readers on loopback, each going through every room of the demo book's desk without a
 * pause; beside them twenty who fetch one small file. The readers run in the desk's own process and
 * take their part of the processors.
 */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Threads(DeskAnswers.READERS)
@Warmup(iterations = 5, time = 4)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class DeskAnswers {

  static final int READERS = 20;

  private static final int LEAST = 1000;
  private static final String FILE = "assets/icon.svg";
  private static final List<String> PAGES =
      List.of(
          "lathe",
          "lathe?state=as-planned",
          "member?name=saddle",
          "changes?tick=quiet-drive&tick=ball-headstock",
          "change?key=ball-headstock",
          "figure?id=travel/saddle%20drive/travel%20per%20turn",
          "value?file=machine.yaml&path=members.saddle.mass",
          "history",
          "parts",
          "order",
          "packs",
          "proof",
          "interview",
          "guide",
          "train?name=saddle%20drive",
          "threads",
          "gearbox",
          "screw?name=cross%20feed",
          "clamp?name=tailstock%20clamp",
          "fits",
          "spindle",
          "cuts",
          "clearance",
          "rigidity",
          "reckoners",
          "reckon/rack-travel?in.z1=13&in.z2=40&in.z3=15&in.m=16%20DP");

  private final AtomicInteger readers = new AtomicInteger();
  private final Desk desk = started();

  /** Where one reader is; each begins at another page. */
  @State(Scope.Thread)
  public static class Reader {
    private int at;

    /** Sends the reader to a page of its own. */
    @Setup(Level.Trial)
    public void place(DeskAnswers all) {
      at = all.readers.getAndIncrement();
    }
  }

  private static Desk started() {
    System.setProperty("http.maxConnections", String.valueOf(READERS));
    try {
      Path book = Files.createTempDirectory("fettle-answers-");
      for (Map.Entry<String, String> file : DemoBook.files().texts().entrySet()) {
        Path copy = book.resolve(file.getKey());
        Files.createDirectories(copy.resolveSibling("."));
        Files.writeString(copy, file.getValue());
      }
      return Desk.start(book, 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lets the desk go. */
  @TearDown
  public void close() {
    desk.close();
  }

  /** Fetches the next page of the round. */
  @Benchmark
  public int page(Reader reader) {
    reader.at++;
    return fetched(PAGES.get(reader.at % PAGES.size()));
  }

  /** Fetches a small file that is only sent. */
  @Benchmark
  public int file() {
    return fetched(FILE);
  }

  /** Reads an answer to its end over a line that is kept open, as a browser does. */
  private int fetched(String page) {
    try {
      HttpURLConnection line =
          (HttpURLConnection) URI.create(desk.address() + page).toURL().openConnection();
      try (InputStream text = line.getInputStream()) {
        return text.readAllBytes().length;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Refuses to measure a desk that does not answer, or answers twice differently. */
  static void agree() {
    DeskAnswers own = new DeskAnswers();
    for (String page : PAGES) {
      int first = own.fetched(page);
      int second = own.fetched(page);
      if (first < LEAST || first != second) {
        throw new IllegalStateException(page + " is not answered steadily");
      }
    }
    own.close();
  }
}
