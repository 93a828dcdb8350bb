package fettle.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command by its words: what it says, to whom, and with which exit status. */
class CommandsTest {

  private static final SchemaRegistry SCHEMAS =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  @TempDir private Path folder;

  private static void follows(String schema, String json) throws IOException {
    String text = Files.readString(Told.DOCS.resolve(schema));
    assertThat(SCHEMAS.getSchema(text).validate(json, InputFormat.JSON)).as(schema).isEmpty();
  }

  private String book(String machine) throws IOException {
    Files.writeString(folder.resolve("machine.yaml"), machine);
    return folder.toString();
  }

  private static final String SMALL =
      """
      fettle: 1
      name: "%s"
      lathe: {centre height: 90 mm, between centres: 300 mm}
      members:
        bed: {seat: {kind: fixed}}
        slide: {seat: {kind: sliding, on: bed, axis: Z, travel: 100 mm}}
        wheel: {seat: {kind: turning, on: slide, axis: X}, handle diameter: 80 mm}
      trains:
        drive: {from: wheel, to: slide, elements: {s: {kind: screw, thread: Tr 10x2}}}
      dials:
        dial: {on: wheel, train: drive, diameter: %s, lines: 100, division: 0.02 mm}
      """;

  @Test
  void helpVersionAndUnknownCommands() {
    assertThat(Told.of("--help").status()).isZero();
    assertThat(Told.of("--version").out()).startsWith("fettle ");
    assertThat(Told.of().status()).isEqualTo(2);
    Told unknown = Told.of("forcast");
    assertThat(unknown.status()).isEqualTo(2);
    assertThat(unknown.err()).contains("Did you mean 'forecast'?");
    assertThat(unknown.out()).isEmpty();
    for (String command : List.of("forecast", "check", "new", "reckon")) {
      Told help = Told.of(command, "--help");
      assertThat(help.status()).isZero();
      assertThat(help.out()).contains("fettle " + command);
    }
  }

  @Test
  void checkOfASoundAndOfABrokenBook() throws IOException {
    Told sound = Told.of("check", Told.DEMO);
    assertThat(sound.status()).isZero();
    assertThat(sound.out()).contains("9 changes");
    follows("check.schema.json", Told.of("check", Told.DEMO, "--json").out());
    String broken =
        book(
            SMALL
                .formatted("x", "40 mm")
                .replace("90 mm", "90")
                .replace("kind: screw", "kind: skrew"));
    Told told = Told.of("check", broken);
    assertThat(told.status()).isEqualTo(2);
    assertThat(told.err()).contains("machine.yaml:3:", "machine.yaml:9:", "2 problems.");
    Told json = Told.of("check", broken, "--json");
    assertThat(json.status()).isEqualTo(2);
    follows("problems.schema.json", json.out());
    assertThat(json.out()).contains("\"line\" : 3");
  }

  @Test
  void forecastsAsJsonFollowTheirSchema() throws IOException {
    for (String[] args :
        new String[][] {
          {"forecast", Told.DEMO, "--json"},
          {"forecast", Told.DEMO, "quiet-drive", "--json"},
          {"forecast", Told.DEMO, "--from", "as-bought", "--to", "everything", "--json", "--all"},
          {"forecast", Told.DEMO, "gearbox", "long-bed", "--json"}
        }) {
      Told told = Told.of(args);
      assertThat(told.status()).as(String.join(" ", args) + told.err()).isBetween(0, 1);
      follows("forecast.schema.json", told.out());
    }
  }

  @Test
  void clearancesAreListedAndFollowTheirSchema() throws IOException {
    Told told = Told.of("clearance", Told.DEMO, "tailstock-lever");
    assertThat(told.status()).as(told.err()).isZero();
    assertThat(told.out())
        .contains("quill handwheel x tailstock lever", "Not searched")
        .contains("cross-screw with saddle-dial: saddle handwheel x cross handwheel");
    follows("clearance.schema.json", Told.of("clearance", Told.DEMO, "--json").out());
    assertThat(Told.of("clearance", Told.DEMO, "no-such-change").status()).isEqualTo(2);
  }

  /** A finding that says stop gives status 1: lines that would run into each other. */
  @Test
  void aFindingThatSaysStop() throws IOException {
    assertThat(Told.of("forecast", book(SMALL.formatted("x", "40 mm"))).status()).isZero();
    Told stop = Told.of("forecast", book(SMALL.formatted("x", "6 mm")));
    assertThat(stop.status()).isEqualTo(1);
    assertThat(stop.out()).contains("STOP", "run into each other");
  }

  @ParameterizedTest
  @CsvSource({
    "nothing, there is no change 'nothing'",
    "quiet-drve, Did you mean 'quiet-drive'?",
    "--to=nothing, there is no change 'nothing'",
    "--width=0, --width",
    "--width=99999, --width",
    "--width=x, --width",
    "--no-such-option, Unrecognized option"
  })
  void forecastsThatCannotBeMade(String word, String message) {
    Told told = Told.of("forecast", Told.DEMO, word);
    assertThat(told.status()).isEqualTo(2);
    assertThat(told.err()).contains(message).doesNotContain("Exception");
  }

