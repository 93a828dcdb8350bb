package fettle.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Result;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * The handbook of the guide is made from the reckoners, its examples from published rows; with
 * {@code -Dfettle.regenerate=yes} it is written anew.
 */
class HandbookTest {

  private static final Path GUIDE = Path.of("../docs/guide");
  private static final String MADE = "Made from the program itself; do not edit it by hand.\n";
  private static final int DIGITS = 7;
  private static final int LONGEST = 160;
  private static final int MOST_LINES = 12;

  private final Map<String, Map<String, String>> published = PublishedInputs.byTopic();

  @Test
  void theHandbookIsUpToDate() throws IOException {
    Map<String, StringBuilder> chapters = new LinkedHashMap<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Reckoner r : Reckoners.all()) {
      counts.merge(r.group(), 1, Integer::sum);
      entry(r, chapters.computeIfAbsent(r.group(), HandbookTest::opened));
    }
    Map<String, String> files = new LinkedHashMap<>();
    StringBuilder index = new StringBuilder("# The handbook\n\n").append(MADE);
    index.append(
        "Every calculation with what it asks for, what it answers, a worked example and\n");
    index.append("its source. The example's numbers are those of a check value.\n\n");
    index.append("| chapter | calculations |\n|---|---|\n");
    chapters.forEach(
        (group, text) -> {
          String file = "handbook-" + group + ".md";
          index.append("| [").append(group).append("](").append(file).append(") | ");
          index.append(counts.get(group)).append(" |\n");
          files.put(file, text.toString());
        });
    files.put("handbook.md", index.toString());
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = GUIDE.resolve(file.getKey());
      if ("yes".equals(System.getProperty("fettle.regenerate"))) {
        Files.writeString(path, file.getValue());
      }
      assertThat(Files.readString(path)).as(file.getKey()).isEqualTo(file.getValue());
    }
  }

  private static StringBuilder opened(String group) {
    return new StringBuilder("# Handbook: ")
        .append(group)
        .append("\n\n")
        .append(MADE)
        .append(
            "[All chapters](handbook.md). A number without a unit is taken in the listed one.\n");
  }

  private void entry(Reckoner r, StringBuilder to) {
    to.append("\n## ").append(line(r.title())).append("\n\n`").append(r.topic()).append("`\n\n");
    to.append("| asks for | unit | what it is |\n|---|---|---|\n");
    for (Input input : r.inputs()) {
      String else_ =
          input.standard() != null
              ? " (else " + input.standard() + ")"
              : input.required() ? "" : " (may be left out)";
      row(to, input.name(), input.unit(), input.meaning() + else_);
    }
    to.append("\n| answers | unit | what it is |\n|---|---|---|\n");
    for (Result result : r.results()) {
      row(to, result.name(), result.unit(), result.meaning());
    }
    example(r, to);
    Source source = r.source();
    to.append("\nSource: ").append(line(source.document()));
    if (!source.place().isEmpty()) {
      to.append(", ").append(line(source.place()));
    }
    to.append(" (").append(source.basis().words()).append(").\n");
  }

  private static void row(StringBuilder to, String name, Unit unit, String meaning) {
    to.append("| `").append(name).append("` | ").append(line(unit.symbol())).append(" | ");
    to.append(line(meaning)).append(" |\n");
  }

  private void example(Reckoner r, StringBuilder to) {
    Map<String, String> given = published.get(r.topic());
    if (given == null) {
      return;
    }
    List<String> lines = new ArrayList<>();
    StringBuilder asked = new StringBuilder("fettle reckon ").append(r.topic());
    given.forEach((name, value) -> asked.append(' ').append(word(name + "=" + value)));
    lines.add(shortened(asked.toString()));
    try {
      Answer answer = r.answer(given);
      answer
          .values()
          .forEach((name, value) -> lines.add("  " + name + " = " + said(r, name, value)));
      answer.workings().forEach(w -> lines.add("  " + shortened(w.text())));
      if (answer.none() != null) {
        lines.add("  " + shortened(answer.none()));
      }
    } catch (IllegalArgumentException e) {
      return;
    }
    List<String> most = lines.size() > MOST_LINES ? lines.subList(0, MOST_LINES) : lines;
    to.append("\n```\n").append(String.join("\n", most)).append("\n```\n");
  }

  private static String word(String text) {
    return text.matches("[\\p{L}\\p{N}_.,=+-]+") ? text : "'" + text + "'";
  }

  private static String said(Reckoner r, String name, Answer.Value value) {
    Unit unit = Objects.requireNonNull(r.result(name)).unit();
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    if (value instanceof Answer.Value.Real real) {
      return Numbers.significant(unit.fromCoherent(real.coherent()), DIGITS) + symbol;
    } else if (value instanceof Answer.Value.Exact exact) {
      return exact.ratio().text() + symbol;
    } else if (value instanceof Answer.Value.Several several) {
      return shortened(
          String.join(
                  ", ",
                  several.coherent().stream()
                      .limit(20)
                      .map(v -> Numbers.significant(unit.fromCoherent(v), DIGITS))
                      .toList())
              + symbol);
    } else if (value instanceof Answer.Value.Words words) {
      return shortened(words.text());
    }
    return shortened(String.join("; ", ((Answer.Value.Lines) value).lines()));
  }

  private static String shortened(String text) {
    String one = text.replace("\n", " ");
    return one.length() > LONGEST ? one.substring(0, LONGEST) + " ..." : one;
  }

  private static String line(String text) {
    return text.replace("|", "\\|")
        .replace("\n", " ")
        .replace("<", "&lt;")
        .replace("*", "\\*")
        .replace("_", "\\_");
  }
}
