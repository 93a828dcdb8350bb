package fettle.desk.page;

import java.util.List;

/**
 * What one trial says.
 *
 * @param frame what frames it
 * @param name its name
 * @param what what was tested
 * @param facts date, instrument, number of readings
 * @param readings where its readings are taken
 * @param lines its figures
 * @param plots its drawings
 * @param corrections correction table, place and what to add
 * @param kept gaps and readings that stand out; none was dropped
 * @param notes what else should be known
 * @param cautions what can hurt somebody
 */
public record TrialPage(
    Shell frame,
    String name,
    String what,
    String facts,
    String readings,
    List<Line> lines,
    List<Plot> plots,
    List<Correction> corrections,
    List<String> kept,
    List<String> notes,
    List<String> cautions) {

  /**
   * One figure.
   *
   * @param name what it is
   * @param amount the figure
   * @param verdict its verdict
   * @param limit the limit and its source; empty if there is none
   * @param settle what would settle it; empty if it is settled
   * @param adjust what to adjust; empty if nothing
   * @param forecast how it meets the forecast; empty if it is not foretold
   * @param bar limit and figure on one scale
   * @param causes the causes of its uncertainty, largest first
   * @param source where its formula comes from
   */
  public record Line(
      String name,
      Amount amount,
      ProofPage.Said verdict,
      String limit,
      String settle,
      String adjust,
      String forecast,
      Bar bar,
      List<String> causes,
      String source) {}

  /** A place on the dial and what to add there. */
  public record Correction(String place, String add) {}
}
