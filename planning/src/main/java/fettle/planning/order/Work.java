package fettle.planning.order;

import java.util.List;

/**
 * What a task is, for the person who does it.
 *
 * @param key the task
 * @param change the change it belongs to
 * @param step name of the step
 * @param words what is done
 * @param kind how the lathe takes part
 * @param makes parts that it makes
 * @param buys purchases that must have arrived
 */
public record Work(
    String key,
    String change,
    String step,
    String words,
    Kind kind,
    List<String> makes,
    List<String> buys) {

  /** How the lathe takes part. */
  public enum Kind {
    /** The lathe is not needed. */
    BENCH,
    /** The lathe makes something. */
    LATHE,
    /** The lathe is stripped. */
    DOWN,
    /** The lathe is whole again and is tried. */
    PROVE
  }

  /** Keeps its own copies. */
  public Work {
    makes = List.copyOf(makes);
    buys = List.copyOf(buys);
  }
}
