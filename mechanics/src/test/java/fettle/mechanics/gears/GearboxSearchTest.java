package fettle.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.base.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Boxes found meet every target exactly, and their proofs hold against smaller boxes. */
class GearboxSearchTest {

  private static final List<Ratio> COARSE = ThreadPitches.ISO_COARSE.leads();

  private static List<Ratio> numbers(String text) {
    return Arrays.stream(text.split(" ", -1)).map(n -> Ratio.of(new BigDecimal(n))).toList();
  }

  private static GearboxSearch.Outcome search(String leads, String perInch) {
    return GearboxSearch.search(
        new GearboxSearch.Query(
            numbers(leads), perInch.isEmpty() ? List.of() : numbers(perInch), 4, 50_000));
  }

  private static void meets(GearboxSearch.Design d, List<Ratio> leads, List<Ratio> perInch) {
    assertThat(leads)
        .allMatch(
            t ->
                d.cone().stream()
                    .anyMatch(c -> d.multipliers().stream().anyMatch(m -> c.times(m).equals(t))));
    assertThat(perInch)
        .allMatch(
            u ->
                d.cone().stream()
                    .anyMatch(
                        c ->
                            d.multipliers().stream()
                                .anyMatch(m -> d.constant().times(c).over(m).equals(u))));
  }

  @Test
  void theCoarsePitchesNeedTenWheelsAndNoFewer() {
    GearboxSearch.Outcome outcome =
        GearboxSearch.search(new GearboxSearch.Query(COARSE, List.of(), 4, 50_000));
    assertThat(outcome).isInstanceOf(GearboxSearch.Outcome.Proven.class);
    assertThat(outcome.design().wheels()).isEqualTo(10);
    meets(outcome.design(), COARSE, List.of());
  }

  @Test
  void leastConesOfTheHandbookInstances() {
    List<Ratio> inch = numbers("8 9 10 11 12 13 14 16 18 20 24 28 32");
    assertThat(GearboxSearch.leastCone(COARSE, 1).found()).isEqualTo(11);
    assertThat(GearboxSearch.leastCone(COARSE, 3))
        .extracting(GearboxSearch.Level::found, GearboxSearch.Level::sets)
        .containsExactly(5, 1766L);
    assertThat(GearboxSearch.leastCone(inch, 3))
        .extracting(GearboxSearch.Level::found, GearboxSearch.Level::sets)
        .containsExactly(7, 5246L);
  }

  @Test
  @Tag("slow")
  void theCoarsePitchesNeedFourWheelsWithFourMultipliers() {
    assertThat(GearboxSearch.leastCone(COARSE, 4).found()).isEqualTo(4);
  }

  @Test
  void coneAndMultiplierExchangeRoles() {
    List<Ratio> targets = numbers("1 2 3 4 6 8 9");
    for (int r = 1; r <= 4; r++) {
      int n = GearboxSearch.leastCone(targets, r).found();
      if (n <= 4) {
        assertThat(GearboxSearch.leastCone(targets, n).found()).isLessThanOrEqualTo(r);
      }
    }
  }

  @Test
  void scalingTheTargetsChangesNothing() {
    List<Ratio> scaled = COARSE.stream().map(t -> t.times(Ratio.of(7, 3))).toList();
    assertThat(GearboxSearch.leastCone(scaled, 2).found())
        .isEqualTo(GearboxSearch.leastCone(COARSE, 2).found());
  }

  @Test
  void twoListsShareTheirWheels() {
    GearboxSearch.Outcome outcome = search("0.5 1 1.5 2 3", "8 12 16 24 32");
    meets(outcome.design(), numbers("0.5 1 1.5 2 3"), numbers("8 12 16 24 32"));
    assertThat(outcome.lowerBound()).isLessThanOrEqualTo(outcome.design().wheels());
    int apart =
        search("0.5 1 1.5 2 3", "").design().wheels()
            + search("8 12 16 24 32", "").design().wheels();
    assertThat(outcome.design().wheels()).isLessThan(apart);
  }

  @Test
  void equalListsShareEveryWheel() {
    GearboxSearch.Outcome outcome = search("1 2 3 4 6 8", "1 2 3 4 6 8");
    meets(outcome.design(), numbers("1 2 3 4 6 8"), numbers("1 2 3 4 6 8"));
    assertThat(outcome.design().wheels())
        .isGreaterThanOrEqualTo(search("1 2 3 4 6 8", "").lowerBound());
  }

  @Test
  void theLeastCoverAgreesWithTryingEverySubset() {
    List<Ratio> targets = numbers("1 2 3 4 5 6 8");
    List<Ratio> multipliers = numbers("1 2");
    int least = Integer.MAX_VALUE;
    List<Ratio> candidates =
        targets.stream().flatMap(t -> multipliers.stream().map(t::over)).distinct().toList();
    for (int subset = 1; subset < 1 << candidates.size(); subset++) {
      int chosen = subset;
      boolean all =
          targets.stream()
              .allMatch(
                  t ->
                      multipliers.stream()
                          .anyMatch(
                              m -> {
                                int at = candidates.indexOf(t.over(m));
                                return at >= 0 && (chosen >> at & 1) == 1;
                              }));
      least = all ? Math.min(least, Integer.bitCount(subset)) : least;
    }
    LeastCover cover = new LeastCover(targets.size());
    for (int t = 0; t < targets.size(); t++) {
      for (Ratio m : multipliers) {
        cover.add(Fraction.of(targets.get(t).over(m)), t);
      }
    }
    assertThat(cover.fewerThan(99)).hasSize(least);
  }

