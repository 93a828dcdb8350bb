package fettle.mechanics.motion;

import java.util.List;

/**
 * How far a moving solid can reach along a direction, over a whole cell of positions.
 *
 * <p>While a seat turns, the direction as the solid sees it runs along an arc. The reach of a
 * convex solid is a convex function of the direction, and an arc lies within the polygon of its
 * ends and the corners of its tangents; so the greatest reach at those corners bounds the reach
 * over the whole arc. The bound is exact in the middle to the second order and needs no distance. A
 * slide moved by the same axis shifts the reach in step with the angle; what its straight line
 * departs from the sine is added.
 */
final class Shadow {

  private static final double WIDEST = Math.PI / 3;

  private final Chain chain;
  private final Domain domain;
  private final int[] slot;
  private final double[] middle;
  private final double[] half;
  private final double[] pending;
  private final int[] turnsLeft;

  /**
   * Prepares a cell.
   *
   * @param slot for each axis whether it is free (0 or more) or split (negative)
   * @param middle middle of the cell [mm or rad]
   * @param half half the width of the cell [mm or rad]
   */
  Shadow(Chain chain, Domain domain, int[] slot, double[] middle, double[] half) {
    this.chain = chain;
    this.domain = domain;
    this.slot = slot;
    this.middle = middle;
    this.half = half;
    this.pending = new double[domain.size()];
    this.turnsLeft = new int[domain.size()];
    for (Step step : chain.steps()) {
      if (step instanceof Step.Turn t) {
        turnsLeft[t.axis()]++;
      }
    }
  }

  /**
   * Returns the greatest reach.
   *
   * @param n direction
   * @return greatest reach along it, times its length [mm]
   */
  double reach(Vector n) {
    return from(chain.steps(), 0, n);
  }

  private double from(List<Step> steps, int i, Vector n) {
    if (i == steps.size()) {
      return chain.solid().support(n).dot(n);
    }
    Step step = steps.get(i);
    if (step instanceof Step.Shift s) {
      return n.dot(s.by()) + from(steps, i + 1, n);
    } else if (step instanceof Step.Slide s) {
      return slide(steps, i, n, s);
    } else if (step instanceof Step.Turn t) {
      return turn(steps, i, n, t);
    }
    Step.Tilt t = (Step.Tilt) step;
    return from(steps, i + 1, n.turned(t.axis(), Math.cos(t.angle()), -Math.sin(t.angle())));
  }

  private double slide(List<Step> steps, int i, Vector n, Step.Slide s) {
    int axis = s.axis();
    double slope = n.dot(s.along()) * s.factor();
    if (slot[axis] >= 0) {
      return Math.max(slope * domain.low()[axis], slope * domain.high()[axis])
          + from(steps, i + 1, n);
    }
    double centre = slope * middle[axis];
    if (turnsLeft[axis] == 0) {
      return centre + Math.abs(slope) * half[axis] + from(steps, i + 1, n);
    }
    double before = pending[axis];
    pending[axis] = before + slope;
    double reach = centre + from(steps, i + 1, n);
    pending[axis] = before;
    return reach;
  }

  private double turn(List<Step> steps, int i, Vector n, Step.Turn t) {
    int axis = t.axis();
    double slope = pending[axis];
    int left = turnsLeft[axis];
    pending[axis] = 0;
    turnsLeft[axis] = 0;
    double reach = arc(steps, i, n, t, slope);
    pending[axis] = slope;
    turnsLeft[axis] = left;
    return reach;
  }

  private double arc(List<Step> steps, int i, Vector n, Step.Turn t, double slope) {
    double angle = t.factor() * middle[t.axis()];
    double width = Math.abs(t.factor()) * half[t.axis()];
    if (width == 0) {
      return Math.abs(slope) * half[t.axis()] + seen(steps, i, n, t, angle, 1);
    }
    if (width <= WIDEST) {
      double sense = Math.signum(t.factor());
      double step = slope * half[t.axis()] * sense;
      double most =
          Math.max(
              seen(steps, i, n, t, angle, 1 / Math.cos(width)),
              Math.max(
                  step + seen(steps, i, n, t, angle + width, 1),
                  -step + seen(steps, i, n, t, angle - width, 1)));
      return slope == 0 ? most : most + Math.abs(step) * departure(width);
    }
    double most = Double.NEGATIVE_INFINITY;
    if (width < Math.PI) {
      most =
          Math.max(seen(steps, i, n, t, angle + width, 1), seen(steps, i, n, t, angle - width, 1));
    }
    double whole = Math.min(width, Math.PI);
    int arcs = (int) Math.ceil(whole / (Math.PI / 6));
    double part = whole / arcs;
    for (int k = 0; k < arcs; k++) {
      double at = angle - whole + (2 * k + 1) * part;
      most = Math.max(most, seen(steps, i, n, t, at, 1 / Math.cos(part)));
    }
    return most + Math.abs(slope) * half[t.axis()];
  }

  /** The reach with the direction as seen after a turn, its part across the axis stretched. */
  private double seen(
      List<Step> steps, int i, Vector n, Step.Turn t, double angle, double stretch) {
    Vector along = t.about().times(n.dot(t.about()));
    Vector across = n.minus(along);
    Vector seen =
        along
            .plus(stretch * Math.cos(angle), across)
            .plus(-stretch * Math.sin(angle), t.about().cross(n));
    return from(steps, i + 1, seen);
  }

  /**
   * Returns how far u departs from sin(a u)/sin a for u of -1 to 1, at the most.
   *
   * @param a half the angle of the cell [rad]
   * @return greatest departure [-]
   */
  static double departure(double a) {
    double ratio = Math.sin(a) / a;
    double u = Math.acos(ratio) / a;
    return Math.max(0, Math.sin(a * u) / Math.sin(a) - u) + 1e-12;
  }
}
