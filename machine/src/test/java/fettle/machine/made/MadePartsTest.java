package fettle.machine.made;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import fettle.mechanics.gears.Gear;
import fettle.parts.recipe.Prismatic;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Toothing;
import fettle.parts.recipe.Turned;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Recipes of a book become parts, sized by the lathe; what is wrong is said at its place. */
class MadePartsTest {

  private static final String MACHINE =
      """
      fettle: 1
      name: Small
      lathe: {centre height: 90 mm, between centres: 300 mm}
      members:
        bed: {seat: {kind: fixed}}
        slide: {seat: {kind: sliding, on: bed, axis: Z, travel: 100 mm}, length: 120 mm}
        wheel: {seat: {kind: turning, on: slide, axis: X}, handle diameter: 80 mm}
      trains:
        drive:
          from: wheel
          to: slide
          elements:
            pair: {kind: gear pair, driver: 20, driven: 40, module: 1.25 mm, centre distance: 37.5 mm, driven shift: 0.1}
            screw: {kind: screw, thread: Tr 14x3 LH, length: 180 mm, bearing: {kind: rolling, type: 7204B, count: 2, shaft fit: k5, housing fit: J6}}
      """;
  private static final String CHANGE =
      """
      title: A part
      reason: To try it.
      differs: {members: {slide: {length: 150 mm}}}
      parts:
        one: {what: A part., material: C45, stock: bar 40 mm, recipe: one}
      """;

