package fettle.desk.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.desk.page.Drawing;
import fettle.mechanics.clamps.DrawEccentric;
import fettle.mechanics.fits.Designation;
import fettle.mechanics.gears.Banjo;
import fettle.mechanics.gears.FixedCentre;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Pictures hold what was reckoned. */
class PicturesTest {

  private static final Banjo BANJO = Banjo.of(118, 1, 48, 112, 0.5, 16, 14);

  private static Stream<Drawing.Mark> all(List<Drawing.Mark> marks) {
    return marks.stream()
        .flatMap(
            m ->
                m instanceof Drawing.Moving v
                    ? Stream.concat(Stream.of(m), all(v.marks()))
                    : m instanceof Drawing.Touch t
                        ? Stream.concat(Stream.of(m), all(t.marks()))
                        : Stream.of(m));
  }

  private static List<Double> turns(Drawing drawing) {
    List<Double> turns = new ArrayList<>();
    all(drawing.marks())
        .filter(m -> m instanceof Drawing.Moving)
        .forEach(m -> turns.add(Double.valueOf(((Drawing.Moving) m).turns())));
    return turns;
  }

  @Test
  void theLastWheelOnTheBanjoTurnsByTheRatioOfTheTrain() {
    BanjoPicture.Drawn four = BanjoPicture.of(BANJO, 25.4 / 24, List.of(30, 60, 63, 80), 0, 0);
    List<Double> turns = turns(four.drawing());
    assertThat(turns.get(3)).isCloseTo(30.0 / 60 * 63 / 80, within(1e-8));
    BanjoPicture.Drawn six =
        BanjoPicture.of(BANJO, 25.4 / 24, List.of(20, 50, 45, 25, 35, 80), 0, 0);
    turns = turns(six.drawing());
    assertThat(turns.get(5)).isCloseTo(-20.0 / 50 * 45 / 25 * 35 / 80, within(1e-8));
    assertThat(six.studs()).hasSize(2);
    BanjoPicture.Drawn simple = BanjoPicture.of(BANJO, 25.4 / 24, List.of(63, 40), 65, 0);
    assertThat(turns(simple.drawing()).get(2)).isCloseTo(63.0 / 40, within(1e-8));
  }

  @Test
  void roomIsDistanceLessTipAndBoss() {
    double module = 25.4 / 24;
    BanjoPicture.Drawn drawn = BanjoPicture.of(BANJO, module, List.of(30, 60, 63, 80), 0, 0);
    double first = 118 - module * 32 / 2 - 7;
    assertThat(drawn.rooms().get(0).room()).isCloseTo(first, within(1e-9));
    assertThat(drawn.studs().get(0)).isCloseTo(module * 143 / 2, within(1e-9));
    assertThat(drawn.rooms()).allMatch(r -> r.room() >= 0.5);
  }

  @Test
  void aBoxHasATouchForEveryNotchAndLever() {
    Drawing drawing =
        BoxPicture.of(
            1,
            new BoxPicture.Wheels(
                List.of(32, 40, 50),
                24,
                40,
                List.of(new FixedCentre.Pair(60, 60), new FixedCentre.Pair(40, 80))),
            new BoxPicture.Set(1, 0, false, "link 1"),
            (w, p) -> w + "/" + p);
    List<String> hrefs =
        all(drawing.marks())
            .filter(m -> m instanceof Drawing.Touch)
            .map(m -> ((Drawing.Touch) m).href())
            .toList();
    assertThat(hrefs).containsExactly("0/0", "1/0", "2/0", "1/0", "1/1");
  }

  @Test
  void zonesOfAFitStandAsTheyAre() {
    Designation fit = Designation.parse("20 H7/k6");
    Drawing drawing = FitPicture.of("20 H7/k6", fit.fit(), "H7", "k6");
    List<String> words =
        all(drawing.marks())
            .filter(m -> m instanceof Drawing.Words)
            .map(m -> ((Drawing.Words) m).words())
            .toList();
    assertThat(words).contains("+21", "0", "+15", "+2", "H7", "k6");
  }

  @Test
  void noPictureHoldsANumberThatIsNone() {
    DrawEccentric shaft = new DrawEccentric(2, 10, 8, 0.02);
    Drawing clamp = ClampPicture.force(shaft, 180, 120, Math.toRadians(89));
    Stream.of(clamp, ClampPicture.of(shaft, 180, 0))
        .flatMap(d -> all(d.marks()))
        .filter(m -> m instanceof Drawing.Outline)
        .forEach(m -> assertThat(((Drawing.Outline) m).path()).doesNotContain("NaN", "Inf"));
  }
}
