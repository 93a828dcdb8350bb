package fettle.machine.trials;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.mechanics.metrology.Quantiles;
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

  /** Figures with a stated truth. */
  private static final int CLAIMS = DemoTrials.TRUTH.values().stream().mapToInt(Map::size).sum();

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
   * One set of readings says little: of n honest claims at 95 % a binomial number misses. What is
   * asked is that no more miss than happens once in a hundred, none by more than happens once in a
   * thousand claims, and that the misses are not too small either: their sum of squares, each over
   * its standard uncertainty, must not be less than happens once in a hundred.
   */
  @Test
  void theCommittedReadingsMissTheTruthAsOftenAsHonestClaimsDo() {
    List<Double> misses = new ArrayList<>();
    trials().forEach((name, trial) -> misses.addAll(misses(name, trial).values()));
    int n = misses.size();
    assertThat(n).isEqualTo(CLAIMS);
    long outside = misses.stream().filter(by -> by > 1).count();
    assertThat(outside).isLessThanOrEqualTo(mostOutside(n, 0.01));
    double once = Quantiles.normal(1 - 0.0005) / Quantiles.normal(0.975);
    assertThat(misses).allMatch(by -> by < once);
    double squares = 0;
    for (double by : misses) {
      double z = by * Quantiles.normal(0.975);
      squares += z * z;
    }
    assertThat(squares).isGreaterThan(Quantiles.chiSquared(0.01, n));
  }

  /** Returns the number of misses that is exceeded with no more than this chance. */
  private static int mostOutside(int n, double chance) {
    double tail = 1;
    double exactly = Math.pow(0.95, n);
    for (int k = 0; ; k++) {
      tail -= exactly;
      if (tail <= chance) {
        return k;
      }
      exactly *= (n - k) / (k + 1.0) * 0.05 / 0.95;
    }
  }

  @Test
  void aHundredRepeatsAreCoveredAboutNinetyFivePercent() {
    // 95 % of 100 with three and a half standard deviations of a binomial either way.
    repeat(100).inside.forEach((figure, n) -> assertThat(n).as(figure).isBetween(87, 100));
  }

  /**
   * Each claim by itself, then all together. Welch and Satterthwaite's degrees of freedom are an
   * approximation that is some tenths of a percent off, so the bounds of one figure are a little
   * wider than the binomial's 94.3 to 95.7; all together must keep 95 within half a percent, both
   * ways, where claims a tenth too small would give 93 and a tenth too large 97.
   */
  @Test
  @Tag("slow")
  void tenThousandRepeatsAreCoveredAboutNinetyFivePercent() {
    Score score = repeat(10_000);
    double all = 0;
    for (Map.Entry<String, Integer> figure : score.inside.entrySet()) {
      double share = figure.getValue() / 10_000.0;
      assertThat(share).as(figure.getKey()).isBetween(0.94, 0.965);
      all += share / score.inside.size();
    }
    assertThat(all).isBetween(0.945, 0.955);
  }

  private static Score repeat(int repeats) {
    Map<String, Trial> trials = trials();
    Map<String, Integer> inside = new LinkedHashMap<>();
    for (int i = 0; i < repeats; i++) {
      Map<String, String> texts = DemoTrials.write(1_000_000L + 20L * i);
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
    assertThat(inside).hasSize(CLAIMS);
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
