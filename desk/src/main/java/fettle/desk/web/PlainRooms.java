package fettle.desk.web;

import fettle.desk.page.ChangePage;
import fettle.desk.page.RoomPage;
import fettle.desk.page.Shell;
import fettle.machine.state.Change;
import java.util.List;
import java.util.function.BiFunction;

/** Rooms of plain words: what the book knows, or what went wrong. */
final class PlainRooms {

  private PlainRooms() {}

  static RoomPage parts(Visit visit) {
    return room(
        visit,
        "parts",
        "What the changes ask to be made.",
        "A part that has a recipe is drawn; its sheet lies in the pack of its change.",
        new Shell.Link("/packs", "Packs with all drawings"),
        ChangesRoom::parts);
  }

  private static RoomPage room(
      Visit visit,
      String key,
      String words,
      String why,
      Shell.Link next,
      BiFunction<Visit, Change, List<ChangePage.Thing>> known) {
    List<RoomPage.Known> things =
        visit.book().changes().values().stream()
            .map(
                c ->
                    new RoomPage.Known(
                        c.title(), "/change?key=" + Visit.coded(c.key()), known.apply(visit, c)))
            .filter(k -> !k.things().isEmpty())
            .toList();
    return new RoomPage(visit.shell(key, key), key, words, why, next, List.of(), things);
  }

  /** Says what went wrong and what to do next. */
  static RoomPage refused(Visit visit, Refused refused) {
    return new RoomPage(
        visit.plain("not done", ""),
        heading(refused.status()),
        refused.words(),
        refused.next(),
        new Shell.Link("/lathe", "To the lathe"),
        refused.problems().stream()
            .map(
                p ->
                    new RoomPage.Line(
                        p.at().text(),
                        p.text(),
                        visit
                            .opened()
                            .spots()
                            .at(p.at())
                            .map(
                                s ->
                                    "/value?file="
                                        + Visit.coded(s.file())
                                        + "&path="
                                        + Visit.coded(s.path()))
                            .orElse("")))
            .toList(),
        List.of());
  }

  private static String heading(int status) {
    return switch (status) {
      case 404 -> "Not there";
      case 409 -> "Changed meanwhile";
      case 413 -> "Too much";
      case 422 -> "The book needs mending";
      case 403 -> "Refused";
      case 500 -> "Not done";
      default -> "That cannot be taken";
    };
  }
}