  private static Parsed<List<MadePart>> read(String recipe) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("machine.yaml", MACHINE);
    texts.put("changes/part.yaml", CHANGE);
    texts.put("parts/one.yaml", "title: One\n" + recipe);
    Parsed<Book> book = Book.read(new BookFiles(texts));
    assertThat(book.problems()).isEmpty();
    return MadeParts.of(Objects.requireNonNull(book.value()));
  }

  private static MadePart part(String recipe) {
    Parsed<List<MadePart>> parts = read(recipe);
    assertThat(parts.problems()).isEmpty();
    return Objects.requireNonNull(parts.value()).get(0);
  }

  private static Size diameter(String written) {
    MadePart made =
        part("turned: {outside: [{cylinder: {diameter: " + written + ", length: 300 mm}}]}");
    return ((Turned) made.recipe()).outside().get(0).diameter();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          12 mm                                                        | 12    | ''  |  0    | 0
          1/2 in                                                       | 12.7  | ''  |  0    | 0
          12 mm h6                                                     | 12    | h6  |  0    | 0
          12 mm ± 0.05 mm                                              | 12    | ''  | -0.05 | 0.05
          12 mm +0.1/-0.2                                              | 12    | ''  | -0.2  | 0.1
          12 mm 0/-0.1                                                 | 12    | ''  | -0.1  | 0
          = members.slide.length / 5                                   | 30    | ''  |  0    | 0
          = members.slide.length - 120 mm fit g6                       | 30    | g6  |  0    | 0
          = 10 mm + members.slide.length / 5 * 2                       | 70    | ''  |  0    | 0
          = bore of bearing trains.drive.elements.screw.bearing        | 20    | k5  |  0    | 0
          = bore of bearing trains.drive.elements.screw.bearing fit m6 | 20    | m6  |  0    | 0
          = outside of bearing trains.drive.elements.screw.bearing     | 47    | J6  |  0    | 0
          = outside of bearing 7204B                                   | 47    | ''  |  0    | 0
          = width of bearing 7204B * 2 + 4 mm                          | 32    | ''  |  0    | 0
          """)
  void sizesAreWrittenOrReckoned(
      String written, double nominal, String zone, double lower, double upper) {
    Size size = diameter(written);
    assertThat(size.nominal()).isCloseTo(nominal, within(1e-12));
    assertThat(size.tolerance().zone()).isEqualTo(zone);
    assertThat(size.tolerance().lower()).isCloseTo(lower, within(1e-12));
    assertThat(size.tolerance().upper()).isCloseTo(upper, within(1e-12));
  }

  @Test
  void threadsAndCountsComeFromTheLathe() {
    MadePart made =
        part(
            """
            nut: {thread: = trains.drive.elements.screw.thread, diameter: 22 mm, length: = figure travel/drive/travel per turn * 20}
            """);
    Turned nut = (Turned) made.recipe();
    assertThat(Objects.requireNonNull(nut.left().steps().get(0).thread()).designation())
        .isEqualTo("Tr 14x3 LH");
    assertThat(nut.length()).isCloseTo(30, within(1e-9));
    assertThat(nut.heading().density()).isBetween(7.7e-9, 7.9e-9);
  }

  @Test
  void aGearPairYieldsItsGear() {
    MadePart made = part("gear: {pair: trains.drive.elements.pair, width: 10 mm, bore: 12 mm H7}");
    Toothing teeth = Objects.requireNonNull(((Turned) made.recipe()).outside().get(0).teeth());
    assertThat(teeth.teeth()).isEqualTo(40);
    assertThat(teeth.shift()).isEqualTo(0.1);
    Gear gear = Gear.of(1.25, 40, 0.1, Math.toRadians(20));
    String span = fettle.mechanics.base.Numbers.fixed(gear.span(gear.spanTeeth(), 0), 3);
    assertThat(String.join(" ", teeth.further())).contains(span.replace('.', ','));
  }

  @Test
  void contentFollowsTheSizesOnly() {
    String first =
        part("block: {length: = members.slide.length, width: 20 mm, height: 9 mm}").content();
    String same = part("block: {height: 9 mm, width: 20 mm, length: 150 mm}").content();
    String other = part("block: {height: 9 mm, width: 20 mm, length: 151 mm}").content();
    assertThat(first).isEqualTo(same).isNotEqualTo(other);
  }

  @Test
  void everythingWrongIsSaidAtItsPlace() {
    List<Problem> problems =
        read("""
        block:
          length: = members.slide.lenth
          width: 20
          height: 9 mm + 1
        """)
            .problems();
    assertThat(problems).hasSize(3);
    assertThat(problems.get(0).text())
        .startsWith("parts/one.yaml:3:11: block.length: ")
        .contains("Did you mean 'length'?");
    assertThat(problems.get(1).text()).startsWith("parts/one.yaml:4:10: block.width: ");
    assertThat(problems.get(2).at().line()).isEqualTo(5);
  }

  @Test
  void anImpossibleFeatureIsNamedWithItsLine() {
    List<Problem> problems =
        read("""
        block:
          length: 40 mm
          width: 20 mm
          height: 9 mm
          operations:
            - holes: {name: oil hole, u: 60 mm, v: 10 mm, diameter: 4 mm}
        """)
            .problems();
    assertThat(problems).isNotEmpty();
    assertThat(problems.get(0).text()).startsWith("parts/one.yaml:7:").contains("oil hole");
  }

  @Test
  void unknownKeysAndRecipesAreRefused() {
    assertThat(read("block: {lenght: 40 mm, width: 20 mm, height: 9 mm}").problems())
        .anyMatch(p -> p.text().startsWith("parts/one.yaml:2:") && p.text().contains("lenght"));
    assertThat(read("wheel: {length: 40 mm}").problems()).isNotEmpty();
  }

  @Test
  void featuresWithoutNamesGetOne() {
    Prismatic block =
        (Prismatic)
            part("""
            block:
              length: 40 mm
              width: 20 mm
              height: 9 mm
              operations:
                - holes: {u: 10 mm, v: 10 mm, diameter: 4 mm}
                - holes: {u: 30 mm, v: 10 mm, diameter: 4 mm}
            """)
                .recipe();
    assertThat(block.operations()).extracting(o -> o.name()).containsExactly("holes 1", "holes 2");
  }
}
