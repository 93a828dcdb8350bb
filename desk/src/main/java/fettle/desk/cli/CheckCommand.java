package fettle.desk.cli;

import fettle.machine.state.Book;

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
    Book book = Books.open(given.word(0));
    if (!book.problems().isEmpty()) {
      throw Failure.input(book.problems());
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
          .println("The book is sound: the lathe and " + book.changes().size() + " changes.");
    }
    return ExitStatus.DONE;
  }
}
