package fettle.machine.trials;

import fettle.machine.dictionary.Values;

/**
 * A trial as the book describes it, with its readings.
 *
 * @param name its file name without ending
 * @param kind how the lathe is tested
 * @param values everything its file says
 * @param instrument the instrument, as shop.yaml describes it
 * @param readings the readings
 */
public record Trial(String name, Kind kind, Values values, Values instrument, Readings readings) {

  /**
   * Returns a length or other quantity that is given or has a standard value, 0 if neither.
   *
   * @return value [coherent]
   */
  double given(String key) {
    return values.quantity(key).map(q -> q.value()).orElse(0.0);
  }

  /**
   * Returns the standard uncertainty that the instrument adds to a difference of two readings.
   *
   * @return half its doubt, in the unit of the readings [coherent]
   */
  double instrumentDoubt() {
    return kind.doubt().isEmpty() ? 0 : instrument.need(kind.doubt()).value() / 2;
  }

  /**
   * Returns the largest lag of the pointer when the motion turns round.
   *
   * @return retrace, the doubt if none is stated [mm]
   */
  double retrace() {
    return instrument.quantity("retrace").map(q -> q.value()).orElse(2 * instrumentDoubt());
  }

  /**
   * Returns the standard uncertainty of one reading from the smallest step read.
   *
   * @return step over the root of 12, 0 if the step is not stated [mm]
   */
  double stepDoubt() {
    return instrument.quantity("resolution").map(q -> q.value()).orElse(0.0) / Math.sqrt(12);
  }
}
