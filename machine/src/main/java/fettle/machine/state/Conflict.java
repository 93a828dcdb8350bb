package fettle.machine.state;

/**
 * Two changes that alter the same thing differently.
 *
 * @param path the key both alter
 * @param first the change applied first
 * @param second the change that has the last word
 */
public record Conflict(String path, String first, String second) {}
