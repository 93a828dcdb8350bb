package fettle.mechanics.belts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Length and centres are inverse, pulleys may be swapped, friction has its limits. */
class BeltLawsTest {

  @Test
  void centresGiveTheLengthBack() {
    Random r = new Random(5);
    for (int i = 0; i < 500; i++) {
      double d = 10 + 200 * r.nextDouble();
      double e = 10 + 200 * r.nextDouble();
      double c = (d + e) / 2 * (1.01 + 5 * r.nextDouble());
      for (BeltPath.Way way : BeltPath.Way.values()) {
        BeltPath there = new BeltPath(d, e, c, way);
        assertThat(new BeltPath(e, d, c, way).length()).isEqualTo(there.length());
        assertThat(BeltPath.ofLength(d, e, there.length(), way).centres())
            .isCloseTo(c, within(1e-7 * c));
        double ratio = there.large() / there.small();
        assertThat(BeltPath.ofRatio(ratio, there.length(), c, way).small())
            .isCloseTo(there.small(), within(1e-6 * c));
      }
    }
  }

  @Test
  void crossedBeltsKeepTheSumOfDiameters() {
    double l = new BeltPath(60, 140, 400, BeltPath.Way.CROSSED).length();
    assertThat(new BeltPath(90, 110, 400, BeltPath.Way.CROSSED).length())
        .isCloseTo(l, within(1e-9));
  }

  @Test
  void equalPulleysAreHalfWrapped() {
    BeltPath p = new BeltPath(80, 80, 300, BeltPath.Way.OPEN);
    assertThat(p.length()).isCloseTo(600 + Math.PI * 80, within(1e-9));
    assertThat(p.wrapSmall()).isCloseTo(Math.PI, within(1e-12));
    assertThat(new BeltPath(50, 125, 180, BeltPath.Way.OPEN).length())
        .isCloseTo(642.7, within(0.05));
  }

  @Test
  void tensionsCarryThePower() {
    double ratio = BeltPull.ratio(0.25, Math.toRadians(156), Math.toRadians(40));
    assertThat(ratio).isCloseTo(7.31, within(0.02));
    BeltPull p = BeltPull.carrying(550e3, 7330, ratio, 5.6e-8);
    assertThat((p.tight() - p.slack()) * 7330).isCloseTo(550e3, within(1e-3));
    double formula = 550e3 / (2 * 7330) * (ratio + 1) / (ratio - 1) + p.centrifugal();
    assertThat(p.rest()).isCloseTo(formula, within(1e-9));
    assertThat(p.rest()).isCloseTo(52, within(0.7));
    assertThat(BeltPull.shaftLoad(p.tight(), p.slack(), Math.toRadians(156)))
        .isCloseTo(103, within(1.5));
    assertThat(BeltPull.ratio(0, 3, 0.7)).isEqualTo(1);
    assertThatThrownBy(() -> BeltPull.carrying(1, 1, 1, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void tooShortABeltIsRefused() {
    assertThatThrownBy(() -> BeltPath.ofLength(100, 50, 200, BeltPath.Way.OPEN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("too short");
  }

  @Test
  void toothedLengthsAreWholeTeeth() {
    for (double l : BeltKind.L.lengths()) {
      assertThat(l / 9.525).isCloseTo(Math.rint(l / 9.525), within(1e-9));
    }
    for (BeltKind kind : BeltKind.values()) {
      assertThat(BeltKind.of(kind.mark())).isEqualTo(kind);
    }
  }
}
