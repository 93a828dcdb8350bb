package fettle.desk.web;

import fettle.desk.page.JointPage;
import fettle.desk.page.Shell;
import fettle.desk.page.ValuePage;
import fettle.machine.dictionary.Row;
import fettle.machine.lathe.Dial;
import fettle.machine.lathe.Machine;
import fettle.machine.state.State;
import fettle.machine.text.Node;
import fettle.machine.text.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Editing one value of the book in its place, with the forecast following. */
final class ValuesRoom {

  private ValuesRoom() {}

  /** What comes of a value typed: the book with it, or what is wrong. */
  private record Tried(String text, Opened book, List<String> problems) {}

  /** Returns the value a request speaks of. */
  static Spot spot(Visit visit) {
    return visit
        .opened()
        .spots()
        .at(visit.asked("file"), visit.asked("path"))
        .orElseThrow(
            () ->
                Refused.missing(
                    "There is no such value in the book now.",
                    "It may have been taken out in a text editor; look at the lathe's page."));
  }

  /** Shows a value, and what follows from what was typed. */
  static ValuePage page(Visit visit, String notice) {
    Spot spot = spot(visit);
    String sent = visit.asked("v");
    String typed = sent.isEmpty() ? spot.scalar().text() : sent;
    boolean sound = visit.opened().sound();
    Chosen chosen = sound ? looked(visit, spot) : null;
    List<String> problems = new ArrayList<>();
    JointPage joint = null;
    if (!typed.equals(spot.scalar().text())) {
      Tried tried = tried(visit, spot, typed);
      problems.addAll(tried.problems);
      if (tried.problems.isEmpty() && chosen != null) {
        joint = joint(visit, chosen, tried.book);
      }
    }
    Shell frame =
        chosen == null
            ? visit.plain(spot.key(), "lathe")
            : visit.shell(spot.key(), "lathe", chosen);
    return new ValuePage(
        frame,
        spot.within().replace(".", " · "),
        true,
        List.of(Fields.of(visit, spot, "v", typed)),
        joint,
        problems,
        notice,
        "",
        chosen == null ? List.of() : ValueLines.leftOut(visit, chosen, spot.file(), spot.block()));
  }

  /** Returns the state looked at, with the change in it that the value belongs to. */
  private static Chosen looked(Visit visit, Spot spot) {
    Chosen chosen = visit.chosen();
    return spot.file().startsWith("changes/")
        ? chosen.with(visit.opened(), List.of(change(spot.file())))
        : chosen;
  }

  static String change(String file) {
    return file.substring("changes/".length(), file.length() - ".yaml".length());
  }

  private static Tried tried(Visit visit, Spot spot, String typed) {
    String text = visit.opened().text(spot.file()).orElse("");
    String edited = spot.edited(text, typed).orElse("");
    if (edited.isEmpty()) {
      String problem = "'" + typed + "' cannot be written there as one value.";
      return new Tried("", visit.opened(), List.of(problem));
    }
    Opened book = visit.opened().with(Map.of(spot.file(), edited));
    List<Problem> old = problems(visit.opened(), spot);
    List<String> fresh =
        problems(book, spot).stream().filter(p -> !old.contains(p)).map(Problem::text).toList();
    return new Tried(edited, book, fresh);
  }

  private static List<Problem> problems(Opened book, Spot spot) {
    return spot.file().startsWith("trials/") && book.sound()
        ? NewTrialRoom.problems(book)
        : book.problems();
  }

  private static JointPage joint(Visit visit, Chosen chosen, Opened book) {
    State now = State.of(book.book(), "with the value typed", chosen.state().changes());
    return Joints.of(book.forecast(chosen.state(), now), chosen, visit.measure());
  }

  /** Writes the value typed into the book; returns where to go next. */
  static String save(Visit visit, Shelf shelf) {
    Spot spot = spot(visit);
    String typed = visit.asked("v");
    if (typed.isEmpty()) {
      throw Refused.wrong("Nothing was typed.", "Type a value with its unit.");
    }
    save(visit, shelf, spot, typed);
    return "/value?file="
        + Visit.coded(spot.file())
        + "&path="
        + Visit.coded(spot.path())
        + "&state="
        + Visit.coded(visit.asked("state"))
        + "&said=written";
  }

  /** Writes a value into the book, if the book is sound with it and still as the page showed it. */
  static void save(Visit visit, Shelf shelf, Spot spot, String typed) {
    unchanged(visit, spot.file());
    Tried tried = tried(visit, spot, typed);
    if (!tried.problems.isEmpty()) {
      throw Refused.wrong(
          String.join(" ", tried.problems), "Go back, put the value right and try again.");
    }
    if (!typed.equals(spot.scalar().text()) || spot.kind() == Spot.Kind.LEFT_OUT) {
      String before = spot.kind() == Spot.Kind.LEFT_OUT ? "left out" : spot.scalar().text();
      String why = spot.within() + ": " + before + " → " + typed;
      shelf.save(visit.opened(), Map.of(spot.file(), tried.text), line(why), "");
    }
  }

  /** Refuses if the file is no longer what the page showed. */
  private static void unchanged(Visit visit, String file) {
    if (!visit.opened().mark(file).equals(visit.asked("mark"))) {
      throw Refused.overtaken(
          file
              + " was changed by another program since this page was made. Nothing was written, so"
              + " nothing is lost.",
          "Below stands what the file says now and what you typed: write yours over it, or let it"
              + " go.");
    }
  }

