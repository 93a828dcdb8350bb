package fettle.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book on the disk is what a reader sees, however little of it is read again. */
final class ShelfTest {

  private static final String LATHE = "name: Wren 60\nunits: mm\n# turn 000000\n";

  @TempDir Path folder;
  private Path machine;
  private Shelf shelf;

  @BeforeEach
  void book() throws IOException {
    machine = folder.resolve("machine.yaml");
    Files.writeString(machine, LATHE);
    shelf = new Shelf(folder);
  }

  private void settled() throws IOException {
    Files.setLastModifiedTime(machine, FileTime.from(Instant.now().minus(Duration.ofHours(1))));
  }

  @Test
  void aBookLeftAloneStaysTheSame() throws IOException {
    settled();
    Opened first = shelf.open();
    assertThat(shelf.open()).isSameAs(first);
  }

  @Test
  void anEditOfTheSameLengthAndTimeIsSeen() throws IOException, InterruptedException {
    settled();
    shelf.open();
    Thread.sleep(20);
    FileTime then = Files.getLastModifiedTime(machine);
    Files.writeString(machine, LATHE.replace("000000", "000001"));
    Files.setLastModifiedTime(machine, then);
    assertThat(shelf.open().files().texts().get("machine.yaml")).contains("turn 000001");
  }

  @Test
  void aFileMoreOrLessIsSeen() throws IOException {
    settled();
    shelf.open();
    Path change = Files.createDirectory(folder.resolve("changes")).resolve("longer-bed.yaml");
    Files.writeString(change, "title: Longer bed\n");
    assertThat(shelf.open().text("changes/longer-bed.yaml")).isPresent();
    Files.delete(change);
    assertThat(shelf.open().text("changes/longer-bed.yaml")).isEmpty();
  }

  @Test
  void whoAsksAfterAWriteSeesItWhoeverElseIsLooking() throws Exception {
    Files.createDirectory(folder.resolve("trials"));
    for (int i = 0; i < 300; i++) {
      Files.writeString(folder.resolve("trials/t" + i + ".csv"), "a long look\n");
    }
    AtomicInteger written = new AtomicInteger();
    ExecutorService readers = Executors.newFixedThreadPool(8);
    List<Future<Integer>> late = new ArrayList<>();
    for (int r = 0; r < 8; r++) {
      int pause = r;
      late.add(readers.submit(() -> late(written, pause)));
    }
    for (int turn = 1; turn <= 400; turn++) {
      Path fresh = folder.resolve("fresh.part");
      Files.writeString(fresh, LATHE.replace("000000", "%06d".formatted(turn)));
      Files.move(fresh, machine, java.nio.file.StandardCopyOption.ATOMIC_MOVE);
      written.set(turn);
      Thread.sleep(2);
    }
    written.set(Integer.MAX_VALUE);
    readers.shutdown();
    for (Future<Integer> one : late) {
      assertThat(one.get()).isZero();
    }
  }

  private int late(AtomicInteger written, int pause) throws InterruptedException {
    int late = 0;
    int before = written.get();
    while (before != Integer.MAX_VALUE) {
      String text = shelf.open().text("machine.yaml").orElseThrow();
      if (Integer.parseInt(text.substring(text.indexOf("turn ") + 5).trim()) < before) {
        late++;
      }
      Thread.sleep(pause);
      before = written.get();
    }
    return late;
  }
}
