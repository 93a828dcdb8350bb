package fettle.desk.web;

import fettle.mechanics.base.Ratio;
import fettle.mechanics.gears.GearboxSearch;
import fettle.planning.gearbox.BoxWish;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Searches for gearboxes, one at a time, beside the pages. What was found is kept in the folder of
 * the book, so that nothing is lost when a search is stopped or the desk is closed.
 */
final class BoxJobs implements AutoCloseable {

  private static final int MULTIPLIERS = 6;

  private final Path folder;
  private @Nullable Job running;

  BoxJobs(Path folder) {
    this.folder = folder;
  }

  /**
   * What is asked for.
   *
   * @param leads leads in millimetres, as written
   * @param perInch threads per inch, as written
   */
  record Wish(List<String> leads, List<String> perInch) {
    Wish {
      leads = List.copyOf(leads);
      perInch = List.copyOf(perInch);
    }

    BoxWish asked() {
      return new BoxWish(ratios(leads), ratios(perInch));
    }

    GearboxSearch.Query query(long sets) {
      return asked().query(MULTIPLIERS, sets);
    }

    static List<Ratio> ratios(List<String> texts) {
      return texts.stream().map(t -> Ratio.of(new java.math.BigDecimal(t))).toList();
    }

    String mark() {
      return Marks.of(leads + "|" + perInch);
    }
  }

  /**
   * What was found for a wish.
   *
   * @param design the box
   * @param bound fewest wheels possible as far as is proven
   * @param sets sets of multipliers that were allowed
   * @param proof how it is known, a line for each number of multipliers
   */
  record Found(GearboxSearch.Design design, int bound, long sets, List<String> proof) {
    Found {
      proof = List.copyOf(proof);
    }

    boolean proven() {
      return bound >= design.wheels();
    }
  }

  /** One search. */
  static final class Job {
    private final Wish wish;
    private final long sets;
    private final long started = System.nanoTime();
    private volatile boolean stopped;
    private volatile boolean done;
    private volatile GearboxSearch.Progress progress = new GearboxSearch.Progress(1, 0, 0, 0);

    Job(Wish wish, long sets) {
      this.wish = wish;
      this.sets = sets;
    }

    GearboxSearch.Progress progress() {
      return progress;
    }

    long sets() {
      return sets;
    }

    boolean stopping() {
      return stopped;
    }

    double seconds() {
      return (System.nanoTime() - started) / 1e9;
    }
  }

  synchronized Optional<Job> running(Wish wish) {
    Job job = running;
    return job != null && !job.done && job.wish.equals(wish) ? Optional.of(job) : Optional.empty();
  }

  /** Starts a search, or takes it up from what was found before. */
  synchronized void start(Wish wish, long sets) {
    Job before = running;
    if (before != null && !before.done) {
      if (before.wish.equals(wish)) {
        return;
      }
      throw Refused.wrong(
          "Another gearbox is being searched for.", "Stop it first, or wait until it is done.");
    }
    Job job = new Job(wish, sets);
    running = job;
    Thread thread = new Thread(() -> work(job), "gearbox search");
    thread.setDaemon(true);
    thread.start();
  }

  private void work(Job job) {
    try {
      GearboxSearch.Query query = job.wish.query(job.sets);
      Optional<Found> before = kept(job.wish);
      GearboxSearch.Outcome outcome =
          before.isPresent()
              ? GearboxSearch.resumed(
                  query, before.get().design(), () -> job.stopped, p -> job.progress = p)
              : GearboxSearch.search(query, () -> job.stopped, p -> job.progress = p);
      keep(job.wish, found(outcome, job.sets, before));
    } finally {
      job.done = true;
    }
  }

  private static Found found(GearboxSearch.Outcome outcome, long sets, Optional<Found> before) {
    int known = before.map(Found::bound).orElse(0);
    List<String> proof = new ArrayList<>();
    for (GearboxSearch.Level level : outcome.levels()) {
      proof.add(
          level.multipliers()
              + " ratios: at least "
              + (level.least() + 2 * level.multipliers())
              + " wheels; "
              + level.sets()
              + " sets tried; "
              + level.reason());
    }
    return new Found(outcome.design(), Math.max(known, outcome.lowerBound()), sets, proof);
  }

  /** Asks the search to stop; what it has found is kept. */
  synchronized void stop() {
    if (running != null) {
      running.stopped = true;
    }
  }

  @Override
  public void close() {
    stop();
  }

  private Path file(Wish wish) {
    return folder.resolve("gearbox-" + wish.mark() + ".txt");
  }

  private void keep(Wish wish, Found found) {
    List<String> lines = new ArrayList<>();
    lines.add("leads " + String.join(" ", wish.leads()));
    lines.add("per inch " + String.join(" ", wish.perInch()));
    lines.add("cone " + texts(found.design.cone()));
    lines.add("multipliers " + texts(found.design.multipliers()));
    lines.add("constant " + found.design.constant().text());
    lines.add("bound " + found.bound);
    lines.add("sets " + found.sets);
    found.proof.forEach(p -> lines.add("proof " + p));
    try {
      Files.createDirectories(folder);
      Path fresh = Files.createTempFile(folder, ".gearbox-", ".part");
      Files.write(fresh, lines);
      Files.move(
          fresh, file(wish), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String texts(List<Ratio> ratios) {
    return ratios.stream().map(Ratio::text).collect(Collectors.joining(" "));
  }

  /** Returns what was found for a wish; what does not serve it, or cannot be read, counts not. */
  Optional<Found> kept(Wish wish) {
    Path file = file(wish);
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try {
      Map<String, String> said = new LinkedHashMap<>();
      List<String> proof = new ArrayList<>();
      for (String line : Files.readAllLines(file)) {
        String[] parts = line.replaceFirst("^per inch", "per-inch").split(" ", 2);
        if (parts[0].equals("proof")) {
          proof.add(parts.length > 1 ? parts[1] : "");
        } else {
          said.put(parts[0], parts.length > 1 ? parts[1] : "");
        }
      }
      GearboxSearch.Design design =
          new GearboxSearch.Design(
              read(said, "cone"), read(said, "multipliers"), read(said, "constant").get(0));
      Found found =
          new Found(
              design,
              Integer.parseInt(said.getOrDefault("bound", "0")),
              Long.parseLong(said.getOrDefault("sets", "0")),
              proof);
      return serves(design, wish) ? Optional.of(found) : Optional.empty();
    } catch (IOException
        | IllegalArgumentException
        | ArithmeticException
        | IndexOutOfBoundsException unreadable) {
      return Optional.empty();
    }
  }

  private static List<Ratio> read(Map<String, String> said, String key) {
    return Arrays.stream(said.getOrDefault(key, "").split(" "))
        .map(
            t -> {
              String[] p = t.split("/");
              return Ratio.of(
                  new BigInteger(p[0]).longValueExact(),
                  p.length > 1 ? new BigInteger(p[1]).longValueExact() : 1);
            })
        .toList();
  }

  /** Tells whether a box gives every lead and every thread of a wish. */
  private static boolean serves(GearboxSearch.Design d, Wish wish) {
    return Wish.ratios(wish.leads()).stream()
            .allMatch(
                t ->
                    d.cone().stream()
                        .anyMatch(
                            c -> d.multipliers().stream().anyMatch(m -> c.times(m).sameAs(t))))
        && Wish.ratios(wish.perInch()).stream()
            .allMatch(
                t ->
                    d.cone().stream()
                        .anyMatch(
                            c ->
                                d.multipliers().stream()
                                    .anyMatch(m -> d.constant().times(c).over(m).sameAs(t))));
  }
}
