package fettle.machine.trials;

import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Outliers;
import fettle.mechanics.metrology.Sample;
import java.util.List;

/** Values that stand out of their like; they are shown, never dropped. */
final class Odd {

  /** Three steps of the reading, as many standard uncertainties of a step. */
  private static final double STEPS = 3 * Math.sqrt(12);

  private Odd() {}

  static void of(List<Double> values, String what, List<Integer> numbers, Draft draft) {
    of(values, Unit.MICRON, what, numbers, draft);
  }

  static void of(List<Double> values, Unit unit, String what, List<Integer> numbers, Draft draft) {
    if (values.size() < 3 || numbers.size() != values.size()) {
      return;
    }
    Sample sample = Sample.of(values.stream().mapToDouble(Double::doubleValue).toArray());
    Outliers.Grubbs grubbs = Outliers.grubbs(sample, 0.05, Outliers.Side.BOTH);
    double off = Math.abs(values.get(grubbs.index()) - sample.median());
    if (off > STEPS * draft.trial().stepDoubt() && grubbs.isOutlier()) {
      draft.outliers.add(
          what
              + " "
              + numbers.get(grubbs.index())
              + ": "
              + shown(values.get(grubbs.index()), unit)
              + ", the others about "
              + shown(sample.median(), unit));
    }
  }

  private static String shown(double value, Unit unit) {
    return Numbers.significant(unit.fromCoherent(value), 4) + " " + unit.symbol();
  }
}
