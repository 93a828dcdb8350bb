package fettle.desk.page;

import java.util.List;

/**
 * Drawings, packs, figures or trials of a published book.
 *
 * @param frame what frames it
 * @param intro what the page holds
 * @param figures figures by topic
 * @param drawings drawings by change
 * @param packs packs
 * @param trials trials
 */
public record SiteListPage(
    SiteFrame frame,
    String intro,
    List<Figures> figures,
    List<Drawings> drawings,
    List<Pack> packs,
    List<Trial> trials) {

  /** Figures of one topic. */
  public record Figures(String title, List<Worked> figures) {}

  /** Drawings of one change. */
  public record Drawings(String title, String href, List<SiteChangePage.Drawn> drawings) {}

  /** A pack: its title, what is in it, where it lies, and the change it is of. */
  public record Pack(String title, String facts, String href, String words, String change) {}

  /** A trial and its figures. */
  public record Trial(String what, String facts, List<Line> lines, List<String> cautions) {}

  /** A figure of a trial. */
  public record Line(
      String name, String value, String limit, ProofPage.Said verdict, String forecast) {}
}
