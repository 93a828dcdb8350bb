package fettle.desk.cli;

import java.util.List;
import org.apache.commons.cli.CommandLine;

/** The words and options a command was given. */
final class ParseResult {

  private final CommandLine line;

  ParseResult(CommandLine line) {
    this.line = line;
  }

  boolean helpAsked() {
    return line.hasOption("help");
  }

  /** Tells whether a flag was given; its name is written with both hyphens. */
  boolean on(String option) {
    return line.hasOption(option.substring(2));
  }

  /** Returns the value of an option, or another one if it was not given. */
  String option(String option, String otherwise) {
    return line.getOptionValue(option.substring(2), otherwise);
  }

  /** Returns the word at a place, from 0. */
  String word(int index) {
    return line.getArgList().get(index);
  }

  /** Returns all words from a place on. */
  List<String> words(int from) {
    List<String> all = line.getArgList();
    return List.copyOf(all.subList(Math.min(from, all.size()), all.size()));
  }
}
