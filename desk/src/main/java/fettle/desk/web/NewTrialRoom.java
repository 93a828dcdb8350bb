package fettle.desk.web;

import fettle.desk.page.Measure;
import fettle.desk.page.NewTrialPage;
import fettle.desk.page.Shell;
import fettle.machine.dictionary.Dictionary;
import fettle.machine.dictionary.Row;
import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import fettle.machine.text.Parsed;
import fettle.machine.text.Problem;
import fettle.machine.trials.Column;
import fettle.machine.trials.Evaluations;
import fettle.machine.trials.Kind;
import fettle.machine.trials.PlannedTrial;
import fettle.machine.trials.Trial;
import fettle.machine.trials.Trials;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Laying out a trial: what is tested, with what, and where readings are to be taken. */
final class NewTrialRoom {

  private static final Map<Kind, String> MEANINGS =
      Map.ofEntries(
          Map.entry(Kind.DIAL, "a dial against an indicator or a scale, both ways"),
          Map.entry(Kind.REVERSAL, "a slide brought to the same places from both sides"),
          Map.entry(Kind.TEST_BAR, "a bar in the spindle, read at two distances"),
          Map.entry(Kind.TWO_COLLARS, "two collars turned without the tailstock"),
          Map.entry(Kind.TAILSTOCK, "a bar between centres, read at both ends"),
          Map.entry(Kind.PUSH, "push and pull at the tool post"),
          Map.entry(Kind.AXIAL_FLOAT, "how far the turning spindle moves along its axis"),
          Map.entry(Kind.BED, "a level along and across the bed"),
          Map.entry(Kind.FACING, "a faced disc, read on both sides of its centre"),
          Map.entry(Kind.LEAD_SCREW, "the carriage driven by the lead screw, against rods"),
          Map.entry(Kind.SPEEDS, "turns of the spindle against a watch"),
          Map.entry(Kind.RUN_IN, "temperature of the bearings against time"),
          Map.entry(Kind.PRELOAD, "axial force until a preloaded pair lets go"),
          Map.entry(Kind.FREE, "any figure, read several times"),
          Map.entry(Kind.RECORD, "one figure kept over the years"));
  private static final Map<String, String> USUAL =
      Map.ofEntries(
          Map.entry("run", "3"),
          Map.entry("loop", "3"),
          Map.entry("cut", "5"),
          Map.entry("seating", "3"),
          Map.entry("turn", "2"),
          Map.entry("turns", "0 to 4 by 0.25"),
          Map.entry("target", "0 to 100 by 25"),
          Map.entry("seat", "0 180"),
          Map.entry("spindle", "0 90 180 270"),
          Map.entry("z", "30 230"),
          Map.entry("force", "0 50 100 150"),
          Map.entry("step", "3"),
          Map.entry("time", "0 to 3600 by 300"),
          Map.entry("room", "20"));

  private static final Map<String, String> INCHES = Map.of("target", "0 to 4 by 1", "z", "1 9");

  private NewTrialRoom() {}

  private static Optional<Kind> kind(Visit visit) {
    String word = visit.asked("kind");
    return Arrays.stream(Kind.values()).filter(k -> k.word().equals(word)).findFirst();
  }

  static NewTrialPage page(Visit visit, List<String> problems) {
    Optional<Kind> kind = kind(visit);
    List<Shell.Link> kinds = new ArrayList<>();
    for (Kind k : Kind.values()) {
      String words = k.word() + ": " + MEANINGS.getOrDefault(k, "");
      kinds.add(new Shell.Link("/new-trial?kind=" + Visit.coded(k.word()), words));
    }
    return new NewTrialPage(
        visit.shell("a new trial", "proof"),
        kinds,
        kind.map(Kind::word).orElse(""),
        kind.map(k -> fields(visit, k)).orElse(List.of()),
        problems);
  }

  private static List<NewTrialPage.Field> fields(Visit visit, Kind kind) {
    List<NewTrialPage.Field> fields = new ArrayList<>();
    keys(kind).forEach(key -> fields.add(field(visit, kind, key)));
    for (Column column : PlannedTrial.asked(kind)) {
      String name = "at." + column.name();
      fields.add(
          new NewTrialPage.Field(
              name,
              BenchRoom.head(column.heading(preferred(visit))),
              column.whole()
                  ? "how many"
                  : "where to read: numbers one after another, or such as '0 to 300 by 25'",
              typed(visit, name, usual(visit, column)),
              List.of()));
    }
    return fields;
  }

  /** Lengths are read in inches where the owner prefers them. */
  private static List<String> preferred(Visit visit) {
    return visit.measure() == Measure.INCH ? List.of("in") : List.of();
  }

