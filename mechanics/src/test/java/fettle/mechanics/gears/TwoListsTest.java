package fettle.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The proofs of the two-list search against boxes tried one by one, and against the older search.
 */
class TwoListsTest {

  private static final List<Fraction> RATIOS = products(new int[] {-3, 3}, new int[] {-1, 1});
  private static final List<Fraction> CONSTANTS = products(new int[] {-6, 6}, new int[] {-3, 3});

  private static List<Fraction> products(int[] twos, int[] threes) {
    List<Fraction> all = new ArrayList<>();
    for (int a = twos[0]; a <= twos[1]; a++) {
      for (int b = threes[0]; b <= threes[1]; b++) {
        all.add(power(2, a).times(power(3, b)));
      }
    }
    return all;
  }

  private static Fraction power(int base, int exponent) {
    Fraction one = Fraction.ONE;
    for (int i = 0; i < Math.abs(exponent); i++) {
      one = one.times(new Fraction(base, 1));
    }
    return exponent < 0 ? one.inverse() : one;
  }

  private static List<Fraction> some(Random r, int size) {
    int[] smooth = {1, 2, 3, 4, 6, 8, 9, 12, 16, 18, 24};
    TreeSet<Fraction> all = new TreeSet<>();
    while (all.size() < size) {
      all.add(new Fraction(smooth[r.nextInt(smooth.length)], 1));
    }
    return List.copyOf(all);
  }

  /** Fewest cone wheels over every set of r multipliers and every constant of a grid. */
  private static int oneByOne(List<Fraction> first, List<Fraction> second, int r) {
    int least = first.size() + second.size();
    for (List<Fraction> m : sets(List.of(Fraction.ONE), r)) {
      for (Fraction k : CONSTANTS) {
        LeastCover cover = new LeastCover(first.size() + second.size());
        for (Fraction multiplier : m) {
          for (int t = 0; t < first.size(); t++) {
            cover.add(first.get(t).over(multiplier), t);
          }
          for (int u = 0; u < second.size(); u++) {
            cover.add(second.get(u).times(multiplier).over(k), first.size() + u);
          }
        }
        int found = cover.fewerThan(least).size();
        least = found > 0 ? found : least;
      }
    }
    return least;
  }

  private static List<List<Fraction>> sets(List<Fraction> begun, int r) {
    if (begun.size() == r) {
      return List.of(begun);
    }
    List<List<Fraction>> all = new ArrayList<>();
    int from = begun.size() == 1 ? 0 : RATIOS.indexOf(begun.get(begun.size() - 1)) + 1;
    for (Fraction next : RATIOS.subList(from, RATIOS.size())) {
      if (!next.equals(Fraction.ONE)) {
        List<Fraction> more = new ArrayList<>(begun);
        more.add(next);
        all.addAll(sets(more, r));
      }
    }
    return all;
  }

  private static TwoLists.Verdict verdict(
      List<Fraction> first, List<Fraction> second, int n, int r) {
    List<Fraction> all = new ArrayList<>(first);
    all.addAll(second);
    PrimeCode code = Objects.requireNonNull(PrimeCode.of(all));
    return new TwoLists(first, second, code, SearchLimits.none()).box(n, r).verdict();
  }

  @Test
  void whatIsProvenImpossibleIsNotFoundOneByOneEither() {
    Random random = new Random(5);
    int proven = 0;
    int tight = 0;
    for (int instance = 0; instance < 24; instance++) {
      List<Fraction> first = some(random, 5 + random.nextInt(3));
      List<Fraction> second = some(random, 3 + random.nextInt(3));
      for (int r = 1; r <= 3; r++) {
        int least = oneByOne(first, second, r);
        TwoLists.Verdict below = verdict(first, second, least - 1, r);
        assertThat(verdict(first, second, least, r))
            .as("%s and %s with %d multipliers and %d wheels", first, second, r, least)
            .isIn(TwoLists.Verdict.FOUND, TwoLists.Verdict.OPEN);
        proven++;
        boolean none = below == TwoLists.Verdict.NONE || below == TwoLists.Verdict.NONE_ALONE;
        tight += none ? 1 : 0;
      }
    }
    assertThat(tight).as("bounds that boxes tried one by one reach").isGreaterThan(proven * 2 / 3);
  }

  @Test
  void theLeastConeOfOneListIsTheOlderSearchs() {
    Random random = new Random(8);
    for (int instance = 0; instance < 12; instance++) {
      List<Fraction> list = some(random, 6 + random.nextInt(3));
      List<Ratio> ratios = list.stream().map(Fraction::ratio).toList();
      PrimeCode code = Objects.requireNonNull(PrimeCode.of(list));
      for (int r = 1; r <= 3; r++) {
        int least = GearboxSearch.leastCone(ratios, r).found();
        assertThat(ListCores.of(code.codes(list), least, r, SearchLimits.none()).noneUpTo(r))
            .isFalse();
        assertThat(
                least == 1
                    || ListCores.of(code.codes(list), least - 1, r, SearchLimits.none())
                        .noneUpTo(r))
            .isTrue();
      }
    }
  }

  @Test
  void aCodeIsReadBackAndProductsAreSums() {
    Fraction a = Fraction.of(63, 40);
    Fraction b = Fraction.of(13, 99);
    PrimeCode code = Objects.requireNonNull(PrimeCode.of(List.of(a, b)));
    assertThat(code.fraction(code.code(a) + code.code(b))).isEqualTo(a.times(b));
    assertThat(code.fraction(code.code(a) - 3 * code.code(b))).isEqualTo(a.over(b).over(b).over(b));
    assertThat(code.isSquare(2 * code.code(a) - 2 * code.code(b))).isTrue();
    assertThat(code.isSquare(2 * code.code(a) + code.code(b))).isFalse();
  }
}
