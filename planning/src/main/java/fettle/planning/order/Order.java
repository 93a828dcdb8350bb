package fettle.planning.order;

/**
 * An order of work with what it costs and how good it is.
 *
 * @param plan when each task starts and ends
 * @param cost what it costs
 * @param bound no plan costs less, millionths of a point
 * @param proof how the bound was obtained
 */
public record Order(Schedule plan, Cost cost, long bound, String proof) {

  /** Tells whether no better plan exists. */
  public boolean best() {
    return cost.total() == bound;
  }

  /**
   * Returns by how much a better plan could at most be cheaper.
   *
   * @return share of this plan's cost [-]
   */
  public double gap() {
    return cost.total() == 0 ? 0 : (double) (cost.total() - bound) / cost.total();
  }
}
