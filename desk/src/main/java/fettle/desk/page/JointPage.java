package fettle.desk.page;

import java.util.List;

/**
 * A forecast with bars.
 *
 * @param before the first state, in words
 * @param after the second state, in words
 * @param lines figures that moved
 * @param news new findings, worst first
 * @param gone findings that are settled
 * @param staying how many findings stay
 * @param hidden how many figures stay as they are
 * @param summary one line for those who listen
 */
public record JointPage(
    String before,
    String after,
    List<Line> lines,
    List<LathePage.Opening> news,
    List<LathePage.Opening> gone,
    int staying,
    int hidden,
    String summary) {

  /** A figure that moved. */
  public record Line(
      String topic,
      String subject,
      String name,
      String before,
      String after,
      String difference,
      String verdict,
      Bar bar,
      String href) {}
}
