package fettle.planning.order;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.SatParameters;
import com.google.ortools.sat.TableConstraint;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The order of work as a constraint model with whole numbers, solved with a fixed seed on one
 * thread, so that the same list gives the same plan. The only class that touches the native
 * library.
 */
final class ConstraintSearch {

  /**
   * What was found.
   *
   * @param plan the best plan; empty if none was found in time
   * @param bound no plan costs less
   */
  record Found(java.util.Optional<Schedule> plan, long bound) {}

  private final Worklist list;
  private final CpModel model = new CpModel();
  private final int horizon;
  private final Map<String, IntVar> starts = new LinkedHashMap<>();
  private final Map<String, IntVar> ends = new LinkedHashMap<>();
  private final Map<String, IntervalVar> intervals = new LinkedHashMap<>();
  private final Map<String, Literal> later = new HashMap<>();
  private final LinearExprBuilder cost = LinearExpr.newBuilder();

  private ConstraintSearch(Worklist list, long floor, Schedule hint) {
    this.list = list;
    horizon = Math.max(list.horizon(), hint.finish());
    list.tasks().forEach(this::task);
    list.tasks().forEach(this::follows);
    list.tasks().forEach(this::duration);
    model.addNoOverlap(
        list.tasks().stream()
            .filter(t -> t.ticks() > 0)
            .map(t -> intervals.get(t.key()))
            .toArray(IntervalVar[]::new));
    List<IntervalVar> spans = new ArrayList<>();
    list.strips().forEach(s -> spans.add(span(s)));
    if (list.stripping() == Worklist.Stripping.ONE_AT_A_TIME) {
      model.addNoOverlap(spans.toArray(new IntervalVar[0]));
    }
    downtime(spans);
    list.worths().forEach(w -> cost.addTerm(end(w.task()), w.perTick()));
    for (Worklist.Waste waste : list.wastes()) {
      cost.addTerm(startsAfter(waste.task(), waste.until()).not(), waste.cost());
    }
    model.addGreaterOrEqual(cost, floor);
    model.minimize(cost);
    starts.forEach((key, start) -> model.addHint(start, hint.start(key)));
  }

  /** Loads the native library; false if there is none for this computer. */
  static boolean available() {
    try {
      Loader.loadNativeLibraries();
      return true;
    } catch (RuntimeException | LinkageError e) {
      return false;
    }
  }

  /**
   * Searches.
   *
   * @param list what is to be ordered
   * @param floor no plan costs less
   * @param hint a plan to start from
   * @param effort how long to search
   * @param progress who hears of it
   */
  static Found search(Worklist list, long floor, Schedule hint, Effort effort, Progress progress) {
    return new ConstraintSearch(list, floor, hint).solve(floor, effort, progress);
  }