  private static String usual(Visit visit, Column column) {
    String inches = INCHES.get(column.name());
    if (inches != null && visit.measure() == Measure.INCH) {
      return inches;
    }
    return column.name().equals("date")
        ? LocalDate.now(ZoneId.systemDefault()).toString()
        : USUAL.getOrDefault(column.name(), "");
  }

  /** Returns the keys of the description that are asked for. */
  private static List<String> keys(Kind kind) {
    List<String> keys = new ArrayList<>(List.of("what", "instrument", "date", "proves"));
    if (kind == Kind.DIAL) {
      keys.add("train");
    } else {
      keys.add("member");
    }
    keys.addAll(Evaluations.needs(kind));
    return keys;
  }

  private static boolean needed(Kind kind, String key) {
    return key.equals("what") || key.equals("instrument") || Evaluations.needs(kind).contains(key);
  }

  private static NewTrialPage.Field field(Visit visit, Kind kind, String key) {
    boolean needed = needed(kind, key);
    Row row = Objects.requireNonNull(Dictionary.standard().shape("trial").get(key));
    List<String> choices = new ArrayList<>(choices(visit, kind, key, row));
    if (!choices.isEmpty() && !needed) {
      choices.add(0, "");
    }
    String name = "say." + key;
    String usual = key.equals("date") ? LocalDate.now(ZoneId.systemDefault()).toString() : "";
    String expected = choices.isEmpty() ? ". Expected: " + Fields.expects(row) : "";
    String note = row.meaning() + expected + (needed ? "" : "; may be left out");
    return new NewTrialPage.Field(name, key, note, typed(visit, name, usual), choices);
  }

  private static Collection<String> choices(Visit visit, Kind kind, String key, Row row) {
    Machine machine = LatheRoom.machine(visit, visit.chosen());
    return switch (key) {
      case "instrument" -> instruments(visit, kind);
      case "dial" -> machine.dials().keySet();
      case "train" -> machine.trains().keySet();
      case "member" -> machine.members().keySet();
      case "proves" -> visit.book().changes().keySet();
      default -> row.type().startsWith("word:") ? row.words() : List.of();
    };
  }

  /** Returns the instruments that state the doubt this kind of trial needs. */
  private static List<String> instruments(Visit visit, Kind kind) {
    Map<String, Values> known = visit.book().shop().map(s -> s.map("instruments")).orElse(Map.of());
    return known.entrySet().stream()
        .filter(e -> kind.doubt().isEmpty() || e.getValue().has(kind.doubt()))
        .map(Map.Entry::getKey)
        .toList();
  }

  private static String typed(Visit visit, String name, String usual) {
    return visit.asks(name) ? visit.asked(name).strip() : usual;
  }

  /** Writes the trial into the book; returns where its readings are taken. */
  static String write(Visit visit, Shelf shelf) {
    Kind kind =
        kind(visit).orElseThrow(() -> Refused.wrong("No kind was chosen.", "Choose how to test."));
    if (!visit.opened().mark().equals(visit.asked("mark"))) {
      throw Refused.overtaken(
          "The book was changed by another program since this page was made. Nothing was written.",
          "Look at what you typed and send it again.");
    }
    Map<String, String> values = new LinkedHashMap<>();
    keys(kind).forEach(key -> values.put(key, visit.asked("say." + key)));
    Map<String, String> places = new LinkedHashMap<>();
    PlannedTrial.asked(kind).forEach(c -> places.put(c.name(), visit.asked("at." + c.name())));
    PlannedTrial planned = new PlannedTrial(kind, values, places, preferred(visit));
    String key = key(visit, visit.asked("say.what"));
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("trials/" + key + ".yaml", planned.description());
    try {
      texts.put("trials/" + key + ".csv", planned.readings());
    } catch (IllegalArgumentException e) {
      throw Refused.wrong(e.getMessage() + ".", "Put it right and send it again.");
    }
    List<Problem> fresh = problems(visit.opened().with(texts));
    fresh.removeAll(problems(visit.opened()));
    if (!fresh.isEmpty()) {
      String all = String.join(" ", fresh.stream().map(Problem::text).toList());
      throw Refused.wrong(all, "Put it right and send it again.");
    }
    shelf.save(visit.opened(), texts, "new trial " + key, "");
    return "/readings?name=" + Visit.coded(key);
  }

  private static String key(Visit visit, String what) {
    String plain = NewChange.plain(what, "trial");
    String free = plain;
    for (int n = 2; visit.opened().text("trials/" + free + ".yaml").isPresent(); n++) {
      free = plain + "-" + n;
    }
    return free;
  }

  /** Returns what is wrong with the trials of a book. */
  static List<Problem> problems(Opened opened) {
    Parsed<Map<String, Trial>> trials = Trials.read(opened.files(), opened.book());
    return new ArrayList<>(trials.problems());
  }
}
