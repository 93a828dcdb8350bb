package fettle.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.made.MadePart;
import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.sheets.judge.Judge;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Sheet;
import fettle.sheets.svg.SvgSheet;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Sheets of every part that is made in the demo book, and of its assemblies. */
class DemoSheetsTest {

  private static final int EVERY = 5;

  private static Optional<Book> book = Optional.empty();
  private static List<MadePart> parts = List.of();

  private static Heads heads() {
    String date = "2026-01-15";
    return Heads.of(book.orElseThrow(), date).revised("A", date);
  }

  @BeforeAll
  static void read() {
    Parsed<BookFiles> files = BookFiles.read(Path.of("../examples/dunlin-85"));
    Book read = Objects.requireNonNull(Book.read(Objects.requireNonNull(files.value())).value());
    Parsed<List<MadePart>> made = MadeParts.of(read);
    assertThat(made.problems()).isEmpty();
    book = Optional.of(read);
    parts = Objects.requireNonNull(made.value());
  }

  private static DynamicTest sheet(MadePart part) {
    return DynamicTest.dynamicTest(
        part.change() + "/" + part.key(),
        () -> {
          Sheets drawn = Sheets.of(part.recipe(), heads());
          assertThat(drawn.faults()).isEmpty();
          Golden.check("dunlin-85/" + part.key() + ".svg", drawn.svg());
        });
  }

  private static Stream<MadePart> slice(boolean within) {
    return IntStream.range(0, parts.size())
        .filter(i -> i % EVERY == 0 == within)
        .mapToObj(parts::get);
  }

  @TestFactory
  Stream<DynamicTest> aSliceOfTheSheets() {
    return slice(true).map(DemoSheetsTest::sheet);
  }

  @Tag("slow")
  @TestFactory
  Stream<DynamicTest> theOtherSheets() {
    return slice(false).map(DemoSheetsTest::sheet);
  }

  @TestFactory
  Stream<DynamicTest> assemblies() {
    return book.orElseThrow().changes().values().stream()
        .flatMap(c -> Assembly.of(c, parts).stream())
        .map(a -> DynamicTest.dynamicTest(a.change().key(), () -> assembly(a)));
  }

  private static void assembly(Assembly assembly) {
    Sheet sheet = assembly.sheet(heads());
    assertThat(Judge.faults(sheet)).isEmpty();
    Golden.check("dunlin-85/assembly-" + assembly.change().key() + ".svg", SvgSheet.of(sheet));
  }

  @TestFactory
  Stream<DynamicTest> sheetsBesideParts() {
    return book.orElseThrow().changes().values().stream()
        .flatMap(c -> BesideParts.of(book.orElseThrow(), c, parts).stream())
        .map(one -> DynamicTest.dynamicTest(one.name(), () -> beside(one)));
  }

  private static void beside(BesideParts one) {
    PlanFiles files = one.draw().apply(heads());
    assertThat(files.faults()).isEmpty();
    Golden.check("dunlin-85/" + one.name() + ".svg", SvgSheet.of(files.sheet()));
  }

  @Test
  void dialsHaveTemplatesAndTheControlBoxALayout() {
    assertThat(sheetsBesideParts().map(DynamicTest::getDisplayName))
        .containsExactlyInAnyOrder(
            "control-box", "cross-dial-template", "saddle-dial-ring-template");
  }

  @Test
  void theBookHasPartsOfEveryFamilyAndAssemblies() {
    Set<String> numbers = new HashSet<>();
    Set<Class<?>> families = new HashSet<>();
    parts.forEach(p -> numbers.add(p.recipe().heading().number()));
    parts.forEach(p -> families.add(p.recipe().getClass()));
    assertThat(numbers).hasSize(parts.size()).hasSizeGreaterThanOrEqualTo(25);
    assertThat(families).hasSize(3);
    assertThat(assemblies().count()).isGreaterThanOrEqualTo(6);
  }
}
