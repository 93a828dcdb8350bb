package fettle.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Checks that each benchmark and its baseline agree, runs them, and writes {@code
 * docs/performance.md} with the machine they ran on. Started in the folder of the repository, with
 * the names of the groups wanted, or none for all.
 */
public final class Report {

  private static final Path PAGE = Path.of("docs", "performance.md");

  private static final double MOST = 99;

  /**
   * Benchmarks of one question.
   *
   * @param type the class that holds them
   * @param agree refuses to go on if benchmark and baseline give different answers
   * @param title the question
   * @param rows method to what it is, in the order of the table; the baseline begins with
   *     "baseline"
   * @param wanted what was asked of them
   * @param found what stands behind the times, in a sentence
   */
  private record Group(
      Class<?> type,
      Runnable agree,
      String title,
      Map<String, String> rows,
      String wanted,
      Supplier<String> found) {
    Group(Class<?> type, Runnable agree, String title, Map<String, String> rows, String wanted) {
      this(type, agree, title, rows, wanted, () -> "");
    }
  }

  private static final List<Group> GROUPS =
      List.of(
          new Group(
              TrainSearch.class,
              TrainSearch::agree,
              "Change gears: all trains of 2, 4 and 6 wheels that fit the banjo, ten best for each"
                  + " of 60 threads, first call in a fresh process",
              Map.of(
                  "search", "search", "enumeration", "baseline: every train, one after the other"),
              "40 wheels within 100 ms, 60 wheels within 300 ms; trains identical at 20 wheels"),
          new Group(
              BallBearingSolve.class,
              BallBearingSolve::agree,
              "Preloaded pair of 14-ball bearings under load, five ways free",
              Map.of("solver", "solver", "optimiser", "baseline: general least-squares optimiser"),
              "well under 1000 us"),
          new Group(
              SpindleSolve.class,
              SpindleSolve::agree,
              "Stepped hollow spindle on two bearings with a chuck",
              Map.of(
                  "deflection", "deflection with its causes",
                  "frequencies", "all natural frequencies",
                  "denseSolver", "baseline: 98 elements, general dense solver, deflection only"),
              "under 10000 us"),
          new Group(
              SolidSolve.class,
              SolidSolve::agree,
              "Give of an iron bar of 48 x 24 x 12 mm, by edge of the elements in mm",
              Map.of(
                  "multigrid", "solver, set-up and all",
                  "denseSolver", "baseline: dense matrix, general library"),
              "no figure was asked for"),
          new Group(
              FitLookup.class,
              FitLookup::agree,
              "Limits of H7 for 120 sizes",
              Map.of(
                  "table", "look-up",
                  "asWritten", "look-up, the class read as written each time",
                  "rows", "baseline: rows of limits gone through from the top"),
              "no figure was asked for"),
          new Group(
              BookReading.class,
              BookReading::agree,
              "Reading the demo book",
              Map.of(
                  "book", "texts to a book, every key looked up",
                  "checked", "the same, all states checked",
                  "plainMaps", "baseline: a general library makes maps and lists of the texts"),
              "no figure was asked for"),
          new Group(
              DemoForecast.class,
              DemoForecast::agree,
              "Forecast of the ball headstock, both states, in a warm process",
              Map.of(
                  "forecast", "the book at hand",
                  "fromText", "baseline: the book read and checked again each time"),
              "no figure was asked for"),
          new Group(
              ReadingsSeries.class,
              ReadingsSeries::agree,
              "Fit of a dial trial, by number of readings",
              Map.of(
                  "fit", "fit with uncertainties",
                  "regression", "baseline: general regression on the same columns"),
              "grows with the readings, no faster"),
          new Group(
              ClearanceSearch.class,
              ClearanceSearch::agree,
              "Least gaps of 60 convex solids on 4 slides and 3 turning seats, proven to 0.05 mm",
              Map.of(
                  "least", "least gap of the whole machine",
                  "table", "every pair with its witness",
                  "plain", "baseline: every pair, plain bound on every axis",
                  "sampled", "baseline: random positions, nothing proven"),
              "the least gap within 100 ms, the table within 1000 ms, warm",
              ClearanceSearch::found),
          new Group(
              DeskAnswers.class,
              DeskAnswers::agree,
              "Pages of the demo book's desk, twenty readers at once, warm",
              Map.of("page", "a page, all rooms in turn", "file", "baseline: a small file"),
              "99 of 100 pages within 50 ms"),
          new Group(
              ChangesSeries.class,
              ChangesSeries::agree,
              "State of the lathe after so many changes",
              Map.of("state", "all changes", "none", "baseline: the lathe as bought"),
              "grows with the changes, no faster"));

  private Report() {}

