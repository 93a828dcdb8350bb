package fettle.mechanics.base;

/**
 * A named number that goes into a working.
 *
 * @param symbol letter or word, as in the formula
 * @param value value in the coherent unit
 * @param unit unit in which it is shown
 * @param doubt half-width that holds the true value with about 95 % probability, coherent unit; 0
 *     for counts and definitions
 */
public record Term(String symbol, double value, Unit unit, double doubt) {

  /**
   * Returns a number that is known exactly, such as a tooth count.
   *
   * @param symbol letter or word
   * @param value its value [coherent]
   * @param unit unit in which it is shown
   */
  public static Term exact(String symbol, double value, Unit unit) {
    return new Term(symbol, value, unit, 0);
  }

  /**
   * Returns a plain number that is known exactly.
   *
   * @param symbol letter or word
   * @param value its value [-]
   */
  public static Term exact(String symbol, double value) {
    return new Term(symbol, value, Unit.ONE, 0);
  }

  /** Returns the result of a working as a term of the next one. */
  public static Term of(Working working) {
    return new Term(working.symbol(), working.value(), working.unit(), working.doubt());
  }

  /** Returns the number as it is put into a formula, e.g. {@code (20*pi/180)}. */
  String put() {
    if (unit.isCoherent()) {
      return Numbers.significant(value, 10);
    }
    String number = Numbers.significant(unit.fromCoherent(value), 10);
    String factor = unit.factor().formula();
    return unit.reciprocal()
        ? "(" + factor + "/" + number + ")"
        : "(" + number + "*" + factor + ")";
  }
}
