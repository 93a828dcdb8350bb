package fettle.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Answer;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Force grows with feed but less than in proportion; every lobe lies on the border of stability.
 */
class CuttingLawsTest {

  @Test
  void forceRisesLessThanFeed() {
    double before = new CuttingForce(1990, .26, 0.06, 1, 1.3, 1).main();
    for (double f = 0.07; f < 0.6; f += 0.05) {
      double here = new CuttingForce(1990, .26, f, 1, 1.3, 1).main();
      assertThat(here).isGreaterThan(before);
      assertThat(here / f)
          .isLessThan(new CuttingForce(1990, .26, f * 0.9, 1, 1.3, 1).main() / (f * 0.9));
      before = here;
    }
    assertThat(new CuttingForce(1990, 0, 0.2, 1, 1.3, 1).specific()).isEqualTo(1990);
  }

  @Test
  void everyLobeMeetsTheBorderCondition() {
    Random r = new Random(7);
    for (int i = 0; i < 300; i++) {
      Chatter c =
          new Chatter(
              1e3 + 5e4 * r.nextDouble(),
              0.005 + 0.1 * r.nextDouble(),
              50 + 900 * r.nextDouble(),
              300 + 3000 * r.nextDouble());
      double f = c.frequency() * (1.001 + r.nextDouble());
      assertThat(c.residual(c.width(f), f, c.speed(r.nextInt(8), f))).isLessThan(1e-9);
      assertThat(c.width(f)).isGreaterThanOrEqualTo(c.limitWidth() * (1 - 1e-12));
      assertThat(c.width(c.limitFrequency())).isCloseTo(c.limitWidth(), within(1e-9));
    }
  }

  @Test
  void workedExampleSaysChatterRules() {
    Answer a =
        Reckoners.of("cut-limit")
            .orElseThrow()
            .answer(
                Map.of(
                    "material",
                    "E295",
                    "f",
                    "0.1",
                    "kappa",
                    "75",
                    "d",
                    "40",
                    "n",
                    "600",
                    "P_spindle",
                    "412.5",
                    "k",
                    "10",
                    "limit",
                    "15",
                    "k_mode",
                    "10"));
    assertThat(a.values().get("rules")).isEqualTo(new Answer.Value.Words("chatter"));
    assertThat(number(a, "ap_power")).isCloseTo(0.90, within(0.006));
    assertThat(number(a, "ap_stiffness")).isCloseTo(1.17, within(0.006));
    assertThat(number(a, "ap_chatter")).isCloseTo(0.34, within(0.006));
  }

  private static double number(Answer a, String name) {
    return ((Answer.Value.Real) a.values().getOrDefault(name, new Answer.Value.Real(0))).coherent();
  }

  @Test
  void materialsAreFoundByTheirMarks() {
    for (String mark : CutMaterial.marks()) {
      assertThat(CutMaterial.of(mark).mark()).isEqualTo(mark);
    }
    assertThatThrownBy(() -> CutMaterial.of("cheese"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("E295");
  }
}
