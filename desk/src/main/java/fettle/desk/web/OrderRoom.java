package fettle.desk.web;

import fettle.desk.page.Drawing;
import fettle.desk.page.EnginePage;
import fettle.desk.page.ForecastPage;
import fettle.desk.page.LathePage;
import fettle.desk.page.Shell;
import fettle.desk.picture.OrderChart;
import fettle.machine.state.Stage;
import fettle.mechanics.base.Numbers;
import fettle.planning.buying.BuyingList;
import fettle.planning.order.Alternative;
import fettle.planning.order.BookWork;
import fettle.planning.order.Effort;
import fettle.planning.order.Order;
import fettle.planning.order.Orders;
import fettle.planning.order.Progress;
import fettle.planning.order.Schedule;
import fettle.planning.order.Task;
import fettle.planning.order.Terms;
import fettle.planning.order.Work;
import fettle.planning.order.Worklist;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The order of work over the changes: its chart, the list for the wall, other orders, costs. */
final class OrderRoom {

  /** A page waits no longer than this; the command line searches longer. */
  private static final Effort BRIEF = new Effort(10, 15);

  private static final int TICKS = 8;
  private static final int DATES = 5;
  private static final int LONGEST_NAME = 18;
  private static final String OPEN = "planned and under way";
  private static final String IDEAS = "ideas, too";

  private final Visit visit;
  private final BookWork work;
  private final Optional<LocalDate> start;
  private final List<String> keys;

  private OrderRoom(Visit visit) {
    this.visit = visit;
    boolean ideas = visit.asked("which").equals(IDEAS);
    keys =
        visit
            .book()
            .keys(s -> s == Stage.PLANNED || s == Stage.MAKING || (ideas && s == Stage.IDEA));
    start = start(visit);
    work = BookWork.of(visit.book(), keys, terms(visit));
  }

  static EnginePage page(Visit visit) {
    OrderRoom room = new OrderRoom(visit);
    if (!room.work.problems().isEmpty()) {
      throw Refused.unsound(room.work.problems());
    }
    return room.page();
  }

  private static Terms terms(Visit visit) {
    Terms standing = Terms.of(visit.book().shop());
    String asked = visit.asked("hours").strip();
    double hours = standing.hoursAWeek();
    if (!asked.isEmpty()) {
      boolean number = asked.matches("\\d{1,3}(\\.\\d{1,2})?");
      hours = number ? Double.parseDouble(asked) : 0;
      if (!(hours >= 0.5) || !(hours <= 100)) {
        throw Refused.wrong(
            "'" + asked + "' is no number of hours a week.", "Give a number from 0.5 to 100.");
      }
    }
    return new Terms(
        hours, standing.downtime(), standing.lostWork(), Map.of(), Terms.Made.LEFT_OUT);
  }

