package fettle.desk.web;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;

/**
 * The turn to write into a book, of which there is only one at a time, however many desks are open
 * on it. A desk that is killed gives it up by that.
 */
final class SavingTurn implements AutoCloseable {

  private static final Duration PATIENCE = Duration.ofSeconds(12);
  private static final int PAUSE = 20;

  private final FileChannel channel;

  private SavingTurn(FileChannel channel) {
    this.channel = channel;
  }

  /** Waits for the turn. */
  static SavingTurn take(Path store) {
    try {
      Files.createDirectories(store);
      FileChannel channel =
          FileChannel.open(
              store.resolve("turn"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      try {
        await(channel);
        return new SavingTurn(channel);
      } catch (IOException | InterruptedException e) {
        channel.close();
        throw e;
      }
    } catch (IOException e) {
      throw Refused.unwritten("The history could not be written", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw Refused.disk("The book could not be written: the desk is being closed.");
    }
  }

  private static void await(FileChannel channel) throws IOException, InterruptedException {
    Instant end = Instant.now().plus(PATIENCE);
    while (!locked(channel)) {
      if (Instant.now().isAfter(end)) {
        throw new IOException("another desk keeps the book to itself");
      }
      Thread.sleep(PAUSE);
    }
  }

  private static boolean locked(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false; // another desk of this very program has it
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      // the turn ends with the program at the latest
    }
  }
}
