package fettle.desk.page;

import java.util.List;

/**
 * One change.
 *
 * @param frame what frames it
 * @param key its key
 * @param title what is changed
 * @param facts why, benefit, stage, hours and so on
 * @param needs changes that must come first
 * @param enables changes that become possible
 * @param joint what it does to the lathe
 * @param picture the lathe with what is changed in blue
 * @param differs the values that differ
 * @param parts parts to make
 * @param purchases things to buy
 * @param steps the work
 * @param cautions what can hurt
 */
public record ChangePage(
    Shell frame,
    String key,
    String title,
    List<MemberPage.ValueLine> facts,
    List<Shell.Link> needs,
    List<String> enables,
    JointPage joint,
    ElevationPage picture,
    List<MemberPage.ValueLine> differs,
    List<Thing> parts,
    List<Thing> purchases,
    List<Thing> steps,
    List<String> cautions) {

  /** A part, a purchase or a step: its name, what it is, and the rest in short facts. */
  public record Thing(String name, String what, List<String> facts) {}
}
