package fettle.desk.cli;

import fettle.machine.text.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.function.Supplier;

/** Where Fettle starts. */
public final class Main {

  private static final Map<String, Supplier<Command>> COMMANDS = commands();
  private static final int ORDINARY_WIDTH = 100;
  private static final int LONGEST_MESSAGE = 2_000;

  private Main() {}

  /** Runs one command and ends with its exit status. */
  public static void main(String[] args) {
    PrintStream out =
        new PrintStream(
            new java.io.FileOutputStream(java.io.FileDescriptor.out),
            false,
            StandardCharsets.UTF_8);
    PrintStream err =
        new PrintStream(
            new java.io.FileOutputStream(java.io.FileDescriptor.err), true, StandardCharsets.UTF_8);
    boolean colour =
        "yes".equals(System.getProperty("fettle.terminal")) && System.getenv("NO_COLOR") == null;
    Terminal terminal =
        new Terminal(out, err, columns(), colour ? Terminal.Inks.COLOUR : Terminal.Inks.PLAIN);
    int status = run(args, terminal);
    out.flush();
    System.exit(status);
  }

  /** Runs one command on a terminal and returns its exit status. */
  public static int run(String[] args, Terminal terminal) {
    if (args.length == 0
        || args[0].equals("--help")
        || args[0].equals("-h")
        || args[0].equals("help")) {
      usage(terminal.out());
      return (args.length == 0 ? ExitStatus.WRONG_INPUT : ExitStatus.DONE).code();
    }
    if (args[0].equals("--version") || args[0].equals("-V")) {
      terminal.out().println("fettle " + version());
      return ExitStatus.DONE.code();
    }
    Supplier<Command> command = COMMANDS.get(args[0]);
    if (command == null) {
      terminal
          .err()
          .println(
              "There is no command '"
                  + brief(args[0])
                  + "'. "
                  + fettle.machine.text.Nearest.hint(args[0], COMMANDS.keySet()));
      usage(terminal.err());
      return ExitStatus.WRONG_INPUT.code();
    }
    return run(command.get(), List.of(args).subList(1, args.length), terminal);
  }

  private static int run(Command command, List<String> args, Terminal terminal) {
    CommandSpec spec = command.spec();
    boolean json = args.contains("--json");
    try {
      ParseResult given = spec.parse(args);
      if (given.helpAsked()) {
        terminal.out().print(spec.help());
        return ExitStatus.DONE.code();
      }
      return command.run(given, terminal).code();
    } catch (Failure failure) {
      tell(failure, json, terminal);
      return failure.status().code();
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      terminal
          .err()
          .println("Fettle itself is at fault: " + e.getClass().getSimpleName() + report(e));
      return ExitStatus.NOT_COMPUTED.code();
    }
  }

  /** Keeps a message that repeats what was typed printable and of ordinary length. */
  private static String brief(String message) {
    String printable =
        message
            .codePoints()
            .limit(LONGEST_MESSAGE)
            .map(c -> Character.isISOControl(c) && c != '\n' ? ' ' : c)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    return printable.length() < message.length() ? printable + "…" : printable;
  }

  private static void tell(Failure failure, boolean json, Terminal terminal) {
    if (json) {
      terminal
          .out()
          .println(
              Json.object(
                  g -> {
                    g.writeStringField("format", "fettle problems 1");
                    g.writeStringField("message", brief(failure.words()));
                    g.writeArrayFieldStart("problems");
                    for (Problem p : failure.problems()) {
                      g.writeStartObject();
                      g.writeStringField("file", p.at().file());
                      g.writeNumberField("line", p.at().line());
                      g.writeNumberField("column", p.at().column());
                      g.writeStringField("key", p.key());
                      g.writeStringField("found", p.found());
                      g.writeStringField("expected", p.expected());
                      g.writeStringField("remedy", p.remedy());
                      g.writeEndObject();
                    }
                    g.writeEndArray();
                  }));
      return;
    }
    if (!failure.words().isEmpty()) {
      terminal.err().println(brief(failure.words()));
    }
    failure.problems().forEach(p -> terminal.err().println(p.text()));
    int count = failure.problems().size();
    if (count > 0) {
      terminal.err().println(count == 1 ? "1 problem." : count + " problems.");
    }
  }

