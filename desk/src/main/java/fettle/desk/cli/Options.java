package fettle.desk.cli;

import java.util.List;
import org.apache.commons.cli.Option;

/** Describes what commands take. */
final class Options {

  private Options() {}

  static CommandSpec command(String name, String... description) {
    CommandSpec spec = new CommandSpec(name, List.of(description));
    spec.addOption(Option.builder("h").longOpt("help").desc("Show this text.").build());
    return spec;
  }

  static Option flag(String name, String description) {
    return Option.builder().longOpt(name.substring(2)).desc(description).build();
  }

  static Option text(String name, String label, String description) {
    return Option.builder()
        .longOpt(name.substring(2))
        .hasArg()
        .argName(label)
        .desc(description)
        .build();
  }

  static CommandSpec.Word one(String label, String description) {
    return new CommandSpec.Word(label, description, false);
  }

  static CommandSpec.Word many(String label, String description) {
    return new CommandSpec.Word(label, description, true);
  }
}
