package fettle.desk.cli;

import fettle.machine.state.Change;
import fettle.planning.order.Alternative;
import fettle.planning.order.BookWork;
import fettle.planning.order.Delivery;
import fettle.planning.order.Order;
import fettle.planning.order.Schedule;
import fettle.planning.order.Task;
import fettle.planning.order.Work;
import fettle.planning.order.Worklist;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** An order of work as a chart and a list for the wall. */
final class TextOrder {

  private static final int LEAST_WIDTH = 60;
  private static final int NAMES = 18;

  private final OrderAnswer answer;
  private final BookWork work;
  private final Schedule plan;
  private final int width;
  private final StringBuilder out = new StringBuilder();

  private TextOrder(OrderAnswer answer, int width) {
    this.answer = answer;
    this.width = Math.max(LEAST_WIDTH, width);
    work = answer.work();
    plan = answer.order().plan();
  }

  static String text(OrderAnswer answer, int width) {
    TextOrder text = new TextOrder(answer, width);
    text.head();
    text.chart();
    text.wall();
    text.toOrder();
    text.sideBySide();
    text.answer.before().ifPresent(text::whatIf);
    text.work.notes().forEach(n -> text.line("note: " + n));
    return text.out.toString().stripTrailing();
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private void head() {
    Order order = answer.order();
    String hours = Words.number(work.terms().hoursAWeek());
    line("ORDER OF WORK, " + hours + " h in the shop a week");
    line(
        order.best()
            ? "No order is better (" + order.proof() + ")."
            : String.format(
                Locale.ROOT,
                "A better order could save at most %.1f %% (%s).",
                Math.ceil(1000 * order.gap()) / 10,
                order.proof()));
    line(
        "All done: "
            + answer.when(plan.finish())
            + ". Lathe stripped: "
            + Words.hours(OrderJson.stripped(answer))
            + ".");
    line("");
  }

  private void chart() {
    int columns = width - NAMES - 1;
    int finish = Math.max(1, plan.finish());
    line(" ".repeat(NAMES) + " " + scale(columns, finish));
    for (String job : work.list().jobs()) {
      char[] row = new char[columns];
      java.util.Arrays.fill(row, ' ');
      for (Task task : work.list().tasks()) {
        if (task.job().equals(job)) {
          bar(row, task.key(), finish);
        }
      }
      line(String.format(Locale.ROOT, "%-" + NAMES + "s %s", job, new String(row)).stripTrailing());
    }
    line("- bench   = lathe makes it   # lathe stripped   * proving");
    line("");
  }

  private void bar(char[] row, String key, int finish) {
    char mark =
        switch (work.work(key).kind()) {
          case BENCH -> '-';
          case LATHE -> '=';
          case DOWN -> '#';
          case PROVE -> '*';
        };
    int from = (int) ((long) plan.start(key) * row.length / finish);
    int to = Math.max(from + 1, (int) ((long) plan.end(key) * row.length / finish));
    for (int i = from; i < Math.min(to, row.length); i++) {
      row[i] = "-=#*".indexOf(row[i]) < "-=#*".indexOf(mark) ? mark : row[i];
    }
  }

  private String scale(int columns, int finish) {
    StringBuilder scale = new StringBuilder();
    int cells = Math.max(1, columns / 12);
    for (int i = 0; i < cells; i++) {
      int at = i * columns / cells;
      String mark = answer.when((int) ((long) at * finish / columns));
      while (scale.length() < at) {
        scale.append(' ');
      }
      scale.append(mark);
    }
    return scale.toString();
  }

  private void wall() {
    line("FOR THE WALL");
    int number = 0;
    for (String key : plan.sequence()) {
      number++;
      Work step = work.work(key);
      line(
          String.format(
              Locale.ROOT,
              "[ ] %2d  %-11s %7s  %s: %s",
              number,
              answer.when(plan.start(key)),
              Words.hours(plan.end(key) - plan.start(key)),
              step.change(),
              step.step()));
      said(step.words());
      if (!step.makes().isEmpty()) {
        said("Makes: " + String.join(", ", step.makes()) + ".");
      }
      if (!step.buys().isEmpty()) {
        said("Must have arrived: " + String.join(", ", step.buys()) + ".");
      }
      strip(key).ifPresent(this::stripping);
      if (step.kind() == Work.Kind.PROVE) {
        said("Not before this is good: the next strip.");
      }
    }
    line("");
  }

  private void said(String text) {
    String margin = " ".repeat(8);
    line(margin + Words.wrapped(text, width, margin));
  }

  private Optional<Worklist.Strip> strip(String key) {
    return work.list().strips().stream().filter(s -> s.first().equals(key)).findFirst();
  }

  private void stripping(Worklist.Strip strip) {
    Set<String> lost = new TreeSet<>(strip.loses());
    boolean all = lost.contains("turning");
    lost.removeIf(l -> l.equals("the lathe"));
    said(
        all
            ? "From here on the lathe makes nothing until '" + strip.last() + "' is done."
            : "From here on the lathe is without: " + String.join(", ", lost) + ".");
    said(
        "Before stripping, write down: travel and play, gear places and shims by place, readings"
            + " the proof will be held against. Keep the old parts whole until the proof is good;"
            + " that is the way back.");
    Change change = answer.book().changes().get(strip.job());
    if (change != null) {
      change.values().texts("caution").forEach(c -> said("CAUTION: " + c));
    }
  }

  private void toOrder() {
    if (work.deliveries().isEmpty()) {
      return;
    }
    line("TO ORDER, at the latest");
    for (Delivery delivery : work.deliveries()) {
      int need = delivery.tasks().stream().mapToInt(plan::start).min().orElse(0);
      double spare = work.terms().days(need) - delivery.days();
      line(
          String.format(
              Locale.ROOT,
              "  %-42s %4s d to arrive; needed %s, %s",
              delivery.key(),
              Words.number(delivery.days()),
              answer.when(need),
              spare < 1 ? "order at the start" : "may be late by " + (int) spare + " d"));
    }
    line("");
  }

  private void sideBySide() {
    line("BESIDE OTHER ORDERS");
    line(
        String.format(
            Locale.ROOT,
            "  %-24s %9s %10s %9s %13s %12s",
            "",
            "points",
            "stripped",
            "lost",
            "first benefit",
            "all done"));
    for (Alternative way : answer.alternatives()) {
      line(
          String.format(
              Locale.ROOT,
              "  %-24s %9s %10s %9s %13s %12s",
              way.name(),
              Words.points(way.cost().total()),
              Words.hours(way.stripped()),
              Words.points(way.cost().waste()),
              answer.when(way.firstBenefit()),
              answer.when(way.plan().finish())));
    }
    line(
        "  Points: benefit that comes late, hours with the lathe stripped, work that is lost; fewer"
            + " is better.");
    line("");
  }

  private void whatIf(Order before) {
    line("WHAT IF: against what the book says");
    line(String.format(Locale.ROOT, "  %-24s %14s %14s", "proved", "book", "what if"));
    List<String> jobs = work.list().jobs();
    for (String job : jobs) {
      String end = job + "/prove";
      line(
          String.format(
              Locale.ROOT,
              "  %-24s %14s %14s",
              job,
              answer.when(answer.usual(), before.plan().end(end)),
              answer.when(plan.end(end))));
    }
    line("");
  }
}
