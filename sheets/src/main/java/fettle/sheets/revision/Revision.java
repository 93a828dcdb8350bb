package fettle.sheets.revision;

/**
 * One issue of a sheet.
 *
 * @param sheet the sheet, as its path in the output folder without ending
 * @param index revision index: A, B, C … without I and O
 * @param date date of issue, ISO 8601
 * @param digest digest of everything the sheet shows
 */
public record Revision(String sheet, String index, String date, String digest) {

  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

  /** Returns the index of the first issue. */
  public static String first() {
    return LETTERS.substring(0, 1);
  }

  /** Returns the index that follows: after Z comes AA. */
  public static String after(String index) {
    int last = LETTERS.indexOf(index.charAt(index.length() - 1));
    String before = index.substring(0, index.length() - 1);
    if (last + 1 < LETTERS.length()) {
      return before + LETTERS.charAt(last + 1);
    }
    return (before.isEmpty() ? first() : after(before)) + first();
  }
}
