package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Deviation of an actual ratio or travel from the nominal one. */
public final class Deviation {

  private static final BigFraction MILLION = BigFraction.of(1_000_000);

  /** π to 60 places, for ranking only; π itself stays a symbol. */
  private static final BigFraction PI_TO_60 =
      BigFraction.of(
          new BigInteger("3141592653589793238462643383279502884197169399375105820974944"),
          BigInteger.TEN.pow(60));

  private Deviation() {}

  /**
   * Returns the deviation, actual/nominal - 1. It is exact before the last step if π cancels.
   *
   * @return relative deviation [-]
   */
  public static double relative(Ratio actual, Ratio nominal) {
    Ratio q = actual.over(nominal).folded();
    return q.isRational() ? q.fraction().subtract(1).doubleValue() : difference(q).doubleValue();
  }

  /**
   * Returns the deviation in millionths.
   *
   * @return (actual/nominal - 1) 1e6 [ppm]
   */
  public static double ppm(Ratio actual, Ratio nominal) {
    return difference(actual.over(nominal).folded()).multiply(MILLION).doubleValue();
  }

  /** Compares the sizes of two deviations from 1, exactly (π to 60 places). */
  public static int compareSize(Ratio first, Ratio second) {
    return difference(first.folded()).abs().compareTo(difference(second.folded()).abs());
  }

  private static BigFraction difference(Ratio q) {
    BigFraction value = q.fraction();
    for (int i = 0; i < q.pi(); i++) {
      value = value.multiply(PI_TO_60);
    }
    for (int i = 0; i > q.pi(); i--) {
      value = value.divide(PI_TO_60);
    }
    return value.subtract(1);
  }
}
