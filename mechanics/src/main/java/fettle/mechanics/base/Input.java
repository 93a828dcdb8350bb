package fettle.mechanics.base;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing a reckoner asks for.
 *
 * @param name how it is given, {@code name=value}
 * @param kind what is expected
 * @param unit unit of a number written without one
 * @param meaning what it is, in the trade's words
 * @param standard value taken when it is not given; null if there is none
 * @param required true if the reckoner cannot do without it
 * @param choices the words to choose from; empty unless the kind is CHOICE
 */
public record Input(
    String name,
    Kind kind,
    Unit unit,
    String meaning,
    @Nullable String standard,
    boolean required,
    List<String> choices) {

  /** What an input may be. */
  public enum Kind {
    /** A number with a unit. */
    NUMBER,
    /** A whole number. */
    COUNT,
    /** An exact number: whole, decimal or fraction, or with {@code pi}. */
    EXACT,
    /** Free text, such as a designation. */
    TEXT,
    /** One of several words. */
    CHOICE,
    /** Numbers separated by commas. */
    NUMBERS,
    /** Rows of numbers: commas within a row, semicolons between rows. */
    ROWS,
    /** Exact numbers separated by commas. */
    EXACTS,
    /** Words separated by commas. */
    WORDS
  }
}
