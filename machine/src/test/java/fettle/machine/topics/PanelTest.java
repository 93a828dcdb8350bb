package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Reading;
import fettle.machine.dictionary.Values;
import fettle.machine.text.Node;
import fettle.machine.text.YamlReader;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Layouts of a control box placed by hand, and each thing that can be wrong with one. */
class PanelTest {

  private static final Map<String, Panel.Opening> FRONT =
      Map.of("stop", new Panel.Opening(50, 100, 22.5));

  private static final String SOUND =
      """
      on: box
      plate: {width: 200 mm, height: 150 mm, depth: 80 mm, across: 10 mm, up: 20 mm}
      front: face
      rails:
        upper: {up: 100 mm, from: 60 mm, gap: 2 mm, devices: ["-F1", "-Q2"]}
      devices:
        "-F1": {what: breaker, width: 18 mm, height: 84 mm, depth: 70 mm}
        "-Q2": {what: contactor, width: 45 mm, height: 60 mm, depth: 60 mm, air: 10 mm}
        "-X1": {what: terminals, across: 140 mm, up: 5 mm, width: 50 mm, height: 40 mm, depth: 40 mm}
        "-S1": {what: stop, on: front, opening: stop, width: 30 mm, height: 40 mm, depth: 50 mm}
        "-M1": {what: motor, on: elsewhere}
      """;

  private static Panel panel(String text) {
    Node node = Objects.requireNonNull(YamlReader.read("box.yaml", text).value());
    Values box = new Reading(Dictionary.standard()).read("control box", node);
    return Panel.of(box, Optional.of(FRONT)).orElseThrow();
  }

  private static List<String> wrong(String old, String fresh) {
    assertThat(SOUND).contains(old);
    return panel(SOUND.replace(old, fresh)).wrong(new Wiring(List.of(), List.of()));
  }

  @Test
  void devicesStandOnTheirRailOneAfterTheOtherAndInTheirOpening() {
    assertThat(panel(SOUND).devices())
        .extracting(
            Panel.Device::designation, Panel.Device::seat, Panel.Device::left, Panel.Device::low)
        .containsExactly(
            tuple("-F1", Panel.Seat.RAIL, 60.0, 58.0),
            tuple("-Q2", Panel.Seat.RAIL, 80.0, 70.0),
            tuple("-X1", Panel.Seat.PLATE, 140.0, 5.0),
            tuple("-S1", Panel.Seat.FRONT, 25.0, 60.0),
            tuple("-M1", Panel.Seat.ELSEWHERE, 0.0, 0.0));
    assertThat(wrong("on: box", "on: box")).isEmpty();
  }

  @Test
  void aBoxWithoutPlateHasNoLayout() {
    Node node = Objects.requireNonNull(YamlReader.read("box.yaml", "on: box\n").value());
    Values box = new Reading(Dictionary.standard()).read("control box", node);
    assertThat(Panel.of(box, Optional.of(FRONT))).isEmpty();
  }

  @Test
  void bodiesKeepApart() {
    assertThat(wrong("across: 140 mm, up: 5 mm", "across: 100 mm, up: 40 mm"))
        .containsExactly("-Q2 and -X1 overlap.");
  }

  @Test
  void theAirThatOneNeedsIsFree() {
    assertThat(wrong("across: 140 mm, up: 5 mm", "across: 100 mm, up: 21 mm"))
        .containsExactly("-X1 stands in the air that -Q2 needs, 10 mm.");
    assertThat(wrong("across: 140 mm, up: 5 mm", "across: 100 mm, up: 20 mm")).isEmpty();
  }

  @Test
  void thePlateHoldsThemWithTheirAir() {
    assertThat(wrong("air: 10 mm", "air: 21 mm"))
        .containsExactly("-Q2 finds no room on the plate with the air it needs.");
    assertThat(wrong("across: 140 mm", "across: 151 mm"))
        .containsExactly("-X1 stands over the side of the plate.");
  }

  @Test
  void whatStandsBeforeEachOtherFitsIntoTheDepth() {
    assertThat(wrong("from: 60 mm", "from: 40 mm"))
        .containsExactly(
            "-F1 and -S1 stand before each other and together are 120 mm deep; there are 80 mm.");
    assertThat(wrong("height: 84 mm, depth: 70 mm", "height: 84 mm, depth: 81 mm"))
        .containsExactly("-F1 is 81 mm deep; between plate and front there are 80 mm.");
  }

  @Test
  void whatCannotBePlacedIsNamed() {
    assertThat(wrong("opening: stop", "opening: sotp"))
        .containsExactly("-S1: the front has no opening 'sotp'; it has stop.");
    assertThat(wrong("across: 140 mm, up: 5 mm, ", ""))
        .containsExactly("-X1 has no place: put it on a rail, or say 'across' and 'up'.");
    assertThat(wrong("\"-F1\", \"-Q2\"", "\"-F1\", \"-F1\", \"-Q3\", \"-Q2\""))
        .containsExactly(
            "-F1 is on more than one rail, or twice.",
            "-Q3 on the rail 'upper' is in no list of devices.");
    assertThat(wrong("what: breaker, width: 18 mm,", "what: breaker,"))
        .containsExactly("-F1 needs 'width', 'height' and 'depth' to be placed.");
  }

  @Test
  void aFrontThatIsNotThereHasNoOpenings() {
    Node node = Objects.requireNonNull(YamlReader.read("box.yaml", SOUND).value());
    Values box = new Reading(Dictionary.standard()).read("control box", node);
    Wiring none = new Wiring(List.of(), List.of());
    assertThat(Panel.of(box, Optional.of(Map.of())).orElseThrow().wrong(none))
        .containsExactly(
            "-S1: the front has no opening 'stop'; it has none: name the part with the openings by"
                + " 'front'.");
    assertThat(Panel.of(box, Optional.empty()).orElseThrow().wrong(none)).isEmpty();
  }

  @Test
  void wiresAndDevicesAgree() {
    Wiring.Wire wire = new Wiring.Wire("1", "-F1:2", "-K9:A1", "L", 1.5, "black", 300, "");
    assertThat(panel(SOUND).wrong(new Wiring(List.of(wire), List.of())))
        .containsExactly(
            "-K9 is wired and stands in no list of devices.",
            "-Q2 is a device that no wire leads to.",
            "-X1 is a device that no wire leads to.",
            "-S1 is a device that no wire leads to.",
            "-M1 is a device that no wire leads to.");
    Wiring.Wire other = new Wiring.Wire("2", "-S1:1", "-X1:3", "L", 1.5, "black", 300, "");
    String misplaced = SOUND.replace("opening: stop", "opening: sotp");
    assertThat(panel(misplaced).wrong(new Wiring(List.of(wire, other), List.of())))
        .noneMatch(w -> w.startsWith("-S1 is wired"));
  }
}
