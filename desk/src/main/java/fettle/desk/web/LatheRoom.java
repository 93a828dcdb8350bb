package fettle.desk.web;

import fettle.desk.page.Cell;
import fettle.desk.page.ElevationPage;
import fettle.desk.page.LathePage;
import fettle.desk.page.MemberPage;
import fettle.desk.page.Shell;
import fettle.desk.picture.Elevations;
import fettle.desk.picture.Stand;
import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Seat;
import fettle.machine.state.Change;
import fettle.machine.state.Stage;
import fettle.machine.text.Nearest;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Finding;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The lathe page and the page of each member. */
final class LatheRoom {

  private static final int MOST_KEYS = 8;
  private static final List<String> KEY_TOPICS = List.of("capacity", "speeds", "travel");

  private LatheRoom() {}

  static LathePage lathe(Visit visit) {
    Chosen chosen = visit.chosen();
    Forecast forecast = visit.opened().forecast(chosen.state(), chosen.state());
    List<Figure> figures = forecast.rows().stream().map(Row::figure).toList();
    List<Finding> findings = forecast.staying();
    return new LathePage(
        visit.shell("the lathe", "lathe", chosen),
        choices(visit, chosen),
        picture(visit, chosen, Map.of()),
        sliders(visit, chosen),
        keys(figures).stream().map(f -> visit.cell(f, chosen)).toList(),
        Joints.openings(findings, chosen, visit.measure()),
        verdict(findings),
        sections(visit, figures, chosen),
        machine(visit, chosen).members().keySet().stream()
            .map(m -> new Shell.Link(member(m, chosen), m))
            .toList(),
        Closer.links(machine(visit, chosen), chosen));
  }

  static Machine machine(Visit visit, Chosen chosen) {
    visit.book();
    return chosen.state().machine().orElseThrow(() -> Refused.unsound(chosen.state().problems()));
  }

  /** Draws the lathe of a state; what differs from the lathe as it stands is marked as planned. */
  static ElevationPage picture(Visit visit, Chosen chosen, Map<String, String> styles) {
    Machine machine = machine(visit, chosen);
    Map<String, String> all = new LinkedHashMap<>();
    Chosen standing = Chosen.of(visit.opened(), Chosen.STANDING);
    standing
        .state()
        .machine()
        .ifPresent(m -> Elevations.differing(m, machine).forEach(n -> all.put(n, "planned")));
    all.putAll(styles);
    Stand stand = Stand.of(machine, positions(visit, machine));
    return Elevations.of(machine, stand, all, m -> member(m, chosen), visit.measure());
  }

  static Map<String, Double> positions(Visit visit, Machine machine) {
    Map<String, Double> positions = new LinkedHashMap<>();
    for (String name : machine.members().keySet()) {
      String wish = visit.asked("at." + name);
      if (wish.matches("-?\\d{1,6}(\\.\\d{1,6})?")) {
        positions.put(name, Double.valueOf(wish));
      }
    }
    return positions;
  }

  static String member(String name, Chosen chosen) {
    return "/member?name=" + Visit.coded(name) + "&" + Visit.query(chosen);
  }

  private static String axis(Member member) {
    return member.seat() instanceof Seat.Sliding s ? s.axis().name() : "";
  }

  private static List<LathePage.Slider> sliders(Visit visit, Chosen chosen) {
    Machine machine = machine(visit, chosen);
    Stand stand = Stand.of(machine, positions(visit, machine));
    List<LathePage.Slider> sliders = new ArrayList<>();
    stand
        .positions()
        .forEach(
            (name, at) -> {
              Member member = machine.member(name);
              boolean slides = member.seat() instanceof Seat.Sliding;
              Unit unit = visit.measure().shown(Unit.MM);
              sliders.add(
                  new LathePage.Slider(
                      "at." + name,
                      name,
                      axis(member),
                      Math.round(Stand.most(member)),
                      Math.round(at),
                      slides ? unit.factor().toDouble() : 1,
                      slides ? unit.symbol() : "°"));
            });
    return sliders;
  }

