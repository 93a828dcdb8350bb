package fettle.desk.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Options that several commands share, described without reflection so that the start is quick. */
final class Options {

  private Options() {}

  static CommandSpec command(String name, String... description) {
    CommandSpec spec = CommandSpec.create().name(name);
    spec.usageMessage().description(description).abbreviateSynopsis(false).width(90);
    spec.addOption(
        OptionSpec.builder("-h", "--help").usageHelp(true).description("Show this text.").build());
    return spec;
  }

  static OptionSpec flag(String name, String description) {
    return OptionSpec.builder(name)
        .type(boolean.class)
        .defaultValue("false")
        .description(description)
        .build();
  }

  static OptionSpec text(String name, String label, String description) {
    return OptionSpec.builder(name)
        .type(String.class)
        .paramLabel(label)
        .description(description)
        .build();
  }

  static PositionalParamSpec one(int index, String label, String description) {
    return PositionalParamSpec.builder()
        .index(String.valueOf(index))
        .type(String.class)
        .arity("1")
        .required(true)
        .paramLabel(label)
        .description(description)
        .build();
  }

  static PositionalParamSpec many(int from, String label, String description) {
    return PositionalParamSpec.builder()
        .index(from + "..*")
        .type(String[].class)
        .auxiliaryTypes(String.class)
        .arity("0..*")
        .required(false)
        .paramLabel(label)
        .description(description)
        .build();
  }

  static boolean on(ParseResult given, String option) {
    return given.matchedOptionValue(option, false);
  }
}
