package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** Whole teeth for a box whose proportions are settled. */
public final class ConeTeeth {

  /**
   * One way to set the levers.
   *
   * @param wheel teeth of the cone wheel in mesh
   * @param multiplier ratio of the multiplier stage
   * @param value what it gives: the lead, or the threads per inch, exact
   * @param wanted true if it is one of the targets
   */
  public record Setting(int wheel, Ratio multiplier, Ratio value, boolean wanted) {}

  private ConeTeeth() {}

  /**
   * Returns the smallest whole teeth in the proportions of a cone, none fewer than allowed.
   *
   * @param cone sizes in proportion
   * @param fewest fewest teeth of any wheel
   * @param most most teeth of any wheel
   */
  public static List<Integer> teeth(List<Ratio> cone, int fewest, int most) {
    Teeth.check("fewest teeth", fewest);
    List<Fraction> sizes = Fraction.all(cone);
    if (sizes.isEmpty()) {
      throw new IllegalArgumentException("a cone needs at least one wheel");
    }
    BigInteger common = BigInteger.ONE;
    for (Fraction size : sizes) {
      BigInteger den = BigInteger.valueOf(size.den());
      common = common.divide(common.gcd(den)).multiply(den);
    }
    BigInteger shared = BigInteger.ZERO;
    List<BigInteger> whole = new ArrayList<>();
    for (Fraction size : sizes) {
      BigInteger n =
          BigInteger.valueOf(size.num()).multiply(common).divide(BigInteger.valueOf(size.den()));
      whole.add(n);
      shared = shared.gcd(n);
    }
    BigInteger divisor = shared;
    BigInteger least =
        whole.stream().min(BigInteger::compareTo).orElse(BigInteger.ONE).divide(divisor);
    BigInteger times = BigInteger.valueOf(fewest).add(least).subtract(BigInteger.ONE).divide(least);
    List<Integer> teeth = new ArrayList<>();
    for (BigInteger n : whole) {
      BigInteger z = n.divide(divisor).multiply(times);
      if (z.compareTo(BigInteger.valueOf(most)) > 0) {
        throw new IllegalArgumentException(
            "this cone needs a wheel of " + z + " teeth; at most " + most + " are allowed");
      }
      teeth.add(z.intValueExact());
    }
    return List.copyOf(teeth);
  }

  /**
   * Returns every setting of a cone and a multiplier, with the exact lead it gives.
   *
   * @param wheels teeth of the cone
   * @param multipliers ratios of the multiplier
   * @param perTooth lead for one tooth at multiplier 1
   * @param targets leads wanted
   */
  public static List<Setting> settings(
      List<Integer> wheels, List<Ratio> multipliers, Ratio perTooth, List<Ratio> targets) {
    List<Setting> settings = new ArrayList<>();
    for (Ratio m : multipliers) {
      for (int z : wheels) {
        Ratio lead = perTooth.times(z).times(m);
        settings.add(new Setting(z, m, lead, targets.stream().anyMatch(lead::sameAs)));
      }
    }
    return List.copyOf(settings);
  }
}
