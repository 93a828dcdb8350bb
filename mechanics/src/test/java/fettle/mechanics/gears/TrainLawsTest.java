package fettle.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Exact chains, dials and the thread dial obey the laws they are made of. */
class TrainLawsTest {

  @Property(tries = 200)
  void forwardAndBackwardTrainsMultiplyToExactlyOne(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 5, max = 200) Integer> teeth) {
    Ratio there = Ratio.ONE;
    Ratio back = Ratio.ONE;
    for (int i = 0; i + 1 < teeth.size(); i++) {
      there = there.times(new Element.SpurPair(teeth.get(i), teeth.get(i + 1)).factor());
      back = back.times(new Element.SpurPair(teeth.get(i + 1), teeth.get(i)).factor());
    }
    assertThat(there.times(back)).isEqualTo(Ratio.ONE);
  }

  @Property(tries = 200)
  void idlersChangeTheSenseAndNothingElse(
      @ForAll @IntRange(min = 5, max = 100) int a,
      @ForAll @IntRange(min = 5, max = 100) int idler,
      @ForAll @IntRange(min = 5, max = 100) int b) {
    Chain with = Chain.of(new Element.SpurPair(a, b), new Element.Idler(idler));
    Chain without = Chain.of(new Element.SpurPair(a, b));
    assertThat(with.factor()).isEqualTo(without.factor());
    assertThat(with.sense()).isEqualTo(-without.sense());
  }

  @Property(tries = 100)
  void orderOfDriversDoesNotMatter(
      @ForAll @Size(4) List<@IntRange(min = 12, max = 130) Integer> drivers,
      @ForAll @Size(4) List<@IntRange(min = 12, max = 130) Integer> driven) {
    List<Integer> turned = new ArrayList<>(drivers);
    Collections.reverse(turned);
    assertThat(ThreadTrain.ratio(drivers, driven)).isEqualTo(ThreadTrain.ratio(turned, driven));
  }

  @Test
  void oneToothMoreOnADrivenGearOf24TakesFourPercentOffTheTravel() {
    Ratio before = ThreadTrain.ratio(List.of(12), List.of(24));
    Ratio after = ThreadTrain.ratio(List.of(12), List.of(25));
    assertThat(Deviation.ppm(after, before)).isCloseTo(-40_000, within(1e-6));
  }

  @Test
  void aTwoMillimetreScrewDoublesTheTravelOfAOneMillimetreScrew() {
    Chain fine = Chain.of(new Element.Screw(Ratio.ONE, 1, Hand.RIGHT));
    Chain coarse = Chain.of(new Element.Screw(Ratio.of(2), 1, Hand.RIGHT));
    assertThat(coarse.factor().over(fine.factor())).isEqualTo(Ratio.of(2));
  }

  @Test
  void aModuleRackNeverGivesARoundTravelAndACircularPitchRackDoes() {
    Chain module = Chain.of(new Element.RackAndPinion(14, Ratio.PI.times(Ratio.of(3, 2))));
    Chain round = Chain.of(new Element.RackAndPinion(16, Ratio.of(5)));
    assertThat(module.exact()).isFalse();
    assertThat(round.exact()).isTrue();
    assertThat(round.factor()).isEqualTo(Ratio.of(80));
  }

  @Test
  void theFullTwentyFivePointFourIsExactlyOneHundredAndTwentySevenFifths() {
    Chain inch = Chain.of(new Element.Screw(Ratio.INCH.over(8), 1, Hand.RIGHT));
    assertThat(inch.factor().sameAs(Ratio.of(127, 40))).isTrue();
  }

  @Property(tries = 200)
  void dialErrorsAddUpAndVanishForATrueDial(
      @ForAll @IntRange(min = 1, max = 500) int first,
      @ForAll @IntRange(min = 1, max = 500) int second) {
    double both = Dial.error(16.4934, 16.5, first + second);
    double one = Dial.error(16.4934, 16.5, first);
    double other = Dial.error(16.4934, 16.5, second);
    assertThat(both).isCloseTo(one + other, within(1e-12));
    assertThat(Dial.error(16.5, 16.5, first)).isZero();
    double longest = Dial.longestMove(16.4934, 16.5, 0.02);
    assertThat(Math.abs(Dial.error(16.4934, 16.5, longest))).isCloseTo(0.02, within(1e-12));
  }

  @Property(tries = 200)
  void everyUsableLineIsInRegisterAndNoOtherIs(
      @ForAll @IntRange(min = 1, max = 12) int between,
      @ForAll @IntRange(min = 5, max = 60) int wheel,
      @ForAll @IntRange(min = 1, max = 12) int lines) {
    List<Integer> usable = ThreadDial.usableLines(between, wheel, lines);
    for (int j = 0; j < lines; j++) {
      double passed = (double) j * wheel / lines;
      boolean whole = Math.abs(passed / between - Math.rint(passed / between)) < 1e-9;
      boolean expected = wheel % between == 0 && whole;
      assertThat(usable.contains(j)).isEqualTo(expected);
    }
  }

  @Test
  void publishedIndicatorTableOfASixteenTpiScrew() {
    int[][] table = {{12, 4}, {13, 1}, {14, 2}, {16, 8}};
    for (int[] row : table) {
      long between = ThreadDial.threadsBetween(Ratio.INCH.over(16), Ratio.INCH.over(row[0]));
      assertThat(ThreadDial.usableLines(between, 16, 8)).hasSize(row[1]);
    }
  }

  @Test
  void metricThreadsOnAnInchScrewKeepTheNutClosed() {
    assertThat(ThreadDial.threadsBetween(Ratio.INCH.over(8), Ratio.of(3, 2))).isEqualTo(60);
  }

  @Test
  void aTravelIsRefusedInTheMiddleOfAChain() {
    assertThatThrownBy(
            () ->
                Chain.of(new Element.Screw(Ratio.ONE, 1, Hand.RIGHT), new Element.SpurPair(20, 40)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("last element");
  }

  @Test
  void moreEffortNeverMakesTheErrorLarger() {
    TravelSearch.Query query =
        new TravelSearch.Query(
            Ratio.of(20),
            Ratio.PI.times(Ratio.of(3, 2)),
            new TravelSearch.Range(12, 25),
            new TravelSearch.Range(30, 90),
            new TravelSearch.Range(10, 20),
            List.of(),
            new TravelSearch.Trio(15, 60, 14));
    TravelSearch.Outcome.Found found = (TravelSearch.Outcome.Found) TravelSearch.search(query);
    assertThat(found.tried()).isEqualTo(14L * 61 * 11);
    for (int i = 1; i < found.pareto().size(); i++) {
      TravelSearch.Choice cheap = found.pareto().get(i - 1);
      TravelSearch.Choice dear = found.pareto().get(i);
      assertThat(dear.effort()).isGreaterThan(cheap.effort());
      assertThat(Math.abs(dear.ppm())).isLessThan(Math.abs(cheap.ppm()));
    }
    assertThat(found.best().teeth()).isEqualTo(new TravelSearch.Trio(13, 49, 16));
  }

  @Test
  void playOfALongTrainIsTheSumOfItsStagesReferredDownstream() {
    List<Play.Mesh> meshes =
        List.of(
            new Play.Mesh(0.1, 20, 60), new Play.Mesh(0.08, 24, 72), new Play.Mesh(0.05, 30, 45));
    double expected = ((0.1 * 24 / 60 + 0.08) * 30 / 72 + 0.05) * 21 / 45 + 0.12;
    assertThat(Play.atRack(meshes, 21, 0.12)).isCloseTo(expected, within(1e-12));
    assertThat(Play.atScrew(meshes, Math.PI * 21, 0.12)).isCloseTo(expected, within(1e-12));
  }
}
