package fettle.desk.web;

import fettle.desk.page.EnginePage;
import fettle.desk.page.Shell;
import fettle.desk.picture.TrainPicture;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.Nearest;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The page of one train: its gears to scale and turning, and what a turn brings. */
final class TrainRoom {

  private static final double TURN = 360;

  private TrainRoom() {}

  static EnginePage page(Visit visit) {
    Chosen chosen = visit.chosen();
    Machine machine = LatheRoom.machine(visit, chosen);
    Train train = train(visit, machine);
    List<String> steps = List.copyOf(train.factors().keySet());
    String step = Closer.oneOf(visit, "step", steps);
    Map<String, String> kept = new LinkedHashMap<>();
    kept.put("name", train.name());
    if (!step.isEmpty()) {
      kept.put("step", step);
    }
    List<EnginePage.Section> sections = new ArrayList<>();
    sections.add(Closer.orReason("", "picture", () -> drawn(visit, train, steps, step)));
    sections.add(
        Closer.section(
            "What it brings",
            "figures",
            Closer.cells(visit, chosen, f -> f.subject().equals(train.name())),
            Closer.findings(visit, chosen, f -> f.figure().contains("/" + train.name() + "/"))));
    sections.add(ratios(train, step));
    List<Shell.Link> onward =
        new ArrayList<>(ValuesRoom.whatIf(machine, Set.of(train.name()), chosen));
    onward.addAll(Closer.links(machine, chosen));
    sections.add(Closer.section("Look closer", "more", new EnginePage.Links(onward)));
    return Closer.page(visit, chosen, train.name(), "/train", kept, lead(train, step), sections);
  }

  static Train train(Visit visit, Machine machine) {
    String name = visit.asked("name");
    Train train =
        name.isEmpty() && !machine.trains().isEmpty()
            ? machine.trains().values().iterator().next()
            : machine.trains().get(name);
    if (train == null) {
      throw Refused.missing(
          "This lathe has no such train in the state looked at.",
          Nearest.hint(name, machine.trains().keySet()) + " Choose one from the lathe's page.");
    }
    return train;
  }

  private static Ratio factor(Train train, String step) {
    return train.factors().getOrDefault(step, train.factor());
  }

  private static String lead(Train train, String step) {
    Ratio factor = factor(train, step);
    String brought =
        train.linear()
            ? "moves the " + train.to() + " " + mm(factor)
            : "turns the "
                + train.to()
                + " "
                + Numbers.significant(factor.toDouble(), 5)
                + " times";
    return "One turn of the " + train.from() + " " + brought + ".";
  }

  private static String mm(Ratio ratio) {
    return Numbers.significant(ratio.toDouble(), 6) + " mm";
  }

  private static EnginePage.Section drawn(
      Visit visit, Train train, List<String> steps, String step) {
    long degrees = Closer.turned(visit);
    TrainPicture.Drawn drawn = TrainPicture.of(train, step, degrees / TURN);
    List<EnginePage.Block> blocks = new ArrayList<>();
    if (steps.size() > 1) {
      blocks.add(
          new EnginePage.Form(
              "/train",
              false,
              Map.of("name", train.name()),
              List.of(new EnginePage.Field("step", "set to", step, steps)),
              List.of(new EnginePage.Button("look", "Set it so", false))));
    }
    String travel = train.linear() ? Numbers.significant(factor(train, step).toDouble(), 9) : "";
    EnginePage.Turn turn = new EnginePage.Turn(train.from(), degrees, travel);
    drawn
        .drawing()
        .ifPresent(
            d ->
                blocks.add(
                    new EnginePage.Picture(
                        d,
                        "True to scale on the stated centres; the blue marks show how far each has"
                            + " turned.",
                        turn)));
    if (drawn.drawing().isEmpty()) {
      blocks.add(Closer.words("Nothing in this train can be seen along its shafts."));
    }
    drawn.notes().stream().distinct().forEach(n -> blocks.add(Closer.note(n)));
    return new EnginePage.Section("", "picture", "", blocks);
  }

  /** How the ratio comes about, element by element, exactly. */
  private static EnginePage.Section ratios(Train train, String step) {
    List<EnginePage.Row> rows = new ArrayList<>();
    Ratio all = Ratio.ONE;
    for (Element element : train.elements()) {
      Ratio own =
          element.factors().entrySet().stream()
              .filter(e -> e.getKey().isEmpty() || step.contains(e.getKey()))
              .map(Map.Entry::getValue)
              .findFirst()
              .orElse(element.factors().values().iterator().next());
      all = all.times(own);
      rows.add(
          new EnginePage.Row(
              "",
              List.of(
                  EnginePage.Entry.of(element.name()),
                  EnginePage.Entry.of(what(element)),
                  EnginePage.Entry.of(own.text()),
                  EnginePage.Entry.of(
                      all.text() + " = " + Numbers.significant(all.toDouble(), 7)))));
    }
    String turns = train.reversals() % 2 == 0 ? "the same way round" : "the other way round";
    return Closer.section(
        "How it comes about",
        "working",
        new EnginePage.Table(
            "From one turn of the " + train.from() + ", " + turns,
            List.of("element", "what", "makes of one", "so far"),
            rows));
  }

  private static String what(Element element) {
    if (element instanceof Element.GearPair p) {
      return p.driver() + " drives " + p.driven();
    } else if (element instanceof Element.Rack r) {
      return "pinion of " + r.pinion() + " on a rack, pitch " + mm(r.pitch());
    } else if (element instanceof Element.Screw s) {
      return s.thread().text() + ", lead " + mm(s.thread().lead());
    } else if (element instanceof Element.ChangeGears g) {
      return "change gears " + g.wheels();
    } else if (element instanceof Element.Belt) {
      return "belt";
    } else if (element instanceof Element.Box) {
      return "gearbox, as set";
    } else if (element instanceof Element.BackGear) {
      return "back gear";
    }
    return element instanceof Element.Worm ? "worm and wheel" : element.name();
  }
}
