package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.SampleBooks;
import fettle.machine.lathe.Machine;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Travel, dials and play against values worked out by hand. On the demo's saddle a rack pinion of
 * 15 teeth of 16 DP goes 15·π·25.4/16 = 23.8125·π mm a turn; a gear of z teeth of 20 DP before it
 * moves the rack by 15·(25.4/16)/((25.4/20)·z) = 18.75/z of what happens at its pitch line.
 */
class HandDerivedTest {

  private static final Book DEMO = SampleBooks.sound(SampleBooks.DEMO);
  private static final double RACK_TURN = 23.8125 * Math.PI;
  private static final double COS_20 = Math.cos(Math.PI / 9);

  private static Machine demo(String... changes) {
    List<String> wanted = Arrays.asList(changes);
    return State.of(DEMO, "", wanted).machine().orElseThrow();
  }

  @Test
  void travelPerTurnOfTheDemo() {
    assertShown(demo(), "travel/saddle drive/travel per turn", RACK_TURN * 13 / 40);
    assertShown(demo("saddle-dial"), "travel/saddle drive/travel per turn", RACK_TURN / 3);
    assertShown(demo(), "travel/cross feed/travel per turn", 2.54);
    assertShown(demo("cross-screw"), "travel/cross feed/travel per turn", 3);
    assertShown(demo(), "travel/screw cutting/lead cut as set up", 25.4 / 8 * 2 / 13);
    Map<String, Figure> figures = Figures.of(demo());
    assertThat(words(figures, "travel/saddle drive/travel per turn"))
        .isEqualTo("exactly 4953/640·π mm");
    assertThat(words(figures, "travel/cross feed/travel per turn")).isEqualTo("exact");
    assertThat(words(figures, "travel/screw cutting/lead cut as set up"))
        .isEqualTo("exactly 127/260 mm");
  }

  /** A left-hand cross screw, held at its handle, pushes the slide away when turned clockwise. */
  @Test
  void handOfMotion() {
    Map<String, Figure> figures = Figures.of(demo());
    assertThat(words(figures, "travel/cross feed/hand of motion"))
        .isEqualTo("clockwise moves the cross slide away from the handle");
    assertThat(words(figures, "travel/top slide feed/hand of motion"))
        .isEqualTo("clockwise moves the top slide towards the handle");
    String pair = "a: {kind: gear pair, driver: 20, driven: 20, idlers: %d}, ";
    String screw = "s: {kind: screw, thread: Tr 10x2%s}";
    for (int idlers = 0; idlers < 4; idlers++) {
      for (String hand : List.of("", " LH")) {
        Machine machine =
            SampleBooks.machine(SampleBooks.slide(pair.formatted(idlers) + screw.formatted(hand)));
        boolean reversed = idlers % 2 == 0;
        boolean away = hand.isEmpty() == reversed;
        assertThat(words(Figures.of(machine), "travel/drive/hand of motion"))
            .endsWith(away ? "away from the handle" : "towards the handle");
      }
    }
  }

  @Test
  void dialsOfTheDemo() {
    Machine bought = demo();
    assertShown(bought, "dials/cross dial/true value of a division", 0.001);
    assertShown(bought, "dials/cross dial/error of the dial", 0);
    assertShown(bought, "dials/cross dial/line spacing", Math.PI * 38 / 100);
    assertShown(bought, "dials/cross dial/smallest dependable movement, same way", 0.00508);
    Machine dialled = demo("saddle-dial");
    double share = 7.9375 * Math.PI / 25 - 1;
    assertShown(dialled, "dials/saddle dial/true value of a division", 7.9375 * Math.PI / 250);
    assertShown(dialled, "dials/saddle dial/error of the dial", share * 1e6);
    assertShown(dialled, "dials/saddle dial/error over one move", 50 * share);
    assertShown(dialled, "dials/saddle dial/error over the whole travel", 300 * share);
    assertShown(dialled, "dials/saddle dial/longest move within the limit", 0.1 / -share);
    assertShown(dialled, "dials/saddle dial/line spacing", Math.PI * 80 / 250);
    assertShown(
        dialled,
        "dials/saddle dial/smallest dependable movement, reversed",
        0.02 + 0.15 + 0.08 * 18.75 / 39);
    assertThat(words(Figures.of(dialled), "dials/saddle dial/true value of a division"))
        .isEqualTo("never exact: pi stays in it");
  }

