package fettle.mechanics.screws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.threads.Hand;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ScrewLawsTest {

  @Property(tries = 200)
  void withoutFrictionNothingIsLost(
      @ForAll @DoubleRange(min = 5, max = 60) double d2,
      @ForAll @DoubleRange(min = 0.5, max = 10) double lead,
      @ForAll @DoubleRange(min = 0, max = 0.6) double alpha) {
    PowerScrew s = new PowerScrew(d2, lead, alpha);
    assertThat(s.raisingMoment(1000, 0)).isCloseTo(1000 * lead / (2 * Math.PI), within(1e-6));
    assertThat(s.loweringMoment(1000, 0)).isCloseTo(-1000 * lead / (2 * Math.PI), within(1e-6));
  }

  @Property(tries = 200)
  void aScrewThatHoldsHasLessThanHalfEfficiency(
      @ForAll @DoubleRange(min = 5, max = 60) double d2,
      @ForAll @DoubleRange(min = 0.5, max = 20) double lead,
      @ForAll @DoubleRange(min = 0, max = 0.6) double alpha,
      @ForAll @DoubleRange(min = 0.02, max = 0.6) double mu) {
    PowerScrew s = new PowerScrew(d2, lead, alpha);
    boolean canMove = mu * Math.tan(s.leadAngle()) < Math.cos(s.normalHalfAngle());
    if (canMove && mu >= s.lockingFriction()) {
      assertThat(s.efficiency(1, s.raisingMoment(1, mu))).isLessThanOrEqualTo(0.5);
      assertThat(s.loweringMoment(1, mu)).isGreaterThanOrEqualTo(-1e-12);
    }
  }

  @Property(tries = 200)
  void momentsGrowWithFriction(
      @ForAll @DoubleRange(min = 0.02, max = 0.3) double mu,
      @ForAll @DoubleRange(min = 5, max = 40) double d2) {
    PowerScrew s = new PowerScrew(d2, 2, Math.toRadians(15));
    assertThat(s.raisingMoment(1, mu + 0.01)).isGreaterThan(s.raisingMoment(1, mu));
    assertThat(s.loweringMoment(1, mu + 0.01)).isGreaterThan(s.loweringMoment(1, mu));
  }

  @Test
  void thresholdsOfUsualScrews() {
    // common practice: a shallow thread holds, a steep one does not
    assertThat(new PowerScrew(9, 2, Math.toRadians(15)).lockingFriction())
        .isCloseTo(0.068, within(0.0006));
    assertThat(new PowerScrew(14, 8, Math.toRadians(15)).lockingFriction())
        .isCloseTo(0.176, within(0.0006));
  }

  @Test
  void frictionThatJamsIsRefused() {
    PowerScrew steep = new PowerScrew(10, 40, 0);
    assertThatThrownBy(() -> steep.raisingMoment(100, 1.0)).hasMessageContaining("no moment");
  }

  @Test
  void newAndWornCollarMeetForAThinRing() {
    assertThat(PowerScrew.newCollar(40.001, 40)).isCloseTo(40.0005, within(1e-6));
    assertThat(PowerScrew.newCollar(30, 0)).isCloseTo(20, within(1e-12));
    assertThat(PowerScrew.wornCollar(30, 10)).isEqualTo(20);
  }

  @Property(tries = 100)
  void eulerAndJohnsonMeetAtHalfTheYield(
      @ForAll @DoubleRange(min = 4, max = 40) double core,
      @ForAll @DoubleRange(min = 100, max = 900) double yield) {
    double change = SlenderScrew.transition(210_000, yield);
    double length = change * core / 4;
    SlenderScrew longer = new SlenderScrew(core, length * 1.000001);
    SlenderScrew shorter = new SlenderScrew(core, length * 0.999999);
    double half = yield / 2 * longer.area();
    assertThat(longer.bucklingForce(1, 210_000, yield)).isCloseTo(half, within(1e-4 * half));
    assertThat(shorter.bucklingForce(1, 210_000, yield)).isCloseTo(half, within(1e-4 * half));
  }

  @Test
  void bucklingAndWhirlingOrderTheSupportsAlike() {
    SlenderScrew s = new SlenderScrew(10, 600);
    double force = 0;
    double speed = 0;
    for (EndFixity ends : EndFixity.values()) {
      double f = s.bucklingForce(ends.lengthFactor(), 210_000, 305);
      double n = s.criticalSpeed(ends.waveNumber(), 210_000, 7.85e-9);
      assertThat(f).isGreaterThan(force);
      assertThat(n).isGreaterThan(speed);
      force = f;
      speed = n;
    }
  }

  @Test
  void twoThrustBearingsAreStiffestNearTheEndsAndFourTimesOneInTheMiddle() {
    double both = AxialStiffness.heldAtBothEnds(210_000, 50, 150, 300);
    double one = AxialStiffness.heldAtOneEnd(210_000, 50, 300);
    assertThat(both).isCloseTo(4 * one, within(1e-9));
    assertThat(AxialStiffness.heldAtBothEnds(210_000, 50, 10, 300)).isGreaterThan(both);
  }

  @Test
  void aChainIsSofterThanItsSoftestLink() {
    double k = AxialStiffness.inSeries(List.of(20_000.0, 75_000.0, 150_000.0));
    assertThat(k).isLessThan(20_000);
    assertThatThrownBy(() -> AxialStiffness.inSeries(List.of(1.0, 0.0)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void wearCoefficientAndLifeAreInverse() {
    double travel = Nut.life(0.1, 5e-9, 1.768, 14.17);
    assertThat(Nut.wearCoefficient(0.1, travel, 1.768, 14.17)).isCloseTo(5e-9, within(1e-15));
  }

  @Test
  void guidedNutIsFourTimesAsStiffAsAFreeOne() {
    SlenderScrew s = new SlenderScrew(8.5, 60);
    assertThat(s.misalignmentForce(12, 210_000, 0.05))
        .isCloseTo(4 * s.misalignmentForce(3, 210_000, 0.05), within(1e-9));
  }

  @Test
  void handOfTheScrewFollowsTheNut() {
    assertThat(HandOfScrew.needed(HandOfScrew.NutOn.SLIDE, HandOfScrew.Clockwise.AWAY))
        .isEqualTo(Hand.LEFT);
    assertThat(HandOfScrew.needed(HandOfScrew.NutOn.BASE, HandOfScrew.Clockwise.AWAY))
        .isEqualTo(Hand.RIGHT);
    assertThat(HandOfScrew.needed(HandOfScrew.NutOn.SLIDE, HandOfScrew.Clockwise.TOWARDS))
        .isEqualTo(Hand.RIGHT);
  }
}
