package fettle.mechanics.materials;

import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Source;

/**
 * One property of one material.
 *
 * @param value the value to reckon with [coherent unit of the property]
 * @param scatter range in which it is found [same]
 * @param source where it comes from
 */
public record Quantity(double value, Interval scatter, Source source) {

  /** Refuses a value outside its own scatter. */
  public Quantity {
    if (!scatter.contains(value)) {
      throw new IllegalArgumentException(
          "value " + value + " outside its scatter " + scatter.low() + " to " + scatter.high());
    }
  }

  /**
   * Half the width of the scatter.
   *
   * @return doubt [same]
   */
  public double doubt() {
    return scatter.width() / 2;
  }
}
