package fettle.desk.cli;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.ParseException;

/** What a command takes: its words, in order, and its options. */
final class CommandSpec {

  /**
   * A word that is not an option.
   *
   * @param label how it is called in the help
   * @param description what it is
   * @param many true if it may stand any number of times, or not at all
   */
  record Word(String label, String description, boolean many) {}

  private static final int COLUMN = 26;
  private final String name;
  private final List<String> description;
  private final List<Word> words = new ArrayList<>();
  private final org.apache.commons.cli.Options options = new org.apache.commons.cli.Options();

  CommandSpec(String name, List<String> description) {
    this.name = name;
    this.description = description;
  }

  String name() {
    return name;
  }

  /** Returns what it does, line by line. */
  List<String> description() {
    return List.copyOf(description);
  }

  /** Returns the words it takes. */
  List<Word> words() {
    return List.copyOf(words);
  }

  /** Returns the options it takes. */
  List<Option> options() {
    return List.copyOf(options.getOptions());
  }

  void addOption(Option option) {
    options.addOption(option);
  }

  void addPositional(Word word) {
    words.add(word);
  }

  /** Reads the arguments; a {@link Failure} says what is wrong with them. */
  ParseResult parse(List<String> args) {
    try {
      CommandLine line =
          DefaultParser.builder()
              .setAllowPartialMatching(false)
              .build()
              .parse(options, args.toArray(new String[0]));
      ParseResult result = new ParseResult(line);
      if (!result.helpAsked()) {
        enough(line.getArgList());
      }
      return result;
    } catch (ParseException e) {
      throw Failure.input(e.getMessage() + ". " + hint());
    }
  }

  private void enough(List<String> given) {
    long single = words.stream().filter(w -> !w.many()).count();
    boolean any = words.stream().anyMatch(Word::many);
    if (given.size() < single) {
      throw Failure.input("Missing " + words.get(given.size()).label() + ". " + hint());
    }
    if (given.size() > single && !any) {
      throw Failure.input("One word too many: '" + given.get((int) single) + "'. " + hint());
    }
  }

  private String hint() {
    return "'fettle " + name + " --help' shows what is expected.";
  }

  /** Returns the help text. */
  String help() {
    StringBuilder text = new StringBuilder("fettle ").append(name);
    words.forEach(w -> text.append(' ').append(w.many() ? "[" + w.label() + "...]" : w.label()));
    text.append(" [options]\n\n");
    description.forEach(d -> text.append(d).append('\n'));
    text.append('\n');
    words.forEach(w -> line(text, w.label(), w.description()));
    for (Option option : options.getOptions()) {
      String label = "--" + option.getLongOpt();
      line(
          text,
          option.hasArg() ? label + " " + option.getArgName() : label,
          option.getDescription());
    }
    return text.toString();
  }

  private static void line(StringBuilder text, String label, String description) {
    text.append("  ").append(label).append(" ".repeat(Math.max(2, COLUMN - label.length())));
    text.append(description).append('\n');
  }
}
