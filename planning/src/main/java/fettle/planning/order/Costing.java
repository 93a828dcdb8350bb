package fettle.planning.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Checks a plan against every rule and prices it, whoever made it. */
public final class Costing {

  private Costing() {}

  /**
   * Prices a plan.
   *
   * @throws IllegalStateException if it breaks a rule
   */
  public static Cost of(Worklist list, Schedule plan) {
    List<String> broken = broken(list, plan);
    if (!broken.isEmpty()) {
      throw new IllegalStateException("the plan breaks rules: " + broken);
    }
    long waiting = list.worths().stream().mapToLong(w -> w.perTick() * plan.end(w.task())).sum();
    long waste =
        list.wastes().stream()
            .filter(w -> plan.start(w.task()) < plan.end(w.until()))
            .mapToLong(Worklist.Waste::cost)
            .sum();
    return new Cost(waiting, downtime(list, plan), waste);
  }

  /** Returns each rule that a plan breaks. */
  public static List<String> broken(Worklist list, Schedule plan) {
    List<String> broken = new ArrayList<>();
    Map<String, Task> byKey = list.byKey();
    for (Task task : list.tasks()) {
      int start = plan.start(task.key());
      List<Worklist.Quickening> force =
          list.helping(task).stream().filter(q -> start >= plan.end(q.after())).toList();
      if (plan.end(task.key()) - start != Worklist.ticks(task, force)) {
        broken.add(task.key() + " takes the wrong time");
      }
      if (start < task.release()) {
        broken.add(task.key() + " starts before its things arrive");
      }
      for (String before : task.after()) {
        if (byKey.containsKey(before) && plan.end(before) > start) {
          broken.add(task.key() + " starts before " + before + " ends");
        }
      }
    }
    List<String> order =
        list.tasks().stream()
            .filter(t -> t.ticks() > 0)
            .map(Task::key)
            .sorted(Comparator.comparing(plan::start))
            .toList();
    for (int i = 1; i < order.size(); i++) {
      if (plan.end(order.get(i - 1)) > plan.start(order.get(i))) {
        broken.add(order.get(i - 1) + " and " + order.get(i) + " at the same time");
      }
    }
    broken.addAll(strippedAway(list, plan));
    return broken;
  }

  private static List<String> strippedAway(Worklist list, Schedule plan) {
    List<String> broken = new ArrayList<>();
    for (Worklist.Strip strip : list.strips()) {
      int from = plan.start(strip.first());
      int to = plan.end(strip.last());
      for (Task task : list.tasks()) {
        boolean lost = task.needs().stream().anyMatch(strip.loses()::contains);
        if (lost && plan.start(task.key()) < to && plan.end(task.key()) > from) {
          broken.add(task.key() + " needs the lathe while " + strip.job() + " has it stripped");
        }
      }
      for (Worklist.Strip other : list.strips()) {
        boolean overlap = plan.start(other.first()) < to && plan.end(other.last()) > from;
        if (overlap
            && list.stripping() == Worklist.Stripping.ONE_AT_A_TIME
            && strip.job().compareTo(other.job()) < 0) {
          broken.add(strip.job() + " and " + other.job() + " stripped at the same time");
        }
      }
    }
    return broken;
  }

  /** Adds up, between any two moments at which something changes, the dearest loss there. */
  private static long downtime(Worklist list, Schedule plan) {
    List<Integer> moments = new ArrayList<>();
    for (Worklist.Strip strip : list.strips()) {
      moments.add(plan.start(strip.first()));
      moments.add(plan.end(strip.last()));
    }
    moments.sort(null);
    long sum = 0;
    for (int i = 1; i < moments.size(); i++) {
      int from = moments.get(i - 1);
      int to = moments.get(i);
      Set<String> lost = new HashSet<>();
      for (Worklist.Strip strip : list.strips()) {
        if (plan.start(strip.first()) <= from && plan.end(strip.last()) >= to) {
          lost.addAll(strip.loses());
        }
      }
      sum += (long) (to - from) * list.rate(lost);
    }
    return sum;
  }

  /** Returns the ticks during which the lathe lacks anything that costs. */
  public static int stripped(Worklist list, Schedule plan) {
    List<int[]> spans = new ArrayList<>();
    list.strips().forEach(s -> spans.add(new int[] {plan.start(s.first()), plan.end(s.last())}));
    spans.sort(Comparator.comparingInt(s -> s[0]));
    int sum = 0;
    int reached = 0;
    for (int[] span : spans) {
      sum += Math.max(0, span[1] - Math.max(span[0], reached));
      reached = Math.max(reached, span[1]);
    }
    return sum;
  }
}
