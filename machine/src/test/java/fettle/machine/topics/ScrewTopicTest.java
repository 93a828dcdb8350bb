package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.lathe.Machine;
import fettle.mechanics.base.Working;
import fettle.mechanics.screws.PowerScrew;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ScrewTopicTest {

  private static final ScrewTopic TOPIC = new ScrewTopic();
  private final Machine old = DemoLathe.with();
  private final Machine balls = DemoLathe.with("cross-screw");

  private static double value(Machine machine, String id) {
    return DemoLathe.figure(TOPIC, machine, id).value();
  }

  @Test
  void theHandForceIsTheTorqueOverTheRadiusOfTheHandle() {
    for (Machine machine : new Machine[] {old, balls}) {
      Working hand = DemoLathe.figure(new HandTopic(), machine, "cross feed/force at the handle");
      double radius =
          machine.member("cross handwheel").values().need("handle diameter").value() / 2;
      assertThat(hand.value() * radius)
          .isCloseTo(value(machine, "cross feed/torque against the feed force"), within(1e-9));
    }
  }

  @Test
  void workOfOneTurnIsPaidWithTheEfficiency() {
    double torque = value(old, "cross feed/torque against the feed force");
    double out = 300 * 25.4 / 10;
    assertThat(value(old, "cross feed/efficiency"))
        .isCloseTo(out / (2 * Math.PI * torque), within(1e-9));
  }

  @Test
  void aThreadAtTheLimitOfLockingHoldsWithNoTorqueOfItsOwn() {
    String friction = "        thread: 7/16-10 Acme LH\n        friction: ";
    double limit = 0.15 / value(old, "quill feed/friction over what locks it");
    Machine edge =
        DemoLathe.with(
            t ->
                t.replace(
                        "        thread: 7/16-10 Acme LH\n",
                        friction + String.format(Locale.ROOT, "%.9f", limit) + "\n")
                    .replace(
                        "bearing: {kind: plain thrust, outer diameter: 20 mm, inner diameter: 10"
                            + " mm}",
                        "face: null")
                    .replace("        face: null\n", ""));
    assertThat(value(edge, "quill feed/torque with the feed force")).isCloseTo(0, within(1e-4));
  }

  @Test
  void aSteepScrewIsFoundToDriveBack() {
    Machine steep =
        DemoLathe.with(
            t ->
                t.replace(
                    "thread: 7/16-10 Acme LH\n        play: 0.2",
                    "thread: Tr 16x16P4\n        friction: 0.08\n        play: 0.2"));
    assertThat(DemoLathe.study(TOPIC, steep).findings())
        .anySatisfy(
            f -> {
              assertThat(f.rank()).isEqualTo(Finding.Rank.CAUTION);
              assertThat(f.figure()).isEqualTo("screws/quill feed/torque with the feed force");
            });
  }

  @Test
  void theTorqueWithTheForceIsTheOneOfThePowerScrew() {
    PowerScrew screw = new PowerScrew(25.4 * 7 / 16 - 1.27, 2.54, Math.toRadians(14.5));
    double thread = screw.loweringMoment(300, 0.15);
    double face = 0.12 * 300 * (18 + 9.5) / 4;
    assertThat(value(old, "cross feed/torque with the feed force"))
        .isCloseTo(thread + face, within(1e-9));
  }

  @Test
  void halfTheNutCarriesTwiceThePressureAndWearsTwiceAsFast() {
    Machine half = DemoLathe.with(t -> t.replace("nut length: 22 mm", "nut length: 11 mm"));
    String pressure = "cross feed/pressure in the nut";
    String travel = "cross feed/travel that wears in the play limit, at the worst";
    assertThat(value(half, pressure)).isCloseTo(2 * value(old, pressure), within(1e-9));
    assertThat(value(half, travel)).isCloseTo(value(old, travel) / 2, within(1e-3));
  }

  @Test
  void everyNumberCarriesADoubtWhereItsInputsDo() {
    assertThat(DemoLathe.study(TOPIC, balls).figures())
        .filteredOn(f -> f.name().startsWith("stiffness") || f.name().startsWith("torque"))
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.working().orElseThrow().doubt()).isPositive());
  }
}