  /** Writes the report of a fault of ours to a file and says where it lies. */
  private static String report(Throwable fault) {
    try {
      Path file = Files.createTempFile("fettle-fault-", ".txt");
      StringWriter text = new StringWriter();
      fault.printStackTrace(new PrintWriter(text));
      Files.writeString(file, text.toString());
      return ". The report lies in " + file;
    } catch (IOException e) {
      return "";
    }
  }

  private static Map<String, Supplier<Command>> commands() {
    Map<String, Supplier<Command>> commands = new java.util.LinkedHashMap<>();
    commands.put("forecast", ForecastCommand::new);
    commands.put("check", CheckCommand::new);
    commands.put("new", NewCommand::new);
    commands.put("gearing", GearingCommand::new);
    commands.put("rigidity", RigidityCommand::new);
    commands.put("prove", ProveCommand::new);
    commands.put("clearance", ClearanceCommand::new);
    commands.put("sheets", SheetsCommand::new);
    commands.put("pack", PackCommand::new);
    commands.put("publish", PublishCommand::new);
    commands.put("order", OrderCommand::new);
    commands.put("route", RouteCommand::new);
    commands.put("wiring", WiringCommand::new);
    commands.put("reckon", ReckonCommand::new);
    commands.put("desk", DeskCommand::new);
    commands.put("completion", () -> new ShellCommand("completion", ShellCommand::completion));
    commands.put("manual", () -> new ShellCommand("manual", ManualPage::text));
    return java.util.Collections.unmodifiableMap(commands);
  }

  /** Returns what every command takes. */
  static List<CommandSpec> specs() {
    return COMMANDS.values().stream().map(c -> c.get().spec()).toList();
  }

  private static void usage(PrintStream to) {
    to.println("fettle: foresee, settle, draw, make and prove a change to a small lathe");
    to.println();
    to.println("  fettle forecast BOOK [CHANGE...]   what changes do to the whole lathe");
    to.println(
        "  fettle check BOOK                  what is wrong with a book, with file and line");
    to.println("  fettle new FOLDER                  start a book from a starter lathe");
    to.println(
        "  fettle gearing BOOK threads        change gears for every thread; or teeth for a"
            + " travel");
    to.println("  fettle rigidity BOOK [CHANGE...]   where the lathe gives, and what a slot costs");
    to.println(
        "  fettle prove BOOK [TRIAL...]       what readings say: good, not good or cannot tell");
    to.println(
        "  fettle clearance BOOK [CHANGE...]  what touches or comes near over the whole travel");
    to.println("  fettle order BOOK                  in what order the changes are made; --buying");
    to.println("  fettle route BOOK CHANGE           how each part of a change is made");
    to.println(
        "  fettle wiring BOOK [CHANGE...]     wires and terminals of the control box, checked");
    to.println(
        "  fettle sheets BOOK --out DIR       drawings, solids and parts lists of the changes");
    to.println(
        "  fettle pack BOOK CHANGE            all that is needed to make a change, as one PDF");
    to.println(
        "  fettle publish BOOK --out DIR      the book as pages for any web host, or from disk");
    to.println("  fettle reckon [TOPIC NAME=VALUE]   one single calculation; --list shows all");
    to.println("  fettle desk BOOK                   the book as pages, on this machine only");
    to.println("  fettle completion                  completion of words for bash and zsh");
    to.println("  fettle manual                      the manual page");
    to.println("  fettle --version");
    to.println();
    to.println("'fettle COMMAND --help' shows the options of a command.");
    to.println(
        "Exit status: 0 done, 1 a finding says stop, 2 the input is wrong, 3 it could not be"
            + " computed.");
  }

  static String version() {
    try (InputStream in = Main.class.getResourceAsStream("version.properties")) {
      Properties properties = new Properties();
      properties.load(in);
      return properties.getProperty("version", "unknown");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static int columns() {
    String columns = System.getenv("COLUMNS");
    boolean usable = columns != null && columns.matches("[1-9]\\d{1,3}");
    return usable ? Integer.parseInt(columns) : ORDINARY_WIDTH;
  }
}
