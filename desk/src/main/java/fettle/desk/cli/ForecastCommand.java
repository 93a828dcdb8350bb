package fettle.desk.cli;

import fettle.desk.page.ForecastPage;
import fettle.desk.page.Measure;
import fettle.desk.template.JteforecastGenerated;
import fettle.machine.forecast.Forecast;
import fettle.machine.forecast.Row;
import fettle.machine.state.Book;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.machine.topics.Topics;
import fettle.mechanics.materials.Materials;
import java.util.ArrayList;
import java.util.List;

/** {@code fettle forecast}: what changes do to the whole machine. */
final class ForecastCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "forecast",
            "What one or several changes do to the whole lathe, figure by figure.",
            "Without a change: every figure of the lathe as it stands.",
            "A STATE is as-bought, as-it-stands, as-planned, everything, none, or changes joined by"
                + " +.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addPositional(Options.many("CHANGE", "Changes to foresee, as their files are called."));
    spec.addOption(Options.text("--from", "STATE", "The state to compare with."));
    spec.addOption(
        Options.text("--to", "STATE", "The state to look at, instead of naming changes."));
    spec.addOption(Options.flag("--all", "Show figures that stay the same, too."));
    spec.addOption(
        Options.flag(
            "--workings", "Show the formula of each figure with its numbers, and its source."));
    spec.addOption(Options.flag("--inch", "Show inches and pounds."));
    spec.addOption(Options.flag("--metric", "Show millimetres and newtons."));
    spec.addOption(Options.flag("--plain", "No colours."));
    spec.addOption(
        Options.text("--width", "COLUMNS", "Width of the table; below 78 it is set in blocks."));
    spec.addOption(Options.text("--html", "FILE", "Write one self-contained page."));
    spec.addOption(Options.flag("--json", "Write JSON; docs/forecast.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    readAhead();
    Book book = Books.open(given.word(0));
    List<String> named = given.words(1);
    Forecast forecast = forecast(book, named, given);
    ForecastPage.Extent extent =
        given.on("--all") ? ForecastPage.Extent.ALL : ForecastPage.Extent.MOVED;
    boolean alone = forecast.before().changes().equals(forecast.after().changes());
    if (given.on("--json")) {
      List<Row> rows =
          extent == ForecastPage.Extent.ALL || alone ? forecast.rows() : forecast.moved();
      terminal.out().println(ForecastJson.text(forecast, rows));
    } else {
      ForecastPage page = ForecastPage.of(book, forecast, extent, measure(book, given));
      String file = given.option("--html", "");
      if (!file.isEmpty()) {
        Pages.write(Books.folder(file), out -> JteforecastGenerated.render(out, null, page));
        terminal.out().println("written: " + file);
      } else {
        TextForecast.Detail detail =
            given.on("--workings") ? TextForecast.Detail.WORKINGS : TextForecast.Detail.BRIEF;
        TextForecast.print(page, detail, shape(given, terminal));
      }
    }
    return forecast.stops() ? ExitStatus.STOP : ExitStatus.DONE;
  }

  /** Reads tables that are needed soon on the second processor while the first reads the book. */
  private static void readAhead() {
    Thread ahead =
        new Thread(
            () -> {
              Materials.all();
              Topics.names();
            },
            "tables");
    ahead.setDaemon(true);
    ahead.start();
  }

  private static Forecast forecast(Book book, List<String> named, ParseResult given) {
    Pair pair = Pair.of(book, named, given);
    return Forecast.of(book, pair.before(), pair.after());
  }

  /**
   * Two states to hold side by side.
   *
   * @param before the first
   * @param after the second
   */
  record Pair(State before, State after) {

    /** Returns the states that changes and options name, both sound. */
    static Pair of(Book book, List<String> named, ParseResult given) {
      String to = given.option("--to", "");
      String from = given.option("--from", "");
      if (!named.isEmpty() && !to.isEmpty()) {
        throw Failure.input("name either changes or --to STATE, not both");
      }
      List<String> wanted = Books.keys(book, named);
      List<String> standing = book.keys(Stage::done);
      State after;
      State before;
      if (!named.isEmpty()) {
        List<String> with = new ArrayList<>(standing);
        with.addAll(wanted);
        List<String> without = new ArrayList<>(standing);
        without.removeAll(named);
        before =
            State.of(
                book,
                "as it stands"
                    + (without.size() < standing.size()
                        ? " without " + String.join(", ", named)
                        : ""),
                without);
        after = State.of(book, "", with);
      } else {
        after = Books.state(book, to.isEmpty() ? "as-it-stands" : to);
        before = from.isEmpty() && !to.isEmpty() ? Books.state(book, "as-it-stands") : after;
      }
      if (!from.isEmpty()) {
        before = Books.state(book, from);
      }
      return new Pair(Books.sound(before), Books.sound(after));
    }
  }

  static Measure measure(Book book, ParseResult given) {
    if (given.on("--inch") || given.on("--metric")) {
      return given.on("--inch") ? Measure.INCH : Measure.METRIC;
    }
    State bought = State.of(book, "", List.of());
    return Measure.of(bought.machine().map(m -> m.values().needText("units")).orElse("metric"));
  }

  static Terminal shape(ParseResult given, Terminal terminal) {
    String width = given.option("--width", "");
    if (!width.isEmpty() && !width.matches("[1-9]\\d{1,3}")) {
      throw Failure.input(
          "--width: found '" + width + "', expected a number of columns from 10 to 9999");
    }
    int columns = width.isEmpty() ? terminal.width() : Integer.parseInt(width);
    return terminal.with(columns, given.on("--plain") ? Terminal.Inks.PLAIN : terminal.inks());
  }
}
