package fettle.desk.cli;

import fettle.machine.forecast.Meetings;
import fettle.machine.lathe.Machine;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.topics.Clearances;
import fettle.machine.topics.Use;
import fettle.machine.topics.WorkRoom;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Mechanism;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code fettle clearance}: what touches or comes near over the whole travel. */
final class ClearanceCommand implements Command {

  private static final int SHOWN = 20;

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "clearance",
            "Finds the least gap of every two members over all positions of slides, handles and",
            "levers, with a proven lower bound and a position that shows it, and what collides only",
            "when two changes meet. The lathe is taken as it stands, with the changes named.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addPositional(Options.many("CHANGE", "Changes to add to the lathe as it stands."));
    spec.addOption(
        Options.text(
            "--at",
            "POSITIONS",
            "Hold members there, e.g. 'saddle=0 to 120 mm, cross slide=40 mm'."));
    spec.addOption(
        Options.flag(
            "--geared", "Handles turn with their slides, from the angle they are drawn at."));
    spec.addOption(Options.flag("--json", "Write JSON; docs/clearance.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    Book book = Books.open(given.word(0));
    Set<String> keys = new LinkedHashSet<>(Books.state(book, "as-it-stands").changes());
    keys.addAll(Books.keys(book, given.words(1)));
    List<String> chosen = List.copyOf(keys);
    Machine machine = Books.sound(State.of(book, "", chosen)).machine().orElseThrow();
    Found found = found(book, machine, chosen, given);
    if (given.on("--json")) {
      terminal.out().println(ClearanceJson.of(found));
    } else {
      print(found, terminal);
    }
    return ExitStatus.DONE;
  }

  /**
   * What was found.
   *
   * @param gaps the least gap of every two members
   * @param stretches where those that touch can meet
   * @param room the room for work, if a spindle is drawn
   * @param meetings what touches only when two changes meet
   */
  record Found(
      Clearances gaps,
      Map<Clearances.Row, List<Clearances.Stretch>> stretches,
      Optional<WorkRoom> room,
      Meetings meetings) {}

  private static Found found(Book book, Machine machine, List<String> keys, ParseResult given) {
    Use.Handles handles = given.on("--geared") ? Use.Handles.GEARED : Use.Handles.ANY_ANGLE;
    try {
      Use use = Use.parse(machine, given.option("--at", ""), handles);
      Clearances gaps = Clearances.of(machine, use);
      Map<Clearances.Row, List<Clearances.Stretch>> stretches = new LinkedHashMap<>();
      gaps.rows().stream()
          .filter(r -> r.gap().touches())
          .forEach(r -> stretches.put(r, gaps.stretches(r)));
      return new Found(gaps, stretches, WorkRoom.of(machine, use), Meetings.of(book, keys));
    } catch (IllegalArgumentException e) {
      throw Failure.input(String.valueOf(e.getMessage()));
    }
  }

  private static void print(Found all, Terminal terminal) {
    Clearances found = all.gaps();
    var out = terminal.out();
    out.println(
        "Least gap of every two members over all positions (mm; nowhere less than 'proven')");
    for (Clearances.Row row : found.rows().stream().limit(SHOWN).toList()) {
      Gap gap = row.gap();
      String size = gap.touches() ? "touch" : Numbers.fixed(gap.upper(), 2);
      String proven = gap.touches() ? "" : "proven " + Numbers.fixed(gap.lower(), 2);
      out.println("  " + pad(size, 8) + pad(proven, 15) + row.name());
      out.println("  " + pad("", 23) + "with " + found.position(row));
      all.stretches().getOrDefault(row, List.of()).stream()
          .filter(s -> !s.whole())
          .forEach(s -> out.println("  " + pad("", 23) + stretch(s)));
      if (!gap.certified()) {
        out.println("  " + pad("", 23) + "not settled: the bounds did not close");
      }
    }
    int more = found.rows().size() - SHOWN;
    if (more > 0) {
      out.println("  and " + more + " pairs with more room; --json lists them all");
    }
    open(found).forEach(out::println);
    all.room().ifPresent(room -> room(room, out));
    if (!all.meetings().pairs().isEmpty()) {
      out.println("They touch only when two changes meet");
      all.meetings()
          .pairs()
          .forEach(
              m ->
                  out.println(
                      "  "
                          + m.one()
                          + " with "
                          + m.other()
                          + ": "
                          + m.first()
                          + " x "
                          + m.second()));
    }
    if (all.meetings().untried() > 0) {
      out.println("  " + all.meetings().untried() + " pairs of changes were not tried: name fewer");
    }
    out.println("Not searched");
    for (Mechanism.Skipped s : found.skipped()) {
      out.println("  " + s.first() + " x " + s.second() + ": " + s.reason());
    }
    out.println(
        "Envelopes are simple solids, and play, bending and chips are not in them. Keep hands clear"
            + " of moving handles; isolate the lathe before trying a position.");
  }

  private static String stretch(Clearances.Stretch s) {
    return "only while the "
        + s.axis()
        + " is at "
        + shown(s, s.span().from())
        + " to "
        + shown(s, s.span().to())
        + (s.span().certified() ? "" : " (ends not settled)");
  }

  private static String shown(Clearances.Stretch s, double at) {
    return s.slides()
        ? Numbers.fixed(at, 2) + " mm"
        : Numbers.fixed(Math.toDegrees(at), 1) + " deg";
  }

  /** Pairs beyond the list whose bounds did not close are named, too. */
  private static List<String> open(Clearances found) {
    return found.rows().stream()
        .skip(SHOWN)
        .filter(r -> !r.gap().certified())
        .map(
            r ->
                "  not settled: "
                    + r.name()
                    + ", proven "
                    + Numbers.fixed(r.gap().lower(), 2)
                    + ", met "
                    + Numbers.fixed(r.gap().upper(), 2))
        .toList();
  }

  private static void room(WorkRoom room, java.io.PrintStream out) {
    out.println("Room for work");
    String to = room.to().isEmpty() ? "end of the bed" : room.to();
    out.println("  " + pad(Numbers.fixed(room.length(), 2), 8) + room.from() + " to " + to);
    for (WorkRoom.Swing swing : room.swings()) {
      String size = swing.gap().touches() ? "none" : Numbers.fixed(swing.proven(), 2);
      out.println("  " + pad(size, 8) + "diameter over the " + swing.over());
    }
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }
}
