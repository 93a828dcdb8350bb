package fettle.desk.cli;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * {@code fettle completion} and {@code fettle manual}: what a shell and its manual want to know,
 * written from the table of commands.
 */
final class ShellCommand implements Command {

  private final String name;
  private final Function<List<CommandSpec>, String> text;

  ShellCommand(String name, Function<List<CommandSpec>, String> text) {
    this.name = name;
    this.text = text;
  }

  @Override
  public CommandSpec spec() {
    return name.equals("manual")
        ? Options.command(
            name,
            "Prints the manual page; 'fettle manual > fettle.1' and 'man ./fettle.1' show it.")
        : Options.command(
            name,
            "Prints what completes fettle's words when the tab key is pressed.",
            "bash: source <(fettle completion). zsh: after 'autoload -U bashcompinit;"
                + " bashcompinit'.");
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    terminal.out().print(text.apply(Main.specs()));
    return ExitStatus.DONE;
  }

  /** Returns a script that completes commands, options, folders, changes and trials. */
  static String completion(List<CommandSpec> specs) {
    String names = specs.stream().map(CommandSpec::name).collect(Collectors.joining(" "));
    StringBuilder script = new StringBuilder("# Completes the words of fettle in bash and zsh.\n");
    script.append("_fettle() {\n  local word=${COMP_WORDS[COMP_CWORD]} book options words\n");
    script.append(
        "  COMPREPLY=()\n  if [ \"$COMP_CWORD\" -eq 1 ]; then\n    COMPREPLY=($(compgen -W '");
    script.append(names).append(" --help --version' -- \"$word\"))\n    return\n  fi\n");
    script.append("  case ${COMP_WORDS[1]} in\n");
    for (CommandSpec spec : specs) {
      script.append("    ").append(spec.name()).append(")\n      options='");
      script.append(
          spec.options().stream().map(o -> "--" + o.getLongOpt()).collect(Collectors.joining(" ")));
      script.append("'\n");
      spec.words().stream()
          .filter(w -> w.label().equals("CHANGE") || w.label().equals("TRIAL"))
          .forEach(w -> script.append("      book=").append(folder(w)).append('\n'));
      script.append("      ;;\n");
    }
    script.append("  esac\n  if [[ $word == -* ]]; then\n");
    script.append("    COMPREPLY=($(compgen -W \"$options\" -- \"$word\"))\n");
    script.append(
        "  elif [ \"$COMP_CWORD\" -gt 2 ] && [ -n \"$book\" ] && [ -d \"$book\" ]; then\n");
    script.append("    words=$(cd \"$book\" && printf '%s\\n' *.yaml | sed 's/\\.yaml$//')\n");
    script.append("    COMPREPLY=($(compgen -W \"$words\" -- \"$word\"))\n");
    script.append("  else\n    COMPREPLY=($(compgen -f -- \"$word\"))\n  fi\n}\n");
    script.append("complete -o filenames -F _fettle fettle\n");
    return script.toString();
  }

  private static String folder(CommandSpec.Word word) {
    return "\"${COMP_WORDS[2]%/}/" + (word.label().equals("CHANGE") ? "changes\"" : "trials\"");
  }
}
