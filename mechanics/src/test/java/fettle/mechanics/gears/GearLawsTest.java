package fettle.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Involutes, gears and pairs obey the laws they are made of. */
class GearLawsTest {

  private static final double DEG20 = Math.toRadians(20);

  @Property(tries = 500)
  void theInverseInvoluteUndoesTheInvolute(
      @ForAll @IntRange(min = 1, max = 1_300_000) int millionths) {
    double a = millionths / 1e6;
    assertThat(Involute.angle(Involute.inv(a))).isCloseTo(a, within(1e-12 + 1e-9 * a));
  }

  @Property(tries = 200)
  void theDerivativeOfTheInvoluteIsTheSquareOfTheTangent(
      @ForAll @DoubleRange(min = 0.01, max = 1.2) double a) {
    double h = 1e-6;
    double slope = (Involute.inv(a + h) - Involute.inv(a - h)) / (2 * h);
    assertThat(slope).isCloseTo(Math.tan(a) * Math.tan(a), within(1e-6 * (1 + slope)));
  }

  @Property(tries = 300)
  void aPairWithoutPlayFillsTheWorkingPitchExactly(
      @ForAll @IntRange(min = 12, max = 80) int z1,
      @ForAll @IntRange(min = 12, max = 80) int z2,
      @ForAll @DoubleRange(min = -0.2, max = 0.6) double x1,
      @ForAll @DoubleRange(min = -0.05, max = 0.6) double x2) {
    GearPair pair = GearPair.withoutPlay(Gear.of(2, z1, x1, DEG20), Gear.of(2, z2, x2, DEG20));
    double d1 = 2 * pair.axes() * z1 / (z1 + z2);
    double d2 = 2 * pair.axes() * z2 / (z1 + z2);
    double filled = pair.pinion().thicknessAt(d1) + pair.wheel().thicknessAt(d2);
    assertThat(filled).isCloseTo(Math.PI * d1 / z1, within(1e-9));
    assertThat(pair.backlash(0)).isCloseTo(0, within(1e-9));
    GearPair again = GearPair.onCentres(pair.pinion(), z2, pair.axes());
    assertThat(again.wheel().shift()).isCloseTo(x2, within(1e-8));
  }

  @Property(tries = 200)
  void aRingPairWithoutPlayFillsTheWorkingPitchExactly(
      @ForAll @IntRange(min = 15, max = 30) int z1,
      @ForAll @IntRange(min = 25, max = 60) int more,
      @ForAll @DoubleRange(min = -0.2, max = 0.3) double x1,
      @ForAll @DoubleRange(min = -0.5, max = 0) double x2) {
    RingPair pair = RingPair.withoutPlay(Gear.of(2, z1, x1, DEG20), z1 + more, x2);
    double d1 = 2 * pair.axes() * z1 / more;
    double d2 = 2 * pair.axes() * (z1 + more) / more;
    double s2 = 2 * (Math.PI / 2 + 2 * x2 * Math.tan(DEG20));
    double reference = 2.0 * (z1 + more);
    double there =
        d2 * (s2 / reference - Involute.inv(DEG20) + Involute.inv(Math.acos(pair.ringBase() / d2)));
    double filled = pair.pinion().thicknessAt(d1) + there;
    assertThat(filled).isCloseTo(Math.PI * d1 / z1, within(1e-9));
    assertThat(pair.backlash(0)).isCloseTo(0, within(1e-9));
  }

  @Property(tries = 200)
  void aPairIsTheSameSeenFromEitherGear(
      @ForAll @IntRange(min = 12, max = 80) int z1,
      @ForAll @IntRange(min = 12, max = 80) int z2,
      @ForAll @DoubleRange(min = 0, max = 0.5) double x1,
      @ForAll @DoubleRange(min = 0, max = 0.5) double x2) {
    Gear first = Gear.of(1.25, z1, x1, DEG20);
    Gear second = Gear.of(1.25, z2, x2, DEG20);
    GearPair pair = GearPair.withoutPlay(first, second);
    GearPair turned = GearPair.withoutPlay(second, first);
    assertThat(pair.axes()).isCloseTo(turned.axes(), within(1e-10));
    assertThat(pair.contactRatio()).isCloseTo(turned.contactRatio(), within(1e-10));
    assertThat(pair.pinionInterference()).isCloseTo(turned.wheelInterference(), within(1e-10));
  }

