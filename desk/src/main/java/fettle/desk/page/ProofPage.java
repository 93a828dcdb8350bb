package fettle.desk.page;

import java.util.List;

/**
 * The trials of a book.
 *
 * @param frame what frames it
 * @param trials the trials
 * @param waiting trials whose readings are still to be taken
 * @param met how the forecast is met by all together; empty if nothing is foretold
 * @param steps what to adjust, in order
 * @param left what is left of each figure afterwards
 * @param notes what to know while adjusting
 * @param problems what keeps them from being read
 */
public record ProofPage(
    Shell frame,
    List<Line> trials,
    List<Waiting> waiting,
    String met,
    List<Step> steps,
    List<Left> left,
    List<String> notes,
    List<RoomPage.Line> problems) {

  /** A trial that says nothing yet: its name, how far its readings are, where they are taken. */
  public record Waiting(String name, String words, String readings) {}

  /** One move: what, and how far and which way. */
  public record Step(String adjuster, String words) {}

  /** A figure before and after the moves, its limit, and how surely it is kept then. */
  public record Left(
      String figure, String before, String after, String limit, String was, String kept, Bar bar) {}

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
