package fettle.desk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fettle.machine.dictionary.Values;
import fettle.machine.made.MadePart;
import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.text.Parsed;
import fettle.machine.topics.Panel;
import fettle.machine.topics.Wiring;
import fettle.mechanics.electrics.ElectricsReckoners;
import fettle.sheets.PanelLayout;
import java.io.IOException;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** {@code fettle wiring}: the wires and terminals of the control box, for planning. */
final class WiringCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "wiring",
            "The wiring list, terminal plan and device list of the control box, and what is wrong with"
                + " them.",
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
    Optional<Panel> panel = panel(book, keys, box);
    List<String> wrong = new ArrayList<>(wiring.wrong());
    panel.ifPresent(p -> wrong.addAll(p.wrong(wiring)));
    if (given.on("--json")) {
      terminal.out().println(json(wiring, panel, wrong));
    } else {
      text(wiring, panel, wrong, terminal.out());
    }
    return ExitStatus.DONE;
  }

  /** The front's openings are those of its recipe. */
  private static Optional<Panel> panel(Book book, List<String> keys, Values box) {
    if (box.block("plate").isEmpty()) {
      return Optional.empty();
    }
    Parsed<List<MadePart>> read = MadeParts.of(book, keys);
    List<MadePart> parts = read.orThrow(() -> Failure.input(read.problems()));
    return Panel.of(box, Optional.of(PanelLayout.front(box, parts).openings()));
  }

  private static void devices(Panel panel, PrintStream out) {
    String row = "  %-5s %-32s %-16s %-22s %8s %8s  %s";
    out.println("\nDEVICES, places on the plate in mm from its lower left corner");
    out.println(
        String.format(
            Locale.ROOT, row, "", "device", "ratings", "sits on", "across", "up", "w x h x d"));
    for (Panel.Device d : panel.devices()) {
      boolean inside = d.isInside();
      out.println(
          String.format(
                  Locale.ROOT,
                  row,
                  d.designation(),
                  d.what(),
                  d.rated(),
                  d.sits(),
                  inside ? Words.number(d.left()) : "",
                  inside ? Words.number(d.low()) : "",
                  inside
                      ? Words.number(d.width())
                          + " x "
                          + Words.number(d.height())
                          + " x "
                          + Words.number(d.depth())
                      : "")
              .stripTrailing());
    }
    out.println("  'fettle sheets' draws the layout.");
  }

  private static void text(
      Wiring wiring, Optional<Panel> panel, List<String> wrong, PrintStream out) {
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
    panel.ifPresent(p -> devices(p, out));
    out.println(wrong.isEmpty() ? "\nNothing is wrong with the list as such." : "\nWRONG");
    wrong.forEach(w -> out.println("  " + w));
  }

  private static String json(Wiring wiring, Optional<Panel> panel, List<String> wrongs) {
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
          json.writeArrayFieldStart("devices");
          for (Panel.Device d : panel.map(Panel::devices).orElse(List.of())) {
            device(json, d);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("wrong");
          for (String wrong : wrongs) {
            json.writeString(wrong);
          }
          json.writeEndArray();
        });
  }

  private static void device(JsonGenerator json, Panel.Device d) throws IOException {
    json.writeStartObject();
    json.writeStringField("designation", d.designation());
    json.writeStringField("what", d.what());
    json.writeStringField("ratings", d.rated());
    json.writeStringField("seat", d.seat().name().toLowerCase(Locale.ROOT));
    if (d.isInside()) {
      json.writeStringField("on", d.on());
      Json.number(json, "leftMm", d.left());
      Json.number(json, "lowMm", d.low());
      Json.number(json, "widthMm", d.width());
      Json.number(json, "heightMm", d.height());
      Json.number(json, "depthMm", d.depth());
      Json.number(json, "airMm", d.air());
    }
    json.writeEndObject();
  }
}
