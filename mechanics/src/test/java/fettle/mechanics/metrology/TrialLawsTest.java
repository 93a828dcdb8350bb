package fettle.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** Laws of the trials: shifts, mirrors, order, and what must never be dropped. */
class TrialLawsTest {

  private static List<PositioningReading> axis(long seed, int targets, int runs) {
    RandomGenerator random = SeededTrials.random(seed);
    List<PositioningReading> readings = new ArrayList<>();
    for (int i = 0; i < targets; i++) {
      for (int direction : new int[] {1, -1}) {
        for (int run = 1; run <= runs; run++) {
          double d = 0.01 * Math.sin(i) - direction * 0.008 + 0.003 * random.nextGaussian();
          readings.add(new PositioningReading(10.0 * i, direction, run, d));
        }
      }
    }
    return readings;
  }

  @Property(tries = 60)
  void positioningResultsKeepTheirOrder(
      @ForAll @IntRange(min = 1, max = 100_000) int seed,
      @ForAll @IntRange(min = 2, max = 9) int targets,
      @ForAll @IntRange(min = 2, max = 5) int runs) {
    PositioningTest t = PositioningTest.of(axis(seed, targets, runs));
    assertThat(t.accuracy()).isGreaterThanOrEqualTo(t.systematic());
    assertThat(t.systematic()).isGreaterThanOrEqualTo(t.meanDeviation());
    assertThat(t.systematic()).isLessThanOrEqualTo(t.meanDeviation() + t.reversal() + 1e-15);
    assertThat(t.repeatability()).isGreaterThanOrEqualTo(t.reversal());
    assertThat(t.repeatability())
        .isGreaterThanOrEqualTo(Math.max(t.repeatability(1), t.repeatability(-1)));
  }

  @Test
  void shiftingMirroringAndShufflingChangeOnlyWhatTheyMust() {
    List<PositioningReading> readings = axis(3, 7, 5);
    PositioningTest plain = PositioningTest.of(readings);
    PositioningTest shifted =
        PositioningTest.of(changed(readings, r -> moved(r, r.direction(), r.deviation() + 0.5)));
    PositioningTest mirrored =
        PositioningTest.of(changed(readings, r -> moved(r, -r.direction(), r.deviation())));
    List<PositioningReading> shuffled = new ArrayList<>(readings);
    Collections.reverse(shuffled);
    assertThat(shifted.accuracy()).isCloseTo(plain.accuracy(), within(1e-12));
    assertThat(shifted.reversal()).isCloseTo(plain.reversal(), within(1e-12));
    assertThat(mirrored.meanReversal()).isCloseTo(-plain.meanReversal(), within(1e-15));
    assertThat(mirrored.accuracy()).isCloseTo(plain.accuracy(), within(1e-15));
    assertThat(PositioningTest.of(shuffled).accuracy()).isCloseTo(plain.accuracy(), within(1e-12));
  }

  private static PositioningReading moved(PositioningReading r, int direction, double deviation) {
    return new PositioningReading(r.target(), direction, r.run(), deviation);
  }

  private static List<PositioningReading> changed(
      List<PositioningReading> list, UnaryOperator<PositioningReading> change) {
    return list.stream().map(change).toList();
  }

  @Test
  void gapsAndOutliersAreNamedAndNothingIsDropped() {
    List<PositioningReading> readings = new ArrayList<>(axis(4, 5, 5));
    PositioningReading lost = readings.remove(7);
    PositioningReading wild = readings.get(20);
    readings.set(20, moved(wild, wild.direction(), 0.5));
    PositioningTest test = PositioningTest.of(readings);
    assertThat(PositioningTest.gaps(readings))
        .singleElement()
        .asString()
        .contains("no reading")
        .contains("run " + lost.run());
    assertThat(test.outliers()).anyMatch(o -> o.contains("500.0 µm"));
    assertThat(test.accuracy()).as("the wild reading still counts").isGreaterThan(0.4);
    assertThat(test.targets().stream().mapToInt(t -> t.up().size() + t.down().size()).sum())
        .isEqualTo(readings.size());
  }

  @Test
  void aDialTestNamesMissingAndWildReadings() {
    List<DialReading> readings = new ArrayList<>(SeededTrials.dial(5));
    DialReading lost = readings.remove(30);
    DialReading r = readings.get(60);
    readings.set(60, new DialReading(r.run(), r.direction(), r.turns(), r.position() + 0.03));
    DialTest test = DialTest.of(readings, 1, 0.2);
    assertThat(test.gaps()).singleElement().asString().contains("run " + lost.run());
    assertThat(test.outliers()).isNotEmpty();
    assertThat(test.fit().residuals().getDimension()).isEqualTo(readings.size());
  }

  @Test
  void aNewZeroInEachRunChangesNothingButItsOffset() {
    List<DialReading> readings = SeededTrials.dial(6);
    List<DialReading> zeroed =
        readings.stream()
            .map(r -> new DialReading(r.run(), r.direction(), r.turns(), r.position() + r.run()))
            .toList();
    DialTest one = DialTest.of(readings, 1, 0.2);
    DialTest other = DialTest.of(zeroed, 1, 0.2);
    assertThat(other.travelPerTurn()).isCloseTo(one.travelPerTurn(), within(1e-12));
    assertThat(other.backlash()).isCloseTo(one.backlash(), within(1e-12));
    assertThat(other.harmonic(1).amplitude()).isCloseTo(one.harmonic(1).amplitude(), within(1e-12));
  }

