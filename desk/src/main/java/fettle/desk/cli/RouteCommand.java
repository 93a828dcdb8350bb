package fettle.desk.cli;

import fettle.machine.lathe.Machine;
import fettle.machine.made.MadePart;
import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.text.Parsed;
import fettle.mechanics.base.Numbers;
import fettle.planning.route.Route;
import fettle.planning.route.Workshop;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** {@code fettle route}: how each part of a change is made, operation by operation. */
final class RouteCommand implements Command {

  private static final double MINUTE = 60;
  private static final double RPM = Math.PI / 30;

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "route",
            "How each part of a change is made: stock and cutting length, set-ups, operations with",
            "holding, cutter, speed, feed, passes and time, and what the lathe lacks for it. Speeds",
            "and minutes are common practice with tools of high-speed steel, to start from.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addPositional(Options.one("CHANGE", "The change, as its file is called."));
    spec.addOption(Options.text("--part", "PART", "One part, by its name or its recipe's name."));
    spec.addOption(Options.text("--state", "STATE", "The lathe that makes it, else as it stands."));
    spec.addOption(Options.flag("--json", "Write JSON, as docs/route.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    Book book = Books.open(given.word(0));
    Books.keys(book, List.of(given.word(1)));
    Machine machine =
        Books.sound(Books.state(book, given.option("--state", "as-it-stands")))
            .machine()
            .orElseThrow();
    Parsed<List<MadePart>> read = MadeParts.of(book, List.of(given.word(1)));
    List<MadePart> parts =
        Books.parts(read.orThrow(() -> Failure.input(read.problems())), given.option("--part", ""));
    List<Route> routes = new ArrayList<>();
    for (MadePart part : parts) {
      routes.add(Workshop.of(machine, book.shop(), part.recipe()).route(part.recipe()));
    }
    if (given.on("--json")) {
      terminal.out().println(json(parts, routes));
    } else {
      for (int i = 0; i < routes.size(); i++) {
        text(parts.get(i), routes.get(i), terminal.out());
      }
      terminal.out().println("Try a speed from below; chips, sound and the chuck's mark decide.");
    }
    return ExitStatus.DONE;
  }

  private static void text(MadePart part, Route route, PrintStream out) {
    out.println(
        part.recipe().heading().title().toUpperCase(Locale.ROOT)
            + "  from "
            + route.stock()
            + ", cut off "
            + Numbers.fixed(route.cut(), 0)
            + " mm; about "
            + minutes(route.time())
            + " ("
            + minutes(route.shortest())
            + " to "
            + minutes(route.longest())
            + ")");
    int setUp = 0;
    for (Route.Line line : route.lines()) {
      if (line.setUp() != setUp) {
        setUp = line.setUp();
        out.println("  set-up " + setUp + ": " + line.holding());
      }
      String cut =
          line.speed() > 0
              ? Numbers.fixed(line.speed() / RPM, 0)
                  + " rpm, "
                  + Numbers.significant(line.feed(), 3)
                  + " mm a turn, "
                  + line.passes()
                  + (line.passes() == 1 ? " pass" : " passes")
              : "";
      out.println(
          String.format(
              Locale.ROOT,
              "    %-58s %-22s %-38s %s",
              line.what(),
              line.cutter(),
              cut,
              minutes(line.preparing() + line.cutting())));
    }
    route.lacks().forEach(l -> out.println("  LACKS: " + l));
    out.println();
  }

  private static String minutes(double seconds) {
    double all = seconds / MINUTE;
    return all < 90 ? Math.round(Math.max(1, all)) + " min" : Numbers.fixed(all / MINUTE, 1) + " h";
  }

  private static String json(List<MadePart> parts, List<Route> routes) {
    return Json.object(
        g -> {
          g.writeStringField("format", "fettle route 1");
          g.writeArrayFieldStart("parts");
          for (int i = 0; i < routes.size(); i++) {
            Route route = routes.get(i);
            g.writeStartObject();
            g.writeStringField("part", parts.get(i).name());
            g.writeStringField("stock", route.stock());
            Json.number(g, "cutMm", route.cut());
            Json.number(g, "minutes", route.time() / MINUTE);
            Json.number(g, "minutesAtLeast", route.shortest() / MINUTE);
            Json.number(g, "minutesAtMost", route.longest() / MINUTE);
            g.writeArrayFieldStart("operations");
            for (Route.Line line : route.lines()) {
              g.writeStartObject();
              g.writeNumberField("setUp", line.setUp());
              g.writeStringField("what", line.what());
              g.writeStringField("holding", line.holding());
              g.writeStringField("cutter", line.cutter());
              Json.number(g, "rpm", line.speed() / RPM);
              Json.number(g, "feedMm", line.feed());
              g.writeNumberField("passes", line.passes());
              Json.number(g, "preparingMinutes", line.preparing() / MINUTE);
              Json.number(g, "cuttingMinutes", line.cutting() / MINUTE);
              g.writeEndObject();
            }
            g.writeEndArray();
            g.writeArrayFieldStart("lacks");
            for (String lack : route.lacks()) {
              g.writeString(lack);
            }
            g.writeEndArray();
            g.writeEndObject();
          }
          g.writeEndArray();
        });
  }
}