  static List<LathePage.Choice> choices(Visit visit, Chosen chosen) {
    List<LathePage.Choice> choices = new ArrayList<>();
    Map<String, String> words = new LinkedHashMap<>();
    words.put("as-bought", "as bought");
    words.put(Chosen.STANDING, "as it stands");
    words.put("as-planned", "as planned");
    words.put("everything", "with every change");
    words.forEach(
        (word, text) ->
            choices.add(new LathePage.Choice(text, word, "", word.equals(chosen.word()))));
    for (Change change : visit.book().changes().values()) {
      if (change.stage() != Stage.DROPPED) {
        choices.add(
            new LathePage.Choice(
                change.title(),
                "+" + change.key(),
                change.stage().word(),
                chosen.state().changes().contains(change.key())));
      }
    }
    return choices;
  }

  /** Chooses what a title block would show: a few figures of the topics that name the lathe. */
  static List<Figure> keys(List<Figure> figures) {
    List<Figure> keys = new ArrayList<>();
    for (String topic : KEY_TOPICS) {
      figures.stream()
          .filter(f -> f.topic().equals(topic) && f.working().isPresent())
          .limit(topic.equals("travel") ? MOST_KEYS : 3)
          .forEach(keys::add);
    }
    return keys.subList(0, Math.min(MOST_KEYS, keys.size()));
  }

  static String verdict(List<Finding> findings) {
    Map<Finding.Rank, Integer> counts = new LinkedHashMap<>();
    for (Finding.Rank rank : Finding.Rank.values()) {
      counts.put(rank, (int) findings.stream().filter(f -> f.rank() == rank).count());
    }
    return counts.getOrDefault(Finding.Rank.STOP, 0)
        + " stop, "
        + counts.getOrDefault(Finding.Rank.CAUTION, 0)
        + " caution, "
        + counts.getOrDefault(Finding.Rank.NOTE, 0)
        + " note";
  }

  private static List<LathePage.Section> sections(
      Visit visit, List<Figure> figures, Chosen chosen) {
    Map<String, List<Cell>> byTopic = new LinkedHashMap<>();
    for (Figure figure : figures) {
      byTopic
          .computeIfAbsent(figure.topic(), t -> new ArrayList<>())
          .add(visit.cell(figure, chosen));
    }
    return byTopic.entrySet().stream()
        .map(e -> new LathePage.Section(e.getKey(), e.getValue()))
        .toList();
  }

  static MemberPage member(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = machine(visit, chosen);
    String name = visit.asked("name");
    Member member = machine.members().get(name);
    if (member == null) {
      throw Refused.missing(
          "This lathe has no such member in the state " + chosen.words() + ".",
          Nearest.hint(name, machine.members().keySet()) + " Choose a member on the picture.");
    }
    Forecast forecast = visit.opened().forecast(chosen.state(), chosen.state());
    Set<String> about = Roots.subjects(machine, name);
    return new MemberPage(
        visit.shell(name, "lathe", chosen),
        name,
        member.values().text("what").orElse(""),
        seat(member.seat()),
        picture(visit, chosen, Map.of(name, "chosen")),
        ValueLines.under(visit, chosen, "members." + name),
        ValueLines.leftOut(visit, chosen, "machine.yaml", "members." + name),
        forecast.rows().stream()
            .map(Row::figure)
            .filter(f -> about.contains(f.subject()))
            .map(f -> visit.cell(f, chosen))
            .toList(),
        machine.members().values().stream()
            .filter(m -> m.seat().on().filter(name::equals).isPresent())
            .map(m -> new Shell.Link(member(m.name(), chosen), m.name()))
            .toList(),
        ValuesRoom.whatIf(machine, about, chosen));
  }

  private static String seat(Seat seat) {
    String on = seat.on().orElse("");
    if (seat instanceof Seat.Sliding s) {
      return "slides " + s.travel().value() + " mm along " + s.axis() + " on the " + on;
    } else if (seat instanceof Seat.Turning t) {
      return "turns about " + t.axis() + " in the " + on;
    } else if (seat instanceof Seat.Bolted) {
      return "bolted to the " + on;
    }
    return "everything stands on it";
  }
}
