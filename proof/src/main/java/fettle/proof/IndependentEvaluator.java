package fettle.proof;

import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;

/** Evaluates the printed numbers of a working with a library that knows nothing of Fettle. */
public final class IndependentEvaluator {

  private static final Function LN =
      new Function("ln", 1) {
        @Override
        public double apply(double... a) {
          return Math.log(a[0]);
        }
      };
  private static final Function MIN =
      new Function("min", 2) {
        @Override
        public double apply(double... a) {
          return Math.min(a[0], a[1]);
        }
      };
  private static final Function MAX =
      new Function("max", 2) {
        @Override
        public double apply(double... a) {
          return Math.max(a[0], a[1]);
        }
      };

  private IndependentEvaluator() {}

  /**
   * Evaluates an expression.
   *
   * @param expression numbers, operators and functions
   * @return its value [as printed]
   */
  public static double value(String expression) {
    return new ExpressionBuilder(expression).functions(LN, MIN, MAX).build().evaluate();
  }

  /**
   * Tells whether an expression gives a value, to the ten digits its numbers are printed with.
   *
   * @param expression numbers, operators and functions
   * @param value the value that was printed with it [as printed]
   */
  public static boolean agrees(String expression, double value) {
    double again = value(expression);
    return Math.abs(again - value) <= 2e-8 * Math.max(Math.abs(again), Math.abs(value)) + 1e-12;
  }
}
