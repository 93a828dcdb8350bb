package fettle.parts.check;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Characteristic;
import fettle.parts.recipe.Geometry;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Size;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a geometrical tolerance cannot mean is found, with the word to write instead. */
class GeometryCheckTest {

  private static final Geometry.Datum A = new Geometry.Datum("A", "journal");
  private static final Geometry.Datum F = new Geometry.Datum("F", "left end");

  private static Geometry.Zone zone(Characteristic what, String on, double width, String... to) {
    return new Geometry.Zone(what, on, width, Geometry.Shape.BETWEEN, List.of(to));
  }

  private static List<Doubt> doubts(List<Geometry.Datum> datums, Geometry.Zone... zones) {
    Recipe part =
        new Turned(
            Heading.of("p", "Part", "C45", 7.85e-9),
            List.of(
                Step.cylinder("journal", Size.of(20, "h6"), Size.of(30)),
                Step.cylinder("collar", 40, 10)),
            Bore.NONE,
            Bore.NONE,
            List.of(),
            new Geometry(datums, List.of(zones)));
    return GeometryCheck.of(part);
  }

  private static void refused(String why, List<Geometry.Datum> datums, Geometry.Zone zone) {
    assertThat(doubts(datums, zone))
        .anyMatch(d -> d.rank() == Doubt.Rank.STOP && d.what().contains(why));
  }

  @Test
  void whatMakesSenseRaisesNoDoubt() {
    assertThat(
            doubts(
                List.of(A),
                zone(Characteristic.CYLINDRICITY, "journal", 0.004),
                zone(Characteristic.RUN_OUT, "collar", 0.02, "A"),
                zone(Characteristic.PERPENDICULARITY, "right end", 0.01, "A"),
                zone(Characteristic.FLATNESS, "left face of collar", 0.01)))
        .isEmpty();
  }

  @Test
  void datumsThatAreMissingUnknownOrTooMany() {
    refused("no datum B", List.of(A), zone(Characteristic.RUN_OUT, "collar", 0.02, "B"));
    refused("needs a datum", List.of(A), zone(Characteristic.RUN_OUT, "collar", 0.02));
    refused("against no datum", List.of(A), zone(Characteristic.FLATNESS, "left end", 0.02, "A"));
    refused("feature itself", List.of(A), zone(Characteristic.RUN_OUT, "journal", 0.02, "A"));
    assertThat(doubts(List.of(A, new Geometry.Datum("A", "collar"))))
        .anyMatch(d -> d.what().contains("two datums have this letter"));
    assertThat(doubts(List.of(A)))
        .anyMatch(d -> d.rank() == Doubt.Rank.NOTE && d.what().contains("no tolerance refers"));
  }

  @Test
  void whatAFeatureCannotBeHeldTo() {
    refused("there is no feature", List.of(A), zone(Characteristic.FLATNESS, "lid", 0.02));
    refused("plane face", List.of(A), zone(Characteristic.ROUNDNESS, "left end", 0.02));
    refused("round surface", List.of(A), zone(Characteristic.FLATNESS, "collar", 0.02));
    refused("no axis", List.of(F), zone(Characteristic.RUN_OUT, "collar", 0.02, "F"));
    refused(
        "write perpendicularity",
        List.of(A),
        zone(Characteristic.PARALLELISM, "left end", 0.02, "A"));
    refused(
        "write parallelism",
        List.of(A),
        zone(Characteristic.PERPENDICULARITY, "collar", 0.02, "A"));
    Geometry.Zone round =
        new Geometry.Zone(
            Characteristic.PERPENDICULARITY, "left end", 0.1, Geometry.Shape.ROUND, List.of("A"));
    refused("a round zone holds an axis", List.of(A), round);
  }

  @Test
  void zonesThatSayNothingMore() {
    assertThat(doubts(List.of(A), zone(Characteristic.CYLINDRICITY, "journal", 0.0065)))
        .anyMatch(d -> d.rank() == Doubt.Rank.CAUTION && d.what().contains("no closer than"));
    assertThat(
            doubts(
                List.of(A),
                zone(Characteristic.ROUNDNESS, "collar", 0.02),
                zone(Characteristic.RUN_OUT, "collar", 0.02, "A")))
        .anyMatch(d -> d.rank() == Doubt.Rank.CAUTION && d.what().contains("holds it already"));
  }
}
