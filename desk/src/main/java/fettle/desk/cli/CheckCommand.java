package fettle.desk.cli;

import fettle.machine.made.MadeParts;
import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import fettle.machine.text.Problem;
import fettle.machine.trials.Trials;
import java.util.ArrayList;
import java.util.List;

/** {@code fettle check}: everything that is wrong with a book. */
final class CheckCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "check",
            "Reads a book and says everything that is wrong with it, with file, line and column.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addOption(Options.flag("--json", "Write JSON."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    BookFiles files = Books.files(given.word(0));
    Book book = Books.book(files);
    List<Problem> problems = new ArrayList<>(book.problems());
    problems.addAll(Trials.read(files, book).problems());
    problems.addAll(MadeParts.of(book).problems());
    if (!problems.isEmpty()) {
      throw Failure.input(problems);
    }
    if (given.on("--json")) {
      terminal
          .out()
          .println(
              Json.object(
                  json -> {
                    json.writeStringField("format", "fettle check 1");
                    json.writeArrayFieldStart("problems");
                    json.writeEndArray();
                  }));
    } else {
      terminal
          .out()
          .println(
              "The book is sound: the lathe and "
                  + Words.counted(book.changes().size(), "change")
                  + ".");
    }
    return ExitStatus.DONE;
  }
}
