package fettle.planning.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Makes a plan of a ranking of jobs: at every moment the first task of the first job that can be
 * done is done; the lathe is stripped only when all is at hand, and then nothing else is started
 * while there is work on it.
 */
final class Dispatch {

  private final Worklist list;
  private final List<Task> ranked;
  private final Map<String, Set<String>> within = new HashMap<>();
  private final Map<String, Integer> starts = new HashMap<>();
  private final Map<String, Integer> ends = new HashMap<>();

  private Dispatch(Worklist list, List<String> jobs) {
    this.list = list;
    List<Task> tasks = new ArrayList<>();
    for (String job : jobs) {
      list.tasks().stream().filter(t -> t.job().equals(job)).forEach(tasks::add);
    }
    ranked = List.copyOf(tasks);
    list.strips().forEach(s -> within.put(s.first(), list.within(s)));
  }

  /** Returns a plan that keeps every rule. */
  static Schedule of(Worklist list, List<String> jobs) {
    return new Dispatch(list, jobs).plan();
  }

  private Schedule plan() {
    int now = 0;
    while (ends.size() < ranked.size()) {
      Task next = next(now);
      if (next == null) {
        int waiting = now;
        now =
            ranked.stream()
                .filter(t -> !ends.containsKey(t.key()))
                .mapToInt(Task::release)
                .filter(r -> r > waiting)
                .min()
                .orElseThrow(() -> new IllegalStateException("the tasks wait for each other"));
      } else {
        int start = now;
        List<Worklist.Quickening> force =
            list.helping(next).stream()
                .filter(q -> ends.getOrDefault(q.after(), Integer.MAX_VALUE) <= start)
                .toList();
        starts.put(next.key(), now);
        now += Worklist.ticks(next, force);
        ends.put(next.key(), now);
      }
    }
    return new Schedule(starts, ends);
  }

  private @org.jspecify.annotations.Nullable Task next(int now) {
    Set<String> open = new HashSet<>();
    Set<String> lost = new HashSet<>();
    for (Worklist.Strip strip : list.strips()) {
      if (ends.containsKey(strip.first()) && !ends.containsKey(strip.last())) {
        open.addAll(within.getOrDefault(strip.first(), Set.of()));
        lost.addAll(strip.loses());
      }
    }
    Task second = null;
    for (Task task : ranked) {
      if (ready(task, now, lost)
          && (open.isEmpty() || !within.containsKey(task.key()) || open.contains(task.key()))) {
        if (open.isEmpty() || open.contains(task.key())) {
          return task;
        }
        second = second == null ? task : second;
      }
    }
    return second;
  }

  private boolean ready(Task task, int now, Set<String> lost) {
    boolean free =
        !ends.containsKey(task.key())
            && task.release() <= now
            && ends.keySet().containsAll(task.after())
            && task.needs().stream().noneMatch(lost::contains);
    return free && (!within.containsKey(task.key()) || atHand(task, now));
  }

  /** Nothing that is done inside a strip may still have to be made, or arrive, outside it. */
  private boolean atHand(Task first, int now) {
    Set<String> inside = within.getOrDefault(first.key(), Set.of());
    return list.tasks().stream()
        .filter(t -> inside.contains(t.key()))
        .allMatch(
            t ->
                t.release() <= now
                    && t.after().stream().allMatch(a -> inside.contains(a) || ends.containsKey(a)));
  }
}
