package fettle.desk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** {@code fettle new}: starts a book from a starter lathe. */
final class NewCommand implements Command {

  private static final List<String> FILES =
      List.of("machine.yaml", "shop.yaml", "changes/first-dial.yaml");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "new",
            "Starts a book from a small invented bench lathe, to be changed line by line into yours.");
    spec.addPositional(
        Options.one("FOLDER", "The folder to make; it must be empty or not be there yet."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    String name = given.word(0);
    Path folder = Books.folder(name);
    try {
      if (Files.exists(folder) && (!Files.isDirectory(folder) || holdsSomething(folder))) {
        throw Failure.input(
            "'" + name + "' is there already and not an empty folder; choose another name");
      }
    } catch (IOException e) {
      throw Failure.input("'" + name + "' cannot be looked into: " + e.getMessage());
    }
    for (String file : FILES) {
      Pages.write(folder.resolve(file), text(file));
    }
    terminal.out().println("A book was started in " + name + ":");
    FILES.forEach(f -> terminal.out().println("  " + f));
    terminal.out().println("Measure your lathe, put its sizes in, then: fettle check " + name);
    return ExitStatus.DONE;
  }

  private static boolean holdsSomething(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      return files.findAny().isPresent();
    }
  }

  private static String text(String file) {
    try (InputStream in =
        NewCommand.class.getResourceAsStream("/fettle/desk/starter/bench/" + file)) {
      if (in == null) {
        throw new IllegalStateException("the starter lathe lacks " + file);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
