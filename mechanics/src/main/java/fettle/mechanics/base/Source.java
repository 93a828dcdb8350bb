package fettle.mechanics.base;

/**
 * Where a formula, a limit or a value comes from.
 *
 * @param document standard with edition, or book with edition, e.g. {@code ISO 21771:2007}
 * @param place clause, table or page; empty if the document is cited whole
 * @param basis how the statement was obtained
 */
public record Source(String document, String place, Basis basis) {

  /** How a statement from outside was obtained. */
  public enum Basis {
    /** A page that states it was read. */
    PAGE("seen on a page"),
    /** Recalled; no page was seen. */
    MEMORY("from memory"),
    /** Derived here from definitions. */
    COMPUTED("derived"),
    /** Custom of the trade without a published source. */
    COMMON_PRACTICE("common practice");

    private final String words;

    Basis(String words) {
      this.words = words;
    }

    /** Returns the basis in words. */
    public String words() {
      return words;
    }
  }

  /** Returns a source that was seen on a page. */
  public static Source page(String document, String place) {
    return new Source(document, place, Basis.PAGE);
  }

  /** Returns a source cited from memory. */
  public static Source memory(String document, String place) {
    return new Source(document, place, Basis.MEMORY);
  }

  /** Returns a source that is a derivation from definitions. */
  public static Source derived(String what) {
    return new Source(what, "", Basis.COMPUTED);
  }

  /** Returns a source that is custom of the trade. */
  public static Source practice(String what) {
    return new Source(what, "", Basis.COMMON_PRACTICE);
  }

  /** Returns document, place and basis in one line. */
  public String text() {
    return document + (place.isEmpty() ? "" : ", " + place) + " (" + basis.words() + ")";
  }
}
