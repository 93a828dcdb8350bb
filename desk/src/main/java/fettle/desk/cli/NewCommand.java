package fettle.desk.cli;

import fettle.machine.text.Nearest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;

/** {@code fettle new}: starts a book from a starter lathe. */
final class NewCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec = Options.command("new", description());
    spec.addPositional(
        Options.one("FOLDER", "The folder to make; it must be empty or not be there yet."));
    spec.addOption(
        Options.text("--like", "KIND", "The lathe that is most like yours; else bench."));
    return spec;
  }

  private static String[] description() {
    Stream<String> kinds =
        Arrays.stream(Starter.values())
            .map(s -> "  " + s.word() + " ".repeat(14 - s.word().length()) + s.about());
    return Stream.concat(
            Stream.of(
                "Starts a book from an invented lathe, to be changed line by line into yours.",
                "A KIND is"),
            kinds)
        .toArray(String[]::new);
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    String name = given.word(0);
    Path folder = Books.folder(name);
    Starter starter = starter(given.option("--like", Starter.BENCH.word()));
    try {
      if (Files.exists(folder) && (!Files.isDirectory(folder) || holdsSomething(folder))) {
        throw Failure.input(
            "'" + name + "' is there already and not an empty folder; choose another name");
      }
    } catch (IOException e) {
      throw Failure.input("'" + name + "' cannot be looked into: " + e.getMessage());
    }
    for (String file : starter.files()) {
      Pages.write(folder.resolve(file), starter.text(file));
    }
    terminal.out().println("A book was started in " + name + ":");
    starter.files().forEach(f -> terminal.out().println("  " + f));
    terminal.out().println("'fettle desk " + name + "' asks for your lathe's sizes one by one.");
    terminal.out().println("Or put them into the files yourself, then: fettle check " + name);
    return ExitStatus.DONE;
  }

  private static boolean holdsSomething(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      return files.findAny().isPresent();
    }
  }

  private static Starter starter(String word) {
    return Starter.of(word)
        .orElseThrow(
            () ->
                Failure.input(
                    "--like: there is no starter lathe '"
                        + word
                        + "'; there are "
                        + String.join(", ", Starter.words())
                        + ". "
                        + Nearest.hint(word, Starter.words())));
  }
}
