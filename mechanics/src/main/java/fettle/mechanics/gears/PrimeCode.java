package fettle.mechanics.gears;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Positive fractions as the exponents of their primes, packed side by side into one number: a
 * product of fractions becomes a sum, a quotient a difference. Searches compare hundreds of
 * millions of quotients this way.
 *
 * <p>Every field is wide enough for a chain of quotients as long as a search can make; should one
 * ever overflow, two different fractions might be taken for equal but never two equal ones for
 * different. So a search that finds nothing has still proven that there is nothing, and what it
 * finds is checked with whole fractions.
 */
final class PrimeCode {

  private static final int MOST_PRIMES = 10;

  private final long[] primes;
  private final int bits;

  private PrimeCode(long[] primes) {
    this.primes = primes;
    this.bits = Math.min(12, 62 / Math.max(1, primes.length));
  }

  /** Returns a code for the primes of these numbers; null if they have too many primes. */
  static @Nullable PrimeCode of(List<Fraction> numbers) {
    TreeSet<Long> primes = new TreeSet<>();
    for (Fraction f : numbers) {
      split(f.num(), primes);
      split(f.den(), primes);
      if (primes.size() > MOST_PRIMES) {
        return null;
      }
    }
    return new PrimeCode(primes.stream().mapToLong(Long::longValue).toArray());
  }

  private static void split(long number, Set<Long> primes) {
    long rest = number;
    for (long p = 2; p * p <= rest; p++) {
      while (rest % p == 0) {
        primes.add(p);
        rest /= p;
      }
    }
    if (rest > 1) {
      primes.add(rest);
    }
  }

  /** Returns the code of a fraction made of the known primes. */
  long code(Fraction f) {
    long code = 0;
    for (int i = 0; i < primes.length; i++) {
      long one = 1L << (i * bits);
      code += one * (power(f.num(), primes[i]) - power(f.den(), primes[i]));
    }
    return code;
  }

  private static int power(long number, long prime) {
    int power = 0;
    for (long rest = number; rest % prime == 0; rest /= prime) {
      power++;
    }
    return power;
  }

  /** Returns the codes of some fractions. */
  long[] codes(List<Fraction> fractions) {
    return fractions.stream().mapToLong(this::code).toArray();
  }

  /** Returns the fraction of a code. */
  Fraction fraction(long code) {
    Fraction fraction = Fraction.ONE;
    int[] exponents = exponents(code);
    for (int i = 0; i < primes.length; i++) {
      Fraction prime = new Fraction(primes[i], 1);
      for (int e = 0; e < Math.abs(exponents[i]); e++) {
        fraction = exponents[i] > 0 ? fraction.times(prime) : fraction.over(prime);
      }
    }
    return fraction;
  }

  /** Returns the fractions of some codes. */
  List<Fraction> fractions(long[] codes) {
    List<Fraction> fractions = new ArrayList<>();
    for (long code : codes) {
      fractions.add(fraction(code));
    }
    return fractions;
  }

  /** Tells whether the fraction of a code is the square of a fraction. */
  boolean isSquare(long code) {
    for (int exponent : exponents(code)) {
      if (exponent % 2 != 0) {
        return false;
      }
    }
    return true;
  }

  private int[] exponents(long code) {
    int[] exponents = new int[primes.length];
    long rest = code;
    for (int i = 0; i < primes.length; i++) {
      long low = i == primes.length - 1 ? rest : (rest << (64 - bits)) >> (64 - bits);
      exponents[i] = (int) low;
      rest = (rest - low) >> bits;
    }
    return exponents;
  }
}
