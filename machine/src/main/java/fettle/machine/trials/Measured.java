package fettle.machine.trials;

import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.UncertaintyBudget;

/**
 * One figure that a trial gives.
 *
 * @param name what it is, e.g. {@code reversal}
 * @param value its value [coherent]
 * @param budget the causes of its uncertainty
 * @param unit unit in which it is shown
 * @param signed true if it may be negative
 * @param length length it belongs to; 0 if none [mm]
 * @param taken how many readings it rests on that could be repeated
 * @param repeat what would be repeated, in the plural, e.g. {@code runs}
 * @param adjust what to adjust and by how much; may be empty
 * @param source where its formula comes from
 */
public record Measured(
    String name,
    double value,
    UncertaintyBudget budget,
    Unit unit,
    boolean signed,
    double length,
    int taken,
    String repeat,
    String adjust,
    Source source) {

  private static final double CONFIDENCE = 0.95;

  /** Refuses what is not a number. */
  public Measured {
    if (!Double.isFinite(value) || !Double.isFinite(budget.combined())) {
      throw new IllegalArgumentException(
          name + ": the readings give no number; look for readings that are all alike");
    }
  }

  /**
   * Returns the standard uncertainty.
   *
   * @return standard uncertainty [coherent]
   */
  public double standard() {
    return budget.combined();
  }

  /**
   * Returns the expanded uncertainty at 95 %.
   *
   * @return half-width [coherent]
   */
  public double expanded() {
    return budget.expanded(CONFIDENCE);
  }

  /**
   * Returns the coverage factor at 95 %.
   *
   * @return coverage factor k [-]
   */
  public double coverage() {
    return budget.coverage(CONFIDENCE);
  }
}
