package fettle.desk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.topics.Clearances;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Mechanism;
import fettle.mechanics.motion.Vector;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** {@code fettle clearance}: what touches or comes near over the whole travel. */
final class ClearanceCommand implements Command {

  private static final double TOLERANCE = 0.05;
  private static final int BUDGET = 20_000;
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
    spec.addOption(Options.flag("--json", "Write JSON; docs/clearance.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    Book book = Books.open(given.word(0));
    Set<String> keys = new LinkedHashSet<>(Books.state(book, "as-it-stands").changes());
    keys.addAll(Books.keys(book, given.words(1)));
    List<String> chosen = List.copyOf(keys);
    Clearances found = clearances(book, chosen);
    List<String> together = together(book, chosen, found);
    if (given.on("--json")) {
      terminal.out().println(json(found, together));
    } else {
      print(found, together, terminal);
    }
    return ExitStatus.DONE;
  }

  private static Clearances clearances(Book book, List<String> keys) {
    State state = Books.sound(State.of(book, "", keys));
    return Clearances.of(state.machine().orElseThrow(), TOLERANCE, BUDGET);
  }

  /** What two changes bring about only together: neither of them alone, nor the lathe as bought. */
  private static List<String> together(Book book, List<String> keys, Clearances found) {
    List<String> sentences = new ArrayList<>();
    if (found.touching().isEmpty()) {
      return sentences;
    }
    List<Set<String>> alone = keys.stream().map(k -> touching(book, List.of(k))).toList();
    for (int i = 0; i < keys.size(); i++) {
      for (int j = i + 1; j < keys.size(); j++) {
        Set<String> both = new LinkedHashSet<>(touching(book, List.of(keys.get(i), keys.get(j))));
        both.removeAll(alone.get(i));
        both.removeAll(alone.get(j));
        for (String pair : both.stream().sorted().toList()) {
          sentences.add(keys.get(i) + " with " + keys.get(j) + ": " + pair);
        }
      }
    }
    return sentences;
  }

  private static Set<String> touching(Book book, List<String> keys) {
    return State.of(book, "", Books.keys(book, keys))
        .machine()
        .map(m -> Clearances.of(m, 0.5, 300).touching())
        .orElse(Set.of());
  }

  private static void print(Clearances found, List<String> together, Terminal terminal) {
    var out = terminal.out();
    out.println(
        "Least gap of every two members over all positions (mm; nowhere less than 'proven')");
    for (Clearances.Row row : found.rows().stream().limit(SHOWN).toList()) {
      Gap gap = row.gap();
      String size = gap.touches() ? "touch" : Numbers.fixed(gap.upper(), 2);
      String proven = gap.touches() ? "" : "proven " + Numbers.fixed(gap.lower(), 2);
      out.println("  " + pad(size, 8) + pad(proven, 15) + row.name());
      out.println("  " + pad("", 23) + "with " + found.position(row));
      if (!gap.certified()) {
        out.println("  " + pad("", 23) + "not settled: the bounds did not close");
      }
    }
    int more = found.rows().size() - SHOWN;
    if (more > 0) {
      out.println("  and " + more + " pairs with more room; --json lists them all");
    }
    if (!together.isEmpty()) {
      out.println("They touch only when two changes meet");
      together.forEach(s -> out.println("  " + s));
    }
    out.println("Not searched");
    for (Mechanism.Skipped s : found.skipped()) {
      out.println("  " + s.first() + " x " + s.second() + ": " + s.reason());
    }
    out.println(
        "Envelopes are simple solids, and play, bending and chips are not in them. Keep hands clear"
            + " of moving handles; isolate the lathe before trying a position.");
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }

  private static String json(Clearances found, List<String> together) {
    return Json.object(
        json -> {
          json.writeStringField("format", "fettle clearance 1");
          json.writeArrayFieldStart("pairs");
          for (Clearances.Row row : found.rows()) {
            row(json, found, row);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("only_together");
          for (String sentence : together) {
            json.writeString(sentence);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("not_searched");
          for (Mechanism.Skipped s : found.skipped()) {
            json.writeStartObject();
            json.writeStringField("first", s.first());
            json.writeStringField("second", s.second());
            json.writeStringField("reason", s.reason());
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private static void row(JsonGenerator json, Clearances found, Clearances.Row row)
      throws IOException {
    Gap gap = row.gap();
    json.writeStartObject();
    json.writeStringField("first", row.first());
    json.writeStringField("second", row.second());
    Json.number(json, "gap_mm", gap.upper());
    Json.number(json, "proven_mm", gap.lower());
    json.writeBooleanField("touches", gap.touches());
    json.writeBooleanField("certified", gap.certified());
    json.writeObjectFieldStart("position");
    List<String> axes = found.mechanism().domain().names();
    for (int i = 0; i < axes.size(); i++) {
      double at = gap.position()[i];
      Json.number(
          json,
          axes.get(i) + (found.slides(i) ? " mm" : " deg"),
          found.slides(i) ? at : Math.toDegrees(at));
    }
    json.writeEndObject();
    point(json, found, row, "on_first_mm", gap.onFirst());
    point(json, found, row, "on_second_mm", gap.onSecond());
    json.writeEndObject();
  }

  private static void point(
      JsonGenerator json, Clearances found, Clearances.Row row, String name, Vector point)
      throws IOException {
    Vector at = found.mechanism().common(row.first(), row.second(), point, row.gap().position());
    json.writeArrayFieldStart(name);
    Json.number(json, at.x());
    Json.number(json, at.y());
    Json.number(json, at.z());
    json.writeEndArray();
  }
}