  @Test
  void wholeTurnsHideTheOncePerTurnError() {
    List<DialReading> readings = new ArrayList<>();
    for (int run = 1; run <= 2; run++) {
      for (int turn = 0; turn <= 10; turn++) {
        readings.add(new DialReading(run, 1, turn, 3.0 * turn + 0.001 * (turn % 3)));
      }
    }
    assertThatThrownBy(() -> DialTest.of(readings, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cannot tell apart")
        .hasMessageContaining("a1");
    double[] whole = {0, 3, 6, 9, 12};
    assertThat(TestPlan.hidden(whole, new double[] {3})).hasSize(1);
    assertThat(TestPlan.hidden(TestPlan.targets(60, 1), new double[] {3})).isEmpty();
  }

  @Property(tries = 60)
  void reversalReturnsSpindleAndBar(
      @ForAll @DoubleRange(min = 0, max = 0.05) double spindle,
      @ForAll @DoubleRange(min = -3, max = 3) double one,
      @ForAll @DoubleRange(min = 0, max = 0.05) double bar,
      @ForAll @DoubleRange(min = -3, max = 3) double other,
      @ForAll @DoubleRange(min = 0.5, max = 3) double seat) {
    RunOutVector s = RunOutVector.polar(spindle, one);
    RunOutVector b = RunOutVector.polar(bar, other);
    RunOut.Seatings found =
        RunOut.seatings(
            new double[] {0, seat, -seat / 2},
            List.of(s.plus(b), s.plus(b.turned(seat)), s.plus(b.turned(-seat / 2))));
    assertThat(found.spindle().minus(s).size()).isLessThan(1e-12);
    assertThat(found.bar().minus(b).size()).isLessThan(1e-12);
    assertThat(found.scatter()).isLessThan(1e-12);
  }

  @Test
  void doublingAllReadingsShrinksTheUncertaintyByRootTwo() {
    double[] x = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19};
    double[] y = new double[20];
    RandomGenerator random = SeededTrials.random(2);
    for (int i = 0; i < 20; i++) {
      y[i] = 2 + 0.5 * x[i] + random.nextGaussian();
    }
    double[] xx = new double[40];
    double[] yy = new double[40];
    for (int i = 0; i < 40; i++) {
      xx[i] = x[i % 20];
      yy[i] = y[i % 20];
    }
    LinearFit once = CalibrationLine.of(x, y, 0).fit();
    LinearFit twice = CalibrationLine.of(xx, yy, 0).fit();
    assertThat(twice.value("y2")).isCloseTo(once.value("y2"), within(1e-12));
    double ratio = twice.uncertainty("y2") / once.uncertainty("y2");
    assertThat(ratio).isCloseTo(Math.sqrt(0.5), within(0.02));
  }

  @Property(tries = 100)
  void quantilesInvertTheirProbabilities(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double p,
      @ForAll @DoubleRange(min = 1, max = 200) double nu) {
    double t = Quantiles.student(p, nu);
    double tails = Quantiles.studentTails(t, nu);
    assertThat(tails).isCloseTo(2 * Math.min(p, 1 - p), within(1e-9));
    assertThat(Quantiles.chiSquaredTail(Quantiles.chiSquared(p, nu), nu))
        .isCloseTo(1 - p, within(1e-9));
    assertThat(Quantiles.fisherTail(Quantiles.fisher(p, nu, 7), nu, 7))
        .isCloseTo(1 - p, within(1e-9));
  }

  @Test
  void theZoneIsNeverWiderThanTheBandsAboutOtherLines() {
    RandomGenerator random = SeededTrials.random(8);
    for (int i = 0; i < 50; i++) {
      double[] z = new double[9];
      double[] h = new double[9];
      for (int k = 0; k < 9; k++) {
        z[k] = 50.0 * k;
        h[k] = random.nextGaussian();
      }
      Straightness s = Straightness.of(z, h);
      assertThat(s.minimumZone()).isLessThanOrEqualTo(RunOut.range(s.fromEnds()) + 1e-12);
      assertThat(s.minimumZone()).isLessThanOrEqualTo(RunOut.range(s.fromLine()) + 1e-12);
      double searched = Double.POSITIVE_INFINITY;
      for (int k = -4000; k <= 4000; k++) {
        double[] d = new double[9];
        for (int j = 0; j < 9; j++) {
          d[j] = h[j] - k * 1e-5 * z[j];
        }
        searched = Math.min(searched, RunOut.range(d));
      }
      assertThat(s.minimumZone()).isCloseTo(searched, within(0.01));
    }
  }

  @Test
  void oneSidedLimitsStayOneSided() {
    AcceptanceLimit g7 = AcceptanceLimit.of("iso-1708", "G7h", "standard", 300);
    assertThat(g7.verdict(0.006, 0.0015, 300).outcome()).isEqualTo(Verdict.Outcome.GOOD);
    assertThat(g7.verdict(-0.006, 0.0015, 300).outcome()).isEqualTo(Verdict.Outcome.NOT_GOOD);
    assertThat(g7.verdict(-0.003, 0.002, 300).outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
  }

  @Test
  void limitsShrinkWithTheLengthDownToTheirFloorAndNeverGrow() {
    AcceptanceLimit g7 = AcceptanceLimit.of("iso-1708", "G7v", "standard", 300);
    assertThat(g7.at(300)).isEqualTo(0.02);
    assertThat(g7.at(225)).isCloseTo(0.015, within(1e-12));
    assertThat(g7.at(50)).isEqualTo(0.01);
    assertThat(g7.at(900)).isEqualTo(0.02);
    AcceptanceLimit bed = AcceptanceLimit.of("iso-1708", "G1a", "standard", 2500);
    assertThat(bed.at(2500)).isCloseTo(0.04, within(1e-12));
    assertThat(AcceptanceLimit.all()).hasSizeGreaterThan(100);
    assertThat(AcceptanceLimit.all()).allMatch(l -> !l.source().document().isBlank());
  }
}
