package fettle.desk.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * What a command said.
 *
 * @param status its exit status
 * @param out what it wrote
 * @param err its messages
 */
record Told(int status, String out, String err) {

  /** Folder of the demo book. */
  static final String DEMO = "../examples/dunlin-85";

  /** Folder of the published schemas. */
  static final Path DOCS = Path.of("../docs");

  static Told of(String... args) {
    return of(100, Terminal.Inks.PLAIN, args);
  }

  static Told of(int width, Terminal.Inks inks, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            width,
            inks);
    int status = Main.run(args, terminal);
    return new Told(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  List<String> lines() {
    return out.lines().toList();
  }
}
