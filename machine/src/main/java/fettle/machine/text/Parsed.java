package fettle.machine.text;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What was made of a text, and everything that is wrong with it.
 *
 * @param value the result; null if there is none
 * @param problems all problems, in the order of the text
 * @param <T> kind of result
 */
public record Parsed<T>(@Nullable T value, List<Problem> problems) {

  /** Keeps its own copy. */
  public Parsed {
    problems = List.copyOf(problems);
  }

  /** Returns a result without problems. */
  public static <T> Parsed<T> good(T value) {
    return new Parsed<>(value, List.of());
  }

  /** Returns problems without a result. */
  public static <T> Parsed<T> bad(List<Problem> problems) {
    return new Parsed<>(null, problems);
  }

  /** Returns the result, or throws what the caller supplies. */
  public <E extends RuntimeException> T orThrow(Supplier<E> failure) {
    if (value == null) {
      throw failure.get();
    }
    return value;
  }
}
