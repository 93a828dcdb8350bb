package fettle.mechanics;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Working;
import fettle.proof.IndependentEvaluator;
import fettle.proof.PublishedTable;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every working that a published row shows is computed again by an independent evaluator. */
class WorkingsTest {

  @TestFactory
  Stream<DynamicTest> everyWorkingEvaluatesToItsValue() {
    return PublishedValuesTest.tables().stream()
        .flatMap(table -> PublishedTable.read(WorkingsTest.class, "/published/" + table).stream())
        .map(row -> DynamicTest.dynamicTest(row.topic() + " " + row.id(), () -> check(row)));
  }

  private static void check(PublishedTable.Row row) {
    Reckoner reckoner = Reckoners.of(row.topic()).orElseThrow();
    for (Working working : reckoner.answer(row.inputs()).workings()) {
      assertThat(IndependentEvaluator.agrees(working.numbers(), working.shown()))
          .as("%s should give %s", working.text(), working.shown())
          .isTrue();
    }
  }
}
