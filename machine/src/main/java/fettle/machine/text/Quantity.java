package fettle.machine.text;

import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, as the owner wrote it: {@code 2 mm}, {@code 1 3/4 in}, {@code 8 tpi},
 * {@code 0.25 mm ± 0.05 mm}, {@code 0.2 to 0.3 mm}.
 *
 * @param exact the exact value in the coherent unit
 * @param unit the unit it was written in
 * @param doubt half-width of what the owner allows for, coherent unit; 0 if nothing is said
 */
public record Quantity(Ratio exact, Unit unit, double doubt) {

  private static final String NUMBER =
      "([+-]?)(?:(\\d{1,12})\\s+(?=\\d+\\s*/\\s*\\d))?(\\d{1,15}(?:\\.\\d{1,15})?|\\.\\d{1,15})(?:e([+-]?\\d{1,2}))?(?:\\s*/\\s*(\\d{1,12}))?";
  private static final Pattern WHOLE =
      Pattern.compile(
          NUMBER
              + "\\s*([^\\d±+].*?)??(?:\\s*(±|\\+/-|\\bto\\b)\\s*"
              + NUMBER
              + "\\s*([^\\d±].*?)?)?\\s*");
  private static final int LONGEST = 80;

  /**
   * Thrown when a text is no quantity of the kind asked for; the message says what was expected.
   */
  public static final class NotOne extends Exception {
    private static final long serialVersionUID = 1L;

    NotOne(String expected) {
      super(expected, null, false, false);
    }

    /** Returns what was expected. */
    public String expected() {
      return String.valueOf(getMessage());
    }
  }

  /** Reads a quantity of one kind. */
  public static Quantity parse(String text, Dimension dimension, Unit example) throws NotOne {
    String clean = text.strip();
    Matcher m = WHOLE.matcher(clean);
    if (clean.length() > LONGEST || !m.matches()) {
      throw new NotOne(expected(dimension, example));
    }
    boolean plain = dimension == Dimension.NUMBER;
    String first = m.group(6) == null ? "" : m.group(6).strip();
    String second = m.group(13) == null ? "" : m.group(13).strip();
    String written = first.isEmpty() ? second : first;
    if (written.isEmpty() && !plain) {
      throw new NotOne(expected(dimension, example) + ", not a bare number");
    }
    Unit unit = unit(written, dimension, example);
    Unit other = second.isEmpty() ? unit : unit(second, dimension, example);
    Ratio number = number(m, 1);
    Ratio value = coherent(unit, number, dimension, example);
    if (m.group(7) == null) {
      return new Quantity(value, unit, 0);
    }
    Ratio beside = number(m, 8);
    if (unit.reciprocal() != other.reciprocal()) {
      throw new NotOne(expected(dimension, example) + ", both numbers in the same kind of unit");
    }
    if (m.group(7).equals("to")) {
      Ratio end = coherent(other, beside, dimension, example);
      Ratio sum = sum(value, end);
      double half = Math.abs(end.toDouble() - value.toDouble()) / 2;
      return new Quantity(sum.over(2), unit, half);
    }
    if (beside.signum() < 0) {
      throw new NotOne(expected(dimension, example) + ", with a doubt of 0 or more");
    }
    double doubt =
        other.reciprocal()
            ? Math.abs(value.toDouble()) * beside.toDouble() / Math.abs(number.toDouble())
            : Math.abs(other.toCoherent(beside.toDouble()));
    return new Quantity(value, unit, doubt);
  }

  /**
   * Returns the value.
   *
   * @return value [coherent]
   */
  public double value() {
    return exact.toDouble();
  }

  /** Returns the quantity as a term of a working. */
  public Term term(String symbol) {
    return new Term(symbol, value(), unit, doubt);
  }

  /** Adds exactly where both carry the same power of π, else to the nearest double. */
  private static Ratio sum(Ratio a, Ratio b) {
    if (a.isZero() || b.isZero()) {
      return a.isZero() ? b : a;
    }
    return a.pi() == b.pi()
        ? new Ratio(a.folded().fraction().add(b.folded().fraction()), a.pi(), 0)
        : Ratio.ofDecimal(a.toDouble() + b.toDouble());
  }

  private static Ratio coherent(Unit unit, Ratio number, Dimension dimension, Unit example)
      throws NotOne {
    if (unit.reciprocal() && number.isZero()) {
      throw new NotOne(expected(dimension, example) + ", not 0");
    }
    return unit.toCoherent(number);
  }

  private static Unit unit(String symbol, Dimension dimension, Unit example) throws NotOne {
    if (symbol.isEmpty()) {
      return Unit.ONE;
    }
    Unit unit = Unit.parse(symbol).orElse(null);
    if (unit == null || unit.dimension() != dimension) {
      throw new NotOne(expected(dimension, example));
    }
    return unit;
  }

  private static Ratio number(Matcher m, int group) throws NotOne {
    Ratio number = Ratio.of(new BigDecimal(m.group(group + 2)));
    if (m.group(group + 3) != null) {
      number =
          number.times(
              Ratio.of(BigDecimal.ONE.scaleByPowerOfTen(Integer.parseInt(m.group(group + 3)))));
    }
    if (m.group(group + 4) != null) {
      long below = Long.parseLong(m.group(group + 4));
      if (below == 0) {
        throw new NotOne("a fraction whose lower number is not 0");
      }
      number = number.over(below);
    }
    if (m.group(group + 1) != null) {
      number = new Ratio(number.fraction().add(Long.parseLong(m.group(group + 1))), 0, 0);
    }
    return m.group(group).equals("-") ? number.negate() : number;
  }

  private static String expected(Dimension dimension, Unit example) {
    String kind = dimension.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    return dimension == Dimension.NUMBER
        ? "a number"
        : "a " + kind + " with its unit, such as '2 " + example.symbol() + "'";
  }
}
