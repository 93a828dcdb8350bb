package fettle.planning.order;

/**
 * What an order of work costs, in millionths of a point.
 *
 * @param waiting for benefits that come late
 * @param downtime for the time the lathe is stripped
 * @param waste for work that is lost
 */
public record Cost(long waiting, long downtime, long waste) {

  /** Returns the sum. */
  public long total() {
    return waiting + downtime + waste;
  }
}
