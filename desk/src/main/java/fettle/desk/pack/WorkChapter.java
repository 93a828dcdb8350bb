package fettle.desk.pack;

import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.mechanics.base.Numbers;
import fettle.planning.order.BookWork;
import fettle.planning.order.Orders;
import fettle.planning.order.Schedule;
import fettle.planning.order.Terms;
import fettle.planning.order.Work;
import fettle.planning.order.Worklist;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The order of work on one change, as a list to tick off. */
final class WorkChapter {

  private final PackSource source;
  private final BookWork work;
  private final Schedule plan;

  private WorkChapter(PackSource source) {
    this.source = source;
    Change change = source.change();
    Book alone =
        new Book(
            source.book().machine(),
            Map.of(change.key(), change),
            source.book().shop(),
            source.book().recipes());
    Terms standing = Terms.of(source.book().shop());
    Terms anew =
        new Terms(
            standing.hoursAWeek(),
            standing.downtime(),
            standing.lostWork(),
            Map.of(),
            Terms.Made.AS_IF_NOTHING_WERE);
    work = BookWork.of(alone, List.of(change.key()), anew);
    boolean sound = work.problems().isEmpty() && work.list().impossible().isEmpty();
    plan =
        sound
            ? Orders.following(work.list(), work.list().jobs())
            : new Schedule(Map.of(), Map.of());
  }

  static Chapter of(PackSource source) {
    return new WorkChapter(source).chapter();
  }

  private Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    needs(blocks);
    work.problems().forEach(p -> blocks.add(new Block.Caution("Not settled: " + p.text())));
    work.list()
        .impossible()
        .forEach(i -> blocks.add(new Block.Caution("Cannot be done as described: " + i)));
    int number = 0;
    for (String key : plan.sequence()) {
      number++;
      blocks.add(step(number, key));
    }
    if (source.shows(Held.HOURS) && !plan.sequence().isEmpty()) {
      int ticks = work.list().tasks().stream().mapToInt(t -> t.ticks()).sum();
      blocks.add(new Block.Prose("Together " + hours(ticks) + " in the shop."));
    }
    work.notes().forEach(n -> blocks.add(new Block.Point(n)));
    return Chapter.of("Order of work", blocks);
  }

  private void needs(List<Block> blocks) {
    List<String> titles =
        source.change().needs().stream()
            .map(n -> source.book().changes().get(n))
            .filter(c -> c != null)
            .map(Change::title)
            .toList();
    if (!titles.isEmpty()) {
      blocks.add(new Block.Prose("Must be on the lathe first: " + String.join("; ", titles) + "."));
    }
    blocks.add(
        new Block.Prose(
            "The lathe makes its own parts before it is stripped. Keep every old part whole until"
                + " the last step is good: that is the way back."));
  }

  private Block.Step step(int number, String key) {
    Work step = work.work(key);
    List<String> more = new ArrayList<>();
    if (!step.makes().isEmpty()) {
      more.add("Makes: " + String.join(", ", step.makes()) + ".");
    }
    if (!step.buys().isEmpty()) {
      more.add("Must have arrived: " + String.join(", ", step.buys()) + ".");
    }
    for (Worklist.Strip strip : work.list().strips()) {
      if (strip.first().equals(key)) {
        more.add(lost(strip));
        more.add(
            "Write down before: travel and play, gear places, shims by place, and the readings the"
                + " proof will be held against.");
      }
    }
    String hours =
        source.shows(Held.HOURS) ? " (" + hours(plan.end(key) - plan.start(key)) + ")" : "";
    String words =
        step.kind() == Work.Kind.PROVE
            ? "Prove it" + hours + ". See 'How to prove it'."
            : title(step.step()) + hours + ". " + step.words();
    return new Block.Step(String.valueOf(number), words, more);
  }

  private static String lost(Worklist.Strip strip) {
    Set<String> lost = new TreeSet<>(strip.loses());
    lost.remove("the lathe");
    String until = strip.last().substring(strip.last().indexOf('/') + 1);
    return lost.isEmpty() || lost.contains("turning")
        ? "The lathe is stripped: it makes nothing until '" + until + "' is done."
        : "The lathe is without " + String.join(", ", lost) + " until '" + until + "' is done.";
  }

  private static String title(String word) {
    return word.isEmpty()
        ? word
        : word.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + word.substring(1);
  }

  private static String hours(int ticks) {
    return Numbers.significant((double) ticks / Worklist.HOUR, 4) + " h";
  }
}
