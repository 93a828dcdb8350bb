package fettle.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Result;
import fettle.mechanics.base.Working;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every single calculation is described whole, and no input makes it say nonsense or hang. */
class ReckonersTest {

  private static final Path SOURCES = Path.of("../docs/sources.md");
  private static final List<String> HOSTILE =
      List.of(
          "",
          "NaN",
          "Infinity",
          "-1",
          "0",
          "1e308",
          "1e-300",
          "-1e30",
          "999999999",
          "wrong word",
          "1/0",
          "5 kg",
          "1,2",
          "1,NaN",
          "1".repeat(40));
  private static final String LONG_LIST = "1" + ",2".repeat(3_000);
  private static final String LONG_ROWS = "1,2,3" + ";1,2,3".repeat(1_000);

  private static final Duration LONGEST = Duration.ofSeconds(60);

  @Test
  void everyCalculationIsDescribedWhole() {
    Set<String> topics = new LinkedHashSet<>();
    List<String> wrong = new ArrayList<>();
    for (Reckoner r : Reckoners.all()) {
      if (!topics.add(r.topic())) {
        wrong.add(r.topic() + " is there twice");
      }
      if (!r.topic().matches("[a-z0-9]+(-[a-z0-9]+)*")) {
        wrong.add(r.topic() + " is no topic's name");
      }
      if (r.group().isBlank() || r.title().isBlank() || r.source().document().isBlank()) {
        wrong.add(r.topic() + " lacks a group, a title or a source");
      }
      if (r.results().isEmpty()
          || r.results().stream().map(Result::name).distinct().count() < r.results().size()) {
        wrong.add(r.topic() + " lists no results, or one twice");
      }
      if (r.inputs().stream().map(Input::name).distinct().count() < r.inputs().size()) {
        wrong.add(r.topic() + " lists an input twice");
      }
      for (Input input : r.inputs()) {
        if (input.meaning().isBlank() || !input.name().matches("[\\p{L}][\\p{L}\\p{N}_']*")) {
          wrong.add(r.topic() + ": input '" + input.name() + "'");
        }
      }
      for (Result result : r.results()) {
        if (result.meaning().isBlank() || result.name().isBlank()) {
          wrong.add(r.topic() + ": result '" + result.name() + "'");
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(topics).hasSizeGreaterThan(100);
  }

  @TestFactory
  Stream<DynamicTest> hostileInputIsAnsweredOrRefused() {
    Map<String, Map<String, String>> usual = PublishedInputs.byTopic();
    return Reckoners.all().stream()
        .map(
            r ->
                DynamicTest.dynamicTest(
                    r.topic(),
                    () ->
                        assertTimeoutPreemptively(
                            LONGEST, () -> hostile(r, usual.getOrDefault(r.topic(), Map.of())))));
  }

  private static void hostile(Reckoner reckoner, Map<String, String> usual) {
    List<String> wrong = new ArrayList<>();
    check(reckoner, Map.of(), wrong);
    for (String value : HOSTILE) {
      Map<String, String> all = new LinkedHashMap<>();
      reckoner.inputs().forEach(i -> all.put(i.name(), value));
      check(reckoner, all, wrong);
    }
    check(reckoner, Map.of("no such input", "1"), wrong);
    if (!usual.isEmpty()) {
      for (Input input : reckoner.inputs()) {
        for (String value : values(input)) {
          Map<String, String> one = new LinkedHashMap<>(usual);
          one.put(input.name(), value);
          check(reckoner, one, wrong);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static List<String> values(Input input) {
    List<String> values = new ArrayList<>(List.of("", "NaN", "-1", "0", "1e308", "wrong word"));
    if (input.kind() == Input.Kind.NUMBERS || input.kind() == Input.Kind.EXACTS) {
      values.add(LONG_LIST);
    } else if (input.kind() == Input.Kind.ROWS) {
      values.add(LONG_ROWS);
    }
    return values;
  }

  private static void check(Reckoner reckoner, Map<String, String> inputs, List<String> wrong) {
    String text = inputs.toString();
    String shown = reckoner.topic() + " " + (text.length() > 200 ? text.substring(0, 200) : text);
    try {
      Answer answer = reckoner.answer(inputs);
      answer
          .values()
          .forEach(
              (name, value) -> {
                if (nonsense(value)) {
                  wrong.add(shown + ": " + name + " is " + value);
                }
              });
      for (Working working : answer.workings()) {
        if (Double.isNaN(working.value())) {
          wrong.add(shown + ": the working of " + working.symbol() + " is NaN");
        }
      }
    } catch (IllegalArgumentException e) {
      String message = String.valueOf(e.getMessage());
      if (message.isBlank() || message.equals("null") || message.length() > 5_000) {
        wrong.add(shown + ": is refused without a readable reason");
      }
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      StackTraceElement at = e.getStackTrace().length > 0 ? e.getStackTrace()[0] : null;
      wrong.add(shown + ": throws " + e + " at " + at);
    }
  }

  private static boolean nonsense(Answer.Value value) {
    if (value instanceof Answer.Value.Real real) {
      return Double.isNaN(real.coherent());
    } else if (value instanceof Answer.Value.Several several) {
      return several.coherent().stream().anyMatch(v -> v.isNaN());
    }
    return false;
  }

  /** The published table of sources is that of the program. */
  @Test
  void theTableOfSourcesIsUpToDate() throws IOException {
    StringBuilder text = new StringBuilder();
    text.append("# Where every calculation comes from\n\n");
    text.append(
        "Made from the program itself; do not edit it by hand. *Seen on a page*: a page that\n");
    text.append(
        "states it was read. *From memory*: no page was seen, check it before you lean on it.\n");
    String group = "";
    for (Reckoner r : Reckoners.all()) {
      if (!r.group().equals(group)) {
        group = r.group();
        text.append("\n## ")
            .append(group)
            .append("\n\n| calculation | topic | source | place | basis |\n");
        text.append("|---|---|---|---|---|\n");
      }
      text.append("| ").append(cell(r.title())).append(" | `").append(r.topic()).append("` | ");
      text.append(cell(r.source().document())).append(" | ").append(cell(r.source().place()));
      text.append(" | ").append(r.source().basis().words()).append(" |\n");
    }
    if ("yes".equals(System.getProperty("fettle.regenerate"))) {
      Files.writeString(SOURCES, text.toString());
    }
    assertThat(Files.readString(SOURCES)).isEqualTo(text.toString());
  }

  private static String cell(String text) {
    return text.replace("|", "\\|").replace("\n", " ");
  }
}
