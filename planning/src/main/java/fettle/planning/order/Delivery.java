package fettle.planning.order;

import java.util.List;

/**
 * Something to buy that a step waits for.
 *
 * @param key change and name, such as {@code ball-headstock/front bearings}
 * @param days days from order to arrival
 * @param tasks tasks that wait for it
 */
public record Delivery(String key, double days, List<String> tasks) {

  /** Keeps its own copy. */
  public Delivery {
    tasks = List.copyOf(tasks);
  }
}
