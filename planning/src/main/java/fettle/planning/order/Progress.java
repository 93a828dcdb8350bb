package fettle.planning.order;

/** Hears how a search gets on, and may end it. */
public interface Progress {

  /** Hears nothing and never ends a search. */
  Progress SILENT = (cost, bound) -> Wish.GO_ON;

  /** What the listener wants. */
  enum Wish {
    GO_ON,
    STOP
  }

  /**
   * Hears of a better plan, or of a better proof.
   *
   * @param cost cost of the best plan so far, millionths of a point
   * @param bound no plan costs less, millionths of a point
   */
  Wish heard(long cost, long bound);

  /**
   * Hears that a long search begins, and how to end it from outside; the best plan so far is then
   * kept.
   */
  default void begun(Runnable stop) {}
}
