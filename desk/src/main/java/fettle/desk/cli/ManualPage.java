package fettle.desk.cli;

import java.util.List;
import org.apache.commons.cli.Option;

/** The manual page, in the roff language, from the table of commands. */
final class ManualPage {

  private ManualPage() {}

  /** Returns the page. */
  static String text(List<CommandSpec> specs) {
    StringBuilder page = new StringBuilder();
    page.append(".TH FETTLE 1 \"\" \"fettle ").append(roff(Main.version())).append("\"\n");
    page.append(
        ".SH NAME\nfettle \\- foresee, settle, draw, make and prove a change to a small lathe\n");
    page.append(".SH SYNOPSIS\n.B fettle\n.I COMMAND\n[words] [options]\n");
    page.append(".SH DESCRIPTION\n");
    page.append(
        "A book is a folder that describes a lathe and the changes planned for it in plain\n");
    page.append(
        "text. Each command answers one question about a book, or makes one calculation.\n");
    page.append(".SH COMMANDS\n");
    specs.forEach(spec -> command(page, spec));
    page.append(".SH EXIT STATUS\n");
    page.append(".TP\n.B 0\nDone.\n.TP\n.B 1\nA finding says stop.\n");
    page.append(".TP\n.B 2\nThe input is wrong.\n.TP\n.B 3\nIt could not be computed.\n");
    page.append(".SH CAUTION\n");
    page.append("Figures are for planning; they are no promise of safety. Local codes hold.\n");
    return page.toString();
  }

  private static void command(StringBuilder page, CommandSpec spec) {
    page.append(".SS fettle ").append(roff(spec.name()));
    spec.words()
        .forEach(w -> page.append(roff(w.many() ? " [" + w.label() + "...]" : " " + w.label())));
    page.append('\n');
    spec.description().forEach(line -> page.append(roff(line)).append("\n.br\n"));
    spec.words().forEach(w -> entry(page, ".I " + roff(w.label()), w.description()));
    for (Option option : spec.options()) {
      String argument = option.hasArg() ? " " + option.getArgName() : "";
      entry(page, ".B " + roff("--" + option.getLongOpt() + argument), option.getDescription());
    }
  }

  private static void entry(StringBuilder page, String tag, String description) {
    page.append(".TP\n").append(tag).append('\n').append(roff(description)).append('\n');
  }

  /** Guards what the language of the page would take for its own. */
  private static String roff(String text) {
    String plain = text.replace("\\", "\\e").replace("-", "\\-");
    return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
  }
}
