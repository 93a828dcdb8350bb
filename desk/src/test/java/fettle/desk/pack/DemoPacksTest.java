package fettle.desk.pack;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.made.MadePart;
import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.trials.Trial;
import fettle.machine.trials.Trials;
import fettle.sheets.judge.Judge;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Sheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The packs of the demo book are what they were, and every page of theirs can be read. */
class DemoPacksTest {

  private static final Path GOLDEN = Path.of("src/test/resources/golden/packs");
  private static final String QUICK = "rear-toolpost";

  private static BookFiles files() {
    return Objects.requireNonNull(BookFiles.read(Path.of("../examples/dunlin-85")).value());
  }

  private static Book book() {
    return Objects.requireNonNull(Book.read(files()).value());
  }

  private static Pack pack(String key) {
    Book book = book();
    List<MadePart> parts = Objects.requireNonNull(MadeParts.of(book, List.of(key)).value());
    Map<String, Trial> trials = Objects.requireNonNull(Trials.read(files(), book).value());
    PackSource source =
        PackSource.of(files(), book, key, parts, trials, Heads.of(book, "2026-01-15"), Set.of());
    PackFiles made = PackFiles.of(source, name -> Optional.empty(), name -> {});
    assertThat(made.faults()).isEmpty();
    return made.pack();
  }

  private static void check(String key) throws IOException {
    Pack pack = pack(key);
    Path golden = GOLDEN.resolve(key + ".txt");
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(golden, pack.text());
    }
    assertThat(pack.text()).isEqualTo(Files.readString(golden));
    List<Sheet> pages = pack.sheets();
    for (int i = 0; i < pages.size(); i++) {
      if (pages.get(i).number().equals(key)) {
        assertThat(faults(pages.get(i))).as(key + ", page " + (i + 1)).isEmpty();
      }
    }
  }

  /** Pages of text have no title block to keep clear of; the cover is framed by itself. */
  private static List<String> faults(Sheet page) {
    return Judge.faults(page).stream().filter(f -> !f.contains("into the title block")).toList();
  }

  @Test
  void onePackIsWhatItWas() throws IOException {
    check(QUICK);
  }

  @Tag("slow")
  @TestFactory
  Stream<DynamicTest> theOthersAreWhatTheyWere() {
    return book().changes().keySet().stream()
        .filter(k -> !k.equals(QUICK))
        .map(k -> DynamicTest.dynamicTest(k, () -> check(k)));
  }
}
