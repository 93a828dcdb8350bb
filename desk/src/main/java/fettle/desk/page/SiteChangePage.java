package fettle.desk.page;

import java.util.List;

/**
 * One published change.
 *
 * @param frame what frames it
 * @param reason why
 * @param benefit what is gained
 * @param facts stage, hours and so on
 * @param needs changes that must come first
 * @param cautions what can hurt
 * @param picture the lathe with what is changed in blue
 * @param joint what it does to the lathe
 * @param workings the figures that move, with their workings; empty if they are held back
 * @param parts parts to make
 * @param purchases things to buy
 * @param steps the work
 * @param drawings its drawings
 * @param pack its pack
 */
public record SiteChangePage(
    SiteFrame frame,
    String reason,
    String benefit,
    List<String> facts,
    List<Shell.Link> needs,
    List<String> cautions,
    ElevationPage picture,
    JointPage joint,
    List<Worked> workings,
    List<ChangePage.Thing> parts,
    List<ChangePage.Thing> purchases,
    List<ChangePage.Thing> steps,
    List<Drawn> drawings,
    List<Shell.Link> pack) {

  /** A drawing: its number and title, what it is, its picture, and its files. */
  public record Drawn(
      String number, String title, String facts, String picture, List<Shell.Link> files) {}
}
