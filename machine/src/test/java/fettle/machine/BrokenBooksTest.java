package fettle.machine;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hundred thousand books with a mistake each: all refused, with file and line, none slowly. */
class BrokenBooksTest {

  private static final long BOOKS = 100_000;
  private static final long MOST_NANOSECONDS = 1_000_000_000L;
  private static final Set<String> WITHOUT_LINE = Set.of("file name");
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private static final Map<String, String> SMALL =
      Map.of(
          "machine.yaml",
          """
          fettle: 1
          name: Small
          lathe: {centre height: 3 1/2 in, between centres: 350 mm}
          members:
            bed: {seat: {kind: fixed}, mass: 20 kg ± 1 kg}
            saddle:
              seat: {kind: sliding, on: bed, axis: Z, travel: 11 in}
            wheel: {seat: {kind: turning, on: saddle, axis: X}}
          trains:
            cross feed:
              from: wheel
              to: saddle
              elements:
                pair: {kind: gear pair, driver: 15, driven: 60, module: 20 DP, idlers: 1}
                screw: {kind: screw, thread: Tr 12x3 LH, play: 0.1 to 0.2 mm}
          dials:
            cross dial: {on: wheel, train: cross feed, diameter: 40 mm, lines: 60, division: 0.01 mm}
          banjo: {centre distance: 90 mm, slot from: 30 mm, slot to: 80 mm}
          """,
          "shop.yaml",
          """
          change gears: {module: 1 mm, teeth: [20, 40]}
          instruments:
            indicator: {what: Dial indicator., resolution: 10 µm}
          """,
          "changes/first-dial.yaml",
          """
          title: A dial
          reason: Lengths are set by rule.
          stage: idea
          hours: 8 h
          steps:
            cut: {do: Cut the lines., hours: 2 h, lathe: used}
          differs: {name: x}
          """);

  @TempDir private Path folder;

  @Test
  void everyBrokenBookIsRefused() {
    BrokenBooks starter = new BrokenBooks(SampleBooks.texts(SampleBooks.STARTER));
    BrokenBooks small = new BrokenBooks(SMALL);
    List<String> wrong =
        LongStream.range(0, BOOKS)
            .parallel()
            .mapToObj(n -> fault(n, (n % 8 == 0 ? starter : small).book(n)))
            .filter(f -> !f.isEmpty())
            .limit(20)
            .toList();
    assertThat(wrong).isEmpty();
  }

  /** Returns what is not as it should be; empty if the book is refused as it should be. */
  private static String fault(long number, BrokenBooks.Broken broken) {
    long start = CLOCK.getCurrentThreadCpuTime();
    Parsed<Book> parsed;
    try {
      parsed = Book.checked(new BookFiles(broken.texts()));
    } catch (RuntimeException | StackOverflowError e) {
      StackTraceElement at = e.getStackTrace().length > 0 ? e.getStackTrace()[0] : null;
      return said(number, broken, "throws " + e + " at " + at);
    }
    long spent = CLOCK.getCurrentThreadCpuTime() - start;
    if (spent > MOST_NANOSECONDS) {
      return said(number, broken, "takes " + spent / 1_000_000 + " ms of the processor");
    }
    List<Problem> problems = parsed.problems();
    if (parsed.value() != null || problems.isEmpty()) {
      return said(number, broken, "is accepted");
    }
    for (Problem problem : problems) {
      if (!broken.texts().containsKey(problem.at().file())) {
        return said(number, broken, "names a file that is not there: " + problem.text());
      }
      if (problem.expected().isBlank() || problem.text().indexOf('\n') >= 0) {
        return said(number, broken, "has no readable message: " + problem.text());
      }
    }
    if (WITHOUT_LINE.contains(broken.kind())) {
      return "";
    }
    boolean placed =
        problems.stream()
            .anyMatch(
                p ->
                    p.at().line() > 0
                        && (broken.file().isEmpty() || p.at().file().equals(broken.file()))
                        && (broken.line() == 0 || p.at().line() == broken.line()));
    return placed ? "" : said(number, broken, "is refused elsewhere: " + problems);
  }