  /** Takes the simple names of the groups wanted; none means all. */
  public static void main(String[] names) throws IOException, RunnerException {
    List<String> wanted = List.of(names);
    List<Group> chosen =
        GROUPS.stream()
            .filter(g -> wanted.isEmpty() || wanted.contains(g.type.getSimpleName()))
            .toList();
    if (chosen.isEmpty()) {
      throw new IllegalArgumentException(
          "expected some of "
              + GROUPS.stream().map(g -> g.type.getSimpleName()).collect(Collectors.joining(", ")));
    }
    chosen.forEach(g -> g.agree.run());
    String before = load();
    OptionsBuilder options = new OptionsBuilder();
    chosen.forEach(g -> options.include(g.type.getName().replace(".", "\\.") + "\\..*"));
    Collection<RunResult> results = new Runner(options.shouldFailOnError(true).build()).run();
    Files.writeString(PAGE, page(chosen, results, before));
  }

  /** Sections measured now, and those of the page before that were not, in the order of GROUPS. */
  private static String page(List<Group> groups, Collection<RunResult> results, String before)
      throws IOException {
    Map<String, String> kept = Sections.of(PAGE);
    StringBuilder page = new StringBuilder();
    page.append("# How fast it is\n\n")
        .append("Written by `./measure`; nothing here is typed by hand. Each table is one run of\n")
        .append(
            "benchmark and baseline side by side, after a check that both give the same answer.\n")
        .append(
            "± is half of the 99.9 percent interval that JMH tells. A run of some groups keeps\n")
        .append("the tables of the others as they were. Where processes were waiting for more\n")
        .append(
            "processors than there are, other work slowed the run, and only ratios within the\n")
        .append("table can be trusted.\n");
    for (Group group : GROUPS) {
      if (groups.contains(group)) {
        table(page, group, results);
        page.append("\nMeasured on ")
            .append(LocalDate.now(java.time.ZoneOffset.UTC))
            .append(": ")
            .append(machine())
            .append("; processes waiting for a processor (load over 1 minute) before the run ")
            .append(before)
            .append(", after it ")
            .append(load())
            .append(".\n");
      } else {
        page.append(kept.getOrDefault(group.title, ""));
      }
    }
    return page.toString();
  }

  private static void table(StringBuilder page, Group group, Collection<RunResult> results) {
    page.append("\n## ").append(group.title).append("\n\nWanted: ").append(group.wanted);
    page.append(".\n");
    String found = group.found.get();
    if (!found.isEmpty()) {
      page.append('\n').append(found).append('\n');
    }
    page.append(
        "\n| what | size | time | ± | 99 of 100 within | unit |\n|---|---|---|---|---|---|\n");
    List<RunResult> own = new ArrayList<>();
    for (RunResult r : results) {
      if (r.getParams().getBenchmark().startsWith(group.type.getName() + ".")) {
        own.add(r);
      }
    }
    own.sort(
        java.util.Comparator.comparing((RunResult r) -> label(group, r).startsWith("baseline"))
            .thenComparing(r -> method(r.getParams()))
            .thenComparingDouble(r -> size(r.getParams())));
    for (RunResult r : own) {
      Result<?> score = r.getPrimaryResult();
      String size = parameter(r.getParams());
      page.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %s | %s | %s |%n",
              label(group, r),
              size.isEmpty() ? "–" : size,
              number(score.getScore()),
              Double.isNaN(score.getScoreError()) ? "–" : number(score.getScoreError()),
              r.getParams().getMode() == Mode.SampleTime
                  ? number(score.getStatistics().getPercentile(MOST))
                  : "–",
              score.getScoreUnit().replace("/op", "")));
    }
  }

  private static String label(Group group, RunResult r) {
    return group.rows.getOrDefault(method(r.getParams()), method(r.getParams()));
  }

  private static String method(BenchmarkParams params) {
    String name = params.getBenchmark();
    return name.substring(name.lastIndexOf('.') + 1);
  }

  private static String parameter(BenchmarkParams params) {
    return params.getParamsKeys().stream().map(params::getParam).collect(Collectors.joining(" "));
  }

  private static double size(BenchmarkParams params) {
    String size = parameter(params);
    return size.isEmpty() ? 0 : Double.parseDouble(size);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, value < 10 ? "%.3f" : value < 1000 ? "%.1f" : "%.0f", value);
  }

  private static String load() {
    return number(ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
  }

  private static String machine() throws IOException {
    Path processors = Path.of("/proc/cpuinfo");
    String model = System.getProperty("os.arch", "");
    if (Files.isReadable(processors)) {
      try (var lines = Files.lines(processors)) {
        model =
            lines
                .filter(l -> l.startsWith("model name"))
                .map(l -> l.substring(l.indexOf(':') + 1).strip())
                .findFirst()
                .orElse(model);
      }
    }
    return Runtime.getRuntime().availableProcessors()
        + " processors ("
        + model
        + "), "
        + System.getProperty("os.name")
        + " "
        + System.getProperty("os.version")
        + ", Java "
        + Runtime.version()
        + ", heap at most "
        + Runtime.getRuntime().maxMemory() / 1_000_000
        + " MB";
  }
}
