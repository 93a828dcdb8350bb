package fettle.planning.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Small lists whose best order is known from elsewhere. */
final class Instances {

  private Instances() {}

  private static Task task(String key, String job, double hours, String needs, String after) {
    return new Task(
        key,
        job,
        (int) Math.round(hours * Worklist.HOUR),
        0,
        Set.copyOf(List.of(needs.split(""))).stream()
            .filter(n -> !n.isEmpty())
            .collect(java.util.stream.Collectors.toSet()),
        Set.copyOf(List.of(after.split(""))).stream()
            .filter(n -> !n.isEmpty())
            .collect(java.util.stream.Collectors.toSet()));
  }

  /** Two changes: a cross slide that takes turning and screw cutting away, a lead screw bracket. */
  static Worklist two() {
    return new Worklist(
        List.of(
            task("a", "cross", 4, "TS", ""),
            task("b", "cross", 3, "T", ""),
            task("c", "cross", 1, "", ""),
            task("d", "cross", 2, "", "abc"),
            task("e", "lead", 3, "TV", ""),
            task("f", "lead", 2, "T", "e"),
            task("g", "lead", 0.5, "", ""),
            task("h", "lead", 1.5, "", "fg")),
        List.of(
            new Worklist.Strip("cross", "c", "d", Set.of("T", "S", "V")),
            new Worklist.Strip("lead", "g", "h", Set.of("S"))),
        List.of(new Worklist.Worth("d", perHour(3)), new Worklist.Worth("h", perHour(5))),
        List.of(),
        List.of(),
        Map.of("T", perHour(2), "S", perHour(1)),
        Worklist.Stripping.MAY_OVERLAP);
  }

  /** Three improvements that make later making faster: make h, fit h, worth, percent. */
  static Worklist improvements() {
    List<Task> tasks = new ArrayList<>();
    List<Worklist.Worth> worths = new ArrayList<>();
    List<Worklist.Quickening> quick = new ArrayList<>();
    Object[][] rows = {{"H", 12, 6, 2, 60}, {"Q", 5, 1, 1, 90}, {"D", 14, 1, 3, 100}};
    for (Object[] row : rows) {
      String job = (String) row[0];
      tasks.add(task(job + "1", job, (int) row[1], "", ""));
      tasks.add(
          new Task(job + "2", job, (int) row[2] * Worklist.HOUR, 0, Set.of(), Set.of(job + "1")));
      worths.add(new Worklist.Worth(job + "2", perHour((int) row[3])));
      quick.add(new Worklist.Quickening(job + "2", (int) row[4], Set.of("H1", "Q1", "D1")));
    }
    return new Worklist(
        tasks, List.of(), worths, quick, List.of(), Map.of(), Worklist.Stripping.MAY_OVERLAP);
  }

  /** Two chains of jobs with worths, a textbook example of ordering chains. */
  static Worklist chains() {
    int[] worth = {6, 18, 12, 8, 8, 17, 18};
    int[] hours = {3, 6, 6, 5, 4, 8, 10};
    List<Task> tasks = new ArrayList<>();
    List<Worklist.Worth> worths = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      String key = String.valueOf(i + 1);
      String after = i == 0 || i == 4 ? "" : String.valueOf(i);
      tasks.add(task(key, key, hours[i], "", after));
      worths.add(new Worklist.Worth(key, perHour(worth[i])));
    }
    return new Worklist(
        tasks, List.of(), worths, List.of(), List.of(), Map.of(), Worklist.Stripping.MAY_OVERLAP);
  }

  private static long perHour(int points) {
    return points * Worklist.POINT / Worklist.HOUR;
  }

  static double points(long cost) {
    return (double) cost / Worklist.POINT;
  }
}
