package fettle.desk.web;

import fettle.desk.page.MemberPage;
import fettle.machine.dictionary.Row;
import fettle.machine.state.Change;
import fettle.machine.state.State;
import fettle.machine.text.MergePatch;
import fettle.machine.text.Node;
import java.util.List;
import java.util.Objects;

/** Lists values of the book, each with the place it stands in. */
final class ValueLines {

  private ValueLines() {}

  /** Returns the lathe's text with the changes of a state laid over it. */
  static Node tree(Visit visit, State state) {
    Node tree = visit.book().machine();
    for (String key : state.changes()) {
      Change change = Objects.requireNonNull(visit.book().changes().get(key));
      tree = MergePatch.apply(tree, change.differs());
    }
    return tree;
  }

  /** Returns the values that hold in a state under a path of the lathe's text. */
  static List<MemberPage.ValueLine> under(Visit visit, Chosen chosen, String path) {
    Node node = Spots.follow(tree(visit, chosen.state()), path);
    return node == null
        ? List.of()
        : visit.opened().spots().under(node).stream().map(s -> line(s, path, chosen)).toList();
  }

  /** Returns one value as a line; {@code within} is left out of its path. */
  static MemberPage.ValueLine line(Spot spot, String within, Chosen chosen) {
    String path = spot.within();
    String key = path.startsWith(within + ".") ? path.substring(within.length() + 1) : path;
    return new MemberPage.ValueLine(
        key.replace(".", " · "),
        spot.scalar().text(),
        spot.row().map(Row::meaning).orElse(""),
        spot.scalar().at().text(),
        Visit.value(spot, chosen),
        spot.file().startsWith("changes/"));
  }

  /** Returns the values that a block of a file, and what is within it, leaves out. */
  static List<MemberPage.ValueLine> leftOut(Visit visit, Chosen chosen, String file, String block) {
    return visit.opened().spots().leftOut(file, block).stream()
        .map(s -> leftOut(s, block, chosen))
        .toList();
  }

  private static MemberPage.ValueLine leftOut(Spot spot, String block, Chosen chosen) {
    String standard = spot.scalar().text();
    return new MemberPage.ValueLine(
        spot.path().substring(block.isEmpty() ? 0 : block.length() + 1).replace(".", " · "),
        standard.isEmpty() ? "not known" : standard,
        spot.row().map(Row::meaning).orElse(""),
        standard.isEmpty() ? "" : "the standard",
        Visit.value(spot, chosen),
        false);
  }
}
