package fettle.desk.cli;

import fettle.machine.gearing.ScrewCutting;
import fettle.machine.lathe.Machine;
import fettle.machine.made.MadePart;
import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import fettle.mechanics.gears.GearboxSearch;
import fettle.planning.gearbox.BoxChange;
import fettle.planning.gearbox.BoxFrame;
import fettle.planning.gearbox.BoxWheel;
import fettle.planning.gearbox.BoxWish;
import fettle.planning.gearbox.SettledBox;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** {@code fettle gearing BOOK box}: finds a gearbox, settles its parts, writes it as a change. */
final class BoxGearing {

  private static final int MULTIPLIERS = 6;
  private static final long SETS = 1_500_000;
  private static final String KEY = "[a-z0-9][a-z0-9-]{0,29}";

  private final ParseResult given;
  private final Terminal terminal;
  private final Machine machine;
  private final ScrewCutting cutting;
  private final BoxWish wish;

  BoxGearing(
      ParseResult given, Terminal terminal, Book book, Machine machine, ScrewCutting cutting) {
    this.given = given;
    this.terminal = terminal;
    this.machine = machine;
    this.cutting = cutting;
    this.wish = wish(given, book);
  }

  private static BoxWish wish(ParseResult given, Book book) {
    String text = given.option("--wanted", "");
    if (text.isEmpty()) {
      return BoxWish.of(book.shop());
    }
    List<Quantity> wanted = new ArrayList<>();
    for (String lead : text.split(",")) {
      wanted.add(quantity("--wanted", lead.strip(), Dimension.LENGTH, Unit.MM));
    }
    return BoxWish.of(wanted);
  }

  private static Quantity quantity(String option, String text, Dimension kind, Unit unit) {
    try {
      return Quantity.parse(text, kind, unit);
    } catch (Quantity.NotOne e) {
      throw Failure.input(option + ": found '" + text + "', expected " + e.expected());
    }
  }

  /** Finds and settles the box, and writes what is asked. */
  void run() {
    String key = given.option("--write", "");
    if (!key.isEmpty() && !key.matches(KEY)) {
      throw Failure.input(
          "--write: found '"
              + key
              + "', expected the name of the change: up to 30 small letters, digits and hyphens");
    }
    GearboxSearch.Outcome outcome = GearboxSearch.search(wish.query(MULTIPLIERS, SETS));
    SettledBox box = SettledBox.of(outcome.design(), wish, frame());
    String known = known(outcome);
    List<String> written = key.isEmpty() ? List.of() : write(key, box, known);
    if (given.on("--json")) {
      terminal.out().println(json(outcome, box, written));
    } else {
      print(box, known, written);
    }
  }

  private BoxFrame frame() {
    BoxFrame frame = BoxFrame.of(cutting);
    String thrust = given.option("--thrust", "");
    if (!thrust.isEmpty()) {
      double force = quantity("--thrust", thrust, Dimension.FORCE, Unit.N).value();
      frame = new BoxFrame(frame.module(), frame.rack(), frame.lead(), force, frame.centres());
    }
    String centres = given.option("--centres", "");
    return centres.isEmpty()
        ? frame
        : frame.onCentres(quantity("--centres", centres, Dimension.LENGTH, Unit.MM).value());
  }

  private static String known(GearboxSearch.Outcome outcome) {
    int wheels = outcome.design().wheels();
    return outcome.lowerBound() >= wheels
        ? "No box of this kind has fewer than " + wheels + " wheels on cone and multiplier, proven."
        : "The best found; no box of this kind has fewer than "
            + outcome.lowerBound()
            + " wheels on cone and multiplier.";
  }

  /** Writes the files of the change after trying that the book stays sound with them. */
  private List<String> write(String key, SettledBox box, String known) {
    Map<String, String> files = BoxChange.files(box, cutting, machine, key, known);
    Path folder = Books.folder(given.word(0));
    List<String> there =
        files.keySet().stream().filter(f -> Files.exists(Pages.within(folder, f))).toList();
    if (!there.isEmpty() && !given.on("--replace")) {
      throw Failure.input(
          String.join(", ", there)
              + (there.size() == 1 ? " is there already" : " are there already")
              + "; nothing was written. Give another name to --write, or --replace to write over");
    }
    tried(files, key);
    files.forEach((file, text) -> Pages.write(Pages.within(folder, file), text));
    return List.copyOf(files.keySet());
  }

  private void tried(Map<String, String> files, String key) {
    Map<String, String> all = new LinkedHashMap<>(Books.files(given.word(0)).texts());
    all.putAll(files);
    Book book = Books.book(new BookFiles(all));
    Books.sound(Books.state(book, key));
    Parsed<List<MadePart>> parts = MadeParts.of(book, List.of(key));
    if (parts.value() == null) {
      throw Failure.input(parts.problems());
    }
  }

