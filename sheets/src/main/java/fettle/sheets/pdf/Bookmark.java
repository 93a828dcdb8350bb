package fettle.sheets.pdf;

/**
 * A line of the outline beside the pages.
 *
 * @param title what is found there
 * @param page the page, from 0
 * @param rank whether it stands by itself
 */
public record Bookmark(String title, int page, Rank rank) {

  /** Whether a line stands by itself. */
  public enum Rank {
    CHAPTER,
    /** Belongs to the chapter before it. */
    WITHIN
  }
}
