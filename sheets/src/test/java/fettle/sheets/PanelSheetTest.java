package fettle.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.machine.topics.Panel;
import fettle.sheets.judge.Judge;
import fettle.sheets.page.Format;
import fettle.sheets.page.Heads;
import fettle.sheets.page.Sheet;
import fettle.sheets.template.PanelSheet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Layouts of boxes small and large, under titles short and long. */
class PanelSheetTest {

  private static Sheet sheet(String title, double size) {
    Panel.Device device =
        new Panel.Device(
            "-Q1",
            "Contactor",
            "9 A",
            Panel.Seat.RAIL,
            "top",
            5,
            size / 3,
            45,
            size > 100 ? 60 : 40,
            50,
            5);
    Panel panel =
        new Panel(
            new Panel.Plate(size, size, 80, 0, 0),
            Map.of("top", size / 3 + 20),
            List.of(device),
            List.of());
    Map<String, Panel.Opening> openings =
        Map.of("stop", new Panel.Opening(size / 2, size / 2, 22.5));
    Heads heads = Heads.of("Owner", "2026-01-15");
    return PanelSheet.of(title, "BOX-1", heads, panel, new PanelSheet.Front(size, size, openings));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Box",
        "Start lever on the apron",
        "Start lever with an inverter drive and a box behind the bed"
      })
  void titlesOfOneAndTwoLinesFit(String title) {
    assertThat(Judge.faults(sheet(title, 160))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {70, 160, 400, 1000})
  void smallAndLargePlatesFindAScale(double size) {
    Sheet sheet = sheet("Box", size);
    assertThat(Judge.faults(sheet)).isEmpty();
    assertThat(sheet.format()).isIn(Format.A3, Format.A2, Format.A1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {20_000})
  void whatFindsNoRoomIsRefused(double size) {
    assertThatThrownBy(() -> sheet("Box", size)).hasMessageContaining("finds no room on A1");
  }
}
