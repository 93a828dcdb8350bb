package fettle.planning.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the best order of work, with a proof or the gap that is left. */
public final class Orders {

  private Orders() {}

  /**
   * Returns the best order.
   *
   * @param list what is to be ordered; nothing in it may be {@link Worklist#impossible()}
   * @param effort how long to search
   * @param progress who hears of it
   */
  public static Order best(Worklist list, Effort effort, Progress progress) {
    boolean blocks = BlockSearch.applies(list);
    BlockSearch.Best blockwise =
        blocks ? BlockSearch.best(list) : new BlockSearch.Best(list.jobs(), 0);
    Schedule first = cheapest(list, List.of(blockwise.jobs(), list.jobs(), byRatio(list)));
    Cost cost = Costing.of(list, first);
    if (cost.total() == blockwise.cost()) {
      return new Order(first, cost, blockwise.cost(), "every order of the changes was weighed");
    }
    if (progress.heard(cost.total(), blockwise.cost()) == Progress.Wish.STOP
        || !ConstraintSearch.available()) {
      return new Order(
          first, cost, blockwise.cost(), "every order of the changes was weighed, waits left out");
    }
    return refined(list, effort, progress, first, blockwise.cost());
  }

  /** Returns the order that the constraint search alone finds and proves. */
  static Order constrained(Worklist list, Effort effort, Progress progress) {
    if (!ConstraintSearch.available()) {
      throw new IllegalStateException("the native library does not load on this computer");
    }
    return refined(list, effort, progress, cheapest(list, List.of(list.jobs())), 0);
  }

  private static Order refined(
      Worklist list, Effort effort, Progress progress, Schedule first, long floor) {
    ConstraintSearch.Found found = ConstraintSearch.search(list, floor, first, effort, progress);
    Optional<Schedule> plan = found.plan();
    Cost before = Costing.of(list, first);
    Cost after = plan.map(p -> Costing.of(list, p)).orElse(before);
    boolean better = after.total() < before.total();
    Cost cost = better ? after : before;
    long bound = Math.min(cost.total(), found.bound());
    String proof =
        cost.total() == bound
            ? "proved by constraint optimisation"
            : "constraint optimisation, stopped before the proof was complete";
    return new Order(better ? plan.orElse(first) : first, cost, bound, proof);
  }

  private static Schedule cheapest(Worklist list, List<List<String>> rankings) {
    List<Schedule> plans = new ArrayList<>();
    rankings.forEach(r -> plans.add(Dispatch.of(list, r)));
    return plans.stream()
        .min(Comparator.comparingLong(p -> Costing.of(list, p).total()))
        .orElseThrow();
  }

  /** Returns the plan that takes the jobs in one order, whatever it costs. */
  public static Schedule following(Worklist list, List<String> jobs) {
    return Dispatch.of(list, jobs);
  }

  /** Returns the jobs by worth per hour, the greatest first. */
  public static List<String> byRatio(Worklist list) {
    return list.jobs().stream()
        .sorted(Comparator.comparingDouble((String job) -> -ratio(list, job)))
        .toList();
  }

  private static double ratio(Worklist list, String job) {
    double ticks =
        list.tasks().stream().filter(t -> t.job().equals(job)).mapToInt(Task::ticks).sum();
    double worth =
        list.worths().stream()
            .filter(w -> list.task(w.task()).job().equals(job))
            .mapToLong(Worklist.Worth::perTick)
            .sum();
    return worth / Math.max(1, ticks);
  }

  /** Returns the jobs by their hours, the shortest first. */
  static List<String> byLength(Worklist list) {
    return list.jobs().stream()
        .sorted(
            Comparator.comparingInt(
                job ->
                    list.tasks().stream()
                        .filter(t -> t.job().equals(job))
                        .mapToInt(Task::ticks)
                        .sum()))
        .toList();
  }

  /** Returns the plan that makes every part before the lathe is stripped for the first time. */
  static Schedule partsFirst(Worklist list, List<String> jobs) {
    java.util.Set<String> makes = new java.util.TreeSet<>();
    for (Task task : list.tasks()) {
      boolean tried =
          list.worths().stream().anyMatch(w -> w.task().equals(task.key()))
              || list.strips().stream().anyMatch(s -> behind(list, task.key(), s.first()));
      if (!tried) {
        makes.add(task.key());
      }
    }
    List<Task> later =
        list.tasks().stream()
            .map(
                t ->
                    list.strips().stream().anyMatch(s -> s.first().equals(t.key()))
                        ? t.behind(makes)
                        : t)
            .toList();
    return Dispatch.of(
        new Worklist(
            later,
            list.strips(),
            list.worths(),
            list.quickenings(),
            list.wastes(),
            list.rates(),
            list.stripping()),
        jobs);
  }

  private static boolean behind(Worklist list, String task, String strip) {
    return task.equals(strip) || list.before(task).contains(strip);
  }
}
