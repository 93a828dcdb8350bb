package fettle.mechanics.base;

/**
 * One thing a reckoner answers.
 *
 * @param name name of the result
 * @param unit unit in which it is written; ONE for plain numbers and text
 * @param meaning what it is, in the trade's words
 */
public record Result(String name, Unit unit, String meaning) {}
