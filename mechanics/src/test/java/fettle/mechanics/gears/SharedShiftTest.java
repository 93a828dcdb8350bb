package fettle.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Shifts on given centres: nothing on the reference distance, no play elsewhere, fairly divided.
 */
class SharedShiftTest {

  private static final BasicRack TWENTY = BasicRack.of(Math.toRadians(20));

  @Test
  void onTheReferenceDistanceNothingIsShifted() {
    GearPair pair = SharedShift.on(1.25, TWENTY, 21, 105, 1.25 * 63);
    assertThat(pair.pinion().shift()).isZero();
    assertThat(pair.wheel().shift()).isZero();
    assertThat(pair.concerns()).isEmpty();
  }

  @Test
  void oneToothMoreOnTheOldCentresAsksForThePublishedSum() {
    GearPair pair = SharedShift.on(1.25, TWENTY, 19, 57, 46.875);
    assertThat(pair.pinion().shift() + pair.wheel().shift()).isCloseTo(-0.4739, within(5e-5));
  }

  @Test
  void everyPairRunsWithoutPlayAndTheOrderOfTheGearsDoesNotMatter() {
    Random random = new Random(3);
    for (int round = 0; round < 60; round++) {
      int first = 20 + random.nextInt(60);
      int second = 20 + random.nextInt(60);
      double axes = (first + second) / 2.0 + random.nextDouble() - 0.4;
      GearPair pair = SharedShift.on(1, TWENTY, first, second, axes);
      GearPair turned = SharedShift.on(1, TWENTY, second, first, axes);
      assertThat(pair.backlash(0)).isCloseTo(0, within(1e-9));
      assertThat(turned.wheel().shift()).isCloseTo(pair.pinion().shift(), within(0.0101));
    }
  }

  @Test
  void theShiftGoesWhereItSavesTheSmallGear() {
    GearPair pair = SharedShift.on(1, TWENTY, 14, 60, 37.5);
    assertThat(pair.pinion().shift()).isGreaterThanOrEqualTo(pair.pinion().shiftWithoutUndercut());
    assertThat(pair.concerns().stream().map(Concern::level)).doesNotContain(Concern.Level.REFUSE);
  }

  @Test
  void centresThatNoShiftCanFillAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SharedShift.on(1, TWENTY, 30, 30, 33))
        .withMessageContaining("profile shifts");
  }
}