  @Property(tries = 200)
  void contactRatioStaysBelowThatOfTwoRacks(
      @ForAll @IntRange(min = 17, max = 400) int z1,
      @ForAll @IntRange(min = 17, max = 400) int z2) {
    double racks = 2 / (Math.PI * Math.sin(DEG20) * Math.cos(DEG20));
    GearPair pair = GearPair.withoutPlay(Gear.of(1, z1, 0, DEG20), Gear.of(1, z2, 0, DEG20));
    assertThat(pair.contactRatio()).isBetween(1.3, racks);
  }

  @Test
  void aVeryLargeWheelActsAsARack() {
    Gear pinion = Gear.of(1.5, 20, 0, DEG20);
    GearPair pair = GearPair.withoutPlay(pinion, Gear.of(1.5, 100_000, 0, DEG20));
    double rack =
        (Math.sqrt(33.0 * 33.0 - pinion.base() * pinion.base()) / 2
                - 15 * Math.sin(DEG20)
                + 1.5 / Math.sin(DEG20))
            / (1.5 * Math.PI * Math.cos(DEG20));
    assertThat(pair.contactRatio()).isCloseTo(rack, within(1e-4));
  }

  @Property(tries = 200)
  void spansOverOneToothMoreDifferByTheBasePitch(
      @ForAll @IntRange(min = 20, max = 120) int z,
      @ForAll @DoubleRange(min = -0.3, max = 0.6) double x) {
    Gear gear = Gear.of(1.5, z, x, DEG20);
    int k = gear.spanTeeth();
    assertThat(gear.span(k + 1, 0) - gear.span(k, 0))
        .isCloseTo(Math.PI * 1.5 * Math.cos(DEG20), within(1e-10));
    assertThat(gear.shiftFromSpan(gear.span(k, 0), k)).isCloseTo(x, within(1e-10));
    double contact = gear.spanContact(gear.span(k, 0));
    assertThat(contact).isBetween(gear.form(), gear.tip(0));
  }

  @Property(tries = 200)
  void sizesOverPinsTellTheProfileShiftBack(
      @ForAll @IntRange(min = 10, max = 120) int z,
      @ForAll @DoubleRange(min = -0.2, max = 0.6) double x) {
    Gear gear = Gear.of(2, z, x, DEG20);
    assertThat(gear.shiftFromPins(gear.overPins(3.5, 0), 3.5)).isCloseTo(x, within(1e-8));
  }

  @Test
  void oneToothMoreOrLessOnOldCentresNeedsTheseShiftsAndAngles() {
    double[][] table = {
      {50, -0.460, 16.57, 0.536, 22.94},
      {60, -0.467, 17.19, 0.530, 22.48},
      {75, -0.474, 17.78, 0.524, 22.00},
      {90, -0.478, 18.17, 0.520, 21.68},
      {120, -0.484, 18.64, 0.515, 21.27},
      {150, -0.487, 18.92, 0.512, 21.02}
    };
    for (double[] row : table) {
      int sum = (int) row[0];
      GearPair more = GearPair.onCentres(Gear.of(1, 20, 0, DEG20), sum + 1 - 20, sum / 2.0);
      GearPair less = GearPair.onCentres(Gear.of(1, 20, 0, DEG20), sum - 1 - 20, sum / 2.0);
      assertThat(more.wheel().shift()).isCloseTo(row[1], within(5.1e-4));
      assertThat(Math.toDegrees(more.workingAngle())).isCloseTo(row[2], within(5.1e-3));
      assertThat(less.wheel().shift()).isCloseTo(row[3], within(5.1e-4));
      assertThat(Math.toDegrees(less.workingAngle())).isCloseTo(row[4], within(5.1e-3));
    }
  }

