package fettle.mechanics.fits;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Tables of ISO 286 as pages print them, cell by cell, against the engine. Left out: U over 200 to
 * 225 mm, which the textbook prints as 256; the formula IT7 + D gives 258, and so does the table.
 */
class PublishedLimitsTest {

  private static List<List<String>> rows(String file) {
    try (InputStream in = PublishedLimitsTest.class.getResourceAsStream("/iso286/" + file)) {
      assertThat(in).isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> List.of(line.replace("\"", "").split(",", -1)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void everyPrintedLimitIsReproduced() {
    List<String> wrong = new ArrayList<>();
    int checked = 0;
    for (List<String> row : rows("limits.csv")) {
      Deviations d = ToleranceClass.parse(row.get(0)).deviations(Double.parseDouble(row.get(1)));
      checked += differs(row.get(2), d.upper()) || differs(row.get(3), d.lower()) ? 0 : 1;
      if (differs(row.get(2), d.upper()) || differs(row.get(3), d.lower())) {
        wrong.add(row + " computed " + d);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(checked).isGreaterThan(1600);
  }

  private static boolean differs(String printed, double computed) {
    return !printed.isEmpty() && Math.abs(Double.parseDouble(printed) - 1000 * computed) > 1e-6;
  }

  /** An independent program listed these departures; not one more and not one fewer may appear. */
  @Test
  void tableDepartsFromRoundedFormulaOnlyWhereListed() {
    Set<String> listed = new TreeSet<>();
    for (List<String> row : rows("departures.csv")) {
      listed.add(row.get(0) + " to " + Double.parseDouble(row.get(1)));
    }
    Set<String> found = new TreeSet<>();
    for (double to : new double[] {3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500}) {
      for (Grade grade : Grade.values()) {
        if (grade.compareTo(Grade.IT5) >= 0
            && Math.abs(StandardFormula.rounded(to, grade) - grade.width(to)) > 1e-9) {
          found.add(grade + " to " + to);
        }
      }
    }
    for (Table.Step step : FundamentalDeviation.table().steps()) {
      for (String letter : FundamentalDeviation.LETTERS) {
        if (!Set.of("h", "j", "js").contains(letter)) {
          FundamentalDeviation.table()
              .at(step.to(), letter)
              .ifPresent(
                  printed -> {
                    double rounded = 1000 * StandardFormula.roundedDeviation(step.to(), letter);
                    if (Math.abs(printed - rounded) > 1e-6) {
                      found.add(letter + " to " + step.to());
                    }
                  });
        }
      }
    }
    assertThat(found).isEqualTo(listed);
  }

  @Test
  void finestGradesLieNearTheirFormula() {
    for (double to : new double[] {3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500}) {
      for (Grade grade :
          List.of(Grade.IT01, Grade.IT0, Grade.IT1, Grade.IT2, Grade.IT3, Grade.IT4)) {
        assertThat(grade.width(to) / StandardFormula.width(to, grade))
            .as("%s at %s", grade, to)
            .isBetween(0.79, 1.29);
      }
    }
  }
}
