package fettle.planning.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The best order of jobs if each is done in one go: a search over sets of finished jobs that keeps,
 * for each set, every label that no other beats in work, time and cost.
 *
 * <p>Its cost is a bound for every plan. For let only the last task of a job have a worth, and
 * other jobs wait for that last task only ({@link #applies} tells whether the list is of that
 * form), and let the jobs be named in the order in which a plan ends them. Then a job cannot end
 * before all the work of it and of those before it is done, nor before its things have arrived and
 * what must follow is done, nor before the job before it has ended and its own last task is done;
 * its work is helped at most by what ended before it; its work is lost wherever it ends before what
 * would have saved it; and the lathe is stripped at least as long as the tasks that must be done in
 * between take. Nothing else is counted. If every job can be done in one go without waiting, the
 * bound is reached.
 */
final class BlockSearch {

  private static final int MOST_JOBS = 16;

  /**
   * The answer.
   *
   * @param jobs the jobs in the best order
   * @param cost no plan costs less
   */
  record Best(List<String> jobs, long cost) {}

  private record Label(
      int work, int end, long cost, int job, @org.jspecify.annotations.Nullable Label from) {}

  private final Worklist list;
  private final List<String> jobs;
  private final Map<String, Integer> jobOfTask = new HashMap<>();
  private final int[] needs;
  private final int[] arrivals;
  private final int[] closing;
  private final List<List<Task>> tasks = new ArrayList<>();
  private final Set<String> inside = new java.util.HashSet<>();
  private final Map<String, Long> strippedRate = new HashMap<>();

  private BlockSearch(Worklist list) {
    this.list = list;
    jobs = list.jobs();
    needs = new int[jobs.size()];
    for (Task task : list.tasks()) {
      jobOfTask.put(task.key(), jobs.indexOf(task.job()));
    }
    for (int j = 0; j < jobs.size(); j++) {
      String job = jobs.get(j);
      tasks.add(list.tasks().stream().filter(t -> t.job().equals(job)).toList());
    }
    for (Task task : list.tasks()) {
      int job = job(task.key());
      for (String before : task.after()) {
        int other = jobOfTask.getOrDefault(before, job);
        needs[job] |= other == job ? 0 : 1 << other;
      }
    }
    arrivals = java.util.stream.IntStream.range(0, jobs.size()).map(this::arrival).toArray();
    closing = java.util.stream.IntStream.range(0, jobs.size()).map(this::closing).toArray();
    for (Worklist.Strip strip : list.strips()) {
      for (String task : list.within(strip)) {
        inside.add(task);
        strippedRate.merge(task, list.rate(strip.loses()), Math::max);
      }
    }
  }

  private int job(String task) {
    return java.util.Objects.requireNonNull(jobOfTask.get(task), task);
  }

  /** Tells whether the search may be used, and its cost is a bound. */
  static boolean applies(Worklist list) {
    List<String> jobs = list.jobs();
    if (jobs.size() > MOST_JOBS) {
      return false;
    }
    Map<String, String> last = new HashMap<>();
    for (Worklist.Worth worth : list.worths()) {
      String job = list.task(worth.task()).job();
      if (last.put(job, worth.task()) != null) {
        return false;
      }
    }
    for (Task task : list.tasks()) {
      String end = last.get(task.job());
      boolean closes =
          task.key().equals(end) || (end != null && list.before(end).contains(task.key()));
      boolean foreign =
          task.after().stream()
              .map(list.byKey()::get)
              .anyMatch(b -> !b.job().equals(task.job()) && !b.key().equals(last.get(b.job())));
      if (!closes || foreign) {
        return false;
      }
    }
    return list.quickenings().stream().allMatch(q -> last.containsValue(q.after()))
        && list.wastes().stream().allMatch(w -> last.containsValue(w.until()));
  }

  /** Searches all orders of the jobs. */
  static Best best(Worklist list) {
    return new BlockSearch(list).search();
  }

  private Best search() {
    int all = (1 << jobs.size()) - 1;
    List<List<Label>> labels = new ArrayList<>();
    for (int set = 0; set <= all; set++) {
      labels.add(new ArrayList<>());
    }
    labels.get(0).add(new Label(0, 0, 0, -1, null));
    for (int set = 0; set < all; set++) {
      for (int job = 0; job < jobs.size(); job++) {
        if ((set >> job & 1) == 0 && (needs[job] & ~set) == 0) {
          extend(set, job, labels);
        }
      }
    }
    Label best = null;
    for (Label label : labels.get(all)) {
      best = best == null || label.cost < best.cost ? label : best;
    }
    if (best == null) {
      throw new IllegalStateException("the jobs wait for each other");
    }
    List<String> order = new ArrayList<>();
    for (Label at = best; at != null && at.job >= 0; at = at.from) {
      order.add(0, jobs.get(at.job));
    }
    return new Best(List.copyOf(order), best.cost);
  }

  private void extend(int set, int job, List<List<Label>> labels) {
    int ticks = 0;
    long cost = 0;
    for (Task task : tasks.get(job)) {
      List<Worklist.Quickening> force =
          list.helping(task).stream().filter(q -> (set >> job(q.after()) & 1) == 1).toList();
      int taken = Worklist.ticks(task, force);
      ticks += taken;
      cost += inside.contains(task.key()) ? strippedRate.getOrDefault(task.key(), 0L) * taken : 0;
    }
    cost += wasted(set, job);
    long worth =
        list.worths().stream()
            .filter(w -> job(w.task()) == job)
            .mapToLong(Worklist.Worth::perTick)
            .sum();
    List<Label> target = labels.get(set | 1 << job);
    for (Label from : labels.get(set)) {
      int work = from.work + ticks;
      int end = Math.max(Math.max(work, arrivals[job]), from.end + closing[job]);
      offer(target, new Label(work, end, from.cost + cost + worth * end, job, from));
    }
  }

  /** Returns the tick before which a job cannot end, for its deliveries. */
  private int arrival(int job) {
    int latest = 0;
    for (Task task : tasks.get(job)) {
      int tail = 0;
      for (Task later : tasks.get(job)) {
        boolean follows =
            later.key().equals(task.key()) || list.before(later.key()).contains(task.key());
        tail += follows ? least(later) : 0;
      }
      latest = Math.max(latest, task.release() + tail);
    }
    return latest;
  }

  private int closing(int job) {
    return list.worths().stream()
        .map(w -> list.task(w.task()))
        .filter(t -> t.job().equals(jobs.get(job)))
        .mapToInt(this::least)
        .max()
        .orElse(0);
  }

  private int least(Task task) {
    return Worklist.ticks(task, list.helping(task));
  }

  private long wasted(int set, int job) {
    long sum = 0;
    for (Worklist.Waste waste : list.wastes()) {
      int until = job(waste.until());
      boolean tooEarly = until != job && (set >> until & 1) == 0;
      sum += job(waste.task()) == job && tooEarly ? waste.cost() : 0;
    }
    return sum;
  }

  private static void offer(List<Label> labels, Label fresh) {
    for (Label label : labels) {
      if (beats(label, fresh)) {
        return;
      }
    }
    labels.removeIf(l -> beats(fresh, l));
    labels.add(fresh);
  }

  private static boolean beats(Label a, Label b) {
    return a.work <= b.work && a.end <= b.end && a.cost <= b.cost;
  }
}
