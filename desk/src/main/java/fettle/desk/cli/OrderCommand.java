package fettle.desk.cli;

import fettle.machine.state.Book;
import fettle.machine.state.Stage;
import fettle.machine.text.Nearest;
import fettle.planning.buying.BuyingList;
import fettle.planning.order.Alternative;
import fettle.planning.order.BookWork;
import fettle.planning.order.Delivery;
import fettle.planning.order.Effort;
import fettle.planning.order.Impossible;
import fettle.planning.order.Order;
import fettle.planning.order.Orders;
import fettle.planning.order.Progress;
import fettle.planning.order.Terms;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code fettle order}: in what order the changes are made, and what is to be bought for them. */
final class OrderCommand implements Command {

  private static final double MOST_SECONDS = 3600;
  private static final double LEAST_NEWS = 0.3;

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "order",
            "The order of work over the planned changes: the lathe makes its own parts before it",
            "is stripped, benefit comes soon, the lathe is down little, and no work is lost.",
            "Ctrl-C ends the search and shows the best order so far.");
    spec.addPositional(Options.one("BOOK", "The folder of the book."));
    spec.addOption(
        Options.text("--change", "CHANGES", "Changes joined with plus signs, and what they need."));
    spec.addOption(Options.flag("--everything", "Ideas, too."));
    spec.addOption(Options.flag("--anew", "As if nothing had been made yet."));
    spec.addOption(Options.text("--start", "DATE", "The day of the start, such as 2027-01-31."));
    spec.addOption(Options.text("--hours", "H", "What if the shop had so many hours a week?"));
    spec.addOption(
        Options.text(
            "--lead", "CHANGE/THING=DAYS", "What if a purchase took so long? Several by commas."));
    spec.addOption(Options.flag("--buying", "What is to be bought, and what it costs."));
    spec.addOption(Options.text("--seconds", "S", "Longest search; else 100."));
    spec.addOption(Options.flag("--json", "Write JSON; docs/order.schema.json describes it."));
    return spec;
  }

  @Override
  public ExitStatus run(ParseResult given, Terminal terminal) {
    Book book = Books.open(given.word(0));
    Terms standing = Terms.of(book.shop());
    Terms.Made made = given.on("--anew") ? Terms.Made.AS_IF_NOTHING_WERE : Terms.Made.LEFT_OUT;
    Terms usual =
        new Terms(standing.hoursAWeek(), standing.downtime(), standing.lostWork(), Map.of(), made);
    List<String> keys = keys(book, given);
    if (given.on("--buying")) {
      BuyingList buying = BuyingList.of(book, keys);
      terminal
          .out()
          .println(given.on("--json") ? TextBuying.json(buying) : TextBuying.text(buying));
      return ExitStatus.DONE;
    }
    BookWork work = sound(BookWork.of(book, keys, usual));
    BookWork tried = sound(BookWork.of(book, keys, whatIf(given, usual, work)));
    Optional<LocalDate> start = start(given);
    if (work.list().tasks().isEmpty()) {
      throw Failure.input("no change is open: every one is fitted, proved or dropped");
    }
    Searching searching = new Searching(terminal);
    Order order = searching.best(tried, effort(given));
    boolean asks = !tried.terms().equals(work.terms());
    Optional<Order> before =
        asks ? Optional.of(searching.best(work, effort(given))) : Optional.empty();
    OrderAnswer answer =
        new OrderAnswer(
            book, tried, order, Alternative.of(tried.list(), order), start, work, before);
    terminal
        .out()
        .println(
            given.on("--json") ? OrderJson.text(answer) : TextOrder.text(answer, terminal.width()));
    searching.shown();
    return ExitStatus.DONE;
  }

  private static List<String> keys(Book book, ParseResult given) {
    String named = given.option("--change", "");
    if (!named.isEmpty()) {
      return Books.keys(book, Books.words(named));
    }
    boolean anew = given.on("--anew");
    boolean ideas = given.on("--everything");
    return book.keys(s -> s != Stage.DROPPED && (s.meant() || ideas) && (anew || !s.done()));
  }

  private static BookWork sound(BookWork work) {
    if (!work.problems().isEmpty()) {
      throw Failure.input(work.problems());
    }
    List<Impossible> impossible = work.list().impossible();
    if (!impossible.isEmpty()) {
      Impossible first = impossible.get(0);
      throw Failure.input(
          "There is no order of work: "
              + first.task()
              + " "
              + first.reason()
              + ". "
              + first.wayOut());
    }
    return work;
  }

  private static Terms whatIf(ParseResult given, Terms usual, BookWork work) {
    String hours = given.option("--hours", "");
    double week =
        hours.isEmpty() ? usual.hoursAWeek() : number("--hours", hours.replace("h", ""), 0.5, 100);
    Map<String, Double> days = new LinkedHashMap<>();
    String lead = given.option("--lead", "");
    List<String> known = work.deliveries().stream().map(Delivery::key).toList();
    for (String one : lead.isEmpty() ? new String[0] : lead.split(",")) {
      int equals = one.lastIndexOf('=');
      String key = equals < 0 ? one.strip() : one.substring(0, equals).strip();
      if (equals < 0 || !known.contains(key)) {
        throw Failure.input(
            "--lead: found '"
                + one
                + "', expected a purchase and its days, such as "
                + (known.isEmpty() ? "change/thing" : known.get(0))
                + "=21. "
                + Nearest.hint(key, known));
      }
      String text = one.substring(equals + 1).replaceFirst("\\s*(d|days)?\\s*$", "");
      days.put(key, number("--lead", text, 0, 1000));
    }
    return new Terms(week, usual.downtime(), usual.lostWork(), days, usual.made());
  }

  private static double number(String option, String text, double low, double high) {
    String clean = text.strip();
    double value = clean.matches("\\d{1,4}(\\.\\d{1,3})?") ? Double.parseDouble(clean) : -1;
    if (!(value >= low) || !(value <= high)) {
      throw Failure.input(
          option
              + ": found '"
              + clean
              + "', expected a number from "
              + Words.number(low)
              + " to "
              + Words.number(high));
    }
    return value;
  }

  private static Effort effort(ParseResult given) {
    String seconds = given.option("--seconds", "");
    return seconds.isEmpty()
        ? Effort.ORDINARY
        : new Effort(Effort.ORDINARY.steps(), number("--seconds", seconds, 1, MOST_SECONDS));
  }

  private static Optional<LocalDate> start(ParseResult given) {
    String date = given.option("--start", "");
    if (date.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(date));
    } catch (DateTimeParseException e) {
      throw Failure.input("--start: found '" + date + "', expected a day such as 2027-01-31");
    }
  }

  /** A search that says how it gets on, and that Ctrl-C ends with the best order so far. */
  private static final class Searching implements Progress {

    private final Terminal terminal;
    private final java.util.concurrent.CountDownLatch shown =
        new java.util.concurrent.CountDownLatch(1);
    private volatile boolean stopped;
    private double said = Double.POSITIVE_INFINITY;

    Searching(Terminal terminal) {
      this.terminal = terminal;
    }

    Order best(BookWork work, Effort effort) {
      said = Double.POSITIVE_INFINITY;
      return Orders.best(work.list(), effort, this);
    }

    @Override
    public Wish heard(long cost, long bound) {
      double gap = cost == 0 ? 0 : 100.0 * (cost - bound) / cost;
      if (gap > said - LEAST_NEWS) {
        return stopped ? Wish.STOP : Wish.GO_ON;
      }
      said = gap;
      terminal
          .err()
          .println(
              "searching: an order for "
                  + Words.points(cost)
                  + " points; a better one saves at most "
                  + Words.number(Math.ceil(gap * 10) / 10)
                  + " %");
      return stopped ? Wish.STOP : Wish.GO_ON;
    }

    @Override
    public void begun(Runnable stop) {
      Thread hook =
          new Thread(
              () -> {
                stopped = true;
                stop.run();
                waitUntilShown();
              });
      Runtime.getRuntime().addShutdownHook(hook);
    }

    private void waitUntilShown() {
      try {
        shown.await(10, java.util.concurrent.TimeUnit.SECONDS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    void shown() {
      terminal.out().flush();
      shown.countDown();
    }
  }
}
