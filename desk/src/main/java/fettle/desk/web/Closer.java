package fettle.desk.web;

import fettle.desk.page.Cell;
import fettle.desk.page.EnginePage;
import fettle.desk.page.Shell;
import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Finding;
import fettle.mechanics.base.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.Supplier;

/** What the pages that look closely at one thing have in common. */
final class Closer {

  private static final int FULL = 720;

  private Closer() {}

  static EnginePage page(
      Visit visit,
      Chosen chosen,
      String title,
      String path,
      Map<String, String> kept,
      String lead,
      List<EnginePage.Section> sections) {
    return new EnginePage(
        visit.shell(title, "lathe", chosen),
        lead,
        LatheRoom.choices(visit, chosen),
        path,
        kept,
        sections);
  }

  static EnginePage.Section section(String title, String id, EnginePage.Block... blocks) {
    return new EnginePage.Section(title, id, "", List.of(blocks));
  }

  /** Returns a section, or why it cannot be drawn with the sizes of the book. */
  static EnginePage.Section orReason(String title, String id, Supplier<EnginePage.Section> drawn) {
    try {
      return drawn.get();
    } catch (IllegalArgumentException e) {
      return section(
          title,
          id,
          words("It cannot be drawn with the sizes of the book: " + e.getMessage() + "."));
    }
  }

  static EnginePage.Words words(String... lines) {
    return new EnginePage.Words("", List.of(lines));
  }

  static EnginePage.Words note(String... lines) {
    return new EnginePage.Words("note", List.of(lines));
  }

  /** Returns what was asked under a name if it is one of some words, else the first of them. */
  static String oneOf(Visit visit, String name, List<String> words) {
    String asked = visit.asked(name);
    return words.contains(asked) || words.isEmpty() ? asked : words.get(0);
  }

  /** Returns how far the owner has turned the picture, in degrees. */
  static long turned(Visit visit) {
    String asked = visit.asked("turned");
    return asked.matches("\\d{1,3}") ? Math.min(FULL, Long.parseLong(asked)) : 0;
  }

  static List<Figure> figures(Visit visit, Chosen chosen, Predicate<Figure> which) {
    Forecast forecast = visit.opened().forecast(chosen.state(), chosen.state());
    return forecast.rows().stream().map(Row::figure).filter(which).toList();
  }

  static EnginePage.Cells cells(Visit visit, Chosen chosen, Predicate<Figure> which) {
    List<Cell> cells =
        figures(visit, chosen, which).stream().map(f -> visit.cell(f, chosen)).toList();
    return new EnginePage.Cells(cells);
  }

  /** Returns the findings about some figures, worst first. */
  static EnginePage.Findings findings(Visit visit, Chosen chosen, Predicate<Finding> which) {
    Forecast forecast = visit.opened().forecast(chosen.state(), chosen.state());
    return new EnginePage.Findings(
        Joints.openings(
            forecast.staying().stream().filter(which).toList(), chosen, visit.measure()));
  }

  /** Returns every page that looks closely at something of this lathe. */
  static List<Shell.Link> links(Machine machine, Chosen chosen) {
    Map<String, String> links = new LinkedHashMap<>();
    String state = "&" + Visit.query(chosen);
    machine
        .trains()
        .values()
        .forEach(t -> links.put("/train?name=" + Visit.coded(t.name()) + state, t.name()));
    machine
        .trains()
        .values()
        .forEach(
            t -> {
              boolean screw = t.elements().stream().anyMatch(e -> e instanceof Element.Screw);
              if (screw) {
                links.put(
                    "/screw?name=" + Visit.coded(t.name()) + state, "the screw of the " + t.name());
              }
            });
    links.put("/threads?" + Visit.query(chosen), "threads and change gears");
    links.put("/gearbox?" + Visit.query(chosen), "a gearbox for the threads");
    machine
        .values()
        .map("clamps")
        .keySet()
        .forEach(c -> links.put("/clamp?name=" + Visit.coded(c) + state, c));
    if (machine.values().block("spindle").isPresent()) {
      links.put("/spindle?" + Visit.query(chosen), "the spindle and its bearings");
      links.put("/cuts?" + Visit.query(chosen), "speeds, power and the largest cuts");
      links.put("/rigidity?" + Visit.query(chosen), "rigidity between tool and work");
    }
    links.put("/clearance?" + Visit.query(chosen), "clearance over the whole travel");
    links.put("/fits?" + Visit.query(chosen), "fits, zones to scale");
    List<Shell.Link> all = new ArrayList<>();
    links.forEach((href, words) -> all.add(new Shell.Link(href, words)));
    return all;
  }

  /**
   * Returns the force somebody asked for, the usual one if nothing was.
   *
   * @param usual [N]
   * @param most largest that is drawn [N]
   * @return force [N]
   */
  static double force(Visit visit, double usual, double most) {
    String asked = visit.asked("force").strip().replaceFirst("\\s*N$", "");
    if (asked.isEmpty()) {
      return usual;
    }
    if (!asked.matches("\\d{1,5}(\\.\\d{1,4})?")) {
      throw Refused.wrong(
          "'" + ValuesRoom.line(visit.asked("force")) + "' is no force in newtons.",
          "Write a number such as "
              + Numbers.significant(usual, 3)
              + "; at most "
              + Numbers.significant(most, 5)
              + ".");
    }
    double force = Double.parseDouble(asked);
    if (!(force > 0 && force <= most)) {
      throw Refused.wrong(
          "A force of " + asked + " N is outside what is drawn.",
          "Write more than 0 and at most " + Numbers.significant(most, 5) + " N.");
    }
    return force;
  }
}
