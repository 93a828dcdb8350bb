package fettle.mechanics.motion;

/**
 * Two solids that move against each other.
 *
 * @param first name of the one
 * @param second name of the other
 * @param a way from the member both stand on to the one
 * @param b way from the same member to the other
 */
public record Pair(String first, String second, Chain a, Chain b) {

  /** Returns both names. */
  public String name() {
    return first + " x " + second;
  }
}
