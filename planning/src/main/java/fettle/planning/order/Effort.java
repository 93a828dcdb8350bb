package fettle.planning.order;

/**
 * How long to search.
 *
 * @param steps work after which the search ends, in the solver's own measure, the same on every
 *     computer
 * @param seconds time after which it ends in any case [s]
 */
public record Effort(double steps, double seconds) {

  /** Enough for a book of a dozen changes. */
  public static final Effort ORDINARY = new Effort(60, 100);

  /** Refuses an effort that is no time. */
  public Effort {
    if (!(steps > 0) || !(seconds > 0)) {
      throw new IllegalArgumentException(
          "the time to search must lie above 0 s, found " + seconds + " s");
    }
  }
}
