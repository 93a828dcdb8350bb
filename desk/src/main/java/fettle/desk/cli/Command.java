package fettle.desk.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** One command of the command line. */
interface Command {

  /** Describes its options and parameters. */
  CommandSpec spec();

  /** Does its work; a {@link Failure} ends it with a message. */
  ExitStatus run(ParseResult given, Terminal terminal);
}
