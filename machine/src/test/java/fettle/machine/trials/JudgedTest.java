package fettle.machine.trials;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Contribution;
import fettle.mechanics.metrology.UncertaintyBudget;
import fettle.mechanics.metrology.Verdict;
import org.junit.jupiter.api.Test;

/** Verdicts count the uncertainty against the one who proves. */
final class JudgedTest {

  private static final Limit TEN = new Limit(Double.NEGATIVE_INFINITY, 0.010, "owner");

  @Test
  void farInsideIsGoodAndFarOutsideIsNot() {
    assertThat(judged(0.005, 0.002, 0).verdict().outcome()).isEqualTo(Verdict.Outcome.GOOD);
    assertThat(judged(0.015, 0.002, 0).verdict().outcome()).isEqualTo(Verdict.Outcome.NOT_GOOD);
  }

  @Test
  void nearTheLimitItSaysHowManyMoreReadings() {
    // 2 um from the limit: u must come down from 2 um to 2/1.645 um, so 4 x 1.645^2 = 10.8.
    Judged near = judged(0.008, 0.002, 0);
    assertThat(near.verdict().outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
    assertThat(near.more()).isEqualTo(7);
    assertThat(near.way()).isEqualTo("7 more runs would settle it");
  }

  @Test
  void whereTheInstrumentIsTooCoarseNoReadingsHelp() {
    Judged coarse = judged(0.009, 0.001, 0.002);
    assertThat(coarse.more()).isInfinite();
    assertThat(coarse.way()).contains("indicator");
  }

  private static Judged judged(double value, double random, double fixed) {
    UncertaintyBudget budget =
        UncertaintyBudget.of(
            Contribution.readings("scatter", random, 1, Double.POSITIVE_INFINITY),
            Contribution.of("indicator", fixed, Contribution.Shape.STANDARD, 1));
    Source source = Source.derived("test");
    return Judged.of(
        new Measured("x", value, budget, Unit.MICRON, false, 0, 4, "runs", "", source), TEN);
  }
}
