package fettle.mechanics;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Result;
import fettle.mechanics.base.Unit;
import fettle.proof.PublishedTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Runs every row of every table in {@code published/} through the reckoner it names. */
class PublishedValuesTest {

  @TestFactory
  Stream<DynamicTest> everyPublishedValueIsReproduced() {
    return tables().stream()
        .flatMap(
            table -> PublishedTable.read(PublishedValuesTest.class, "/published/" + table).stream())
        .map(row -> DynamicTest.dynamicTest(row.topic() + " " + row.id(), () -> check(row)));
  }

  static List<String> tables() {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/published"))) {
      return files
          .map(p -> p.getFileName().toString())
          .filter(n -> n.endsWith(".csv"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void check(PublishedTable.Row row) {
    Reckoner reckoner =
        Reckoners.of(row.topic())
            .orElseThrow(() -> new AssertionError("no reckoner " + row.topic()));
    Answer answer = reckoner.answer(row.inputs());
    assertThat(answer.none()).as("a solution").isNull();
    List<Object> computed = new ArrayList<>();
    for (String name : row.result()) {
      computed.addAll(values(reckoner, answer, name, row.unit()));
    }
    assertThat(computed).as("values of " + row.result()).hasSameSizeAs(row.expected());
    for (int i = 0; i < computed.size(); i++) {
      Object value = computed.get(i);
      String expected = row.expected().get(i);
      if (value instanceof Double number) {
        assertThat(row.agrees(i, number))
            .as(
                "%s: computed %s, published %s ± %s",
                row.result(), number, expected, row.tolerance())
            .isTrue();
      } else {
        assertThat(value).isEqualTo(expected);
      }
    }
  }

  private static List<Object> values(
      Reckoner reckoner, Answer answer, String name, String rowUnit) {
    Result result = reckoner.result(name);
    Answer.Value value = answer.values().get(name);
    if (result == null || value == null) {
      throw new AssertionError(reckoner.topic() + " gave no result " + name);
    }
    Unit unit =
        Unit.parse(rowUnit)
            .filter(u -> u.dimension() == result.unit().dimension())
            .orElse(result.unit());
    if (value instanceof Answer.Value.Real real) {
      return List.of(unit.fromCoherent(real.coherent()));
    } else if (value instanceof Answer.Value.Exact exact) {
      return List.of(unit.fromCoherent(exact.ratio().toDouble()));
    } else if (value instanceof Answer.Value.Several several) {
      return several.coherent().stream().map(v -> (Object) unit.fromCoherent(v)).toList();
    } else if (value instanceof Answer.Value.Words words) {
      return List.of(words.text());
    } else {
      return List.copyOf(((Answer.Value.Lines) value).lines());
    }
  }
}
