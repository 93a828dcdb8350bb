package fettle.mechanics.solids;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Answer;
import fettle.proof.PublishedTable;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/** The reference parts that take more than a moment; run once, by the table. */
@Tag("slow")
class ReferencePartsTest {

  @TestFactory
  Stream<DynamicTest> everyReferencePartIsReproduced() {
    return PublishedTable.read(ReferencePartsTest.class, "/published-slow/structures.csv").stream()
        .map(row -> DynamicTest.dynamicTest(row.id(), () -> check(row)));
  }

  private static void check(PublishedTable.Row row) {
    Answer answer = Reckoners.of(row.topic()).orElseThrow().answer(row.inputs());
    for (int i = 0; i < row.result().size(); i++) {
      Answer.Value value = answer.values().get(row.result().get(i));
      assertThat(value).isInstanceOf(Answer.Value.Real.class);
      double coherent = value instanceof Answer.Value.Real real ? real.coherent() : Double.NaN;
      assertThat(row.agrees(i, coherent))
          .as("%s: computed %s, published %s", row.result().get(i), coherent, row.expected().get(i))
          .isTrue();
    }
  }
}