  @Test
  void changesAndAStateAtOnceAreRefused() {
    Told told = Told.of("forecast", Told.DEMO, "gearbox", "--to", "everything");
    assertThat(told.status()).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 78, 160})
  void tablesKeepTheWidthOfTheTerminal(int width) {
    Told told = Told.of(width, Terminal.Inks.PLAIN, "forecast", Told.DEMO, "quiet-drive");
    assertThat(told.out()).doesNotContain("\u001b").contains("highest speed");
    if (width >= 77) {
      assertThat(told.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(width));
    }
    assertThat(told.lines()).allSatisfy(l -> assertThat(l).isEqualTo(l.stripTrailing()));
  }

  @Test
  void coloursAddNothingButColours() {
    String plain = Told.of(100, Terminal.Inks.PLAIN, "forecast", Told.DEMO, "gearbox").out();
    String colour = Told.of(100, Terminal.Inks.COLOUR, "forecast", Told.DEMO, "gearbox").out();
    assertThat(colour).contains("\u001b[");
    assertThat(colour.replaceAll("\u001b\\[[0-9;]*m", "").replaceAll(" +\n", "\n"))
        .isEqualTo(plain);
    assertThat(
            Told.of(100, Terminal.Inks.COLOUR, "forecast", Told.DEMO, "gearbox", "--plain").out())
        .isEqualTo(plain);
  }

  @Test
  void inchesAndWorkings() {
    Told inch = Told.of("forecast", Told.DEMO, "--inch");
    assertThat(inch.out()).contains(" in").contains(" lb");
    Told workings = Told.of("forecast", Told.DEMO, "saddle-dial", "--workings");
    assertThat(workings.out()).contains("source: ", "before: T = z1/z2*pi*m*z3");
  }

  /** A page needs nothing from elsewhere, runs nothing, and shows hostile names as text. */
  @Test
  void thePageStandsAlone() throws IOException {
    Path page = folder.resolve("pages/forecast.html");
    Told told =
        Told.of(
            "forecast",
            Told.DEMO,
            "--from",
            "as-bought",
            "--to",
            "everything",
            "--html",
            page.toString());
    assertThat(told.status()).isBetween(0, 1);
    String html = Files.readString(page);
    assertThat(html).startsWith("<!DOCTYPE html>").contains("</html>");
    assertThat(html.toLowerCase(java.util.Locale.ROOT))
        .doesNotContain(
            "http:", "https:", "<script", "<link", "src=", "@import", "url(", "onclick");
    String hostile = "<script>alert('x')</script>&amp;<img src=x onerror=y>";
    Path bad = folder.resolve("bad.html");
    Told.of("forecast", book(SMALL.formatted(hostile, "40 mm")), "--html", bad.toString());
    assertThat(Files.readString(bad))
        .doesNotContain("<script", "<img")
        .contains("&lt;script&gt;alert(", "&lt;/script&gt;&amp;amp;");
  }

  @Test
  void aPageThatCannotBeWritten() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "x");
    Told told = Told.of("forecast", Told.DEMO, "--html", file + "/page.html");
    assertThat(told.status()).isEqualTo(3);
    assertThat(told.err()).contains("cannot write").doesNotContain("Exception:");
  }

  @Test
  void newStartsASoundBookAndNeverOverwrites() throws IOException {
    String name = folder.resolve("my lathe").toString();
    assertThat(Told.of("new", name).status()).isZero();
    assertThat(Told.of("check", name).status()).isZero();
    assertThat(Told.of("forecast", name).status()).isBetween(0, 1);
    Path machine = Path.of(name, "machine.yaml");
    Files.writeString(machine, "mine");
    Told again = Told.of("new", name);
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("is there already");
    assertThat(Files.readString(machine)).isEqualTo("mine");
    Path file = Files.writeString(folder.resolve("a file"), "mine");
    assertThat(Told.of("new", file.toString()).status()).isEqualTo(2);
    assertThat(Files.readString(file)).isEqualTo("mine");
    Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("nowhere"));
    assertThat(Told.of("new", link.toString()).status()).isBetween(2, 3);
    Path empty = Files.createDirectory(folder.resolve("empty"));
    assertThat(Told.of("new", empty.toString()).status()).isZero();
  }

  @Test
  void reckonListsDescribesAndAnswers() throws IOException {
    Told list = Told.of("reckon", "--list", "--json");
    assertThat(list.status()).isZero();
    follows("reckon-list.schema.json", list.out());
    assertThat(Told.of("reckon", "--list").out()).contains("rack-travel");
    Told answer = Told.of("reckon", "rack-travel", "z1=13", "z2=40", "z3=15", "m=16 DP", "--json");
    assertThat(answer.status()).as(answer.err()).isZero();
    follows("reckon.schema.json", answer.out());
    assertThat(Told.of("reckon", "rack-travel", "z1=13", "z2=40", "z3=15", "m=16 DP").out())
        .contains("24.31298");
    assertThat(Told.of("reckon", "rack-travel").out()).contains("asks for");
    Told json = Told.of("reckon", "no-such", "--json");
    assertThat(json.status()).isEqualTo(2);
    follows("problems.schema.json", json.out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "no-such",
        "rack-travel z1",
        "rack-travel =3",
        "rack-travel q=1",
        "rack-travel z1=13",
        "rack-travel z1=13 z1=14 z2=40 z3=15 m=1",
        "rack-travel z1=0 z2=40 z3=15 m=1",
        "rack-travel z1=NaN z2=40 z3=15 m=1",
        "rack-travel z1=13 z2=40 z3=15 m=kg",
        "rack-travel z1=1e300 z2=40 z3=15 m=1"
      })
  void reckonRefuses(String line) {
    String[] words = ("reckon " + line).split(" ");
    Told told = Told.of(words);
    assertThat(told.status()).isEqualTo(2);
    assertThat(told.err()).isNotBlank().doesNotContain("Exception");
  }

  @Test
  void hostileCommandLines() {
    String huge = "x".repeat(200_000);
    List<String[]> lines =
        List.of(
            new String[] {huge},
            new String[] {"check", huge},
            new String[] {"check", "\u0000"},
            new String[] {"check", ""},
            new String[] {"check", "/dev/null"},
            new String[] {"check", "../../../../../../../../"},
            new String[] {"check"},
            new String[] {"check", "a", "b", "c"},
            new String[] {"check", "--json=maybe", Told.DEMO},
            new String[] {"forecast", Told.DEMO, huge},
            new String[] {"forecast", Told.DEMO, "--to", "+++,,,"},
            new String[] {"forecast", Told.DEMO, "--to", "gearbox+" + huge},
            new String[] {"forecast", Told.DEMO, "@" + Told.DEMO + "/machine.yaml"},
            new String[] {"forecast", "--width"},
            new String[] {"forecast", Told.DEMO, "--html", "\u0000"},
            new String[] {"new", "\u0000"},
            new String[] {"new"},
            new String[] {"new", "/proc/nothing/here"},
            new String[] {"reckon", "rack-travel", huge},
            new String[] {"reckon", "rack-travel", "z1=" + huge},
            new String[] {"reckon", "rack-travel", huge + "=1"},
            new String[] {"reckon", "%s%n%d", "%s=%s"},
            new String[] {"-"},
            new String[] {"--"},
            new String[] {"\u001b[31m"});
    for (String[] args : lines) {
      Told told = Told.of(args);
      String what = String.join(" ", args);
      String shown = what.length() > 60 ? what.substring(0, 60) : what;
      assertThat(told.status()).as(shown + ": " + told.err()).isBetween(2, 3);
      assertThat(told.err()).as(shown).doesNotContain("Fettle itself is at fault", "\tat ");
      assertThat(told.err().length() + told.out().length()).as(shown).isLessThan(20_000);
    }
  }

  @Test
  void theManualNamesEveryOptionOfEveryCommand() {
    String page = Told.of("manual").out();
    assertThat(page).startsWith(".TH FETTLE 1");
    for (CommandSpec spec : Main.specs()) {
      assertThat(page).contains(".SS fettle " + spec.name());
      spec.options()
          .forEach(
              o -> assertThat(page).contains(".B \\-\\-" + o.getLongOpt().replace("-", "\\-")));
    }
    assertThat(page.lines()).noneMatch(l -> l.startsWith("'"));
  }

  @Test
  void bashCompletesCommandsOptionsAndChanges() throws Exception {
    Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "needs bash");
    Path script = folder.resolve("completion");
    Files.writeString(script, Told.of("completion").out());
    assertThat(completed(script, "fo")).containsExactly("forecast");
    assertThat(completed(script, "forecast", "--wo")).containsExactly("--workings");
    assertThat(completed(script, "forecast", Told.DEMO, "quiet")).containsExactly("quiet-drive");
    assertThat(completed(script, "prove", Told.DEMO, "two")).containsExactly("two-collars");
  }

  private static List<String> completed(Path script, String... words) throws Exception {
    String line =
        "source "
            + script
            + "; COMP_WORDS=(fettle "
            + String.join(" ", words)
            + "); COMP_CWORD="
            + words.length
            + "; _fettle; printf '%s\\n' \"${COMPREPLY[@]}\"";
    Process bash = new ProcessBuilder("/bin/bash", "-c", line).redirectErrorStream(true).start();
    String out = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(bash.waitFor()).as(out).isZero();
    return out.lines().toList();
  }
}
