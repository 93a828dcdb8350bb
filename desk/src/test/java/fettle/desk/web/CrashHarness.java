package fettle.desk.web;

import fettle.desk.fuzz.SmallBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Kills desks at random moments while values are written through them, again and again on one and
 * the same book, and looks after each kill whether the book opens, whether every value that was
 * confirmed is there and none that was never sent, and whether the history can be read. Every third
 * time two desks are open on the book; every tenth time the desk dies while it is still starting or
 * before the first write is confirmed. Started by hand: {@code KILLS SEED}.
 */
final class CrashHarness {

  private static final int WAITS = 60_000;
  private static final int LONGEST = 400;
  private static final int LONGEST_START = 1_500;
  private static final List<String> PLACES =
      List.of(
          "machine.yaml members.saddle.mass",
          "machine.yaml members.bed.mass",
          "changes/heavier-bed.yaml hours",
          "changes/lighter-saddle.yaml hours");

  private final Path book;
  private final DeskProcess.Starter starter;
  private final Random random;
  private final Load.Account account = new Load.Account();
  private final List<Throwable> faults = java.util.Collections.synchronizedList(new ArrayList<>());
  private int killed;

  CrashHarness(Path book, DeskProcess.Starter starter, long seed) {
    this.book = book;
    this.starter = starter;
    this.random = new Random(seed);
  }

  /** Kills as often as the first argument says; the second is the seed. */
  public static void main(String[] args) throws Exception {
    shared(Long.parseLong(args[1])).kill(Integer.parseInt(args[0]));
  }

  /** Returns a harness on a book of its own, whose desks share one archive of classes. */
  static CrashHarness shared(long seed) throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("fettle-crash-");
    Path book = SmallBook.write(Files.createDirectory(folder.resolve("book")));
    return new CrashHarness(book, DeskProcess.Starter.shared(folder, book), seed);
  }

  /** Kills that many desks and tells the counts now and then. */
  void kill(int kills) throws IOException, InterruptedException {
    for (int round = 1; killed < kills; round++) {
      round(round);
      if (round % 10 == 0 || killed >= kills) {
        System.out.println(counts());
      }
    }
  }

  /** Returns how often desks were killed, and what they had confirmed by then. */
  String counts() {
    return killed + " kills, " + account.saves() + " confirmed writes, none lost";
  }

  int killed() {
    return killed;
  }

  int saves() {
    return account.saves();
  }

  /** Opens desks, writes through them, kills them and looks at the book. */
  void round(int round) throws IOException, InterruptedException {
    List<DeskProcess> desks = new ArrayList<>();
    List<Thread> writers = new ArrayList<>();
    int count = round % 3 == 0 ? 2 : 1;
    int before = account.saves();
    try {
      for (int d = 0; d < count; d++) {
        DeskProcess desk = starter.open(book);
        desks.add(desk);
        for (int w = d; w < PLACES.size(); w += count) {
          writers.add(writer(desk, PLACES.get(w)));
        }
      }
      if (round % 10 == 0) {
        Thread.sleep(random.nextInt(LONGEST_START));
      } else {
        awaitSave(before);
        Thread.sleep(random.nextInt(LONGEST));
      }
    } finally {
      desks.forEach(DeskProcess::kill);
    }
    killed += desks.size();
    for (Thread writer : writers) {
      writer.join();
    }
    if (!faults.isEmpty()) {
      throw new IllegalStateException("kill " + killed, faults.get(0));
    }
    account.look(book, "kill " + killed);
  }

  private void awaitSave(int before) throws InterruptedException {
    for (int i = 0; i < WAITS && account.saves() == before && faults.isEmpty(); i++) {
      Thread.sleep(5);
    }
    if (account.saves() == before) {
      throw new IllegalStateException("no write was confirmed within five minutes");
    }
  }

  private Thread writer(DeskProcess desk, String place) {
    Load load = new Load(desk.address(), account);
    Thread writer = new Thread(() -> load.untilGone(place));
    writer.setUncaughtExceptionHandler((t, e) -> faults.add(e));
    writer.start();
    return writer;
  }
}
