package fettle.desk.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.gears.BasicRack;
import fettle.mechanics.gears.Gear;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Drawn wheels mesh: where one has a tooth on the line of centres, the other has a space. */
class WheelTest {

  private static Gear gear(int teeth) {
    return new Gear(1.5, teeth, 0, BasicRack.of(Math.toRadians(20)));
  }

  private static Wheel wheel(int teeth, double phase, double turns) {
    return new Wheel(gear(teeth), gear(teeth).tip(0), 3, -4, phase, turns, "steel");
  }

  @Test
  void toothMeetsSpaceInEveryDirectionAndAtEveryTurn() {
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      int z1 = 10 + random.nextInt(70);
      int z2 = 10 + random.nextInt(70);
      double direction = 2 * Math.PI * random.nextDouble();
      double turned = random.nextDouble();
      Wheel first = wheel(z1, 2 * Math.PI * random.nextDouble(), 1.3);
      Wheel second = first.meshing(gear(z2), gear(z2).tip(0), 0.75 * (z1 + z2), direction);
      Wheel a = at(first, turned);
      Wheel b = at(second, turned);
      double tooth = a.toothAway(direction);
      double space = b.toothAway(direction + Math.PI);
      double sum = tooth + space;
      assertThat(sum - Math.floor(sum)).isCloseTo(0.5, within(1e-6));
    }
  }

  private static Wheel at(Wheel w, double turned) {
    double phase = w.phase() + 2 * Math.PI * w.turns() * turned;
    return new Wheel(w.gear(), w.tip(), w.x(), w.y(), phase, w.turns(), w.style());
  }

  @Test
  void ratesFollowTheTeethAndTheCentreDistanceIsKept() {
    Wheel first = wheel(20, 0.3, 2);
    Wheel second = first.meshing(gear(50), gear(50).tip(0), 52.6, 1.1);
    assertThat(second.turns()).isEqualTo(-0.8);
    assertThat(Math.hypot(second.x() - first.x(), second.y() - first.y()))
        .isCloseTo(52.6, within(1e-9));
  }
}
