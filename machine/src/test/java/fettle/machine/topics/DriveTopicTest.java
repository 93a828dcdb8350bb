package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.lathe.Machine;
import org.junit.jupiter.api.Test;

class DriveTopicTest {

  private static final DriveTopic TOPIC = new DriveTopic();
  private final Machine old = DemoLathe.with();

  private static double value(Machine machine, String id) {
    return DemoLathe.figure(TOPIC, machine, "spindle drive/" + id).value();
  }

  @Test
  void torqueTimesSpeedIsThePowerThatArrives() {
    SpindleDrive drive = SpindleDrive.of(old).orElseThrow();
    double speed = drive.speed("slow, direct", drive.rated()).value();
    assertThat(value(old, "torque at the spindle, slow, direct") * speed)
        .isCloseTo(0.95 * 370_000, within(1e-3));
  }

  @Test
  void backGearsMultiplyTheTorqueLessTheirLoss() {
    double direct = value(old, "torque at the spindle, slow, direct");
    assertThat(value(old, "torque at the spindle, slow, back gear in"))
        .isCloseTo(direct * 50 * 62 / (20 * 25) * 0.97 * 0.97, within(1e-6));
  }

  @Test
  void aHeavierRotorTakesLongerToStart() {
    Machine heavy =
        DemoLathe.with(
            t ->
                t.replace(
                    "supply: single-phase}", "supply: single-phase, rotor inertia: 0.01 kg m2}"));
    assertThat(value(heavy, "time to the highest speed"))
        .isGreaterThan(value(old, "time to the highest speed"));
  }

  @Test
  void lessWrapNeedsMoreTension() {
    assertThat(value(old, "wrap on the smaller pulley, slow"))
        .isLessThan(value(old, "wrap on the smaller pulley, fast"));
    Machine near =
        DemoLathe.with(t -> t.replace("centre distance: 265 mm", "centre distance: 125 mm"));
    assertThat(value(near, "tension of the belt at rest, at least, slow"))
        .isGreaterThan(value(old, "tension of the belt at rest, at least, slow"));
  }

  @Test
  void pulleysThatTouchAreAStop() {
    Machine touching =
        DemoLathe.with(t -> t.replace("centre distance: 265 mm", "centre distance: 60 mm"));
    assertThat(DemoLathe.study(TOPIC, touching).findings())
        .anySatisfy(f -> assertThat(f.rank()).isEqualTo(Finding.Rank.STOP));
  }

  @Test
  void aLargeIronFaceplateIsToldNotToRunAtTheHighestSpeed() {
    Machine large =
        DemoLathe.with(
            t ->
                t.replace(
                    "{kind: cylinder, axis: Z, diameter: 100 mm, length: 52 mm}",
                    "{kind: cylinder, axis: Z, diameter: 900 mm, length: 52 mm}"));
    assertThat(DemoLathe.study(TOPIC, large).findings())
        .anySatisfy(
            f -> assertThat(f.figure()).endsWith("rim speed of the chuck at the highest speed"));
  }
}
