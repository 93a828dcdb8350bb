package fettle.sheets.page;

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

  /** Returns these heads with a licence line and a method of projection. */
  public Heads with(String licenceLine, Projection projection) {
    return new Heads(
        owner,
        department,
        reference,
        creator,
        approval,
        status,
        revision,
        date,
        language,
        licenceLine,
        projection);
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
