package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.cli.Main;
import fettle.desk.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every command of the guide is run, and what is shown is what it prints; {@code
 * -Dfettle.regenerate=yes} renews the outputs. A page is one session: what it writes into {@code
 * my-lathe} is there for its later commands. Messages are shown when a command refuses; progress is
 * not.
 */
class GuideTest {

  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Path GUIDE = ROOT.resolve("docs/guide");
  private static final Pattern STEP =
      Pattern.compile(
          "<!-- run(?:, first (?<most>\\d+) lines)?: (?<line>[^\n]*?) -->\n.*?<!-- end -->"
              + "|<!-- write: (?<file>\\S+) -->\n```yaml\n(?<text>.*?)```\n",
          Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
  private static final Pattern TYPED = Pattern.compile("(?m)^\\$ ./fettle ");

  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> theOutputsOfTheGuideAreReal() throws IOException {
    try (Stream<Path> pages = Files.list(GUIDE)) {
      return pages
          .filter(p -> p.toString().endsWith(".md"))
          .filter(p -> !p.getFileName().toString().startsWith("handbook"))
          .sorted()
          .toList()
          .stream()
          .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> replay(p)));
    }
  }

  private void replay(Path page) throws IOException {
    Path session = Files.createDirectory(folder.resolve(page.getFileName().toString()));
    String text = Files.readString(page);
    Matcher step = STEP.matcher(text);
    StringBuilder renewed = new StringBuilder();
    int runs = 0;
    while (step.find()) {
      String put = step.group();
      if (step.group("file") != null) {
        Path file = session.resolve(step.group("file"));
        Files.createDirectories(file.getParent());
        Files.writeString(file, step.group("text"));
      } else {
        runs++;
        put = put.substring(0, put.indexOf('\n') + 1) + shown(step, session) + "<!-- end -->";
      }
      step.appendReplacement(renewed, Matcher.quoteReplacement(put));
    }
    step.appendTail(renewed);
    if ("yes".equals(System.getProperty("fettle.regenerate"))) {
      Files.writeString(page, renewed.toString());
    }
    assertThat(Files.readString(page)).isEqualTo(renewed.toString());
    assertThat(TYPED.matcher(renewed).results().count())
        .as("commands typed by hand")
        .isEqualTo(runs);
    assertThat(renewed.toString()).doesNotContain("Fettle itself is at fault. ");
  }

  private static String shown(Matcher step, Path session) {
    String line = step.group("line");
    List<String> lines = output(line, session).lines().collect(Collectors.toList());
    int most = step.group("most") == null ? lines.size() : Integer.parseInt(step.group("most"));
    if (lines.size() > most) {
      lines = new ArrayList<>(lines.subList(0, most));
      lines.add("...");
    }
    return "```\n$ ./fettle " + line + "\n" + String.join("\n", lines).stripTrailing() + "\n```\n";
  }

  private static String output(String line, Path session) {
    List<String> args = new ArrayList<>();
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      String one = word.group(1) == null ? word.group(2) : word.group(1);
      args.add(
          one.startsWith("examples/")
              ? ROOT.resolve(one).toString()
              : one.matches("(my-lathe|out)(/.*)?") ? session.resolve(one).toString() : one);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(out, err, 96, Terminal.Inks.PLAIN);
    if (Main.run(args.toArray(new String[0]), terminal) > 1) {
      bytes.writeBytes(said.toByteArray());
    }
    return bytes
        .toString(StandardCharsets.UTF_8)
        .replace(System.lineSeparator(), "\n")
        .replace(session + "/", "")
        .replace(session + "\\", "")
        .replace(ROOT + "/", "");
  }

  /** Every link between our documents leads to a file, and to a heading if it names one. */
  @Test
  void noLinkOfTheDocumentsIsDead() throws IOException {
    List<String> dead = new ArrayList<>();
    List<Path> pages = new ArrayList<>();
    for (Path start : List.of(ROOT.resolve("docs"), ROOT)) {
      try (Stream<Path> files = Files.walk(start, start.equals(ROOT) ? 1 : 6)) {
        files.filter(f -> f.toString().endsWith(".md")).forEach(pages::add);
      }
    }
    assertThat(pages).hasSizeGreaterThan(12);
    for (Path page : pages) {
      String text =
          Files.readString(page).replaceAll("(?s)```.*?```", "").replaceAll("`[^`\n]*`", "");
      Matcher link = Pattern.compile("\\]\\(([^)\\s]+)\\)").matcher(text);
      while (link.find()) {
        if (!link.group(1).matches("[a-z]+:.*") && !leads(page, link.group(1))) {
          dead.add(ROOT.relativize(page) + " -> " + link.group(1));
        }
      }
    }
    assertThat(dead).isEmpty();
  }

  private static boolean leads(Path page, String target) throws IOException {
    String[] parts = target.split("#", 2);
    Path file = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
    if (!Files.exists(file)) {
      return false;
    }
    return parts.length == 1
        || Files.readAllLines(file).stream()
            .filter(l -> l.startsWith("#"))
            .map(l -> l.replaceFirst("#+ ", "").toLowerCase(java.util.Locale.ROOT))
            .map(l -> l.replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-'))
            .anyMatch(parts[1]::equals);
  }

  /** Every page can be reached from the first one. */
  @Test
  void theIndexNamesEveryPage() throws IOException {
    String index = Files.readString(GUIDE.resolve("index.md"));
    try (Stream<Path> pages = Files.list(GUIDE)) {
      assertThat(pages.map(p -> p.getFileName().toString()))
          .filteredOn(n -> !n.equals("index.md") && !n.startsWith("handbook-"))
          .allSatisfy(n -> assertThat(index).contains("(" + n + ")"));
    }
  }
}
