package fettle.machine.trials;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The demo's trials: their readings are what the generator writes, and the truth comes back. */
final class DemoTrialsTest {

  private static final Path BOOK = Path.of("../examples/dunlin-85");

  /** Figures whose uncertainty is calibrated: how often the truth lay within it. */
  private record Score(Map<String, Integer> inside, int repeats) {}

  @Test
  void committedReadingsAreWhatTheGeneratorWrites() {
    BookFiles files = files();
    DemoTrials.write(DemoTrials.SEED)
        .forEach(
            (name, csv) -> assertThat(files.texts()).containsEntry("trials/" + name + ".csv", csv));
  }

  /**
   * Fifteen claims at 95 % miss the truth now and then: more than two misses would be one chance in
   * thirty, a miss by more than 1.6 times the claim one in forty.
   */
  @Test
  void theStatedTruthComesBackFromTheCommittedReadings() {
    List<Double> misses = new ArrayList<>();
    trials().forEach((name, trial) -> misses.addAll(misses(name, trial).values()));
    assertThat(misses).hasSize(15).allMatch(by -> by < 1.6);
    assertThat(misses.stream().filter(by -> by > 1)).hasSizeLessThanOrEqualTo(2);
  }

  @Test
  void hundredsOfRepeatsAreCoveredAboutNinetyFivePercent() {
    Score score = repeat(300);
    // 95 % of 300 with three and a half standard deviations of a binomial either way.
    score.inside.forEach((figure, n) -> assertThat(n).as(figure).isBetween(272, 298));
  }

  @Test
  @Tag("slow")
  void tenThousandRepeatsAreCoveredAboutNinetyFivePercent() {
    Score score = repeat(10_000);
    // Three and a half standard deviations of a binomial either way.
    score.inside.forEach(
        (figure, n) -> assertThat(n / 10_000.0).as(figure).isBetween(0.942, 0.958));
  }

  private static Score repeat(int repeats) {
    Map<String, Trial> trials = trials();
    Map<String, Integer> inside = new LinkedHashMap<>();
    for (int i = 0; i < repeats; i++) {
      Map<String, String> texts = DemoTrials.write(1_000_000L + 10L * i);
      trials.forEach(
          (name, trial) -> {
            Parsed<Readings> readings =
                Readings.read(name, String.valueOf(texts.get(name)), trial.kind());
            Trial again =
                new Trial(
                    name,
                    trial.kind(),
                    trial.values(),
                    trial.instrument(),
                    readings.orThrow(IllegalStateException::new));
            misses(name, again)
                .forEach(
                    (figure, by) ->
                        inside.merge(name + ": " + figure, by <= 1 ? 1 : 0, Integer::sum));
          });
    }
    assertThat(inside).hasSize(15);
    return new Score(inside, repeats);
  }

  /** Returns for each figure with a truth how many expanded uncertainties it lies off. */
  private static Map<String, Double> misses(String name, Trial trial) {
    Map<String, Double> misses = new LinkedHashMap<>();
    for (Measured figure : Evaluations.draft(trial, Optional.empty(), 100).figures()) {
      Double truth = DemoTrials.TRUTH.getOrDefault(name, Map.of()).get(figure.name());
      if (truth != null) {
        misses.put(figure.name(), Math.abs(figure.value() - truth) / figure.expanded());
      }
    }
    return misses;
  }

  static BookFiles files() {
    return BookFiles.read(BOOK).orThrow(IllegalStateException::new);
  }

  private static Map<String, Trial> trials() {
    BookFiles files = files();
    Book book = Book.read(files).orThrow(IllegalStateException::new);
    return Trials.read(files, book).orThrow(IllegalStateException::new);
  }
}