  static String line(String text) {
    String one = text.replaceAll("\\p{Cntrl}+", " ");
    return one.length() > 300 ? one.substring(0, 300) + "…" : one;
  }

  /** Returns where the values of what is spoken of can be dragged. */
  static List<Shell.Link> whatIf(Machine machine, Set<String> about, Chosen chosen) {
    List<Shell.Link> links = new ArrayList<>();
    about.forEach(
        name -> {
          String room =
              machine.trains().containsKey(name)
                  ? "trains."
                  : machine.dials().containsKey(name)
                      ? "dials."
                      : machine.members().containsKey(name) ? "members." : "";
          if (!room.isEmpty()) {
            String address = "/what-if?in=" + Visit.coded(room + name) + "&" + Visit.query(chosen);
            links.add(new Shell.Link(address, "what if the " + name + " were different?"));
          }
        });
    return links;
  }

  /** Lists the values of one block, to drag them and see what follows. */
  static ValuePage whatIf(Visit visit, String notice) {
    Chosen chosen = visit.chosen();
    String path = visit.asked("in");
    Map<Spot, String> typed = typed(visit, chosen, path);
    List<String> problems = new ArrayList<>();
    JointPage joint = null;
    Map<Spot, String> altered = altered(typed);
    String key = NewChange.key(visit.book(), visit.asked("title"));
    if (!altered.isEmpty()) {
      Opened book = visit.opened().with(Map.of(file(key), patch(visit, chosen, altered, key)));
      problems.addAll(book.problems().stream().map(Problem::text).toList());
      if (problems.isEmpty()) {
        List<String> keys = new ArrayList<>(chosen.state().changes());
        keys.add(key);
        State now = State.of(book.book(), "what if", keys);
        joint = Joints.of(book.forecast(chosen.state(), now), chosen, visit.measure());
      }
    }
    List<ValuePage.Field> fields = new ArrayList<>();
    typed.forEach((s, text) -> fields.add(Fields.of(visit, s, name(s), text)));
    return new ValuePage(
        visit.shell("what if: " + path.replace(".", " · "), "lathe", chosen),
        path,
        false,
        fields,
        joint,
        problems,
        notice,
        visit.asked("title"),
        List.of());
  }

  private static String name(Spot spot) {
    return "w." + spot.within();
  }

  private static String file(String key) {
    return "changes/" + key + ".yaml";
  }

  private static Map<Spot, String> altered(Map<Spot, String> typed) {
    Map<Spot, String> altered = new LinkedHashMap<>();
    typed.forEach(
        (s, text) -> {
          if (!text.equals(s.scalar().text())) {
            altered.put(s, text);
          }
        });
    return altered;
  }

  /** Returns the values that can be dragged, with what was typed for each. */
  private static Map<Spot, String> typed(Visit visit, Chosen chosen, String path) {
    Node tree = ValueLines.tree(visit, chosen.state());
    Node node = Spots.follow(tree, path);
    if (node == null) {
      throw Refused.missing(
          "This lathe has nothing called '" + line(path) + "' in the state looked at.",
          "Choose a train or a dial from the lathe's page.");
    }
    List<Spot> spots = new ArrayList<>(visit.opened().spots().under(node));
    for (String dial : dials(LatheRoom.machine(visit, chosen), path)) {
      Node reads = Spots.follow(tree, "dials." + dial);
      if (reads != null) {
        spots.addAll(visit.opened().spots().under(reads));
      }
    }
    Map<Spot, String> typed = new LinkedHashMap<>();
    for (Spot spot : spots) {
      boolean number = Fields.slide(spot) != null;
      boolean designation =
          spot.row()
              .map(Row::type)
              .filter(t -> t.equals("thread") || t.equals("bearing"))
              .isPresent();
      if (number || designation) {
        String sent = visit.asked(name(spot));
        typed.put(spot, sent.isEmpty() ? spot.scalar().text() : sent);
      }
    }
    return typed;
  }

  /** A drive is tried together with the dials that read it. */
  private static List<String> dials(Machine machine, String path) {
    return machine.dials().values().stream()
        .filter(d -> path.equals("trains." + d.train()))
        .map(Dial::name)
        .toList();
  }

  private static String patch(Visit visit, Chosen chosen, Map<Spot, String> altered, String key) {
    String title = visit.asked("title").strip();
    return NewChange.text(
        title.isEmpty() ? "What if " + key : title,
        "Tried on the page '" + visit.asked("in").replace(".", ", ") + "'.",
        altered,
        chosen,
        visit.book(),
        ValueLines.tree(visit, chosen.state()));
  }

  /** Keeps what was tried as a new change; returns where to go next. */
  static String keep(Visit visit, Shelf shelf) {
    Chosen chosen = visit.chosen();
    Map<Spot, String> altered = altered(typed(visit, chosen, visit.asked("in")));
    if (altered.isEmpty()) {
      throw Refused.wrong("No value differs from the lathe as it is.", "Drag one, then keep it.");
    }
    if (!visit.opened().mark().equals(visit.asked("mark"))) {
      throw Refused.overtaken(
          "The book was changed by another program since this page was made. Nothing was written.",
          "Open the page again and try the values once more.");
    }
    String key = NewChange.key(visit.book(), visit.asked("title"));
    String text = patch(visit, chosen, altered, key);
    Opened book = visit.opened().with(Map.of(file(key), text));
    if (!book.problems().isEmpty()) {
      throw Refused.unsound(book.problems());
    }
    shelf.save(visit.opened(), Map.of(file(key), text), "new change " + key, "");
    return "/change?key=" + Visit.coded(key);
  }
}
