package fettle.mechanics.base;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact number of the form q·π^e·in^f: q a fraction in lowest terms, π and the inch (127/5 mm)
 * kept as symbols, so that a train ratio of 127/120 is never 1.0583 and a travel with π in it is
 * never called round.
 *
 * @param fraction q, in lowest terms
 * @param pi exponent e of π
 * @param inch exponent f of the inch
 */
public record Ratio(BigFraction fraction, int pi, int inch) {

  /** The number 0. */
  public static final Ratio ZERO = of(0, 1);

  /** The number 1. */
  public static final Ratio ONE = of(1, 1);

  /** The number π. */
  public static final Ratio PI = new Ratio(BigFraction.ONE, 1, 0);

  /** One inch in millimetres, kept as a symbol. */
  public static final Ratio INCH = new Ratio(BigFraction.ONE, 0, 1);

  private static final BigFraction MILLIMETRES_PER_INCH = BigFraction.of(127, 5);

  /** Zero carries no symbols. */
  public Ratio {
    if (fraction.signum() == 0) {
      pi = 0;
      inch = 0;
    }
  }

  /** Returns numerator/denominator; refuses a zero denominator. */
  public static Ratio of(long numerator, long denominator) {
    if (denominator == 0) {
      throw new IllegalArgumentException("denominator [-] must not be 0");
    }
    return new Ratio(BigFraction.of(numerator, denominator), 0, 0);
  }

  /** Returns a whole number. */
  public static Ratio of(long whole) {
    return of(whole, 1);
  }

  /** Returns the exact value of a decimal. */
  public static Ratio of(BigDecimal decimal) {
    BigInteger unscaled = decimal.unscaledValue();
    BigFraction q =
        decimal.scale() >= 0
            ? BigFraction.of(unscaled, BigInteger.TEN.pow(decimal.scale()))
            : BigFraction.of(unscaled.multiply(BigInteger.TEN.pow(-decimal.scale())));
    return new Ratio(q, 0, 0);
  }

  /**
   * Returns the exact value of the shortest decimal that prints as this double.
   *
   * @param decimal a finite number [-]
   */
  public static Ratio ofDecimal(double decimal) {
    if (!Double.isFinite(decimal)) {
      throw new IllegalArgumentException("number [-] must be finite, found " + decimal);
    }
    return of(BigDecimal.valueOf(decimal));
  }

  /** Returns this times the other. */
  public Ratio times(Ratio other) {
    return new Ratio(fraction.multiply(other.fraction), pi + other.pi, inch + other.inch);
  }

  /** Returns this times a whole number. */
  public Ratio times(long whole) {
    return times(of(whole));
  }

  /** Returns this divided by the other; refuses division by zero. */
  public Ratio over(Ratio other) {
    if (other.isZero()) {
      throw new IllegalArgumentException("divisor [-] must not be 0");
    }
    return new Ratio(fraction.divide(other.fraction), pi - other.pi, inch - other.inch);
  }

  /** Returns this divided by a whole number. */
  public Ratio over(long whole) {
    return over(of(whole));
  }

  /** Returns 1/this. */
  public Ratio inverse() {
    return ONE.over(this);
  }

  /** Returns the number with the opposite sign. */
  public Ratio negate() {
    return new Ratio(fraction.negate(), pi, inch);
  }

  /** Returns the number without its sign. */
  public Ratio abs() {
    return signum() < 0 ? negate() : this;
  }

  /** Returns -1, 0 or 1. */
  public int signum() {
    return fraction.signum();
  }

  /** Tells whether the number is 0. */
  public boolean isZero() {
    return signum() == 0;
  }

  /** Tells whether the number is rational, that is, free of π. */
  public boolean isRational() {
    return pi == 0;
  }

  /** Tells whether the number is whole. */
  public boolean isWhole() {
    return isRational() && folded().fraction.getDenominator().equals(BigInteger.ONE);
  }

  /** Returns the same number with the inch written out as 127/5. */
  public Ratio folded() {
    return inch == 0 ? this : new Ratio(fraction.multiply(MILLIMETRES_PER_INCH.pow(inch)), pi, 0);
  }

  /** Tells whether both are the same number, the inch counted as 127/5. */
  public boolean sameAs(Ratio other) {
    return folded().equals(other.folded());
  }

  /** Returns numerator of the folded fraction. */
  public BigInteger numerator() {
    return folded().fraction.getNumerator();
  }

  /** Returns denominator of the folded fraction, positive. */
  public BigInteger denominator() {
    return folded().fraction.getDenominator();
  }

  /**
   * Returns the nearest double.
   *
   * @return the value [any]
   */
  public double toDouble() {
    return folded().fraction.doubleValue() * Math.pow(Math.PI, pi);
  }

  /** Returns the exact number as text, e.g. {@code 21/4·π} or {@code 3/8 in}. */
  public String text() {
    StringBuilder s = new StringBuilder(fraction.getNumerator().toString());
    if (!fraction.getDenominator().equals(BigInteger.ONE)) {
      s.append('/').append(fraction.getDenominator());
    }
    appendPower(s, "·π", pi);
    appendPower(s, " in", inch);
    return s.toString();
  }

  /** Returns the number as a formula that an evaluator reads, e.g. {@code 21/4*pi}. */
  public String formula() {
    Ratio f = folded();
    String s = f.fraction.getNumerator().toString();
    if (!f.fraction.getDenominator().equals(BigInteger.ONE)) {
      s += "/" + f.fraction.getDenominator();
    }
    return switch (pi) {
      case 0 -> s;
      case 1 -> s + "*pi";
      case -1 -> s + "/pi";
      default -> s + "*pi^(" + pi + ")";
    };
  }

  /** Returns a decimal rounded to so many places, plain notation. */
  public String decimal(int places) {
    return BigDecimal.valueOf(toDouble())
        .setScale(places, RoundingMode.HALF_EVEN)
        .toPlainString()
        .toLowerCase(Locale.ROOT);
  }

  private static void appendPower(StringBuilder s, String symbol, int exponent) {
    if (exponent != 0) {
      s.append(symbol);
      if (exponent != 1) {
        s.append('^').append(exponent);
      }
    }
  }
}
