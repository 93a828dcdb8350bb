package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.List;

/** Pairs of given ratios on one centre distance: sliding clusters and multiplier stages. */
public final class FixedCentre {

  /**
   * One pair.
   *
   * @param driver teeth of the driver
   * @param driven teeth of the driven gear
   */
  public record Pair(int driver, int driven) {}

  /** What was found. */
  public sealed interface Outcome {
    /**
     * The least tooth sum, every smaller one having been tried.
     *
     * @param sum nominal tooth sum
     * @param pairs a pair for each ratio, in the order asked
     */
    record Least(int sum, List<Pair> pairs) implements Outcome {}

    /**
     * No sum up to the largest tried serves.
     *
     * @param tried largest sum tried
     */
    record None(int tried) implements Outcome {}
  }

  private FixedCentre() {}

  /**
   * Finds the least tooth sum on which each ratio has an exact pair.
   *
   * @param ratios driver over driven
   * @param fewest fewest teeth of any gear
   * @param slack teeth by which a pair's sum may differ, taken up by profile shift
   * @param mostSum largest sum to try
   */
  public static Outcome leastSum(List<Ratio> ratios, int fewest, int slack, int mostSum) {
    List<Fraction> wanted = Fraction.all(ratios);
    Teeth.check("fewest teeth", fewest);
    if (wanted.isEmpty() || wanted.size() > 100) {
      throw new IllegalArgumentException(
          "ratios [-] must be 1 to 100 in number, found " + wanted.size());
    }
    if (slack < 0 || slack > 3) {
      throw new IllegalArgumentException(
          "sum may differ by 0 to 3 teeth; more cannot be taken up by profile shift; found "
              + slack);
    }
    if (mostSum < 2 * fewest || mostSum > 100_000) {
      throw new IllegalArgumentException(
          "largest sum [teeth] must be " + 2 * fewest + " to 100000, found " + mostSum);
    }
    for (int sum = 2 * fewest; sum <= mostSum; sum++) {
      List<Pair> pairs = pairs(wanted, sum, fewest, slack);
      if (pairs.size() == wanted.size()) {
        return new Outcome.Least(sum, List.copyOf(pairs));
      }
    }
    return new Outcome.None(mostSum);
  }

  private static List<Pair> pairs(List<Fraction> wanted, int sum, int fewest, int slack) {
    List<Pair> pairs = new ArrayList<>();
    for (Fraction ratio : wanted) {
      Pair pair = pair(ratio, sum, fewest, slack);
      if (pair == null) {
        return List.of();
      }
      pairs.add(pair);
    }
    return pairs;
  }

  private static @org.jspecify.annotations.Nullable Pair pair(
      Fraction ratio, int sum, int fewest, int slack) {
    long unit = ratio.num() + ratio.den();
    for (int off = 0; off <= slack; off++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        long total = sum + (long) sign * off;
        if (total % unit == 0) {
          long times = total / unit;
          if (times * Math.min(ratio.num(), ratio.den()) >= fewest) {
            return new Pair((int) (times * ratio.num()), (int) (times * ratio.den()));
          }
        }
      }
    }
    return null;
  }
}
