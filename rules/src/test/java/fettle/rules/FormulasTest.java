package fettle.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Result;
import fettle.proof.PublishedTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The table of all calculations says how many check values from outside each of them meets. */
final class FormulasTest {

  private static final Path TABLES = Path.of("../mechanics/src/test/resources/published");
  private static final Path TABLE = Path.of("../docs/formulas.md");
  private static final String OPENING =
      """
      # Every calculation and what holds it to account

      Made by a test; do not edit. A check value stands in a table under
      `mechanics/src/test/resources/published` and is run through the very calculation a user asks for.
      **Seen** counts values read from a page of a standard, handbook or paper; **derived** counts values
      that an independent program or derivation gave; **recalled** counts values from memory of such a page.
      A result is named where no check value asks for it; words, drawings and lists among them are looked at by
      other tests only.
      """;

  private final List<PublishedTable.Row> rows = rows();

  private static List<PublishedTable.Row> rows() {
    try (Stream<Path> tables = Files.list(TABLES)) {
      return tables
          .filter(t -> t.toString().endsWith(".csv"))
          .sorted()
          .flatMap(t -> PublishedTable.read(t).stream())
          .toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private List<PublishedTable.Row> rows(Reckoner reckoner) {
    return rows.stream().filter(r -> r.topic().equals(reckoner.topic())).toList();
  }

  private static String basis(PublishedTable.Row row) {
    String obtained = row.obtained();
    return obtained.contains("page") || obtained.contains("common practice")
        ? "seen"
        : obtained.contains("memory") ? "recalled" : "derived";
  }

  private static List<String> unasked(Reckoner reckoner, List<PublishedTable.Row> rows) {
    Set<String> asked = new LinkedHashSet<>();
    rows.forEach(r -> asked.addAll(r.result()));
    return reckoner.results().stream()
        .map(Result::name)
        .filter(name -> !asked.contains(name))
        .toList();
  }

  @Test
  void theTableOfFormulasIsFresh() throws IOException {
    StringBuilder text = new StringBuilder(OPENING);
    List<String> bare = new ArrayList<>();
    String group = "";
    for (Reckoner reckoner : Reckoners.all()) {
      List<PublishedTable.Row> own = rows(reckoner);
      if (own.isEmpty()) {
        bare.add(reckoner.topic());
      }
      if (!reckoner.group().equals(group)) {
        group = reckoner.group();
        text.append("\n## ").append(group);
        text.append("\n\n| topic | seen | derived | recalled | results no value asks for |\n");
        text.append("|---|---|---|---|---|\n");
      }
      text.append("| `").append(reckoner.topic()).append("` | ");
      for (String basis : List.of("seen", "derived", "recalled")) {
        text.append(own.stream().filter(r -> basis(r).equals(basis)).count()).append(" | ");
      }
      text.append(String.join(", ", unasked(reckoner, own))).append(" |\n");
    }
    text.append("\n## Without any check value\n\n");
    text.append(bare.isEmpty() ? "None." : "`" + String.join("`, `", bare) + "`").append('\n');
    if ("yes".equals(System.getProperty("fettle.regenerate"))) {
      Files.writeString(TABLE, text.toString());
    }
    assertThat(Files.readString(TABLE)).isEqualTo(text.toString());
  }

  @Test
  void everyRowNamesACalculationAndItsResults() {
    List<String> wrong = new ArrayList<>();
    for (PublishedTable.Row row : rows) {
      boolean known =
          Reckoners.of(row.topic())
              .filter(r -> row.result().stream().allMatch(n -> r.result(n) != null))
              .isPresent();
      if (!known) {
        wrong.add(row.id());
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(rows).hasSizeGreaterThan(400);
  }
}