  @Test
  void theSameSwapWithoutShiftOverlapsOrRattles() {
    GearPair more = new GearPair(Gear.of(1.25, 19, 0, DEG20), Gear.of(1.25, 57, 0, DEG20), 46.875);
    GearPair less = new GearPair(Gear.of(1.25, 19, 0, DEG20), Gear.of(1.25, 55, 0, DEG20), 46.875);
    assertThat(more.backlash(0)).isCloseTo(-0.405, within(5e-4));
    assertThat(less.backlash(0) / Math.cos(less.workingAngle())).isCloseTo(0.484, within(5e-4));
    assertThat(more.concerns()).anyMatch(c -> c.level() == Concern.Level.REFUSE);
  }

  @Test
  void moduleAndDiametralPitchDoNotMesh() {
    assertThatThrownBy(
            () -> new GearPair(Gear.of(1.25, 20, 0, DEG20), Gear.of(25.4 / 20, 40, 0, DEG20), 38))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("base pitches");
    assertThatThrownBy(
            () ->
                new GearPair(Gear.of(1, 20, 0, DEG20), Gear.of(1, 40, 0, Math.toRadians(14.5)), 30))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void eachToleranceClassIsSquareRootOfTwoWider() {
    for (int grade = 1; grade < 11; grade++) {
      double ratio =
          FlankTolerances.cumulativePitch(60, 1.5, grade + 1)
              / FlankTolerances.cumulativePitch(60, 1.5, grade);
      assertThat(ratio).isCloseTo(Math.sqrt(2), within(1e-12));
    }
    assertThat(FlankTolerances.rounded(FlankTolerances.cumulativePitch(18.75, 1.25, 8)))
        .isCloseTo(0.043, within(1e-12));
    assertThat(FlankTolerances.rounded(FlankTolerances.cumulativePitch(80, 1, 11)))
        .isCloseTo(0.142, within(1e-12));
  }

  @Test
  void moreTeethBearMore() {
    for (int z = 12; z < 400; z++) {
      assertThat(ToothStrength.lewisFactor(z + 1)).isGreaterThan(ToothStrength.lewisFactor(z));
    }
    double last = Double.MAX_VALUE;
    for (int z = 17; z < 200; z++) {
      Gear gear = Gear.of(1, z, 0, DEG20);
      double form = ToothStrength.atTip(gear, gear.tip(0)).form();
      assertThat(form).isLessThan(last);
      last = form;
    }
  }

  @Property(tries = 100)
  void theThirtyDegreeTangentTouchesTheGeneratedFillet(
      @ForAll @IntRange(min = 17, max = 80) int z,
      @ForAll @DoubleRange(min = -0.05, max = 0.6) double x) {
    Gear gear = Gear.of(1, z, x, DEG20);
    double chord = ToothStrength.atTip(gear, gear.tip(0)).rootChord();
    assertThat(chord).isCloseTo(RootTrochoid.chordAtThirtyDegrees(gear), within(1e-5));
  }

  @Test
  void pairsOnOldCentresThatComeNearRoundTravels() {
    TeethOnCentres centres =
        new TeethOnCentres(
            1.25, 46.875, BasicRack.of(DEG20), fettle.mechanics.base.Ratio.PI.times(21), 12, 120);
    TeethOnCentres.Choice one =
        centres.forTravel(fettle.mechanics.base.Ratio.of(24)).best().orElseThrow();
    assertThat(one.driver()).isEqualTo(20);
    assertThat(one.driven()).isEqualTo(55);
    assertThat(one.ppm()).isCloseTo(-402.3375, within(1e-3));
    assertThat(one.pair().wheel().shift()).isCloseTo(0, within(1e-12));
    TeethOnCentres.Choice other =
        centres.forTravel(fettle.mechanics.base.Ratio.of(22)).best().orElseThrow();
    assertThat(other.driver()).isEqualTo(19);
    assertThat(other.driven()).isEqualTo(57);
    assertThat(other.pair().wheel().shift()).isCloseTo(-0.47392, within(1e-5));
    assertThat(centres.forTravel(fettle.mechanics.base.Ratio.of(22)).refused()).isPositive();
  }
}
