package fettle.sheets.page;

import fettle.machine.dictionary.Values;
import fettle.machine.state.Book;
import fettle.machine.text.Node;
import java.util.Optional;

/**
 * What stands in the title block besides the part's own heading (ISO 7200).
 *
 * @param owner legal owner
 * @param department responsible department
 * @param reference technical reference
 * @param creator who made it
 * @param approval who approved it
 * @param status document status
 * @param revision revision index, empty for none
 * @param date date of issue, ISO 8601
 * @param language language code
 * @param licence licence line, empty for none
 * @param angle method of projection
 */
public record Heads(
    String owner,
    String department,
    String reference,
    String creator,
    String approval,
    String status,
    String revision,
    String date,
    String language,
    String licence,
    Projection angle) {

  private static final int LONGEST_REFERENCE = 20;

  /** Method of projection (ISO 5456-2). */
  public enum Projection {
    FIRST,
    THIRD
  }

  /** Returns heads for a workshop of one person. */
  public static Heads of(String owner, String date) {
    return new Heads(
        owner, "Workshop", owner, owner, owner, "Released", "", date, "en", "", Projection.FIRST);
  }

  /** Returns the heads of a book, as its shop.yaml says them. */
  public static Heads of(Book book, String date) {
    Optional<Values> shop = book.shop();
    boolean third = shop.flatMap(s -> s.text("projection")).orElse("first").equals("third");
    String by = shop.flatMap(s -> s.text("drawn by")).orElse("Owner");
    return new Heads(
        shop.flatMap(s -> s.text("owner")).orElse("Owner of the book"),
        "Workshop",
        lathe(book),
        by,
        by,
        "Released",
        "",
        date,
        "en",
        shop.flatMap(s -> s.text("licence")).orElse(""),
        third ? Projection.THIRD : Projection.FIRST);
  }

  /** Returns the name of the lathe, if the field of the title block holds it. */
  private static String lathe(Book book) {
    if (book.machine() instanceof Node.Mapping machine) {
      Node.Entry entry = machine.entries().get("name");
      if (entry != null
          && entry.value() instanceof Node.Scalar name
          && name.text().length() <= LONGEST_REFERENCE) {
        return name.text();
      }
    }
    return "-";
  }

  /** Returns these heads with a revision. */
  public Heads revised(String index, String on) {
    return new Heads(
        owner,
        department,
        reference,
        creator,
        approval,
        status,
        index,
        on,
        language,
        licence,
        angle);
  }
}
