package fettle.desk.web;

import fettle.machine.text.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What is asked of somebody who describes a lathe, in the order one finds it on the machine. A star
 * in a place stands for any name.
 */
final class Questions {

  private static final List<Kind> KINDS = read();

  private Questions() {}

  private record Kind(Pattern place, String where, String how, String with) {}

  /**
   * A question.
   *
   * @param spot the value it asks for
   * @param where the part of the lathe
   * @param how how to find out
   * @param with what to measure with
   */
  record Question(Spot spot, String where, String how, String with) {}

  /** Returns the questions that the book's own lathe has room for, in order. */
  static List<Question> of(Opened opened) {
    Node tree = opened.book().machine();
    List<Spot> spots = opened.spots().under(tree);
    List<Question> questions = new ArrayList<>();
    for (Kind kind : KINDS) {
      for (Spot spot : spots) {
        if (spot.file().equals("machine.yaml") && kind.place().matcher(spot.path()).matches()) {
          questions.add(new Question(spot, kind.where(), kind.how(), kind.with()));
        }
      }
    }
    return List.copyOf(questions);
  }

  private static List<Kind> read() {
    List<Kind> kinds = new ArrayList<>();
    for (String line : Assets.text("questions.tsv").lines().skip(1).toList()) {
      List<String> cells = List.of(line.split("\t", -1));
      String pattern = Pattern.quote(cells.get(0)).replace("*", "\\E[^.]+\\Q");
      kinds.add(new Kind(Pattern.compile(pattern), cells.get(1), cells.get(2), cells.get(3)));
    }
    return List.copyOf(kinds);
  }
}
