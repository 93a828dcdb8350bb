package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.SampleBooks;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.mechanics.base.Working;
import fettle.proof.IndependentEvaluator;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every printed working, evaluated again by a library that knows nothing of Fettle, gives the value
 * of its figure: in every state that the demo's changes make one by one, two by two, and together.
 */
class EveryWorkingTest {

  private static final Book DEMO = SampleBooks.sound(SampleBooks.DEMO);

  @TestFactory
  Stream<DynamicTest> everyWorkingOfEveryState() {
    return states().stream()
        .map(keys -> DynamicTest.dynamicTest(keys.toString(), () -> check(keys)));
  }

  private static Set<List<String>> states() {
    List<String> all = List.copyOf(DEMO.changes().keySet());
    Set<List<String>> states = new LinkedHashSet<>(List.of(List.of(), all));
    for (String one : all) {
      states.add(DEMO.withNeeds(one));
      for (String other : all) {
        Set<String> both = new LinkedHashSet<>(DEMO.withNeeds(one));
        both.addAll(DEMO.withNeeds(other));
        states.add(all.stream().filter(both::contains).toList());
      }
    }
    return states;
  }

  private static void check(List<String> keys) {
    Machine machine = State.of(DEMO, "", keys).machine().orElseThrow();
    Study study = Topics.study(machine, DEMO.shop());
    assertThat(study.figures()).hasSizeGreaterThan(50);
    List<String> wrong = new ArrayList<>();
    for (Figure figure : study.figures()) {
      assertThat(figure.source().document()).isNotBlank();
      if (figure.working().isEmpty()) {
        assertThat(figure.words()).as(figure.id()).isNotBlank();
        continue;
      }
      Working working = figure.working().get();
      assertThat(working.doubt()).as(figure.id()).isFinite().isGreaterThanOrEqualTo(0);
      if (!IndependentEvaluator.agrees(working.numbers(), working.shown())) {
        wrong.add(figure.id() + ": " + working.text());
      }
    }
    assertThat(wrong).isEmpty();
    machine.trains().values().forEach(train -> exactAgrees(machine, train));
  }

  /** The travel that is printed is the exact product of the train. */
  private static void exactAgrees(Machine machine, Train train) {
    train
        .factors()
        .forEach(
            (step, factor) ->
                assertThat(value(train, step))
                    .as(machine.name() + ", " + train.name() + ", " + step)
                    .isCloseTo(
                        factor.toDouble(), org.assertj.core.data.Percentage.withPercentage(1e-10)));
  }

  private static double value(Train train, String step) {
    ChainFormula chain = ChainFormula.of(train, step);
    return Working.of("T", fettle.mechanics.base.Unit.ONE, chain.text(), chain.terms()).value();
  }
}
