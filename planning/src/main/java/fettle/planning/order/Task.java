package fettle.planning.order;

import java.util.Set;

/**
 * One piece of work by the one person in the shop, done without a break.
 *
 * @param key what tells it apart, such as {@code cross-screw/cut screw}
 * @param job the change it belongs to
 * @param ticks how long it takes, hundredths of an hour
 * @param release tick before which it cannot start, because something has to arrive
 * @param needs what it needs of the lathe, such as {@code turning}
 * @param after tasks that must be finished before
 */
public record Task(
    String key, String job, int ticks, int release, Set<String> needs, Set<String> after) {

  /** Keeps its own copies. */
  public Task {
    needs = Set.copyOf(needs);
    after = Set.copyOf(after);
    if (ticks < 0 || release < 0) {
      throw new IllegalArgumentException(
          key + ": duration and release must be 0 or more, found " + ticks + " and " + release);
    }
  }

  /** Returns this task with more that must be finished before. */
  public Task behind(Set<String> more) {
    Set<String> all = new java.util.TreeSet<>(after);
    all.addAll(more);
    return new Task(key, job, ticks, release, needs, all);
  }
}
