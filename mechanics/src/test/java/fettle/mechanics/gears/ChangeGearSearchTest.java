package fettle.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The fast search finds what a straightforward enumeration finds, in the same order. */
class ChangeGearSearchTest {

  private static final Banjo SMALL = Banjo.of(80, 1, 30, 75, 0.5, 12, 12);
  private static final Banjo WIDE = new Banjo(100, 1, 25, 130, 0.5, 14, 14, 8);
  private static final List<Integer> STOCK =
      List.of(20, 20, 30, 35, 40, 40, 45, 50, 55, 57, 60, 65, 80, 80);

  private static ChangeGearSearch.Query query(
      List<Integer> stock,
      @Nullable Banjo banjo,
      int best,
      Set<ChangeGearSearch.Wheels> wheels,
      double limit) {
    List<Ratio> leads = new ArrayList<>(ThreadPitches.ISO_COARSE.leads());
    leads.addAll(ThreadPitches.UNC.leads());
    leads.add(Ratio.PI);
    return new ChangeGearSearch.Query(
        stock, 1, banjo, Ratio.INCH.over(16), leads, best, wheels, limit);
  }

  private static void same(ChangeGearSearch.Query query) {
    assertThat(ChangeGearSearch.search(query).listings())
        .isEqualTo(StraightEnumeration.search(query));
  }

  @Test
  void twoAndFourWheelTrainsAreThoseOfAStraightEnumeration() {
    Set<ChangeGearSearch.Wheels> wheels =
        Set.of(ChangeGearSearch.Wheels.TWO, ChangeGearSearch.Wheels.FOUR);
    same(query(STOCK, SMALL, 10, wheels, 0.02));
    same(query(STOCK, null, 10, wheels, 0.5));
  }

  @Test
  void sixWheelTrainsAreThoseOfAStraightEnumeration() {
    List<Integer> stock = List.of(20, 24, 25, 30, 30, 35, 40, 45, 50);
    same(query(stock, WIDE, 10, Set.of(ChangeGearSearch.Wheels.values()), 0.05));
    same(query(stock.subList(0, 8), null, 5, Set.of(ChangeGearSearch.Wheels.SIX), 0.5));
  }

  @Test
  void randomStocksGiveTheSameEitherWay() {
    Random random = new Random(7);
    for (int round = 0; round < 8; round++) {
      List<Integer> stock = new ArrayList<>();
      for (int i = 0; i < 10; i++) {
        stock.add(15 + random.nextInt(60));
      }
      Set<ChangeGearSearch.Wheels> wheels =
          Set.of(ChangeGearSearch.Wheels.TWO, ChangeGearSearch.Wheels.FOUR);
      same(query(stock, round % 2 == 0 ? WIDE : SMALL, 1 + round, wheels, 0.1));
    }
  }

  @Test
  void randomStocksWithSixWheelTrainsGiveTheSameInEveryBand() {
    Random random = new Random(11);
    Set<ChangeGearSearch.Wheels> wheels = Set.of(ChangeGearSearch.Wheels.values());
    for (int round = 0; round < 6; round++) {
      List<Integer> stock = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        stock.add(5 * (4 + random.nextInt(9)));
      }
      double limit = new double[] {1e-12, 0.003, 0.1, 0.9, 3, Double.POSITIVE_INFINITY}[round];
      same(query(stock, round % 2 == 0 ? WIDE : null, 1 + 7 * round, wheels, limit));
    }
  }

  @Test
  @Tag("slow")
  void twentyWheelsGiveTheSameEitherWay() {
    List<Integer> stock =
        List.of(20, 21, 24, 25, 28, 30, 32, 35, 36, 38, 40, 40, 45, 48, 50, 55, 57, 60, 63, 65);
    same(query(stock, WIDE, 10, Set.of(ChangeGearSearch.Wheels.values()), 0.01));
  }

  @Test
  void aSimpleTrainBorrowsItsIdlerFromTheRestOfTheStock() {
    assertThat(simple(List.of(40, 40, 60))).isEqualTo("40-(60)-40");
    assertThat(simple(List.of(60, 80, 80))).isEqualTo("80-80");
  }

  private static String simple(List<Integer> stock) {
    ChangeGearSearch.Query query =
        new ChangeGearSearch.Query(
            stock,
            1,
            SMALL,
            Ratio.ONE,
            List.of(Ratio.ONE),
            1,
            Set.of(ChangeGearSearch.Wheels.TWO),
            0.01);
    return ChangeGearSearch.search(query).listings().get(0).best().get(0).text();
  }

  @Test
  void moreWheelsNeverMakeTheBestTrainWorse() {
    Set<ChangeGearSearch.Wheels> wheels = Set.of(ChangeGearSearch.Wheels.FOUR);
    ChangeGearSearch.Result few =
        ChangeGearSearch.search(query(STOCK.subList(0, 12), SMALL, 1, wheels, 0.5));
    ChangeGearSearch.Result more = ChangeGearSearch.search(query(STOCK, SMALL, 1, wheels, 0.5));
    for (int i = 0; i < few.listings().size(); i++) {
      double before = Math.abs(few.listings().get(i).best().get(0).ppm());
      double after = Math.abs(more.listings().get(i).best().get(0).ppm());
      assertThat(after).isLessThanOrEqualTo(before);
    }
  }

  @Test
  void theWheelToBuyForMetricThreadsOnAnInchScrewBringsThePrime127() {
    ChangeGearSearch.Query query =
        new ChangeGearSearch.Query(
            List.of(20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 80),
            1,
            null,
            Ratio.INCH.over(8),
            ThreadPitches.ISO_COARSE.leads(),
            1,
            Set.of(ChangeGearSearch.Wheels.FOUR),
            0.5);
    ChangeGearSearch.Purchase best = ChangeGearSearch.purchases(query, 15, 130, 50).get(0);
    assertThat(best.teeth()).isEqualTo(127);
    assertThat(best.exact()).isGreaterThan(5);
  }

  @Test
  void countsAddUp() {
    ChangeGearSearch.Census census = ChangeGearSearch.census(STOCK, 1, SMALL);
    long left = census.broken().values().stream().mapToLong(Long::longValue).sum();
    assertThat(census.fitting() + left).isEqualTo(census.all());
  }
}
