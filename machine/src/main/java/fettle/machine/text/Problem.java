package fettle.machine.text;

/**
 * Something wrong with what the owner wrote.
 *
 * @param at where
 * @param key path of the key, e.g. {@code members.saddle.seat.travel}
 * @param found what stands there
 * @param expected what was expected
 * @param remedy what to do about it; may be empty
 */
public record Problem(Place at, String key, String found, String expected, String remedy) {

  private static final int LONGEST = 80;

  /** Keeps what was found short enough to print. */
  public Problem {
    found = shortened(found);
    key = shortened(key);
  }

  /** Returns the problem in one line. */
  public String text() {
    return at.text()
        + ": "
        + (key.isEmpty() ? "" : key + ": ")
        + "found "
        + found
        + ", expected "
        + expected
        + (remedy.isEmpty() ? "" : ". " + remedy);
  }

  private static String shortened(String text) {
    String oneLine =
        text.codePoints()
            .map(c -> Character.isISOControl(c) ? ' ' : c)
            .limit(4L * LONGEST)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    return oneLine.length() > LONGEST ? oneLine.substring(0, LONGEST) + "…" : oneLine;
  }
}
