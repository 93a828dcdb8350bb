package fettle.mechanics.gears;

/**
 * What is doubtful or wrong about a gear or a pair, with the number and the limit.
 *
 * @param level how bad
 * @param text what, in one sentence
 */
public record Concern(Level level, String text) {

  /** How bad it is. */
  public enum Level {
    WARN,
    REFUSE
  }

  static Concern warn(String text) {
    return new Concern(Level.WARN, text);
  }

  static Concern refuse(String text) {
    return new Concern(Level.REFUSE, text);
  }
}
