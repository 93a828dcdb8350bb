package fettle.mechanics.drives;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Slip and torque are inverse, a steady torque integrates to the closed form. */
class DriveLawsTest {

  @Test
  void slipGivesTheTorqueBack() {
    for (double share = 0.05; share <= 1; share += 0.05) {
      double s = InductionMotor.runningSlip(share, 0.25);
      assertThat(new InductionMotor(1000, 0.25).torque(s)).isCloseTo(1000 * share, within(1e-9));
      assertThat(s).isLessThanOrEqualTo(0.25);
    }
    assertThat(InductionMotor.runningSlip(0.5, 0.5)).isCloseTo(0.134, within(0.0005));
  }

  @Test
  void runUpByStepsIsRunUpByFormula() {
    double closed = RunUp.time(2.0, 200, 3000, 500);
    assertThat(RunUp.time(2.0, 200, w -> 2500)).isCloseTo(closed, within(1e-9));
    assertThat(RunUp.time(2.0, 200, w -> w < 100 ? 1 : -1)).isInfinite();
    assertThatThrownBy(() -> RunUp.time(2.0, 200, 400, 500))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("does not start");
  }
}
