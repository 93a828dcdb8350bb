package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.List;

/**
 * A small positive fraction in lowest terms, for searches that handle millions of them.
 *
 * @param num numerator, 1 or more
 * @param den denominator, 1 or more
 */
record Fraction(long num, long den) implements Comparable<Fraction> {

  static final Fraction ONE = new Fraction(1, 1);
  private static final long MOST = 1L << 31;

  static Fraction of(long num, long den) {
    long common = gcd(num, den);
    Fraction f = new Fraction(num / common, den / common);
    if (f.num >= MOST || f.den >= MOST) {
      throw new IllegalArgumentException(
          "these targets have no simple ratios to each other; round them to standard values");
    }
    return f;
  }

  static Fraction of(Ratio ratio) {
    Ratio folded = ratio.folded();
    if (!folded.isRational() || folded.signum() <= 0) {
      throw new IllegalArgumentException(
          "a gearbox can only meet targets above 0 and free of π, found " + ratio.text());
    }
    if (folded.numerator().bitLength() > 31 || folded.denominator().bitLength() > 31) {
      throw new IllegalArgumentException("target is no simple number: " + ratio.text());
    }
    return new Fraction(folded.numerator().longValueExact(), folded.denominator().longValueExact());
  }

  static List<Fraction> all(List<Ratio> ratios) {
    List<Fraction> all = new ArrayList<>();
    for (Ratio ratio : ratios) {
      all.add(of(ratio));
    }
    return all;
  }

  Fraction times(Fraction other) {
    long a = gcd(num, other.den);
    long b = gcd(other.num, den);
    return of((num / a) * (other.num / b), (den / b) * (other.den / a));
  }

  Fraction inverse() {
    return new Fraction(/* num= */ den, /* den= */ num);
  }

  Fraction over(Fraction other) {
    return times(other.inverse());
  }

  Ratio ratio() {
    return Ratio.of(num, den);
  }

  @Override
  public int compareTo(Fraction other) {
    return Long.compare(num * other.den, other.num * den);
  }

  static long gcd(long a, long b) {
    long x = a;
    long y = b;
    while (y != 0) {
      long rest = x % y;
      x = y;
      y = rest;
    }
    return x;
  }
}
