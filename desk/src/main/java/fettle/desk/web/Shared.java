package fettle.desk.web;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * Something that one makes and all who asked meanwhile get; if it fails, it fails for all of them.
 *
 * @param <T> what is made
 */
final class Shared<T> {

  private final CompletableFuture<T> made = new CompletableFuture<>();

  /** Makes it; to be called by one thread, once. */
  void make(Supplier<? extends T> making) {
    try {
      made.complete(making.get());
    } catch (RuntimeException | Error e) {
      made.completeExceptionally(e);
    }
  }

  /** Tells whether it was tried and could not be made. */
  boolean failed() {
    return made.isCompletedExceptionally();
  }

  /** Waits until it is made and returns it, or fails as the making failed. */
  T get() {
    try {
      return made.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      if (e.getCause() instanceof Error fault) {
        throw fault;
      }
      throw e;
    }
  }
}