  @Test
  void playOfTheDemo() {
    Machine bought = demo();
    double play = 0.15 + 0.12 * 18.75 / 40;
    assertShown(bought, "play/saddle drive/play at the slide", play);
    assertShown(bought, "play/saddle drive/play at the handle", 360 * play / (RACK_TURN * 13 / 40));
    assertShown(bought, "play/cross feed/play at the slide", 0.19);
    assertShown(bought, "play/cross feed/play at the handle", 0.19 / 2.54 * 360);
    assertShown(
        bought,
        "play/saddle drive/error that comes back once a turn",
        Math.hypot(0.08 * 18.75 / 40, 0.06) / COS_20);
    assertShown(
        bought,
        "play/saddle drive/rack error over the travel",
        300 / (Math.PI * 25.4 / 16) * 0.0009);
    Machine dialled = demo("saddle-dial");
    assertShown(dialled, "play/saddle drive/play at the slide", 0.15 + 0.08 * 18.75 / 39);
    assertShown(demo("cross-screw"), "play/cross feed/play at the slide", 0.04);
  }

  /** Doubts add by root sum of squares: 0.04 of the rack, 0.03 of the gears at 18.75/40. */
  @Test
  void doubtOfThePlay() {
    Figure figure =
        Objects.requireNonNull(Figures.of(demo()).get("play/saddle drive/play at the slide"));
    assertThat(figure.working().orElseThrow().doubt())
        .isCloseTo(Math.hypot(0.04, 0.03 * 18.75 / 40), within(1e-9));
  }

  @Test
  void speedsOfTheDemo() {
    double slow = 1425 * 50.0 / 186 * (1 - 0.018);
    double geared = 20.0 * 25 / (50 * 62);
    assertShown(demo(), "speeds/spindle/speed, slow, direct", slow);
    assertShown(demo(), "speeds/spindle/speed, slow, back gear in", slow * geared);
    assertShown(demo(), "speeds/spindle/lowest speed", slow * geared);
    assertShown(demo(), "speeds/spindle/highest speed", 1425 * 108.0 / 128 * (1 - 0.018));
  }

  /** Two stepped belts whose steps are called alike must not be mixed up. */
  @Test
  void twoBeltsWithStepsOfTheSameNames() {
    String belt =
        "%s: {kind: belt, slip: 0 %%, steps: {slow: {driver: 50 mm, driven: %d mm},"
            + " fast: {driver: 50 mm, driven: 50 mm}}}";
    Machine machine =
        SampleBooks.machine(
            SampleBooks.slide(
                    belt.formatted("a", 100) + ", " + belt.formatted("b", 150),
                    "drive: {motor: {power: 100 W, speed: 1200 rpm}, train: drive}")
                .replace("from: wheel", "use: spindle speeds\n    from: wheel"));
    assertShown(machine, "speeds/spindle/speed, slow, slow", 200);
    assertShown(machine, "speeds/spindle/speed, slow, fast", 600);
    assertShown(machine, "speeds/spindle/speed, fast, slow", 400);
    assertShown(machine, "speeds/spindle/speed, fast, fast", 1200);
  }

  /** Common practice: one tooth more on a driven gear of 24 takes 4 percent off the travel. */
  @Test
  void oneToothMoreOnTwentyFour() {
    assertThat(travel(pairAndRack(25)) / travel(pairAndRack(24))).isCloseTo(0.96, within(1e-12));
  }

  private static String pairAndRack(int driven) {
    return "a: {kind: gear pair, driver: 14, driven: %d}, b: {kind: rack, pinion: 12, module: 1.5 mm}"
        .formatted(driven);
  }

