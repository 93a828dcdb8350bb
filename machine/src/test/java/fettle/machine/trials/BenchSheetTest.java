package fettle.machine.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Readings are put into their place and nothing else is touched. */
final class BenchSheetTest {

  private static final String TEXT =
      "# At the bench.\r\ncut,side,reading_mm\n1,near,0.001\n1, far ,\n\n2,near,\n2,far,";

  private static BenchSheet sheet(String text) {
    return BenchSheet.of(Kind.FACING, text);
  }

  @Test
  void theNextEmptyPlaceIsAskedFor() {
    BenchSheet.Row next = sheet(TEXT).next().orElseThrow();
    assertThat(next.line()).isEqualTo(4);
    assertThat(next.place()).containsExactly("1", "far");
  }

  @Test
  void aReadingChangesItsLineOnly() {
    assertThat(sheet(TEXT).filled(4, " 0.012 "))
        .isEqualTo(TEXT.replace("1, far ,\n", "1,far,0.012\n"));
    assertThat(sheet(TEXT).filled(7, "-1e-2")).isEqualTo(TEXT + "-1e-2");
  }

  @Test
  void whatIsNoReadingIsRefused() {
    for (String wrong : new String[] {"", "much", "1,2", "NaN", "0.1 mm", "1\n2"}) {
      assertThatThrownBy(() -> sheet(TEXT).filled(4, wrong))
          .as(wrong)
          .isInstanceOf(IllegalArgumentException.class);
    }
    assertThatThrownBy(() -> sheet(TEXT).filled(5, "1")).hasMessageContaining("line 5");
  }

  @Test
  void anotherRunRepeatsThePlacesOfTheLast() {
    assertThat(sheet(TEXT).another()).contains(TEXT + "\n3,near,\n3,far,\n");
    assertThat(BenchSheet.of(Kind.RUN_IN, "place,time_min,room_degC,temperature_degC\n").another())
        .isEmpty();
  }
}