  @Test
  void aBoundOfTheWorkIsKeptAndTold() {
    List<Ratio> metric = ThreadPitches.ISO_261.leads();
    List<Ratio> inch = ThreadPitches.UTS.printed();
    GearboxSearch.Outcome outcome =
        GearboxSearch.search(new GearboxSearch.Query(metric, inch, 8, 200));
    meets(outcome.design(), metric, inch);
    assertThat(outcome).isInstanceOf(GearboxSearch.Outcome.BestFound.class);
    assertThat(outcome.lowerBound()).isLessThan(outcome.design().wheels());
  }

  @Test
  void cancellingReturnsTheBestSoFarWithABound() {
    GearboxSearch.Outcome outcome =
        GearboxSearch.search(
            new GearboxSearch.Query(COARSE, List.of(), 4, 50_000), () -> true, p -> {});
    assertThat(outcome).isInstanceOf(GearboxSearch.Outcome.BestFound.class);
    assertThat(outcome.lowerBound()).isLessThan(outcome.design().wheels());
    meets(outcome.design(), COARSE, List.of());
  }

  @Test
  void wholeTeethForTheProvenCone() {
    List<Integer> teeth = ConeTeeth.teeth(numbers("5 6 7 8 10 12"), 20, 60);
    assertThat(teeth).containsExactly(20, 24, 28, 32, 40, 48);
    List<ConeTeeth.Setting> settings =
        ConeTeeth.settings(teeth, List.of(Ratio.ONE, Ratio.of(5, 2)), Ratio.of(1, 40), COARSE);
    assertThat(settings.stream().filter(ConeTeeth.Setting::wanted)).hasSize(11);
    FixedCentre.Outcome pairs =
        FixedCentre.leastSum(List.of(Ratio.ONE, Ratio.of(5, 2)), 20, 0, 400);
    assertThat(pairs)
        .isEqualTo(
            new FixedCentre.Outcome.Least(
                70, List.of(new FixedCentre.Pair(35, 35), new FixedCentre.Pair(50, 20))));
  }

  @Test
  void someRatiosHaveNoCommonSum() {
    List<Ratio> ratios =
        List.of(Ratio.of(3, 5), Ratio.of(3, 4), Ratio.ONE, Ratio.of(5, 4), Ratio.of(7, 4));
    assertThat(FixedCentre.leastSum(ratios, 17, 0, 400))
        .isEqualTo(new FixedCentre.Outcome.None(400));
  }

  private static final String METRIC = "0.4 0.45 0.5 0.6 0.7 0.75 0.8 1 1.25 1.5 1.75 2 2.5";
  private static final String INCH = "10 11 12 13 14 16 18 20 24 28 32 36 40 44 48";

  @Test
  @Tag("slow")
  void metricAndInchFromOneConeNeedSixteenWheelsProven() {
    GearboxSearch.Outcome outcome =
        GearboxSearch.search(new GearboxSearch.Query(numbers(METRIC), numbers(INCH), 6, 5_000_000));
    meets(outcome.design(), numbers(METRIC), numbers(INCH));
    assertThat(outcome).isInstanceOf(GearboxSearch.Outcome.Proven.class);
    assertThat(outcome.design().wheels()).isEqualTo(16);
  }

  @Test
  void metricAndInchFromOneConeWithUpToThreeMultipliersNeedSixteenWheels() {
    GearboxSearch.Outcome outcome =
        GearboxSearch.search(new GearboxSearch.Query(numbers(METRIC), numbers(INCH), 3, 500_000));
    meets(outcome.design(), numbers(METRIC), numbers(INCH));
    assertThat(outcome.design().wheels()).isEqualTo(16);
    for (GearboxSearch.Level level : outcome.levels().subList(0, 3)) {
      assertThat(level.least() + 2 * level.multipliers()).isGreaterThanOrEqualTo(16);
    }
    List<Ratio> cone = outcome.design().cone();
    double span = cone.get(cone.size() - 1).over(cone.get(0)).toDouble();
    assertThat(span).as("of boxes with as few wheels, a compact one").isLessThan(2);
  }

  @Test
  void theBoundToldOnTheWayNeverPassesWhatIsProvenInTheEnd() {
    List<GearboxSearch.Progress> told = new ArrayList<>();
    GearboxSearch.Query query =
        new GearboxSearch.Query(
            ThreadPitches.ISO_COARSE.leads(), ThreadPitches.UNC.printed(), 4, 100_000);
    GearboxSearch.Outcome outcome = GearboxSearch.search(query, () -> false, told::add);
    assertThat(told).isNotEmpty();
    for (GearboxSearch.Progress progress : told) {
      assertThat(progress.bound()).isLessThanOrEqualTo(progress.bestWheels());
      assertThat(progress.bound()).isLessThanOrEqualTo(outcome.lowerBound());
    }
  }
}
