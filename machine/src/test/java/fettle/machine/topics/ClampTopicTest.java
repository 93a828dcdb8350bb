package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.lathe.Machine;
import org.junit.jupiter.api.Test;

class ClampTopicTest {

  private static final ClampTopic TOPIC = new ClampTopic();
  private final Machine old = DemoLathe.with();
  private final Machine lever = DemoLathe.with("tailstock-lever");

  private static double value(Machine machine, String id) {
    return DemoLathe.figure(TOPIC, machine, "tailstock clamp/" + id).value();
  }

  @Test
  void theWantedHandForceGivesTheWantedSafety() {
    for (Machine machine : new Machine[] {old, lever}) {
      double given = machine.equals(old) ? 90 : 120;
      double wanted = value(machine, "hand force the largest drill asks for");
      double safety = value(machine, "safety against the largest drill");
      assertThat(safety * wanted / given).isCloseTo(1.5, within(1e-9));
    }
  }

  @Test
  void theLeverPullsByItsMoments() {
    double arm = 2 * Math.cos(Math.toRadians(60)) + 0.12 * (20 + 16) / 2;
    assertThat(value(lever, "force that draws it down")).isCloseTo(120 * 180 / arm, within(1e-6));
  }

  @Test
  void aCoarseEccentricSpringsOpen() {
    assertThat(DemoLathe.study(TOPIC, lever).findings())
        .noneSatisfy(f -> assertThat(f.figure()).endsWith("keeps it shut"));
    Machine coarse =
        DemoLathe.with(
            t ->
                t.replaceFirst(
                    "(?s)  tailstock clamp:.*?\n\n",
                    "  tailstock clamp: {kind: eccentric, holds: tailstock, lever length: 180 mm,"
                        + " eccentricity: 9 mm, eye diameter: 20 mm, shaft diameter: 16 mm}\n\n"));
    assertThat(DemoLathe.study(TOPIC, coarse).findings())
        .anySatisfy(
            f -> {
              assertThat(f.figure()).endsWith("keeps it shut");
              assertThat(f.rank()).isEqualTo(Finding.Rank.CAUTION);
            });
  }
}
