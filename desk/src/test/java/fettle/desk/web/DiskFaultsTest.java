package fettle.desk.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fettle.desk.fuzz.SmallBook;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What becomes of a book when the disk does not take what the desk writes: it still opens, holds
 * all that was confirmed and nothing by halves, and the page says what happened. Full and closed
 * disks are real ones, so their tests need the rights to mount one.
 */
final class DiskFaultsTest {

  private static final String SADDLE = "machine.yaml members.saddle.mass";
  private static final String HOURS = "changes/heavier-bed.yaml hours";
  private static final String NOTHING = "Nothing was written; the book is as it was.";

  @TempDir Path folder;
  private final Load.Account account = new Load.Account();
  private boolean mounted;

  @AfterEach
  void unmount() throws Exception {
    if (mounted) {
      run("umount", "-l", folder.toString());
    }
  }

  private static int run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start()
        .waitFor();
  }

  private void mount(String options) throws Exception {
    boolean can =
        Files.isExecutable(Path.of("/bin/mount"))
            && run("mount", "-t", "tmpfs", "-o", options, "fettle", folder.toString()) == 0;
    assumeTrue(can, "No rights to mount a small disk: the faults of a full one are not tried.");
    mounted = true;
  }

  /** Waits until nothing is being written, as long as the system says that the disk is busy. */
  private void remount(String how) throws Exception {
    for (int i = 0; i < 100; i++) {
      if (run("mount", "-o", how, folder.toString()) == 0) {
        return;
      }
      Thread.sleep(100);
    }
    throw new IllegalStateException("no " + how);
  }

  private void writes(Load load) throws Exception {
    assertThat(load.write(SADDLE).statusCode()).isEqualTo(303);
    assertThat(load.write(HOURS).statusCode()).isEqualTo(303);
  }

  private static void refused(HttpResponse<String> answer, String reason) {
    assertThat(answer.statusCode()).isEqualTo(500);
    assertThat(answer.body()).contains(reason, NOTHING).doesNotContain("at fault");
  }

  private static List<Path> leftOver(Path book) throws IOException {
    try (var files = Files.walk(book)) {
      return files.filter(f -> f.toString().endsWith(".part")).toList();
    }
  }

  @Test
  void aFullDiskLosesNothingAndIsNamed() throws Exception {
    mount("size=600k");
    Path book = SmallBook.write(folder.resolve("book"));
    try (DeskProcess desk = DeskProcess.Starter.plain().open(book)) {
      Load load = new Load(desk.address(), account);
      writes(load);
      Path filler = folder.resolve("filler");
      fill(filler);
      refused(load.write(SADDLE), "the disk is full");
      refused(load.write(HOURS), "the disk is full");
      assertThat(load.get("/lathe").statusCode()).isEqualTo(200);
      account.look(book, "a full disk");
      assertThat(leftOver(book)).isEmpty();
      Files.delete(filler);
      writes(load);
      account.look(book, "room made");
    }
  }

  private static void fill(Path filler) throws IOException {
    byte[] block = new byte[4096];
    try (var out = Files.newOutputStream(filler)) {
      for (int i = 0; i < 10_000; i++) {
        out.write(block);
      }
    } catch (IOException e) {
      return; // full, as wanted
    }
    throw new IllegalStateException("the disk does not fill");
  }

  @Test
  void aDiskThatCanOnlyBeReadLosesNothingAndIsNamed() throws Exception {
    mount("size=2m");
    Path book = SmallBook.write(folder.resolve("book"));
    try (DeskProcess desk = DeskProcess.Starter.plain().open(book)) {
      Load load = new Load(desk.address(), account);
      writes(load);
      remount("remount,ro");
      refused(load.write(SADDLE), "the disk can only be read");
      assertThat(load.get("/history").statusCode()).isEqualTo(200);
      account.look(book, "a disk that can only be read");
      remount("remount,rw");
      writes(load);
      account.look(book, "a disk that can be written again");
    }
  }

  /** The system breaks off whatever grows beyond a few hundred bytes, in the middle of a write. */
  @Test
  void aWriteBrokenInTheMiddleLosesNothingAndIsNamed() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "No shell that limits the size of files.");
    Path book = SmallBook.write(folder);
    Files.writeString(
        book.resolve("machine.yaml"), "# " + "long ".repeat(2_000) + "\n" + SmallBook.LATHE);
    List<String> limited = List.of("/bin/bash", "-c", "ulimit -f 8; exec \"$@\"", "limited");
    try (DeskProcess desk = DeskProcess.Starter.plain().open(book, limited)) {
      Load load = new Load(desk.address(), account);
      refused(load.write(SADDLE), "the system lets no file grow so large");
      assertThat(load.write(HOURS).statusCode()).isEqualTo(303);
      account.look(book, "a broken write");
      assertThat(leftOver(book)).isEmpty();
    }
    try (DeskProcess desk = DeskProcess.Starter.plain().open(book)) {
      writes(new Load(desk.address(), account));
      account.look(book, "no limit any more");
    }
  }

  @Test
  void aHistoryThatCannotBeWrittenStopsTheWrite() throws Exception {
    Path book = SmallBook.write(folder);
    Files.writeString(book.resolve(".history"), "a file where the folder should be");
    try (OpenDesk desk = OpenDesk.of(book)) {
      String before = desk.text("machine.yaml");
      HttpResponse<String> answer = desk.edit("machine.yaml", "members.saddle.mass", "9 kg");
      refused(answer, "The history could not be written");
      assertThat(desk.text("machine.yaml")).isEqualTo(before);
      Files.delete(book.resolve(".history"));
      assertThat(desk.edit("machine.yaml", "members.saddle.mass", "9 kg").statusCode())
          .isEqualTo(303);
    }
  }

  /** The text is written, but its version cannot be: the text is put back. */
  @Test
  void aTextWhoseVersionCannotBeKeptIsPutBack() throws Exception {
    Path book = SmallBook.write(folder);
    try (OpenDesk desk = OpenDesk.of(book)) {
      desk.edit("machine.yaml", "members.saddle.mass", "9 kg");
      String before = desk.text("machine.yaml");
      Path branch = book.resolve(".history/refs/heads");
      Files.move(branch.resolve("book"), book.resolve("book"));
      Files.delete(branch);
      Files.writeString(branch, "a file where the folder should be");
      refused(desk.edit("machine.yaml", "members.saddle.mass", "8 kg"), "could not be written");
      assertThat(desk.text("machine.yaml")).isEqualTo(before);
    }
  }

  @Test
  void desksThatAreKilledLoseNothing() throws Exception {
    Path book = SmallBook.write(Files.createDirectory(folder.resolve("book")));
    CrashHarness harness = new CrashHarness(book, DeskProcess.Starter.plain(), 7);
    harness.round(1);
    harness.round(3);
    assertThat(harness.killed()).isEqualTo(3);
    assertThat(harness.saves()).isPositive();
  }

  @Test
  @Tag("slow")
  void desksThatAreKilledManyTimesLoseNothing() throws Exception {
    CrashHarness harness = CrashHarness.shared(20_261_125);
    harness.kill(Integer.getInteger("fettle.kills", 100));
    System.out.println(harness.counts());
    assertThat(harness.saves()).isGreaterThan(harness.killed() / 2);
  }
}
