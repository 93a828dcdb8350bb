package fettle.machine.topics;

import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Point;
import fettle.machine.lathe.Seat;
import fettle.machine.text.Quantity;
import fettle.mechanics.loop.JointFinish;
import fettle.mechanics.loop.Slideway;
import fettle.mechanics.loop.TwoWays;
import java.util.List;
import java.util.Optional;

/**
 * The strips on which members of the lathe bear. Where the book leaves a width open, a usual share
 * of what it tells stands for it.
 */
final class WayStrips {

  /** Level stiffness over upright stiffness of two ways of which one guides. */
  static final double GUIDED = 0.35;

  /** Level over upright stiffness of a bolted face. */
  static final double BOLTED = 0.25;

  private static final double FOOT_PRESSURE = 0.5;
  private static final double POST_PRESSURE = 2;

  private WayStrips() {}

  /**
   * Returns the ways under a slide as it stands, in its own directions. On a bed they ride along in
   * the middle of the slide; on another slide, where it is longer than its ways, they lie under the
   * middle of its travel.
   *
   * @param slide the slide
   * @param under the member it slides on
   * @param travel how far it has slid from its start [mm]
   */
  static Optional<TwoWays> of(Member slide, Member under, double travel) {
    Seat.Sliding seat = (Seat.Sliding) slide.seat();
    Optional<double[][]> foot = Boxes.foot(slide);
    if (foot.isEmpty() || seat.axis() == Axis.Y) {
      return Optional.empty();
    }
    int along = seat.axis().number();
    int across = 2 - along;
    double low = foot.get()[0][along];
    double high = foot.get()[1][along];
    double ways = seat(slide, "way length").orElse(high - low);
    double middle = (low + high) / 2;
    double from = middle - ways / 2;
    double to = middle + ways / 2;
    if (high - low > ways + 1 && !(under.seat() instanceof Seat.Fixed)) {
      double back = seat.travel().value() / 2 - travel;
      from = Math.max(low, from + back);
      to = Math.min(high, to + back);
    }
    double wide = foot.get()[1][across] - foot.get()[0][across];
    Optional<Double> wall = number(under, "wall").filter(w -> wide > 3 * w);
    double width = seat(slide, "way width").orElse(wall.orElse(0.2 * wide));
    double centres =
        seat(slide, "way centres")
            .orElse(
                wall.isPresent() && number(under, "width").isPresent()
                    ? number(under, "width").get() - wall.get()
                    : 0.75 * wide);
    double[] constants = Slideway.constants(width);
    double normal = 98.0665 / ((constants[0] + constants[1]) / 2);
    Double[] at = new Double[3];
    at[along] = (from + to) / 2;
    at[across] = (foot.get()[0][across] + foot.get()[1][across]) / 2;
    at[1] = 0.0;
    return to - from > 1
        ? Optional.of(
            new TwoWays(along, List.of(at), to - from, width, centres, normal, GUIDED * normal))
        : Optional.empty();
  }

  /** Returns the edges of a foot that is bolted or clamped on a bed, in its own directions. */
  static Optional<TwoWays> foot(Member member, Member under) {
    return Boxes.foot(member)
        .map(
            b -> {
              double wide = b[1][0] - b[0][0];
              double length =
                  member.seat() instanceof Seat.Sliding
                      ? seat(member, "way length").orElse(b[1][2] - b[0][2])
                      : b[1][2] - b[0][2];
              double width = number(under, "wall").filter(w -> wide > 3 * w).orElse(wide / 3);
              double centres =
                  Math.min(
                      wide - width,
                      number(under, "width").map(w -> w - width).orElse(wide - width));
              double k = JointFinish.SCRAPED_18.normalStiffness(FOOT_PRESSURE);
              return new TwoWays(
                  2,
                  List.of((b[0][0] + b[1][0]) / 2, 0.0, (b[0][2] + b[1][2]) / 2),
                  length,
                  width,
                  centres,
                  k,
                  BOLTED * k);
            });
  }

  /** Returns the foot of the post that carries the tool, in the carrier's own directions. */
  static Optional<TwoWays> post(Member carrier) {
    return Boxes.highest(carrier).map(WayStrips::clamped);
  }

  /** Returns the foot of a member that is bolted on a slide, in its own directions. */
  static Optional<TwoWays> bolted(Member member) {
    return Boxes.foot(member).map(WayStrips::clamped);
  }

  private static TwoWays clamped(double[][] b) {
    double half = (b[1][0] - b[0][0]) / 2;
    double k = JointFinish.GROUND.normalStiffness(POST_PRESSURE);
    return new TwoWays(
        2,
        List.of((b[0][0] + b[1][0]) / 2, b[0][1], (b[0][2] + b[1][2]) / 2),
        b[1][2] - b[0][2],
        half,
        half,
        k,
        BOLTED * k);
  }

  private static Optional<Double> seat(Member member, String key) {
    return member.values().block("seat").flatMap(s -> s.quantity(key)).map(Quantity::value);
  }

  private static Optional<Double> number(Member member, String key) {
    return member.values().quantity(key).map(Quantity::value);
  }

  /** Returns strips moved from a member's own directions into the lathe's, or back. */
  static TwoWays moved(TwoWays w, Point by) {
    return new TwoWays(
        w.along(),
        List.of(w.middle().get(0) + by.x(), w.middle().get(1) + by.y(), w.middle().get(2) + by.z()),
        w.length(),
        w.width(),
        w.centres(),
        w.normal(),
        w.tangential());
  }
}
