package fettle.machine.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Limits come from the settled time; scatter gives no alarm, a drift does. */
final class RecordTest {

  private static Proof proof(String csv) {
    Map<String, String> texts = new LinkedHashMap<>(DemoTrialsTest.files().texts());
    texts.put("trials/nose-over-the-years.csv", csv);
    BookFiles files = new BookFiles(texts);
    Book book = Book.read(files).orThrow(IllegalStateException::new);
    @Nullable Trial trial =
        Trials.read(files, book).orThrow(IllegalStateException::new).get("nose-over-the-years");
    return Evaluations.of(Objects.requireNonNull(trial), book);
  }

  private static String csv(double... readings) {
    StringBuilder csv = new StringBuilder("date,hours,reading\n");
    for (int i = 0; i < readings.length; i++) {
      csv.append(2010 + i).append("-05-01,").append(2000 + 100 * i).append(',');
      csv.append(readings[i]).append('\n');
    }
    return csv.toString();
  }

  @Test
  void limitsOfEightReadingsAreThoseOfTheTable() {
    Chart chart = proof(csv(9, 11, 9, 11, 9, 11, 9, 11, 10, 10, 10)).chart().orElseThrow();
    double s = 0.001 * Math.sqrt(8.0 / 7);
    assertThat(chart.centre()).isCloseTo(0.010, within(1e-12));
    assertThat(chart.warning()).isCloseTo(2.51 * s, within(0.005 * s));
    assertThat(chart.action()).isCloseTo(4.80 * s, within(0.005 * s));
    assertThat(chart.signals())
        .containsExactly(
            "Nothing stands out: leave it alone; adjusting on scatter only adds to it.");
    assertThat(chart.service()).isEqualTo("service is overdue by 700 running hours");
  }

  @Test
  void aJumpIsSeenAtOnceAndADriftByTheAverage() {
    Chart jump = proof(csv(9, 11, 9, 11, 9, 11, 9, 11, 10, 16)).chart().orElseThrow();
    assertThat(jump.signals().get(0)).contains("2019-05-01").contains("beyond the action limit");
    Chart drift =
        proof(csv(9, 11, 9, 11, 9, 11, 9, 11, 12, 12, 12.5, 12.5, 12.5, 12.5))
            .chart()
            .orElseThrow();
    assertThat(drift.signals()).anyMatch(w -> w.contains("slow drift"));
    assertThat(drift.signals()).noneMatch(w -> w.contains("action"));
  }

  @Test
  void aDriftIsFittedAfterTheSettledTime() {
    Proof proof = proof(csv(9, 11, 9, 11, 9, 11, 9, 11, 12, 13.1, 13.9, 15));
    Measured drift = proof.lines().get(1).figure();
    assertThat(drift.name()).isEqualTo(RecordTrial.DRIFT);
    assertThat(drift.value()).isCloseTo(0.00098, within(0.00001));
  }

  @Test
  void wrongOrderAndTooFewAreRefused() {
    assertThatThrownBy(() -> proof(csv(1, 2, 3))).hasMessageContaining("expected 5 or more");
    String back = csv(9, 11, 9, 11, 9, 11, 9, 11, 10) + "2001-01-01,1,10\n";
    assertThatThrownBy(() -> proof(back)).hasMessageContaining("before that of the line above");
  }
}
