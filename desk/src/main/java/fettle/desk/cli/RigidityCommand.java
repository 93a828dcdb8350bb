package fettle.desk.cli;

import fettle.desk.page.ForecastPage;
import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.state.Book;
import fettle.machine.topics.RigidityStudy;
import fettle.machine.topics.Study;
import java.util.List;

/** {@code fettle rigidity}: where the lathe gives, and what changes do to it. */
final class RigidityCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "rigidity",
            "Where the lathe gives between tool and work, joint by joint, and what changes do to it.",
            "A slide that a change alters is reckoned by finite elements, which takes seconds; with",
            "--members all members are whose features the book tells.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addPositional(Options.many("CHANGE", "Changes to foresee, as their files are called."));
    spec.addOption(Options.text("--from", "STATE", "The state to compare with."));
    spec.addOption(
        Options.text("--to", "STATE", "The state to look at, instead of naming changes."));
    spec.addOption(Options.flag("--members", "Reckon every member, not only altered ones."));
    spec.addOption(Options.flag("--all", "Show figures that stay the same, too."));
    spec.addOption(
        Options.flag(
            "--workings", "Show the formula of each figure with its numbers, and its source."));
    spec.addOption(Options.flag("--inch", "Show inches and pounds."));
    spec.addOption(Options.flag("--metric", "Show millimetres and newtons."));
    spec.addOption(Options.flag("--plain", "No colours."));
    spec.addOption(
        Options.text("--width", "COLUMNS", "Width of the table; below 78 it is set in blocks."));
    spec.addOption(Options.flag("--json", "Write JSON; docs/forecast.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    Book book = Books.open(given.word(0));
    ForecastCommand.Pair pair = ForecastCommand.Pair.of(book, given.words(1), given);
    RigidityStudy.Depth depth =
        given.on("--members") ? RigidityStudy.Depth.ALL : RigidityStudy.Depth.CHANGED;
    List<Study> studies =
        RigidityStudy.of(
            pair.before().machine().orElseThrow(),
            pair.after().machine().orElseThrow(),
            depth,
            member -> terminal.err().println("reckoning the metal of: " + member));
    Forecast forecast = Forecast.of(pair.before(), pair.after(), studies.get(0), studies.get(1));
    boolean alone = pair.before().changes().equals(pair.after().changes());
    ForecastPage.Extent extent =
        given.on("--all") ? ForecastPage.Extent.ALL : ForecastPage.Extent.MOVED;
    if (given.on("--json")) {
      List<Row> rows =
          extent == ForecastPage.Extent.ALL || alone ? forecast.rows() : forecast.moved();
      terminal.out().println(ForecastJson.text(forecast, rows));
    } else {
      ForecastPage page =
          ForecastPage.of(book, forecast, extent, ForecastCommand.measure(book, given));
      TextForecast.Detail detail =
          given.on("--workings") ? TextForecast.Detail.WORKINGS : TextForecast.Detail.BRIEF;
      TextForecast.print(page, detail, ForecastCommand.shape(given, terminal));
    }
    return forecast.stops() ? ExitStatus.STOP : ExitStatus.DONE;
  }
}
