package fettle.mechanics.solids;

import java.util.ArrayList;
import java.util.List;

/**
 * A solid body: shapes added and cut in order, as it would be built up and machined.
 *
 * @param steps what is added and cut, in order
 */
public record Body(List<Step> steps) {

  /** What a step does. */
  public enum Kind {
    ADD,
    CUT
  }

  /**
   * One step.
   *
   * @param kind add or cut
   * @param shape what is added or cut
   */
  public record Step(Kind kind, Shape shape) {}

  /** Keeps its own list. */
  public Body {
    steps = List.copyOf(steps);
  }

  /** Returns a body of one shape. */
  public static Body of(Shape shape) {
    return new Body(List.of(new Step(Kind.ADD, shape)));
  }

  /** Returns this body with a shape added. */
  public Body add(Shape shape) {
    return with(new Step(Kind.ADD, shape));
  }

  /** Returns this body with a shape cut away. */
  public Body cut(Shape shape) {
    return with(new Step(Kind.CUT, shape));
  }

  private Body with(Step step) {
    List<Step> more = new ArrayList<>(steps);
    more.add(step);
    return new Body(more);
  }

  /**
   * Tells whether a point lies in the body.
   *
   * @param x coordinate [mm]
   * @param y coordinate [mm]
   * @param z coordinate [mm]
   */
  public boolean contains(double x, double y, double z) {
    for (int i = steps.size() - 1; i >= 0; i--) {
      if (steps.get(i).shape().contains(x, y, z)) {
        return steps.get(i).kind() == Kind.ADD;
      }
    }
    return false;
  }

  /**
   * Share of a box that the body fills.
   *
   * @param low low corner [mm]
   * @param high high corner [mm]
   * @return share, 0 to 1 [-]
   */
  public double fraction(double[] low, double[] high) {
    return fraction(low, high, 4);
  }

  private double fraction(double[] low, double[] high, int depth) {
    Shape.Side side = side(low, high);
    if (side != Shape.Side.CUT) {
      return side == Shape.Side.INSIDE ? 1 : 0;
    }
    double[] middle = {(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2};
    if (depth == 0) {
      return contains(middle[0], middle[1], middle[2]) ? 1 : 0;
    }
    boolean[] split = cutAxes(low, high);
    double sum = 0;
    double count = 0;
    for (int child = 0; child < 8; child++) {
      double[] a = low.clone();
      double[] b = high.clone();
      boolean skip = false;
      for (int axis = 0; axis < 3; axis++) {
        boolean upper = (child >> axis & 1) == 1;
        skip |= upper && !split[axis];
        if (split[axis] && upper) {
          a[axis] = middle[axis];
        } else if (split[axis]) {
          b[axis] = middle[axis];
        }
      }
      if (!skip) {
        sum += fraction(a, b, depth - 1);
        count++;
      }
    }
    return sum / count;
  }

  /** Axes along which the body may change within the box: none along a cylinder's own axis. */
  private boolean[] cutAxes(double[] low, double[] high) {
    boolean[] axes = new boolean[3];
    for (Step step : steps) {
      if (step.shape().side(low, high) == Shape.Side.CUT) {
        boolean[] one = step.shape().varies(low, high);
        for (int i = 0; i < 3; i++) {
          axes[i] |= one[i];
        }
      }
    }
    return axes;
  }

  private Shape.Side side(double[] low, double[] high) {
    Shape.Side state = Shape.Side.OUTSIDE;
    for (Step step : steps) {
      Shape.Side one = step.shape().side(low, high);
      boolean add = step.kind() == Kind.ADD;
      if (one == Shape.Side.INSIDE) {
        state = add ? Shape.Side.INSIDE : Shape.Side.OUTSIDE;
      } else if (one == Shape.Side.CUT && state != (add ? Shape.Side.INSIDE : Shape.Side.OUTSIDE)) {
        state = Shape.Side.CUT;
      }
    }
    return state;
  }

  /**
   * Coordinates of all plane faces normal to an axis.
   *
   * @param axis 0, 1 or 2
   * @return coordinates, unsorted [mm]
   */
  public double[] planes(int axis) {
    return steps.stream()
        .flatMapToDouble(s -> java.util.Arrays.stream(s.shape().planes(axis)))
        .toArray();
  }

  /**
   * Box around the body.
   *
   * @return low and high corner [mm]
   */
  public double[][] bounds() {
    double inf = Double.POSITIVE_INFINITY;
    double[][] b = {{inf, inf, inf}, {-inf, -inf, -inf}};
    for (Step step : steps) {
      if (step.kind() == Kind.ADD) {
        double[][] one = step.shape().bounds();
        for (int i = 0; i < 3; i++) {
          b[0][i] = Math.min(b[0][i], one[0][i]);
          b[1][i] = Math.max(b[1][i], one[1][i]);
        }
      }
    }
    for (int i = 0; i < 3; i++) {
      if (!(b[1][i] > b[0][i]) || Double.isInfinite(b[1][i] - b[0][i])) {
        throw new IllegalArgumentException("body: nothing was added, or it has no end");
      }
    }
    return b;
  }
}
