package fettle.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences told to a reader of inches, 25.4 mm each. */
class MeasureTest {

  @ParameterizedTest
  @CsvSource({
    "leaves 9.5 mm to the bed, leaves 9.5 mm (0.374 in) to the bed",
    "between 0.667 and 25.4 mm apart, between 0.667 and 25.4 mm (1 in) apart",
    "at -12.7 mm of travel, at -12.7 mm (-0.5 in) of travel",
    "exactly 127/260 mm, exactly 127/260 mm",
    "12 mm2 and 0.2 mm/turn, 12 mm2 and 0.2 mm/turn",
    "1e-5 mm, 1e-5 mm",
    "M10 mm, M10 mm"
  })
  void lengthsStandBesideThoseWritten(String metric, String inch) {
    assertThat(Measure.INCH.told(metric)).isEqualTo(inch);
    assertThat(Measure.METRIC.told(metric)).isEqualTo(metric);
  }
}
