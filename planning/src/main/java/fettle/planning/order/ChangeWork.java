package fettle.planning.order;

import fettle.machine.dictionary.Values;
import fettle.machine.state.Change;
import fettle.machine.text.Nearest;
import fettle.machine.text.Problem;
import fettle.machine.text.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The tasks of one change, as its file gives them; what it leaves out is supposed, and noted. */
final class ChangeWork {

  private static final double HOUR = 3600;
  private static final double DAY = 86400;
  private static final double USUAL_DAYS = 7;
  private static final double UNSAID_HOURS = 8;

  private final Change change;
  private final Terms terms;
  private final Map<String, Task> tasks = new LinkedHashMap<>();
  private final Map<String, Work> works = new LinkedHashMap<>();
  private final List<Delivery> deliveries = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private ChangeWork(Change change, Terms terms) {
    this.change = change;
    this.terms = terms;
  }

  static ChangeWork of(Change change, Terms terms) {
    ChangeWork work = new ChangeWork(change, terms);
    Map<String, Values> steps = change.values().map("steps");
    if (steps.isEmpty()) {
      work.supposed();
    } else {
      steps.forEach((name, step) -> work.step(name, step, steps.keySet()));
      work.partsBeforeStrip();
    }
    work.proving();
    change.values().map("purchases").forEach(work::purchase);
    return work;
  }

  private String key(String step) {
    return change.key() + "/" + step;
  }

  private boolean open(Values step) {
    return !step.flag("done") || terms.made() == Terms.Made.AS_IF_NOTHING_WERE;
  }

  private static int ticks(double seconds) {
    return (int) Math.round(seconds / HOUR * Worklist.HOUR);
  }

  private void step(String name, Values step, Set<String> all) {
    Set<String> after = new TreeSet<>();
    for (String before : step.texts("after")) {
      if (!all.contains(before)) {
        problems.add(
            new Problem(
                step.place("after"),
                "after",
                "'" + before + "'",
                "the name of another step of this change",
                Nearest.hint(before, all)));
      } else {
        after.add(key(before));
      }
    }
    for (String part : step.texts("makes")) {
      if (!change.values().map("parts").containsKey(part)) {
        problems.add(
            new Problem(
                step.place("makes"),
                "makes",
                "'" + part + "'",
                "the name of a part of this change",
                Nearest.hint(part, change.values().map("parts").keySet())));
      }
    }
    if (!open(step)) {
      return;
    }
    if (!step.has("hours")) {
      notes.add(key(name) + " says no hours; 1 h is supposed.");
    }
    int time = ticks(step.quantity("hours").map(Quantity::value).orElse(HOUR));
    Work.Kind kind =
        switch (step.needText("lathe")) {
          case "used" -> Work.Kind.LATHE;
          case "down" -> Work.Kind.DOWN;
          default -> Work.Kind.BENCH;
        };
    Set<String> needs = new TreeSet<>(step.texts("uses"));
    if (kind == Work.Kind.LATHE && needs.isEmpty()) {
      needs.add(BookWork.ALL);
    }
    add(name, step.needText("do"), kind, time, needs, after, step.texts("makes"));
  }

  private void add(
      String name,
      String words,
      Work.Kind kind,
      int time,
      Set<String> needs,
      Set<String> after,
      List<String> makes) {
    String key = key(name);
    tasks.put(key, new Task(key, change.key(), time, 0, needs, after));
    works.put(key, new Work(key, change.key(), name, words, kind, makes, List.of()));
  }

  /** A change without steps is made, then fitted. */
  private void supposed() {
    double hours =
        change.values().quantity("hours").map(Quantity::value).orElse(UNSAID_HOURS * HOUR);
    double down = change.values().quantity("down").map(Quantity::value).orElse(0.0);
    notes.add(
        change.key()
            + " has no steps; it is taken as making in the lathe, then fitting"
            + (change.values().has("hours") ? "." : ", 8 h together."));
    List<String> makes = List.copyOf(change.values().map("parts").keySet());
    int make = ticks(Math.max(0, hours - down));
    add("make", "Make the parts.", Work.Kind.LATHE, make, Set.of(BookWork.ALL), Set.of(), makes);
    Set<String> after = Set.of(key("make"));
    Work.Kind kind = down > 0 ? Work.Kind.DOWN : Work.Kind.BENCH;
    add("fit", "Fit them.", kind, ticks(down), Set.of(), after, List.of());
  }

  /** What the lathe makes it makes before it is stripped; several strip steps follow each other. */
  private void partsBeforeStrip() {
    List<String> down = keys(Work.Kind.DOWN);
    for (int i = 0; i < down.size(); i++) {
      Set<String> before = new LinkedHashSet<>();
      if (i > 0) {
        before.add(down.get(i - 1));
      } else {
        keys(Work.Kind.LATHE).stream().filter(k -> !follows(k, down.get(0))).forEach(before::add);
      }
      tasks.computeIfPresent(down.get(i), (k, t) -> t.behind(before));
    }
  }

