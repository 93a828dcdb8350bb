package fettle.desk.page;

import java.util.List;

/**
 * What is known of one member.
 *
 * @param frame what frames it
 * @param name its name
 * @param what what it is
 * @param seat how it sits, in words
 * @param picture the lathe with the member picked out
 * @param values what the book says of it
 * @param leftOut what the book could say of it and does not
 * @param cells figures that speak of it
 * @param carries members that sit on it
 * @param whatIf where its values can be dragged
 */
public record MemberPage(
    Shell frame,
    String name,
    String what,
    String seat,
    ElevationPage picture,
    List<ValueLine> values,
    List<ValueLine> leftOut,
    List<Cell> cells,
    List<Shell.Link> carries,
    List<Shell.Link> whatIf) {

  /** One value of the book: its key, its text, what it means, where it stands, where it opens. */
  public record ValueLine(
      String key, String text, String meaning, String place, String href, boolean planned) {}
}
