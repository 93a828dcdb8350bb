package fettle.desk.cli;

import java.io.PrintStream;

/**
 * Where a command writes.
 *
 * @param out results
 * @param err messages
 * @param width columns of the terminal
 * @param inks whether colours may be used
 */
public record Terminal(PrintStream out, PrintStream err, int width, Inks inks) {

  /** Whether the terminal shows colours. */
  public enum Inks {
    COLOUR,
    PLAIN
  }

  /** Colours named for what they mean on a shop drawing. */
  enum Ink {
    GRAPHITE("1"),
    BLUE("34"),
    RED("31;4"),
    BRASS("33"),
    FAINT("2");

    private final String code;

    Ink(String code) {
      this.code = code;
    }
  }

  /** Returns a text in an ink, or as it is on a plain terminal. */
  String ink(Ink ink, String text) {
    return inks == Inks.PLAIN || text.isEmpty()
        ? text
        : "\u001b[" + ink.code + "m" + text + "\u001b[0m";
  }

  /** Returns this terminal with another width and choice of inks. */
  Terminal with(int columns, Inks choice) {
    return new Terminal(out, err, columns, choice);
  }
}
