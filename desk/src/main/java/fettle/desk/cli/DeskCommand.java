package fettle.desk.cli;

import fettle.desk.web.Desk;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;

/** {@code fettle desk}: the book as pages, on this machine only. */
final class DeskCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "desk",
            "Opens a book as pages for the browser, on this machine only.",
            "Nothing is sent to or loaded from anywhere else. Ctrl-C closes the desk.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addOption(Options.text("--port", "NUMBER", "Where to listen; any free port if left out."));
    spec.addOption(Options.flag("--no-browser", "Print the address and open no browser."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    String name = given.word(0);
    Path book = Books.folder(name);
    if (!java.nio.file.Files.isDirectory(book)) {
      throw Failure.input(
          "there is no folder '" + name + "'; 'fettle new FOLDER' starts a book in one");
    }
    String port = given.option("--port", "0");
    if (!port.matches("\\d{1,5}") || Integer.parseInt(port) > 65_535) {
      throw Failure.input("--port: found '" + port + "', expected a number from 0 to 65535");
    }
    try (Desk desk = open(book, Integer.parseInt(port))) {
      terminal.out().println("The desk is open. Ctrl-C closes it.");
      terminal.out().println(desk.address());
      terminal.out().flush();
      if (!given.on("--no-browser")) {
        browse(desk.address());
      }
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return ExitStatus.DONE;
  }

  private static Desk open(Path book, int port) {
    try {
      return Desk.start(book, port);
    } catch (RuntimeException e) {
      if (e.getClass().getName().startsWith("io.javalin") || e.getCause() instanceof IOException) {
        throw Failure.notComputed(
            "port "
                + port
                + " cannot be used; another program may listen there. Choose another"
                + " with --port, or leave it out");
      }
      throw e;
    }
  }

  /** Asks the system to show an address; where it cannot, the printed line is enough. */
  private static void browse(String address) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    String opener =
        system.contains("mac") ? "open" : system.contains("win") ? "explorer" : "xdg-open";
    try {
      new ProcessBuilder(opener, address)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      // The address stands on the terminal.
    }
  }
}
