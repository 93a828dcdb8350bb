package fettle.planning.order;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * When each task starts and ends, in ticks.
 *
 * @param starts start of each task
 * @param ends end of each task
 */
public record Schedule(Map<String, Integer> starts, Map<String, Integer> ends) {

  /** Keeps its own copies, in order of time. */
  public Schedule {
    starts = sorted(starts);
    ends = Collections.unmodifiableMap(new LinkedHashMap<>(ends));
  }

  private static Map<String, Integer> sorted(Map<String, Integer> times) {
    Map<String, Integer> sorted = new LinkedHashMap<>();
    times.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<String, Integer> e) -> e.getValue())
                .thenComparing(Map.Entry::getKey))
        .forEach(e -> sorted.put(e.getKey(), e.getValue()));
    return Collections.unmodifiableMap(sorted);
  }

  /** Returns when a task starts. */
  public int start(String task) {
    return time(starts, task);
  }

  /** Returns when a task ends. */
  public int end(String task) {
    return time(ends, task);
  }

  private static int time(Map<String, Integer> times, String task) {
    Integer time = times.get(task);
    if (time == null) {
      throw new IllegalArgumentException("the plan has no task '" + task + "'");
    }
    return time;
  }

  /** Returns the tasks in order of their start. */
  public List<String> sequence() {
    return List.copyOf(starts.keySet());
  }

  /** Returns the tick at which everything is done. */
  public int finish() {
    return ends.values().stream().mapToInt(Integer::intValue).max().orElse(0);
  }
}
