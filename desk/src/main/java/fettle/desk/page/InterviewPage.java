package fettle.desk.page;

import java.util.List;

/**
 * One question about the owner's lathe, or the list of all.
 *
 * @param frame what frames it
 * @param number which question it is, from 1; 0 for the list
 * @param all how many there are
 * @param where what part of the lathe it is about
 * @param how how to find out
 * @param with what to measure with
 * @param picture the lathe with that part picked out; null for the list
 * @param field the value; null for the list
 * @param doubtful what to call the answer "not sure"; empty if it cannot be given
 * @param problems what is wrong with what was typed
 * @param lines every question with what the book says now
 * @param first the unknowns that matter most, worst first
 */
public record InterviewPage(
    Shell frame,
    int number,
    int all,
    String where,
    String how,
    String with,
    @org.jspecify.annotations.Nullable ElevationPage picture,
    ValuePage.@org.jspecify.annotations.Nullable Field field,
    String doubtful,
    List<String> problems,
    List<Line> lines,
    List<Line> first) {

  /** A question in short: what it is about, what the book says now, a remark, where it is asked. */
  public record Line(String label, String text, String note, String href) {}
}
