package fettle.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.parts.solid.SolidException;
import fettle.sheets.page.Heads;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Parts drawn by lot, each sheet held to the judge. */
class LotTest {

  /** A part whose solid cannot be made has no sheet to judge; few may be so. */
  private static List<String> faults(int from, int to) {
    Heads heads = Heads.of("Hobby workshop", "2026-01-15");
    List<String> all = new ArrayList<>();
    int solidless = 0;
    for (int i = from; i < to; i++) {
      try {
        for (String fault : Sheets.of(PartsByLot.part(i), heads).faults()) {
          all.add("part " + i + ": " + fault);
        }
      } catch (SolidException e) {
        solidless++;
      }
    }
    assertThat(solidless).isLessThan((to - from) / 100 + 1);
    return all;
  }

  @Test
  void partsByLotAreFlawless() {
    assertThat(faults(0, 50)).isEmpty();
  }

  @Tag("slow")
  @Test
  void twoThousandPartsByLotAreFlawless() {
    assertThat(faults(50, 2050)).isEmpty();
  }
}