  private static Optional<LocalDate> start(Visit visit) {
    String asked = visit.asked("start").strip();
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(asked));
    } catch (DateTimeParseException e) {
      throw Refused.wrong("'" + asked + "' is no day.", "Give a day such as 2027-01-31.");
    }
  }

  private EnginePage page() {
    List<EnginePage.Section> sections = new ArrayList<>();
    String lead;
    if (work.list().tasks().isEmpty()) {
      lead = "Nothing is to be made: no change is planned or under way.";
      sections.add(section("", List.of(form())));
    } else if (!work.list().impossible().isEmpty()) {
      lead = "The work cannot be done in any order.";
      sections.add(section("", List.of(form(), impossible())));
    } else {
      Order order =
          visit
              .opened()
              .once(
                  "order|" + keys + "|" + work.terms(),
                  () -> Orders.best(work.list(), BRIEF, Progress.SILENT));
      lead = lead(order);
      sections.add(section("", List.of(form(), chart(order.plan()), legend())));
      sections.add(section("for the wall", List.of(wall(order.plan()))));
      sections.add(section("beside other orders", List.of(alternatives(order))));
    }
    BuyingList buying = BuyingList.of(visit.book(), keys);
    if (!buying.costs().isEmpty()) {
      sections.add(section("costs by change", List.of(costs(buying))));
    }
    if (!buying.lines().isEmpty()) {
      sections.add(section("buying list", List.of(buying(buying))));
    }
    sections.add(
        section(
            "",
            List.of(
                new EnginePage.Links(
                    List.of(new Shell.Link("/packs", "Packs: all that one change needs"))))));
    return new EnginePage(
        visit.shell("order of work", "order"), lead, List.of(), "/order", Map.of(), sections);
  }

  private static EnginePage.Section section(String title, List<EnginePage.Block> blocks) {
    return new EnginePage.Section(title, "", "", blocks);
  }

  private String lead(Order order) {
    String proof =
        order.best()
            ? "No order is better (" + order.proof() + ")."
            : "A better order could save at most "
                + Numbers.fixed(Math.ceil(1000 * order.gap()) / 10, 1)
                + " % ("
                + order.proof()
                + ").";
    int stripped = Alternative.of(work.list(), order).get(0).stripped();
    return "All done "
        + when(order.plan().finish())
        + "; the lathe is stripped for "
        + hours(stripped)
        + ". "
        + proof;
  }

  private EnginePage.Form form() {
    return new EnginePage.Form(
        "/order",
        false,
        Map.of(),
        List.of(
            new EnginePage.Field(
                "hours",
                "hours in the shop a week",
                Numbers.significant(work.terms().hoursAWeek(), 4),
                List.of()),
            new EnginePage.Field(
                "start",
                "day of the start, as 2027-01-31",
                start.map(LocalDate::toString).orElse(""),
                List.of()),
            new EnginePage.Field(
                "which",
                "which changes",
                visit.asked("which").equals(IDEAS) ? IDEAS : OPEN,
                List.of(OPEN, IDEAS))),
        List.of(new EnginePage.Button("plan", "Plan it so", true)));
  }

  private EnginePage.Findings impossible() {
    return new EnginePage.Findings(
        work.list().impossible().stream()
            .map(
                i ->
                    new LathePage.Opening(
                        new ForecastPage.FindingLine(
                            "stop", i.task() + " " + i.reason() + ". " + i.wayOut(), "", ""),
                        ""))
            .toList());
  }

  private EnginePage.Picture chart(Schedule plan) {
    double finish = Math.max(1, plan.finish());
    List<OrderChart.Line> lines = new ArrayList<>();
    List<String> jobs = new ArrayList<>(work.list().jobs());
    jobs.sort(Comparator.comparingInt(job -> first(plan, job)));
    for (String job : jobs) {
      List<OrderChart.Bar> bars = new ArrayList<>();
      for (Task task : work.list().tasks()) {
        if (task.job().equals(job)) {
          bars.add(
              new OrderChart.Bar(
                  plan.start(task.key()) / finish,
                  plan.end(task.key()) / finish,
                  OrderChart.Kind.valueOf(work.work(task.key()).kind().name())));
        }
      }
      String name = job.length() > LONGEST_NAME ? job.substring(0, LONGEST_NAME - 1) + "…" : job;
      lines.add(new OrderChart.Line(name, bars));
    }
    List<OrderChart.Tick> ticks = new ArrayList<>();
    String last = "";
    int count = start.isPresent() ? DATES : TICKS;
    for (int i = 0; i < count; i++) {
      double at = (double) i / count;
      String words = when((int) (at * finish));
      if (!words.equals(last)) {
        ticks.add(new OrderChart.Tick(at, words));
      }
      last = words;
    }
    Drawing drawing = OrderChart.of(lines, ticks);
    return new EnginePage.Picture(
        drawing, "Along the time in the shop, not along the calendar.", EnginePage.Turn.STILL);
  }

  private int first(Schedule plan, String job) {
    return work.list().tasks().stream()
        .filter(t -> t.job().equals(job))
        .mapToInt(t -> plan.start(t.key()))
        .min()
        .orElse(0);
  }

  private static EnginePage.Words legend() {
    return new EnginePage.Words(
        "note",
        List.of(
            "Low bar: at the bench. High bar: the lathe makes it. Hatched: the lathe is stripped."
                + " Diamond: proved."));
  }

  private EnginePage.Table wall(Schedule plan) {
    List<EnginePage.Row> rows = new ArrayList<>();
    int number = 0;
    for (String key : plan.sequence()) {
      number++;
      Work step = work.work(key);
      List<String> more = new ArrayList<>();
      if (!step.makes().isEmpty()) {
        more.add("makes " + String.join(", ", step.makes()));
      }
      if (!step.buys().isEmpty()) {
        more.add("needs " + String.join(", ", step.buys()) + " to have arrived");
      }
      if (step.kind() == Work.Kind.DOWN) {
        more.add("the lathe is stripped");
      }
      rows.add(
          row(
              String.valueOf(number),
              when(plan.start(key)),
              hours(plan.end(key) - plan.start(key)),
              step.change() + ": " + step.step(),
              step.words(),
              String.join("; ", more)));
    }
    return new EnginePage.Table(
        "One step after the other, for one person.",
        List.of("step", "when", "takes", "work", "what is done", "with it"),
        rows);
  }

  private static EnginePage.Row row(String... entries) {
    return new EnginePage.Row(
        "", java.util.Arrays.stream(entries).map(EnginePage.Entry::of).toList());
  }

  private EnginePage.Table alternatives(Order order) {
    List<EnginePage.Row> rows = new ArrayList<>();
    for (Alternative way : Alternative.of(work.list(), order)) {
      rows.add(
          row(
              way.name(),
              Numbers.fixed((double) way.cost().total() / Worklist.POINT, 1),
              hours(way.stripped()),
              when(way.firstBenefit()),
              when(way.plan().finish())));
    }
    return new EnginePage.Table(
        "Points count benefit that comes late, hours with the lathe stripped and work that is lost;"
            + " fewer is better.",
        List.of("order", "points", "stripped", "first benefit", "all done"),
        rows);
  }

  private EnginePage.Table costs(BuyingList buying) {
    List<EnginePage.Row> rows = new ArrayList<>();
    double sum = 0;
    double hours = 0;
    for (BuyingList.Cost cost : buying.costs()) {
      sum += cost.listed();
      hours += cost.hours();
      rows.add(
          row(
              cost.change(),
              money(cost.listed()),
              cost.unpriced() == 0 ? "" : String.valueOf(cost.unpriced()),
              cost.said().map(OrderRoom::money).orElse(""),
              Numbers.significant(cost.hours(), 4) + " h"));
    }
    rows.add(row("together", money(sum), "", "", Numbers.significant(hours, 4) + " h"));
    return new EnginePage.Table(
        "Money and own hours are kept apart; prices are the owner's.",
        List.of("change", "listed", "lines without price", "owner reckons with", "own hours"),
        rows);
  }

  private EnginePage.Table buying(BuyingList buying) {
    Map<String, List<EnginePage.Row>> rows = new LinkedHashMap<>();
    for (BuyingList.Line line : buying.lines()) {
      rows.computeIfAbsent(line.change(), c -> new ArrayList<>())
          .add(
              row(
                  line.what(),
                  String.valueOf(line.quantity()),
                  line.designation(),
                  line.inHand() ? "in hand" : line.sum().map(OrderRoom::money).orElse("?"),
                  line.days().map(d -> Numbers.significant(d, 3) + " d").orElse(""),
                  line.change()));
    }
    return new EnginePage.Table(
        "Nothing here leads to a seller.",
        List.of("what", "how many", "designation", "sum", "to arrive", "for"),
        rows.values().stream().flatMap(List::stream).toList());
  }

  private String when(int tick) {
    double days = work.terms().days(tick);
    return start
        .map(d -> d.plusDays((long) Math.floor(days + 1e-9)).toString())
        .orElse("week " + ((int) Math.floor(days / 7 + 1e-9) + 1));
  }

  private static String hours(int ticks) {
    return Numbers.significant((double) ticks / Worklist.HOUR, 4) + " h";
  }

  private static String money(double amount) {
    return Numbers.fixed(amount, 2) + " EUR";
  }
}
