package fettle.planning.gearbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.BasicRack;
import fettle.mechanics.gears.Concern;
import fettle.mechanics.gears.GearPair;
import fettle.mechanics.gears.GearboxSearch;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A settled box: its arm reaches, its wheels clear, its pairs run, its threads are those asked. */
class SettledBoxTest {

  private static final List<BoxWish> WISHES =
      List.of(
          wish("0.5 1 2", "10 20"),
          wish("0.5 0.6 0.7 0.8 1 1.25 1.5 1.75 2 2.5 3", ""),
          wish("0.5 0.75 1 1.25 1.5", "8 10 11 12 16 20"));

  private static BoxWish wish(String leads, String perInch) {
    return new BoxWish(ratios(leads), ratios(perInch));
  }

  private static List<Ratio> ratios(String text) {
    return Stream.of(text.split(" "))
        .filter(t -> !t.isEmpty())
        .map(t -> Ratio.of(new BigDecimal(t)))
        .toList();
  }

  private static BoxFrame frame(double module, double thrust) {
    return new BoxFrame(
        module, BasicRack.of(Math.toRadians(20)), 3.175, thrust, OptionalDouble.empty());
  }

  private static SettledBox box(BoxWish wish, BoxFrame frame) {
    GearboxSearch.Design design = GearboxSearch.search(wish.query(4, 200_000)).design();
    return SettledBox.of(design, wish, frame);
  }

  @Test
  void theArmReachesEveryWheelAndTheTumblerPassesTheLargest() {
    for (BoxWish wish : WISHES) {
      for (double module : new double[] {0.8, 25.4 / 24, 1.5}) {
        SettledBox box = box(wish, frame(module, 1000));
        int largest = box.cone().stream().mapToInt(Integer::intValue).max().orElseThrow();
        assertThat(box.coneCentres() - module * (largest + box.tumbler() + 4) / 2)
            .isGreaterThanOrEqualTo(1 - 1e-9);
        for (SettledBox.Notch notch : box.notches()) {
          double x = box.arm() * Math.cos(notch.swing());
          double y = box.arm() * Math.sin(notch.swing());
          double reach = Math.hypot(box.coneCentres() - x, y);
          assertThat(reach).isCloseTo(module * (box.idler() + notch.wheel()) / 2, within(1e-9));
          assertThat(notch.swing()).isGreaterThan(0.01);
        }
      }
    }
  }

  @Test
  void everyThreadAskedForIsOnThePlate() {
    for (BoxWish wish : WISHES) {
      SettledBox box = box(wish, frame(1, 1000));
      for (Ratio lead : wish.leads()) {
        assertThat(settings(box).anyMatch(s -> box.lead(s[0], s[1]).sameAs(lead))).isTrue();
      }
      for (Ratio tpi : wish.perInch()) {
        assertThat(settings(box).anyMatch(s -> box.perInch(s[0], s[1]).sameAs(tpi))).isTrue();
      }
      for (SettledBox.Notch notch : box.notches()) {
        Ratio size = box.design().cone().get(notch.number() - 1);
        assertThat(Ratio.of(notch.wheel(), box.cone().get(0)))
            .isEqualTo(size.over(box.design().cone().get(0)));
      }
    }
  }

  private static Stream<int[]> settings(SettledBox box) {
    return Stream.iterate(0, n -> n < box.cone().size(), n -> n + 1)
        .flatMap(
            n ->
                Stream.iterate(0, p -> p < box.pairs().size(), p -> p + 1)
                    .map(p -> new int[] {n, p}));
  }

  @Test
  void pairsHaveTheirRatiosOnOneDistanceAndNothingIsRefused() {
    for (BoxWish wish : WISHES) {
      SettledBox box = box(wish, frame(1.25, 500));
      for (int p = 0; p < box.pairs().size(); p++) {
        GearPair pair = box.pairs().get(p);
        assertThat(Ratio.of(pair.pinion().teeth(), pair.wheel().teeth()))
            .isEqualTo(box.design().multipliers().get(p));
        assertThat(pair.axes()).isEqualTo(box.multiplierCentres());
        assertThat(pair.pinion().shift()).isZero();
        assertThat(pair.concerns().stream().map(Concern::level))
            .doesNotContain(Concern.Level.REFUSE);
      }
    }
  }

  @Test
  void keyedWheelsKeepTheirRimAndSpansKeepTheirPlay() {
    for (BoxWish wish : WISHES) {
      SettledBox box = box(wish, frame(1, 1000));
      assertThat(box.findings()).noneMatch(f -> f.contains("keyway"));
      for (BoxWheel wheel : box.wheels()) {
        double rim = (wheel.gear().root() - wheel.bore()) / 2;
        assertThat(rim).as(wheel.name()).isGreaterThan(1.5);
        double nominal = wheel.gear().span(wheel.gear().spanTeeth(), 0);
        assertThat(wheel.spanMost()).isBetween(nominal - 0.15, nominal - 0.03);
        assertThat(wheel.spanMost() - wheel.spanLeast())
            .isCloseTo(0.06 * Math.cos(Math.toRadians(20)), within(1e-9));
      }
    }
  }

  @Test
  void givenCentresAreFilledByProfileShift() {
    BoxWish wish = WISHES.get(1);
    SettledBox free = box(wish, frame(1, 1000));
    SettledBox held = box(wish, frame(1, 1000).onCentres(free.multiplierCentres() + 0.3));
    for (GearPair pair : held.pairs()) {
      assertThat(pair.axes()).isEqualTo(free.multiplierCentres() + 0.3);
      assertThat(pair.backlash(0)).isCloseTo(0, within(1e-9));
      assertThat(pair.contactRatio()).isGreaterThan(1.05);
      assertThat(pair.pinion().shift() + pair.wheel().shift()).isNotZero();
    }
  }

  @Test
  void centresOnWhichNoPairRunsAreRefusedWithTheRatio() {
    BoxFrame tight = frame(1, 1000).onCentres(21);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> box(WISHES.get(1), tight))
        .withMessageContaining("5/2");
  }

  @Test
  void moreThrustNeverAsksForLess() {
    BoxWish wish = WISHES.get(0);
    double shaft = 0;
    double width = 0;
    for (double thrust : new double[] {0, 200, 1000, 3000, 10_000}) {
      SettledBox box = box(wish, frame(1.5, thrust));
      assertThat(box.shaft()).isGreaterThanOrEqualTo(shaft);
      assertThat(box.width()).isGreaterThanOrEqualTo(width);
      shaft = box.shaft();
      width = box.width();
    }
  }

  @Test
  void aWishWithoutALeadIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> wish("", "10 20"));
  }
}
