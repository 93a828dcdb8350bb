package fettle.mechanics.solids;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.IntConsumer;

/** Runs the parts of a loop side by side; parts wait by sleeping, never by spinning. */
final class Workers {

  private Workers() {}

  /** Returns how many parts are worth while for so many nodes. */
  static int parts(int nodes) {
    return nodes < 15_000
        ? 1
        : Math.max(1, Math.min(4, Runtime.getRuntime().availableProcessors()));
  }

  /** Runs parts 0 to count - 1 and returns when all are done. */
  static void run(int count, IntConsumer part) {
    if (count == 1) {
      part.accept(0);
      return;
    }
    List<ForkJoinTask<?>> others = new ArrayList<>(count - 1);
    for (int p = 1; p < count; p++) {
      int number = p;
      others.add(ForkJoinPool.commonPool().submit(() -> part.accept(number)));
    }
    part.accept(0);
    for (ForkJoinTask<?> task : others) {
      task.join();
    }
  }
}
