package fettle.machine.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A trial laid out is one that the bench sheet asks for and the reader takes. */
final class PlannedTrialTest {

  private static PlannedTrial plan(Kind kind, String places) {
    Map<String, String> typed = new LinkedHashMap<>();
    PlannedTrial.asked(kind)
        .forEach(
            c ->
                typed.put(
                    c.name(), c.name().equals("date") ? "2026-03-01" : c.whole() ? "2" : places));
    return new PlannedTrial(kind, Map.of("what", "a trial: of #1"), typed, List.of());
  }

  @ParameterizedTest
  @EnumSource
  void everyKindIsLaidOutAsItIsRead(Kind kind) {
    String text = plan(kind, "0 to 0.3 by 0.1").readings();
    BenchSheet sheet = BenchSheet.of(kind, text);
    Readings readings = Objects.requireNonNull(Readings.read("trials/a.csv", text, kind).value());
    assertThat(readings.lines()).isEmpty();
    assertThat(readings.gaps()).hasSize(sheet.rows().size()).isNotEmpty();
    assertThat(sheet.next()).isPresent();
    assertThat(BenchSheet.kind(plan(kind, "0").description())).contains(kind);
  }

  @Test
  void theWayBackMeetsThePlacesInTheOppositeOrder() {
    assertThat(plan(Kind.REVERSAL, "0 5").readings())
        .isEqualTo(
            """
            run,dir,target_mm,position_mm
            1,1,0,
            1,1,5,
            1,-1,5,
            1,-1,0,
            2,1,0,
            2,1,5,
            2,-1,5,
            2,-1,0,
            """);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "a", "0 to 1 by 0", "1 to 0 by 1", "0 to 9999999 by 0.001", "1..2 to 3 by 1"})
  void whatIsNoPlaceIsRefused(String typed) {
    assertThatThrownBy(() -> plan(Kind.REVERSAL, typed).readings())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("target")
        .hasMessageContaining("expected");
  }

  @Test
  void tooManyRowsAreRefused() {
    assertThatThrownBy(() -> plan(Kind.TEST_BAR, "0 to 100 by 1").readings())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("2000");
  }
}
