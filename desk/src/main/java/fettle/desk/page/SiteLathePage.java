package fettle.desk.page;

import java.util.List;

/**
 * The first page of a published book: the lathe as it stands.
 *
 * @param frame what frames it
 * @param about what the owner says of the lathe
 * @param state the changes that are on it, in words
 * @param picture the side elevation
 * @param keys a few figures
 * @param findings what wants attention, worst first
 * @param members the members
 * @param changes the changes that are on it
 */
public record SiteLathePage(
    SiteFrame frame,
    String about,
    String state,
    ElevationPage picture,
    List<Worked> keys,
    List<LathePage.Opening> findings,
    List<Member> members,
    List<Shell.Link> changes) {

  /** A member: where it stands on the page, its name, what it is, and short facts. */
  public record Member(String id, String name, String what, List<String> facts) {}
}
