package fettle.desk.web;

import fettle.desk.page.ReadingsPage;
import fettle.machine.trials.BenchSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Taking readings at the bench, one big field after another. */
final class BenchRoom {

  private static final int SHOWN = 5;

  private BenchRoom() {}

  private static String name(Visit visit) {
    String name = visit.asked("name");
    if (!name.matches("[a-z0-9][a-z0-9-]{0,59}")) {
      throw Refused.missing("There is no such trial.", "Choose one from the proof room.");
    }
    return name;
  }

  private static BenchSheet sheet(Visit visit, String name) {
    Optional<String> yaml = visit.opened().text("trials/" + name + ".yaml");
    return yaml.flatMap(BenchSheet::kind)
        .map(k -> BenchSheet.of(k, visit.opened().text("trials/" + name + ".csv").orElse("")))
        .filter(s -> !s.heads().isEmpty())
        .orElseThrow(
            () ->
                Refused.missing(
                    "There is no trial '" + name + "' with a file of readings.",
                    "Describe it in trials/"
                        + name
                        + ".yaml and write the headings into trials/"
                        + name
                        + ".csv."));
  }

  static ReadingsPage page(Visit visit) {
    String name = name(visit);
    BenchSheet sheet = sheet(visit, name);
    Optional<BenchSheet.Row> asked =
        visit.asked("line").matches("\\d{1,6}")
            ? sheet.at(Integer.parseInt(visit.asked("line")))
            : sheet.next();
    List<ReadingsPage.Cell> place = new ArrayList<>();
    asked.ifPresent(
        row -> {
          for (int i = 0; i < row.place().size(); i++) {
            place.add(cell(sheet.heads().get(i), row.place().get(i)));
          }
        });
    List<BenchSheet.Row> taken = sheet.rows().stream().filter(r -> !r.reading().isEmpty()).toList();
    int until =
        asked
            .map(a -> (int) taken.stream().filter(r -> r.line() < a.line()).count())
            .orElse(taken.size());
    List<ReadingsPage.Taken> last =
        taken.subList(Math.max(0, until - SHOWN), until).stream()
            .map(r -> taken(name, sheet.heads(), r))
            .toList();
    String file = "trials/" + name + ".csv";
    return new ReadingsPage(
        visit.plain("readings", "proof"),
        name,
        what(visit, name),
        file,
        visit.opened().mark(file),
        asked.map(BenchSheet.Row::line).orElse(0),
        place,
        head(sheet.heads().get(sheet.heads().size() - 1)),
        asked.map(BenchSheet.Row::reading).orElse(""),
        taken.size(),
        sheet.rows().size(),
        last,
        sheet.another().isPresent(),
        "/trial?name=" + Visit.coded(name));
  }

  /** The way a slide is brought to its place is said in words. */
  private static ReadingsPage.Cell cell(String head, String value) {
    return head.equals("dir")
        ? new ReadingsPage.Cell("way", value.startsWith("-") ? "back" : "there")
        : new ReadingsPage.Cell(head(head), value);
  }

  private static ReadingsPage.Taken taken(String name, List<String> heads, BenchSheet.Row row) {
    List<String> place = new ArrayList<>();
    for (int i = 0; i < row.place().size(); i++) {
      place.add(cell(heads.get(i), row.place().get(i)).value());
    }
    return new ReadingsPage.Taken(
        String.join(" · ", place),
        row.reading(),
        "/readings?name=" + Visit.coded(name) + "&line=" + row.line());
  }

  private static String what(Visit visit, String name) {
    return visit
        .opened()
        .spots()
        .at("trials/" + name + ".yaml", "what")
        .map(s -> s.scalar().text())
        .orElse(name);
  }

  /** Writes a column's heading as words: {@code position_mm} as position in mm. */
  static String head(String head) {
    int at = head.indexOf('_');
    return at < 0
        ? head
        : head.substring(0, at)
            + ", "
            + head.substring(at + 1).replace("_per_", "/").replace("um", "µm").replace("deg", "°");
  }

  /** Writes one reading, or plans another run; returns where to go next. */
  static String keep(Visit visit, Shelf shelf) {
    String name = name(visit);
    BenchSheet sheet = sheet(visit, name);
    String file = "trials/" + name + ".csv";
    if (!visit.opened().mark(file).equals(visit.asked("mark"))) {
      throw Refused.overtaken(
          file + " was changed by another program since this page was made; nothing was written.",
          "Go back to the readings; the next place is asked for anew.");
    }
    String back = "/readings?name=" + Visit.coded(name);
    if (visit.asked("do").equals("more")) {
      String text =
          sheet
              .another()
              .orElseThrow(
                  () -> Refused.wrong("This trial knows no runs.", "Add its rows to the file."));
      shelf.save(visit.opened(), Map.of(file, text), name + ": another run planned", "");
      return back;
    }
    if (!visit.asked("line").matches("\\d{1,6}")) {
      throw Refused.wrong("It is not said which reading this is.", "Go back to the readings.");
    }
    int line = Integer.parseInt(visit.asked("line"));
    String typed = visit.asked("v").strip().replace('−', '-').replace(',', '.');
    try {
      String before = sheet.at(line).map(BenchSheet.Row::reading).orElse("");
      String why =
          name + ", line " + line + ": " + (before.isEmpty() ? "" : before + " → ") + typed;
      String text = sheet.filled(line, typed);
      shelf.save(visit.opened(), Map.of(file, text), ValuesRoom.line(why), "");
    } catch (IllegalArgumentException e) {
      throw Refused.wrong(
          String.valueOf(e.getMessage()), "Go back and type the number alone, such as 0.023.");
    }
    return back;
  }
}
