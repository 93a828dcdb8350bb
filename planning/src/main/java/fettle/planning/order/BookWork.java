package fettle.planning.order;

import fettle.machine.state.Book;
import fettle.machine.state.Change;
import fettle.machine.text.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The tasks of changes of a book.
 *
 * @param list what is to be ordered
 * @param works what each task is
 * @param deliveries what has to be bought
 * @param terms time and worth as they were taken
 * @param notes what was supposed where the book says nothing
 * @param problems what is wrong in the book
 */
public record BookWork(
    Worklist list,
    Map<String, Work> works,
    List<Delivery> deliveries,
    Terms terms,
    List<String> notes,
    List<Problem> problems) {

  /** Everything a whole lathe can do; a step that says nothing needs it, or takes it away. */
  static final String ALL = "the lathe";

  /** Keeps its own copies. */
  public BookWork {
    works = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(works));
    deliveries = List.copyOf(deliveries);
    notes = List.copyOf(notes);
    problems = List.copyOf(problems);
  }

  /** Returns what a task is. */
  public Work work(String task) {
    return java.util.Objects.requireNonNull(works.get(task), task);
  }

  /** Makes tasks of changes, those that they need included. */
  public static BookWork of(Book book, Collection<String> keys, Terms terms) {
    List<ChangeWork> all = new ArrayList<>();
    for (Change change : book.changes().values()) {
      boolean open = !change.stage().done() || terms.made() == Terms.Made.AS_IF_NOTHING_WERE;
      boolean wanted = keys.stream().anyMatch(k -> book.withNeeds(k).contains(change.key()));
      if (wanted && open) {
        all.add(ChangeWork.of(change, terms));
      }
    }
    List<Task> tasks = new ArrayList<>();
    List<Worklist.Strip> strips = new ArrayList<>();
    List<Worklist.Worth> worths = new ArrayList<>();
    Map<String, Work> works = new LinkedHashMap<>();
    List<Delivery> deliveries = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    Map<String, ChangeWork> byChange = new HashMap<>();
    all.forEach(w -> byChange.put(w.change().key(), w));
    for (ChangeWork work : all) {
      tasks.addAll(work.tasks(byChange.keySet()));
      strips.addAll(work.strips());
      worths.add(new Worklist.Worth(work.last(), terms.perTick(work.worth())));
      works.putAll(work.works());
      deliveries.addAll(work.deliveries());
      notes.addAll(work.notes());
      problems.addAll(work.problems());
    }
    Worklist list =
        new Worklist(
            tasks,
            spelled(strips, tasks),
            worths,
            quickenings(all),
            wastes(all, byChange, terms, problems),
            rates(strips, tasks, terms),
            Worklist.Stripping.ONE_AT_A_TIME);
    return new BookWork(list, works, deliveries, terms, notes, problems);
  }

  /** A strip that takes all takes everything that any task names, too. */
  private static List<Worklist.Strip> spelled(List<Worklist.Strip> strips, List<Task> tasks) {
    Set<String> named = named(strips, tasks);
    return strips.stream()
        .map(
            s ->
                s.loses().contains(ALL)
                    ? new Worklist.Strip(s.job(), s.first(), s.last(), named)
                    : new Worklist.Strip(s.job(), s.first(), s.last(), with(s.loses(), ALL)))
        .toList();
  }

  private static Set<String> with(Set<String> set, String more) {
    Set<String> all = new java.util.TreeSet<>(set);
    all.add(more);
    return all;
  }

  private static Set<String> named(List<Worklist.Strip> strips, List<Task> tasks) {
    Set<String> named = new java.util.TreeSet<>(Set.of(ALL));
    strips.forEach(s -> named.addAll(s.loses()));
    tasks.forEach(t -> named.addAll(t.needs()));
    return named;
  }

  /** A lathe that has lost something costs half as much as one that has lost turning, or all. */
  private static Map<String, Long> rates(
      List<Worklist.Strip> strips, List<Task> tasks, Terms terms) {
    Map<String, Long> rates = new HashMap<>();
    for (String name : named(strips, tasks)) {
      rates.put(name, Terms.hourly(terms.downtime() / 2));
    }
    rates.put("turning", Terms.hourly(terms.downtime()));
    return rates;
  }

  private static List<Worklist.Quickening> quickenings(List<ChangeWork> all) {
    List<Worklist.Quickening> found = new ArrayList<>();
    for (ChangeWork work : all) {
      Set<String> helped = new java.util.TreeSet<>();
      for (ChangeWork other : all) {
        if (other != work) {
          helped.addAll(other.keys(Work.Kind.LATHE));
        }
      }
      if (work.percent() < 100 && !helped.isEmpty()) {
        found.add(new Worklist.Quickening(work.last(), work.percent(), helped));
      }
    }
    return found;
  }

  private static List<Worklist.Waste> wastes(
      List<ChangeWork> all, Map<String, ChangeWork> byChange, Terms terms, List<Problem> problems) {
    List<Worklist.Waste> found = new ArrayList<>();
    for (ChangeWork work : all) {
      for (String replaced : work.change().values().texts("replaces")) {
        int slash = replaced.indexOf('/');
        ChangeWork other = slash < 0 ? null : byChange.get(replaced.substring(0, slash));
        if (slash < 0) {
          problems.add(
              new Problem(
                  work.change().values().place("replaces"),
                  "replaces",
                  "'" + replaced + "'",
                  "a part of another change, as 'change/part'",
                  ""));
        } else if (other != null) {
          found.addAll(other.wasted(replaced.substring(slash + 1), work.last(), terms));
        }
      }
    }
    return found;
  }
}
