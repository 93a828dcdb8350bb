package fettle.machine.topics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.SampleBooks;
import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Reading;
import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.text.Node;
import fettle.machine.text.YamlReader;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Wiring lists with one thing wrong, and the control box of the demo book reckoned by hand. */
class WiringTest {

  private static final String SOUND =
      """
      on: box
      exposed: [bed]
      wires:
        "1": {from: "-X1:L", to: "-Q1:1", potential: L, section: 1.5 mm2, colour: black}
        "2": {from: "-X1:N", to: "-Q1:3", potential: N, section: 1.5 mm2, colour: light blue}
        "3": {from: "-X1:PE", to: "-W1:bed", potential: PE, section: 1.5 mm2, colour: green-yellow}
      """;

  private static Values box(String text) {
    Node node = Objects.requireNonNull(YamlReader.read("box.yaml", text).value());
    return new Reading(Dictionary.standard()).read("control box", node);
  }

  private static List<String> wrong(String text) {
    return Wiring.of(box(text)).wrong();
  }

  private static String with(String wire) {
    return SOUND + "  \"9\": " + wire + "\n";
  }

  @Test
  void aSoundListHasNothingWrongAndEveryTerminalNamesItsWires() {
    Wiring wiring = Wiring.of(box(SOUND));
    assertThat(wiring.wrong()).isEmpty();
    assertThat(wiring.terminals().keySet())
        .containsExactly("-X1:L", "-Q1:1", "-X1:N", "-Q1:3", "-X1:PE", "-W1:bed");
    assertThat(wiring.terminals().get("-Q1:3"))
        .extracting(Wiring.Wire::number)
        .containsExactly("2");
  }

  @Test
  void aTerminalBelongsToOnePotential() {
    assertThat(
            wrong(
                with(
                    "{from: \"-Q1:1\", to: \"-F1:1\", potential: 24V, section: 1 mm2, colour:"
                        + " blue}")))
        .containsExactly("-Q1:1 belongs to more than one potential.");
  }

  @Test
  void aTerminalTakesTwoWiresAndAProtectiveOneOne() {
    String third =
        "{from: \"-Q1:1\", to: \"-F1:1\", potential: L, section: 1 mm2, colour: black}\n"
            + "  \"10\": {from: \"-Q1:1\", to: \"-F2:1\", potential: L, section: 1 mm2, colour:"
            + " black}";
    assertThat(wrong(with(third))).anyMatch(w -> w.startsWith("-Q1:1 holds 3 wires"));
    String second =
        "{from: \"-X1:PE\", to: \"-W2:door\", potential: PE, section: 1 mm2, colour: green-yellow}";
    assertThat(wrong(with(second))).anyMatch(w -> w.contains("a protective terminal takes one"));
  }

  @Test
  void coloursKeepTheirMeaning() {
    assertThat(wrong(SOUND.replace("colour: green-yellow", "colour: black")))
        .containsExactly("wire 3 is a protective conductor and must be green-yellow.");
    assertThat(wrong(SOUND.replace("colour: black", "colour: green-yellow")))
        .containsExactly("wire 1 is green-yellow, which is for protective conductors alone.");
    assertThat(wrong(SOUND.replace("colour: light blue", "colour: blue")))
        .containsExactly("wire 2: light blue is the colour of the neutral, and only of it.");
  }

  @Test
  void aPotentialIsOneTree() {
    String apart = "{from: \"-F1:1\", to: \"-F2:1\", potential: L, section: 1 mm2, colour: black}";
    assertThat(wrong(with(apart))).anyMatch(w -> w.startsWith("L does not hang together"));
    String ring = "{from: \"-Q1:1\", to: \"-X1:L\", potential: L, section: 1 mm2, colour: black}";
    assertThat(wrong(with(ring))).containsExactly("L is wired in a ring.");
  }

  @Test
  void exposedMetalIsBonded() {
    assertThat(wrong(SOUND.replace("exposed: [bed]", "exposed: [bed, motor]")))
        .containsExactly("motor has no protective conductor.");
  }

  @Test
  void theDemoBoxIsWiredSoundlyAndReckonedByHand() {
    Book book = SampleBooks.sound(SampleBooks.DEMO);
    Machine machine = State.of(book, "", book.withNeeds("apron-start")).machine().orElseThrow();
    assertThat(Wiring.of(machine.values().block("control box").orElseThrow()).wrong()).isEmpty();
    Study study = Topics.study(machine, book.shop());
    Map<String, Double> values = new java.util.HashMap<>();
    study.figures().stream()
        .filter(f -> f.topic().equals("control box"))
        .forEach(f -> values.put(f.name(), f.working().orElseThrow().shown()));
    // 1.5 mm2 laid as B2 carries 13.1 A at 40 degrees C: IEC 60204-1:2016, Table 6.
    assertThat(values.get("current the conductor carries at 40 °C")).isEqualTo(13.1);
    double current = Objects.requireNonNull(values.get("current at full load"));
    // 13.3 ohm/km at 20 degrees C (IEC 60228, class 5), 70 degrees C, 6 m there and back.
    assertThat(values.get("voltage lost in the line"))
        .isEqualTo(2 * current * 0.006 * 13.3 * (1 + 0.00393 * 50), within(1e-6));
    // 180 x 240 x 90 mm alone on a wall: 1.4 W (H + D) + 1.8 H D.
    double area = 1.4 * 0.18 * (0.24 + 0.09) + 1.8 * 0.24 * 0.09;
    assertThat(values.get("faces that shed heat")).isEqualTo(area, within(1e-9));
    double heat = Objects.requireNonNull(values.get("heat set free in the box"));
    assertThat(values.get("warmer inside than the room"))
        .isEqualTo(heat / (5.5 * area), within(1e-6));
    assertThat(study.findings()).anyMatch(f -> f.sentence().contains("licensed where you live"));
  }
}
