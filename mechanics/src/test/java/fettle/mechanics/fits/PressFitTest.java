package fettle.mechanics.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PressFitTest {

  private static final Elasticity STEEL = new Elasticity(210000, 0.3);
  private static final Elasticity IRON = new Elasticity(110000, 0.26);

  /**
   * Sibling: stresses A + B/r² and A - B/r² of each ring from its own two boundary conditions,
   * radial displacement from Hooke's law; the two walls must move together by half the
   * interference.
   */
  @Property(tries = 200)
  void wallsMeet(
      @ForAll @DoubleRange(min = 5, max = 100) double d,
      @ForAll @DoubleRange(min = 1.1, max = 5) double hub,
      @ForAll @DoubleRange(min = 0, max = 0.9) double bore) {
    PressFit joint = new PressFit(d, hub * d, bore * d, IRON, STEEL);
    double p = joint.pressure(0.001 * d);
    double outer = wall(d, d, hub * d, p, 0, IRON);
    double inner = wall(d, bore * d, d, 0, p, STEEL);
    assertThat(outer - inner).isCloseTo(0.0005 * d, within(1e-9 * d));
    if (bore > 0) {
      double closed = -2 * wall(bore * d, bore * d, d, 0, p, STEEL);
      assertThat(joint.boreClosure(p)).isCloseTo(closed, within(1e-9 * d));
    }
    double grown = 2 * wall(hub * d, d, hub * d, p, 0, IRON);
    assertThat(joint.hubGrowth(p)).isCloseTo(grown, within(1e-9 * d));
  }

  private static double wall(
      double at, double inner, double outer, double inside, double outside, Elasticity e) {
    double i2 = inner * inner / 4;
    double o2 = outer * outer / 4;
    double a = (inside * i2 - outside * o2) / (o2 - i2);
    double b = (inside - outside) * i2 * o2 / (o2 - i2);
    double r = at / 2;
    double second = b == 0 ? 0 : b / (r * r);
    return r * ((a + second) - e.poisson() * (a - second)) / e.modulus();
  }

  @Property(tries = 100)
  void interferenceIsTheInverseOfPressure(
      @ForAll @DoubleRange(min = 0, max = 0.2) double interference) {
    PressFit joint = new PressFit(50, 80, 20, STEEL, STEEL);
    assertThat(joint.interference(joint.pressure(interference)))
        .isCloseTo(interference, within(1e-12));
  }

  @Test
  void solidShaftInLikeHubFollowsTheShortFormula() {
    double p = new PressFit(50, 80, 0, STEEL, STEEL).pressure(0.04);
    double brief = 0.04 * 210000 / (2 * 50) * (1 - 50.0 * 50 / (80 * 80));
    assertThat(p).isCloseTo(brief, within(1e-9));
  }

  @Test
  void smoothingNeverMakesAClearance() {
    assertThat(PressFit.effective(0.005, 0.006, 0.004)).isZero();
    assertThat(PressFit.effective(0.05, 0.006, 0.004)).isCloseTo(0.042, within(1e-12));
  }

  @Test
  void impossibleRingsAreRefused() {
    assertThatThrownBy(() -> new PressFit(50, 50, 0, STEEL, STEEL))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new PressFit(50, 80, 50, STEEL, STEEL))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new PressFit(Double.NaN, 80, 0, STEEL, STEEL))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Elasticity(210000, 0.5))
        .isInstanceOf(IllegalArgumentException.class);
    PressFit joint = new PressFit(50, 80, 0, STEEL, STEEL);
    assertThatThrownBy(() -> joint.pressure(-0.01)).isInstanceOf(IllegalArgumentException.class);
  }
}
