package fettle.desk.page;

import java.util.List;

/**
 * The trials of a book.
 *
 * @param frame what frames it
 * @param trials the trials
 * @param problems what keeps them from being read
 */
public record ProofPage(Shell frame, List<Line> trials, List<RoomPage.Line> problems) {

  /**
   * One trial.
   *
   * @param name its name
   * @param what what was tested
   * @param facts date, instrument, number of readings
   * @param href where it opens
   * @param readings where its readings are taken
   * @param verdicts its verdicts
   * @param gaps how many readings are missing
   */
  public record Line(
      String name,
      String what,
      String facts,
      String href,
      String readings,
      List<Said> verdicts,
      int gaps) {}

  /** A verdict: rank good, stop or caution, the words, and what it is about. */
  public record Said(String rank, String words, String figure) {}
}
