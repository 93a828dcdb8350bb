package fettle.mechanics.base;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a reckoner answers: values by name, the workings behind them, and cautions. If there is no
 * solution, {@code none} says why and what would help, and there are no values.
 *
 * @param values value of each result, in the order computed
 * @param workings lines of the calculation
 * @param cautions sentences that go with the result
 * @param none why there is no answer; null if there is one
 */
public record Answer(
    Map<String, Value> values,
    List<Working> workings,
    List<String> cautions,
    @Nullable String none) {

  /** A value of one result. */
  public sealed interface Value {
    /**
     * A number.
     *
     * @param coherent the value in the coherent unit
     */
    record Real(double coherent) implements Value {}

    /**
     * An exact number in the coherent unit.
     *
     * @param ratio the value
     */
    record Exact(Ratio ratio) implements Value {}

    /**
     * Several numbers.
     *
     * @param coherent the values in the coherent unit
     */
    record Several(List<Double> coherent) implements Value {}

    /**
     * A text.
     *
     * @param text the text
     */
    record Words(String text) implements Value {}

    /**
     * Several texts.
     *
     * @param lines the texts
     */
    record Lines(List<String> lines) implements Value {}
  }

  /** Keeps its own copies. */
  public Answer {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    workings = List.copyOf(workings);
    cautions = List.copyOf(cautions);
  }

  private static final Answer EMPTY = new Answer(Map.of(), List.of(), List.of(), null);

  /** Returns an answer with nothing in it yet. */
  public static Answer start() {
    return EMPTY;
  }

  /** Returns the answer that there is no solution, with the reason and the nearest thing. */
  public static Answer none(String reason) {
    return new Answer(Map.of(), List.of(), List.of(), reason);
  }

  /**
   * Returns this answer with one more number.
   *
   * @param name name of the result
   * @param value the value [coherent]
   */
  public Answer with(String name, double value) {
    return put(name, new Value.Real(value));
  }

  /** Returns this answer with one more exact number. */
  public Answer with(String name, Ratio value) {
    return put(name, new Value.Exact(value));
  }

  /** Returns this answer with one more text. */
  public Answer with(String name, String text) {
    return put(name, new Value.Words(text));
  }

  /**
   * Returns this answer with several numbers.
   *
   * @param name name of the result
   * @param values the values, in order [coherent]
   */
  public Answer with(String name, double[] values) {
    return put(name, new Value.Several(Arrays.stream(values).boxed().toList()));
  }

  /** Returns this answer with several texts. */
  public Answer with(String name, List<String> lines) {
    return put(name, new Value.Lines(List.copyOf(lines)));
  }

  /** Returns this answer with the value of a working and the working itself. */
  public Answer with(String name, Working working) {
    List<Working> more = new ArrayList<>(workings);
    more.add(working);
    Answer next = put(name, new Value.Real(working.value()));
    return new Answer(next.values, more, cautions, none);
  }

  /** Returns this answer with one more line of working. */
  public Answer showing(Working working) {
    List<Working> more = new ArrayList<>(workings);
    more.add(working);
    return new Answer(values, more, cautions, none);
  }

  /** Returns this answer with one more caution. */
  public Answer caution(String sentence) {
    List<String> more = new ArrayList<>(cautions);
    more.add(sentence);
    return new Answer(values, workings, more, none);
  }

  private Answer put(String name, Value value) {
    Map<String, Value> next = new LinkedHashMap<>(values);
    next.put(name, value);
    return new Answer(next, workings, cautions, none);
  }
}
