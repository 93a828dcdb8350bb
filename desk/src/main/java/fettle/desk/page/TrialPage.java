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
 * @param learned what it teaches of the lathe's values; empty if nothing
 * @param kept gaps and readings that stand out; none was dropped
 * @param notes what else should be known
 * @param cautions what can hurt somebody
 * @param values what its file says
 * @param leftOut what its file could say and does not
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
    Taught learned,
    List<String> kept,
    List<String> notes,
    List<String> cautions,
    List<MemberPage.ValueLine> values,
    List<MemberPage.ValueLine> leftOut) {

  /**
   * What a trial teaches.
   *
   * @param words what was found; empty if it is to teach nothing
   * @param values each value before and after
   * @param kept true if the correction is in use
   * @param offered true if it can be taken into use
   * @param href where the correction stands
   */
  public record Taught(
      String words, List<String> values, boolean kept, boolean offered, String href) {}

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
