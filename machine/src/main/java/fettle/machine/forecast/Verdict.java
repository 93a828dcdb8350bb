package fettle.machine.forecast;

/** What became of a figure. */
public enum Verdict {
  BETTER("better"),
  WORSE("worse"),
  /** It moved, and neither way is better. */
  DIFFERENT("different"),
  /** It moved by less than its doubt. */
  WITHIN_DOUBT("within its doubt"),
  SAME("same"),
  NEW("new"),
  GONE("gone");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /** Returns the verdict in words. */
  public String words() {
    return words;
  }
}
