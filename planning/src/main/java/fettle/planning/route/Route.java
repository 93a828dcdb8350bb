package fettle.planning.route;

import java.util.List;

/**
 * How one part is made.
 *
 * @param part the part
 * @param stock the stock it is made from
 * @param cut length to cut off, everything for holding and parting included [mm]
 * @param lines what is done, in order
 * @param lacks what the lathe lacks for it, each with the way round; empty if it lacks nothing
 */
public record Route(String part, String stock, double cut, List<Line> lines, List<String> lacks) {

  private static final double SHORTEST = 0.7;
  private static final double LONGEST = 1.6;

  /**
   * One operation.
   *
   * @param setUp number of the set-up
   * @param what what is made
   * @param holding how the work is held
   * @param cutter what cuts
   * @param speed spindle speed; 0 if nothing turns [rad/s]
   * @param feed feed a turn; 0 if by hand [mm]
   * @param passes number of passes
   * @param preparing time to set up, change tools and measure [s]
   * @param cutting time in the cut [s]
   */
  public record Line(
      int setUp,
      String what,
      String holding,
      String cutter,
      double speed,
      double feed,
      int passes,
      double preparing,
      double cutting) {}

  /** Keeps its own copies. */
  public Route {
    lines = List.copyOf(lines);
    lacks = List.copyOf(lacks);
  }

  /**
   * Returns the time of all operations.
   *
   * @return time [s]
   */
  public double time() {
    return lines.stream().mapToDouble(l -> l.preparing() + l.cutting()).sum();
  }

  /**
   * Returns the time if all goes well; common practice until the owner's log says better.
   *
   * @return time [s]
   */
  public double shortest() {
    return SHORTEST * time();
  }

  /**
   * Returns the time of a first part with its troubles; common practice.
   *
   * @return time [s]
   */
  public double longest() {
    return LONGEST * time();
  }
}
