package fettle.planning.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that is to be brought into order, and what a bad order costs. Costs are whole millionths of a
 * point.
 *
 * @param tasks the work
 * @param strips times during which the lathe lacks something
 * @param worths what it costs to finish late
 * @param quickenings what makes later work faster
 * @param wastes work that is lost if it is done too early
 * @param rates cost of a tick without a thing that the lathe can do; of several, the dearest counts
 * @param stripping whether two strips may overlap
 */
public record Worklist(
    List<Task> tasks,
    List<Strip> strips,
    List<Worth> worths,
    List<Quickening> quickenings,
    List<Waste> wastes,
    Map<String, Long> rates,
    Stripping stripping) {

  /** Millionths in a point. */
  public static final long POINT = 1_000_000;

  /** Ticks in an hour. */
  public static final int HOUR = 100;

  /** Whether the lathe may be stripped in two places at a time. */
  public enum Stripping {
    ONE_AT_A_TIME,
    MAY_OVERLAP
  }

  /**
   * From the start of one task to the end of another the lathe lacks something.
   *
   * @param job the change
   * @param first the task that strips
   * @param last the task after which the lathe is whole again
   * @param loses what the lathe cannot do meanwhile
   */
  public record Strip(String job, String first, String last, Set<String> loses) {
    /** Keeps its own copy. */
    public Strip {
      loses = Set.copyOf(loses);
    }
  }

  /**
   * What it costs to finish a task late.
   *
   * @param task the task
   * @param perTick cost of each tick until it is finished
   */
  public record Worth(String task, long perTick) {}

  /**
   * Something fitted that makes later work faster.
   *
   * @param after the task after which it helps
   * @param percent share of the time that tasks started later still take, in percent
   * @param tasks the tasks it helps
   */
  public record Quickening(String after, int percent, Set<String> tasks) {
    /** Keeps its own copy. */
    public Quickening {
      tasks = Set.copyOf(tasks);
      if (percent < 1 || percent > 100) {
        throw new IllegalArgumentException(
            "the share of time must be 1 to 100 %, found " + percent + " %");
      }
    }
  }

  /**
   * Work that is lost if it starts before another task has ended.
   *
   * @param task the work
   * @param until the task that would have made it needless or different
   * @param cost what is lost
   */
  public record Waste(String task, String until, long cost) {}

  /** Keeps its own copies. */
  public Worklist {
    tasks = List.copyOf(tasks);
    strips = List.copyOf(strips);
    worths = List.copyOf(worths);
    quickenings = List.copyOf(quickenings);
    wastes = List.copyOf(wastes);
    rates = Map.copyOf(rates);
  }

  /** Returns the tasks by key, in the order listed. */
  public Map<String, Task> byKey() {
    Map<String, Task> map = new LinkedHashMap<>();
    tasks.forEach(t -> map.put(t.key(), t));
    return Collections.unmodifiableMap(map);
  }

  /** Returns the task of that key. */
  public Task task(String key) {
    return tasks.stream()
        .filter(t -> t.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no task '" + key + "'"));
  }

  /** Returns the jobs in the order listed. */
  public List<String> jobs() {
    return tasks.stream().map(Task::job).distinct().toList();
  }

  /** Returns what helps a task, in the order listed. */
  public List<Quickening> helping(Task task) {
    return quickenings.stream().filter(q -> q.tasks().contains(task.key())).toList();
  }

  /** Returns how long a task takes with some of the quickenings in force. */
  public static int ticks(Task task, List<Quickening> inForce) {
    long share = task.ticks();
    long whole = 1;
    for (Quickening q : inForce) {
      share *= q.percent();
      whole *= 100;
    }
    return (int) ((share + whole / 2) / whole);
  }

  /** Returns what a tick costs while the lathe lacks these things. */
  public long rate(Set<String> lost) {
    return lost.stream().mapToLong(l -> rates.getOrDefault(l, 0L)).max().orElse(0);
  }

  /** Returns all that must be finished before a task, at whatever remove. */
  public Set<String> before(String key) {
    Map<String, Task> byKey = byKey();
    Set<String> found = new LinkedHashSet<>();
    List<String> open = new ArrayList<>(List.of(key));
    while (!open.isEmpty()) {
      Task task = byKey.get(open.remove(open.size() - 1));
      if (task != null) {
        task.after().stream().filter(found::add).forEach(open::add);
      }
    }
    return found;
  }

  /**
   * Returns the tasks that can only be done while the lathe is stripped, first and last included.
   */
  public Set<String> within(Strip strip) {
    Set<String> inside = new LinkedHashSet<>();
    Set<String> beforeLast = before(strip.last());
    for (Task task : tasks) {
      boolean end = task.key().equals(strip.first()) || task.key().equals(strip.last());
      boolean between =
          beforeLast.contains(task.key()) && before(task.key()).contains(strip.first());
      if (end || between) {
        inside.add(task.key());
      }
    }
    return inside;
  }

  /** Returns a tick by which everything is surely done. */
  public int horizon() {
    return tasks.stream().mapToInt(Task::release).max().orElse(0)
        + tasks.stream().mapToInt(Task::ticks).sum();
  }

  /** Returns what makes the list impossible in any order; empty if nothing does. */
  public List<Impossible> impossible() {
    List<Impossible> found = new ArrayList<>();
    for (Task task : tasks) {
      if (before(task.key()).contains(task.key())) {
        found.add(
            new Impossible(
                task.key(), "must come after itself", "Take one of the steps out of 'after'."));
      }
    }
    for (Strip strip : strips) {
      Set<String> inside = found.isEmpty() ? within(strip) : Set.of();
      for (Task task : tasks) {
        boolean lost = task.needs().stream().anyMatch(strip.loses()::contains);
        if (lost && inside.contains(task.key())) {
          found.add(Impossible.machining(task.key(), strip.first()));
        }
      }
    }
    return found;
  }
}
