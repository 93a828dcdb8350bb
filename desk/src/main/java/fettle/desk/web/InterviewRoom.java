package fettle.desk.web;

import fettle.desk.page.ElevationPage;
import fettle.desk.page.InterviewPage;
import fettle.desk.picture.Elevations;
import fettle.desk.picture.Stand;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Numbers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Asking for the owner's own lathe, one thing after another. What cannot be told yet stays with a
 * wide doubt, and the room says which of these is worth finding out first.
 */
final class InterviewRoom {

  private static final int SHOWN = 5;
  private static final double UNSURE = 0.25;

  private InterviewRoom() {}

  static InterviewPage page(Visit visit, List<String> problems) {
    List<Questions.Question> questions = Questions.of(visit.opened());
    int number = number(visit, questions.size());
    return number == 0
        ? list(visit, questions, problems)
        : one(visit, questions.get(number - 1), number, questions.size(), problems);
  }

  private static int number(Visit visit, int all) {
    String asked = visit.asked("n");
    int number = asked.matches("\\d{1,3}") ? Integer.parseInt(asked) : 0;
    return number <= all ? number : 0;
  }

  private static InterviewPage list(
      Visit visit, List<Questions.Question> questions, List<String> problems) {
    Map<String, InterviewPage.Line> lines = new LinkedHashMap<>();
    for (int i = 0; i < questions.size(); i++) {
      Spot spot = questions.get(i).spot();
      String vague = Roots.quantity(spot).filter(Unknowns::vague).isPresent() ? "not sure" : "";
      lines.put(
          spot.path(), new InterviewPage.Line(label(spot), spot.scalar().text(), vague, at(i + 1)));
    }
    List<InterviewPage.Line> first =
        unknowns(visit, questions).stream()
            .filter(u -> u.figures() > 0)
            .limit(SHOWN)
            .map(u -> first(u, lines.get(u.spot().path())))
            .toList();
    return new InterviewPage(
        frame(visit),
        0,
        questions.size(),
        "",
        "",
        "",
        null,
        null,
        "",
        problems,
        List.copyOf(lines.values()),
        first);
  }

  private static fettle.desk.page.Shell frame(Visit visit) {
    return visit.shell("your lathe", "lathe", bought(visit));
  }

  private static Chosen bought(Visit visit) {
    return Chosen.of(visit.opened(), "as-bought");
  }

  private static InterviewPage.Line first(
      Unknowns.Unknown unknown, InterviewPage.@org.jspecify.annotations.Nullable Line line) {
    String by = Numbers.significant(100 * unknown.share(), 2) + " %";
    String note =
        "moves "
            + unknown.figures()
            + (unknown.figures() == 1 ? " figure, '" : " figures, most of all '")
            + unknown.most()
            + "' by "
            + by;
    String href = line == null ? "/interview" : line.href();
    return new InterviewPage.Line(
        label(unknown.spot()), unknown.spot().scalar().text(), note, href);
  }

  private static List<Unknowns.Unknown> unknowns(Visit visit, List<Questions.Question> questions) {
    List<Spot> spots = questions.stream().map(Questions.Question::spot).toList();
    return visit.opened().once("unknowns", () -> Unknowns.of(visit.opened(), spots));
  }

  private static InterviewPage one(
      Visit visit, Questions.Question question, int number, int all, List<String> problems) {
    Spot spot = question.spot();
    String typed = visit.asks("v") ? visit.asked("v") : spot.scalar().text();
    return new InterviewPage(
        frame(visit),
        number,
        all,
        question.where(),
        question.how(),
        question.with(),
        picture(visit, spot),
        Fields.of(visit, spot, "v", typed),
        unsure(spot).map(text -> "Leave it at " + text).orElse(""),
        problems,
        List.of(),
        List.of());
  }

  /** Draws the lathe with the members picked out that the value is about. */
  private static ElevationPage picture(Visit visit, Spot spot) {
    Chosen chosen = bought(visit);
    Machine machine = LatheRoom.machine(visit, chosen);
    Map<String, String> styles = new LinkedHashMap<>();
    for (String name : about(machine, spot.path().split("\\.", -1))) {
      if (machine.members().containsKey(name)) {
        styles.put(name, "chosen");
      }
    }
    Stand stand = Stand.of(machine, Map.of());
    return Elevations.of(machine, stand, styles, m -> LatheRoom.member(m, chosen), visit.measure());
  }

  private static List<String> about(Machine machine, String[] path) {
    String name = path.length > 1 ? path[1] : "";
    Train train = machine.trains().get(name);
    return switch (path[0]) {
      case "members" -> List.of(name);
      case "trains" -> train == null ? List.of() : List.of(train.from(), train.to());
      case "dials" ->
          Optional.ofNullable(machine.dials().get(name))
              .map(d -> List.of(d.on()))
              .orElse(List.of());
      case "spindle" -> List.of("spindle", "headstock");
      case "drive" -> List.of("motor");
      default -> List.of();
    };
  }

  /** Returns the value as it stands with a wide doubt; empty if it is no measure. */
  private static Optional<String> unsure(Spot spot) {
    return Roots.quantity(spot)
        .filter(q -> q.value() != 0)
        .map(q -> written(q) + " ± " + doubt(q) + " " + q.unit().symbol());
  }

  private static String written(Quantity q) {
    return Numbers.significant(q.unit().fromCoherent(q.value()), 8) + " " + q.unit().symbol();
  }

  private static String doubt(Quantity q) {
    double wide = Math.max(q.doubt(), UNSURE * Math.abs(q.value()));
    return Numbers.significant(q.unit().fromCoherent(wide), 2);
  }

  /** Writes an answer, and goes to the next question. */
  static String answer(Visit visit, Shelf shelf) {
    List<Questions.Question> questions = Questions.of(visit.opened());
    int number = number(visit, questions.size());
    if (number == 0) {
      throw Refused.missing("There is no such question.", "Go on from the list.");
    }
    Spot spot = questions.get(number - 1).spot();
    String said = visit.asked("do");
    String text = said.equals("unsure") ? unsure(spot).orElse("") : visit.asked("v").strip();
    if (!text.isEmpty() && !text.equals(spot.scalar().text())) {
      ValuesRoom.save(visit, shelf, spot, text);
    }
    return number < questions.size() ? at(number + 1) : "/interview";
  }

  private static String at(int number) {
    return "/interview?n=" + number;
  }

  private static String label(Spot spot) {
    return spot.path().replace("elements.", "").replace(".", " · ");
  }
}
