package fettle.desk.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Runs the short commands once, so that the shared class archive holds what they load. */
public final class Training {

  private Training() {}

  /** Takes the folder of a sound book. */
  public static void main(String[] args) {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(nowhere, nowhere, 100, Terminal.Inks.COLOUR);
    List<String[]> runs =
        List.of(
            new String[] {"--version"},
            new String[] {"check", args[0]},
            new String[] {"forecast", args[0]},
            new String[] {"forecast", args[0], "quiet-drive", "--workings"},
            new String[] {"forecast", args[0], "quiet-drive", "--json"},
            new String[] {"reckon", "rack-travel", "z1=13", "z2=40", "z3=15", "m=1.5", "--json"});
    runs.forEach(run -> Main.run(run, terminal));
  }
}