  private void print(SettledBox box, String known, List<String> written) {
    line("Gearbox of " + box.design().wheels() + " wheels: " + wish.text());
    line(known);
    line("");
    line(
        "Link gears "
            + BoxChange.metricLink(box, cutting).text()
            + " for millimetres"
            + (wish.perInch().isEmpty()
                ? ""
                : ", " + BoxChange.inchLink(box, cutting).text() + " for threads per inch")
            + "; shafts "
            + mm(box.shaft())
            + ", first and second "
            + mm(box.coneCentres())
            + " apart, second and third "
            + mm(box.multiplierCentres()));
    line("");
    line("wheel            teeth   shift      tip   width  bore  span");
    for (BoxWheel w : box.wheels()) {
      terminal
          .out()
          .printf(
              Locale.ROOT,
              "%-16s %5d  %6.3f  %7.3f  %6s  %4s  %.3f to %.3f over %d%s%n",
              w.name(),
              w.gear().teeth(),
              w.gear().shift(),
              w.tip(),
              Numbers.significant(w.width(), 4),
              Numbers.significant(w.bore(), 4),
              w.spanLeast(),
              w.spanMost(),
              w.gear().spanTeeth(),
              w.count() == 1 ? "" : ", " + w.count() + " of them");
    }
    line("");
    line("notch  wheel  tumbler at   arm at");
    for (SettledBox.Notch n : box.notches()) {
      terminal
          .out()
          .printf(
              Locale.ROOT,
              "%5d  %5d  %7.1f mm  %5.1f degrees%n",
              n.number(),
              n.wheel(),
              n.along(),
              Math.toDegrees(n.swing()));
    }
    for (int p = 0; p < box.pairs().size(); p++) {
      line("lever " + SettledBox.letter(p) + ": draw key at " + mm(box.drawn(p)));
    }
    line("");
    line("Notch (teeth) and lever give; what was not asked for stands in brackets:");
    BoxChange.plate(box).forEach(this::line);
    box.findings().forEach(f -> line("! " + f));
    line("");
    if (written.isEmpty()) {
      line("Nothing was written; '--write NAME' writes the box into the book as a change.");
    } else {
      line("Written: " + String.join(", ", written));
    }
    line("Isolate the lathe before a box is opened; never shift it with the spindle under power.");
  }

  private static String mm(double value) {
    return Numbers.significant(value, 6) + " mm";
  }

  private void line(String text) {
    terminal.out().println(text);
  }

  private String json(GearboxSearch.Outcome outcome, SettledBox box, List<String> written) {
    return Json.object(
        g -> {
          g.writeStringField("format", "fettle gearing box 1");
          g.writeNumberField("wheelCount", outcome.design().wheels());
          g.writeNumberField("lowerBound", outcome.lowerBound());
          g.writeStringField("metricLink", BoxChange.metricLink(box, cutting).text());
          if (!wish.perInch().isEmpty()) {
            g.writeStringField("inchLink", BoxChange.inchLink(box, cutting).text());
          }
          Json.number(g, "shaftMm", box.shaft());
          Json.number(g, "coneCentresMm", box.coneCentres());
          Json.number(g, "multiplierCentresMm", box.multiplierCentres());
          g.writeArrayFieldStart("wheels");
          for (BoxWheel w : box.wheels()) {
            g.writeStartObject();
            g.writeStringField("name", w.name());
            g.writeNumberField("teeth", w.gear().teeth());
            Json.number(g, "moduleMm", w.gear().module());
            Json.number(g, "shift", w.gear().shift());
            Json.number(g, "tipMm", w.tip());
            Json.number(g, "widthMm", w.width());
            Json.number(g, "boreMm", w.bore());
            g.writeNumberField("spanTeeth", w.gear().spanTeeth());
            Json.number(g, "spanLeastMm", w.spanLeast());
            Json.number(g, "spanMostMm", w.spanMost());
            g.writeEndObject();
          }
          g.writeEndArray();
          g.writeArrayFieldStart("notches");
          for (SettledBox.Notch n : box.notches()) {
            g.writeStartObject();
            g.writeNumberField("teeth", n.wheel());
            Json.number(g, "alongMm", n.along());
            Json.number(g, "swingDeg", Math.toDegrees(n.swing()));
            g.writeEndObject();
          }
          g.writeEndArray();
          words(g, "findings", box.findings());
          words(g, "written", written);
        });
  }

  private static void words(
      com.fasterxml.jackson.core.JsonGenerator json, String name, List<String> words)
      throws java.io.IOException {
    json.writeArrayFieldStart(name);
    for (String word : words) {
      json.writeString(word);
    }
    json.writeEndArray();
  }
}
