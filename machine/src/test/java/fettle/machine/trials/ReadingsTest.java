package fettle.machine.trials;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Readings are read strictly, and nothing is dropped in silence. */
final class ReadingsTest {

  private static final String HEADER = "# bench\nrun,dir,turns,position_mm\n";

  @Test
  void everyWrongCellIsNamedWithItsLine() {
    List<Problem> problems =
        problems(
            HEADER
                + "1,1,0,0\n1,1,0.5,about twelve\n1,2,1,25\n1,1,,25\n1,1,1,NaN\n1,1,1,25,9\n1,1,1,1e99\n");
    assertThat(problems).extracting(p -> p.at().line()).containsExactly(4, 5, 6, 7, 8, 9);
    assertThat(problems)
        .extracting(Problem::key)
        .containsExactly("position", "dir", "turns", "position", "", "position");
  }

  @Test
  void anEmptyReadingIsAGapThatIsShown() {
    Parsed<Readings> read = Readings.read("a.csv", HEADER + "1,1,0,0\n1,1,1,\n", Kind.DIAL);
    Readings readings = read.orThrow(IllegalStateException::new);
    assertThat(readings.lines()).hasSize(1);
    assertThat(readings.gaps()).singleElement().asString().contains("line 4");
  }

  @Test
  void theUnitStandsInTheHeader() {
    String inch = "run,dir,turns,position_in\n1,1,1,2\n";
    Readings readings = Readings.read("a.csv", inch, Kind.DIAL).orThrow(IllegalStateException::new);
    assertThat(readings.lines().get(0).reading()).isEqualTo(50.8);
    assertThat(problems("run,dir,turns,position\n1,1,1,2\n"))
        .singleElement()
        .extracting(Problem::expected)
        .asString()
        .contains("position_mm");
  }

  @Test
  void aFileWithoutReadingsIsAProblem() {
    assertThat(problems("")).isNotEmpty();
    assertThat(problems(HEADER)).isNotEmpty();
    assertThat(problems("1,1\n".repeat(30_000))).hasSize(1);
  }

  private static List<Problem> problems(String csv) {
    return Readings.read("trials/a.csv", csv, Kind.DIAL).problems();
  }
}
