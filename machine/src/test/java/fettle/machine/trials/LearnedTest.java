package fettle.machine.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A trial makes the lathe's values surer, as a change that can be taken away. */
final class LearnedTest {

  private static Proof proof(Map<String, String> texts, String name) {
    BookFiles files = new BookFiles(texts);
    Book book = Book.read(files).orThrow(IllegalStateException::new);
    @Nullable Trial trial = Trials.read(files, book).orThrow(IllegalStateException::new).get(name);
    return Evaluations.of(Objects.requireNonNull(trial, name), book);
  }

  private static Map<String, String> demo() {
    return new LinkedHashMap<>(DemoTrialsTest.files().texts());
  }

  /** One value that is the figure itself: the mean weighted by inverse variances. */
  @Test
  void oneValueIsTheWeightedMean() {
    Proof proof = proof(demo(), "cross-slide");
    Measured m = proof.lines().get(0).figure();
    double w0 = 1 / (0.0075 * 0.0075);
    double w1 = 1 / (m.standard() * m.standard());
    double mean = (0.04 * w0 + m.value() * w1) / (w0 + w1);
    Learned learned = proof.learned().orElseThrow();
    String[] after = learned.values().get(0).after().split(" mm ± | mm");
    assertThat(Double.parseDouble(after[0])).isCloseTo(mean, within(6e-5));
    assertThat(Double.parseDouble(after[1])).isCloseTo(2 / Math.sqrt(w0 + w1), within(6e-5));
    double off = m.value() - 0.04;
    assertThat(learned.distance())
        .isCloseTo(off * off / (1 / w0 + 1 / w1), within(1e-6 * learned.distance() + 1e-9));
  }

  @Test
  void theCorrectionIsUsedFromThenOnButNotAgainstItsOwnTrial() {
    Map<String, String> texts = demo();
    Learned learned = proof(texts, "cross-slide").learned().orElseThrow();
    texts.put("changes/" + learned.change() + ".yaml", learned.text());
    Book book = Book.read(new BookFiles(texts)).orThrow(IllegalStateException::new);
    assertThat(book.problems()).isEmpty();
    assertThat(book.keys(s -> s.done())).contains("learned-cross-slide");
    Proof again = proof(texts, "cross-slide");
    assertThat(again.learned().orElseThrow()).isEqualTo(learned);
    assertThat(again.lines().get(0).met().orElseThrow().predicted()).isEqualTo(0.04);
  }

  @Test
  void whatLiesTooFarOffCorrectsNothing() {
    Learned learned = proof(demo(), "speeds").learned().orElseThrow();
    assertThat(learned.distance()).isGreaterThan(learned.gate());
    assertThat(learned.text()).isEmpty();
    assertThat(learned.values()).allMatch(v -> v.before().equals(v.after()));
    assertThat(learned.words()).contains("too far");
  }

  @Test
  void aValueWithoutDoubtOrPlaceIsRefused() {
    for (String path : List.of("trains.nowhere", "name", "lathe.centre height")) {
      Map<String, String> texts = demo();
      texts.computeIfPresent(
          "trials/cross-slide.yaml",
          (k, t) -> t.replaceFirst("corrects: .*", "corrects: [" + path + "]"));
      assertThatThrownBy(() -> proof(texts, "cross-slide"))
          .as(path)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("corrects: ");
    }
  }
}
