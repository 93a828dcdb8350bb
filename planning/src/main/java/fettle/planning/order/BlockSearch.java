package fettle.planning.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The best order of jobs if each is done in one go and nothing has to be waited for: a search over
 * sets of finished jobs that keeps, for each set, every pair of time and cost that no other beats in
 * both.
 *
 * <p>Its cost is a bound for every plan, deliveries or not. For if only the last task of a job has a
 * worth, and other jobs wait for that last task only, then moving every other task back to just
 * before its own job's last task delays no last task; work that is started later is never slower and
 * never wasted where it was not before; and the lathe is stripped no longer than the tasks that must
 * be done in between take. Leaving out deliveries can only help. {@link #applies} tells whether the
 * list is of that form.
 */
final class BlockSearch {

  private static final int MOST_JOBS = 16;

  /**
   * The answer.
   *
   * @param jobs the jobs in the best order
   * @param cost what that order costs if nothing has to be waited for
   */
  record Best(List<String> jobs, long cost) {}

  private record Label(int ticks, long cost, int job, @org.jspecify.annotations.Nullable Label from) {}

  private final Worklist list;
  private final List<String> jobs;
  private final Map<String, Integer> jobOfTask = new HashMap<>();
  private final int[] needs;
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
      int job = jobOfTask.get(task.key());
      for (String before : task.after()) {
        int other = jobOfTask.getOrDefault(before, job);
        needs[job] |= other == job ? 0 : 1 << other;
      }
    }
    for (Worklist.Strip strip : list.strips()) {
      for (String task : list.within(strip)) {
        inside.add(task);
        strippedRate.merge(task, list.rate(strip.loses()), Math::max);
      }
    }
  }

  /** Tells whether the search may be used, and its cost is a bound. */
  static boolean applies(Worklist list) {
    List<String> jobs = list.jobs();
    if (jobs.size() > MOST_JOBS) {
      return false;
    }
    Map<String, String> last = new HashMap<>();
    for (Worklist.Worth worth : list.worths()) {
      String job = list.byKey().get(worth.task()).job();
      if (last.put(job, worth.task()) != null) {
        return false;
      }
    }
    for (Task task : list.tasks()) {
      String end = last.get(task.job());
      boolean closes = task.key().equals(end) || (end != null && list.before(end).contains(task.key()));
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
    labels.get(0).add(new Label(0, 0, -1, null));
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
          list.helping(task).stream()
              .filter(q -> (set >> jobOfTask.get(q.after()) & 1) == 1)
              .toList();
      int taken = Worklist.ticks(task, force);
      ticks += taken;
      cost += inside.contains(task.key()) ? strippedRate.get(task.key()) * taken : 0;
    }
    cost += wasted(set, job);
    long worth =
        list.worths().stream()
            .filter(w -> jobOfTask.get(w.task()) == job)
            .mapToLong(Worklist.Worth::perTick)
            .sum();
    List<Label> target = labels.get(set | 1 << job);
    for (Label from : labels.get(set)) {
      int end = from.ticks + ticks;
      offer(target, new Label(end, from.cost + cost + worth * end, job, from));
    }
  }

  private long wasted(int set, int job) {
    long sum = 0;
    for (Worklist.Waste waste : list.wastes()) {
      int until = jobOfTask.get(waste.until());
      boolean tooEarly = until != job && (set >> until & 1) == 0;
      sum += jobOfTask.get(waste.task()) == job && tooEarly ? waste.cost() : 0;
    }
    return sum;
  }

  private static void offer(List<Label> labels, Label fresh) {
    for (Label label : labels) {
      if (label.ticks <= fresh.ticks && label.cost <= fresh.cost) {
        return;
      }
    }
    labels.removeIf(l -> fresh.ticks <= l.ticks && fresh.cost <= l.cost);
    labels.add(fresh);
  }
}
