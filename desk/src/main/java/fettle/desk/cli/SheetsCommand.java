package fettle.desk.cli;

import fettle.machine.made.MadePart;
import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.machine.text.Parsed;
import fettle.parts.check.Doubt;
import fettle.sheets.Assembly;
import fettle.sheets.BesideParts;
import fettle.sheets.page.Heads;
import java.util.List;
import java.util.Objects;

/** {@code fettle sheets}: draws the parts of a book. */
final class SheetsCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "sheets",
            "Draws the parts made for the changes of a book: a sheet as SVG and PDF, the solid as"
                + " STEP",
            "and 3MF, and an assembly sheet with its parts list for each change that has one; the"
                + " template",
            "of each graduated dial, and the layout of a control box. The file",
            "revisions.csv in DIR keeps which revision of each sheet is out: a sheet whose part has"
                + " not",
            "changed stays as it is, byte by byte; one whose part has changed gets the next"
                + " revision.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addOption(Options.text("--out", "DIR", "The folder to write to; it must be given."));
    spec.addOption(
        Options.text("--change", "CHANGES", "Changes joined with plus signs; else all."));
    spec.addOption(Options.text("--part", "PART", "One part, by its name or its recipe's name."));
    spec.addOption(Options.text("--date", "DATE", "Date of issue, as 2026-01-31; else today."));
    spec.addOption(Options.flag("--json", "Write JSON, as docs/sheets.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    Book book = Books.open(given.word(0));
    String out = given.option("--out", "");
    if (out.isEmpty()) {
      throw Failure.input("--out DIR is missing: the folder the sheets are written to");
    }
    List<String> changes = changes(book, given.option("--change", ""));
    Parsed<List<MadePart>> read = MadeParts.of(book, changes);
    List<MadePart> parts =
        Books.parts(read.orThrow(() -> Failure.input(read.problems())), given.option("--part", ""));
    SheetBatch batch =
        new SheetBatch(
            Books.folder(out),
            Heads.of(book, Dates.given("--date", given.option("--date", ""))),
            terminal);
    batch.parts(parts);
    if (given.option("--part", "").isEmpty()) {
      for (String key : changes) {
        Change change = Objects.requireNonNull(book.changes().get(key));
        Assembly.of(change, parts).ifPresent(batch::assembly);
        BesideParts.of(book, change, parts).forEach(one -> batch.beside(key, one));
      }
    }
    batch.finish();
    if (given.on("--json")) {
      terminal.out().println(SheetsJson.text(batch));
    } else {
      report(batch, parts, out, terminal);
    }
    return batch.faults() == 0 ? ExitStatus.DONE : ExitStatus.STOP;
  }

  private static void report(
      SheetBatch batch, List<MadePart> parts, String out, Terminal terminal) {
    parts.stream()
        .flatMap(p -> p.remarks().stream())
        .filter(r -> r.doubt().rank() == Doubt.Rank.CAUTION)
        .forEach(r -> terminal.out().println(r.text()));
    terminal.out().println(batch.summary() + " in " + out + ".");
    terminal
        .out()
        .println(
            "Look a sheet over before metal is cut by it: a drawing is no promise that a part is"
                + " safe to use.");
  }

  private static List<String> changes(Book book, String words) {
    if (words.isEmpty()) {
      return List.copyOf(book.changes().keySet());
    }
    List<String> keys = Books.words(words);
    Books.keys(book, keys);
    return keys;
  }
}