  private static String said(long number, BrokenBooks.Broken broken, String what) {
    String text = broken.kind() + " in " + broken.file() + ":" + broken.line();
    String shown = text.length() > 200 ? text.substring(0, 200) : text;
    String more = what.length() > 600 ? what.substring(0, 600) : what;
    return "book " + number + " (" + shown + ") " + more;
  }

  /** Bytes that are no UTF-8 are refused with the line they stand on. */
  @Test
  void wrongBytesAreRefusedWithTheirLine() throws IOException {
    byte[] sound =
        SampleBooks.text(SampleBooks.STARTER, "machine.yaml").getBytes(StandardCharsets.UTF_8);
    Random random = new Random(3629);
    for (int n = 0; n < 300; n++) {
      byte[] bytes = sound.clone();
      int at = random.nextInt(bytes.length - 4);
      bytes[at] = (byte) (0xf8 + random.nextInt(8));
      Files.write(folder.resolve("machine.yaml"), bytes);
      int line = 1 + (int) IntStream.range(0, at).filter(i -> sound[i] == '\n').count();
      assertThat(BookFiles.read(folder).problems())
          .singleElement()
          .satisfies(p -> assertThat(p.at().line()).isEqualTo(line));
    }
  }

  /** Texts just under the longest allowed, and one beyond it, large in every way a text can be. */
  @Test
  void largeTextsAreAnsweredSoon() {
    StringBuilder members = new StringBuilder();
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < 399; i++) {
      members.append("  ").append("m".repeat(50)).append(i);
      members
          .append(": {seat: {kind: bolted, on: ")
          .append("n".repeat(50))
          .append(i)
          .append("}}\n");
    }
    for (int i = 0; i < 8_000; i++) {
      keys.append("member of the lathe ").append(i).append(": 1\n");
    }
    String head = "fettle: 1\nname: x\nlathe: {centre height: 90 mm, between centres: 300 mm}\n";
    StringBuilder patch = new StringBuilder("title: t\nreason: r\ndiffers: {");
    for (int i = 0; i < 4_900; i++) {
      patch.append("k").append(i).append(": {a: 1, b: 2}, ");
    }
    patch.append("}\n");
    List<Map<String, String>> large =
        List.of(
            Map.of("machine.yaml", head + "members:\n" + members),
            Map.of("machine.yaml", head + keys),
            Map.of("machine.yaml", head + "# ".repeat(1_000_000)),
            Map.of("machine.yaml", "{".repeat(249_000)),
            Map.of("machine.yaml", "a: 1\n".repeat(49_000)),
            Map.of("machine.yaml", "- ".repeat(124_000)),
            Map.of("machine.yaml", "? ".repeat(124_000)),
            Map.of("machine.yaml", "\"" + "\\n".repeat(124_000)),
            Map.of("machine.yaml", "# " + "x\n#".repeat(83_000)),
            Map.of("machine.yaml", "a: |\n" + "  line\n".repeat(35_000)),
            Map.of("machine.yaml", "a: [" + "b, ".repeat(83_000) + "]"),
            Map.of(
                "machine.yaml",
                SampleBooks.text(SampleBooks.STARTER, "machine.yaml"),
                "changes/a.yaml",
                patch.toString(),
                "changes/b.yaml",
                patch.toString()));
    for (Map<String, String> texts : large) {
      long start = CLOCK.getCurrentThreadCpuTime();
      Parsed<Book> parsed = Book.checked(new BookFiles(texts));
      long spent = CLOCK.getCurrentThreadCpuTime() - start;
      String what = String.valueOf(texts.get("machine.yaml")).substring(0, 40);
      assertThat(parsed.problems()).as(what).isNotEmpty();
      assertThat(spent / 1_000_000).as("milliseconds for " + what).isLessThan(1_000);
    }
  }
}
