package fettle.bench;

import fettle.mechanics.motion.Chain;
import fettle.mechanics.motion.Clearance;
import fettle.mechanics.motion.Convex;
import fettle.mechanics.motion.Domain;
import fettle.mechanics.motion.Gap;
import fettle.mechanics.motion.Pair;
import fettle.mechanics.motion.Step;
import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * The obvious way to a proven least distance: every axis, slides too, is split where it can change
 * the distance most, and over a cell the distance falls by no more than speed times half width.
 */
final class PlainBound {

  /** A box of positions. */
  @SuppressWarnings("ArrayRecordComponent")
  private record Cell(double[] middle, double[] half, double lower) {}

  /**
   * What was reached.
   *
   * @param lower the distance is nowhere less [mm]
   * @param upper least distance met [mm]
   */
  record Bracket(double lower, double upper) {
    Boolean closed(double tolerance) {
      return upper - lower <= tolerance || upper <= 0;
    }
  }

  private final Pair pair;
  private final Domain domain;
  private final double[] speed;
  private final PriorityQueue<Cell> cells =
      new PriorityQueue<>((p, q) -> Double.compare(p.lower, q.lower));
  private double upper = Double.POSITIVE_INFINITY;

  private PlainBound(Pair pair, Domain domain) {
    this.pair = pair;
    this.domain = domain;
    this.speed = new double[domain.size()];
    speeds(pair.a());
    speeds(pair.b());
  }

  static Bracket of(Pair pair, Domain domain, double tolerance, int budget) {
    return new PlainBound(pair, domain).search(tolerance, budget);
  }

  private Bracket search(double tolerance, int budget) {
    double[] half = new double[speed.length];
    Arrays.setAll(half, i -> speed[i] > 0 ? (domain.high()[i] - domain.low()[i]) / 2 : 0);
    add(domain.middle(), half, 0);
    for (int spent = 1; spent < budget; spent += 2) {
      Cell cell = cells.element();
      if (upper <= 0 || upper - cell.lower <= tolerance) {
        break;
      }
      cells.remove();
      split(cell);
    }
    return new Bracket(Math.min(upper, cells.element().lower), upper);
  }

  private void split(Cell cell) {
    int axis = 0;
    for (int i = 1; i < speed.length; i++) {
      axis = speed[i] * cell.half[i] > speed[axis] * cell.half[axis] ? i : axis;
    }
    double[] half = cell.half.clone();
    half[axis] /= 2;
    for (int side = -1; side <= 1; side += 2) {
      double[] middle = cell.middle.clone();
      middle[axis] += side * half[axis];
      add(middle, half, cell.lower);
    }
  }

  private void add(double[] middle, double[] half, double floor) {
    Gap there = Clearance.at(pair, domain, middle);
    upper = Math.min(upper, there.upper());
    double lower = there.lower();
    for (int i = 0; i < speed.length; i++) {
      lower -= speed[i] * half[i];
    }
    cells.add(new Cell(middle, half, Math.max(floor, lower)));
  }

  /** How fast a point of a solid can move at the most, for each axis. */
  private void speeds(Chain chain) {
    Convex.Ball ball = chain.solid().ball();
    double reach = ball.centre().norm() + ball.radius();
    for (int i = chain.steps().size() - 1; i >= 0; i--) {
      Step step = chain.steps().get(i);
      if (step instanceof Step.Shift shift) {
        reach += shift.by().norm();
      } else if (step instanceof Step.Slide slide) {
        int axis = slide.axis();
        speed[axis] += Math.abs(slide.factor());
        reach +=
            Math.abs(slide.factor())
                * Math.max(Math.abs(domain.low()[axis]), Math.abs(domain.high()[axis]));
      } else if (step instanceof Step.Turn turn) {
        speed[turn.axis()] += reach * Math.abs(turn.factor());
      }
    }
  }
}