  private Found solve(long floor, Effort effort, Progress progress) {
    CpSolver solver = new CpSolver();
    SatParameters.Builder set = solver.getParameters();
    set.setNumWorkers(1);
    set.setRandomSeed(1);
    set.setMaxDeterministicTime(effort.steps());
    set.setMaxTimeInSeconds(effort.seconds());
    set.setCatchSigintSignal(false);
    set.setLinearizationLevel(2);
    progress.begun(solver::stopSearch);
    CpSolverStatus status =
        solver.solve(
            model,
            new CpSolverSolutionCallback() {
              @Override
              public void onSolutionCallback() {
                long bound = Math.max(floor, (long) Math.ceil(bestObjectiveBound() - 0.5));
                if (progress.heard((long) Math.rint(objectiveValue()), bound)
                    == Progress.Wish.STOP) {
                  stopSearch();
                }
              }
            });
    if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
      return new Found(java.util.Optional.empty(), floor);
    }
    Map<String, Integer> from = new HashMap<>();
    Map<String, Integer> to = new HashMap<>();
    starts.forEach((key, v) -> from.put(key, (int) solver.value(v)));
    ends.forEach((key, v) -> to.put(key, (int) solver.value(v)));
    long bound =
        status == CpSolverStatus.OPTIMAL
            ? (long) Math.rint(solver.objectiveValue())
            : Math.max(floor, (long) Math.ceil(solver.bestObjectiveBound() - 0.5));
    return new Found(java.util.Optional.of(new Schedule(from, to)), bound);
  }

  private void task(Task task) {
    IntVar start = model.newIntVar(task.release(), horizon, "start " + task.key());
    IntVar end = model.newIntVar(task.release(), horizon, "end " + task.key());
    int least = Worklist.ticks(task, list.helping(task));
    IntVar size = model.newIntVar(least, task.ticks(), "time " + task.key());
    starts.put(task.key(), start);
    ends.put(task.key(), end);
    intervals.put(task.key(), model.newIntervalVar(start, size, end, task.key()));
  }

  private IntVar start(String task) {
    return java.util.Objects.requireNonNull(starts.get(task), task);
  }

  private IntVar end(String task) {
    return java.util.Objects.requireNonNull(ends.get(task), task);
  }

  private void follows(Task task) {
    task.after().stream()
        .filter(ends::containsKey)
        .forEach(b -> model.addGreaterOrEqual(start(task.key()), end(b)));
  }

  /** True just if a task starts when another has ended. */
  private Literal startsAfter(String task, String other) {
    return later.computeIfAbsent(
        task + " after " + other,
        name -> {
          BoolVar is = model.newBoolVar(name);
          model.addGreaterOrEqual(start(task), end(other)).onlyEnforceIf(is);
          model.addLessThan(start(task), end(other)).onlyEnforceIf(is.not());
          return is;
        });
  }

  /** The time of a task follows from which quickenings are in force when it starts. */
  private void duration(Task task) {
    List<Worklist.Quickening> helping = list.helping(task);
    if (helping.isEmpty()) {
      return;
    }
    IntVar time = model.newIntVar(0, task.ticks(), "taken " + task.key());
    model.addEquality(LinearExpr.newBuilder().add(start(task.key())).add(time), end(task.key()));
    IntVar[] columns = new IntVar[helping.size() + 1];
    for (int i = 0; i < helping.size(); i++) {
      columns[i] = (BoolVar) startsAfter(task.key(), helping.get(i).after());
    }
    columns[helping.size()] = time;
    TableConstraint table = model.addAllowedAssignments(columns);
    for (int set = 0; set < 1 << helping.size(); set++) {
      List<Worklist.Quickening> force = new ArrayList<>();
      long[] row = new long[columns.length];
      for (int i = 0; i < helping.size(); i++) {
        row[i] = set >> i & 1;
        if (row[i] == 1) {
          force.add(helping.get(i));
        }
      }
      row[helping.size()] = Worklist.ticks(task, force);
      table.addTuple(row);
    }
  }

  /** The time of a strip; work that needs what the lathe then lacks keeps out of it. */
  private IntervalVar span(Worklist.Strip strip) {
    IntVar size = model.newIntVar(0, horizon, "stripped " + strip.job());
    IntervalVar span =
        model.newIntervalVar(start(strip.first()), size, end(strip.last()), strip.job());
    for (Task task : list.tasks()) {
      IntervalVar interval = intervals.get(task.key());
      if (interval != null && task.needs().stream().anyMatch(strip.loses()::contains)) {
        model.addNoOverlap(new IntervalVar[] {span, interval});
      }
    }
    return span;
  }

  /**
   * The dearest loss counts where strips overlap: for each step of the rate, the strips at or above
   * it are covered by as few ticks as possible.
   */
  private void downtime(List<IntervalVar> spans) {
    if (list.stripping() == Worklist.Stripping.ONE_AT_A_TIME) {
      for (int i = 0; i < spans.size(); i++) {
        cost.addTerm(spans.get(i).getSizeExpr(), list.rate(list.strips().get(i).loses()));
      }
      return;
    }
    long below = 0;
    for (long rate :
        list.strips().stream().mapToLong(s -> list.rate(s.loses())).distinct().sorted().toArray()) {
      long step = rate - below;
      if (step > 0) {
        List<Worklist.Strip> dear =
            list.strips().stream().filter(s -> list.rate(s.loses()) >= rate).toList();
        cover(dear, step);
      }
      below = rate;
    }
  }

  private void cover(List<Worklist.Strip> strips, long rate) {
    List<IntVar> from = new ArrayList<>();
    List<IntVar> to = new ArrayList<>();
    for (int c = 0; c < strips.size(); c++) {
      from.add(model.newIntVar(0, horizon, "cover from"));
      to.add(model.newIntVar(0, horizon, "cover to"));
      model.addGreaterOrEqual(to.get(c), from.get(c));
      cost.addTerm(to.get(c), rate).addTerm(from.get(c), -rate);
    }
    for (Worklist.Strip strip : strips) {
      List<Literal> one = new ArrayList<>();
      for (int c = 0; c < strips.size(); c++) {
        BoolVar in = model.newBoolVar("cover");
        model.addLessOrEqual(from.get(c), start(strip.first())).onlyEnforceIf(in);
        model.addGreaterOrEqual(to.get(c), end(strip.last())).onlyEnforceIf(in);
        one.add(in);
      }
      model.addExactlyOne(one);
    }
  }
}