  private boolean follows(String task, String other) {
    Set<String> seen = new TreeSet<>();
    List<String> open = new ArrayList<>(List.of(task));
    while (!open.isEmpty()) {
      Task next = tasks.get(open.remove(open.size() - 1));
      if (next != null) {
        next.after().stream().filter(seen::add).forEach(open::add);
      }
    }
    return seen.contains(other);
  }

  private void proving() {
    Set<String> after = new TreeSet<>(tasks.keySet());
    int time = ticks(change.values().need("proving").value());
    add(
        "prove",
        "Try it under power, slowly first; take the readings that prove it.",
        Work.Kind.PROVE,
        time,
        Set.of(BookWork.ALL),
        after,
        List.of());
  }

  private void purchase(String name, Values purchase) {
    List<String> wanted =
        purchase.texts("for").isEmpty()
            ? List.of(strip().isEmpty() ? "prove" : strip().substring(change.key().length() + 1))
            : purchase.texts("for");
    Set<String> steps = change.values().map("steps").keySet();
    List<String> waiting = new ArrayList<>();
    for (String step : wanted) {
      if (tasks.containsKey(key(step))) {
        waiting.add(key(step));
      } else if (!steps.contains(step)) {
        problems.add(
            new Problem(
                purchase.place("for"),
                "for",
                "'" + step + "'",
                "the name of a step of this change",
                Nearest.hint(step, steps)));
      }
    }
    double said = purchase.quantity("lead time").map(q -> q.value() / DAY).orElse(USUAL_DAYS);
    if (!purchase.has("lead time")) {
      notes.add(key(name) + " says no lead time; 7 days are supposed.");
    }
    double days =
        terms
            .days()
            .getOrDefault(
                key(name), purchase.flag("in hand") ? Double.valueOf(0) : Double.valueOf(said));
    deliveries.add(new Delivery(key(name), days, waiting));
    for (String task : waiting) {
      tasks.computeIfPresent(
          task,
          (k, t) ->
              new Task(
                  k,
                  t.job(),
                  t.ticks(),
                  Math.max(t.release(), terms.tick(days)),
                  t.needs(),
                  t.after()));
      works.computeIfPresent(
          task,
          (k, w) -> {
            List<String> buys = new ArrayList<>(w.buys());
            buys.add(name);
            return new Work(k, w.change(), w.step(), w.words(), w.kind(), w.makes(), buys);
          });
    }
  }

  /** Returns the first task that strips the lathe, or an empty text. */
  private String strip() {
    return keys(Work.Kind.DOWN).stream().findFirst().orElse("");
  }

  /** Returns the tasks; the strip, or the last if there is none, waits for the needed changes. */
  List<Task> tasks(Set<String> planned) {
    Set<String> needed = new TreeSet<>();
    change.needs().stream().filter(planned::contains).forEach(n -> needed.add(n + "/prove"));
    String waits = strip().isEmpty() ? last() : strip();
    return tasks.values().stream()
        .map(this::withoutDone)
        .map(t -> t.key().equals(waits) ? t.behind(needed) : t)
        .toList();
  }

  private Task withoutDone(Task t) {
    Set<String> open = new TreeSet<>(t.after());
    open.retainAll(tasks.keySet());
    return new Task(t.key(), t.job(), t.ticks(), t.release(), t.needs(), open);
  }

  List<Worklist.Strip> strips() {
    List<String> down = keys(Work.Kind.DOWN);
    if (down.isEmpty()) {
      return List.of();
    }
    Set<String> loses = new TreeSet<>();
    boolean all = false;
    for (String key : down) {
      Values step = change.values().map("steps").get(key.substring(change.key().length() + 1));
      List<String> said = step == null ? List.of() : step.texts("loses");
      all |= said.isEmpty();
      loses.addAll(said);
    }
    if (all) {
      loses.add(BookWork.ALL);
      loses.add("turning");
    }
    return List.of(new Worklist.Strip(change.key(), down.get(0), down.get(down.size() - 1), loses));
  }

  List<String> keys(Work.Kind kind) {
    return works.values().stream().filter(w -> w.kind() == kind).map(Work::key).toList();
  }

  String last() {
    return key("prove");
  }

  double worth() {
    return change.values().need("worth").value();
  }

  int percent() {
    return (int) Math.round(100 * (1 - change.values().need("quickens").value()));
  }

  List<Worklist.Waste> wasted(String part, String until, Terms costs) {
    List<Worklist.Waste> found = new ArrayList<>();
    for (Work work : works.values()) {
      Task task = tasks.get(work.key());
      if (work.makes().contains(part) && task != null) {
        double hours = task.ticks() / (double) Worklist.HOUR / work.makes().size();
        long cost = Math.round(hours * costs.lostWork() * Worklist.POINT);
        found.add(new Worklist.Waste(work.key(), until, cost));
      }
    }
    return found;
  }

  Change change() {
    return change;
  }

  Map<String, Work> works() {
    return works;
  }

  List<Delivery> deliveries() {
    return deliveries;
  }

  List<String> notes() {
    return notes;
  }

  List<Problem> problems() {
    return problems;
  }
}
