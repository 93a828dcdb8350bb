package fettle.mechanics.base;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One line of a calculation: a formula, the numbers put in, the result. The result's doubt follows
 * from the doubts of the terms by the law of propagation (first order, root sum of squares).
 *
 * @param symbol what is computed
 * @param formula the formula in symbols
 * @param terms the numbers that go in
 * @param value the result, coherent unit
 * @param doubt half-width of the result at about 95 %, coherent unit
 * @param unit unit in which the result is shown
 */
public record Working(
    String symbol, String formula, List<Term> terms, double value, double doubt, Unit unit) {

  /**
   * Computes a value by its formula.
   *
   * @param symbol what is computed
   * @param unit unit in which the result is shown
   * @param formula the formula in the symbols of the terms
   * @param terms the numbers that go in
   */
  public static Working of(String symbol, Unit unit, String formula, Term... terms) {
    return of(symbol, unit, formula, List.of(terms));
  }

  /**
   * Computes a value by its formula.
   *
   * @param symbol what is computed
   * @param unit unit in which the result is shown
   * @param formula the formula in the symbols of the terms
   * @param terms the numbers that go in
   */
  public static Working of(String symbol, Unit unit, String formula, List<Term> terms) {
    Formula parsed = Formula.parse(formula);
    Map<String, Double> values = values(terms);
    double value = parsed.value(name -> lookup(values, name, formula));
    return new Working(
        symbol, formula, List.copyOf(terms), value, doubt(parsed, formula, terms, values), unit);
  }

  /**
   * Shows the working of a value that another method has computed; the two must agree to 1e-9, or
   * the program is wrong.
   *
   * @param symbol what is computed
   * @param value the computed value [coherent]
   * @param unit unit in which the result is shown
   * @param formula the formula in the symbols of the terms
   * @param terms the numbers that go in
   */
  public static Working check(
      String symbol, double value, Unit unit, String formula, Term... terms) {
    Working working = of(symbol, unit, formula, terms);
    double size = Math.max(Math.abs(value), Math.abs(working.value));
    boolean same =
        Math.abs(working.value - value) <= 1e-9 * size || Double.compare(value, working.value) == 0;
    if (!same) {
      throw new IllegalStateException(
          "working of " + symbol + " gives " + working.value + ", the method gave " + value);
    }
    return working;
  }

  /** Returns the formula with the numbers put in; it evaluates to {@link #shown()}. */
  public String numbers() {
    Map<String, String> put = new LinkedHashMap<>();
    for (Term term : terms) {
      put.put(term.symbol(), term.put());
    }
    String text = Formula.parse(formula).text(name -> put.getOrDefault(name, name));
    if (unit.isCoherent()) {
      return text;
    }
    String factor = unit.factor().formula();
    return unit.reciprocal()
        ? "(" + factor + ")/(" + text + ")"
        : "(" + text + ")/(" + factor + ")";
  }

  /**
   * Returns the result in the unit in which it is shown.
   *
   * @return the result [unit]
   */
  public double shown() {
    return unit.fromCoherent(value);
  }

  /** Returns the whole line: symbol, formula, numbers, result. */
  public String text() {
    String result = Numbers.significant(shown(), 7);
    String number = unit.symbol().isEmpty() ? result : result + " " + unit.symbol();
    return symbol + " = " + formula + " = " + numbers() + " = " + number;
  }

  private static double lookup(Map<String, Double> values, String name, String formula) {
    Double value = values.get(name);
    if (value == null) {
      throw new IllegalStateException("formula '" + formula + "' needs a term " + name);
    }
    return value;
  }

  private static Map<String, Double> values(List<Term> terms) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (Term term : terms) {
      values.put(term.symbol(), term.value());
    }
    return values;
  }

  /**
   * Returns what each doubtful term adds to the doubt of the result, with its sign: half the change
   * of the result when the term moves from one end of its doubt to the other.
   *
   * @return share of each term that has a doubt [coherent]
   */
  public Map<Term, Double> shares() {
    return shares(Formula.parse(formula), formula, terms, values(terms));
  }

  private static double doubt(
      Formula parsed, String formula, List<Term> terms, Map<String, Double> values) {
    double sum = 0;
    for (double share : shares(parsed, formula, terms, values).values()) {
      sum += share * share;
    }
    return Math.sqrt(sum);
  }

  private static Map<Term, Double> shares(
      Formula parsed, String formula, List<Term> terms, Map<String, Double> values) {
    Map<Term, Double> shares = new LinkedHashMap<>();
    for (Term term : terms) {
      if (term.doubt() > 0) {
        Map<String, Double> moved = new LinkedHashMap<>(values);
        moved.put(term.symbol(), term.value() + term.doubt());
        double up = parsed.value(name -> lookup(moved, name, formula));
        moved.put(term.symbol(), term.value() - term.doubt());
        double down = parsed.value(name -> lookup(moved, name, formula));
        shares.put(term, (up - down) / 2);
      }
    }
    return shares;
  }
}
