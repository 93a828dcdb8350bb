package fettle.desk.cli;

/** One command of the command line. */
interface Command {

  /** Describes its options and parameters. */
  CommandSpec spec();

  /** Does its work; a {@link Failure} ends it with a message. */
  ExitStatus run(ParseResult given, Terminal terminal);
}
