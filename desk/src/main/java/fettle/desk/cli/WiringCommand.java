package fettle.desk.cli;

import fettle.machine.dictionary.Values;
import fettle.machine.state.Book;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.topics.Wiring;
import fettle.mechanics.electrics.ElectricsReckoners;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** {@code fettle wiring}: the wires and terminals of the control box, for planning. */
final class WiringCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "wiring",
            "The wiring list and terminal plan of the control box, and what is wrong with them.",
            "Planning help and no design; a licensed electrician connects and tests.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addPositional(Options.many("CHANGE", "Changes to take in, as their files are called."));
    spec.addOption(Options.flag("--json", "Write JSON, as docs/wiring.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    Book book = Books.open(given.word(0));
    List<String> keys = new ArrayList<>(book.keys(Stage::done));
    keys.addAll(
        given.words(1).isEmpty() ? book.keys(Stage::meant) : Books.keys(book, given.words(1)));
    State state = Books.sound(State.of(book, "", keys));
    Values box =
        state
            .machine()
            .flatMap(m -> m.values().block("control box"))
            .orElseThrow(
                () ->
                    Failure.input(
                        "no control box is described in this state; write 'control box:' into"
                            + " machine.yaml or into a change"));
    Wiring wiring = Wiring.of(box);
    if (given.on("--json")) {
      terminal.out().println(json(wiring));
    } else {
      text(wiring, terminal.out());
    }
    return ExitStatus.DONE;
  }

  private static void text(Wiring wiring, PrintStream out) {
    String row = "  %-4s %-18s %-26s %-18s %6s  %-13s %7s  %s";
    out.println(ElectricsReckoners.DEFERENCE);
    out.println("\nWIRING LIST");
    out.println(
        String.format(
            Locale.ROOT, row, "no.", "from", "to", "potential", "mm2", "colour", "m", "ends"));
    for (Wiring.Wire w : wiring.wires()) {
      out.println(
          String.format(
              Locale.ROOT,
              row,
              w.number(),
              w.from(),
              w.to(),
              w.potential(),
              Words.number(w.section()),
              w.colour(),
              Words.number(w.length() / 1000),
              w.ends()));
    }
    out.println("\nTERMINAL PLAN");
    wiring
        .terminals()
        .forEach(
            (terminal, wires) ->
                out.println(
                    String.format(
                        Locale.ROOT,
                        "  %-26s %-18s wire %s",
                        terminal,
                        wires.get(0).potential(),
                        String.join(", ", wires.stream().map(Wiring.Wire::number).toList()))));
    List<String> wrong = wiring.wrong();
    out.println(wrong.isEmpty() ? "\nNothing is wrong with the list as such." : "\nWRONG");
    wrong.forEach(w -> out.println("  " + w));
  }

  private static String json(Wiring wiring) {
    return Json.object(
        json -> {
          json.writeStringField("format", "fettle wiring 1");
          json.writeStringField("caution", ElectricsReckoners.DEFERENCE);
          json.writeArrayFieldStart("wires");
          for (Wiring.Wire w : wiring.wires()) {
            json.writeStartObject();
            json.writeStringField("number", w.number());
            json.writeStringField("from", w.from());
            json.writeStringField("to", w.to());
            json.writeStringField("potential", w.potential());
            Json.number(json, "sectionMm2", w.section());
            json.writeStringField("colour", w.colour());
            Json.number(json, "lengthMm", w.length());
            json.writeStringField("ends", w.ends());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeArrayFieldStart("wrong");
          for (String wrong : wiring.wrong()) {
            json.writeString(wrong);
          }
          json.writeEndArray();
        });
  }
}