  /** Common practice: a 2 mm trapezoidal screw instead of a 1 mm fine thread doubles the travel. */
  @Test
  void twoMillimetresInsteadOfOne() {
    assertThat(travel("s: {kind: screw, thread: M10x1}")).isCloseTo(1, within(1e-12));
    assertThat(travel("s: {kind: screw, thread: Tr 10x2}")).isCloseTo(2, within(1e-12));
  }

  /** Common practice: a good rack dial with lines of 0.1 mm repeats within a few hundredths. */
  @Test
  void aRackDialWithTenthsRepeatsWithinAFewHundredths() {
    assertThat(
            Figures.shown(
                demo("saddle-dial"), "dials/saddle dial/smallest dependable movement, same way"))
        .isBetween(0.005, 0.05);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          s: {kind: screw, thread: 1/2-10 Acme};                                              2.54
          s: {kind: screw, thread: 1/2-10 Acme LH};                                           2.54
          s: {kind: screw, thread: Tr 16x8P4};                                                8
          w: {kind: worm, starts: 2, wheel: 40}, s: {kind: screw, thread: Tr 10x2};           0.1
          r: {kind: rack, pinion: 20, pitch: 5 mm};                                           100
          g: {kind: gear pair, driver: 127, driven: 120}, s: {kind: screw, thread: 3/4-8 Acme}; 3.36020833333333
          b: {kind: box, settings: [1/2, 127/120], set: 127/120}, s: {kind: screw, thread: Tr 20x4}; 4.23333333333333
          c: {kind: change gears, wheels: [20, 60, 30, 65]}, s: {kind: screw, thread: Tr 20x4}; 0.615384615384615
          b: {kind: belt, driver: 50 mm, driven: 100 mm, slip: 2 %}, s: {kind: screw, thread: Tr 10x2}; 0.98
          b: {kind: belt, driver teeth: 20, driven teeth: 30}, s: {kind: screw, thread: Tr 10x3}; 2
          x: {kind: box, settings: [1/2], set: 1/2}, y: {kind: box, settings: [1/3], set: 1/3}, s: {kind: screw, thread: Tr 20x4}; 0.666666666666667
          k: {kind: coupling}, s: {kind: screw, thread: M8};                                  1.25
          """)
  void travelOfEveryKindOfElement(String elements, double expected) {
    assertThat(travel(elements)).isCloseTo(expected, within(1e-12 * (1 + expected * 100)));
  }

  /** Play of a coupling of 6 degrees before a screw of 3 mm: 6/360 of 3 mm. */
  @Test
  void playOfACoupling() {
    Machine machine =
        SampleBooks.machine(
            SampleBooks.slide(
                "k: {kind: coupling, play: 6 deg}, s: {kind: screw, thread: Tr 12x3, play: 0.1"
                    + " mm}"));
    assertShown(machine, "play/drive/play at the slide", 0.15);
  }

  @Test
  void membersWhoseNamesLookAlikeAreAllWeighed() {
    String members =
        """
        fettle: 1
        name: Weights
        lathe: {centre height: 90 mm, between centres: 300 mm}
        members:
          bed: {seat: {kind: fixed}, mass: 1 kg}
          a b: {seat: {kind: bolted, on: bed}, mass: 2 kg}
          a-b: {seat: {kind: bolted, on: bed}, mass: 4 kg}
          a²b: {seat: {kind: bolted, on: bed}, mass: 8 kg}
          Bänke: {seat: {kind: bolted, on: bed}, mass: 16 kg}
        """;
    assertShown(SampleBooks.machine(members), "capacity/lathe/mass", 31);
  }

  private static double travel(String elements) {
    return Figures.shown(
        SampleBooks.machine(SampleBooks.slide(elements)), "travel/drive/travel per turn");
  }

  private static void assertShown(Machine machine, String id, double expected) {
    double shown = Figures.shown(machine, id);
    assertThat(shown).as(id).isCloseTo(expected, within(1e-9 * Math.max(1e-3, Math.abs(expected))));
  }

  private static String words(Map<String, Figure> figures, String id) {
    Figure figure = figures.get(id);
    return figure == null ? "no figure " + id : figure.words();
  }
}
