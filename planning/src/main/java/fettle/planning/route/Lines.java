package fettle.planning.route;

import java.util.ArrayList;
import java.util.List;

/** The lines of a route of milled or bent work while it is written. */
final class Lines {

  static final double MINUTE = 60;

  private final List<Route.Line> lines = new ArrayList<>();

  List<Route.Line> all() {
    return lines;
  }

  /**
   * Adds work that is done by hand or by setting up alone.
   *
   * @param setUp number of the set-up
   * @param what what is made
   * @param holding how it is held
   * @param tool with what
   * @param minutes how long it takes [min]
   */
  void hand(int setUp, String what, String holding, String tool, double minutes) {
    lines.add(new Route.Line(setUp, what, holding, tool, 0, 0, 1, minutes * MINUTE, 0));
  }

  /**
   * Adds a cut with a tool that turns.
   *
   * @param setUp number of the set-up
   * @param what what is made
   * @param holding how it is held
   * @param cut the cut
   * @param minutes time to change tools and measure [min]
   */
  void cut(int setUp, String what, String holding, Cut cut, double minutes) {
    double time = cut.path() * cut.passes() / (cut.feed() * cut.turns() / (2 * Math.PI));
    lines.add(
        new Route.Line(
            setUp,
            what,
            holding,
            cut.tool(),
            cut.turns(),
            cut.feed(),
            cut.passes(),
            minutes * MINUTE,
            time));
  }

  /**
   * A cut.
   *
   * @param tool what cuts
   * @param turns speed of the tool, at most [rad/s]
   * @param feed feed a turn [mm]
   * @param passes number of passes
   * @param path way of one pass [mm]
   */
  record Cut(String tool, double turns, double feed, int passes, double path) {

    /** Fastest that a small mill turns; common practice. */
    private static final double FASTEST = 2000 * 2 * Math.PI / 60;

    /**
     * Returns a cut at a cutting speed, no faster than a small mill turns.
     *
     * @param tool what cuts
     * @param diameter diameter of the tool [mm]
     * @param speed cutting speed [mm/s]
     * @param feed feed a turn [mm]
     * @param passes number of passes
     * @param path way of one pass [mm]
     */
    static Cut of(
        String tool, double diameter, double speed, double feed, int passes, double path) {
      double turns = Math.min(FASTEST, 2 * speed / Math.max(1, diameter));
      return new Cut(tool, turns, feed, Math.max(1, passes), path);
    }
  }
}
