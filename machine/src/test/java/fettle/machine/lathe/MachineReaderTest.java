package fettle.machine.lathe;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.SampleBooks;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a lathe or with a change of it is a problem with file and line. */
class MachineReaderTest {

  private static final String MACHINE = SampleBooks.text(SampleBooks.STARTER, "machine.yaml");

  private static List<Problem> problems(Map<String, String> texts) {
    Parsed<Book> book = Book.checked(new BookFiles(texts));
    assertThat(book.value() == null).isEqualTo(!book.problems().isEmpty());
    return book.problems();
  }

  private static int line(String text, String piece) {
    int at = text.indexOf(piece);
    assertThat(at).as(piece).isNotNegative();
    return (int) text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
  }

  /** One piece of the starter lathe replaced: the problem stands where the replacement stands. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          on: bed}\\n  spindle          | on: headstock}\\n  spindle       | a circle: headstock on headstock
          on: bed}\\n  spindle          | on: spindle}\\n  spindle         | a circle: headstock on spindle on headstock
          {kind: fixed}                | {kind: bolted, on: saddle}     | a circle
          on: headstock, axis          | on: hedstock, axis             | Did you mean 'headstock'
          from: saddle handwheel       | from: saddle handweel          | Did you mean 'saddle handwheel'
          train: cross feed            | train: cross fed               | Did you mean 'cross feed'
          train: cross feed            | train: spindle drive           | which ends in turning
          from: motor                  | from: spindle                  | a circle: the motion of 'spindle'
          to: spindle                  | to: motor                      | a circle: the motion of 'motor'
          wheels: [20, 80]             | wheels: [20, 80, 30]           | in pairs
          wheels: [20, 80]             | wheels: []                     | in pairs
          module: 1.5 mm, play         | play                           | either its module or its pitch
          pinion: 14, module           | pinion: 14, pitch: 5 mm, module | either its module or its pitch
          slow: {driver: 60 mm, driven: 140 mm} | slow: {driver: 60 mm}   | no driven
          slot from: 30 mm             | slot from: 95 mm               | ends before it begins
          rack: {kind: rack            | rack: {after: lack, kind: rack | 'lack'
          pair: {kind                  | pair: {after: rack, kind       | an element that gives travel
          pair: {kind                  | pair: {after: pair, kind       | 'pair'
          fettle: 1                    | fettle: 2                      | 1 to 1
          units: metric                | units: metrik                  | Did you mean 'metric'
          invented: yes                | invented: true                 | yes or no
          centre height: 90 mm         | centre height: 90              | not a bare number
          centre height: 90 mm         | centre hight: 90 mm            | Did you mean 'centre height'
          centre height: 90 mm         | centre height: 90 kg           | a length with its unit
          centre height: 90 mm         | centre height: 90 km           | 10 to 1000 mm
          centre height: 90 mm         | centre height: [90 mm]         | a list of 1
          centre height: 90 mm         | centre height:                 | spindle axis above the ways
          thread: Tr 12x3 LH           | thread: Tr 12y3 LH             | a thread such as
          kind: gear pair              | kind: gear pear                | Did you mean 'gear pair'
          kind: gear pair              | kinds: gear pair               | no kind
          lines: 60                    | lines: 60.5                    | a whole number
          lines: 60                    | lines: 1                       | 2 to 2000
          """)
  void oneMistake(String piece, String instead, String words) {
    String before = piece.strip().replace("\\n", "\n");
    String after = instead.strip().replace("\\n", "\n");
    String broken = MACHINE.replace(before, after);
    assertThat(broken).isNotEqualTo(MACHINE);
    List<Problem> problems = problems(Map.of("machine.yaml", broken));
    assertThat(problems).anySatisfy(p -> assertThat(p.text()).contains(words));
    assertThat(problems)
        .filteredOn(p -> p.text().contains(words))
        .first()
        .satisfies(
            p -> {
              assertThat(p.at().file()).isEqualTo("machine.yaml");
              assertThat(p.at().line()).isBetween(1, (int) broken.lines().count());
            });
  }

  @Test
  void theLineIsTheOneOfTheMistake() {
    for (String piece : List.of("centre height: 90 mm", "travel: 90 mm", "teeth", "pinion: 14")) {
      if (MACHINE.contains(piece)) {
        String broken = MACHINE.replace(piece, piece.replace(":", "x:"));
        List<Problem> problems = problems(Map.of("machine.yaml", broken));
        assertThat(problems)
            .anySatisfy(
                p -> assertThat(p.at().line()).isEqualTo(line(broken, piece.replace(":", "x:"))));
      }
    }
  }

  @Test
  void aLongCircleOfMembersIsFoundOnce() {
    StringBuilder members = new StringBuilder("  bed: {seat: {kind: fixed}}\n");
    for (int i = 0; i < 300; i++) {
      members.append("  m%d: {seat: {kind: bolted, on: m%d}}\n".formatted(i, (i + 1) % 300));
    }
    List<Problem> problems =
        problems(
            Map.of(
                "machine.yaml",
                "fettle: 1\n"
                    + "name: x\n"
                    + "lathe: {centre height: 90 mm, between centres: 300 mm}\n"
                    + "members:\n"
                    + members));
    assertThat(problems).hasSize(300).allSatisfy(p -> assertThat(p.text()).contains("a circle"));
  }

  @Test
  void aCircleOfTrainsOverSeveralMembers() {
    String belt = "elements: {b: {kind: belt, driver: 50 mm, driven: 60 mm}}}";
    String broken =
        MACHINE.replace(
            "trains:\n",
            "trains:\n  one: {from: lead screw, to: motor, %s\n  two: {from: spindle, to: lead screw, %s\n"
                .formatted(belt, belt));
    assertThat(problems(Map.of("machine.yaml", broken)))
        .hasSize(3)
        .allSatisfy(
            p -> {
              assertThat(p.text()).contains("a circle: the motion of");
              assertThat(p.at().line()).isPositive();
            });
  }

  @Test
  void stepsWithoutEndAreRefused() {
    String belt =
        "b%d: {kind: belt, steps: {a: {driver: 50 mm, driven: 60 mm}, b: {driver: 50 mm, driven: 70"
            + " mm}}}";
    StringBuilder elements = new StringBuilder();
    for (int i = 0; i < 40; i++) {
      elements.append(belt.formatted(i)).append(", ");
    }
    String broken = SampleBooks.slide(elements + "s: {kind: screw, thread: Tr 10x2}");
    assertThat(problems(Map.of("machine.yaml", broken)))
        .singleElement()
        .satisfies(p -> assertThat(p.text()).contains("200 combinations of steps"));
  }

  /** A patch that takes away what another part needs is refused, and the change is named. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          members: {saddle: null}                      | 'saddle'
          members: {bed: null}                         | 'bed'
          members: null                                | no members
          trains: {saddle drive: null}                 | 'saddle drive'
          trains: {saddle drive: {elements: null}}     | no elements
          trains: {saddle drive: {elements: {pair: null, rack: null}}} | no elements
          trains: {saddle drive: {elements: {rack: null}}} | which ends in turning
          trains: {spindle drive: null}                | 'spindle drive'
          drive: {motor: null}                         | no motor
          lathe: {centre height: null}                 | no centre height
          lathe: null                                  | no lathe
          members: {saddle: {seat: {kind: null}}}      | no kind
          members: {saddle: {seat: {kind: bolted}}}    | 'axis: null'
          members: {bed: {seat: {kind: bolted, on: saddle}}} | a circle
          name: null                                   | no name
          banjo: {slot to: 10 mm}                      | ends before it begins
          """)
  void aPatchThatRemovesWhatIsNeeded(String patch, String words) {
    String machine =
        MACHINE.replace(
            "dials:\n",
            "dials:\n  saddle dial: {on: saddle handwheel, train: saddle drive, diameter: 60 mm,"
                + " lines: 165, division: 0.1 mm}\n");
    Map<String, String> texts =
        Map.of(
            "machine.yaml",
            machine,
            "changes/bad.yaml",
            "title: Bad\nreason: none\ndiffers: {" + patch + "}\n");
    assertThat(problems(texts))
        .isNotEmpty()
        .anySatisfy(p -> assertThat(p.text()).contains(words))
        .allSatisfy(
            p -> {
              assertThat(p.at().line()).isPositive();
              assertThat(p.at().file()).isIn("machine.yaml", "changes/bad.yaml");
              assertThat(p.remedy()).contains("the change 'bad'");
            });
  }

  @Test
  void changesThatNeedEachOtherAreRefused() {
    String change = "title: T\nreason: r\nneeds: [%s]\ndiffers: {name: x}\n";
    assertThat(
            problems(
                Map.of(
                    "machine.yaml", MACHINE,
                    "changes/a.yaml", change.formatted("b"),
                    "changes/b.yaml", change.formatted("c"),
                    "changes/c.yaml", change.formatted("a"))))
        .hasSize(3)
        .allSatisfy(p -> assertThat(p.at().line()).isEqualTo(3));
    assertThat(
            problems(Map.of("machine.yaml", MACHINE, "changes/a.yaml", change.formatted("aa, a"))))
        .hasSize(2);
  }

  @Test
  void everyMistakeIsReportedAtOnce() {
    String broken =
        MACHINE
            .replace("centre height: 90 mm", "centre height: 90")
            .replace("kind: rack", "kind: rak")
            .replace("lines: 60", "lines: many")
            .replace("units: metric", "unit: metric");
    assertThat(
            problems(
                Map.of(
                    "machine.yaml", broken,
                    "shop.yaml", "change gears: {module: 1, teeth: [20]}",
                    "changes/x.yaml", "title: t\nreason: r\nstage: soon\ndiffers: {}\n")))
        .hasSize(6)
        .extracting(p -> p.at().file())
        .contains("machine.yaml", "shop.yaml", "changes/x.yaml");
  }
}
