package fettle.machine.dictionary;

import fettle.mechanics.base.Unit;
import java.util.List;
import java.util.Optional;

/**
 * One key of the dictionary.
 *
 * @param shape the block it stands in, such as {@code member} or {@code seat/sliding}
 * @param key its name
 * @param type what it holds: a dimension, {@code count}, {@code text}, {@code flag}, {@code
 *     word:a|b}, {@code ref:members}, {@code shape:point}, {@code either:seat}, {@code
 *     map:shape:member}, {@code list:count}, {@code thread}, {@code fit}, {@code bearing}, {@code
 *     material} or {@code tree}
 * @param unit unit it is usually written in
 * @param standard value taken if it is not written; empty if there is none
 * @param low least value in that unit, if bounded
 * @param high greatest value in that unit, if bounded
 * @param required true if it must be written
 * @param meaning what it is, in the trade's words
 */
public record Row(
    String shape,
    String key,
    String type,
    Unit unit,
    String standard,
    Optional<Double> low,
    Optional<Double> high,
    boolean required,
    String meaning) {

  /** Returns what follows the first colon of the type. */
  public String inner() {
    return type.substring(type.indexOf(':') + 1);
  }

  /** Returns the words to choose from. */
  public List<String> words() {
    return List.of(inner().replaceFirst("^word:", "").split("\\|"));
  }
}
