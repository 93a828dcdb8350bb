package fettle.desk.picture;

import fettle.desk.page.Drawing;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.bearings.BallBearing;
import fettle.mechanics.bearings.BearingSet;
import fettle.mechanics.bearings.BearingState;

/** Draws the balls of each bearing of a set with the load each carries. */
public final class BearingPicture {

  private BearingPicture() {}

  /**
   * Draws the bearings side by side, seen along the shaft; the load acts downwards.
   *
   * @param set the bearings
   * @param state what they carry
   * @param words what is drawn
   */
  public static Drawing of(BearingSet set, BearingState state, String words) {
    BallBearing first = set.seats().get(0).bearing();
    double room = 1.9 * (first.pitch() + first.ball());
    double height = room;
    Pen pen = Pen.of(Math.max(room * set.seats().size(), 1.4 * room), 0);
    double most = Math.max(1e-9, state.greatestLoad());
    double[] loads = state.ballLoads();
    int at = 0;
    for (int s = 0; s < set.seats().size(); s++) {
      BearingSet.Seat seat = set.seats().get(s);
      double x = (s + 0.5) * room;
      rings(pen, seat.bearing(), x);
      for (int b = 0; b < seat.bearing().balls(); b++) {
        double angle = seat.firstBall() + 2 * Math.PI * b / seat.bearing().balls();
        ball(pen, seat.bearing(), x, angle, loads[at] / most, loads[at] >= most * (1 - 1e-9));
        at++;
      }
      pen.words(
          "",
          x - room / 2 + 16 * pen.unit(),
          -height / 2 + 30 * pen.unit(),
          "start",
          s == 0 ? "first" : "second");
    }
    double width = Math.max(room * set.seats().size(), 1.4 * room);
    return pen.done(words, 0, -height / 2, width, height);
  }

  private static void rings(Pen pen, BallBearing bearing, double x) {
    double half = bearing.pitch() / 2;
    pen.circle("body", x, 0, half + 0.95 * bearing.ball());
    pen.circle("thin", x, 0, half + 0.45 * bearing.ball());
    pen.circle("thin", x, 0, half - 0.45 * bearing.ball());
    pen.circle("bore", x, 0, Math.max(1, half - 0.95 * bearing.ball()));
  }

  /** A ball with its load as a bar outwards; y of the bearing points down, as the load does. */
  private static void ball(
      Pen pen, BallBearing bearing, double x, double angle, double share, Boolean greatest) {
    double dx = Math.sin(angle);
    double dy = Math.cos(angle);
    double half = bearing.pitch() / 2;
    pen.circle(share > 0 ? "planned" : "body", x + half * dx, half * dy, bearing.ball() / 2);
    double from = half + bearing.ball();
    double to = from + share * 0.36 * bearing.pitch();
    pen.line("blue", x + from * dx, from * dy, x + to * dx, to * dy);
    if (greatest) {
      pen.circle("red", x + half * dx, half * dy, 0.66 * bearing.ball());
    }
  }

  /** Says what the greatest and the least ball carry. */
  public static String words(BearingState state) {
    double least = Double.POSITIVE_INFINITY;
    for (double q : state.ballLoads()) {
      least = Math.min(least, q);
    }
    return "The greatest ball load is "
        + Numbers.significant(state.greatestLoad(), 3)
        + " N (ringed in red), the least "
        + Numbers.significant(Math.max(0, least), 3)
        + " N; "
        + state.loadedBalls()
        + " of "
        + state.ballLoads().length
        + " balls carry.";
  }
}
