package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.lathe.Machine;
import org.junit.jupiter.api.Test;

class CutTopicTest {

  private static final CutTopic TOPIC = new CutTopic();
  private final Machine old = DemoLathe.with();

  private static double value(Machine machine, String id) {
    return DemoLathe.figure(TOPIC, machine, "usual work/" + id).value();
  }

  @Test
  void theDeepestCutAtHighSpeedUsesUpThePower() {
    SpindleDrive drive = SpindleDrive.of(old).orElseThrow();
    double speed = drive.speed("fast, direct", drive.rated()).value() * 20;
    double specific = 2220 * Math.pow(0.1, -0.14);
    double power = specific * 0.1 * value(old, "deepest cut, fast, direct") * speed;
    assertThat(power).isCloseTo(0.95 * 370_000, within(1.0));
  }

  @Test
  void withoutABlockTheUsualWorkIsTaken() {
    Machine bare = DemoLathe.with(t -> t.replaceFirst("(?s)\\ncutting:\n.*?\n\n", "\n"));
    assertThat(bare.values().has("cutting")).isFalse();
    assertThat(value(bare, "height of the feed marks")).isCloseTo(0.1 * 0.1 / 3.2, within(1e-12));
  }

  @Test
  void halfTheOverhangIsStifferAndQuieter() {
    Machine near = DemoLathe.with(t -> t.replace("  overhang: 60 mm", "  overhang: 30 mm"));
    for (String id :
        new String[] {
          "stiffness between work and tool", "deepest cut that cannot sing at any speed"
        }) {
      assertThat(value(near, id)).isGreaterThan(value(old, id));
    }
  }

  @Test
  void twiceTheFeedMarksFourTimesAsHigh() {
    Machine coarse = DemoLathe.with(t -> t.replace("  feed: 0.1 mm", "  feed: 0.2 mm"));
    assertThat(value(coarse, "height of the feed marks"))
        .isCloseTo(4 * value(old, "height of the feed marks"), within(1e-12));
  }

  @Test
  void theMotorOfTwiceThePowerCutsTwiceAsDeepWherePowerRules() {
    Machine strong = DemoLathe.with(t -> t.replace("power: 370 W", "power: 740 W"));
    assertThat(value(strong, "deepest cut, fast, direct"))
        .isCloseTo(2 * value(old, "deepest cut, fast, direct"), within(1e-9));
  }
}
