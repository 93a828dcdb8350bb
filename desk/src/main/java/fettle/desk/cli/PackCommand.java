package fettle.desk.cli;

import fettle.desk.pack.Held;
import fettle.desk.pack.PackFiles;
import fettle.desk.pack.PackSource;
import fettle.machine.made.MadePart;
import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Parsed;
import fettle.machine.trials.Trial;
import fettle.machine.trials.Trials;
import fettle.sheets.page.Heads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** {@code fettle pack}: everything that is needed to make one change, as a PDF and a folder. */
final class PackCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "pack",
            "The plan pack of a change: one PDF with cover, figures before and after, parts list,",
            "buying list, drawings at full size, order of work, settings, cautions, proof sheets and",
            "record of revisions; and the folder of its files. A pack that lies in the folder already",
            "is held against the new one: what changed is listed, and a pack that says the same stays",
            "the same issue, byte by byte.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addPositional(Options.one("CHANGE", "The change, as its file is called."));
    spec.addOption(
        Options.text("--out", "DIR", "The folder to write to, else 'packs'; DIR/CHANGE is made."));
    spec.addOption(Options.text("--date", "DATE", "Date of issue, as 2026-01-31; else today."));
    spec.addOption(
        Options.text(
            "--without",
            "THINGS",
            "Hold back, joined with plus signs: " + String.join(", ", Held.words()) + "."));
    spec.addOption(Options.flag("--json", "Write JSON, as docs/pack.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    BookFiles files = Books.files(given.word(0));
    Book book = Books.book(files);
    String key = given.word(1);
    Books.keys(book, List.of(key));
    Path folder = Books.folder(given.option("--out", "packs")).resolve(key);
    PackFiles made =
        made(
            source(files, book, key, given),
            name -> standing(folder.resolve(name)),
            name -> terminal.err().println("drawn: " + name));
    made.files().forEach((name, bytes) -> write(folder, name, bytes));
    if (given.on("--json")) {
      terminal.out().println(PackJson.text(made));
    } else {
      report(made, folder, terminal);
    }
    made.faults().forEach(f -> terminal.err().println(f));
    return made.faults().isEmpty() ? ExitStatus.DONE : ExitStatus.STOP;
  }

  private static PackSource source(BookFiles files, Book book, String key, ParseResult given) {
    Parsed<List<MadePart>> parts = MadeParts.of(book, List.of(key));
    Parsed<Map<String, Trial>> trials = Trials.read(files, book);
    try {
      return PackSource.of(
          files,
          book,
          key,
          parts.orThrow(() -> Failure.input(parts.problems())),
          trials.orThrow(() -> Failure.input(trials.problems())),
          Heads.of(book, Dates.given("--date", given.option("--date", ""))),
          held(given.option("--without", "")));
    } catch (IllegalArgumentException e) {
      throw Failure.input(key + ": " + e.getMessage());
    }
  }

  private static Set<Held> held(String words) {
    Set<Held> held = new LinkedHashSet<>();
    for (String word : words.isEmpty() ? List.<String>of() : Books.words(words)) {
      held.add(
          Held.of(word)
              .orElseThrow(
                  () ->
                      Failure.input(
                          "--without: found '"
                              + word
                              + "', expected one of "
                              + String.join(", ", Held.words()))));
    }
    return held;
  }

  private static PackFiles made(
      PackSource source,
      Function<String, Optional<String>> standing,
      java.util.function.Consumer<String> drawn) {
    try {
      return PackFiles.of(source, standing, drawn);
    } catch (IllegalArgumentException e) {
      throw Failure.notComputed(source.change().key() + ": " + e.getMessage());
    }
  }

  private static Optional<String> standing(Path file) {
    try {
      return Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    } catch (IOException e) {
      throw Failure.input(file + " cannot be read: " + e.getMessage());
    }
  }

  private static void write(Path folder, String name, byte[] bytes) {
    Pages.write(Pages.within(folder, name), bytes);
  }

  private static void report(PackFiles made, Path folder, Terminal terminal) {
    terminal
        .out()
        .println(
            "revision "
                + made.pack().issue().index()
                + " of "
                + made.pack().issue().date()
                + (made.fresh() ? ": " + made.pack().issue().note() : ", unchanged"));
    terminal
        .out()
        .println(made.files().size() + " files in " + folder + "; print pack.pdf at full size.");
    terminal
        .out()
        .println(
            "Look the pack over before metal is cut by it: it is no promise that a part is safe to"
                + " use.");
  }
}
