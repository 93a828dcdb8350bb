package fettle.desk.web;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Looks at something that others may change at any moment. Whoever asks gets what a look saw that
 * began after the question; all who ask before it begins share it. Looks follow each other no
 * faster than a steady pace, so that many readers cost no more than a few.
 *
 * @param <T> what is seen
 */
final class Looks<T> {

  private static final long PACE = TimeUnit.MILLISECONDS.toNanos(4);

  private final Supplier<T> look;
  private final ReentrantLock looking = new ReentrantLock();
  private @Nullable Shared<T> coming;
  private long ended = System.nanoTime() - PACE;

  Looks(Supplier<T> look) {
    this.look = look;
  }

  /** Returns what the next look sees. */
  T next() {
    Shared<T> mine;
    boolean first;
    synchronized (this) {
      Shared<T> known = coming;
      first = known == null;
      mine = known == null ? new Shared<>() : known;
      coming = mine;
    }
    if (first) {
      take(mine);
    }
    return mine.get();
  }

  private void take(Shared<T> mine) {
    looking.lock();
    try {
      pause();
      synchronized (this) {
        coming = null;
      }
      mine.make(look);
      ended = System.nanoTime();
    } finally {
      looking.unlock();
    }
  }

  private void pause() {
    long left = ended + PACE - System.nanoTime();
    while (left > 0 && !Thread.currentThread().isInterrupted()) {
      LockSupport.parkNanos(left);
      left = ended + PACE - System.nanoTime();
    }
  }
}
